//! A function kept with its request: it answers what the array call answers, from any thread, and refuses what is wrong.

use carb::*;
use core::ffi::{CStr, c_char};
use core::ptr::{null, null_mut};

const OK: i32 = carb_status::CARB_OK as i32;

fn sea_level() -> carb_inputs {
    let mut inputs = core::mem::MaybeUninit::uninit();
    assert_eq!(unsafe { carb_inputs_init(inputs.as_mut_ptr(), size_of::<carb_inputs>() as u32) }, OK);
    let mut inputs: carb_inputs = unsafe { inputs.assume_init() };
    inputs.altitude_m = 0.0;
    inputs
}

/// Binds, and sees to it that there is a handle or an error, never both and never neither.
fn bind(
    function: &CStr,
    inputs: &carb_inputs,
    names: &[&CStr],
    output: &CStr,
) -> Result<*mut carb_bound, (i32, String)> {
    let names: Vec<*const c_char> = names.iter().map(|name| name.as_ptr()).collect();
    let (mut bound, mut error) = (core::ptr::dangling_mut(), carb_error::empty());
    let (function, output) = (function.as_ptr(), output.as_ptr());
    let code = unsafe { carb_bind(function, inputs, names.as_ptr(), names.len(), output, &mut bound, &mut error) };
    assert_eq!((code < 0, error.code), (bound.is_null(), code));
    let parameter = unsafe { CStr::from_ptr(error.parameter.as_ptr()) }.to_str().expect("UTF-8");
    if code < 0 { Err((code, parameter.into())) } else { Ok(bound) }
}

fn call(bound: *const carb_bound, numbers: &[f64]) -> (i32, f64) {
    let mut out = 77.0;
    let code = unsafe { carb_bound_call(bound, numbers.as_ptr(), numbers.len(), &mut out) };
    assert_eq!(code < 0, out.is_nan());
    (code, out)
}

/// A handle that may be called from any thread.
#[derive(Clone, Copy)]
struct Shared(*const carb_bound);
unsafe impl Send for Shared {}
unsafe impl Sync for Shared {}
impl Shared {
    fn call(self, numbers: &[f64]) -> (i32, f64) {
        call(self.0, numbers)
    }
}

#[test]
fn it_answers_what_the_array_call_answers_from_eight_threads_at_once() {
    let inputs = sea_level();
    let bound = bind(c"keg_pressure", &inputs, &[c"volumes", c"temperature_f"], c"gauge_psi").expect("a handle");
    const N: usize = 2000;
    let volumes: Vec<f64> = (0..N).map(|at| 0.1 + at as f64 * 0.004).collect();
    let temperatures: Vec<f64> = (0..N).map(|at| 20.0 + (at * 37 % 500) as f64 * 0.2).collect();
    let (mut out, mut status) = (vec![0.0; N], vec![0; N]);
    let series = [
        carb_series { name: c"volumes".as_ptr(), values: volumes.as_ptr(), count: N },
        carb_series { name: c"temperature_f".as_ptr(), values: temperatures.as_ptr(), count: N },
    ];
    let (output, to, told) = (c"gauge_psi".as_ptr(), out.as_mut_ptr(), status.as_mut_ptr());
    assert_eq!(unsafe { carb_keg_pressure_n(&inputs, series.as_ptr(), 2, output, N, to, told, null_mut()) }, OK);
    assert!(status.iter().any(|s| *s < 0) && status.iter().any(|s| *s > 0) && status.contains(&0));
    let shared = Shared(bound);
    std::thread::scope(|scope| {
        for _ in 0..8 {
            scope.spawn(|| {
                for at in 0..N {
                    let (code, value) = shared.call(&[volumes[at], temperatures[at]]);
                    assert_eq!((code, value.to_bits()), (status[at], out[at].to_bits()), "element {at}");
                }
            });
        }
    });
    unsafe { carb_bound_free(bound) };
}

#[test]
fn a_request_that_cannot_be_answered_is_refused_once_and_for_all() {
    let inputs = sea_level();
    let names = [c"volumes", c"temperature_f"];
    let code = |function, names: &[&CStr], output| bind(function, &inputs, names, output).map(drop);
    let is = |status: carb_status, parameter: &str| Err((status as i32, parameter.to_string()));
    assert_eq!(code(c"keg_presure", &names, c"gauge_psi"), is(carb_status::CARB_UNKNOWN_NAME, "function"));
    assert_eq!(code(c"keg_pressure", &names, c"sg"), is(carb_status::CARB_UNKNOWN_OUTPUT, "sg"));
    assert_eq!(code(c"keg_pressure", &names[..1], c"gauge_psi"), is(carb_status::CARB_MISSING, "temperature_c"));
    assert_eq!(code(c"keg_pressure", &[c"volumes", c"co2_g_per_l"], c"gauge_psi").unwrap_err().0, -6);
    assert_eq!(code(c"plan", &names, c"gauge_psi"), is(carb_status::CARB_UNKNOWN_NAME, "function"));
    assert_eq!(code(c"keg_pressure", &[c"sg"], c"gauge_psi"), is(carb_status::CARB_NOT_TAKEN, "sg"));
    let multiplier = code(c"keg_pressure", &[c"solubility_multiplier"], c"gauge_psi");
    assert_eq!(multiplier, is(carb_status::CARB_WRONG_TYPE, "solubility_multiplier"));
    assert_eq!(code(c"keg_pressure", &[c"\xff"], c"gauge_psi").unwrap_err().0, carb_status::CARB_BAD_UTF8 as i32);
    let mut strange = inputs;
    strange.beverage = 99;
    let refused = bind(c"keg_pressure", &strange, &names, c"gauge_psi").unwrap_err();
    assert_eq!(refused, (carb_status::CARB_UNKNOWN_ENUM as i32, "beverage".into()));
}

