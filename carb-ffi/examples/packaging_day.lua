-- A packaging day in LuaJIT, by its stock FFI: luajit packaging_day.lua request.json
--
-- Single calls, an array, a conversion and an error first, then the plan of the request: bottles and keg. Exits with
-- 1 where somebody may be hurt, with 2 where there is no plan. packaging_day.c and packaging_day.cc
-- print the same.
package.path = (arg[0]:match "^(.*/)" or "./") .. "?.lua;" .. package.path
local ffi = require "ffi"
local bit = require "bit"
local carb = require "carb"

local DANGER, NO_ANSWER = 1, 2

local function show(...) io.write(string.format(...), "\n") end

local function single_answers()
    local keg = carb.ask("keg_pressure", { volumes = 2.4, temperature_c = 4, altitude_m = 240, beverage = "beer" })
    show("2.4 volumes at 4 °C and 240 m: %.2f bar, %.1f psi", carb.convert(keg.gauge_kpa, "kpa", "bar"),
        carb.convert(keg.gauge_kpa, "kpa", "psi"))
    local held = carb.ask("dissolved_co2", { gauge_psi = 12, temperature_c = 4, altitude_m = 240, beverage = "beer" })
    show("under 12 psi it holds %.2f g/L, %.2f volumes", held.co2_g_per_l,
        carb.convert(held.co2_g_per_l, "co2_g_per_l", "volumes"))
end

-- One call for many temperatures; each has a status of its own, and a missing one stays missing.
local function by_cellar()
    local count = 5
    local cellars = ffi.new("double[?]", count, { 2, 6, 10, 0 / 0, 18 })
    local series = ffi.new("carb_series[1]", { { "temperature_c", cellars, count } })
    local bar, status = ffi.new("double[?]", count), ffi.new("int32_t[?]", count)
    local inputs = carb.inputs()
    carb.call("inputs_set", inputs, "volumes", 2.4)
    carb.call("inputs_set", inputs, "altitude_m", 240)
    carb.call("inputs_choose", inputs, "beverage", "beer")
    carb.call("keg_pressure_n", inputs, series, 1, "gauge_bar", count, bar, status)
    show "the same by the cellar's temperature:"
    for i = 0, count - 1 do
        if status[i] == carb.c.CARB_NOT_A_NUMBER then
            show "   no reading"
        elseif status[i] < carb.c.CARB_OK then
            show("  %2.0f °C  no answer, status %d", cellars[i], status[i])
        else
            local beyond = bit.band(status[i], carb.c.CARB_CAUTION_CHART_TEMPERATURE) ~= 0
            show("  %2.0f °C  %.2f bar%s", cellars[i], bar[i], beyond and ", beyond the printed chart" or "")
        end
    end
end

-- What is refused says why.
local function refused_answer()
    local given = { volumes = 2.4, temperature_c = 4, altitude_m = 24000, beverage = "beer" }
    local answered, problem = pcall(carb.ask, "keg_pressure", given)
    assert(not answered, "an altitude of 24 km was not refused")
    show("refused: %s\n", problem.text)
end

local function plan(path)
    local file = io.open(path, "rb")
    if not file then error({ text = "cannot be read" }, 0) end
    local request = file:read "*a"
    file:close()
    local needed, danger = ffi.new "size_t[1]", ffi.new "int32_t[1]"
    -- The first call asks how much room the page needs.
    local enough, problem = pcall(carb.call, "plan_page", request, #request, nil, 0, needed, nil)
    if not enough and problem.status ~= carb.c.CARB_BUFFER_TOO_SMALL then error(problem, 0) end
    local page = ffi.new("char[?]", needed[0])
    carb.call("plan_page", request, #request, page, needed[0], needed, danger)
    io.write(ffi.string(page))
    return danger[0] ~= 0 and DANGER or 0
end

local function day(path)
    single_answers()
    by_cellar()
    refused_answer()
    return plan(path)
end

local path = arg[1]
if not path then
    io.stderr:write "which file?: give the path of a request, such as docs/scenarios/harbour_ale.json\n"
    os.exit(NO_ANSWER)
end
local went_well, code = pcall(day, path)
if not went_well then
    io.stderr:write(path, ": ", type(code) == "table" and code.text or tostring(code), "\n")
    os.exit(NO_ANSWER)
end
os.exit(code)
