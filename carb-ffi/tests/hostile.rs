//! What C can get wrong: every call ends in a status, and no output is left that could be taken for a number.
#![allow(non_upper_case_globals, reason = "C names")]

use carb::*;
use core::ffi::{CStr, c_char};
use core::mem::offset_of;
use core::ptr::{null, null_mut};

const OK: i32 = carb_status::CARB_OK as i32;
const NULL: i32 = carb_status::CARB_NULL_POINTER as i32;
const SIZE: i32 = carb_status::CARB_BAD_STRUCT_SIZE as i32;

fn status(status: carb_status) -> i32 {
    status as i32
}

fn set(inputs: &mut carb_inputs, name: &CStr, value: f64) -> i32 {
    unsafe { carb_inputs_set(inputs, name.as_ptr(), value, null_mut()) }
}

fn empty() -> carb_inputs {
    let mut inputs = core::mem::MaybeUninit::uninit();
    assert_eq!(unsafe { carb_inputs_init(inputs.as_mut_ptr(), size_of::<carb_inputs>() as u32) }, OK);
    unsafe { inputs.assume_init() }
}

fn beer() -> carb_inputs {
    let mut inputs = empty();
    assert_eq!(set(&mut inputs, c"volumes", 2.5), OK);
    inputs.temperature_c = 4.0;
    inputs.altitude_m = 0.0;
    inputs
}

fn result() -> carb_keg_pressure_result {
    carb_keg_pressure_result {
        struct_size: size_of::<carb_keg_pressure_result>() as u32,
        cautions: 77,
        danger: 77,
        caution_count: 77,
        gauge_kpa: 77.0,
        abs_kpa: 77.0,
    }
}

/// Calls, and sees to it that an error leaves no number.
fn keg(inputs: *const carb_inputs) -> (i32, carb_keg_pressure_result, carb_error) {
    let (mut result, mut error) = (result(), carb_error::empty());
    let code = unsafe { carb_keg_pressure(inputs, &mut result, &mut error) };
    assert_eq!(code, error.code);
    assert_eq!(code < 0, result.gauge_kpa.is_nan() && result.abs_kpa.is_nan());
    assert_eq!(code < 0, !text(&error.text).is_empty());
    assert!(result.danger == 0 && result.cautions != 77 && result.caution_count != 77);
    (code, result, error)
}

fn text(chars: &[c_char]) -> String {
    unsafe { CStr::from_ptr(chars.as_ptr()) }.to_str().expect("UTF-8").into()
}

#[test]
fn an_answer() {
    let (code, result, _) = keg(&beer());
    assert_eq!(code, OK);
    assert!((result.abs_kpa - result.gauge_kpa - 101.325).abs() < 1e-9);
    assert_eq!(result.caution_count, 1, "the composition was assumed");
    let mut alone = self::result();
    assert_eq!(unsafe { carb_keg_pressure(&beer(), &mut alone, null_mut()) }, OK);
    assert_eq!(alone.gauge_kpa.to_bits(), result.gauge_kpa.to_bits());
}

#[test]
fn null_pointers() {
    let (mut inputs, mut error) = (beer(), carb_error::empty());
    assert_eq!(keg(null()).0, NULL);
    assert_eq!(text(&keg(null()).2.parameter), "inputs");
    let (name, choice) = (c"beverage".as_ptr(), c"beer".as_ptr());
    let mut out = 77.0;
    unsafe {
        assert_eq!(carb_keg_pressure(&inputs, null_mut(), &mut error), NULL);
        assert_eq!(text(&error.parameter), "result");
        assert_eq!(carb_inputs_init(null_mut(), size_of::<carb_inputs>() as u32), NULL);
        assert_eq!(carb_inputs_set(null_mut(), c"sg".as_ptr(), 1.0, &mut error), NULL);
        assert_eq!(carb_inputs_set(&mut inputs, null(), 1.0, &mut error), NULL);
        assert_eq!(carb_inputs_choose(null_mut(), name, choice, &mut error), NULL);
        assert_eq!(carb_inputs_choose(&mut inputs, null(), choice, &mut error), NULL);
        assert_eq!(carb_inputs_choose(&mut inputs, name, null(), &mut error), NULL);
        assert_eq!(carb_is_first_name(null()), 0);
        assert_eq!(carb_convert(null(), c"psi".as_ptr(), 1.0, &mut out, &mut error), NULL);
        assert!(out.is_nan());
        assert_eq!(carb_convert(c"psi".as_ptr(), null(), 1.0, &mut out, &mut error), NULL);
        assert_eq!(carb_convert(c"psi".as_ptr(), c"bar".as_ptr(), 1.0, null_mut(), &mut error), NULL);
        let unaligned = (&raw const inputs).cast::<u8>().add(1).cast();
        assert_eq!(carb_keg_pressure(unaligned, &mut result(), &mut error), NULL);
    }
}

