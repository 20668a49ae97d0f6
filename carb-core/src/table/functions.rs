//! The table of functions: for each, its inputs and outputs by the names of the vocabulary, and how it is run.

use crate::balance::{air, equilibrium, open};
use crate::basis::answer::Both;
use crate::basis::function::{Slices, one_of, optional, required};
use crate::basis::kernel::{Each, Once};
use crate::basis::{Answer, BasisName, Function, Input, Output, Request, Values};
use crate::bottling::addition::{self, note_syrup};
use crate::bottling::attenuation::{self, Reading, attenuation, gravity_co2};
use crate::bottling::package::{Keeping, USUAL_FILLING, USUAL_HEADSPACE};
use crate::bottling::priming::Wanted;
use crate::bottling::{gravity, package, priming, reading};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::evidence::caution::{ASSUMED_HEADSPACE, Caution};
use crate::kegging;
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::quantity::{
    AbsolutePressure, Carbonation, Concentration, GaugePressure, Key, Multiplier, Percent, Plato, SpecificGravity,
    Temperature, Volume,
};

/// Every elementwise function.
pub static FUNCTIONS: &[&Function] = &[
    &DISSOLVED_CO2,
    &KEG_PRESSURE,
    &RESIDUAL_CO2,
    &PRIMING_SUGAR,
    &PACKAGE_PRESSURE,
    &PACKAGE_CARBONATION,
    &GRAVITY,
    &ATTENUATION,
    &GRAVITY_CO2,
    &ADDED_CO2,
    &DRINK_PROPERTIES,
    &CO2_SATURATION,
    &AMBIENT_PRESSURE,
];

/// The function of a name.
pub fn named(name: &str) -> Option<&'static Function> {
    FUNCTIONS.iter().copied().find(|f| f.name == name)
}

const fn output(key: Key) -> Output {
    Output { noun: "", key }
}
const fn under(noun: &'static str, key: Key) -> Output {
    Output { noun, key }
}

const AIR: &str = "ambient";
const ALTITUDE: Input = one_of(AIR, Key::Altitude);
const AMBIENT: Input = one_of(AIR, Key::Ambient);
pub(crate) const GAUGE_ALTITUDE: Input =
    optional(Key::Altitude, "needed with a gauge pressure, unless ambient is given");
pub(crate) const GAUGE_AMBIENT: Input =
    optional(Key::Ambient, "needed with a gauge pressure, unless altitude is given");
pub(crate) const SEA_LEVEL: Input = optional(Key::SeaLevel, "101.325 kPa, the standard atmosphere");
pub(crate) const BEVERAGE: Input = optional(Key::Beverage, "beer");
pub(crate) const ABV: Input = optional(Key::Abv, "usual for the drink, and noted");
pub(crate) const EXTRACT: Input = optional(Key::Extract, "usual for the drink, and noted");
pub(crate) const FERMENTABLE: Input =
    optional(Key::Fermentable, "0 for beer and water, and noted; needed for other drinks with living yeast");
pub(crate) const YEAST: Input = optional(Key::Yeast, "live");
const MODEL: Input = optional(Key::Model, "that of the basis for the drink");
const RESIDUAL_MODEL: Input = optional(Key::ResidualModel, "that of the basis");
pub(crate) const SOLUBILITY: Input = optional(Key::SolubilityFactor, "1");
pub(crate) const RESIDUAL: Input = optional(Key::ResidualFactor, "1");
const YIELD: Input = optional(Key::Yield, "that of the basis: 100 by the handbook, 95 by the balance");
pub(crate) const YIELD_FACTOR: Input = optional(Key::YieldFactor, "1");
const COUNT_HEADSPACE: Input = optional(Key::CountHeadspace, "that of the basis");
/// What is said of the parts of a sugar of the caller's own.
pub(crate) const CUSTOM: &str = "only with a custom sugar";
const SCALE: Input = optional(Key::ExtractScale, "asbc");
pub(crate) const HANDBOOK: Input = optional(Key::Basis, "handbook");
const PHYSICAL: Input = optional(Key::Basis, "physical");

const CARBONATION_NEEDED: &str = "say how much CO2 is meant, in volumes or co2_g_per_l";
const TEMPERATURE_NEEDED: &str =
    "solubility changes by 3 % per °C: say at which temperature, in temperature_c or temperature_f";
const WARMEST_NEEDED: &str = "the highest temperature of the drink since active fermentation decides how much CO2 it kept: give warmest_c or warmest_f";

