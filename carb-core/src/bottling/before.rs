//! The drink before it is primed: what CO2 it holds, and what comes by itself.

use super::priming::{EXTRACT_CO2, at_least, extract_co2};
use crate::balance::open::{Left, no_residual};
use crate::balance::sealed::{self, Closed, Sealed};
use crate::basis::{ColdCrash, Context, Fermenter, Yeast};
use crate::error::{Error, code};
use crate::evidence::{NoSteps, Steps};
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::property::fermentable;
use crate::property::solubility::Solubility;
use crate::quantity::{Carbonation, Key, Name, Percent, Temperature};

/// Where the CO2 in the drink is known from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Before {
    /// It follows from how the drink was fermented.
    Fermented(Fermenter),
    /// It was measured, which overrides everything else.
    Measured(Carbonation),
}

impl Before {
    /// Open to the air, at its warmest since active fermentation.
    pub fn open(warmest: Temperature) -> Self {
        Before::Fermented(Fermenter::open(warmest))
    }

    pub(crate) fn crash(&self) -> ColdCrash {
        match self {
            Before::Fermented(fermenter) => fermenter.crash,
            Before::Measured(_) => ColdCrash::Open,
        }
    }

    /// Warmest, pressure, cold temperature, headspace, and CO2 measured, as kernels take them. What does not count takes a
    /// value that every kernel allows.
    pub(crate) fn si(&self) -> [f64; 5] {
        match self {
            Before::Fermented(fermenter) => {
                let [gauge, cold, headspace] = fermenter.si();
                [fermenter.warmest.si(), gauge, cold, headspace, 0.0]
            }
            Before::Measured(co2) => {
                let any = Key::Warmest.limits().unwrap_or_default().0;
                [any, 0.0, any, 0.0, co2.si()]
            }
        }
    }
}

/// How bottles are closed and conditioned; counts where the gas over the drink does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Conditioned {
    /// Headspace in percent of the liquid.
    pub headspace: Percent,
    /// Temperature at which the bottles are closed.
    pub filling: Temperature,
    /// Temperature at which they are conditioned.
    pub room: Temperature,
}

/// What kernels know of the drink beside its columns.
#[derive(Clone, Copy)]
pub(crate) struct Drink<S> {
    pub solubility: S,
    left: Left,
    measured: bool,
    count_headspace: bool,
    pub yield_percent: f64,
    pub yield_factor: f64,
    /// CO2 from what else was added, kg/m3.
    added: f64,
}

/// The columns that say what the drink holds: warmest, ambient, abv, extract, fermentable, fermenter gauge, cold,
/// fermenter headspace, measured.
pub(crate) type Holds = [f64; 9];

impl<S: Solubility> Drink<S> {
    pub(crate) fn new(solubility: S, context: &Context, before: &Before, added: Carbonation) -> Self {
        Self {
            solubility,
            left: Left::of(context, before.crash()),
            measured: matches!(before, Before::Measured(_)),
            count_headspace: context.basis.count_headspace,
            yield_percent: context.basis.yield_percent,
            yield_factor: context.basis.yield_factor,
            added: added.si(),
        }
    }

    /// CO2 that is there, what comes by itself or of what else was added, and a status.
    #[inline(always)]
    pub(crate) fn held(&self, x: Holds, steps: &mut impl Steps) -> (f64, f64, i32) {
        let [warmest, ambient, abv, extract, left, gauge, cold, headspace, measured] = x;
        let (mut r, mut bits) = (measured, 0);
        if !self.measured {
            let x = [warmest, ambient, abv, extract, gauge, cold, headspace];
            (r, bits, _) = self.left.residual(self.solubility, x, steps);
        }
        let mut e = self.added;
        if left != 0.0 {
            let y = steps.step(&fermentable::THEORETICAL_YIELD, &[0.0, 1.0, 0.0], fermentable::extract_yield());
            let made = extract_co2(y, self.yield_percent, self.yield_factor, left);
            steps.record(&EXTRACT_CO2, &[y, self.yield_percent, self.yield_factor, left], made);
            e += made;
        }
        (r, e, bits)
    }

