//! The inputs that the benches share.

use carb_core::basis::Request;
use carb_core::basis::request::Raw;

/// `n` numbers spread over `low..high`, in no order that a branch predictor could learn.
pub fn spread(n: usize, low: f64, high: f64) -> Vec<f64> {
    (0..n).map(|at| low + (high - low) * ((at * 7919) % n) as f64 / n as f64).collect()
}

/// A request of these numbers and names.
///
/// # Panics
/// Where a name or a value is wrong: the benches are fixed, so that is a mistake in them.
pub fn request(numbers: &[(&str, f64)], names: &[(&str, &str)]) -> Request {
    let mut request = Request::new();
    for (name, value) in numbers {
        request.set(name, Raw::Number(*value)).expect("a name of the vocabulary");
    }
    for (name, value) in names {
        request.set(name, Raw::Text(value)).expect("a choice of its list");
    }
    request
}