#[test]
fn null_pointers_of_arrays() {
    let inputs = {
        let mut inputs = beer();
        inputs.temperature_c = NOT_GIVEN;
        inputs
    };
    let temperatures = [2.0, 4.0, 6.0];
    let good = carb_series { name: c"temperature_c".as_ptr(), values: temperatures.as_ptr(), count: 3 };
    let call = |inputs: *const carb_inputs, series: *const carb_series, output: *const c_char| {
        let (mut out, mut status, mut error) = ([77.0; 3], [77; 3], carb_error::empty());
        let (o, s) = (out.as_mut_ptr(), status.as_mut_ptr());
        let code = unsafe { carb_keg_pressure_n(inputs, series, 1, output, 3, o, s, &mut error) };
        assert_eq!(code, error.code);
        for (value, status) in out.iter().zip(status) {
            assert_eq!(value.is_nan(), code < 0);
            assert_eq!(status, code);
        }
        code
    };
    let gauge = c"gauge_psi".as_ptr();
    assert_eq!(call(&inputs, &good, gauge), OK);
    assert_eq!(call(null(), &good, gauge), NULL);
    assert_eq!(call(&inputs, null(), gauge), NULL);
    assert_eq!(call(&inputs, &good, null()), NULL);
    assert_eq!(call(&inputs, &carb_series { name: null(), ..good }, gauge), NULL);
    assert_eq!(call(&inputs, &carb_series { values: null(), ..good }, gauge), NULL);
    assert_eq!(call(&inputs, &good, c"gauge_ps".as_ptr()), status(carb_status::CARB_UNKNOWN_OUTPUT));
    assert_eq!(call(&inputs, &carb_series { count: 2, ..good }, gauge), status(carb_status::CARB_BAD_COUNT));
    assert_eq!(call(&inputs, &carb_series { count: 0, ..good }, gauge), status(carb_status::CARB_BAD_COUNT));
    let altitude = carb_series { name: c"altitude_ft".as_ptr(), ..good };
    assert_eq!(call(&inputs, &altitude, gauge), status(carb_status::CARB_GIVEN_TWICE));
    let sea_level = carb_series { name: c"sea_level_kpa".as_ptr(), ..good };
    assert_eq!(call(&inputs, &sea_level, gauge), status(carb_status::CARB_WRONG_TYPE));
    let (mut out, mut status, mut error) = ([77.0; 3], [77; 3], carb_error::empty());
    let (o, s) = (out.as_mut_ptr(), status.as_mut_ptr());
    unsafe {
        assert_eq!(carb_keg_pressure_n(&inputs, &good, 1, gauge, 3, null_mut(), s, &mut error), NULL);
        assert_eq!(status, [NULL; 3]);
        assert_eq!(carb_keg_pressure_n(&inputs, &good, 1, gauge, 3, o, null_mut(), &mut error), NULL);
        assert!(out.iter().all(|value| value.is_nan()));
        // Nothing is asked for: nothing is needed.
        assert_eq!(carb_keg_pressure_n(&beer(), null(), 0, gauge, 0, null_mut(), null_mut(), &mut error), OK);
        let counts = [(usize::MAX, 3), (1, usize::MAX), (1, usize::MAX / 10)];
        for (series_count, n) in counts {
            let code = carb_keg_pressure_n(&inputs, &good, series_count, gauge, n, o, s, &mut error);
            assert_eq!(code, carb_status::CARB_BAD_COUNT as i32);
        }
        let over = carb_keg_pressure_n(&inputs, &good, 1, gauge, 3, o, o.cast(), &mut error);
        assert_eq!(over, carb_status::CARB_OVERLAP as i32);
    }
}

