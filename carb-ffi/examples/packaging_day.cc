// A packaging day in C++17: packaging_day request.json
//
// Single calls, an array, a conversion and an error first, then the plan of the request: bottles and keg. Exits with
// 1 where somebody may be hurt, with 2 where there is no plan. packaging_day.c and packaging_day.lua
// print the same.
#include <carb.h>

#include <cmath>
#include <fstream>
#include <iomanip>
#include <iostream>
#include <iterator>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

// What a C++ program puts around the C functions: structs know their size, a status below 0 is an exception.
namespace carb {

template <class Struct> Struct sized() {
    Struct fresh{};
    fresh.struct_size = sizeof fresh;
    return fresh;
}

class Error : public std::runtime_error {
public:
    Error(int32_t status, const carb_error& error)
        : std::runtime_error(error.text), status(static_cast<carb_status>(status)), parameter(error.parameter) {}
    carb_status status;
    std::string parameter;
};

// Calls with an error struct behind the other arguments.
template <class Function, class... Arguments> void call(Function function, Arguments... arguments) {
    auto error = sized<carb_error>();
    if (const int32_t status = function(arguments..., &error); status != CARB_OK) {
        throw Error(status, error);
    }
}

// The inputs of one question.
class Inputs {
public:
    Inputs() { carb_inputs_init(&inputs, sizeof inputs); }
    Inputs& set(const char* name, double value) {
        call(carb_inputs_set, &inputs, name, value);
        return *this;
    }
    Inputs& choose(const char* name, const char* choice) {
        call(carb_inputs_choose, &inputs, name, choice);
        return *this;
    }
    template <class Result> Result ask(int32_t (*function)(const carb_inputs*, Result*, carb_error*)) const {
        auto result = sized<Result>();
        call(function, &inputs, &result);
        return result;
    }
    const carb_inputs* get() const { return &inputs; }

private:
    carb_inputs inputs;
};

double convert(double value, const char* from, const char* to) {
    double converted = 0;
    call(carb_convert, from, to, value, &converted);
    return converted;
}

// The page of a plan, and whether somebody may be hurt.
std::pair<std::string, bool> plan_page(const std::string& request) {
    std::size_t needed = 0;
    int32_t danger = 0;
    try {
        call(carb_plan_page, request.data(), request.size(), nullptr, std::size_t{0}, &needed, nullptr);
    } catch (const Error& error) {
        if (error.status != CARB_BUFFER_TOO_SMALL) {
            throw;
        }
    }
    std::string page(needed, '\0');
    call(carb_plan_page, request.data(), request.size(), page.data(), page.size(), &needed, &danger);
    page.pop_back(); // its NUL
    return {page, danger != 0};
}

} // namespace carb

namespace {

constexpr int danger_code = 1;
constexpr int no_answer_code = 2;

std::string fixed(double value, int digits) {
    std::ostringstream text;
    text << std::fixed << std::setprecision(digits) << value;
    return text.str();
}

// Beer of 2.4 volumes, 240 m above the sea.
carb::Inputs beer() {
    return carb::Inputs().set("volumes", 2.4).set("altitude_m", 240).choose("beverage", "beer");
}

void single_answers() {
    const auto keg = beer().set("temperature_c", 4).ask(carb_keg_pressure);
    std::cout << "2.4 volumes at 4 °C and 240 m: " << fixed(carb::convert(keg.gauge_kpa, "kpa", "bar"), 2) << " bar, "
              << fixed(carb::convert(keg.gauge_kpa, "kpa", "psi"), 1) << " psi\n";

    const auto asked = carb::Inputs().set("gauge_psi", 12).set("temperature_c", 4).set("altitude_m", 240);
    const auto held = asked.ask(carb_dissolved_co2);
    std::cout << "under 12 psi it holds " << fixed(held.co2_g_per_l, 2) << " g/L, "
              << fixed(carb::convert(held.co2_g_per_l, "co2_g_per_l", "volumes"), 2) << " volumes\n";
}

// One call for many temperatures; each has a status of its own, and a missing one stays missing.
void by_cellar() {
    const std::vector<double> cellars{2, 6, 10, std::nan(""), 18};
    const carb_series series{"temperature_c", cellars.data(), cellars.size()};
    std::vector<double> bar(cellars.size());
    std::vector<int32_t> status(cellars.size());
    const auto inputs = beer();
    carb::call(carb_keg_pressure_n, inputs.get(), &series, std::size_t{1}, "gauge_bar", cellars.size(), bar.data(),
               status.data());
    std::cout << "the same by the cellar's temperature:\n";
    for (std::size_t i = 0; i < cellars.size(); i++) {
        if (status[i] == CARB_NOT_A_NUMBER) {
            std::cout << "   no reading\n";
        } else if (status[i] < CARB_OK) {
            std::cout << "  " << std::setw(2) << cellars[i] << " °C  no answer, status " << status[i] << "\n";
        } else {
            std::cout << "  " << std::setw(2) << cellars[i] << " °C  " << fixed(bar[i], 2) << " bar"
                      << (status[i] & CARB_CAUTION_CHART_TEMPERATURE ? ", beyond the printed chart" : "") << "\n";
        }
    }
}

// What is refused says why.
void refused_answer() {
    try {
        beer().set("temperature_c", 4).set("altitude_m", 24000).ask(carb_keg_pressure);
    } catch (const carb::Error& error) {
        std::cout << "refused: " << error.what() << "\n\n";
        return;
    }
    throw std::logic_error("an altitude of 24 km was not refused");
}

int plan(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        throw std::runtime_error("cannot be read");
    }
    const std::string request{std::istreambuf_iterator<char>(file), {}};
    const auto [page, danger] = carb::plan_page(request);
    std::cout << page;
    return danger ? danger_code : 0;
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "which file?: give the path of a request, such as docs/scenarios/harbour_ale.json\n";
        return no_answer_code;
    }
    try {
        single_answers();
        by_cellar();
        refused_answer();
        return plan(argv[1]);
    } catch (const std::exception& error) {
        std::cout.flush();
        std::cerr << argv[1] << ": " << error.what() << "\n";
        return no_answer_code;
    }
}
