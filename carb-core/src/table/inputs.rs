//! What the functions share: their usual inputs, and how a request is read for them.

use crate::basis::function::{Slices, one_of, optional};
use crate::basis::kernel::Each;
use crate::basis::request::Value;
use crate::basis::{Answer, Input, Output, Request};
use crate::bottling::attenuation::Reading;
use crate::bottling::before::{Before, Conditioned};
use crate::bottling::conditioning::YeastState;
use crate::bottling::glass::Glass;
use crate::bottling::package::{Keeping, USUAL_FILLING, USUAL_HEADSPACE};
use crate::bottling::priming::Batch;
use crate::bottling::wort::Wort;
use crate::error::Error;
use crate::evidence::caution::{ASSUMED_HEADSPACE, Caution};
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::property::yeast;
use crate::quantity::{
    Carbonation, Concentration, GaugePressure, Key, Mass, Percent, Plato, SpecificGravity, Temperature, Time, Volume,
};

pub(super) const fn output(key: Key) -> Output {
    Output { noun: "", key }
}
pub(super) const fn under(noun: &'static str, key: Key) -> Output {
    Output { noun, key }
}

pub(super) const AIR: &str = "ambient";
pub(super) const ALTITUDE: Input = one_of(AIR, Key::Altitude);
pub(super) const AMBIENT: Input = one_of(AIR, Key::Ambient);
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
pub(super) const MODEL: Input = optional(Key::Model, "that of the basis for the drink");
pub(super) const RESIDUAL_MODEL: Input = optional(Key::ResidualModel, "that of the basis");
pub(crate) const SOLUBILITY: Input = optional(Key::SolubilityFactor, "1");
pub(crate) const RESIDUAL: Input = optional(Key::ResidualFactor, "1");
pub(super) const YIELD: Input = optional(Key::Yield, "that of the basis: 100 by the handbook, 95 by the balance");
pub(crate) const YIELD_FACTOR: Input = optional(Key::YieldFactor, "1");
pub(super) const COUNT_HEADSPACE: Input = optional(Key::CountHeadspace, "that of the basis");
/// What is said of the parts of a sugar of the caller's own.
pub(crate) const CUSTOM: &str = "only with a custom sugar";
pub(crate) const SCALE: Input = optional(Key::ExtractScale, "asbc");
pub(crate) const HANDBOOK: Input = optional(Key::Basis, "handbook");
pub(super) const PHYSICAL: Input = optional(Key::Basis, "physical");

pub(crate) const WARMEST: Input = optional(Key::Warmest, "needed, unless the residual CO2 was measured");
pub(crate) const MEASURED: Input = optional(Key::Residual, "it follows from the warmest temperature");
pub(crate) const DOSE_ALTITUDE: Input =
    optional(Key::Altitude, "needed, unless ambient is given or the residual CO2 was measured");
pub(crate) const DOSE_AMBIENT: Input =
    optional(Key::Ambient, "needed, unless altitude is given or the residual CO2 was measured");
pub(crate) const FERMENTER_GAUGE: Input = optional(Key::FermenterGauge, "0: open, or under an airlock");
pub(crate) const COLD_CRASH: Input = optional(Key::ColdCrash, "open");
pub(crate) const CRASH: Input = optional(Key::Crash, "needed with a cold crash that is closed or has CO2 supplied");
pub(crate) const FERMENTER_HEADSPACE: Input = optional(Key::FermenterHeadspace, "needed with a closed cold crash");
pub(crate) const SYRUP_WATER: Input =
    optional(Key::SyrupWater, "the sugar goes in dry, and its room is left out; counts by the physical basis only");
pub(crate) const COUNT_SYRUP: Input = optional(Key::CountSyrup, "that of the basis");
pub(crate) const BOTTLE_CLASS: Input =
    optional(Key::BottleClass, "light one-way and heavier reusable bottles are both looked at");
pub(crate) const RATING: Input = optional(Key::RatingGauge, "no rating is known");
pub(crate) const CELLS: Input = optional(Key::Cells, "enough: 1 million cells in a millilitre");
pub(crate) const AGE: Input = optional(Key::Age, "fresh");
pub(crate) const FILTERED: Input = optional(Key::Filtered, "false");

/// Lists of inputs put together.
macro_rules! join {
    ($($part:expr),+ $(,)?) => {{
        const COUNT: usize = 0 $(+ $part.len())+;
        const ALL: [$crate::basis::Input; COUNT] = {
            let mut all = [$crate::basis::function::required($crate::quantity::Key::Title); COUNT];
            let mut at = 0;
            $(
                let part: &[$crate::basis::Input] = &$part;
                let mut next = 0;
                while next < part.len() {
                    all[at] = part[next];
                    at += 1;
                    next += 1;
                }
            )+
            let _ = at;
            all
        };
        &ALL
    }};
}
pub(crate) use join;

