//! Tables over bottles: which to fill, what goes into each, what they have to stand, and when they are ready.

use super::inputs::{
    ABV, AGE, BEVERAGE, BOTTLE_CLASS, CELLS, CLOSED, DOSE_BASIS, DOSE_OUTSIDE, DRINK, FERMENTED, FILTERED, OUTSIDE,
    PACKAGE_BASIS, RATING, SUGAR, USUAL_ROOM, batch, carbonation, glass, headspace, join, keeping, yeast_state,
};
use super::tables::{Cell, Table, number, text};
use crate::basis::function::{optional, required};
use crate::basis::lists::{BOTTLES, HISTORY};
use crate::basis::{BasisName, Request};
use crate::bottling::conditioning;
use crate::bottling::doses::bottle_dose;
use crate::bottling::glass::{Glass, verdict};
use crate::bottling::package::{
    Keeping, USUAL_FILLING, USUAL_HEADSPACE, note_temperature, package_pressure, stated_contents,
};
use crate::bottling::parts::pressure_parts;
use crate::bottling::priming::priming_sugar;
use crate::error::Error;
use crate::evidence::{Cautions, NoSteps};
use crate::property::bottle::{CLASSES, SIZES};
use crate::quantity::unit::{CELSIUS, LITRE, MILLILITRE, VOLUMES};
use crate::quantity::{Dimension, Key, Mass, Name, Percent, Temperature, Time, Volume};

#[cfg(feature = "alloc")]
/// Which bottles to fill.
pub static FILL_LIST: Table = Table {
    name: "fill_list",
    summary: "Which bottles to fill, and how many: the exact optimum over the bottles at hand, in tenths of a millilitre.",
    inputs: &[
        required(Key::Packaged),
        optional(Key::FillOrder, "least_leftover"),
        optional(Key::Spare, "5 %"),
        optional(Key::Headspace, "4 % of the drink, where no capacity is given"),
    ],
    lists: &[&BOTTLES],
    example: r#"{"packaged_l": 19.2, "bottles": [{"bottle_ml": 500, "count": 24}, {"bottle_ml": 330, "count": 40}]}"#,
    columns: &[
        text("bottle_class", "class of the bottle, where it was told"),
        number("bottle", Dimension::Volume, "drink that goes into one"),
        number("", Dimension::Count, "how many are at hand"),
        number("filled", Dimension::Count, "how many to fill"),
        number("washed", Dimension::Count, "how many to wash, spares included"),
        number("gas", Dimension::Volume, "gas over the drink in each"),
        number("headspace", Dimension::Percent, "the same in percent of the drink"),
        number("leftover", Dimension::Volume, "drink that stays over, of the whole batch"),
    ],
    rows: |request, lists, tell| {
        use crate::bottling::fill::{Kind, fill, spares};
        const EMPTY: &str = "list the bottles at hand, each row with bottle_ml and count";
        let rows = lists.of(&BOTTLES);
        if rows.is_empty() {
            return Err(Error::WrongList { list: BOTTLES.name, advice: EMPTY });
        }
        let of = |row: &Request| Kind {
            content: row.number(Key::Bottle).unwrap_or_default(),
            count: row.number(Key::Count).unwrap_or_default() as u32,
        };
        let kinds: alloc::vec::Vec<Kind> = rows.iter().map(of).collect();
        let volume = super::inputs::packaged(request)?.si();
        let (percent, usual) = (request.or(Key::Spare, 5.0)?, request.or(Key::Headspace, USUAL_HEADSPACE)?);
        let found = fill(volume, &kinds, request.fill_order())?;
        for ((row, kind), &filled) in rows.iter().zip(&kinds).zip(&found.filled) {
            let headspace = headspace(row, usual);
            tell(&[
                Cell::Text(row.bottle_class().map_or("", |class| class.name)),
                Cell::Number(kind.content),
                Cell::Number(f64::from(kind.count)),
                Cell::Number(f64::from(filled)),
                Cell::Number(f64::from(filled + spares(filled, percent))),
                Cell::Number(kind.content * headspace / 100.0),
                Cell::Number(headspace),
                Cell::Number(found.leftover),
            ]);
        }
        Ok(())
    },
};

