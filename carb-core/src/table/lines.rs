//! Functions of the draught line: by physics, and by the trade's balance.

use super::inputs::{ABV, BEVERAGE, EXTRACT, each, join, output, temperature, under};
use crate::basis::function::{one_of, optional, required};
use crate::basis::{Answer, BasisName, Function, Input, Request, Values};
use crate::error::Error;
use crate::kegging::draught::{self, Draught, Pour, USUAL_GLASS};
use crate::kegging::handbook_line;
use crate::kegging::line::USUAL_FITTINGS;
use crate::quantity::{
    Bore, Flow, GaugePressure, Key, Length, Multiplier, PressureDifference, ShortTime, SpecificGravity, Volume,
};

/// The line, by a tube of the list or by its bore.
const TUBING: [Input; 2] = [one_of("tube", Key::Tube), one_of("tube", Key::Bore)];
/// What a pour is told by.
const POUR: [Input; 2] = [one_of("pour", Key::Flow), one_of("pour", Key::Pour)];
/// The rest of the line, and the drink in it.
pub(super) const DRAUGHT: [Input; 9] = [
    optional(Key::Rise, "0: the faucet at the height of the drink"),
    optional(Key::Fittings, "3, of a home line: judgement"),
    optional(Key::PourSize, "a US pint, 473.176 mL"),
    required(Key::Temperature),
    optional(Key::Gravity, "that of the composition"),
    optional(Key::RelativeViscosity, "usual for the drink, as the working shows"),
    BEVERAGE,
    ABV,
    EXTRACT,
];
/// The line as the handbooks take it.
const HANDBOOK_TUBING: [Input; 4] = [
    one_of("tube", Key::Tube),
    one_of("tube", Key::Resistance),
    optional(Key::Rise, "0: the faucet at the height of the drink"),
    optional(Key::Hardware, "0"),
];

/// What varies beside the first two columns.
macro_rules! columns {
    ($($first:expr),+) => {
        &[$($first,)+ Key::Bore, Key::Rise, Key::Fittings, Key::PourSize, Key::Temperature, Key::Gravity, Key::Abv, Key::Extract,
          Key::RelativeViscosity]
    };
}

pub(super) fn bore(request: &Request) -> Result<f64, Error> {
    const ADVICE: &str = "name the tube (see the table tubes), or give its inner diameter, as bore_mm or bore_in";
    match (request.name_of(Key::Tube), request.name_of(Key::Bore), request.tube()) {
        (Some(first), Some(second), _) => Err(Error::Excluded { first, second }),
        (_, None, Some(tube)) => Ok(tube.bore),
        (None, None, _) => Err(Error::Missing { parameter: Key::Tube, advice: ADVICE }),
        _ => request.need(Key::Bore, ADVICE),
    }
}

/// What a request says of the line and the drink in it.
pub(super) fn draught(request: &Request) -> Result<Draught, Error> {
    let given = |key: Key| request.get(key).map(|_| request.or(key, 0.0)).transpose();
    Ok(Draught {
        bore: Bore::from_si(bore(request)?),
        rise: Length::from_si(request.or(Key::Rise, 0.0)?),
        fittings: Multiplier::from_si(request.or(Key::Fittings, USUAL_FITTINGS)?),
        glass: Volume::from_si(request.or(Key::PourSize, USUAL_GLASS)?),
        temperature: temperature(request)?,
        gravity: given(Key::Gravity)?.map(SpecificGravity::from_si),
        relative_viscosity: given(Key::RelativeViscosity)?.map(Multiplier::from_si),
    })
}

/// The pour that is asked for.
pub(super) fn pour(request: &Request) -> Result<Pour, Error> {
    const ADVICE: &str = "say how fast it should pour: as a flow (flow_us_fl_oz_per_s, flow_l_per_min) or as the time of a pour (pour_seconds)";
    match (request.name_of(Key::Flow), request.name_of(Key::Pour)) {
        (Some(first), Some(second)) => Err(Error::Excluded { first, second }),
        (None, Some(_)) => request.need(Key::Pour, ADVICE).map(|time| Pour::Time(ShortTime::from_si(time))),
        _ => request.need(Key::Flow, ADVICE).map(|flow| Pour::Flow(Flow::from_si(flow))),
    }
}

