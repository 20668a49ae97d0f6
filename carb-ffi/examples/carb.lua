-- carb for LuaJIT, by its own FFI: local carb = require "carb"
--
-- Declarations are those of carb.h, which is read when this is loaded, so there is no copy of them to go stale. The
-- header is found by CARB_HEADER, else by pkg-config; the library by CARB_LIBRARY, else where the system looks.
local ffi = require "ffi"

local function header_path()
    local path = os.getenv "CARB_HEADER"
    if path then return path end
    local asked = assert(io.popen "pkg-config --variable=includedir carb")
    local folder = asked:read "*l"
    asked:close()
    assert(folder, "where is carb.h? install carb, or set CARB_HEADER to its path")
    return folder .. "/carb.h"
end

local function read(path)
    local file = assert(io.open(path, "rb"))
    local text = file:read "*a"
    file:close()
    return text
end

-- What is C in the header: no preprocessor, no comments, no braces for C++.
local function declarations(header)
    local text = header:gsub("/%*.-%*/", ""):gsub("//[^\n]*", "")
    text = text:gsub("#ifdef __cplusplus.-#endif", "")
    return (text:gsub("\n%s*#[^\n]*", "\n"))
end

local carb = { header = read(header_path()) }
ffi.cdef(declarations(carb.header))
carb.c = ffi.load(os.getenv "CARB_LIBRARY" or "carb")

local abi = tonumber(carb.header:match "#define CARB_ABI_VERSION (%d+)")
assert(carb.c.carb_abi_version() == abi, "carb.h and libcarb do not belong together")

-- A struct that knows its size.
function carb.sized(name)
    local fresh = ffi.new(name)
    fresh.struct_size = ffi.sizeof(fresh)
    return fresh
end

-- Inputs in which nothing is given.
function carb.inputs()
    local inputs = ffi.new "carb_inputs"
    carb.c.carb_inputs_init(inputs, ffi.sizeof(inputs))
    return inputs
end

-- Sets a number or a choice by any of its names; gives the status.
function carb.set(inputs, name, value, problem)
    local by = type(value) == "number" and carb.c.carb_inputs_set or carb.c.carb_inputs_choose
    return by(inputs, name, value, problem)
end

-- Calls a function with a carb_error behind the other arguments; an error is a table with status, parameter and text.
function carb.call(name, ...)
    local problem = carb.sized "carb_error"
    local arguments = { ... }
    arguments[select("#", ...) + 1] = problem
    local status = carb.c["carb_" .. name](unpack(arguments, 1, select("#", ...) + 1))
    if status ~= carb.c.CARB_OK then
        error({ status = status, parameter = ffi.string(problem.parameter), text = ffi.string(problem.text) }, 0)
    end
end

-- What a struct function answers to a table of inputs by name.
function carb.ask(name, given)
    local inputs, answer = carb.inputs(), carb.sized("carb_" .. name .. "_result")
    for key, value in pairs(given) do
        carb.call(type(value) == "number" and "inputs_set" or "inputs_choose", inputs, key, value)
    end
    carb.call(name, inputs, answer)
    return answer
end

function carb.convert(value, from, to)
    local out = ffi.new "double[1]"
    carb.call("convert", from, to, value, out)
    return out[0]
end

return carb
