//! The boundary that every call crosses: pointers are checked, panics become a status, the floating-point state of the
//! caller is put aside and given back.

use crate::error::{Fault, carb_error, carb_status};
use core::ffi::{CStr, c_char};
use std::panic::{AssertUnwindSafe, catch_unwind};

/// The largest `struct_size` that is believed. A size is the caller's promise of memory, and one that is too large cannot be
/// told from that of a newer version; a size beyond this is surely a struct that was never initialised.
const LARGEST_STRUCT: u32 = 4096;
/// The longest name, with its NUL; a longer one is a text without an end.
const LONGEST_NAME: usize = 256;

/// Runs the body of a call. Gives what the body gives, or the code of its fault, with the error told and the outputs
/// blanked.
///
/// # Safety
/// `error` is NULL or points to a `carb_error`.
pub unsafe fn guard(error: *mut carb_error, blank: impl FnOnce(i32), body: impl FnOnce() -> Result<i32, Fault>) -> i32 {
    let state = FloatState::put_aside();
    // SAFETY: as for this function.
    let code = unsafe { guarded(error, blank, body) };
    state.give_back();
    code
}

/// Runs a body that has no error to tell and nothing to blank; `None` where it panics.
#[inline(always)]
pub fn quick<T>(body: impl FnOnce() -> Option<T>) -> Option<T> {
    let state = FloatState::put_aside();
    let found = apart(body);
    state.give_back();
    found
}

#[inline(never)]
fn apart<T>(body: impl FnOnce() -> Option<T>) -> Option<T> {
    catch_unwind(AssertUnwindSafe(body)).unwrap_or(None)
}

/// Kept apart, so that no arithmetic moves across the change of the floating-point state.
#[inline(never)]
unsafe fn guarded(error: *mut carb_error, blank: impl FnOnce(i32), body: impl FnOnce() -> Result<i32, Fault>) -> i32 {
    // SAFETY: `error` is NULL or points to a `carb_error`.
    let told = unsafe { carb_error::place(error) };
    let found = catch_unwind(AssertUnwindSafe(|| {
        if told.is_err() {
            return Err(Fault::face(carb_status::CARB_BAD_STRUCT_SIZE, "error", "set its struct_size to sizeof"));
        }
        body()
    }));
    let found = found.unwrap_or_else(|_| {
        Err(Fault::face(
            carb_status::CARB_PANIC,
            "",
            "the library failed, which should not happen: please report the inputs",
        ))
    });
    let code = match &found {
        Ok(code) => *code,
        Err(fault) => fault.code(),
    };
    if let Ok(Some(place)) = told {
        place.tell(found.as_ref().err());
    }
    if found.is_err() {
        blank(code);
    }
    code
}

/// A pointer that may be read or written: not NULL, and aligned.
///
/// # Errors
/// Where it may not.
pub fn pointer<T>(pointer: *const T, what: &'static str) -> Result<(), Fault> {
    if pointer.is_null() || !pointer.is_aligned() {
        return Err(Fault::face(
            carb_status::CARB_NULL_POINTER,
            what,
            "the pointer is NULL, or not aligned for its type",
        ));
    }
    Ok(())
}

/// A count of elements that can lie in memory.
///
/// # Errors
/// Where it cannot.
pub fn count<T>(count: usize, what: &'static str) -> Result<(), Fault> {
    match core::alloc::Layout::array::<T>(count) {
        Ok(_) => Ok(()),
        Err(_) => Err(Fault::face(carb_status::CARB_BAD_COUNT, what, "more elements than memory can hold")),
    }
}

/// A slice over an array of the caller's, which may be NULL where it is empty.
///
/// # Errors
/// For a NULL pointer, and a count that cannot be.
///
/// # Safety
/// `first` is NULL or points to `length` elements that nobody writes meanwhile.
pub unsafe fn slice<'a, T>(first: *const T, length: usize, what: &'static str) -> Result<&'a [T], Fault> {
    if length == 0 {
        return Ok(&[]);
    }
    pointer(first, what)?;
    count::<T>(length, what)?;
    // SAFETY: not NULL, aligned, of a size that can be; the elements are there by the contract.
    Ok(unsafe { core::slice::from_raw_parts(first, length) })
}