#[test]
fn an_array_over_its_own_input() {
    let mut inputs = beer();
    inputs.temperature_c = NOT_GIVEN;
    let temperatures = [2.0, f64::NAN, 6.0, 500.0];
    let (mut apart, mut over) = ([0.0; 4], temperatures);
    let (mut status, mut error) = ([0; 4], carb_error::empty());
    let mut call = |values: *const f64, out: *mut f64| {
        let series = carb_series { name: c"temperature_c".as_ptr(), values, count: 4 };
        let s = status.as_mut_ptr();
        let code = unsafe { carb_keg_pressure_n(&inputs, &series, 1, c"abs_bar".as_ptr(), 4, out, s, &mut error) };
        (code, status)
    };
    let first = call(temperatures.as_ptr(), apart.as_mut_ptr());
    let place = over.as_mut_ptr();
    assert_eq!(first, call(place, place));
    assert_eq!(first, (OK, [0, carb_status::CARB_NOT_A_NUMBER as i32, 0, carb_status::CARB_OUT_OF_RANGE as i32]));
    assert_eq!(apart.map(f64::to_bits), over.map(f64::to_bits));
    assert!(apart[1].is_nan() && apart[3].is_nan() && apart[0] < apart[2]);
}

#[test]
fn numbers_that_are_none() {
    let not_a_number = status(carb_status::CARB_NOT_A_NUMBER);
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let mut inputs = beer();
        inputs.temperature_c = bad;
        let (code, _, error) = keg(&inputs);
        assert_eq!((code, text(&error.parameter).as_str()), (not_a_number, "temperature_c"));
        assert_eq!(set(&mut inputs, c"temperature_f", bad), not_a_number);
        let mut out = 77.0;
        let code = unsafe { carb_convert(c"psi".as_ptr(), c"pa".as_ptr(), bad, &mut out, null_mut()) };
        assert!(code == not_a_number && out.is_nan());
    }
    let mut inputs = beer();
    inputs.temperature_c = NOT_GIVEN;
    let (code, _, error) = keg(&inputs);
    assert_eq!((code, text(&error.parameter).as_str()), (status(carb_status::CARB_MISSING), "temperature_c"));
    assert!(error.value.is_nan() && error.low.is_nan() && error.high.is_nan());
    inputs.temperature_c = 200.0;
    let (code, _, error) = keg(&inputs);
    assert_eq!(code, status(carb_status::CARB_OUT_OF_RANGE));
    assert!((error.value, error.low, error.high) == (200.0, -5.0, 60.0), "{error:?}");
}

