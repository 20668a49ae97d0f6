//! How sure an answer is, and which input makes it so.
//!
//! Nothing is computed a second time: the public job is asked again with inputs that differ a little ([`first_order`]) or
//! that are drawn ([`draws`]). An equation's own uncertainty enters through the factor of the basis that it carries.

pub mod dice;
pub mod doubt;
#[cfg(feature = "alloc")]
mod estimate;

pub use doubt::{Doubt, Doubts, INSTRUMENTS, Instrument};
#[cfg(feature = "alloc")]
pub use estimate::{
    DRAWS, Drawn, Estimate, Job, Method, SEED, Share, Source, draws, estimate, first_order, job_of, sources,
};