    /// The bottle, where the gas in it counts.
    #[inline(always)]
    fn vessel(
        &self,
        [headspace, filling, room]: [f64; 3],
        [abv, extract]: [f64; 2],
        steps: &mut impl Steps,
    ) -> (Sealed<S::Here>, i32) {
        let (here, bits) = self.solubility.here(room, abv, extract, steps);
        (Sealed::new(here, Closed { headspace, filling, air: 0.0 }, room, steps), bits)
    }

    /// CO2 (kg per m3 of drink as filled) that leaves `target` dissolved, and a status.
    #[inline(always)]
    pub(crate) fn total(&self, target: f64, closed: [f64; 3], drink: [f64; 2], steps: &mut impl Steps) -> (f64, i32) {
        if !self.count_headspace {
            return (target, 0);
        }
        let (vessel, bits) = self.vessel(closed, drink, steps);
        let co2 = vessel.co2_pressure(target);
        let (pressure, told) = vessel.total(co2, steps);
        let high = if pressure > sealed::MOST { code::PRESSURE_TOO_HIGH } else { bits | told };
        (vessel.content(co2), if vessel.gas < sealed::LEAST_GAS { code::VESSEL_FULL } else { high })
    }

    /// CO2 dissolved (kg/m3) where there is `total`: the inverse of [`Drink::total`].
    #[inline(always)]
    pub(crate) fn dissolved(
        &self,
        total: f64,
        closed: [f64; 3],
        drink: [f64; 2],
        steps: &mut impl Steps,
    ) -> (f64, i32) {
        if !self.count_headspace {
            return (total, 0);
        }
        let (vessel, bits) = self.vessel(closed, drink, steps);
        let (co2, solved) = vessel.solve(total);
        let (_, told) = vessel.total(co2, steps);
        (vessel.dissolved(co2), if solved < 0 { solved } else { bits | told })
    }

    /// Why there is no answer.
    pub(crate) fn explain(&self, status: i32, target: (Key, f64), x: Holds, room: f64) -> Error {
        match status {
            code::TARGET_BELOW_HELD => {
                let (r, e, _) = self.held(x, &mut NoSteps);
                Error::TargetBelowHeld {
                    parameter: Name::first(target.0),
                    value: target.1,
                    held: r + e,
                    remedy: "it needs no sugar; let it ferment out or lose CO2 first, or ask for more if the package holds it",
                }
            }
            // The fermenter that was chilled is full, or the bottle is.
            code::VESSEL_FULL if self.held(x, &mut NoSteps).2 == code::VESSEL_FULL => no_residual(status, x[0], x[6]),
            code::VESSEL_FULL => Error::VesselFull { parameter: Name::first(Key::Room), value: room },
            code::PRESSURE_TOO_HIGH => Error::PressureTooHigh { parameter: Name::first(target.0), limit: sealed::MOST },
            _ => no_residual(status, x[0], x[6]),
        }
    }
}

/// What a kernel takes of the drink: the columns of [`Holds`], and the extract with what is fermentable of it.
pub(crate) fn holds(before: &Before, context: &Context, steps: &mut impl Steps) -> Result<Holds, Error> {
    let drink = context.beverage;
    if drink.yeast == Yeast::None {
        return Err(Error::NoLiveYeast);
    }
    let [warmest, gauge, cold, headspace, measured] = before.si();
    let left = drink.fermentable()?;
    // Nothing asks for the air outside where the CO2 was measured.
    let ambient = match (context.ambient, before) {
        (None, Before::Measured(_)) => STANDARD_ATMOSPHERE,
        _ => context.ambient(steps)?,
    };
    Ok([warmest, ambient, drink.abv(), at_least(drink.extract(), left), left, gauge, cold, headspace, measured])
}

/// How the bottles are kept, as kernels take it.
pub(crate) fn closed(conditioned: &Conditioned) -> [f64; 3] {
    [conditioned.headspace.si(), conditioned.filling.si(), conditioned.room.si()]
}
