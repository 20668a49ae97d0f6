//! What the numbers stand on: sources, ranges, cautions, the form of a catalogue entry, and the working of an answer.

pub mod caution;
pub mod equation;
#[cfg(feature = "alloc")]
pub mod infix;
pub mod source;
pub mod steps;

pub use caution::{Caution, CautionKind, Cautions, Level, Range};
pub use equation::{Equation, Measure, Standing, Symbol};
pub use source::Source;
pub use steps::{NoSteps, Notes, Steps};
#[cfg(feature = "alloc")]
pub use steps::{Step, Working};
