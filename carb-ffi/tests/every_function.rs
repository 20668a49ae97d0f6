//! Every function of the header, as a program may get it wrong: each call ends in a status, leaves no output that could be
//! taken for a number, and leaves the floating-point state as it was.

mod functions;

use carb::*;
use carb_core::basis::request::{Value, choices};
use carb_core::plan::json;
use carb_core::quantity::field::Kind;
use carb_core::quantity::{Key, Name};
use carb_core::table::functions as core_functions;
use core::ffi::{CStr, c_char};
use core::mem::offset_of;
use core::ptr::{null, null_mut};
use functions::{ALL, Entry};
use std::cell::Cell;
use std::ffi::CString;

const OK: i32 = carb_status::CARB_OK as i32;
const NULL: i32 = carb_status::CARB_NULL_POINTER as i32;
const SIZE: i32 = carb_status::CARB_BAD_STRUCT_SIZE as i32;
const COUNT: i32 = carb_status::CARB_BAD_COUNT as i32;

/// More than any struct, and aligned.
type Room = [u64; 1024];
/// What memory holds before a call.
const BEFORE: f64 = 77.0;

thread_local! {
    static CALLS: Cell<usize> = const { Cell::new(0) };
}

/// Makes a call under one of several floating-point states, which has to be there again behind it.
#[cfg(target_arch = "x86_64")]
fn kept<T>(call: impl FnOnce() -> T) -> T {
    use core::arch::asm;
    // All clear; every flag set; each rounding; subnormals as zero; every trap armed.
    const STATES: [u32; 7] = [0x1f80, 0x1fbf, 0x3f80, 0x5f80, 0x7f80, 0x9fc0, 0x0000];
    let load = |state: u32| unsafe { asm!("ldmxcsr [{}]", in(reg) &raw const state) };
    let made = CALLS.get();
    CALLS.set(made + 1);
    let (state, mut found) = (STATES[made % STATES.len()], 0u32);
    load(state);
    let told = call();
    unsafe { asm!("stmxcsr [{}]", in(reg) &raw mut found) };
    load(STATES[0]);
    assert_eq!(found, state, "the floating-point state");
    told
}

#[cfg(not(target_arch = "x86_64"))]
fn kept<T>(call: impl FnOnce() -> T) -> T {
    CALLS.set(CALLS.get() + 1);
    call()
}

fn inputs_in(room: &mut Room) -> *mut carb_inputs {
    let inputs = room.as_mut_ptr().cast();
    assert_eq!(unsafe { carb_inputs_init(inputs, size_of::<carb_inputs>() as u32) }, OK);
    inputs
}

/// The inputs of a function's own example.
fn example(entry: &Entry, inputs: *mut carb_inputs) {
    let function = core_functions::named(entry.name).expect("a function");
    let request = json::read(&function.example.replacen('{', "{\"carb\": 1, ", 1)).expect("an example");
    for name in request.given() {
        let spelled = CString::new(name.to_string()).unwrap();
        let choose = |choice: &str| {
            let choice = CString::new(choice).unwrap();
            unsafe { carb_inputs_choose(inputs, spelled.as_ptr(), choice.as_ptr(), null_mut()) }
        };
        let code = match request.get(name.key) {
            Some(Value::Number(value, _)) => unsafe { carb_inputs_set(inputs, spelled.as_ptr(), value, null_mut()) },
            Some(Value::Choice(at)) => choose(choices(name.key)[at]),
            Some(Value::Flag(flag)) => choose(if flag { "true" } else { "false" }),
            other => panic!("{name}: {other:?}"),
        };
        assert_eq!(code, OK, "{} of {}", name, entry.name);
    }
}

/// Calls with a result of some size; gives the status and what the doubles of the result hold then.
fn one(entry: &Entry, inputs: *const carb_inputs, size: u32) -> (i32, Vec<f64>) {
    let mut room: Room = [BEFORE.to_bits(); 1024];
    let result = room.as_mut_ptr();
    let mut error = carb_error::empty();
    unsafe { *result.cast::<u32>() = size };
    let code = kept(|| unsafe { (entry.one)(inputs, result.cast(), &mut error) });
    assert_eq!(error.code, code, "{}", entry.name);
    assert_eq!(code < 0, error.text[0] != 0, "{}", entry.name);
    // Behind struct_size, cautions, danger and caution_count there are only doubles.
    let outputs: Vec<f64> = room[2..entry.size / 8].iter().map(|bits| f64::from_bits(*bits)).collect();
    assert!(room[entry.size.max(size.min(4096) as usize) / 8..].iter().all(|bits| *bits == BEFORE.to_bits()));
    (code, outputs)
}