/// What jobs take of gravities.
pub(crate) const GRAVITIES: [Input; 9] = [
    optional(Key::OriginalGravity, "not told; with the gravity now, alcohol and extract follow"),
    optional(Key::OriginalPlato, "not told"),
    optional(Key::CurrentGravity, "not told, or the last of the readings"),
    optional(Key::CurrentPlato, "not told, or the last of the readings"),
    optional(Key::FinalGravity, "not told; with the gravity now, what is fermentable follows"),
    optional(Key::FinalPlato, "not told"),
    optional(Key::ExpectedAttenuation, "not told"),
    SCALE,
    optional(Key::RealExtractModel, "balling"),
];
/// Where the CO2 in the drink is known from.
pub(crate) const FERMENTED: [Input; 6] = [WARMEST, MEASURED, FERMENTER_GAUGE, COLD_CRASH, CRASH, FERMENTER_HEADSPACE];
/// The priming sugar.
pub(crate) const SUGAR: [Input; 5] = [
    optional(Key::Sugar, "sucrose"),
    optional(Key::SugarWater, CUSTOM),
    optional(Key::SugarGravity, CUSTOM),
    optional(Key::SugarFermentable, CUSTOM),
    optional(Key::SugarKind, CUSTOM),
];
/// The air outside.
pub(crate) const OUTSIDE: [Input; 3] = [ALTITUDE, AMBIENT, SEA_LEVEL];
/// The air outside, where a measured residual asks for none.
pub(super) const DOSE_OUTSIDE: [Input; 3] = [DOSE_ALTITUDE, DOSE_AMBIENT, SEA_LEVEL];
/// The drink, and what ferments in it.
pub(crate) const DRINK: [Input; 5] = [BEVERAGE, ABV, EXTRACT, FERMENTABLE, YEAST];
/// What a dose stands on.
pub(super) const DOSE_BASIS: [Input; 11] = [
    HANDBOOK,
    MODEL,
    RESIDUAL_MODEL,
    YIELD,
    COUNT_HEADSPACE,
    optional(Key::Headspace, "4 % of the liquid; counts by the physical basis only"),
    optional(Key::Filling, "crash, or else warmest; counts by the physical basis only"),
    optional(Key::Room, "20 °C; counts by the physical basis only"),
    SOLUBILITY,
    RESIDUAL,
    YIELD_FACTOR,
];
/// How a package is closed.
pub(super) const CLOSED: [Input; 2] =
    [optional(Key::Headspace, "4 % of the liquid, and noted"), optional(Key::Filling, "20 °C")];
/// What the pressure in a package stands on.
pub(super) const PACKAGE_BASIS: [Input; 5] = [PHYSICAL, MODEL, YIELD, SOLUBILITY, YIELD_FACTOR];

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

/// Temperature at which bottles are conditioned where none is given, K.
pub const USUAL_ROOM: f64 = 293.15;

/// Where the CO2 in a drink is known from.
///
/// # Errors
/// Where neither the warmest temperature nor a measured residual is given, or a value lies outside its limits.
pub fn before(request: &Request) -> Result<Before, Error> {
    if request.number(Key::Residual).is_some() {
        // What a measurement overrides has to be sound all the same.
        for key in [Key::Warmest, Key::FermenterGauge, Key::Crash, Key::FermenterHeadspace] {
            request.or(key, key.limits().unwrap_or_default().0)?;
        }
        return request.or(Key::Residual, 0.0).map(|co2| Before::Measured(Carbonation::from_si(co2)));
    }
    request.fermenter(warmest(request)?).map(Before::Fermented)
}

/// The temperature at which bottles are closed: by default that to which the drink was chilled, else its warmest, and where
/// neither is told 20 °C.
///
/// # Errors
/// Where it lies outside its limits.
pub fn filling(request: &Request) -> Result<Temperature, Error> {
    let usual = request.or(Key::Crash, request.or(Key::Warmest, USUAL_FILLING)?)?;
    request.or(Key::Filling, usual).map(Temperature::from_si)
}

/// The drink that reaches packages.
///
/// # Errors
/// Where it is missing or outside its limits.
pub fn packaged(request: &Request) -> Result<Volume, Error> {
    const PACKAGED: &str = "say how much drink reaches packages (not the batch size), such as packaged_l";
    request.need(Key::Packaged, PACKAGED).map(Volume::from_si)
}

/// What a request says of the batch that is primed.
///
/// # Errors
/// Where something is missing or outside its limits.
pub fn batch(request: &Request) -> Result<Batch, Error> {
    let water = request.number(Key::SyrupWater).is_some();
    Ok(Batch {
        before: before(request)?,
        packaged: packaged(request)?,
        conditioned: Conditioned {
            headspace: Percent::from_si(request.or(Key::Headspace, USUAL_HEADSPACE)?),
            filling: filling(request)?,
            room: Temperature::from_si(request.or(Key::Room, USUAL_ROOM)?),
        },
        syrup_water: if water { Some(Volume::from_si(request.or(Key::SyrupWater, 0.0)?)) } else { None },
        added: Carbonation::from_si(0.0),
    })
}

