//! Functions of pressure in kegs and fermenters: blended gas, the keg that warms, natural carbonation, stones.

use super::inputs::{
    ABV, BEVERAGE, DRINK, EXTRACT, HANDBOOK, MODEL, OUTSIDE, PACKAGE_BASIS, PHYSICAL, RESIDUAL, RESIDUAL_MODEL, SCALE,
    SOLUBILITY, carbonation, each, gravity_reading, join, keeping, note_headspace, output, temperature, under,
};
use crate::basis::function::{Input, one_of, optional, required};
use crate::basis::{BasisName, Function, Request, Values};
use crate::bottling::attenuation::Reading;
use crate::bottling::package::PackagePressure;
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::kegging::closed_fermenter;
use crate::kegging::keg_temperature::{self, keg_temperature};
use crate::kegging::mixed_gas::{self, Gas, gas_blend};
use crate::kegging::spunding::{self, Fermenting};
use crate::kegging::stone::{self, Placed};
use crate::kegging::warmed_keg;
use crate::quantity::{
    AbsolutePressure, Carbonation, GaugePressure, Key, Length, Percent, PressureDifference, SpecificGravity,
    Temperature,
};

/// The gas over the drink.
pub(crate) const GAS: [Input; 2] = [optional(Key::Co2Share, "100 %: CO2 and nothing else"), AIR];
const AIR: Input = optional(Key::HeadspaceAir, "0: purged, or driven out");
const RATING: Input = optional(Key::KegRating, "no rating is known, and a caution says so");
const MODELS: [Input; 6] = [BEVERAGE, ABV, EXTRACT, HANDBOOK, MODEL, SOLUBILITY];
const START: Input = optional(Key::Start, "what it keeps open to the air at that temperature, by the basis");

/// The gas over the drink, where something is said of it.
///
/// # Errors
/// Where a value lies outside its limits.
pub(crate) fn gas(request: &Request) -> Result<Option<Gas>, Error> {
    let given = request.get(Key::Co2Share).is_some() || request.get(Key::HeadspaceAir).is_some();
    Ok(if given { Some(any_gas(request)?) } else { None })
}

fn any_gas(request: &Request) -> Result<Gas, Error> {
    Ok(Gas { co2: Percent::from_si(request.or(Key::Co2Share, 100.0)?), air: air(request)? })
}

fn air(request: &Request) -> Result<AbsolutePressure, Error> {
    request.or(Key::HeadspaceAir, 0.0).map(AbsolutePressure::from_si)
}

fn applied(request: &Request) -> Result<GaugePressure, Error> {
    request.need(Key::Gauge, "say what the regulator shows, such as gauge_psi or gauge_bar").map(GaugePressure::from_si)
}

fn rating(request: &Request) -> Result<Option<GaugePressure>, Error> {
    request.get(Key::KegRating).map(|_| request.or(Key::KegRating, 0.0).map(GaugePressure::from_si)).transpose()
}