pub(crate) fn temperature(request: &Request) -> Result<Temperature, Error> {
    request.need(Key::Temperature, TEMPERATURE_NEEDED).map(Temperature::from_si)
}

pub(crate) fn carbonation(request: &Request) -> Result<Carbonation, Error> {
    request.need(Key::Carbonation, CARBONATION_NEEDED).map(Carbonation::from_si)
}

pub(crate) fn warmest(request: &Request) -> Result<Temperature, Error> {
    request.need(Key::Warmest, WARMEST_NEEDED).map(Temperature::from_si)
}

/// CO2 under a pressure.
pub static DISSOLVED_CO2: Function = Function {
    name: "dissolved_co2",
    summary: "CO2 that a drink holds at equilibrium under a pressure of CO2.",
    home: "balance::equilibrium::dissolved_co2",
    inputs: &[
        one_of("pressure", Key::Gauge),
        one_of("pressure", Key::Absolute),
        required(Key::Temperature),
        GAUGE_ALTITUDE,
        GAUGE_AMBIENT,
        SEA_LEVEL,
        BEVERAGE,
        ABV,
        EXTRACT,
        HANDBOOK,
        MODEL,
        SOLUBILITY,
    ],
    outputs: &[output(Key::Carbonation)],
    columns: &[Key::Gauge, Key::Absolute, Key::Ambient, Key::Temperature, Key::Abv, Key::Extract],
    example: r#"{"gauge_psi": 12, "temperature_f": 38, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let answer = match under_pressure(request)? {
            Under::Gauge(gauge) => {
                equilibrium::dissolved_co2(gauge, temperature(request)?, &context, &mut &mut *steps)?
            }
            Under::Absolute(absolute) => {
                equilibrium::dissolved_co2_absolute(absolute, temperature(request)?, &context, &mut &mut *steps)?
            }
        };
        Ok(answer.map(|c| Values::new([c.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (t, drink) = (temperature(request)?.si(), context.beverage);
        match under_pressure(request)? {
            Under::Gauge(gauge) => {
                let x = [gauge.si(), context.ambient(&mut NoSteps)?, t, drink.abv(), drink.extract()];
                equilibrium::visit_gauge(&context, each(request, x, s))
            }
            Under::Absolute(absolute) => equilibrium::visit_absolute(
                &context,
                each(request, [absolute.si(), t, drink.abv(), drink.extract()], s),
            ),
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
    summary: "Regulator pressure that holds a drink at a carbonation.",
    home: "kegging::pressure::keg_pressure",
    inputs: &[
        required(Key::Carbonation),
        required(Key::Temperature),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        BEVERAGE,
        ABV,
        EXTRACT,
        HANDBOOK,
        MODEL,
        SOLUBILITY,
    ],
    outputs: &[output(Key::Gauge), output(Key::Absolute)],
    columns: &[Key::Carbonation, Key::Temperature, Key::Ambient, Key::Abv, Key::Extract],
    example: r#"{"volumes": 2.5, "temperature_f": 38, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (c, t) = (carbonation(request)?, temperature(request)?);
        let answer = kegging::pressure::keg_pressure(c, t, &context, &mut &mut *steps)?;
        Ok(answer.map(|p| Values::new([p.gauge.si(), p.absolute.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let drink = context.beverage;
        let x = [
            carbonation(request)?.si(),
            temperature(request)?.si(),
            context.ambient(&mut NoSteps)?,
            drink.abv(),
            drink.extract(),
        ];
        kegging::pressure::visit(&context, each(request, x, s))
    },
};

/// CO2 left after fermentation.
pub static RESIDUAL_CO2: Function = Function {
    name: "residual_co2",
    summary: "CO2 left in a drink after fermentation, open to the air.",
    home: "balance::open::residual_co2",
    inputs: &[
        required(Key::Warmest),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        BEVERAGE,
        ABV,
        EXTRACT,
        HANDBOOK,
        MODEL,
        RESIDUAL_MODEL,
        SOLUBILITY,
        RESIDUAL,
    ],
    outputs: &[output(Key::Carbonation)],
    columns: &[Key::Warmest, Key::Ambient, Key::Abv, Key::Extract],
    example: r#"{"warmest_c": 20, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let answer = open::residual_co2(warmest(request)?, &context, &mut &mut *steps)?;
        Ok(answer.map(|c| Values::new([c.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let drink = context.beverage;
        let x = [warmest(request)?.si(), context.ambient(&mut NoSteps)?, drink.abv(), drink.extract()];
        open::visit(&context, each(request, x, s))
    },
};

/// The priming dose.
pub static PRIMING_SUGAR: Function = Function {
    name: "priming_sugar",
    summary: "Priming sugar that gives a drink its carbonation.",
    home: "bottling::priming::priming_sugar",
    inputs: &[
        required(Key::Carbonation),
        required(Key::Warmest),
        required(Key::Packaged),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        optional(Key::Sugar, "sucrose"),
        optional(Key::SugarWater, CUSTOM),
        optional(Key::SugarGravity, CUSTOM),
        optional(Key::SugarFermentable, CUSTOM),
        optional(Key::SugarKind, CUSTOM),
        BEVERAGE,
        ABV,
        EXTRACT,
        FERMENTABLE,
        YEAST,
        HANDBOOK,
        MODEL,
        RESIDUAL_MODEL,
        YIELD,
        COUNT_HEADSPACE,
        optional(Key::Headspace, "4 % of the liquid; counts by the physical basis only"),
        optional(Key::Filling, "the warmest; counts by the physical basis only"),
        optional(Key::Room, "20 °C; counts by the physical basis only"),
        SOLUBILITY,
        RESIDUAL,
        YIELD_FACTOR,
    ],
    outputs: &[output(Key::Mass), output(Key::Dose)],
    columns: &[
        Key::Carbonation,
        Key::Warmest,
        Key::Packaged,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Fermentable,
        Key::Headspace,
        Key::Filling,
        Key::Room,
    ],
    example: r#"{"volumes": 2.5, "warmest_f": 68, "packaged_us_gal": 5, "altitude_m": 0, "sugar": "sucrose"}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let sugar = request.priming_sugar()?;
        let mut answer = priming::priming_sugar(&wanted(request)?, &sugar, &context, &mut &mut *steps)?;
        note_syrup(request.number(Key::SugarGravity).map(SpecificGravity::from_si), &mut answer.notes);
        if context.basis.count_headspace {
            note_headspace(request, &mut answer);
        }
        Ok(answer.map(|d| Values::new([d.mass.si(), d.dose.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let sugar = request.priming_sugar()?;
        let x = priming::columns(&wanted(request)?, &context, &mut NoSteps)?;
        priming::visit(&context, &sugar, each(request, x, s))
    },
};

/// Temperature at which bottles are conditioned where none is given, K.
pub const USUAL_ROOM: f64 = 293.15;

/// What a request wants of a priming dose.
///
/// # Errors
/// Where something is missing or outside its limits.
pub fn wanted(request: &Request) -> Result<Wanted, Error> {
    const PACKAGED: &str = "say how much drink reaches packages (not the batch size), such as packaged_l";
    let warmest = warmest(request)?;
    Ok(Wanted {
        target: carbonation(request)?,
        warmest,
        filling: Temperature::from_si(request.or(Key::Filling, warmest.si())?),
        packaged: Volume::from_si(request.need(Key::Packaged, PACKAGED)?),
        headspace: Percent::from_si(request.or(Key::Headspace, USUAL_HEADSPACE)?),
        room: Temperature::from_si(request.or(Key::Room, USUAL_ROOM)?),
    })
}

/// Notes the headspace that was assumed.
pub fn note_headspace<T>(request: &Request, answer: &mut Answer<T>) {
    if request.number(Key::Headspace).is_none() {
        answer.notes.cautions.add(Caution::of(&ASSUMED_HEADSPACE, USUAL_HEADSPACE));
    }
}

/// The pressure in a package.
pub static PACKAGE_PRESSURE: Function = Function {
    name: "package_pressure",
    summary: "Pressure in a sealed package, expected and worst, of CO2 stated for liquid and headspace together; the expected volumes are what stays dissolved, and the worst case adds 8 % to what is stated, for nobody can say which part of it is sure.",
    home: "bottling::package::package_pressure",
    inputs: &[
        required(Key::Carbonation),
        required(Key::Temperature),
        optional(Key::Headspace, "4 % of the liquid, and noted"),
        optional(Key::Filling, "20 °C"),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        BEVERAGE,
        ABV,
        EXTRACT,
        FERMENTABLE,
        YEAST,
        PHYSICAL,
        MODEL,
        YIELD,
        SOLUBILITY,
        YIELD_FACTOR,
    ],
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
        let mut answer = package::package_pressure(c, &keeping, &context, &mut &mut *steps)?;
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
        let x = package::columns(carbonation(request)?.si(), &keeping(request)?, &context, &mut NoSteps)?;
        package::visit(&context, each(request, x, s))
    },
};

/// The CO2 in a package, from its pressure.
pub static PACKAGE_CARBONATION: Function = Function {
    name: "package_carbonation",
    summary: "CO2 in a sealed package from the pressure that a gauge on it shows, without air and with all of it.",
    home: "bottling::reading::package_carbonation",
    inputs: &[
        required(Key::Gauge),
        required(Key::Temperature),
        optional(Key::Headspace, "4 % of the liquid, and noted"),
        optional(Key::Filling, "20 °C"),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        BEVERAGE,
        ABV,
        EXTRACT,
        PHYSICAL,
        MODEL,
        SOLUBILITY,
    ],
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

fn shown(request: &Request) -> Result<GaugePressure, Error> {
    request.need(Key::Gauge, "say what the gauge on the package shows").map(GaugePressure::from_si)
}

fn keeping(request: &Request) -> Result<Keeping, Error> {
    Ok(Keeping {
        temperature: temperature(request)?,
        headspace: Percent::from_si(request.or(Key::Headspace, USUAL_HEADSPACE)?),
        filling: Temperature::from_si(request.or(Key::Filling, USUAL_FILLING)?),
    })
}

/// A gravity in both scales.
pub static GRAVITY: Function = Function {
    name: "gravity",
    summary: "A gravity reading as specific gravity and as degrees Plato.",
    home: "bottling::gravity::from_sg",
    inputs: &[one_of("gravity", Key::Gravity), one_of("gravity", Key::Plato), SCALE],
    outputs: &[output(Key::Gravity), output(Key::Plato)],
    columns: &[Key::Gravity, Key::Plato],
    example: r#"{"sg": 1.048}"#,
    run: |request, steps| {
        let scale = request.scale();
        let (gravity, notes) = match reading(request, Key::Gravity, Key::Plato)? {
            Reading::Sg(sg) => gravity::from_sg(sg, scale, &mut &mut *steps)?,
            Reading::Plato(plato) => gravity::from_plato(plato, scale, &mut &mut *steps)?,
        };
        let value = Values::new([gravity.specific_gravity.si(), gravity.plato.si()]);
        Ok(Answer { value, context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| match reading(request, Key::Gravity, Key::Plato)? {
        Reading::Sg(sg) => gravity::visit_sg(request.scale(), each(request, [sg.si()], s)),
        Reading::Plato(plato) => gravity::visit_plato(request.scale(), each(request, [plato.si()], s)),
    },
};

/// What two gravities say.
pub static ATTENUATION: Function = Function {
    name: "attenuation",
    summary: "Real extract, attenuation and alcohol from the gravity before fermentation and the gravity now.",
    home: "bottling::attenuation::attenuation",
    inputs: &[
        one_of("original", Key::OriginalGravity),
        one_of("original", Key::OriginalPlato),
        one_of("current", Key::CurrentGravity),
        one_of("current", Key::CurrentPlato),
        SCALE,
        optional(Key::RealExtractModel, "balling"),
    ],
    outputs: &[
        output(Key::RealExtract),
        under("apparent", Key::Attenuation),
        under("real", Key::Attenuation),
        output(Key::Abw),
        output(Key::Abv),
        under("quick", Key::Abv),
        output(Key::Extract),
    ],
    columns: &[Key::OriginalGravity, Key::OriginalPlato, Key::CurrentGravity, Key::CurrentPlato],
    example: r#"{"original_sg": 1.048, "current_sg": 1.010}"#,
    run: |request, steps| {
        let ([original, now], model) = (original_and_current(request)?, request.real_extract_model());
        let (a, notes) = attenuation(original, now, request.scale(), model, &mut &mut *steps)?;
        let value = Values::new([
            a.real_extract.si(),
            a.apparent.si(),
            a.real.si(),
            a.abw.si(),
            a.abv.si(),
            a.quick_abv.si(),
            a.extract.si(),
        ]);
        Ok(Answer { value, context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| {
        let (x, plato) = attenuation::columns(original_and_current(request)?);
        attenuation::visit(plato, request.scale(), request.real_extract_model(), each(request, x, s))
    },
};

fn original_and_current(request: &Request) -> Result<[Reading; 2], Error> {
    Ok([
        reading(request, Key::OriginalGravity, Key::OriginalPlato)?,
        reading(request, Key::CurrentGravity, Key::CurrentPlato)?,
    ])
}

/// What is still to come of the gravity that is left.
pub static GRAVITY_CO2: Function = Function {
    name: "gravity_co2",
    summary: "Extract that is still to ferment, and the CO2 of it, from the gravity now and the gravity at the end.",
    home: "bottling::attenuation::gravity_co2",
    inputs: &[
        one_of("current", Key::CurrentGravity),
        one_of("current", Key::CurrentPlato),
        one_of("final", Key::FinalGravity),
        one_of("final", Key::FinalPlato),
        SCALE,
    ],
    outputs: &[output(Key::Fermentable), under("balling", Key::Carbonation), under("theory", Key::Carbonation)],
    columns: &[Key::CurrentGravity, Key::CurrentPlato, Key::FinalGravity, Key::FinalPlato],
    example: r#"{"current_sg": 1.013, "final_sg": 1.012}"#,
    run: |request, steps| {
        let [now, end] = current_and_final(request)?;
        let (found, notes) = gravity_co2(now, end, request.scale(), &mut &mut *steps)?;
        let value = Values::new([found.fermentable.si(), found.balling.si(), found.theory.si()]);
        Ok(Answer { value, context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| {
        let (x, plato) = attenuation::columns(current_and_final(request)?);
        attenuation::visit_coming(plato, request.scale(), each(request, x, s))
    },
};

fn current_and_final(request: &Request) -> Result<[Reading; 2], Error> {
    Ok([
        reading(request, Key::CurrentGravity, Key::CurrentPlato)?,
        reading(request, Key::FinalGravity, Key::FinalPlato)?,
    ])
}

/// What something added makes.
pub static ADDED_CO2: Function = Function {
    name: "added_co2",
    summary: "CO2 and alcohol that a sugar or a sweetener, added to a drink with living yeast, makes in the package, beside what the drink holds and what primes it.",
    home: "bottling::addition::added_co2",
    inputs: &[
        required(Key::Addition),
        required(Key::Dose),
        optional(Key::SugarWater, CUSTOM),
        optional(Key::SugarGravity, CUSTOM),
        optional(Key::SugarFermentable, CUSTOM),
        optional(Key::SugarKind, CUSTOM),
        HANDBOOK,
        YIELD,
        YIELD_FACTOR,
    ],
    outputs: &[under("expected", Key::Carbonation), under("worst", Key::Carbonation), under("added", Key::Abv)],
    columns: &[Key::Dose],
    example: r#"{"addition": "sucrose", "dose_g_per_l": 6}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let mut answer = addition::added_co2(&request.addition()?, dose(request)?, &context, &mut &mut *steps)?;
        note_syrup(request.number(Key::SugarGravity).map(SpecificGravity::from_si), &mut answer.notes);
        Ok(answer.map(|a| Values::new([a.expected.si(), a.worst.si(), a.abv.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        addition::visit(&request.addition()?, &context, each(request, [dose(request)?.si()], s))
    },
};

fn dose(request: &Request) -> Result<Concentration, Error> {
    request.need(Key::Dose, "say how much is added to a litre of drink, as dose_g_per_l").map(Concentration::from_si)
}

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

/// A gravity that may be given on either scale.
fn reading(request: &Request, sg: Key, plato: Key) -> Result<Reading, Error> {
    const ADVICE: &str = "give the reading, as specific gravity (sg) or as degrees Plato (plato)";
    match (request.name_of(sg), request.name_of(plato)) {
        (Some(first), Some(second)) => Err(Error::Excluded { first, second }),
        (None, Some(_)) => request.need(plato, ADVICE).map(|p| Reading::Plato(Plato::from_si(p))),
        _ => request.need(sg, ADVICE).map(|sg| Reading::Sg(SpecificGravity::from_si(sg))),
    }
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

fn each<'a, const N: usize>(request: &Request, x: [f64; N], s: Slices<'a>) -> Each<'a, N> {
    let sea_level = request.number(Key::SeaLevel).unwrap_or(STANDARD_ATMOSPHERE);
    let filling_is_warmest = request.number(Key::Filling).is_none();
    Each {
        x,
        filling_is_warmest,
        sea_level,
        series: s.series,
        which: s.which,
        unit: s.unit,
        out: s.out,
        status: s.status,
    }
}