/// Fills an array of the caller's, if it is there and its count can be.
///
/// # Safety
/// `first` is NULL or points to `length` elements.
pub unsafe fn fill<T: Copy>(first: *mut T, length: usize, value: T) {
    if pointer(first, "").is_ok() && count::<T>(length, "").is_ok() {
        for at in 0..length {
            // SAFETY: not NULL and aligned; the elements are there by the contract.
            unsafe { first.add(at).write(value) };
        }
    }
}

/// A text of known length.
///
/// # Errors
/// For a NULL pointer, and for what is not UTF-8.
///
/// # Safety
/// `text` is NULL or points to `length` bytes.
pub unsafe fn text<'a>(text: *const c_char, length: usize, what: &'static str) -> Result<&'a str, Fault> {
    pointer(text, what)?;
    // SAFETY: as for this function.
    let bytes = unsafe { slice(text.cast::<u8>(), length, what) }?;
    core::str::from_utf8(bytes).map_err(|_| Fault::face(carb_status::CARB_BAD_UTF8, what, "the text is not UTF-8"))
}

/// A name, which ends with a NUL.
///
/// # Errors
/// For a NULL pointer, for a name without an end, and for what is not UTF-8.
///
/// # Safety
/// `name` is NULL or points to a text that ends with a NUL, or to at least 256 bytes.
pub unsafe fn name<'a>(name: *const c_char, what: &'static str) -> Result<&'a str, Fault> {
    pointer(name, what)?;
    // SAFETY: no byte behind the NUL is looked at.
    if (0..LONGEST_NAME).all(|at| unsafe { *name.add(at) } != 0) {
        return Err(Fault::face(
            carb_status::CARB_TEXT_TOO_LONG,
            what,
            "no name is this long: does it end with a NUL?",
        ));
    }
    // SAFETY: the NUL was found.
    let found = unsafe { CStr::from_ptr(name) };
    found.to_str().map_err(|_| Fault::face(carb_status::CARB_BAD_UTF8, what, "the text is not UTF-8"))
}

/// A struct of the caller's that starts with its `struct_size`, as long as it says, of this version or another.
#[derive(Clone, Copy)]
pub struct Place {
    start: *mut u8,
    size: usize,
}

impl Place {
    /// The struct at a pointer.
    ///
    /// # Errors
    /// For a NULL pointer, and a size that no struct has.
    ///
    /// # Safety
    /// `start` is NULL or points to a struct that starts with its `struct_size` and is as long as that says.
    pub unsafe fn new<T>(start: *mut T, what: &'static str) -> Result<Self, Fault> {
        pointer(start, what)?;
        // SAFETY: not NULL and aligned; the first member is there by the contract.
        let size = unsafe { *start.cast::<u32>() };
        let size = Self::believed(size).ok_or(Fault::face(
            carb_status::CARB_BAD_STRUCT_SIZE,
            what,
            "set its struct_size to its sizeof (for carb_inputs, carb_inputs_init does)",
        ))?;
        Ok(Self { start: start.cast(), size })
    }

    /// A size that a struct may have: structs end where a double would.
    pub fn believed(size: u32) -> Option<usize> {
        let whole = size.is_multiple_of(size_of::<f64>() as u32);
        (size != 0 && size <= LARGEST_STRUCT && whole).then_some(size as usize)
    }

    /// Whether the caller's struct is at least so long.
    pub fn reaches(self, end: usize) -> bool {
        end <= self.size
    }

    /// The member at an offset, if the caller's struct reaches so far.
    fn member<T>(self, offset: usize) -> Option<*mut T> {
        // SAFETY: the offset lies inside the struct.
        (offset + size_of::<T>() <= self.size).then(|| unsafe { self.start.add(offset) }.cast())
    }

    /// Reads a member.
    pub fn read<T: Copy>(self, offset: usize) -> Option<T> {
        // SAFETY: the member lies inside the struct, whose start is aligned as its members are.
        self.member(offset).map(|member| unsafe { *member })
    }

    /// Writes a member.
    pub fn write<T: Copy>(self, offset: usize, value: T) {
        if let Some(member) = self.member(offset) {
            // SAFETY: as in `read`.
            unsafe { *member = value };
        }
    }