/// What goes into each bottle.
pub static BOTTLE_DOSES: Table = Table {
    name: "bottle_doses",
    summary: "Priming sugar for one bottle, by size, and the whole number of tablets that comes nearest, with the carbonation that they make; the usual sizes where no bottles are listed.",
    inputs: join!(
        [required(Key::Carbonation), optional(Key::Tablet, "no tablets")],
        FERMENTED,
        DOSE_OUTSIDE,
        SUGAR,
        DRINK,
        DOSE_BASIS,
    ),
    lists: &[&BOTTLES],
    example: r#"{"volumes": 2.5, "warmest_c": 20, "altitude_m": 0, "tablet_g": 3, "bottles": [{"bottle_ml": 500, "count": 24}, {"bottle_ml": 750, "count": 4}]}"#,
    columns: &[
        text("title", "what the size is called, where it has a name"),
        number("bottle", Dimension::Volume, "drink that goes into one"),
        number("mass", Dimension::Mass, "sugar for one, as sold"),
        number("tablet", Dimension::Count, "tablets for one"),
        number("tablet", Dimension::Carbonation, "carbonation that they make"),
    ],
    rows: |request, lists, tell| {
        let context = request.context(BasisName::Handbook)?;
        let (target, sugar) = (carbonation(request)?, request.priming_sugar()?);
        let litre = Name { key: Key::Packaged, unit: Some(&LITRE) };
        let batch = batch(&request.with_number(litre, 1.0))?;
        let dose = priming_sugar(target, &batch, &sugar, &context, &mut NoSteps)?.value;
        let tablet = request.get(Key::Tablet).map(|_| request.or(Key::Tablet, 0.0)).transpose()?.map(Mass::from_si);
        let mut one = |content: f64, title: &'static str| -> Result<(), Error> {
            let found = bottle_dose(Volume::from_si(content), &dose, tablet, &batch, &sugar, &context)?;
            tell(&[
                Cell::Text(title),
                Cell::Number(content),
                Cell::Number(found.mass.si()),
                found.tablets.map(|(count, _)| f64::from(count)).into(),
                found.tablets.map(|(_, co2)| co2.si()).into(),
            ]);
            Ok(())
        };
        match lists.of(&BOTTLES) {
            [] => SIZES.iter().try_for_each(|size| one(MILLILITRE.to_si(size.millilitres), size.title)),
            rows => rows.iter().try_for_each(|row| one(row.number(Key::Bottle).unwrap_or_default(), "")),
        }
    },
};

/// Temperatures of the table of pressures, °C.
const STEP: f64 = 5.0;
const LAST: f64 = 60.0;

