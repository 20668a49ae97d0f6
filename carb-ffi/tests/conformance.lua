-- Requires the bytes and the bits of the shared cases by LuaJIT's own FFI: luajit conformance.lua cases.tsv
-- What conformance.c does, but with nothing generated: functions and outputs are those that carb.h declares.
local tests = arg[0]:match "^(.*/)" or "./"
package.path = tests .. "../examples/?.lua;" .. package.path
local ffi = require "ffi"
local carb = require "carb"

local COPIES, MOST_SERIES = 3, 64
ffi.cdef "double strtod(const char *text, char **rest);"

local line_number, failures = 0, 0
local checked = { cases = 0, json = 0, structs = 0, errors = 0, arrays = 0, bound = 0, values = 0 }

local function fail(what, wanted, found)
    io.stderr:write(string.format("line %d: %s\n  wanted %s\n  found  %s\n", line_number, what, wanted, found))
    failures = failures + 1
end

local function expect(what, wanted, found)
    if wanted ~= found then fail(what, tostring(wanted), tostring(found)) end
end

-- Two doubles in memory: the same bits, NaN and the sign of zero included.
local function expect_bits(what, wanted, found, at)
    checked.values = checked.values + 1
    local a, b = ffi.cast("const int64_t *", wanted), ffi.cast("const int64_t *", found + at)
    if a[0] ~= b[0] then fail(what, string.format("%.17g", wanted[0]), string.format("%.17g", found[at])) end
end

-- A text as a number, or nil.
local function number(text)
    local rest = ffi.new "char *[1]"
    local start = ffi.cast("const char *", text)
    local value = ffi.C.strtod(start, rest)
    if rest[0] == start or rest[0] - ffi.cast("char *", start) ~= #text then return nil end
    return value
end