    /// Marks the part behind what this version knows. A newer caller finds NaN there, a number below 0, or
    /// a text that ends.
    pub fn mark_unknown(self, known: usize) {
        for at in known..self.size {
            self.write(at, unknown(at));
        }
    }

    /// Whether nothing was set behind what this version knows.
    pub fn is_unknown_unset(self, known: usize) -> bool {
        (known..self.size).all(|at| self.read(at) == Some(unknown(at)))
    }
}

/// Fills members that this version does not know: as a double it is NaN, as an enumerator none. The least byte of every
/// double is 0, by which a text ends.
fn unknown(at: usize) -> u8 {
    let least = if cfg!(target_endian = "little") { 0 } else { size_of::<f64>() - 1 };
    if at % size_of::<f64>() == least { 0 } else { 0xff }
}

/// The floating-point state of the caller: sticky flags, rounding, traps.
struct FloatState {
    #[cfg(any(target_arch = "x86_64", all(target_arch = "x86", target_feature = "sse")))]
    mxcsr: u32,
    #[cfg(target_arch = "aarch64")]
    registers: (u64, u64),
}

#[cfg(any(target_arch = "x86_64", all(target_arch = "x86", target_feature = "sse")))]
impl FloatState {
    /// The state that Rust code is compiled for: nothing traps, everything is rounded to the nearest.
    const USUAL: u32 = 0x1f80;

    /// Keeps the caller's state and takes the usual one, on which every bit of an answer depends. (Loading the register
    /// costs 2 ns in all, looking first whether that is needed 7: reading it waits for all arithmetic before.)
    #[inline(always)]
    fn put_aside() -> Self {
        let mxcsr = Self::read();
        Self::load(Self::USUAL);
        Self { mxcsr }
    }

    #[inline(always)]
    fn give_back(self) {
        Self::load(self.mxcsr);
    }

    #[inline(always)]
    fn read() -> u32 {
        let mut mxcsr = 0u32;
        // SAFETY: the register goes to memory of ours.
        unsafe { core::arch::asm!("stmxcsr [{}]", in(reg) &raw mut mxcsr, options(nostack, preserves_flags)) };
        mxcsr
    }

    #[inline(always)]
    fn load(mxcsr: u32) {
        // SAFETY: the usual state, or one that was in this register before.
        unsafe { core::arch::asm!("ldmxcsr [{}]", in(reg) &raw const mxcsr, options(nostack, preserves_flags)) };
    }
}

#[cfg(target_arch = "aarch64")]
impl FloatState {
    /// Keeps the caller's state and takes the usual one, on which every bit of an answer depends.
    fn put_aside() -> Self {
        let (mut flags, mut modes): (u64, u64);
        // SAFETY: all zero is the state that Rust code is compiled for.
        unsafe {
            core::arch::asm!("mrs {}, fpsr", out(reg) flags, options(nostack, preserves_flags));
            core::arch::asm!("mrs {}, fpcr", out(reg) modes, options(nostack, preserves_flags));
            core::arch::asm!("msr fpsr, {0}", "msr fpcr, {0}", in(reg) 0u64, options(nostack, preserves_flags));
        }
        Self { registers: (flags, modes) }
    }

    fn give_back(self) {
        let (flags, modes) = self.registers;
        // SAFETY: the state was in these registers before.
        unsafe {
            core::arch::asm!("msr fpcr, {}", in(reg) modes, options(nostack, preserves_flags));
            core::arch::asm!("msr fpsr, {}", in(reg) flags, options(nostack, preserves_flags));
        }
    }
}

#[cfg(not(any(target_arch = "x86_64", all(target_arch = "x86", target_feature = "sse"), target_arch = "aarch64")))]
impl FloatState {
    fn put_aside() -> Self {
        Self {}
    }
    fn give_back(self) {}
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_is_a_status() {
        let mut error = carb_error::empty();
        let mut blanked = 0;
        // SAFETY: the error is there.
        let code = unsafe { guard(&mut error, |code| blanked = code, || panic!("on purpose")) };
        assert_eq!(code, carb_status::CARB_PANIC as i32);
        assert_eq!((blanked, error.code), (code, code));
    }
}