/// What a bottle has to stand, by temperature.
pub static BOTTLE_PRESSURES: Table = Table {
    name: "bottle_pressures",
    summary: "Pressure in a sealed bottle against temperature, expected and worst, from 0 to 60 °C, and whether a class of bottle, or a maker's rating, stands it; no margin is given above 40 °C, and filled glass is never heated.",
    inputs: join!([required(Key::Carbonation), BOTTLE_CLASS, RATING], CLOSED, OUTSIDE, DRINK, PACKAGE_BASIS),
    lists: &[],
    example: r#"{"volumes": 2.4, "altitude_m": 240}"#,
    columns: &[
        text("verdict", "within, high, danger or not_for_conditioning; danger above 40 °C, where no margin is given"),
        text("caution", "code of the gravest caution; empty where there is none"),
        number("", Dimension::Temperature, "temperature of the bottle"),
        number(
            "expected_gauge",
            Dimension::Pressure,
            "as the balance expects it, without air; missing where the bottle is full or beyond",
        ),
        number("worst_gauge", Dimension::Pressure, "in the worst case"),
        number(
            "limit_gauge",
            Dimension::Pressure,
            "pressure that must not be passed; missing where the bottle is not for conditioning",
        ),
        number("expected", Dimension::Carbonation, "CO2 then dissolved"),
        text("refused", "name of the error where there is no pressure; empty where there is one"),
    ],
    rows: |request, _, tell| {
        let context = request.context(BasisName::Physical)?;
        let co2 = carbonation(request)?;
        let (closed, glass) = (closed(request)?, glass(request)?);
        let contents = stated_contents(co2.si(), &context)?;
        let usable = glass.for_conditioning() || glass.rating.is_some();
        let mut t = 0.0;
        while t <= LAST {
            let temperature = CELSIUS.to_si(t);
            let keeping = Keeping { temperature: Temperature::from_si(temperature), ..closed };
            let found = package_pressure(co2, &keeping, &Glass::default(), &context, &mut NoSteps);
            let refused = match &found {
                Ok(_) => "",
                Err(
                    error @ (Error::VesselFull { .. } | Error::PressureTooHigh { .. } | Error::TargetBelowHeld { .. }),
                ) => error.code_name(),
                Err(error) => return Err(*error),
            };
            let found = found.ok().map(|answer| answer.value);
            let mut cautions = Cautions::default();
            note_temperature(temperature, &mut cautions);
            glass.note_contents(contents.worst, 0.0, &mut cautions);
            if let Some(found) = &found {
                glass.note_pressure(found.worst.gauge.si(), &mut cautions);
            }
            let word = match verdict(&glass, &cautions) {
                // A bottle that is full, or beyond every vessel, bursts.
                "within" | "high" if found.is_none() => "danger",
                word => word,
            };
            tell(&[
                Cell::Text(word),
                Cell::Text(cautions.iter().next().map_or("", |caution| caution.kind.code)),
                Cell::Number(temperature),
                found.map(|p| p.expected.gauge.si()).into(),
                found.map(|p| p.worst.gauge.si()).into(),
                usable.then_some(glass.pressure_limit().0).into(),
                found.map(|p| p.dissolved.si()).into(),
                Cell::Text(refused),
            ]);
            t += STEP;
        }
        Ok(())
    },
};

/// How a bottle was closed; its temperature is to be set.
fn closed(request: &Request) -> Result<Keeping, Error> {
    Ok(Keeping {
        temperature: Temperature::from_si(USUAL_ROOM),
        headspace: Percent::from_si(request.or(Key::Headspace, USUAL_HEADSPACE)?),
        filling: Temperature::from_si(request.or(Key::Filling, USUAL_FILLING)?),
    })
}

/// Which classes of bottle stand it.
pub static BOTTLE_VERDICTS: Table = Table {
    name: "bottle_verdicts",
    summary: "Whether each class of bottle stands a carbonation by the worst case: against what it usually holds, and on a hot day against what it usually sees at 40 °C. A maker's rating goes before it: the table of bottle_pressures takes one.",
    inputs: join!([required(Key::Carbonation), optional(Key::HotDay, "35 °C")], CLOSED, OUTSIDE, DRINK, PACKAGE_BASIS),
    lists: &[],
    example: r#"{"volumes": 2.4, "altitude_m": 240}"#,
    columns: &[
        text("bottle_class", "class of the bottle"),
        text("verdict", "within, high, danger or not_for_conditioning"),
        number("usual", Dimension::Carbonation, "the most that is usually put into it"),
        number("worst_gauge", Dimension::Pressure, "worst pressure on the hot day"),
        number(
            "limit_gauge",
            Dimension::Pressure,
            "pressure that must not be passed; missing where it is not for conditioning",
        ),
        number(
            "warmest",
            Dimension::Temperature,
            "up to which temperature the worst pressure stays within it, at most 40 °C; missing where nowhere",
        ),
    ],
    rows: |request, _, tell| {
        let context = request.context(BasisName::Physical)?;
        let co2 = carbonation(request)?;
        let hot = Temperature::from_si(request.or(Key::HotDay, CELSIUS.to_si(35.0))?);
        let keeping = Keeping { temperature: hot, ..closed(request)? };
        let renamed = |error: Error| {
            error.renamed(|key| (key == Key::Temperature).then_some(Name { key: Key::HotDay, unit: Some(&CELSIUS) }))
        };
        for class in CLASSES {
            let glass = Glass { class: Some(class), rating: None };
            let answer = package_pressure(co2, &keeping, &glass, &context, &mut NoSteps).map_err(renamed)?;
            let mut cautions = Cautions::default();
            let contents = stated_contents(co2.si(), &context)?;
            glass.note_contents(contents.worst, 0.0, &mut cautions);
            glass.note_pressure(answer.value.worst.gauge.si(), &mut cautions);
            let (limit, _) = glass.pressure_limit();
            tell(&[
                Cell::Text(class.name),
                Cell::Text(verdict(&glass, &cautions)),
                Cell::In(class.usual.1, &VOLUMES),
                Cell::Number(answer.value.worst.gauge.si()),
                glass.for_conditioning().then_some(limit).into(),
                glass.warmest(contents, &keeping, &context)?.map(Temperature::si).into(),
            ]);
        }
        Ok(())
    },
};

