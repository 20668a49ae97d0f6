//! The inputs of every function, as one struct.

use crate::NOT_GIVEN;
use crate::boundary::{self, Place, guard};
use crate::error::{Fault, carb_error, carb_status};
use crate::generated::{MEMBERS, NUMBERS, carb_flag, carb_inputs};
use carb_core::Error;
use carb_core::basis::request::{Raw, Request, Value, choices};
use carb_core::quantity::field::Kind;
use carb_core::quantity::{Key, Name, Unit};
use core::ffi::c_char;

/// Where a field lies in a struct.
#[derive(Clone, Copy, Debug)]
pub struct Member {
    /// Which field.
    pub key: Key,
    /// Its offset, in bytes.
    pub offset: usize,
}

impl Member {
    /// The member of a field.
    #[must_use]
    pub fn of(key: Key) -> Option<&'static Self> {
        MEMBERS.iter().find(|member| member.key == key)
    }
}

const KNOWN: usize = size_of::<carb_inputs>();

fn member(name: Name) -> Result<&'static Member, Error> {
    let not_taken = Error::NotTaken { parameter: name, function: "carb_inputs" };
    Member::of(name.key).ok_or(not_taken)
}

fn place(inputs: *const carb_inputs) -> Result<Place, Fault> {
    // SAFETY: by the contract of every function, NULL or a struct as long as it says. It is only read through this.
    let place = unsafe { Place::new(inputs.cast_mut(), "inputs") }?;
    if !place.is_unknown_unset(KNOWN) {
        let text = "a member is set that this version of the library does not know, or carb_inputs_init was not called";
        return Err(Fault::face(carb_status::CARB_BAD_STRUCT_SIZE, "inputs", text));
    }
    Ok(place)
}

/// The member of a name, if the caller's struct reaches so far: that of an older header may end before it.
fn reached(place: Place, name: Name) -> Result<&'static Member, Fault> {
    let member = member(name)?;
    let bytes = if name.unit.is_some() { size_of::<f64>() } else { size_of::<i32>() };
    if place.reaches(member.offset + bytes) {
        return Ok(member);
    }
    let text = format!("the carb.h that this program was built with knows no {name}: build it with a newer one");
    Err(Fault::face(carb_status::CARB_BAD_STRUCT_SIZE, name.spelling().as_str(), text))
}

/// The request that a struct holds.
pub(crate) fn request(inputs: *const carb_inputs) -> Result<Request, Fault> {
    let place = place(inputs)?;
    let mut request = Request::new();
    for &Member { key, offset } in MEMBERS {
        match key.field().kind {
            Kind::Number { .. } => {
                if let Some(value) = place.read::<f64>(offset).filter(|value| *value != NOT_GIVEN) {
                    request.put(Name::first(key), Raw::Number(value))?;
                }
            }
            kind => {
                if let Some(number) = place.read::<i32>(offset).filter(|number| *number != 0) {
                    request.put(Name::first(key), enumerator(key, kind, number)?)?;
                }
            }
        }
    }
    Ok(request)
}

fn numbers(key: Key) -> &'static [i32] {
    NUMBERS.iter().find(|(known, _)| *known == key).map_or(&[], |(_, numbers)| numbers)
}

/// The number of a choice, by its place among the [`choices`] of a field.
pub(crate) fn number(key: Key, place: usize) -> Option<i32> {
    numbers(key).get(place).copied()
}

const FLAGS: [(carb_flag, bool); 2] = [(carb_flag::CARB_NO, false), (carb_flag::CARB_YES, true)];

fn enumerator(key: Key, kind: Kind, number: i32) -> Result<Raw<'static>, Fault> {
    let found = match kind {
        Kind::Flag => FLAGS.iter().find(|(flag, _)| *flag as i32 == number).map(|(_, flag)| Raw::Flag(*flag)),
        _ => choices(key).iter().zip(numbers(key)).find(|(_, own)| **own == number).map(|(name, _)| Raw::Text(name)),
    };
    found.ok_or_else(|| {
        let name = Name::first(key);
        let text = format!("{name} = {number} is no enumerator of its list in carb.h");
        Fault::face(carb_status::CARB_UNKNOWN_ENUM, name.spelling().as_str(), text)
    })
}