-- "name=value;name=value" in its order.
local function pairs_of(text)
    local all = {}
    for name, value in text:gmatch "([^=;]+)=([^;]*)" do all[#all + 1] = { name = name, value = value } end
    return all
end

-- The outputs of every function: the doubles of its struct.
local function outputs_by_function()
    local all = {}
    for body, name in carb.header:gmatch "typedef struct carb_[%w_]+_result (%b{}) carb_([%w_]+)_result;" do
        all[name] = {}
        for member in body:gmatch "\n%s*double ([%w_]+);" do table.insert(all[name], member) end
    end
    return all
end

local function set(inputs, input, problem)
    return carb.set(inputs, input.name, number(input.value) or input.value, problem)
end

local function check_json(name, request, answer, code)
    local needed = ffi.new "size_t[1]"
    local status = carb.c.carb_json(name, request, #request, nil, 0, needed)
    expect("carb_json without room", tonumber(carb.c.CARB_BUFFER_TOO_SMALL), status)
    expect("carb_json: the room needed", #answer + 1, tonumber(needed[0]))
    local buffer = ffi.new("char[?]", needed[0])
    expect("carb_json", code, carb.c.carb_json(name, request, #request, buffer, needed[0], needed))
    expect("carb_json", answer, ffi.string(buffer))
    checked.json = checked.json + 1
end

-- The struct function; gives the bits of its cautions.
local function check_struct(name, members, inputs, case)
    local given, problem = carb.inputs(), carb.sized "carb_error"
    local answer = carb.sized("carb_" .. name .. "_result")
    local status = 0
    for _, input in ipairs(inputs) do
        status = set(given, input, problem)
        if status ~= 0 then break end
    end
    if status == 0 then status = carb.c["carb_" .. name](given, answer, problem) end
    expect(name, case.code, status)
    if case.code ~= 0 then
        expect("the parameter at fault", case.parameter, ffi.string(problem.parameter))
        expect("the code of the error", case.code, problem.code)
        if #ffi.string(problem.text) == 0 then fail("the text of the error", "a sentence", "nothing") end
        checked.errors = checked.errors + 1
        return nil
    end
    local wanted = ffi.new "double[1]"
    for _, member in ipairs(members) do
        local text
        for _, output in ipairs(case.outputs) do
            if output.name == member then text = output.value end
        end
        if not text then
            fail("an output in the file", member, "none")
        else
            wanted[0] = number(text)
            local found = ffi.cast("char *", answer) + ffi.offsetof(answer, member)
            expect_bits(member, wanted, ffi.cast("double *", found), 0)
        end
    end
    checked.structs = checked.structs + 1
    return answer.cautions
end

-- The same output by a function that is kept with its request, where all its numbers may vary.
local function check_bound(name, given, series, count, output, wanted, expected)
    local names, numbers = ffi.new("const char *[?]", MOST_SERIES), ffi.new("double[?]", MOST_SERIES)
    for s = 0, count - 1 do
        if series[s].count ~= COPIES then return end
        names[s], numbers[s] = series[s].name, series[s].values[0]
    end
    local bound, out, problem = ffi.new "carb_bound *[1]", ffi.new "double[1]", carb.sized "carb_error"
    expect("carb_bind", 0, carb.c.carb_bind(name, given, names, count, output, bound, problem))
    if bound[0] == nil then return end
    expect("the status of a bound call", expected, carb.c.carb_bound_call(bound[0], numbers, count, out))
    expect_bits(output, wanted, out, 0)
    carb.c.carb_bound_free(bound[0])
    checked.bound = checked.bound + 1
end

-- The array function, all numbers as series under the names that were given, for every shown name of every output.
local function check_arrays(name, inputs, case, cautions)
    local given, problem = carb.inputs(), carb.sized "carb_error"
    local series, count, kept = ffi.new("carb_series[?]", MOST_SERIES), 0, {}
    for _, input in ipairs(inputs) do
        local value = number(input.value)
        if value then
            local values = ffi.new("double[?]", COPIES, value, value, value)
            kept[#kept + 1] = values
            series[count].name, series[count].values, series[count].count = input.name, values, COPIES
            count = count + 1
        else
            expect(input.name, 0, set(given, input, problem))
        end
    end
    local call = carb.c["carb_" .. name .. "_n"]
    local out, status, wanted = ffi.new("double[?]", COPIES), ffi.new("int32_t[?]", COPIES), ffi.new "double[1]"
    for _, output in ipairs(case.outputs) do
        local result = call(given, series, count, output.name, COPIES, out, status, problem)
        -- What may not vary is refused by name; it is given once instead.
        while result == carb.c.CARB_WRONG_TYPE do
            local changed = false
            for s = 0, count - 1 do
                if ffi.string(series[s].name) == ffi.string(problem.parameter) and series[s].count ~= 1 then
                    series[s].count, changed = 1, true
                end
            end
            if not changed then break end
            result = call(given, series, count, output.name, COPIES, out, status, problem)
        end
        expect(name, 0, result)
        if result ~= 0 then return end
        wanted[0] = number(output.value)
        local expected = cautions or status[0]
        for copy = 0, COPIES - 1 do
            expect_bits(output.name, wanted, out, copy)
            if status[copy] < 0 then fail("the status of an element", expected, status[copy]) end
            expect("the status of an element", expected, status[copy])
        end
        check_bound(name, given, series, count, output.name, wanted, expected)
    end
    assert(#kept == count) -- keeps the values alive until here
    checked.arrays = checked.arrays + 1
end

local JOBS = { plan = true, bottling = true, kegging = true, crosscheck = true }
local functions = outputs_by_function()

local function check(columns)
    local name, inputs = columns[1], pairs_of(columns[2])
    local case = { code = tonumber(columns[3]), parameter = columns[4], outputs = pairs_of(columns[5]) }
    checked.cases = checked.cases + 1
    check_json(name, columns[6], columns[7], case.code)
    local members = functions[name]
    if not members then
        -- Jobs and tables are had as JSON only.
        local is_table = columns[7]:find('"table":', 1, true)
        if not JOBS[name] and case.code == 0 and not is_table then fail("a function of the library", name, "none") end
        return
    end
    local first, cautions = true, nil
    for _, input in ipairs(inputs) do first = first and carb.c.carb_is_first_name(input.name) == 1 end
    if first then cautions = check_struct(name, members, inputs, case) end
    if case.code == 0 then check_arrays(name, inputs, case, cautions) end
end

for line in io.lines((assert(arg[1], "which cases? give the path of cases.tsv"))) do
    line_number = line_number + 1
    local columns = {}
    for column in (line .. "\t"):gmatch "([^\t]*)\t" do columns[#columns + 1] = column end
    expect("columns", 7, #columns)
    if line_number > 1 then check(columns) end
end
print(string.format("cases %d: %d answers in JSON byte for byte, %d by structs, %d errors by structs, %d by arrays, "
    .. "%d by bound calls; %d values bit for bit", checked.cases, checked.json, checked.structs, checked.errors,
    checked.arrays, checked.bound, checked.values))
if checked.structs == 0 or checked.arrays == 0 or checked.errors == 0 then fail("enough", "some", "too little") end
os.exit(failures == 0 and 0 or 1)
