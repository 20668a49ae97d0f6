//! What a call through the C face costs over the bare equation: the catalogue's kernel, in SI units, through a pointer.
//!
//! Each line is one run: equation and call by turns; the median of the differences of neighbours, and behind it the
//! difference of the quickest of each, which is what it takes where nobody else wants the processor.

use carb::{carb_bind, carb_bound, carb_bound_call, carb_bound_free, carb_inputs, carb_inputs_init, carb_inputs_set};
use carb_core::balance::open::RESIDUAL_TABLE;
use carb_core::evidence::Equation;
use carb_core::property::atmosphere::STATION_PRESSURE;
use carb_core::property::gravity::PLATO;

use carb_core::property::solubility::chart::CHART_FIT;
use core::ffi::{CStr, c_char};
use core::ptr::null_mut;
use std::hint::black_box;
use std::time::Instant;

const CALLS: usize = 200_000;
const PAIRS: usize = 31;

type Result<R> = unsafe extern "C" fn(*const carb_inputs, *mut R, *mut carb::carb_error) -> i32;

/// Nanoseconds for each of many calls.
fn each(mut call: impl FnMut(f64) -> f64) -> f64 {
    let start = Instant::now();
    let mut sum = 0.0;
    for at in 0..CALLS {
        sum += call(at as f64 * 1e-9);
    }
    black_box(sum);
    start.elapsed().as_secs_f64() * 1e9 / CALLS as f64
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

/// What is compared: an equation with numbers in SI units, and the function that answers it with numbers under names.
struct Pair<R> {
    function: &'static CStr,
    equation: &'static Equation,
    bare: Vec<f64>,
    /// The first of them varies, as does the first number of the equation.
    numbers: Vec<(&'static CStr, f64)>,
    output: &'static CStr,
    struct_call: Result<R>,
    result: R,
}

fn run<R>(mut pair: Pair<R>) {
    let mut inputs = carb_inputs_new();
    let mut bound: *mut carb_bound = null_mut();
    let names: Vec<*const c_char> = pair.numbers.iter().map(|(name, _)| name.as_ptr()).collect();
    let (function, output) = (pair.function.as_ptr(), pair.output.as_ptr());
    // SAFETY: all is there, as carb.h asks.
    let code = unsafe { carb_bind(function, &inputs, names.as_ptr(), names.len(), output, &mut bound, null_mut()) };
    assert_eq!(code, 0, "{:?}", pair.function);
    let numbers: Vec<f64> = pair.numbers.iter().map(|(_, number)| *number).collect();
    for (name, number) in &pair.numbers {
        // SAFETY: as above.
        assert_eq!(unsafe { carb_inputs_set(&mut inputs, name.as_ptr(), *number, null_mut()) }, 0);
    }
    let (mut bare, mut given) = (pair.bare.clone(), numbers.clone());
    let (mut equations, mut calls, mut structs) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..PAIRS {
        let equation = each(|more| {
            bare[0] = pair.bare[0] + more;
            (black_box(pair.equation.kernel))(&bare)
        });
        let call = each(|more| {
            let mut out = 0.0;
            given[0] = numbers[0] + more;
            // SAFETY: as above.
            unsafe { black_box(carb_bound_call)(bound, given.as_ptr(), given.len(), &mut out) };
            out
        });
        let by_struct = each(|_| {
            // SAFETY: as above; the inputs stay, which makes no difference to the work.
            f64::from(unsafe { black_box(pair.struct_call)(&inputs, &mut pair.result, null_mut()) })
        });
        equations.push(equation);
        calls.push(call);
        structs.push(by_struct);
    }
    // SAFETY: made above, freed once.
    unsafe { carb_bound_free(bound) };
    let over = |times: &[f64]| {
        let differences = times.iter().zip(&equations).map(|(time, equation)| time - equation).collect();
        (median(differences), least(times) - least(&equations))
    };
    let ((call, call_best), (by_struct, struct_best)) = (over(&calls), over(&structs));
    println!(
        "{:<18} equation {:5.1} ns, bound call {call:+5.1} ({call_best:+.1}) ns over it, call by struct {by_struct:+5.0} \
         ({struct_best:+.0}) ns over it",
        pair.function.to_string_lossy(),
        median(equations.clone()),
    );
}

fn least(values: &[f64]) -> f64 {
    values.iter().copied().fold(f64::INFINITY, f64::min)
}

fn carb_inputs_new() -> carb_inputs {
    // SAFETY: a struct of numbers, which the next line fills.
    let mut inputs: carb_inputs = unsafe { core::mem::zeroed() };
    // SAFETY: as long as it says.
    assert_eq!(unsafe { carb_inputs_init(&mut inputs, size_of::<carb_inputs>() as u32) }, 0);
    inputs
}

macro_rules! pair {
    ($function:ident, $result:ident, $equation:ident, $bare:expr, $numbers:expr, $output:expr) => {{
        // SAFETY: a struct of numbers.
        let mut result: carb::$result = unsafe { core::mem::zeroed() };
        result.struct_size = size_of::<carb::$result>() as u32;
        let function = CStr::from_bytes_with_nul(concat!(stringify!($function), "\0").as_bytes()).expect("a name");
        let function = CStr::from_bytes_with_nul(&function.to_bytes_with_nul()[5..]).expect("a name");
        run(Pair {
            function,
            equation: &$equation,
            bare: $bare.to_vec(),
            numbers: $numbers.to_vec(),
            output: $output,
            struct_call: carb::$function,
            result,
        });
    }};
}

fn main() {
    pair!(
        carb_dissolved_co2,
        carb_dissolved_co2_result,
        CHART_FIT,
        [184_000.0, 276.5, 1.0],
        [(c"abs_kpa", 184.0), (c"temperature_c", 3.35)],
        c"co2_g_per_l"
    );
    pair!(
        carb_residual_co2,
        carb_residual_co2_result,
        RESIDUAL_TABLE,
        [293.15, 101_325.0, 1.0],
        [(c"warmest_c", 20.0), (c"ambient_kpa", 101.325)],
        c"co2_g_per_l"
    );
    pair!(carb_gravity, carb_gravity_result, PLATO, [1.048], [(c"sg", 1.048)], c"plato");
    pair!(
        carb_ambient_pressure,
        carb_ambient_pressure_result,
        STATION_PRESSURE,
        [101_325.0, 1500.0],
        [(c"sea_level_kpa", 101.325), (c"altitude_m", 1500.0)],
        c"ambient_kpa"
    );
}