/// The gas for a pressure.
pub static GAS_BLEND: Function = Function {
    name: "gas_blend",
    summary: "Share of CO2 in a blend with nitrogen that holds a drink at a carbonation under a regulator pressure.",
    home: "kegging::mixed_gas::gas_blend",
    inputs: join!(
        [required(Key::Carbonation), required(Key::Temperature), required(Key::Gauge)],
        OUTSIDE,
        [AIR],
        MODELS,
    ),
    outputs: &[output(Key::Co2Share)],
    columns: &[Key::Carbonation, Key::Temperature, Key::Gauge, Key::Ambient, Key::Abv, Key::Extract, Key::HeadspaceAir],
    example: r#"{"volumes": 2.5, "temperature_f": 38, "gauge_psi": 22, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (c, t, gauge) = (carbonation(request)?, temperature(request)?, applied(request)?);
        let answer = gas_blend(c, t, gauge, air(request)?, &context, &mut &mut *steps)?;
        Ok(answer.map(|share| Values::new([share.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let drink = context.beverage;
        let (c, t, gauge) = (carbonation(request)?.si(), temperature(request)?.si(), applied(request)?.si());
        let ambient = context.ambient(&mut NoSteps)?;
        let x = [c, t, gauge, ambient, drink.abv(), drink.extract(), air(request)?.si()];
        mixed_gas::visit_blend(&context, each(request, x, s))
    },
};

/// How cold a keg has to be.
pub static KEG_TEMPERATURE: Function = Function {
    name: "keg_temperature",
    summary: "Temperature at which a regulator pressure holds a drink at a carbonation: warmer, it foams and loses CO2.",
    home: "kegging::keg_temperature::keg_temperature",
    inputs: join!([required(Key::Carbonation), required(Key::Gauge)], OUTSIDE, GAS, MODELS),
    outputs: &[output(Key::Temperature)],
    columns: &[Key::Carbonation, Key::Gauge, Key::Ambient, Key::Abv, Key::Extract, Key::Co2Share, Key::HeadspaceAir],
    example: r#"{"volumes": 2.5, "gauge_psi": 12, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (c, gauge, gas) = (carbonation(request)?, applied(request)?, any_gas(request)?);
        let answer = keg_temperature(c, gauge, &gas, &context, &mut &mut *steps)?;
        Ok(answer.map(|t| Values::new([t.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (drink, gas) = (context.beverage, any_gas(request)?);
        let (c, gauge) = (carbonation(request)?.si(), applied(request)?.si());
        let ambient = context.ambient(&mut NoSteps)?;
        let x = [c, gauge, ambient, drink.abv(), drink.extract(), gas.co2.si(), gas.air.si()];
        keg_temperature::visit(&context, each(request, x, s))
    },
};

fn package_values(p: PackagePressure) -> Values {
    Values::new([
        p.expected.gauge.si(),
        p.expected.absolute.si(),
        p.dissolved.si(),
        p.worst.gauge.si(),
        p.worst.absolute.si(),
    ])
}

/// The keg that warms.
pub static WARMED_KEG: Function = Function {
    name: "warmed_keg",
    summary: "Pressure in a keg, or a growler, that was sealed in equilibrium at its filling temperature with so much CO2 dissolved, and stands warmer or colder: expected and worst, and the CO2 then dissolved.",
    home: "kegging::warmed_keg::warmed_keg",
    inputs: join!(
        [
            required(Key::Carbonation),
            required(Key::Filling),
            required(Key::Temperature),
            optional(Key::Headspace, "4 % of the liquid, and noted"),
            AIR,
            RATING,
        ],
        OUTSIDE,
        DRINK,
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
        Key::HeadspaceAir,
        Key::Temperature,
        Key::Headspace,
        Key::Filling,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ],
    example: r#"{"volumes": 2.5, "filling_c": 3.3, "temperature_c": 25, "headspace_percent": 3.5, "altitude_m": 0, "keg_rating_gauge_psi": 130}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Physical)?;
        sealed_at(request)?;
        let (c, keeping, air) = (carbonation(request)?, keeping(request)?, air(request)?);
        let steps = &mut &mut *steps;
        let mut answer = warmed_keg::warmed_keg(c, &keeping, air, rating(request)?, &context, steps)?;
        note_headspace(request, &mut answer);
        Ok(answer.map(package_values))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Physical)?;
        sealed_at(request)?;
        rating(request)?;
        let (c, keeping, air) = (carbonation(request)?, keeping(request)?, air(request)?);
        let x = warmed_keg::columns(c, &keeping, air, &context, &mut NoSteps)?;
        warmed_keg::visit(&context, each(request, x, s))
    },
};

fn sealed_at(request: &Request) -> Result<f64, Error> {
    request.need(Key::Filling, "say at which temperature the keg was sealed in equilibrium, as filling_c or filling_f")
}

/// Drink that ferments in a closed vessel.
const FERMENTING: [Input; 9] = [
    required(Key::Temperature),
    required(Key::FermenterHeadspace),
    START,
    SCALE,
    RATING,
    BEVERAGE,
    ABV,
    EXTRACT,
    RESIDUAL_MODEL,
];
const END: [Input; 2] = [one_of("final", Key::FinalGravity), one_of("final", Key::FinalPlato)];

fn fermenting(request: &Request) -> Result<Fermenting, Error> {
    const HEADSPACE: &str =
        "the gas over the drink takes its share of the CO2: give it, as fermenter_headspace_percent";
    let start = request.get(Key::Start).map(|_| request.or(Key::Start, 0.0)).transpose()?;
    Ok(Fermenting {
        temperature: temperature(request)?,
        headspace: Percent::from_si(request.need(Key::FermenterHeadspace, HEADSPACE)?),
        start: start.map(Carbonation::from_si),
    })
}

fn end(request: &Request) -> Result<Reading, Error> {
    gravity_reading(request, Key::FinalGravity, Key::FinalPlato)
}

/// Natural carbonation under a relief valve.
pub static SPUNDING: Function = Function {
    name: "spunding",
    summary: "Natural carbonation in the fermenter: the pressure at which its relief valve opens, and the gravity at which it is closed.",
    home: "kegging::spunding::spunding",
    inputs: join!([required(Key::Carbonation)], END, FERMENTING, OUTSIDE, [HANDBOOK, MODEL, SOLUBILITY, RESIDUAL],),
    outputs: &[
        under("relief", Key::Gauge),
        under("relief", Key::Absolute),
        under("closing", Key::Gravity),
        under("closing", Key::Plato),
        output(Key::GravityDrop),
        output(Key::Start),
    ],
    columns: &[
        Key::Carbonation,
        Key::Temperature,
        Key::FinalGravity,
        Key::FinalPlato,
        Key::FermenterHeadspace,
        Key::Start,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ],
    example: r#"{"volumes": 2.5, "temperature_c": 12, "final_sg": 1.010, "fermenter_headspace_percent": 10, "altitude_m": 0, "keg_rating_gauge_psi": 60}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (c, end, fermenting, scale) = (carbonation(request)?, end(request)?, fermenting(request)?, request.scale());
        let steps = &mut &mut *steps;
        let answer = spunding::spunding(c, end, &fermenting, scale, rating(request)?, &context, steps)?;
        Ok(answer.map(|found| {
            Values::new([
                found.relief.gauge.si(),
                found.relief.absolute.si(),
                found.closing.specific_gravity.si(),
                found.closing.plato.si(),
                found.above_end,
                found.start.si(),
            ])
        }))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let fermenting = fermenting(request)?;
        rating(request)?;
        let (x, plato) = spunding::columns(carbonation(request)?, end(request)?, &fermenting, &context, &mut NoSteps)?;
        spunding::visit(plato, &fermenting, request.scale(), &context, each(request, x, s))
    },
};

/// A fermenter that is closed tight.
pub static CLOSED_FERMENTATION: Function = Function {
    name: "closed_fermentation",
    summary: "Pressure that a fermenter comes to without a relief valve when it is closed before its fermentation ends: expected by Balling's yield, and worst by theory, and the CO2 then dissolved.",
    home: "kegging::closed_fermenter::closed_fermentation",
    inputs: join!(
        [one_of("current", Key::CurrentGravity), one_of("current", Key::CurrentPlato)],
        END,
        FERMENTING,
        OUTSIDE,
        [PHYSICAL, MODEL, SOLUBILITY, RESIDUAL],
    ),
    outputs: WARMED_KEG.outputs,
    columns: &[
        Key::CurrentGravity,
        Key::CurrentPlato,
        Key::FinalGravity,
        Key::FinalPlato,
        Key::Temperature,
        Key::FermenterHeadspace,
        Key::Start,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ],
    example: r#"{"current_sg": 1.014, "final_sg": 1.010, "temperature_c": 18, "fermenter_headspace_percent": 10, "altitude_m": 0, "keg_rating_gauge_bar": 2}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Physical)?;
        let ([now, end], fermenting, scale) = (now_and_end(request)?, fermenting(request)?, request.scale());
        let (rating, steps) = (rating(request)?, &mut &mut *steps);
        let answer = closed_fermenter::closed_fermentation(now, end, &fermenting, scale, rating, &context, steps)?;
        Ok(answer.map(package_values))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Physical)?;
        let fermenting = fermenting(request)?;
        rating(request)?;
        let (x, plato) = closed_fermenter::columns(now_and_end(request)?, &fermenting, &context, &mut NoSteps)?;
        closed_fermenter::visit(plato, &fermenting, request.scale(), &context, each(request, x, s))
    },
};

fn now_and_end(request: &Request) -> Result<[Reading; 2], Error> {
    Ok([gravity_reading(request, Key::CurrentGravity, Key::CurrentPlato)?, end(request)?])
}

/// A carbonation stone.
pub static STONE_PRESSURE: Function = Function {
    name: "stone_pressure",
    summary: "Regulator pressure at which a carbonation stone brings a drink to a carbonation. Only the surface pressure sets that; the head of drink and the wetting pressure of the stone come on top.",
    home: "kegging::stone::stone_pressure",
    inputs: join!(
        [
            required(Key::Carbonation),
            required(Key::Temperature),
            required(Key::Depth),
            required(Key::Wetting),
            optional(Key::Margin, "0"),
            optional(Key::Gravity, "that of the composition"),
        ],
        OUTSIDE,
        MODELS,
    ),
    outputs: &[output(Key::Gauge), under("surface", Key::Gauge), under("head", Key::Drop)],
    columns: &[
        Key::Carbonation,
        Key::Temperature,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Gravity,
        Key::Depth,
        Key::Wetting,
        Key::Margin,
    ],
    example: r#"{"volumes": 2.5, "temperature_f": 38, "depth_m": 0.5, "wetting_psi": 4, "margin_psi": 1, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (c, t, placed) = (carbonation(request)?, temperature(request)?, placed(request)?);
        let answer = stone::stone_pressure(c, t, &placed, &context, &mut &mut *steps)?;
        Ok(answer.map(|found| Values::new([found.regulator.si(), found.surface.si(), found.head.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (c, t, placed): (_, Temperature, _) = (carbonation(request)?, temperature(request)?, placed(request)?);
        let x = stone::columns(c, t, &placed, &context, &mut NoSteps)?;
        stone::visit(placed.gravity.is_some(), &context, each(request, x, s))
    },
};

fn placed(request: &Request) -> Result<Placed, Error> {
    const DEPTH: &str = "say how high the drink stands over the stone, as depth_m or depth_ft";
    const WETTING: &str =
        "say at which pressure gas first bubbles from the wet stone, as wetting_psi: 3 to 10 psi are usual";
    let sg = request.get(Key::Gravity).map(|_| request.or(Key::Gravity, 1.0)).transpose()?;
    Ok(Placed {
        depth: Length::from_si(request.need(Key::Depth, DEPTH)?),
        wetting: PressureDifference::from_si(request.need(Key::Wetting, WETTING)?),
        margin: PressureDifference::from_si(request.or(Key::Margin, 0.0)?),
        gravity: sg.map(SpecificGravity::from_si),
    })
}