#[test]
fn every_pointer_may_be_null_and_every_struct_of_any_size() {
    for entry in ALL {
        let (mut room, size) = ([0; 1024], entry.size as u32);
        let inputs = inputs_in(&mut room);
        example(entry, inputs);
        let (code, answer) = one(entry, inputs, size);
        assert!(code == OK && answer.iter().all(|value| value.is_finite() && *value != BEFORE), "{}", entry.name);

        let nothing = |(code, outputs): (i32, Vec<f64>), wanted: i32| {
            assert_eq!(code, wanted, "{}", entry.name);
            assert!(outputs.iter().all(|value| value.is_nan()), "{}: {outputs:?}", entry.name);
        };
        nothing(one(entry, null(), size), NULL);
        nothing(one(entry, inputs.wrapping_byte_add(1), size), NULL);
        let mut error = carb_error::empty();
        assert_eq!(kept(|| unsafe { (entry.one)(inputs, null_mut(), &mut error) }), NULL);
        let mut result: Room = [BEFORE.to_bits(); 1024];
        unsafe { *result.as_mut_ptr().cast::<u32>() = size };
        assert_eq!(kept(|| unsafe { (entry.one)(inputs, result.as_mut_ptr().cast(), null_mut()) }), OK);
        assert_eq!(f64::from_bits(result[2]).to_bits(), answer[0].to_bits());

        // Of the result: no size that a struct has, a smaller one, a larger one.
        for bad in [0, 1, 4, 9, size + 1, 4104, u32::MAX] {
            let (code, outputs) = one(entry, inputs, bad);
            assert_eq!((code, outputs[0]), (SIZE, BEFORE), "what is no result is not written to");
        }
        let (code, outputs) = one(entry, inputs, 8);
        assert!(code == OK && outputs.iter().all(|value| *value == BEFORE), "an older, shorter result");
        let (code, outputs) = one(entry, inputs, size + 16);
        assert!(code == OK && outputs == answer, "a newer, longer result");

        // Of the inputs.
        let whole = size_of::<carb_inputs>() as u32;
        for bad in [0, 1, 4, whole + 1, 4104, u32::MAX] {
            unsafe { *inputs.cast::<u32>() = bad };
            nothing(one(entry, inputs, size), SIZE);
        }
        unsafe { *inputs.cast::<u32>() = 8 };
        let (code, outputs) = one(entry, inputs, size);
        assert!(code < 0 && outputs.iter().all(|value| value.is_nan()), "nothing is given: {}", entry.name);
        unsafe { *inputs.cast::<u32>() = whole + 8 };
        nothing(one(entry, inputs, size), SIZE);
    }
    println!("{} calls, each in one of seven floating-point states", CALLS.get());
}

#[test]
fn every_choice_and_every_number_may_be_none() {
    for entry in ALL {
        let function = core_functions::named(entry.name).expect("a function");
        for input in function.inputs {
            let offset = inputs::Member::of(input.key).expect("a member").offset;
            let mut room = [0; 1024];
            let inputs = inputs_in(&mut room);
            example(entry, inputs);
            let place = unsafe { inputs.cast::<u8>().add(offset) };
            let refused = |wanted: &[i32]| {
                let (code, outputs) = one(entry, inputs, entry.size as u32);
                let name = Name::first(input.key);
                assert!(code < 0, "{} with {name}", entry.name);
                assert!(wanted.contains(&code), "{} with {name}: {code}", entry.name);
                assert!(outputs.iter().all(|value| value.is_nan()));
            };
            if matches!(input.key.field().kind, Kind::Number { .. }) {
                for none in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                    unsafe { place.cast::<f64>().write(none) };
                    refused(&[carb_status::CARB_NOT_A_NUMBER as i32]);
                }
                unsafe { place.cast::<f64>().write(f64::MAX) };
                let core: Vec<i32> = carb_core::error::code::ALL.iter().map(|(_, code)| *code).collect();
                refused(&core);
            } else {
                for none in [-1, 999, i32::MIN, i32::MAX] {
                    unsafe { place.cast::<i32>().write(none) };
                    refused(&[carb_status::CARB_UNKNOWN_ENUM as i32]);
                }
            }
        }
    }
    assert!(CALLS.get() > 2000);
    println!("{} calls", CALLS.get());
}

/// The arguments of an array call.
#[derive(Clone, Copy)]
struct Call {
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
}