#[test]
fn enumerators_that_are_none() {
    for bad in [-1, 7, i32::MAX, i32::MIN] {
        let mut inputs = beer();
        inputs.beverage = bad;
        let (code, _, error) = keg(&inputs);
        assert_eq!((code, text(&error.parameter).as_str()), (status(carb_status::CARB_UNKNOWN_ENUM), "beverage"));
        let mut inputs = beer();
        inputs.count_headspace = bad;
        assert_eq!(keg(&inputs).0, status(carb_status::CARB_UNKNOWN_ENUM));
    }
    let mut inputs = beer();
    inputs.count_headspace = carb_flag::CARB_YES as i32;
    assert_eq!(keg(&inputs).0, status(carb_status::CARB_NOT_TAKEN));
    let choose = |inputs: &mut carb_inputs, name: &CStr, choice: &CStr| unsafe {
        carb_inputs_choose(inputs, name.as_ptr(), choice.as_ptr(), null_mut())
    };
    let mut inputs = beer();
    assert_eq!(choose(&mut inputs, c"beverage", c"Soft drink"), OK);
    assert_eq!(inputs.beverage, carb_beverage::CARB_BEVERAGE_SOFT_DRINK as i32);
    assert_eq!(choose(&mut inputs, c"beverage", c"juice"), status(carb_status::CARB_UNKNOWN_CHOICE));
    assert_eq!(choose(&mut inputs, c"sugar", c"dextrose"), status(carb_status::CARB_AMBIGUOUS_SUGAR));
    assert_eq!(choose(&mut inputs, c"count_headspace", c"perhaps"), status(carb_status::CARB_WRONG_TYPE));
    assert_eq!(choose(&mut inputs, c"count_headspace", c"false"), OK);
    assert_eq!(inputs.count_headspace, carb_flag::CARB_NO as i32);
    assert_eq!(choose(&mut inputs, c"temperature_c", c"4"), status(carb_status::CARB_WRONG_TYPE));
    assert_eq!(set(&mut inputs, c"beverage", 2.0), status(carb_status::CARB_WRONG_TYPE));
    assert_eq!(set(&mut inputs, c"serving_c", 2.0), status(carb_status::CARB_NOT_TAKEN));
    assert_eq!(inputs.beverage, carb_beverage::CARB_BEVERAGE_SOFT_DRINK as i32, "what was refused changed nothing");
}

#[test]
fn sizes_of_structs() {
    for bad in [0, 4, 9, 4104, u32::MAX] {
        let mut inputs = beer();
        inputs.struct_size = bad;
        assert_eq!(keg(&inputs).0, SIZE);
        assert_eq!(unsafe { carb_inputs_init(&mut inputs, bad) }, SIZE);
        let mut result = result();
        result.struct_size = bad;
        assert_eq!(unsafe { carb_keg_pressure(&beer(), &mut result, null_mut()) }, SIZE);
        let (mut result, mut error) = (self::result(), carb_error::empty());
        error.struct_size = bad;
        assert_eq!(unsafe { carb_keg_pressure(&beer(), &mut result, &mut error) }, SIZE);
        assert!(result.gauge_kpa.is_nan() && error.code == 0);
    }
}

#[test]
fn structs_of_older_callers() {
    // What lies behind the end that the caller knows is not looked at, and not written.
    let mut inputs = beer();
    inputs.struct_size = offset_of!(carb_inputs, ambient_kpa) as u32;
    inputs.ambient_kpa = f64::NAN;
    assert_eq!(keg(&inputs).0, OK);
    inputs.struct_size = offset_of!(carb_inputs, altitude_m) as u32;
    assert_eq!(keg(&inputs).0, status(carb_status::CARB_MISSING));
    // What does not fit into it is refused, not dropped.
    assert_eq!((set(&mut inputs, c"temperature_f", 40.0), set(&mut inputs, c"altitude_ft", 5280.0)), (OK, SIZE));
    let choose = |inputs: &mut carb_inputs, name: &CStr, choice: &CStr| unsafe {
        carb_inputs_choose(inputs, name.as_ptr(), choice.as_ptr(), null_mut())
    };
    assert_eq!(choose(&mut inputs, c"beverage", c"beer"), OK);
    assert_eq!(choose(&mut inputs, c"purge", c"none"), SIZE);
    let (mut result, mut error) = (result(), carb_error::empty());
    result.struct_size = offset_of!(carb_keg_pressure_result, abs_kpa) as u32;
    error.struct_size = offset_of!(carb_error, value) as u32;
    error.value = 77.0;
    assert_eq!(unsafe { carb_keg_pressure(&beer(), &mut result, &mut error) }, OK);
    assert!(result.gauge_kpa != 77.0 && result.abs_kpa == 77.0 && error.value == 77.0);
    inputs.temperature_c = f64::NAN;
    assert_eq!(unsafe { carb_keg_pressure(&inputs, &mut result, &mut error) }, error.code);
    assert!(result.gauge_kpa.is_nan() && result.abs_kpa == 77.0 && error.value == 77.0);
}

