//! The library against general reference libraries: CO2 gas and water by their equations of state, the solubility of
//! CO2 in water by an oceanographers' library, the standard atmosphere, and a sealed bottle worked out with all of them.
//! `checks/scripts/reference.py` writes the values; nothing of the library goes into them.

use carb_core::basis::request::{Raw, Request};
use carb_core::evidence::NoSteps;
use carb_core::number::exp;
use carb_core::property::constant::GAS_CONSTANT;
use carb_core::property::solubility::henry;
use carb_core::property::{atmosphere, co2_gas, water};
use carb_core::table::functions;
use std::sync::atomic::{AtomicUsize, Ordering};

const GAS: &str = include_str!("../checks/reference/co2_gas.csv");
const K0: &str = include_str!("../checks/reference/weiss_k0.csv");
const WATER: &str = include_str!("../checks/reference/water.csv");
const ATMOSPHERE: &str = include_str!("../checks/reference/atmosphere.csv");
const BOTTLE: &str = include_str!("../checks/reference/bottle.csv");

/// The numbers of a check file, line by line, under the header that it must have.
fn rows<const N: usize>(csv: &str, header: [&str; N]) -> Vec<[f64; N]> {
    let mut lines = csv.lines().filter(|line| !line.starts_with('#'));
    assert_eq!(lines.next().map(|line| line.split(',').collect::<Vec<_>>()), Some(header.to_vec()));
    let row = |line: &str| {
        let cells: Vec<f64> = line.split(',').map(|cell| cell.parse().expect("a number")).collect();
        cells.try_into().expect("as many cells as names")
    };
    let rows: Vec<_> = lines.map(row).collect();
    assert!(rows.len() > 10);
    rows
}

/// The tests that have finished, and the values that they checked; the last prints the sum.
fn checked(count: usize) {
    static TESTS: AtomicUsize = AtomicUsize::new(0);
    static VALUES: AtomicUsize = AtomicUsize::new(0);
    let values = VALUES.fetch_add(count, Ordering::SeqCst) + count;
    if TESTS.fetch_add(1, Ordering::SeqCst) + 1 == 5 {
        println!("outside values checked: {values}");
    }
}

fn percent(got: f64, reference: f64) -> f64 {
    100.0 * (got / reference - 1.0).abs()
}

#[test]
fn co2_gas_follows_span_and_wagner() {
    let header = ["temperature_c", "pressure_bar_abs", "compressibility", "fugacity_coefficient", "density_kg_m3"];
    let gas = rows(GAS, header);
    let (mut drinks, mut beyond) = ([0.0_f64; 3], [0.0_f64; 3]);
    for [celsius, bar, z, phi, density] in &gas {
        let (t, p) = (celsius + 273.15, bar * 1e5);
        let b = co2_gas::second_virial(t);
        let differences = [
            percent(co2_gas::compressibility(p, t, b), *z),
            percent(exp(co2_gas::ln_fugacity(p / (GAS_CONSTANT * t), b)), *phi),
            percent(co2_gas::density(p, t, b), *density),
        ];
        let common = *celsius <= 45.0 && *bar <= 10.0;
        let worst = if common { &mut drinks } else { &mut beyond };
        for (worst, difference) in worst.iter_mut().zip(differences) {
            *worst = worst.max(difference);
        }
    }
    println!("gas, worst % of Z, fugacity, density: to 45 °C and 10 bar {drinks:.4?}, beyond {beyond:.4?}");
    // What the library claims of the two virial terms.
    assert!(drinks.iter().all(|worst| *worst <= 0.1));
    assert!(beyond.iter().all(|worst| *worst <= 0.15));
    checked(3 * gas.len());
}

#[test]
fn co2_in_water_is_that_of_weiss() {
    let k0 = rows(K0, ["temperature_c", "k0"]);
    let worst = k0.iter().map(|[t, k]| percent(henry::weiss(t + 273.15), *k)).fold(0.0, f64::max);
    println!("solubility in water, worst {worst:.6} %");
    // The same coefficients read apart from each other: only the rounding of the ten printed digits may differ.
    assert!(worst <= 1e-7);
    checked(k0.len());
}

#[test]
fn water_is_that_of_wagner_and_pruss() {
    let water_rows = rows(WATER, ["temperature_c", "saturation_pressure_pa", "density_kg_m3"]);
    let (mut pressure, mut density) = (0.0_f64, 0.0_f64);
    for [celsius, saturation, rho] in &water_rows {
        let t = celsius + 273.15;
        pressure = pressure.max(percent(water::vapour_pressure(t), *saturation));
        density = density.max(percent(water::density(t), *rho));
    }
    println!("water, worst: vapour pressure {pressure:.4} %, density {density:.5} %");
    // The stated uncertainties of the two equations.
    assert!(pressure <= 0.02 && density <= 0.001);
    checked(2 * water_rows.len());
}

#[test]
fn air_is_the_standard_atmosphere() {
    let air = rows(ATMOSPHERE, ["altitude_m", "pressure_pa"]);
    let worst = air.iter().map(|[z, p]| (atmosphere::station_pressure(101_325.0, *z) - p).abs()).fold(0.0, f64::max);
    println!("standard atmosphere, worst {worst:.3} Pa");
    // The exponent 5.25588 is g M/(R L) rounded to six digits: half a unit of its last is 0.04 Pa near 9000 m.
    assert!(worst <= 0.05);
    checked(air.len());
}

#[test]
fn a_sealed_bottle_closes_as_with_the_reference_libraries() {
    let header = [
        "co2_g_per_l",
        "temperature_c",
        "headspace_percent",
        "filling_c",
        "ambient_kpa",
        "expected_abs_bar",
        "worst_abs_bar",
    ];
    let bottles = rows(BOTTLE, header);
    let (mut count, mut worst) = (0, [0.0_f64; 2]);
    for row in &bottles {
        let mut request = Request::new();
        for (name, value) in header.iter().zip(row).take(5) {
            request.set(name, Raw::Number(*value)).expect("a value");
        }
        request.set("beverage", Raw::Text("water")).expect("a drink");
        let answer = functions::PACKAGE_PRESSURE.answer(&request, &mut NoSteps).expect("a pressure");
        let [_, expected, _, _, worst_case] = *answer.value.as_slice() else { panic!("five values") };
        for (at, (got, reference)) in [(expected, row[5]), (worst_case, row[6])].into_iter().enumerate() {
            worst[at] = worst[at].max(percent(got / 1e5, reference));
            count += 1;
        }
    }
    println!("sealed bottle, worst difference of the absolute pressure: expected and worst case {worst:.4?} %");
    // What is claimed of the gas; everything else in the bottle is known far better.
    assert!(worst.iter().all(|worst| *worst <= 0.1));
    checked(count);
}
