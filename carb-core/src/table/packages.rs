//! Functions of filled packages: their pressure, their carbonation, and their conditioning.

use super::inputs::{
    ABV, AGE, BEVERAGE, BOTTLE_CLASS, CELLS, CLOSED, DRINK, EXTRACT, FILTERED, MODEL, OUTSIDE, PACKAGE_BASIS, PHYSICAL,
    RATING, SOLUBILITY, carbonation, each, glass, join, keeping, note_headspace, packaged, shown, under, yeast_state,
};
use crate::basis::function::{optional, required};
use crate::basis::{BasisName, Function, Request, Values};
use crate::bottling::{conditioning, package, reading};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::property::yeast;
use crate::quantity::{Key, Percent, Temperature, Time};

/// The pressure in a package.
pub static PACKAGE_PRESSURE: Function = Function {
    name: "package_pressure",
    summary: "Pressure in a sealed package, expected and worst, of CO2 stated for liquid and headspace together; the expected volumes are what stays dissolved, and the worst case adds 8 % to what is stated, for nobody can say which part of it is sure.",
    home: "bottling::package::package_pressure",
    inputs: join!(
        [required(Key::Carbonation), required(Key::Temperature)],
        CLOSED,
        OUTSIDE,
        DRINK,
        [BOTTLE_CLASS, RATING],
        PACKAGE_BASIS,
    ),
    outputs: &[
        under("expected", Key::Gauge),
        under("expected", Key::Absolute),
        under("expected", Key::Carbonation),
        under("worst", Key::Gauge),
        under("worst", Key::Absolute),
    ],
    columns: &[
        Key::Carbonation,
        Key::Fermentable,
        Key::Temperature,
        Key::Headspace,
        Key::Filling,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ],
    example: r#"{"volumes": 2.4, "temperature_c": 30, "headspace_percent": 4, "altitude_m": 240}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Physical)?;
        let (c, keeping) = (carbonation(request)?, keeping(request)?);
        let mut answer = package::package_pressure(c, &keeping, &glass(request)?, &context, &mut &mut *steps)?;
        note_headspace(request, &mut answer);
        Ok(answer.map(|p| {
            Values::new([
                p.expected.gauge.si(),
                p.expected.absolute.si(),
                p.dissolved.si(),
                p.worst.gauge.si(),
                p.worst.absolute.si(),
            ])
        }))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Physical)?;
        glass(request)?;
        let x = package::columns(carbonation(request)?.si(), &keeping(request)?, &context, &mut NoSteps)?;
        package::visit(&context, each(request, x, s))
    },
};