#[test]
fn what_is_wrong_with_a_call_is_its_status() {
    let bound = bind(c"keg_pressure", &sea_level(), &[c"volumes", c"temperature_f"], c"gauge_psi").expect("a handle");
    let (code, psi) = call(bound, &[2.5, 38.0]);
    assert_eq!((code, format!("{psi:.2}").as_str()), (OK, "11.21"));
    assert_eq!(call(bound, &[f64::NAN, 38.0]).0, carb_status::CARB_NOT_A_NUMBER as i32);
    assert_eq!(call(bound, &[2.5, f64::INFINITY]).0, carb_status::CARB_NOT_A_NUMBER as i32);
    assert_eq!(call(bound, &[2.5, 1.0e9]).0, carb_status::CARB_OUT_OF_RANGE as i32);
    assert_eq!(call(bound, &[0.5, 38.0]).0, carb_status::CARB_TARGET_BELOW_HELD as i32);
    assert_eq!(call(bound, &[2.5, 70.0]).0, carb_caution::CARB_CAUTION_CHART_TEMPERATURE as i32);
    assert_eq!(call(bound, &[2.5]).0, carb_status::CARB_BAD_COUNT as i32);
    assert_eq!(call(bound, &[2.5, 38.0, 0.0]).0, carb_status::CARB_BAD_COUNT as i32);
    assert_eq!(call(null(), &[2.5, 38.0]).0, carb_status::CARB_NULL_POINTER as i32);
    let (null_pointer, mut out) = (carb_status::CARB_NULL_POINTER as i32, 77.0);
    assert_eq!(unsafe { carb_bound_call(bound, null(), 2, &mut out) }, null_pointer);
    assert!(out.is_nan());
    assert_eq!(unsafe { carb_bound_call(bound, [2.5, 38.0].as_ptr(), 2, null_mut()) }, null_pointer);
    unsafe {
        carb_bound_free(bound);
        carb_bound_free(null_mut());
    }
}

#[test]
fn every_null_pointer_of_a_bind_is_refused() {
    let inputs = sea_level();
    let (function, output, names) = (c"keg_pressure".as_ptr(), c"gauge_psi".as_ptr(), [c"volumes".as_ptr(), null()]);
    let place: *mut carb_bound = core::ptr::dangling_mut();
    let mut bound = place;
    let mut refused = |function, inputs, names, count, output| {
        bound = place;
        let code = unsafe { carb_bind(function, inputs, names, count, output, &mut bound, null_mut()) };
        assert!(code == carb_status::CARB_NULL_POINTER as i32 && bound.is_null());
    };
    refused(null(), &raw const inputs, names.as_ptr(), 1, output);
    refused(function, null(), names.as_ptr(), 1, output);
    refused(function, &raw const inputs, null(), 1, output);
    refused(function, &raw const inputs, names.as_ptr(), 2, output);
    refused(function, &raw const inputs, names.as_ptr(), 1, null());
    let code = unsafe { carb_bind(function, &inputs, names.as_ptr(), 1, output, null_mut(), null_mut()) };
    assert_eq!(code, carb_status::CARB_NULL_POINTER as i32);
    let code = unsafe { carb_bind(function, &inputs, names.as_ptr(), usize::MAX, output, &mut bound, null_mut()) };
    assert!(code == carb_status::CARB_BAD_COUNT as i32 && bound.is_null());
}

#[cfg(target_arch = "x86_64")]
#[test]
fn a_call_leaves_the_floating_point_state_alone_and_does_not_depend_on_it() {
    use core::arch::asm;
    let load = |state: u32| unsafe { asm!("ldmxcsr [{}]", in(reg) &raw const state) };
    let bound = bind(c"keg_pressure", &sea_level(), &[c"volumes", c"temperature_f"], c"gauge_psi").expect("a handle");
    let numbers = [[2.5, 38.0], [f64::NAN, 38.0], [2.5, 1.0e9]];
    let plain = numbers.map(|pair| call(bound, &pair).1.to_bits());
    // All clear; every flag set; each rounding; subnormals as zero; every trap armed.
    for state in [0x1f80, 0x1fbf, 0x3f80, 0x5f80, 0x7f80, 0x9fc0, 0x0000] {
        for (pair, plain) in numbers.iter().zip(plain) {
            let (mut out, mut found) = (0.0, 0u32);
            load(state);
            unsafe { carb_bound_call(bound, pair.as_ptr(), 2, &mut out) };
            unsafe { asm!("stmxcsr [{}]", in(reg) &raw mut found) };
            load(0x1f80);
            assert_eq!(found, state, "{state:#x}");
            assert_eq!(out.to_bits(), plain, "{state:#x}");
        }
    }
    unsafe { carb_bound_free(bound) };
}