/// Calls for three elements at most, of which as many as `n` says may be written.
fn each(entry: &Entry, call: Call, pointers: [bool; 2]) -> i32 {
    let (mut out, mut status, mut error) = ([BEFORE; 4], [7; 4], carb_error::empty());
    let to = if pointers[0] { out.as_mut_ptr() } else { null_mut() };
    let told = if pointers[1] { status.as_mut_ptr() } else { null_mut() };
    let Call { inputs, series, series_count, output, n } = call;
    let code = kept(|| unsafe { (entry.each)(inputs, series, series_count, output, n, to, told, &mut error) });
    assert_eq!((error.code, error.text[0] != 0), (code, code < 0), "{}", entry.name);
    if pointers == [true; 2] && n <= 3 {
        for at in 0..n {
            assert_eq!(out[at].is_nan(), status[at] < 0, "{}", entry.name);
            assert!(code >= 0 || status[at] == code, "{}: the status of the call is that of every element", entry.name);
        }
        assert!((n..4).all(|at| out[at] == BEFORE && status[at] == 7), "nothing is written behind the end");
    } else if n <= 3 {
        // Of two that are needed, the one that is there holds no number that could be taken for an answer.
        let (value, told) = (if pointers[0] { f64::NAN } else { BEFORE }, if pointers[1] { code } else { 7 });
        assert!(out[..n].iter().all(|found| found.to_bits() == value.to_bits()), "{}: {out:?}", entry.name);
        assert!(status[..n].iter().all(|found| *found == told), "{}: {status:?}", entry.name);
        assert!(out[n..].iter().all(|found| *found == BEFORE) && status[n..].iter().all(|found| *found == 7));
    } else {
        assert!(out == [BEFORE; 4] && status == [7; 4], "{}: nothing is written", entry.name);
    }
    code
}

#[test]
fn every_argument_of_every_array_call_may_be_wrong() {
    for entry in ALL {
        let function = core_functions::named(entry.name).expect("a function");
        let mut room = [0; 1024];
        let inputs = inputs_in(&mut room);
        example(entry, inputs);
        // One of the inputs of the example goes into a series.
        let place = |key: &Key| {
            let offset = inputs::Member::of(*key).expect("a member").offset;
            unsafe { inputs.cast::<u8>().add(offset) }.cast::<f64>()
        };
        let varies = |key: &Key| function.columns.contains(key) && unsafe { *place(key) } != NOT_GIVEN;
        let given: Vec<Key> = Key::ALL.iter().copied().filter(varies).collect();
        let Some(&key) = given.first() else { panic!("{}: nothing of its example varies", entry.name) };
        let place = place(&key);
        let values = [unsafe { *place }, f64::NAN, unsafe { *place }];
        unsafe { place.write(NOT_GIVEN) };
        let name = CString::new(Name::first(key).to_string()).unwrap();
        let output = function.outputs[0];
        let unit = carb_core::quantity::Unit::first(output.key.dimension().unwrap());
        let output = CString::new(carb_core::basis::Function::output_name(output, unit).to_string()).unwrap();
        let series = carb_series { name: name.as_ptr(), values: values.as_ptr(), count: 3 };
        let good = Call { inputs, series: &series, series_count: 1, output: output.as_ptr(), n: 3 };
        let call = |call| each(entry, call, [true; 2]);
        assert_eq!(call(good), OK, "{}", entry.name);

        assert_eq!(call(Call { inputs: null(), ..good }), NULL);
        assert_eq!(call(Call { series: null(), ..good }), NULL);
        assert_eq!(call(Call { output: null(), ..good }), NULL);
        assert_eq!(each(entry, good, [false, true]), NULL);
        assert_eq!(each(entry, good, [true, false]), NULL);
        let with = |series: carb_series| call(Call { series: &series, ..good });
        assert_eq!(with(carb_series { name: null(), ..series }), NULL);
        assert_eq!(with(carb_series { values: null(), ..series }), NULL);
        assert_eq!(with(carb_series { count: 0, ..series }), COUNT);
        assert_eq!(with(carb_series { count: 2, ..series }), COUNT);
        assert_eq!(with(carb_series { count: usize::MAX, ..series }), COUNT);
        assert_eq!(call(Call { series_count: usize::MAX, ..good }), COUNT);
        let endless = [b'a'; 256];
        let long = carb_status::CARB_TEXT_TOO_LONG as i32;
        assert_eq!(with(carb_series { name: endless.as_ptr().cast(), ..series }), long);
        assert_eq!(call(Call { output: endless.as_ptr().cast(), ..good }), long);
        let bad = c"gauge_\xff";
        assert_eq!(with(carb_series { name: bad.as_ptr(), ..series }), carb_status::CARB_BAD_UTF8 as i32);
        assert_eq!(call(Call { output: bad.as_ptr(), ..good }), carb_status::CARB_BAD_UTF8 as i32);
        let unknown = c"no_such_output";
        assert_eq!(call(Call { output: unknown.as_ptr(), ..good }), carb_status::CARB_UNKNOWN_OUTPUT as i32);
        assert_eq!(with(carb_series { name: unknown.as_ptr(), ..series }), carb_status::CARB_UNKNOWN_NAME as i32);

        // No elements are no error, as many as no memory holds are one.
        let none = carb_series { count: 0, ..series };
        assert_eq!(each(entry, Call { series: &none, n: 0, ..good }, [false; 2]), OK);
        assert_eq!(each(entry, Call { n: usize::MAX, ..good }, [true; 2]), COUNT);
    }
    println!("{} calls", CALLS.get());
}