/// The CO2 in a package, from its pressure.
pub static PACKAGE_CARBONATION: Function = Function {
    name: "package_carbonation",
    summary: "CO2 in a sealed package from the pressure that a gauge on it shows, without air and with all of it.",
    home: "bottling::reading::package_carbonation",
    inputs: join!(
        [required(Key::Gauge), required(Key::Temperature)],
        CLOSED,
        OUTSIDE,
        [BEVERAGE, ABV, EXTRACT, PHYSICAL, MODEL, SOLUBILITY],
    ),
    outputs: &[
        under("total", Key::Carbonation),
        under("dissolved", Key::Carbonation),
        under("least_total", Key::Carbonation),
        under("least_dissolved", Key::Carbonation),
    ],
    columns: &[Key::Gauge, Key::Temperature, Key::Headspace, Key::Filling, Key::Ambient, Key::Abv, Key::Extract],
    example: r#"{"gauge_bar": 1.8, "temperature_c": 20, "headspace_percent": 4, "altitude_m": 240}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Physical)?;
        let (gauge, keeping) = (shown(request)?, keeping(request)?);
        let mut answer = reading::package_carbonation(gauge, &keeping, &context, &mut &mut *steps)?;
        note_headspace(request, &mut answer);
        Ok(answer.map(|c| Values::new([c.total.si(), c.dissolved.si(), c.least_total.si(), c.least_dissolved.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Physical)?;
        let x = reading::columns(shown(request)?, &keeping(request)?, &context, &mut NoSteps)?;
        reading::visit(&context, each(request, x, s))
    },
};

/// How far the bottles are.
pub static CONDITIONING: Function = Function {
    name: "conditioning",
    summary: "Share of the carbonation that bottles have made after some time at a temperature: an estimate, with the slow and the fast end of its range.",
    home: "bottling::conditioning::conditioning",
    inputs: &[required(Key::Room), required(Key::Time), CELLS, AGE, FILTERED, BEVERAGE, ABV],
    outputs: &[under("expected", Key::Progress), under("least", Key::Progress), under("most", Key::Progress)],
    columns: &[Key::Room, Key::Time, Key::Abv, Key::Cells],
    example: r#"{"room_c": 20, "time_d": 14}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (room, state) = (room(request)?, yeast_state(request)?);
        let answer = conditioning::conditioning(room, time(request)?, &state, &context, &mut &mut *steps)?;
        Ok(answer.map(|span| Values::new([span.expected.si(), span.least.si(), span.most.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (room, state) = (room(request)?.si(), yeast_state(request)?);
        conditioning::visit(each(request, conditioning::columns(room, time(request)?.si(), &state, &context), s))
    },
};

/// When the bottles are ready.
pub static CONDITIONING_TIME: Function = Function {
    name: "conditioning_time",
    summary: "Time until bottles have made a share of their carbonation at a temperature: an estimate, with the fast (least) and the slow (most) end of its range.",
    home: "bottling::conditioning::conditioning_time",
    inputs: &[required(Key::Room), optional(Key::Progress, "95 %"), CELLS, AGE, FILTERED, BEVERAGE, ABV],
    outputs: &[under("expected", Key::Time), under("least", Key::Time), under("most", Key::Time)],
    columns: &[Key::Progress, Key::Room, Key::Abv, Key::Cells],
    example: r#"{"room_c": 20, "progress_percent": 95}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (progress, room, state) = (progress(request)?, room(request)?, yeast_state(request)?);
        let answer = conditioning::conditioning_time(progress, room, &state, &context, &mut &mut *steps)?;
        Ok(answer.map(|span| Values::new([span.expected.si(), span.least.si(), span.most.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (progress, room, state) = (progress(request)?.si(), room(request)?.si(), yeast_state(request)?);
        conditioning::visit_wait(each(request, conditioning::columns(progress, room, &state, &context), s))
    },
};

/// Progress at which bottles are called ready, percent; common practice.
pub const READY: f64 = 95.0;

fn progress(request: &Request) -> Result<Percent, Error> {
    request.or(Key::Progress, READY).map(Percent::from_si)
}

fn room(request: &Request) -> Result<Temperature, Error> {
    request.need(Key::Room, "say how warm the bottles are, as room_c or room_f").map(Temperature::from_si)
}

fn time(request: &Request) -> Result<Time, Error> {
    request.need(Key::Time, "say how long, as time_d").map(Time::from_si)
}

/// Fresh yeast for the bottles.
pub static REYEASTING: Function = Function {
    name: "reyeasting",
    summary: "Dry yeast that brings living cells into a drink before it is bottled.",
    home: "bottling::conditioning::reyeasting",
    inputs: &[required(Key::Packaged), optional(Key::Cells, "1 million cells in a millilitre")],
    outputs: &[under("dry_yeast", Key::Mass)],
    columns: &[Key::Packaged, Key::Cells],
    example: r#"{"packaged_l": 19.2}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let cells = request.or(Key::Cells, yeast::USUAL)?;
        let answer = conditioning::reyeasting(packaged(request)?, cells, &context, &mut &mut *steps)?;
        Ok(answer.map(|mass| Values::new([mass.si()])))
    },
    slices: |request, s| {
        let x = [packaged(request)?.si(), request.or(Key::Cells, yeast::USUAL)?];
        conditioning::visit_yeast(each(request, x, s))
    },
};