pub(super) fn gauge(request: &Request) -> Result<GaugePressure, Error> {
    request
        .need(Key::Gauge, "say what the gauge on the keg shows, as gauge_psi or gauge_bar")
        .map(GaugePressure::from_si)
}

fn length(request: &Request) -> Result<Length, Error> {
    request.need(Key::Line, "say how long the line is, as line_m or line_ft").map(Length::from_si)
}

/// Resistance by the handbook, Pa/m.
fn resistance(request: &Request) -> Result<f64, Error> {
    const ADVICE: &str = "name the tube (see the table tubes), or give what a handbook says of it, as resistance_psi_per_ft or resistance_bar_per_m";
    match (request.name_of(Key::Tube), request.name_of(Key::Resistance), request.tube()) {
        (Some(first), Some(second), _) => Err(Error::Excluded { first, second }),
        (_, None, Some(tube)) => Ok(tube.resistance()),
        (None, None, _) => Err(Error::Missing { parameter: Key::Tube, advice: ADVICE }),
        _ => request.need(Key::Resistance, ADVICE),
    }
}

/// Rise and hardware of the trade's balance.
pub(super) fn rise_and_hardware(request: &Request) -> Result<(Length, PressureDifference), Error> {
    let rise = Length::from_si(request.or(Key::Rise, 0.0)?);
    Ok((rise, PressureDifference::from_si(request.or(Key::Hardware, 0.0)?)))
}

/// What a line pours.
pub static LINE_FLOW: Function = Function {
    name: "line_flow",
    summary: "What a keg pours through a draught line, by physics: flow, time of a pour, speed, and the pressure that the line takes per length.",
    home: "kegging::draught::line_flow",
    inputs: join!([required(Key::Gauge), required(Key::Line)], TUBING, DRAUGHT),
    outputs: &[
        output(Key::Flow),
        output(Key::Pour),
        output(Key::Speed),
        output(Key::Reynolds),
        output(Key::Resistance),
        output(Key::LineContent),
    ],
    columns: columns!(Key::Gauge, Key::Line),
    example: r#"{"gauge_psi": 11, "line_ft": 10, "tube": "vinyl_3_16_in", "rise_ft": 2, "temperature_f": 38}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (gauge, length, line) = (gauge(request)?, length(request)?, draught(request)?);
        let answer = draught::line_flow(gauge, length, &line, &context, &mut &mut *steps)?;
        Ok(answer.map(|p| {
            let (flow, time, speed) = (p.flow.si(), p.time.si(), p.speed.si());
            Values::new([flow, time, speed, p.reynolds, p.resistance, p.content.si()])
        }))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let line = draught(request)?;
        let x = line.columns(gauge(request)?.si(), length(request)?.si(), &context);
        draught::visit_flow(line.gravity.is_some(), each(request, x, s))
    },
};

/// How long a line has to be.
pub static LINE_LENGTH: Function = Function {
    name: "line_length",
    summary: "Length of draught line through which a keg pours as fast as wanted, by physics, and the drink that stands in it.",
    home: "kegging::draught::line_length",
    inputs: join!([required(Key::Gauge)], POUR, TUBING, DRAUGHT),
    outputs: &[
        output(Key::Line),
        output(Key::LineContent),
        output(Key::Flow),
        output(Key::Pour),
        output(Key::Speed),
        output(Key::Reynolds),
        output(Key::Resistance),
    ],
    columns: columns!(Key::Gauge, Key::Flow, Key::Pour),
    example: r#"{"gauge_psi": 11, "pour_seconds": 12, "tube": "vinyl_3_16_in", "rise_ft": 2, "temperature_f": 38}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (gauge, pour, line) = (gauge(request)?, pour(request)?, draught(request)?);
        let answer = draught::line_length(gauge, pour, &line, &context, &mut &mut *steps)?;
        Ok(answer.map(|found| {
            let p = found.poured;
            let (flow, time, speed) = (p.flow.si(), p.time.si(), p.speed.si());
            Values::new([found.length.si(), p.content.si(), flow, time, speed, p.reynolds, p.resistance])
        }))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let line = draught(request)?;
        let (timed, told) = pour(request)?.told();
        let x = line.columns(gauge(request)?.si(), told, &context);
        draught::visit_length(timed, line.gravity.is_some(), each(request, x, s))
    },
};