fn shown(text: &[c_char]) -> &str {
    let end = text.iter().position(|byte| *byte == 0).expect("an end");
    unsafe { CStr::from_ptr(text[..=end].as_ptr()) }.to_str().expect("UTF-8")
}

#[test]
fn rows_of_tables_by_index() {
    assert!(carb_fermentables_count() > 20 && carb_bottle_classes_count() > 5);
    assert!(carb_sources_count() > 50 && carb_cautions_count() > 50);
    let (mut row, mut error) = (unsafe { core::mem::zeroed::<carb_fermentables_row>() }, carb_error::empty());
    row.struct_size = size_of::<carb_fermentables_row>() as u32;
    let mut names = Vec::new();
    for index in 0..carb_fermentables_count() {
        assert_eq!(kept(|| unsafe { carb_fermentables_at(index, &mut row, &mut error) }), OK);
        let parts = [row.water_percent, row.hexose_percent, row.disaccharide_percent, row.trisaccharide_percent];
        assert!(parts.iter().all(|part| (0.0..=100.0).contains(part)) && parts.iter().sum::<f64>() <= 100.01);
        assert!(row.low_yield_g_per_g <= row.yield_g_per_g && row.yield_g_per_g <= row.high_yield_g_per_g);
        assert!(!shown(&row.title).is_empty() && !shown(&row.standing).is_empty());
        // The number of the row is that of its name, in a struct that a program fills with it.
        let (mut chosen, mut room) = ([0; 1024], [0; 1024]);
        let (by_name, by_number) = (inputs_in(&mut chosen), inputs_in(&mut room));
        assert_eq!(unsafe { carb_inputs_choose(by_name, c"sugar".as_ptr(), row.name.as_ptr(), null_mut()) }, OK);
        unsafe { (*by_number).sugar = row.sugar };
        assert_eq!(chosen, room, "{}", shown(&row.name));
        names.push(shown(&row.name).to_string());
    }
    assert!(names.iter().any(|name| name == "dextrose_monohydrate"));
    let unknown_density = names.iter().position(|name| name == "sucrose").unwrap();
    unsafe { carb_fermentables_at(unknown_density, &mut row, null_mut()) };
    assert!(row.density_kg_per_m3.is_nan());
    // The CO2 of sucrose follows from its formula: 4 CO2 of 44.0095 g from 342.296 g.
    assert!((row.yield_g_per_g - 4.0 * 44.0095 / 342.296).abs() < 1e-5);

    let mut class = unsafe { core::mem::zeroed::<carb_bottle_classes_row>() };
    class.struct_size = size_of::<carb_bottle_classes_row>() as u32;
    let champagne = (0..carb_bottle_classes_count()).find(|index| {
        assert_eq!(unsafe { carb_bottle_classes_at(*index, &mut class, null_mut()) }, OK);
        shown(&class.name) == "champagne"
    });
    assert!(champagne.is_some());
    assert_eq!(class.bottle_class, carb_bottle_class::CARB_BOTTLE_CLASS_CHAMPAGNE as i32);
    assert!(class.low_co2_g_per_l < class.high_co2_g_per_l);

    let mut caution = unsafe { core::mem::zeroed::<carb_cautions_row>() };
    caution.struct_size = size_of::<carb_cautions_row>() as u32;
    for index in 0..carb_cautions_count() {
        assert_eq!(unsafe { carb_cautions_at(index, &mut caution, null_mut()) }, OK);
        assert!(["note", "caution", "danger"].contains(&shown(&caution.level)) && shown(&caution.text).len() > 20);
    }

    // What is no row leaves an empty one.
    for index in [carb_fermentables_count(), usize::MAX] {
        assert_eq!(kept(|| unsafe { carb_fermentables_at(index, &mut row, &mut error) }), COUNT);
        assert!(row.water_percent.is_nan() && shown(&row.name).is_empty() && shown(&row.source).is_empty());
        assert!(shown(&error.text).contains(&format!("0 to {}", carb_fermentables_count() - 1)));
    }
    assert_eq!(kept(|| unsafe { carb_fermentables_at(0, null_mut(), &mut error) }), NULL);
    for bad in [0, 4, 9, 4104, u32::MAX] {
        row.struct_size = bad;
        row.water_percent = BEFORE;
        assert_eq!(kept(|| unsafe { carb_fermentables_at(0, &mut row, null_mut()) }), SIZE);
        assert_eq!(row.water_percent, BEFORE);
    }
    // An older caller's row ends earlier; half a text is never written.
    row.struct_size = offset_of!(carb_fermentables_row, standing) as u32;
    row.standing[0] = 7;
    assert_eq!(unsafe { carb_fermentables_at(0, &mut row, null_mut()) }, OK);
    assert!(row.standing[0] == 7 && row.water_percent < 20.0);
}

