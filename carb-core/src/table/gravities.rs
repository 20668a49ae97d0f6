//! Functions of gravities, and of what is added to a drink.

use super::inputs::{CUSTOM, HANDBOOK, SCALE, YIELD, YIELD_FACTOR, dose, each, gravity_reading, output, under};
use crate::basis::function::{one_of, optional, required};
use crate::basis::{Answer, BasisName, Function, Request, Values};
use crate::bottling::addition::{self, note_syrup};
use crate::bottling::attenuation::{self, Reading, attenuation, gravity_co2};
use crate::bottling::gravity;
use crate::error::Error;
use crate::quantity::{Key, Percent, SpecificGravity};

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
        let (gravity, notes) = match gravity_reading(request, Key::Gravity, Key::Plato)? {
            Reading::Sg(sg) => gravity::from_sg(sg, scale, &mut &mut *steps)?,
            Reading::Plato(plato) => gravity::from_plato(plato, scale, &mut &mut *steps)?,
        };
        let value = Values::new([gravity.specific_gravity.si(), gravity.plato.si()]);
        Ok(Answer { value, context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| match gravity_reading(request, Key::Gravity, Key::Plato)? {
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
        gravity_reading(request, Key::OriginalGravity, Key::OriginalPlato)?,
        gravity_reading(request, Key::CurrentGravity, Key::CurrentPlato)?,
    ])
}

/// The gravity at the end.
pub static FINAL_GRAVITY: Function = Function {
    name: "final_gravity",
    summary: "Gravity at which a fermentation ends, from the original gravity and the attenuation expected of it.",
    home: "bottling::attenuation::final_gravity",
    inputs: &[
        one_of("original", Key::OriginalGravity),
        one_of("original", Key::OriginalPlato),
        required(Key::ExpectedAttenuation),
        SCALE,
    ],
    outputs: &[output(Key::FinalGravity), output(Key::FinalPlato)],
    columns: &[Key::OriginalGravity, Key::OriginalPlato, Key::ExpectedAttenuation],
    example: r#"{"original_sg": 1.048, "expected_attenuation_percent": 78}"#,
    run: |request, steps| {
        let (original, expected) = original_and_expected(request)?;
        let (end, notes) = attenuation::final_gravity(original, expected, request.scale(), &mut &mut *steps)?;
        let value = Values::new([end.specific_gravity.si(), end.plato.si()]);
        Ok(Answer { value, context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| {
        let (original, expected) = original_and_expected(request)?;
        let (x, plato) = attenuation::end_columns(original, expected);
        attenuation::visit_end(plato, request.scale(), each(request, x, s))
    },
};

fn original_and_expected(request: &Request) -> Result<(Reading, Percent), Error> {
    const EXPECTED: &str = "say which apparent attenuation the yeast is expected to reach, in percent";
    let original = gravity_reading(request, Key::OriginalGravity, Key::OriginalPlato)?;
    Ok((original, Percent::from_si(request.need(Key::ExpectedAttenuation, EXPECTED)?)))
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
        gravity_reading(request, Key::CurrentGravity, Key::CurrentPlato)?,
        gravity_reading(request, Key::FinalGravity, Key::FinalPlato)?,
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
