//! Tables of oxygen, of cylinders, and of CO2 in the air.

use super::tables::{Cell, SOURCE, STANDING, Table, cited, number, text};
use crate::property::cylinder::FILLING_DENSITIES;
use crate::property::exposure::EXPOSURES;
use crate::property::oxygen::OXYGEN_LIMITS;
use crate::quantity::Dimension;

/// What the trade aims at.
pub static OXYGEN_LIST: Table = Table {
    name: "oxygen_limits",
    summary: "Oxygen that the trade allows in drinks, packages and CO2: labels, no physics.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the figure"),
        text("title", "in words"),
        number("limit", Dimension::TraceConcentration, "oxygen per litre of drink; missing where it is of a gas"),
        number("limit", Dimension::VolumeFraction, "oxygen in the gas; missing where it is of a drink"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for limit in OXYGEN_LIMITS {
            tell(&[
                Cell::Text(limit.name),
                Cell::Text(limit.title),
                limit.drink.into(),
                limit.gas.into(),
                Cell::Text(limit.standing.words()),
                cited(limit.source),
            ]);
        }
        Ok(())
    },
};

/// How far cylinders may be filled.
pub static FILLING_LIST: Table = Table {
    name: "filling_densities",
    summary: "How far cylinders of CO2 may be filled, by how strong they are.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the class"),
        text("title", "which cylinders"),
        number("filling", Dimension::MassRatio, "CO2 in the full cylinder over the water that it would hold"),
        number("gauge", Dimension::Pressure, "pressure by which they are classed, above the air outside"),
        text("pressure_is", "which pressure that is: service or test"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for class in FILLING_DENSITIES {
            tell(&[
                Cell::Text(class.name),
                Cell::Text(class.title),
                Cell::Number(class.ratio),
                Cell::Number(class.pressure),
                Cell::Text(class.pressure_is),
                Cell::Text(class.standing.words()),
                cited(Some(class.source)),
            ]);
        }
        Ok(())
    },
};

/// CO2 in the air.
pub static EXPOSURE_LIST: Table = Table {
    name: "exposure_limits",
    summary: "CO2 in the air: limits of exposure, settings of alarms, effects on people. Local code decides.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the row"),
        text("title", "in words"),
        text("body", "who laid it down; \"effect\" where it is what happens to people"),
        number("limit", Dimension::VolumeFraction, "CO2 in the air"),
        number("averaged", Dimension::Time, "over how long; missing where it holds at once or nothing is said"),
        number("threshold", Dimension::Mass, "CO2 in the system from which it applies"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for row in EXPOSURES {
            tell(&[
                Cell::Text(row.name),
                Cell::Text(row.title),
                Cell::Text(row.body),
                row.share.into(),
                row.time.into(),
                row.mass.into(),
                Cell::Text(row.standing.words()),
                cited(row.source),
            ]);
        }
        Ok(())
    },
};