/// What a pressure is made of.
pub static PRESSURE_PARTS: Table = Table {
    name: "pressure_parts",
    summary: "What the pressure in a sealed package is made of, part by part: CO2, the expanding liquid, air that was sealed in, and the margins of the worst case.",
    inputs: join!([required(Key::Carbonation), required(Key::Temperature)], CLOSED, OUTSIDE, DRINK, PACKAGE_BASIS),
    lists: &[],
    example: r#"{"volumes": 2.5, "temperature_f": 68, "filling_f": 38, "headspace_percent": 1, "altitude_m": 0}"#,
    columns: &[
        text("part", "what it is"),
        number("adds", Dimension::Pressure, "what it adds"),
        number("gauge", Dimension::Pressure, "gauge pressure with it and everything before it"),
    ],
    rows: |request, _, tell| {
        let context = request.context(BasisName::Physical)?;
        for part in pressure_parts(carbonation(request)?, &keeping(request)?, &context)? {
            tell(&[Cell::Text(part.name), Cell::Number(part.adds), Cell::Number(part.gauge)]);
        }
        Ok(())
    },
};

/// Days that the table of conditioning tells.
const DAYS: u32 = 42;

/// Day by day.
pub static CONDITIONING_DAYS: Table = Table {
    name: "conditioning_days",
    summary: "Share of the carbonation that bottles have made, day by day for six weeks, in a room or through a history of temperatures: an estimate, with the slow and the fast end of its range.",
    inputs: &[optional(Key::Room, "20 °C, where no history is given"), CELLS, AGE, FILTERED, BEVERAGE, ABV],
    lists: &[&HISTORY],
    example: r#"{"history": [{"temperature_c": 21, "time_d": 5}, {"temperature_c": 14, "time_d": 30}]}"#,
    columns: &[
        text("state", "waiting, working or ready (95 %), as expected"),
        number("", Dimension::Time, "time since the bottles were closed"),
        number("expected", Dimension::Percent, "expected"),
        number("least", Dimension::Percent, "the slow end"),
        number("most", Dimension::Percent, "the fast end"),
    ],
    rows: |request, lists, tell| {
        let context = request.context(BasisName::Handbook)?;
        let (state, abv) = (yeast_state(request)?, context.beverage.abv());
        let room = Temperature::from_si(request.or(Key::Room, USUAL_ROOM)?);
        for day in 1..=DAYS {
            let time = Time::from_d(f64::from(day));
            let spells = conditioning::spells(room, lists.of(&HISTORY));
            let made = conditioning::after(time, spells, abv, &state);
            let share = made.expected.si();
            let word = if share <= 0.0 {
                "waiting"
            } else if share < super::packages::READY {
                "working"
            } else {
                "ready"
            };
            tell(&[
                Cell::Text(word),
                Cell::Number(time.si()),
                Cell::Number(share),
                Cell::Number(made.least.si()),
                Cell::Number(made.most.si()),
            ]);
        }
        Ok(())
    },
};
