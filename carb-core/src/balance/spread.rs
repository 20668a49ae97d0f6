//! What every solubility model that was made for a drink says of one state: how far honest answers lie apart.

use super::equilibrium;
use crate::basis::answer::Both;
use crate::basis::kernel::check;
use crate::basis::{Ambient, Context};
use crate::error::Error;
use crate::evidence::caution::SLACK;
use crate::evidence::{NoSteps, Notes};
use crate::property::solubility::{Here, Model, Solubility};
use crate::quantity::{AbsolutePressure, AmbientPressure, Carbonation, GaugePressure, Key, Name, Temperature};

/// A drink and its gas, known by one of the two.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum State {
    /// The total pressure of CO2 and vapour over the drink.
    Under(AbsolutePressure),
    /// The same above the air outside.
    UnderGauge(GaugePressure),
    /// The CO2 in the drink.
    Holding(Carbonation),
}

/// What one model says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opinion {
    /// The model.
    pub model: Model,
    /// The CO2 in the drink.
    pub carbonation: Carbonation,
    /// The total pressure over it.
    pub pressure: AbsolutePressure,
    /// Uncertainty of the model for the drink, k = 2, percent of the CO2.
    pub uncertainty_percent: f64,
    /// Whether the state lies where the model's source says that it holds.
    pub within_range: bool,
}

/// Tells what each model that was made for the drink says of a state, the basis's own first.
///
/// # Errors
/// Where a value lies outside its limits. A model without an answer for the state is told as its error.
pub fn spread(
    state: State,
    temperature: Temperature,
    context: &Context,
    tell: &mut dyn FnMut(Model, Result<Opinion, Error>),
) -> Result<(), Error> {
    check(Key::Temperature, temperature.si())?;
    match state {
        State::Under(pressure) => check(Key::Absolute, pressure.si())?,
        State::UnderGauge(gauge) => {
            check(Key::Gauge, gauge.si())?;
            let ambient = context.ambient(&mut NoSteps)?;
            if gauge.si() < -ambient {
                let parameter = Name::first(Key::Gauge);
                return Err(Error::PressureTooLow { parameter, value: gauge.si(), low: -ambient });
            }
        }
        State::Holding(carbonation) => check(Key::Carbonation, carbonation.si())?,
    }
    let own = context.model();
    let all = context.beverage.kind.models().iter().copied();
    let first = all.clone().filter(|(model, _)| *model == own);
    for (model, percent) in first.chain(all.filter(|(model, _)| *model != own)) {
        let mut context = *context;
        context.basis.model = Some(model);
        let told = opinion(state, temperature, &context).map(|(carbonation, pressure, within_range)| Opinion {
            model,
            carbonation,
            pressure,
            uncertainty_percent: percent,
            within_range,
        });
        tell(model, told);
    }
    Ok(())
}

fn opinion(state: State, t: Temperature, context: &Context) -> Result<(Carbonation, AbsolutePressure, bool), Error> {
    match state {
        State::Under(pressure) => {
            let answer = equilibrium::dissolved_co2_absolute(pressure, t, context, &mut NoSteps)?;
            Ok((answer.value, pressure, answer.notes.cautions.bits() == 0))
        }
        State::UnderGauge(gauge) => {
            let answer = equilibrium::dissolved_co2(gauge, t, context, &mut NoSteps)?;
            let pressure = gauge.to_absolute(AmbientPressure::from_si(context.ambient(&mut NoSteps)?));
            Ok((answer.value, pressure, answer.notes.cautions.bits() == 0))
        }
        State::Holding(carbonation) => {
            let drink = context.beverage;
            let mut notes = Notes::default();
            let (here, _) = context.solubility().here(t.si(), drink.abv(), drink.extract(), &mut notes);
            let total = here.total_pressure(carbonation.si());
            here.tell(total, 0.0, &mut Both(&mut notes, &mut NoSteps));
            let parameter = Name::first(Key::Carbonation);
            if total < -SLACK {
                return Err(Error::PressureTooLow { parameter, value: carbonation.si(), low: 0.0 });
            }
            if total > super::sealed::MOST {
                return Err(Error::PressureTooHigh { parameter, limit: super::sealed::MOST });
            }
            Ok((carbonation, AbsolutePressure::from_si(total), notes.cautions.bits() == 0))
        }
    }
}

/// The air outside, where it is known: for the gauge pressure of an opinion.
pub fn ambient(context: &Context) -> Option<AmbientPressure> {
    context.ambient.map(|air: Ambient| AmbientPressure::from_si(air.pressure(&mut NoSteps)))
}
