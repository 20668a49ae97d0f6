//! The generic routine behind the tables that are had by index.

use crate::boundary::{self, Place, guard};
use crate::error::{Fault, carb_error, carb_status};
use crate::inputs;
use carb_core::basis::request::choices;
use carb_core::basis::{Lists, Request};
use carb_core::quantity::{Key, Unit};
use carb_core::table::tables::{self, Table};

/// Where a column of a table goes.
#[derive(Clone, Copy, Debug)]
pub enum Cell {
    /// A text, with its NUL.
    Text {
        /// Its offset, in bytes.
        offset: usize,
        /// Its bytes.
        room: usize,
    },
    /// A number, in the first unit of the column.
    Number {
        /// Its offset, in bytes.
        offset: usize,
    },
}

/// A table of the core and the struct that takes its rows.
#[derive(Debug)]
pub struct RowShape {
    /// The name of the table.
    pub table: &'static str,
    /// The size of the struct.
    pub size: usize,
    /// Where the columns go, in their order.
    pub columns: &'static [Cell],
    /// The choice that a row is, by the name in its first column, and where its number goes.
    pub number: Option<(Key, usize)>,
}

impl RowShape {
    fn rows(&self, tell: &mut dyn FnMut(&[tables::Cell])) -> Result<&'static Table, Fault> {
        let unknown = || Fault::face(carb_status::CARB_PANIC, "", "the table is gone, which should not happen");
        let table = tables::named(self.table).ok_or_else(unknown)?;
        table.rows(&Request::new(), &Lists::default(), tell)?;
        Ok(table)
    }

    fn blank(&self, place: Place) {
        for cell in self.columns {
            match *cell {
                Cell::Text { offset, .. } => place.write(offset, 0u8),
                Cell::Number { offset } => place.write(offset, f64::NAN),
            }
        }
        if let Some((_, offset)) = self.number {
            place.write(offset, 0i32);
        }
        place.mark_unknown(self.size);
    }
}

/// How many rows there are.
pub(crate) fn count(shape: &RowShape) -> usize {
    let mut count = 0;
    let body = || shape.rows(&mut |_| count += 1).map(|_| 0);
    // SAFETY: there is no error to tell.
    let code = unsafe { guard(core::ptr::null_mut(), |_| (), body) };
    if code < 0 { 0 } else { count }
}

/// One row.
///
/// # Safety
/// Each pointer is NULL or points to a struct as long as its `struct_size` says.
pub(crate) unsafe fn at<R>(shape: &RowShape, index: usize, row: *mut R, error: *mut carb_error) -> i32 {
    // SAFETY: by the contract of this function.
    let place = || unsafe { Place::new(row, "row") };
    let body = || {
        let place = place()?;
        shape.blank(place);
        let (mut found, mut rows) = (Vec::new(), 0);
        let table = shape.rows(&mut |cells| {
            if rows == index {
                found.extend_from_slice(cells);
            }
            rows += 1;
        })?;
        if found.is_empty() {
            let text = format!("there are {rows} {}: the index goes from 0 to {}", shape.table, rows - 1);
            return Err(Fault::face(carb_status::CARB_BAD_COUNT, "index", text));
        }
        if let (Some((key, offset)), Some(tables::Cell::Text(name))) = (shape.number, found.first())
            && let Some(at) = choices(key).iter().position(|choice| choice == name)
        {
            place.write(offset, inputs::number(key, at).unwrap_or(0));
        }
        for ((cell, value), column) in shape.columns.iter().zip(found).zip(table.columns) {
            match (*cell, value, column.dimension.map(Unit::first)) {
                (Cell::Text { offset, room }, tables::Cell::Text(text), _) => write_text(place, offset, room, text),
                (Cell::Number { offset }, tables::Cell::Number(si), Some(unit)) => {
                    place.write(offset, unit.from_si(si));
                }
                (Cell::Number { offset }, tables::Cell::In(value, shown), Some(unit)) => {
                    place.write(offset, shown.convert(value, unit));
                }
                _ => {}
            }
        }
        Ok(0)
    };
    let blank = |_| {
        if boundary::pointer(row, "row").is_ok()
            && let Ok(place) = place()
        {
            shape.blank(place);
        }
    };
    // SAFETY: by the contract of this function.
    unsafe { guard(error, blank, body) }
}

/// Writes a text with its NUL, if the caller's struct reaches so far; cut between two characters where it is too long,
/// which a test of the header rules out.
fn write_text(place: Place, offset: usize, room: usize, text: &str) {
    let text = &text[..text.floor_char_boundary(room - 1)];
    if !place.reaches(offset + room) {
        return;
    }
    for (at, byte) in text.bytes().chain([0]).enumerate() {
        place.write(offset + at, byte);
    }
}
