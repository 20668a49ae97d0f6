//! The table of functions: for each, its inputs and outputs by the names of the vocabulary, and how it is run.

pub use super::costs::{BREAK_EVEN, PACKAGING_COST};
pub use super::fillings::{BLEND, FILLING_CARBONATION};
pub use super::gases::{CYLINDER_CONTENTS, CYLINDER_LEFT, GAS_BUDGET, ROOM_CO2, ROOM_LEAK};
pub use super::gravities::{ADDED_CO2, ATTENUATION, FINAL_GRAVITY, GRAVITY, GRAVITY_CO2};
use super::inputs::{
    ABV, ALTITUDE, AMBIENT, BEVERAGE, EXTRACT, GAUGE_ALTITUDE, GAUGE_AMBIENT, HANDBOOK, MODEL, SEA_LEVEL, SOLUBILITY,
    carbonation, each, output, temperature, under,
};
pub use super::keg_pressures::{CLOSED_FERMENTATION, GAS_BLEND, KEG_TEMPERATURE, SPUNDING, STONE_PRESSURE, WARMED_KEG};
use super::keg_pressures::{GAS, gas};
pub use super::lines::{HANDBOOK_LINE, HANDBOOK_PRESSURE, LINE_FLOW, LINE_LENGTH, LINE_PRESSURE};
pub use super::packages::{CONDITIONING, CONDITIONING_TIME, PACKAGE_CARBONATION, PACKAGE_PRESSURE, REYEASTING};
pub use super::primings::{PRIMED_CARBONATION, PRIMING_SUGAR, PRIMING_SYRUP, PRIMING_WORT, RESIDUAL_CO2};
pub use super::purges::{OXYGEN_PICKUP, PURGE_CYCLES, PURGE_OXYGEN, PUSH_OXYGEN, SWEEP_OXYGEN, TOTAL_PACKAGE_OXYGEN};
pub use super::schedules::{BURST_TIME, CARBONATION_PROGRESS, CARBONATION_TIME, UPTAKE_RATE};
use crate::balance::{air, equilibrium};
use crate::basis::answer::Both;
use crate::basis::function::{one_of, optional, required};
use crate::basis::kernel::Once;
use crate::basis::{Answer, BasisName, Function, Request, Values};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::kegging;
use crate::kegging::mixed_gas::{self, Gas};
use crate::quantity::{AbsolutePressure, GaugePressure, Key, Multiplier, SpecificGravity, Temperature};

/// Every elementwise function.
pub static FUNCTIONS: &[&Function] = &[
    &DISSOLVED_CO2,
    &KEG_PRESSURE,
    &GAS_BLEND,
    &KEG_TEMPERATURE,
    &WARMED_KEG,
    &SPUNDING,
    &CLOSED_FERMENTATION,
    &STONE_PRESSURE,
    &RESIDUAL_CO2,
    &PRIMING_SUGAR,
    &PRIMED_CARBONATION,
    &PRIMING_WORT,
    &PRIMING_SYRUP,
    &PACKAGE_PRESSURE,
    &PACKAGE_CARBONATION,
    &CONDITIONING,
    &CONDITIONING_TIME,
    &REYEASTING,
    &GRAVITY,
    &ATTENUATION,
    &FINAL_GRAVITY,
    &GRAVITY_CO2,
    &ADDED_CO2,
    &DRINK_PROPERTIES,
    &CO2_SATURATION,
    &LINE_FLOW,
    &LINE_LENGTH,
    &LINE_PRESSURE,
    &HANDBOOK_LINE,
    &HANDBOOK_PRESSURE,
    &FILLING_CARBONATION,
    &BLEND,
    &PURGE_OXYGEN,
    &PURGE_CYCLES,
    &SWEEP_OXYGEN,
    &PUSH_OXYGEN,
    &OXYGEN_PICKUP,
    &TOTAL_PACKAGE_OXYGEN,
    &GAS_BUDGET,
    &CYLINDER_LEFT,
    &CYLINDER_CONTENTS,
    &ROOM_CO2,
    &ROOM_LEAK,
    &AMBIENT_PRESSURE,
    &PACKAGING_COST,
    &BREAK_EVEN,
    &UPTAKE_RATE,
    &CARBONATION_TIME,
    &CARBONATION_PROGRESS,
    &BURST_TIME,
];

/// The function of a name.
pub fn named(name: &str) -> Option<&'static Function> {
    FUNCTIONS.iter().copied().find(|f| f.name == name)
}