#[test]
fn structs_of_newer_callers() {
    #[repr(C)]
    struct Newer<T> {
        known: T,
        more: [f64; 2],
    }
    let mut inputs = Newer { known: beer(), more: [77.0; 2] };
    let place = (&raw mut inputs).cast::<carb_inputs>();
    assert_eq!(unsafe { carb_inputs_init(place, size_of::<Newer<carb_inputs>>() as u32) }, OK);
    let size = inputs.known.struct_size;
    inputs.known = beer();
    inputs.known.struct_size = size;
    let place = (&raw const inputs).cast::<carb_inputs>();
    assert_eq!(keg(place).0, OK);
    // A member that this version does not know may not be passed over in silence.
    inputs.more[1] = 0.0;
    assert_eq!(keg((&raw const inputs).cast()).0, SIZE);
    let mut newer = Newer { known: result(), more: [77.0; 2] };
    newer.known.struct_size = size_of::<Newer<carb_keg_pressure_result>>() as u32;
    let code = unsafe { carb_keg_pressure(&beer(), (&raw mut newer).cast(), null_mut()) };
    assert!(code == OK && newer.known.gauge_kpa > 0.0 && newer.more.iter().all(|value| value.is_nan()));
    // A text that this version does not know ends.
    let text = newer.more.map(f64::to_ne_bytes);
    assert!(CStr::from_bytes_until_nul(text.as_flattened()).is_ok());
}

#[test]
fn texts_that_are_none() {
    let mut inputs = beer();
    let mut error = carb_error::empty();
    let bad_utf8 = status(carb_status::CARB_BAD_UTF8);
    assert_eq!(set(&mut inputs, c"temperature_\xff", 4.0), bad_utf8);
    let endless = [b'a' as c_char; 300];
    let code = unsafe { carb_inputs_set(&mut inputs, endless.as_ptr(), 4.0, &mut error) };
    assert_eq!(code, status(carb_status::CARB_TEXT_TOO_LONG));
    let code = unsafe { carb_inputs_set(&mut inputs, c"tempertaure_c".as_ptr(), 4.0, &mut error) };
    assert_eq!(code, status(carb_status::CARB_UNKNOWN_NAME));
    assert!(text(&error.text).contains("temperature_c"), "{}", text(&error.text));
    // Of several bytes to a letter, and too long for the error: cut between two letters, and marked.
    let long = std::ffi::CString::new("ü".repeat(100)).expect("no NUL");
    let code = unsafe { carb_inputs_set(&mut inputs, long.as_ptr(), 4.0, &mut error) };
    assert_eq!(code, status(carb_status::CARB_UNKNOWN_NAME));
    assert_eq!(text(&error.parameter), "ü".repeat(30) + "...");
    let mut out = 77.0;
    for (from, to) in [(c"psi", c"c"), (c"gauge_psi", c"bar"), (c"", c"bar"), (c"co2_g_per_l", c"g_per_l")] {
        let code = unsafe { carb_convert(from.as_ptr(), to.as_ptr(), 1.0, &mut out, &mut error) };
        assert!(code == status(carb_status::CARB_UNKNOWN_UNIT) && out.is_nan());
    }
}

fn json(function: &CStr, request: &[u8], buffer: &mut [u8]) -> (i32, usize) {
    let mut needed = 77;
    let request = (request.as_ptr().cast(), request.len());
    let into = (buffer.as_mut_ptr().cast(), buffer.len());
    let code = unsafe { carb_json(function.as_ptr(), request.0, request.1, into.0, into.1, &mut needed) };
    (code, needed)
}