/// What a request says of the wort that primes.
///
/// # Errors
/// Where something is missing or outside its limits.
pub fn wort(request: &Request) -> Result<Wort, Error> {
    const LIMIT: &str = "the real degree of fermentation at which the yeast ends: about 65 for an all-malt wort, best by a forced-fermentation test";
    let given = |key: Key| request.get(key).is_some();
    let fermenting = given(Key::WortCurrentGravity) || given(Key::WortCurrentPlato);
    let co2 = given(Key::WortCo2).then(|| request.or(Key::WortCo2, 0.0)).transpose()?;
    Ok(Wort {
        original: gravity_reading(request, Key::WortOriginalGravity, Key::WortOriginalPlato)?,
        current: fermenting
            .then(|| gravity_reading(request, Key::WortCurrentGravity, Key::WortCurrentPlato))
            .transpose()?,
        limit: Percent::from_si(request.need(Key::LimitAttenuation, LIMIT)?),
        co2: co2.map(Carbonation::from_si),
    })
}

/// What a request says of the yeast in the bottles.
///
/// # Errors
/// Where a value lies outside its limits.
pub fn yeast_state(request: &Request) -> Result<YeastState, Error> {
    let given = |key: Key, default: f64| request.get(key).map(|_| request.or(key, default)).transpose();
    Ok(YeastState {
        cells: given(Key::Cells, yeast::USUAL)?,
        age: given(Key::Age, 0.0)?.map(Time::from_si),
        filtered: request.flag(Key::Filtered) == Some(true),
    })
}

/// What a request says of the bottle.
///
/// # Errors
/// Where the rating lies outside its limits.
pub fn glass(request: &Request) -> Result<Glass, Error> {
    let rating = request.get(Key::RatingGauge).map(|_: Value| request.or(Key::RatingGauge, 0.0)).transpose()?;
    Ok(Glass { class: request.bottle_class(), rating: rating.map(GaugePressure::from_si) })
}

/// Notes the headspace that was assumed.
pub fn note_headspace<T>(request: &Request, answer: &mut Answer<T>) {
    if request.number(Key::Headspace).is_none() {
        answer.notes.cautions.add(Caution::of(&ASSUMED_HEADSPACE, USUAL_HEADSPACE));
    }
}

/// What a gauge on a package shows.
pub(super) fn shown(request: &Request) -> Result<GaugePressure, Error> {
    request.need(Key::Gauge, "say what the gauge on the package shows").map(GaugePressure::from_si)
}

/// How a package is closed and kept.
pub(super) fn keeping(request: &Request) -> Result<Keeping, Error> {
    Ok(Keeping {
        temperature: temperature(request)?,
        headspace: Percent::from_si(request.or(Key::Headspace, USUAL_HEADSPACE)?),
        filling: Temperature::from_si(request.or(Key::Filling, USUAL_FILLING)?),
    })
}

pub(super) fn dose(request: &Request) -> Result<Concentration, Error> {
    request.need(Key::Dose, "say how much is added to a litre of drink, as dose_g_per_l").map(Concentration::from_si)
}

/// The sugar that was weighed.
pub(super) fn mass(request: &Request) -> Result<Mass, Error> {
    request.need(Key::Mass, "say how much sugar there is, as mass_g").map(Mass::from_si)
}

/// A gravity that may be given on either scale.
pub(crate) fn gravity_reading(request: &Request, sg: Key, plato: Key) -> Result<Reading, Error> {
    const ADVICE: &str = "give the reading, as specific gravity (sg) or as degrees Plato (plato)";
    match (request.name_of(sg), request.name_of(plato)) {
        (Some(first), Some(second)) => Err(Error::Excluded { first, second }),
        (None, Some(_)) => request.need(plato, ADVICE).map(|p| Reading::Plato(Plato::from_si(p))),
        _ => request.need(sg, ADVICE).map(|sg| Reading::Sg(SpecificGravity::from_si(sg))),
    }
}

pub(super) fn each<'a, const N: usize>(request: &Request, x: [f64; N], slices: Slices<'a>) -> Each<'a, N> {
    let sea_level = request.number(Key::SeaLevel).unwrap_or(STANDARD_ATMOSPHERE);
    let told = |key: Key| request.get(key).is_some();
    let filling_is = match (told(Key::Filling), told(Key::Crash)) {
        (true, _) => Key::Filling,
        (false, true) => Key::Crash,
        (false, false) => Key::Warmest,
    };
    Each { x, filling_is, sea_level, slices }
}

/// Headspace of a row of bottles, percent of the drink.
pub(crate) fn headspace(row: &Request, usual: f64) -> f64 {
    match (row.number(Key::Capacity), row.number(Key::Bottle)) {
        (Some(capacity), Some(content)) => 100.0 * (capacity / content - 1.0),
        _ => usual,
    }
}