#[test]
fn json_of_any_size_and_depth() {
    let ask = |function: &CStr, request: &[u8]| {
        let (mut needed, mut buffer) = (77usize, vec![77u8; 1 << 16]);
        let (text, length) = (request.as_ptr().cast(), request.len());
        let (to, capacity) = (buffer.as_mut_ptr().cast(), buffer.len());
        let code = kept(|| unsafe { carb_json(function.as_ptr(), text, length, to, capacity, &mut needed) });
        let answer = CStr::from_bytes_until_nul(&buffer).expect("an end").to_str().expect("UTF-8").to_string();
        (code, answer)
    };
    let bad_json = carb_status::CARB_BAD_JSON as i32;
    let good = r#"{"carb": 1, "volumes": 2.5, "temperature_f": 38, "altitude_m": 0}"#;
    let (code, answer) = ask(c"keg_pressure", good.as_bytes());
    assert!(code == OK && answer.contains("gauge_psi"));
    // A megabyte: of space, which is a request; of text, of numbers, of names, of nothing, which are none.
    let padded = good.replacen('{', &format!("{{{}", " ".repeat(1 << 20)), 1);
    assert_eq!(ask(c"keg_pressure", padded.as_bytes()), (OK, answer));
    let title = format!(r#"{{"carb": 1, "title": "{}"}}"#, "x".repeat(1 << 20));
    assert_eq!(ask(c"plan", title.as_bytes()).0, carb_status::CARB_WRONG_TYPE as i32);
    let name = format!(r#"{{"carb": 1, "{}": 1}}"#, "x".repeat(1 << 20));
    assert_eq!(ask(c"plan", name.as_bytes()).0, carb_status::CARB_UNKNOWN_NAME as i32);
    let digits = format!(r#"{{"carb": 1, "volumes": {}}}"#, "9".repeat(1 << 20));
    assert!(ask(c"keg_pressure", digits.as_bytes()).0 < 0);
    for garbage in [vec![b' '; 1 << 20], vec![0; 1 << 20], b"{\"a\":".repeat(200_000), b"[".repeat(100_000)] {
        assert_eq!(ask(c"keg_pressure", &garbage).0, bad_json);
        assert_eq!(ask(c"plan", &garbage).0, bad_json);
    }
    for [open, close] in [["[", "]"], ["{\"a\":", "}"]] {
        let deep = format!(r#"{{"carb": 1, "bottles": {}1{}}}"#, open.repeat(100_000), close.repeat(100_000));
        for function in [c"bottling", c"plan", c"kegging", c"crosscheck", c"keg_pressure", c"fermentables"] {
            let (code, answer) = ask(function, deep.as_bytes());
            assert!(code < 0 && answer.contains("error"), "{function:?}: {code}");
        }
    }
    let rows = format!(r#"{{"carb": 1, "bottles": [{}{{}}]}}"#, "{},".repeat(300_000));
    assert!(ask(c"bottling", rows.as_bytes()).0 < 0);
    assert_eq!(ask(c"plan", b"\xff\xfe\xfd").0, carb_status::CARB_BAD_UTF8 as i32);
    // Only so many bytes as are said are looked at: what follows them is none of it.
    assert_eq!(ask(c"keg_pressure", &good.as_bytes()[..good.len() - 1]).0, bad_json);
}
