//! Whether a vessel stands a pressure: by the rating that is told, for none is known otherwise.

use crate::evidence::caution::{
    BEYOND_EVERY_KEG, Caution, CautionKind, Cautions, VESSEL_RATING_DANGER, VESSEL_UNRATED, above,
};
use crate::property::keg_rating::STRONGEST;
use crate::quantity::GaugePressure;

/// Notes what a pressure (Pa, gauge) means for a vessel.
pub(crate) fn note_rating(gauge: f64, rating: Option<GaugePressure>, cautions: &mut Cautions) {
    note_as(&VESSEL_RATING_DANGER, gauge, rating, cautions);
}

/// The same, with a danger of one's own where the pressure is above the rating.
pub(crate) fn note_as(
    danger: &'static CautionKind,
    gauge: f64,
    rating: Option<GaugePressure>,
    cautions: &mut Cautions,
) {
    match rating.map(GaugePressure::si) {
        Some(limit) if above(gauge, limit) => cautions.add(Caution { kind: danger, value: gauge, limit }),
        Some(_) => {}
        None => {
            cautions.add(Caution::of(&VESSEL_UNRATED, gauge));
            if above(gauge, STRONGEST) {
                cautions.add(Caution { kind: &BEYOND_EVERY_KEG, value: gauge, limit: STRONGEST });
            }
        }
    }
}
