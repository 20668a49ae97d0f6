//! What a calculation stands on (the drink, the air outside, the assumptions) and what it returns.

pub mod ambient;
pub mod answer;
pub mod beverage;
mod block;
#[cfg(feature = "alloc")]
pub mod bound;
pub mod context;
pub mod fermenter;
pub mod function;
pub mod kernel;
pub mod layout;
pub mod lists;
pub mod request;

pub use ambient::Ambient;
pub use answer::{Answer, Values};
pub use beverage::{Beverage, Kind, Yeast};
#[cfg(feature = "alloc")]
pub use bound::Bound;
pub use context::{Basis, BasisName, Context, ResidualModel};
pub use fermenter::{ColdCrash, Fermenter, Microbes};
pub use function::{Function, Input, Need, Output};
pub use lists::{FillOrder, List, Lists, Refusal};
pub use request::Request;
