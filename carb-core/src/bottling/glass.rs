//! Will the glass stand it? A bottle is judged by the worst case: its carbonation against what the class usually holds,
//! its pressure against a rating, or against the pressure of the class's usual carbonation at 40 °C.

use super::package::{
    Contents, HOTTEST_STORE, Keeping, note_contents, note_pressure, pressure_of_contents, usual_pressure,
};
use crate::basis::Context;
use crate::error::Error;
use crate::evidence::caution::{
    CLASS_DANGER, CLASS_HIGH, CLASS_PRESSURE, Caution, Cautions, FERMENTABLE_LEFT, NOT_FOR_CONDITIONING, RATING_DANGER,
    above,
};
use crate::evidence::{Level, NoSteps};
use crate::property::bottle::{Class, HEAVIER, LIGHT};
use crate::quantity::unit::{CELSIUS, VOLUMES};
use crate::quantity::{GaugePressure, Temperature};

/// What is known of a bottle.
#[derive(Clone, Copy, Debug, Default)]
pub struct Glass {
    /// Its class; where none is named, light one-way and heavier reusable bottles are both looked at.
    pub class: Option<&'static Class>,
    /// The maker's rating, gauge: it goes before everything that is said of a class.
    pub rating: Option<GaugePressure>,
}

impl Glass {
    /// Most CO2 that the class usually holds, kg/m3; that of heavier reusable bottles where no class is known that is for
    /// conditioning.
    pub fn usual_carbonation(&self) -> f64 {
        VOLUMES.to_si(self.class.filter(|class| class.for_conditioning()).unwrap_or(&HEAVIER).usual.1)
    }

    /// The gauge pressure (Pa) that must not be passed, and whether it is a rating rather than what the class usually
    /// sees at 40 °C. Without class and rating, that of heavier reusable beer bottles.
    pub fn pressure_limit(&self) -> (f64, bool) {
        match (self.rating.map(GaugePressure::si), self.class) {
            (Some(rating), _) => (rating, true),
            (None, Some(class)) if !class.for_conditioning() => (0.0, false),
            (None, class) => (usual_pressure(VOLUMES.to_si(class.unwrap_or(&HEAVIER).usual.1)), false),
        }
    }

    /// Whether bottles like this are for conditioning at all.
    pub fn for_conditioning(&self) -> bool {
        self.class.is_none_or(Class::for_conditioning)
    }

    /// Notes what the contents mean for the bottle.
    pub(crate) fn note_contents(&self, worst: f64, still_to_come: f64, cautions: &mut Cautions) {
        match self.class {
            // The maker's rating goes before what is usual.
            None if self.rating.is_some() => note_contents(None, worst, still_to_come, cautions),
            None => note_contents(Some((&LIGHT, &HEAVIER)), worst, still_to_come, cautions),
            Some(class) => {
                // All that is still to come is in the worst case, by which the class is judged; beer bottles have no room for
                // being wrong about it.
                if class.usual.1 > HEAVIER.usual.1 && still_to_come > 0.0 {
                    cautions.add(Caution::of(&FERMENTABLE_LEFT, still_to_come));
                } else {
                    note_contents(None, worst, still_to_come, cautions);
                }
                let (low, high) = (VOLUMES.to_si(class.usual.0), VOLUMES.to_si(class.usual.1));
                let add = |cautions: &mut Cautions, kind, limit| cautions.add(Caution { kind, value: worst, limit });
                if class.for_conditioning() && above(worst, high) {
                    add(cautions, &CLASS_DANGER, high);
                } else if class.for_conditioning() && above(worst, low) {
                    add(cautions, &CLASS_HIGH, low);
                }
            }
        }
    }

    /// Notes what the worst pressure (Pa, gauge) means for the bottle.
    pub(crate) fn note_pressure(&self, worst: f64, cautions: &mut Cautions) {
        if !self.for_conditioning() {
            cautions.add(Caution { kind: &NOT_FOR_CONDITIONING, value: worst, limit: 0.0 });
            if self.rating.is_none() {
                return;
            }
        }
        if self.class.is_none() && self.rating.is_none() {
            return note_pressure(worst, cautions);
        }
        let (limit, rated) = self.pressure_limit();
        if above(worst, limit) {
            let kind = if rated { &RATING_DANGER } else { &CLASS_PRESSURE };
            cautions.add(Caution { kind, value: worst, limit });
        }
    }

    /// The temperature up to which the worst pressure stays within the bottle's limit: at most 40 °C, beyond which no
    /// margin is given; `None` where it is too much at any temperature.
    ///
    /// # Errors
    /// As [`pressure_of_contents`], but for a bottle that fills or passes every pressure when warm.
    pub fn warmest(
        &self,
        contents: Contents,
        keeping: &Keeping,
        context: &Context,
    ) -> Result<Option<Temperature>, Error> {
        let (limit, _) = self.pressure_limit();
        let excess = |t: f64| {
            let keeping = Keeping { temperature: Temperature::from_si(t), ..*keeping };
            match pressure_of_contents(contents, &keeping, None, context, &mut NoSteps) {
                Ok(answer) => Ok(answer.value.worst.gauge.si() - limit),
                Err(Error::VesselFull { .. } | Error::PressureTooHigh { .. }) => Ok(f64::MAX),
                Err(error) => Err(error),
            }
        };
        if !self.for_conditioning() && self.rating.is_none() {
            return Ok(None);
        }
        let (cold, hot) = (CELSIUS.to_si(0.0), HOTTEST_STORE);
        if excess(cold)? > 0.0 {
            return Ok(None);
        }
        if excess(hot)? <= 0.0 {
            return Ok(Some(Temperature::from_si(hot)));
        }
        let (mut low, mut high) = (cold, hot);
        // A thousandth of a degree is finer than any store.
        while high - low > 1e-3 {
            let middle = 0.5 * (low + high);
            if excess(middle)? > 0.0 {
                high = middle;
            } else {
                low = middle;
            }
        }
        Ok(Some(Temperature::from_si(low)))
    }
}

/// What is said of a bottle: `within`, `high`, `danger` or `not_for_conditioning`.
pub fn verdict(glass: &Glass, cautions: &Cautions) -> &'static str {
    if !glass.for_conditioning() {
        "not_for_conditioning"
    } else if cautions.any(Level::Danger) {
        "danger"
    } else if cautions.any(Level::Caution) {
        "high"
    } else {
        "within"
    }
}
