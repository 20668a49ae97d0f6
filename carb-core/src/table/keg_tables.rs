//! Tables of kegs: the carbonation chart, and what vessels are usually marked with.

use super::inputs::{ABV, BEVERAGE, EXTRACT, HANDBOOK, MODEL, OUTSIDE, SOLUBILITY, join};
use super::keg_pressures::{GAS, gas};
use super::tables::{Cell, Table, number, text};
use crate::balance::equilibrium::dissolved_co2;
use crate::basis::BasisName;
use crate::basis::function::optional;
use crate::basis::layout::Layout;
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::kegging::mixed_gas::mixed_dissolved_co2;
use crate::property::keg_rating::KEG_RATINGS;
use crate::quantity::unit::{BAR, CELSIUS, FAHRENHEIT, PSI};
use crate::quantity::{Dimension, GaugePressure, Key, Temperature, Unit};

/// Steps of a grid: the first, how far apart, how many; exact in tenths.
struct Grid {
    unit: &'static Unit,
    first: u32,
    step: u32,
    count: u32,
}

impl Grid {
    /// The steps, in the grid's unit.
    fn of(&self) -> impl Iterator<Item = f64> + '_ {
        (0..self.count).map(|at| f64::from(self.first + at * self.step) / 10.0)
    }
}

/// Temperatures and gauge pressures of a layout.
const fn grids(layout: Layout) -> [Grid; 2] {
    match layout {
        Layout::Metric => {
            [Grid { unit: &CELSIUS, first: 0, step: 10, count: 16 }, Grid { unit: &BAR, first: 2, step: 1, count: 23 }]
        }
        Layout::Us => [
            Grid { unit: &FAHRENHEIT, first: 300, step: 20, count: 16 },
            Grid { unit: &PSI, first: 40, step: 20, count: 16 },
        ],
    }
}

/// The chart on the wall.
pub static CARBONATION_CHART: Table = Table {
    name: "carbonation_chart",
    summary: "CO2 in a drink by temperature and regulator pressure, for the air outside, the drink and the gas of the request: 0 to 15 °C and 0.2 to 2.4 bar, or 30 to 60 °F and 4 to 34 psi. Where the model has no answer, the row is left out.",
    inputs: join!(
        [optional(Key::Chart, "metric")],
        OUTSIDE,
        GAS,
        [BEVERAGE, ABV, EXTRACT, HANDBOOK, MODEL, SOLUBILITY],
    ),
    lists: &[],
    example: r#"{"chart": "us", "altitude_m": 0}"#,
    columns: &[
        number("", Dimension::Temperature, "temperature of the drink"),
        number("gauge", Dimension::Pressure, "regulator pressure, above the air outside"),
        number("", Dimension::Carbonation, "CO2 in the drink at equilibrium"),
    ],
    rows: |request, _, tell| {
        let context = request.context(BasisName::Handbook)?;
        context.ambient(&mut NoSteps)?;
        let (gas, [temperatures, pressures]) = (gas(request)?, grids(request.chart()));
        for t in temperatures.of() {
            for p in pressures.of() {
                let warm = Temperature::from_si(temperatures.unit.to_si(t));
                let gauge = GaugePressure::from_si(pressures.unit.to_si(p));
                let found = match &gas {
                    None => dissolved_co2(gauge, warm, &context, &mut NoSteps),
                    Some(gas) => mixed_dissolved_co2(gauge, warm, gas, &context, &mut NoSteps),
                };
                match found {
                    Ok(answer) => tell(&[
                        Cell::In(t, temperatures.unit),
                        Cell::In(p, pressures.unit),
                        Cell::Number(answer.value.si()),
                    ]),
                    Err(Error::PressureTooLow { .. } | Error::PressureTooHigh { .. }) => {}
                    Err(error) => return Err(error),
                }
            }
        }
        Ok(())
    },
};

/// What vessels are usually marked with.
pub static KEG_RATING_LIST: Table = Table {
    name: "keg_ratings",
    summary: "Pressures that are usually marked on kegs, fermenters and relief valves, gauge. No vessel is judged by them: read the marking on the vessel itself, never go above that or its relief valve, and follow local code.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the kind"),
        text("title", "in words"),
        number("low_gauge", Dimension::Pressure, "the least that is usual; 0 where it is no pressure vessel"),
        number("high_gauge", Dimension::Pressure, "the most that is usual"),
        text("standing", "how well it is known"),
    ],
    rows: |_, _, tell| {
        for rating in KEG_RATINGS {
            tell(&[
                Cell::Text(rating.name),
                Cell::Text(rating.title),
                Cell::Number(rating.low),
                Cell::Number(rating.high),
                Cell::Text(rating.standing.words()),
            ]);
        }
        Ok(())
    },
};
