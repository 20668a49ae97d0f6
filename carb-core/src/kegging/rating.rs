//! Whether a vessel stands a pressure: by the rating that is told, for none is known otherwise.

use crate::evidence::caution::{Caution, Cautions, VESSEL_RATING_DANGER, VESSEL_UNRATED, above};
use crate::quantity::GaugePressure;

/// Notes what a pressure (Pa, gauge) means for a vessel.
pub(crate) fn note_rating(gauge: f64, rating: Option<GaugePressure>, cautions: &mut Cautions) {
    match rating.map(GaugePressure::si) {
        Some(limit) if above(gauge, limit) => {
            cautions.add(Caution { kind: &VESSEL_RATING_DANGER, value: gauge, limit });
        }
        Some(_) => {}
        None => cautions.add(Caution::of(&VESSEL_UNRATED, gauge)),
    }
}
