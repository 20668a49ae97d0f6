//! Functions of the drink before it is bottled: what CO2 it holds, and what primes it.

use super::inputs::{
    ABV, ALTITUDE, AMBIENT, BEVERAGE, COLD_CRASH, COUNT_SYRUP, CRASH, DOSE_BASIS, DOSE_OUTSIDE, DRINK, EXTRACT,
    FERMENTED, FERMENTER_GAUGE, FERMENTER_HEADSPACE, HANDBOOK, MODEL, RESIDUAL, RESIDUAL_MODEL, SCALE, SEA_LEVEL,
    SOLUBILITY, SUGAR, SYRUP_WATER, batch, carbonation, each, join, mass, note_headspace, output, under, warmest, wort,
};
use crate::balance::open;
use crate::basis::function::{one_of, optional, required};
use crate::basis::{BasisName, Function, Request, Values};
use crate::bottling::addition::note_syrup;
use crate::bottling::{priming, syrup, wort};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::property::fermentable::Fermentable;
use crate::quantity::{Key, Mass, SpecificGravity, Temperature, Volume};

/// CO2 left after fermentation.
pub static RESIDUAL_CO2: Function = Function {
    name: "residual_co2",
    summary: "CO2 left in a drink after fermentation: by its warmest temperature since, open to the air or under pressure, and what a cold crash adds.",
    home: "balance::open::residual_co2",
    inputs: &[
        required(Key::Warmest),
        FERMENTER_GAUGE,
        COLD_CRASH,
        CRASH,
        FERMENTER_HEADSPACE,
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
    columns: &[
        Key::Warmest,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::FermenterGauge,
        Key::Crash,
        Key::FermenterHeadspace,
    ],
    example: r#"{"warmest_c": 20, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let answer = open::residual_co2(&request.fermenter(warmest(request)?)?, &context, &mut &mut *steps)?;
        Ok(answer.map(|c| Values::new([c.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let drink = context.beverage;
        let fermenter = request.fermenter(warmest(request)?)?;
        let [gauge, cold, headspace] = fermenter.si();
        let ambient = context.ambient(&mut NoSteps)?;
        let x = [fermenter.warmest.si(), ambient, drink.abv(), drink.extract(), gauge, cold, headspace];
        open::visit(&context, fermenter.crash, each(request, x, s))
    },
};

/// The priming dose.
pub static PRIMING_SUGAR: Function = Function {
    name: "priming_sugar",
    summary: "Priming sugar that gives a drink its carbonation.",
    home: "bottling::priming::priming_sugar",
    inputs: join!(
        [required(Key::Carbonation), required(Key::Packaged)],
        FERMENTED,
        DOSE_OUTSIDE,
        SUGAR,
        [SYRUP_WATER, COUNT_SYRUP],
        DRINK,
        DOSE_BASIS,
    ),
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
        Key::FermenterGauge,
        Key::Crash,
        Key::FermenterHeadspace,
        Key::Residual,
        Key::SyrupWater,
    ],
    example: r#"{"volumes": 2.5, "warmest_f": 68, "packaged_us_gal": 5, "altitude_m": 0, "sugar": "sucrose"}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let sugar = request.priming_sugar()?;
        let (target, batch) = (carbonation(request)?, batch(request)?);
        let mut answer = priming::priming_sugar(target, &batch, &sugar, &context, &mut &mut *steps)?;
        note_syrup(request.number(Key::SugarGravity).map(SpecificGravity::from_si), &mut answer.notes);
        if context.basis.count_headspace {
            note_headspace(request, &mut answer);
        }
        Ok(answer.map(|d| Values::new([d.mass.si(), d.dose.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let sugar = request.priming_sugar()?;
        let (target, batch) = (carbonation(request)?, batch(request)?);
        let x = priming::columns(target.si(), &batch, &context, &mut NoSteps)?;
        priming::visit(&context, &sugar, &batch, each(request, x, s))
    },
};

/// What a dose makes.
pub static PRIMED_CARBONATION: Function = Function {
    name: "primed_carbonation",
    summary: "Carbonation and alcohol of a drink to which a mass of priming sugar was added: the inverse of priming_sugar.",
    home: "bottling::priming::primed_carbonation",
    inputs: join!(
        [required(Key::Mass), required(Key::Packaged)],
        FERMENTED,
        DOSE_OUTSIDE,
        SUGAR,
        [SYRUP_WATER, COUNT_SYRUP],
        DRINK,
        DOSE_BASIS,
    ),
    outputs: &[output(Key::Carbonation), under("added", Key::Abv), output(Key::Abv)],
    columns: &[
        Key::Mass,
        Key::Warmest,
        Key::Packaged,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Fermentable,
        Key::Headspace,
        Key::Filling,
        Key::Room,
        Key::FermenterGauge,
        Key::Crash,
        Key::FermenterHeadspace,
        Key::Residual,
        Key::SyrupWater,
    ],
    example: r#"{"mass_g": 120, "warmest_f": 68, "packaged_us_gal": 5, "altitude_m": 0, "sugar": "sucrose"}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let sugar = request.priming_sugar()?;
        let (mass, batch) = (mass(request)?, batch(request)?);
        let mut answer = priming::primed_carbonation(mass, &batch, &sugar, &context, &mut &mut *steps)?;
        note_syrup(request.number(Key::SugarGravity).map(SpecificGravity::from_si), &mut answer.notes);
        if context.basis.count_headspace {
            note_headspace(request, &mut answer);
        }
        Ok(answer.map(|d| Values::new([d.carbonation.si(), d.added_abv.si(), d.abv.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let sugar = request.priming_sugar()?;
        let (mass, batch) = (mass(request)?, batch(request)?);
        let x = priming::columns(mass.si(), &batch, &context, &mut NoSteps)?;
        priming::visit_primed(&context, &sugar, &batch, each(request, x, s))
    },
};

/// Priming by volume.
pub static PRIMING_WORT: Function = Function {
    name: "priming_wort",
    summary: "Unfermented wort (gyle, Speise) or fermenting beer (kräusen) that gives a drink its carbonation: current gravity none for the first.",
    home: "bottling::wort::priming_wort",
    inputs: join!(
        [
            required(Key::Carbonation),
            required(Key::Packaged),
            one_of("wort", Key::WortOriginalGravity),
            one_of("wort", Key::WortOriginalPlato),
            optional(Key::WortCurrentGravity, "fresh wort"),
            optional(Key::WortCurrentPlato, "fresh wort"),
            required(Key::LimitAttenuation),
            optional(Key::WortCo2, "none in fresh wort, what the drink keeps in fermenting one"),
            SCALE,
        ],
        FERMENTED,
        DOSE_OUTSIDE,
        DRINK,
        DOSE_BASIS,
    ),
    outputs: &[output(Key::Wort), output(Key::WortShare)],
    columns: &[
        Key::Carbonation,
        Key::Packaged,
        Key::Headspace,
        Key::Filling,
        Key::Room,
        Key::WortOriginalGravity,
        Key::WortOriginalPlato,
        Key::WortCurrentGravity,
        Key::WortCurrentPlato,
        Key::LimitAttenuation,
        Key::WortCo2,
        Key::Warmest,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Fermentable,
        Key::FermenterGauge,
        Key::Crash,
        Key::FermenterHeadspace,
        Key::Residual,
    ],
    example: r#"{"co2_g_per_l": 5, "residual_co2_g_per_l": 1.7, "packaged_l": 20, "wort_original_plato": 12, "limit_attenuation_percent": 65, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (target, batch, wort) = (carbonation(request)?, batch(request)?, wort(request)?);
        let scale = request.scale();
        let mut answer = wort::priming_wort(target, &batch, &wort, scale, &context, &mut &mut *steps)?;
        if context.basis.count_headspace {
            note_headspace(request, &mut answer);
        }
        Ok(answer.map(|w| Values::new([w.volume.si(), w.share.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (target, batch, wort) = (carbonation(request)?, batch(request)?, wort(request)?);
        let x = wort::columns(target.si(), &batch, &wort, &context, &mut NoSteps)?;
        wort::visit(&context, &batch, &wort, request.scale(), each(request, x, s))
    },
};

/// The syrup.
pub static PRIMING_SYRUP: Function = Function {
    name: "priming_syrup",
    summary: "Syrup of a mass of priming sugar: its volume, the least water that dissolves it, its strength.",
    home: "bottling::syrup::priming_syrup",
    inputs: join!(
        [required(Key::Mass)],
        SUGAR,
        [
            optional(Key::SyrupWater, "three times the mass of the sugar; none for a liquid"),
            optional(Key::Dissolving, "20 °C: it stays dissolved when it has cooled"),
        ],
    ),
    outputs: &[output(Key::Syrup), under("least", Key::SyrupWater), output(Key::SyrupStrength)],
    columns: &[Key::Mass, Key::SyrupWater, Key::Dissolving],
    example: r#"{"mass_g": 116, "syrup_water_ml": 350}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (sugar, [mass, _, t], water) = syrup(request)?;
        let (mass, t) = (Mass::from_si(mass), Temperature::from_si(t));
        let mut answer = syrup::priming_syrup(mass, water, t, &sugar, &context, &mut &mut *steps)?;
        note_syrup(request.number(Key::SugarGravity).map(SpecificGravity::from_si), &mut answer.notes);
        Ok(answer.map(|s| Values::new([s.volume.si(), s.least_water.si(), s.strength.si()])))
    },
    slices: |request, s| {
        let (sugar, x, water) = syrup(request)?;
        syrup::visit(&sugar, water, each(request, x, s))
    },
};

fn syrup(request: &Request) -> Result<(Fermentable, [f64; 3], Option<Volume>), Error> {
    let sugar = request.priming_sugar()?;
    let water = request.or(Key::SyrupWater, 0.0)?;
    let given = request.get(Key::SyrupWater).map(|_| Volume::from_si(water));
    Ok((sugar, [mass(request)?.si(), water, request.or(Key::Dissolving, syrup::COOLED)?], given))
}
