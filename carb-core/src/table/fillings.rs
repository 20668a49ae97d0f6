//! Functions of filling from the keg, and of blending.

use super::inputs::{
    ABV, BEVERAGE, EXTRACT, HANDBOOK, MODEL, SEA_LEVEL, SOLUBILITY, carbonation, each, output, packaged, temperature,
    under,
};
use crate::basis::function::{one_of, optional, required};
use crate::basis::{BasisName, Function, Request, Values};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::kegging::blend::{self, Parts, Place};
use crate::kegging::filling::{self, Loss};
use crate::quantity::{Carbonation, GaugePressure, Key, Volume};

fn loss(request: &Request) -> Result<Loss, Error> {
    const ADVICE: &str =
        "say how the drink is filled (fill_method: see the table filling_losses), or what it loses (fill_loss_volumes)";
    match (request.name_of(Key::FillMethod), request.name_of(Key::FillLoss), request.fill_method()) {
        (Some(first), Some(second), _) => Err(Error::Excluded { first, second }),
        (_, None, Some(way)) => Ok(Loss::By(way)),
        (None, None, _) => Err(Error::Missing { parameter: Key::FillMethod, advice: ADVICE }),
        _ => request.need(Key::FillLoss, ADVICE).map(|lost| Loss::Told(Carbonation::from_si(lost))),
    }
}

/// What the keg has to have.
pub static FILLING_CARBONATION: Function = Function {
    name: "filling_carbonation",
    summary: "CO2 that a keg or tank has to have for a carbonation in the package that is filled from it: expected, and with the least and the most that filling may lose. A loss that is told is taken as known.",
    home: "kegging::filling::filling_carbonation",
    inputs: &[required(Key::Carbonation), one_of("loss", Key::FillMethod), one_of("loss", Key::FillLoss)],
    outputs: &[under("expected", Key::Carbonation), under("least", Key::Carbonation), under("most", Key::Carbonation)],
    columns: &[Key::Carbonation, Key::FillLoss],
    example: r#"{"volumes": 2.4, "fill_method": "hand_counter_pressure"}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let answer = filling::filling_carbonation(carbonation(request)?, loss(request)?, &context, &mut &mut *steps)?;
        Ok(answer.map(|span| Values::new([span.expected.si(), span.least.si(), span.most.si()])))
    },
    slices: |request, s| {
        let loss = loss(request)?;
        filling::visit(loss, each(request, filling::columns(carbonation(request)?, loss), s))
    },
};

fn parts(request: &Request) -> Result<Parts, Error> {
    const VOLUME: &str = "say how much of the other drink is blended in, such as other_l";
    const CO2: &str = "say how much CO2 the other drink has, as other_volumes or other_co2_g_per_l";
    let other = Volume::from_si(request.need(Key::OtherVolume, VOLUME)?);
    Ok(Parts {
        one: (packaged(request)?, carbonation(request)?),
        other: (other, Carbonation::from_si(request.need(Key::OtherCarbonation, CO2)?)),
    })
}

/// Where the mix stands, if it is told.
fn place(request: &Request) -> Result<Option<Place>, Error> {
    const NEEDED: &str = "what stays under a pressure depends on the temperature: give temperature_c or temperature_f, or leave out pressure and altitude";
    let told =
        [Key::Gauge, Key::Altitude, Key::Ambient, Key::SeaLevel].into_iter().any(|key| request.get(key).is_some());
    if request.get(Key::Temperature).is_none() {
        return if told { Err(Error::Missing { parameter: Key::Temperature, advice: NEEDED }) } else { Ok(None) };
    }
    let gauge = GaugePressure::from_si(request.or(Key::Gauge, 0.0)?);
    Ok(Some(Place { temperature: temperature(request)?, gauge }))
}

/// Two drinks in one.
pub static BLEND: Function = Function {
    name: "blend",
    summary: "Volume and CO2 of two drinks blended: of the mix, and what of it stays at a temperature under a pressure of CO2 (0 where it is open); without a temperature all is kept under pressure, and stays.",
    home: "kegging::blend::blend",
    inputs: &[
        required(Key::Packaged),
        required(Key::Carbonation),
        required(Key::OtherVolume),
        required(Key::OtherCarbonation),
        optional(Key::Temperature, "all is kept under pressure"),
        optional(Key::Gauge, "0: open; needs the temperature"),
        optional(Key::Altitude, "needed with a temperature, unless ambient is given"),
        optional(Key::Ambient, "needed with a temperature, unless altitude is given"),
        SEA_LEVEL,
        BEVERAGE,
        ABV,
        EXTRACT,
        HANDBOOK,
        MODEL,
        SOLUBILITY,
    ],
    outputs: &[
        output(Key::Packaged),
        under("mixed", Key::Carbonation),
        under("kept", Key::Carbonation),
        output(Key::Released),
    ],
    columns: &[
        Key::Packaged,
        Key::Carbonation,
        Key::OtherVolume,
        Key::OtherCarbonation,
        Key::Gauge,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
    ],
    example: r#"{"packaged_l": 15, "volumes": 2.8, "other_l": 5, "other_volumes": 0.8, "temperature_c": 4, "gauge_bar": 0.6, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (parts, place) = (parts(request)?, place(request)?);
        let answer = blend::blend(&parts, place.as_ref(), &context, &mut &mut *steps)?;
        Ok(answer.map(|mix| Values::new([mix.volume.si(), mix.mixed.si(), mix.kept.si(), mix.escapes.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let parts = parts(request)?;
        match place(request)? {
            None => blend::visit_closed(each(request, parts.columns(), s)),
            Some(place) => {
                let x = blend::columns(&parts, &place, &context, &mut NoSteps)?;
                blend::visit(&context, each(request, x, s))
            }
        }
    },
};