/// Which pressure a line takes.
pub static LINE_PRESSURE: Function = Function {
    name: "line_pressure",
    summary: "Pressure in the keg that a draught line takes at a flow, by physics, and what of it rise, tube and fittings take. To compare: the pressure of a keg belongs to its carbonation, and the line is made to fit it.",
    home: "kegging::draught::line_pressure",
    inputs: join!([required(Key::Line)], POUR, TUBING, DRAUGHT),
    outputs: &[
        output(Key::Gauge),
        under("lift", Key::Drop),
        under("line", Key::Drop),
        under("fittings", Key::Drop),
        output(Key::Flow),
        output(Key::Pour),
        output(Key::Speed),
        output(Key::Reynolds),
    ],
    columns: columns!(Key::Line, Key::Flow, Key::Pour),
    example: r#"{"line_m": 3, "flow_l_per_min": 3, "tube": "metric_7_mm", "rise_m": 0.5, "temperature_c": 4}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (length, pour, line) = (length(request)?, pour(request)?, draught(request)?);
        let answer = draught::line_pressure(length, pour, &line, &context, &mut &mut *steps)?;
        Ok(answer.map(|t| {
            let [lift, line, fittings] = [t.lift, t.line, t.fittings].map(PressureDifference::si);
            Values::new([t.gauge.si(), lift, line, fittings, t.flow.si(), t.time.si(), t.speed.si(), t.reynolds])
        }))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let line = draught(request)?;
        let (timed, told) = pour(request)?.told();
        let x = line.columns(length(request)?.si(), told, &context);
        draught::visit_pressure(timed, line.gravity.is_some(), each(request, x, s))
    },
};

/// The trade's balance.
pub static HANDBOOK_LINE: Function = Function {
    name: "handbook_line",
    summary: "Length of draught line by the trade's balance: what rise (0.5 psi per foot) and hardware leave, over the tube's resistance by the handbook. Meant for 2 US fl oz/s, the German figures for 3 L/min.",
    home: "kegging::handbook_line::handbook_line",
    inputs: join!([required(Key::Gauge)], HANDBOOK_TUBING),
    outputs: &[output(Key::Line), under("lift", Key::Drop), output(Key::Resistance)],
    columns: &[Key::Gauge, Key::Resistance, Key::Rise, Key::Hardware],
    example: r#"{"gauge_psi": 11, "tube": "vinyl_3_16_in", "rise_ft": 2}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (gauge, told, (rise, hardware)) = (gauge(request)?, resistance(request)?, rise_and_hardware(request)?);
        let (line, mut notes) = handbook_line::handbook_line(gauge, told, rise, hardware, &mut &mut *steps)?;
        notes.datum(request.tube().map(|tube| tube.source));
        Ok(Answer { value: Values::new([line.length.si(), line.lift.si(), told]), context, notes })
    },
    slices: |request, s| {
        let (rise, hardware) = rise_and_hardware(request)?;
        let x = [gauge(request)?.si(), resistance(request)?, rise.si(), hardware.si()];
        handbook_line::visit(each(request, x, s))
    },
};

/// The trade's balance, reversed.
pub static HANDBOOK_PRESSURE: Function = Function {
    name: "handbook_pressure",
    summary: "Pressure that a draught line takes by the trade's balance: tube, rise (0.5 psi per foot) and hardware.",
    home: "kegging::handbook_line::handbook_pressure",
    inputs: join!([required(Key::Line)], HANDBOOK_TUBING),
    outputs: &[output(Key::Gauge), under("lift", Key::Drop), under("line", Key::Drop)],
    columns: &[Key::Line, Key::Resistance, Key::Rise, Key::Hardware],
    example: r#"{"line_ft": 20, "tube": "vinyl_1_4_in"}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (length, told, (rise, hardware)) = (length(request)?, resistance(request)?, rise_and_hardware(request)?);
        let (taken, mut notes) = handbook_line::handbook_pressure(length, told, rise, hardware, &mut &mut *steps)?;
        notes.datum(request.tube().map(|tube| tube.source));
        Ok(Answer { value: Values::new([taken.gauge.si(), taken.lift.si(), taken.line.si()]), context, notes })
    },
    slices: |request, s| {
        let (rise, hardware) = rise_and_hardware(request)?;
        let x = [length(request)?.si(), resistance(request)?, rise.si(), hardware.si()];
        handbook_line::visit_pressure(each(request, x, s))
    },
};