/// Makes a struct in which nothing is given; struct_size is sizeof (carb_inputs).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_inputs_init(inputs: *mut carb_inputs, struct_size: u32) -> i32 {
    let body = || {
        boundary::pointer(inputs, "inputs")?;
        if Place::believed(struct_size).is_none() {
            return Err(Fault::face(carb_status::CARB_BAD_STRUCT_SIZE, "struct_size", "give sizeof (carb_inputs)"));
        }
        // SAFETY: not NULL and aligned, and as long as the caller says.
        let place = unsafe {
            *inputs.cast::<u32>() = struct_size;
            Place::new(inputs, "inputs")
        }?;
        place.mark_unknown(size_of::<u32>());
        for member in MEMBERS {
            match member.key.field().kind {
                Kind::Number { .. } => place.write(member.offset, NOT_GIVEN),
                _ => place.write(member.offset, 0i32),
            }
        }
        Ok(0)
    };
    // SAFETY: there is no error to tell.
    unsafe { guard(core::ptr::null_mut(), |_| (), body) }
}

/// Sets a number by any name of the vocabulary, such as temperature_f. A name of a member sets just its value; another
/// unit is converted to that of the member, and CARB_NOT_GIVEN unsets it. Where the name or the value is refused nothing is
/// set.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_inputs_set(
    inputs: *mut carb_inputs,
    name: *const c_char,
    value: f64,
    error: *mut carb_error,
) -> i32 {
    let body = || {
        let place = place(inputs)?;
        // SAFETY: NULL or a text with an end, by the contract.
        let name = Request::name(unsafe { boundary::name(name, "name") }?)?;
        let member = reached(place, name)?;
        let Some(unit) = name.unit.filter(|_| value != NOT_GIVEN) else {
            // Not given is not given in every unit; what is no number at all is told so by the request.
            Request::new().put(name, Raw::Number(if name.unit.is_some() { 0.0 } else { value }))?;
            place.write(member.offset, NOT_GIVEN);
            return Ok(0);
        };
        Request::new().put(name, Raw::Number(value))?;
        let converted = unit.convert(value, Unit::first(unit.dimension));
        if !converted.is_finite() {
            let (low, high) = name.key.limits().unwrap_or((f64::MIN, f64::MAX));
            return Err(Error::OutOfRange { parameter: name, value: f64::MAX.copysign(value), low, high }.into());
        }
        place.write(member.offset, converted);
        Ok(0)
    };
    // SAFETY: `error` is NULL or a `carb_error`, by the contract.
    unsafe { guard(error, |_| (), body) }
}

/// Sets a choice by its name, such as "beverage" to "soft_drink", or a flag to "true" or "false". Where either is refused
/// nothing is set.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_inputs_choose(
    inputs: *mut carb_inputs,
    name: *const c_char,
    choice: *const c_char,
    error: *mut carb_error,
) -> i32 {
    let body = || {
        let place = place(inputs)?;
        // SAFETY: NULL or texts with an end, by the contract.
        let (name, choice) = unsafe { (boundary::name(name, "name")?, boundary::name(choice, "choice")?) };
        let name = Request::name(name)?;
        let member = reached(place, name)?;
        let raw = match (name.key.field().kind, choice) {
            (Kind::Flag, "true") => Raw::Flag(true),
            (Kind::Flag, "false") => Raw::Flag(false),
            _ => Raw::Text(choice),
        };
        let mut request = Request::new();
        request.put(name, raw)?;
        let number = match request.get(name.key) {
            Some(Value::Choice(at)) => self::number(name.key, at),
            Some(Value::Flag(given)) => FLAGS.iter().find(|(_, flag)| *flag == given).map(|(flag, _)| *flag as i32),
            _ => None,
        };
        if let Some(number) = number {
            place.write(member.offset, number);
        }
        Ok(0)
    };
    // SAFETY: `error` is NULL or a `carb_error`, by the contract.
    unsafe { guard(error, |_| (), body) }
}

/// 1 if the name is that of a member of carb_inputs, which carb_inputs_set sets without conversion; 0 if it is another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_is_first_name(name: *const c_char) -> i32 {
    let body = || {
        // SAFETY: NULL or a text with an end, by the contract.
        let name = Request::name(unsafe { boundary::name(name, "name") }?)?;
        Ok(i32::from(member(name).is_ok() && name == Name::first(name.key)))
    };
    // SAFETY: there is no error to tell.
    unsafe { guard(core::ptr::null_mut(), |_| (), body) }.max(0)
}