/// CO2 under a pressure.
pub static DISSOLVED_CO2: Function = Function {
    name: "dissolved_co2",
    summary: "CO2 that a drink holds at equilibrium under a pressure of CO2, or of a blended gas.",
    home: "balance::equilibrium::dissolved_co2",
    inputs: &[
        one_of("pressure", Key::Gauge),
        one_of("pressure", Key::Absolute),
        required(Key::Temperature),
        GAUGE_ALTITUDE,
        GAUGE_AMBIENT,
        SEA_LEVEL,
        GAS[0],
        GAS[1],
        BEVERAGE,
        ABV,
        EXTRACT,
        HANDBOOK,
        MODEL,
        SOLUBILITY,
    ],
    outputs: &[output(Key::Carbonation)],
    columns: &[
        Key::Gauge,
        Key::Absolute,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
        Key::Co2Share,
        Key::HeadspaceAir,
    ],
    example: r#"{"gauge_psi": 12, "temperature_f": 38, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (t, steps) = (temperature(request)?, &mut &mut *steps);
        let answer = match (under_pressure(request)?, gas(request)?) {
            (Under::Gauge(gauge), None) => equilibrium::dissolved_co2(gauge, t, &context, steps)?,
            (Under::Absolute(absolute), None) => equilibrium::dissolved_co2_absolute(absolute, t, &context, steps)?,
            (Under::Gauge(gauge), Some(gas)) => mixed_gas::mixed_dissolved_co2(gauge, t, &gas, &context, steps)?,
            (Under::Absolute(absolute), Some(gas)) => {
                mixed_gas::mixed_dissolved_co2_absolute(absolute, t, &gas, &context, steps)?
            }
        };
        Ok(answer.map(|c| Values::new([c.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (t, drink) = (temperature(request)?.si(), context.beverage);
        let (abv, extract) = (drink.abv(), drink.extract());
        // The plain path keeps its own kernel: CO2 alone is what nearly everybody asks for.
        match (under_pressure(request)?, gas(request)?) {
            (Under::Gauge(gauge), None) => {
                let x = [gauge.si(), context.ambient(&mut NoSteps)?, t, abv, extract];
                equilibrium::visit_gauge(&context, each(request, x, s))
            }
            (Under::Absolute(absolute), None) => {
                equilibrium::visit_absolute(&context, each(request, [absolute.si(), t, abv, extract], s))
            }
            (Under::Gauge(gauge), Some(Gas { co2, air })) => {
                let x = [gauge.si(), context.ambient(&mut NoSteps)?, t, abv, extract, co2.si(), air.si()];
                mixed_gas::visit_gauge(&context, each(request, x, s))
            }
            (Under::Absolute(absolute), Some(Gas { co2, air })) => {
                let x = [absolute.si(), t, abv, extract, co2.si(), air.si()];
                mixed_gas::visit_absolute(&context, each(request, x, s))
            }
        }
    },
};

enum Under {
    Gauge(GaugePressure),
    Absolute(AbsolutePressure),
}

fn under_pressure(request: &Request) -> Result<Under, Error> {
    const ADVICE: &str = "say which pressure is meant: gauge_ (as a regulator shows it) or abs_ (above vacuum)";
    match (request.name_of(Key::Gauge), request.name_of(Key::Absolute)) {
        (Some(first), Some(second)) => Err(Error::Excluded { first, second }),
        (None, Some(_)) => request.need(Key::Absolute, ADVICE).map(|p| Under::Absolute(AbsolutePressure::from_si(p))),
        _ => request.need(Key::Gauge, ADVICE).map(|p| Under::Gauge(GaugePressure::from_si(p))),
    }
}

/// Regulator pressure for a carbonation.
pub static KEG_PRESSURE: Function = Function {
    name: "keg_pressure",
    summary: "Regulator pressure that holds a drink at a carbonation, under CO2 or a blended gas.",
    home: "kegging::pressure::keg_pressure",
    inputs: &[
        required(Key::Carbonation),
        required(Key::Temperature),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        GAS[0],
        GAS[1],
        BEVERAGE,
        ABV,
        EXTRACT,
        HANDBOOK,
        MODEL,
        SOLUBILITY,
    ],
    outputs: &[output(Key::Gauge), output(Key::Absolute)],
    columns: &[
        Key::Carbonation,
        Key::Temperature,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Co2Share,
        Key::HeadspaceAir,
    ],
    example: r#"{"volumes": 2.5, "temperature_f": 38, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (c, t, steps) = (carbonation(request)?, temperature(request)?, &mut &mut *steps);
        let answer = match gas(request)? {
            None => kegging::pressure::keg_pressure(c, t, &context, steps)?,
            Some(gas) => mixed_gas::mixed_keg_pressure(c, t, &gas, &context, steps)?,
        };
        Ok(answer.map(|p| Values::new([p.gauge.si(), p.absolute.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (c, t) = (carbonation(request)?.si(), temperature(request)?.si());
        let (ambient, drink) = (context.ambient(&mut NoSteps)?, context.beverage);
        match gas(request)? {
            None => {
                let x = [c, t, ambient, drink.abv(), drink.extract()];
                kegging::pressure::visit(&context, each(request, x, s))
            }
            Some(Gas { co2, air }) => {
                let x = [c, t, ambient, drink.abv(), drink.extract(), co2.si(), air.si()];
                mixed_gas::visit_keg(&context, each(request, x, s))
            }
        }
    },
};

/// The drink as it flows.
pub static DRINK_PROPERTIES: Function = Function {
    name: "drink_properties",
    summary: "Density and viscosity of a drink, and the diffusivity of CO2 in it.",
    home: "kegging::liquid::drink_properties",
    inputs: &[
        required(Key::Temperature),
        optional(Key::Gravity, "that of the composition"),
        optional(Key::RelativeViscosity, "usual for the drink, as the working shows"),
        BEVERAGE,
        ABV,
        EXTRACT,
    ],
    outputs: &[output(Key::Density), output(Key::Viscosity), output(Key::Diffusivity)],
    columns: &[Key::Temperature, Key::Gravity, Key::Abv, Key::Extract, Key::RelativeViscosity],
    example: r#"{"temperature_c": 4, "sg": 1.010}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (t, sg, relative) = liquid(request)?;
        let answer = kegging::liquid::drink_properties(t, sg, relative, &context, &mut &mut *steps)?;
        Ok(answer.map(|p| Values::new([p.density.si(), p.viscosity.si(), p.diffusivity.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (t, sg, relative) = liquid(request)?;
        let x = kegging::liquid::columns(t, sg, relative, &context);
        kegging::liquid::visit(sg.is_some(), each(request, x, s))
    },
};

type Liquid = (Temperature, Option<SpecificGravity>, Option<Multiplier>);

fn liquid(request: &Request) -> Result<Liquid, Error> {
    let sg = request.number(Key::Gravity).map(SpecificGravity::from_si);
    Ok((temperature(request)?, sg, request.number(Key::RelativeViscosity).map(Multiplier::from_si)))
}

/// A cylinder that holds liquid.
pub static CO2_SATURATION: Function = Function {
    name: "co2_saturation",
    summary: "Absolute pressure and densities of CO2 in a cylinder that still holds liquid, however much; a gauge shows an atmosphere less.",
    home: "kegging::cylinder::co2_saturation",
    inputs: &[required(Key::Cylinder)],
    outputs: &[output(Key::Absolute), under("liquid", Key::Density), under("vapour", Key::Density)],
    columns: &[Key::Cylinder],
    example: r#"{"cylinder_c": 20}"#,
    run: |request, steps| {
        let (found, notes) = kegging::cylinder::co2_saturation(cylinder(request)?, &mut &mut *steps)?;
        let value = Values::new([found.pressure.si(), found.liquid.si(), found.vapour.si()]);
        Ok(Answer { value, context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| kegging::cylinder::visit(each(request, [cylinder(request)?.si()], s)),
};

fn cylinder(request: &Request) -> Result<Temperature, Error> {
    request.need(Key::Cylinder, "say how warm the cylinder is, such as cylinder_c").map(Temperature::from_si)
}

/// The air outside.
pub static AMBIENT_PRESSURE: Function = Function {
    name: "ambient_pressure",
    summary: "Pressure of the air at an altitude.",
    home: "basis::Ambient::pressure",
    inputs: &[required(Key::Altitude), SEA_LEVEL],
    outputs: &[output(Key::Ambient)],
    columns: &[Key::SeaLevel, Key::Altitude],
    example: r#"{"altitude_m": 1609.344}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let mut notes = crate::evidence::Notes::default();
        let x = air::columns(request)?;
        let [pressure] = air::visit(Once { x, steps: &mut Both(&mut notes, &mut &mut *steps) })?;
        Ok(Answer { value: Values::new([pressure]), context, notes })
    },
    slices: |request, s| air::visit(each(request, air::columns(request)?, s)),
};