#[test]
fn how_sure_an_answer_is_comes_through_json() {
    let request = br#"{"carb": 1, "volumes": 2.5, "temperature_c": 4, "altitude_m": 0,
        "uncertainty": {"temperature_c": "thermometer", "volumes": {"range": 0.1}}}"#;
    let whole = carb_core::plan::json::answer_text("keg_pressure", core::str::from_utf8(request).expect("UTF-8"));
    assert!(whole.contains("\"budget\"") && whole.contains("\"models\""), "{whole}");
    let mut buffer = vec![0; whole.len() + 1];
    assert_eq!(json(c"keg_pressure", request, &mut buffer), (status(carb_status::CARB_OK), whole.len() + 1));
    assert_eq!(&buffer[..whole.len()], whole.as_bytes());
    let wrong = br#"{"carb": 1, "volumes": 2.5, "temperature_c": 4, "altitude_m": 0, "uncertainty": {"volumes": -1}}"#;
    let mut buffer = vec![0; 4096];
    assert_eq!(json(c"keg_pressure", wrong, &mut buffer).0, status(carb_status::CARB_WRONG_TYPE));
}

#[test]
fn json_through_buffers() {
    let request = br#"{"carb": 1, "sg": 1.048}"#;
    let whole = carb_core::plan::json::answer_text("gravity", core::str::from_utf8(request).expect("UTF-8"));
    let room = whole.len() + 1;
    let too_small = status(carb_status::CARB_BUFFER_TOO_SMALL);
    for capacity in [0, 1, 2, room - 1] {
        let mut buffer = vec![77; capacity];
        assert_eq!(json(c"gravity", request, &mut buffer), (too_small, room));
        assert!(buffer.first().is_none_or(|first| *first == 0) && buffer.iter().skip(1).all(|byte| *byte == 77));
    }
    // The request ends where its length says, whatever follows.
    let more = [&request[..], b"}}} rubbish"].concat();
    let mut buffer = vec![77; room + 1];
    assert_eq!(json(c"gravity", &more[..request.len()], &mut buffer), (OK, room));
    assert_eq!(&buffer[..whole.len()], whole.as_bytes());
    assert_eq!(buffer[whole.len()..], [0, 77]);
    // The answer may even be written over its request.
    let mut shared = vec![b' '; room];
    shared[..request.len()].copy_from_slice(request);
    let (start, mut needed) = (shared.as_mut_ptr().cast::<c_char>(), 0);
    let code = unsafe { carb_json(c"gravity".as_ptr(), start, request.len(), start, room, &mut needed) };
    assert!(code == OK && &shared[..whole.len()] == whole.as_bytes());

    let mut buffer = vec![77; 4096];
    let mut answer = |function: &CStr, request: &[u8]| {
        buffer.fill(77);
        let (code, needed) = json(function, request, &mut buffer);
        let text = CStr::from_bytes_until_nul(&buffer).expect("an end").to_str().expect("UTF-8").to_owned();
        assert_eq!(needed, if text.is_empty() { 0 } else { text.len() + 1 });
        (code, text)
    };
    for bad in ["", "{", "[]", "\0", r#"{"carb": 1, "sg": NaN}"#] {
        let (code, text) = answer(c"gravity", bad.as_bytes());
        assert_eq!(code, status(carb_status::CARB_BAD_JSON));
        assert!(text.starts_with(r#"{"carb":1,"error":{"code":-18,"#), "{text}");
    }
    assert_eq!(answer(c"gravity", b"\xff\xfe"), (status(carb_status::CARB_BAD_UTF8), String::new()));
    assert_eq!(answer(c"grav\xfftity", request), (status(carb_status::CARB_BAD_UTF8), String::new()));
    assert_eq!(answer(c"grvity", request).0, status(carb_status::CARB_UNKNOWN_NAME));
    assert_eq!(answer(c"plan", request).0, status(carb_status::CARB_NOT_TAKEN));
    let (function, text) = (c"gravity".as_ptr(), request.as_ptr().cast());
    let (start, room, mut needed) = (buffer.as_mut_ptr().cast::<c_char>(), buffer.len(), 77);
    unsafe {
        assert_eq!(carb_json(null(), text, request.len(), start, room, &mut needed), NULL);
        assert_eq!((needed, *start), (0, 0));
        assert_eq!(carb_json(function, null(), request.len(), start, room, &mut needed), NULL);
        assert_eq!(carb_json(function, null(), 0, start, room, &mut needed), NULL);
        needed = 77;
        assert_eq!(carb_json(function, text, request.len(), null_mut(), room, &mut needed), NULL);
        assert_eq!(needed, 0);
        *start = 77;
        assert_eq!(carb_json(function, text, request.len(), start, room, null_mut()), NULL);
        assert_eq!(*start, 0);
        assert_eq!(
            carb_json(function, text, usize::MAX, start, room, &mut needed),
            status(carb_status::CARB_BAD_COUNT)
        );
    }
}

#[test]
fn the_pages() {
    let day = br#"{"carb": 1, "packaged_l": 10, "volumes": 2.4, "warmest_c": 18, "altitude_m": 0}"#;
    let claims = br#"{"carb": 1, "claims": [{"quantity": "keg_pressure", "value": "11.3", "unit": "psi", "volumes": 2.5, "temperature_f": 38, "altitude_m": 0}]}"#;
    // A pointer to either, as C has it.
    let pages: [(ThePage, &[u8]); 4] =
        [(carb_plan_page, day), (carb_bottling_page, day), (carb_kegging_page, day), (carb_crosscheck_page, claims)];
    for (page, request) in pages {
        the_page(page, request);
    }
    // What is wrong in a row is told with its place.
    let request = br#"{"carb": 1, "bottles": [{"bottle_ml": 500, "count": 1}, {"bottle_ml": 500}]}"#;
    let (mut needed, mut error) = (0, carb_error::empty());
    let start = request.as_ptr().cast::<c_char>();
    let code = unsafe { carb_bottling_page(start, request.len(), null_mut(), 0, &mut needed, null_mut(), &mut error) };
    assert_eq!(code, status(carb_status::CARB_MISSING));
    let text = unsafe { CStr::from_ptr(error.text.as_ptr()) }.to_str().unwrap();
    assert!(text.starts_with("in row 2 of bottles: count is missing"), "{text}");
}

type ThePage =
    unsafe extern "C" fn(*const c_char, usize, *mut c_char, usize, *mut usize, *mut i32, *mut carb_error) -> i32;

fn the_page(page: ThePage, request: &[u8]) {
    let (start, length) = (request.as_ptr().cast::<c_char>(), request.len());
    let (mut buffer, mut needed, mut danger) = (vec![77u8; 65536], 0, 77);
    let room = buffer.len();
    let place = buffer.as_mut_ptr().cast::<c_char>();
    let mut error = carb_error::empty();
    unsafe {
        assert_eq!(page(start, length, place, room, &mut needed, &mut danger, &mut error), OK);
        assert!(needed > 400 && *place.add(needed - 1) == 0 && danger == 0 && error.code == OK);
        assert_eq!(page(start, length, place, room, &mut needed, null_mut(), null_mut()), OK);
        let short = page(start, length, null_mut(), 0, &mut needed, &mut danger, &mut error);
        assert_eq!(short, status(carb_status::CARB_BUFFER_TOO_SMALL));
        danger = 77;
        let refused = page(start, length - 1, place, room, &mut needed, &mut danger, &mut error);
        assert_eq!(refused, status(carb_status::CARB_BAD_JSON));
        assert!(danger == 0 && needed == 0 && *place == 0);
        assert_eq!(page(null(), length, place, room, &mut needed, &mut danger, &mut error), NULL);
        assert_eq!(page(start, length, null_mut(), room, &mut needed, &mut danger, &mut error), NULL);
        assert_eq!(page(start, length, place, room, null_mut(), &mut danger, &mut error), NULL);
    }
}

#[test]
fn conversions() {
    let convert = |from: &CStr, to: &CStr, value| {
        let mut out = 0.0;
        assert_eq!(unsafe { carb_convert(from.as_ptr(), to.as_ptr(), value, &mut out, null_mut()) }, OK);
        out
    };
    assert!((convert(c"psi", c"kpa", 1.0) - 6.894757293168361).abs() < 1e-14);
    assert_eq!(convert(c"f", c"f", 0.1).to_bits(), 0.1f64.to_bits());
    assert!((convert(c"f", c"c", 212.0) - 100.0).abs() < 1e-12);
}

#[test]
fn what_is_set_is_a_number_or_is_not_given() {
    let mut inputs = beer();
    assert_eq!(set(&mut inputs, c"temperature_f", NOT_GIVEN), OK);
    assert_eq!(inputs.temperature_c, NOT_GIVEN);
    assert_eq!(keg(&inputs).0, status(carb_status::CARB_MISSING));
    assert_eq!(set(&mut inputs, c"beverage", NOT_GIVEN), status(carb_status::CARB_WRONG_TYPE));
    // Finite in its own unit and in SI units, but not in that of the member.
    assert_eq!(set(&mut inputs, c"packaged_us_gal", 1.7e308), status(carb_status::CARB_OUT_OF_RANGE));
    assert_eq!(inputs.packaged_l, NOT_GIVEN);
}

#[test]
fn names_of_members() {
    let first = |name: &CStr| unsafe { carb_is_first_name(name.as_ptr()) };
    assert_eq!([c"temperature_c", c"beverage", c"count_headspace", c"sg"].map(first), [1; 4]);
    assert_eq!([c"temperature_f", c"serving_c", c"title", c"", c"\xff"].map(first), [0; 5]);
}

/// The floating-point state is that of the caller again, whatever it was, and no bit of an answer depends on it.
#[cfg(target_arch = "x86_64")]
#[test]
fn the_floating_point_state_is_left_alone() {
    use core::arch::asm;
    fn read() -> u32 {
        let mut state = 0u32;
        unsafe { asm!("stmxcsr [{}]", in(reg) &raw mut state) };
        state
    }
    fn load(state: u32) {
        unsafe { asm!("ldmxcsr [{}]", in(reg) &raw const state) };
    }
    let usual = 0x1f80;
    let (inputs, request) =
        (beer(), br#"{"carb": 1, "packaged_l": 10, "volumes": 2.4, "warmest_c": 18, "altitude_m": 0}"#);
    let (_, plain, _) = keg(&inputs);
    let mut buffer = vec![0; 65536];
    // All clear; every flag set; each rounding; subnormals as zero; every trap armed.
    for state in [usual, usual | 0x3f, 0x3f80, 0x5f80, 0x7f80, usual | 0x8040, 0x0000] {
        let (mut answer, mut error) = (result(), carb_error::empty());
        let (series, mut out, mut statuses) = ([1.0, 2.5, f64::NAN], [0.0; 3], [0; 3]);
        let series = carb_series { name: c"volumes".as_ptr(), values: series.as_ptr(), count: 3 };
        let mut varied = inputs;
        varied.co2_g_per_l = NOT_GIVEN;
        let mut converted = 0.0;
        let (mut codes, mut states) = ([0; 5], [0; 5]);
        load(state);
        unsafe {
            codes[0] = carb_keg_pressure(&inputs, &mut answer, &mut error);
            states[0] = read();
            codes[1] = carb_keg_pressure_n(
                &varied,
                &series,
                1,
                c"gauge_psi".as_ptr(),
                3,
                out.as_mut_ptr(),
                statuses.as_mut_ptr(),
                &mut error,
            );
            states[1] = read();
            codes[2] = json(c"plan", request, &mut buffer).0;
            states[2] = read();
            codes[3] = carb_convert(c"f".as_ptr(), c"c".as_ptr(), 38.0, &mut converted, &mut error);
            states[3] = read();
            codes[4] = set(&mut varied, c"temperature_f", f64::NAN);
            states[4] = read();
        }
        load(usual);
        assert_eq!(states, [state; 5], "{state:#x}");
        assert_eq!(codes, [0, 0, 0, 0, carb_status::CARB_NOT_A_NUMBER as i32]);
        assert_eq!(answer.gauge_kpa.to_bits(), plain.gauge_kpa.to_bits(), "{state:#x}");
    }
}
