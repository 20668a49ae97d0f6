//! The conformance cases: one file, `conformance/cases.tsv`, that the tests of Rust, C and Python all read.
//!
//! Its values are the library's own (a regression file): they prove that the languages agree to the last bit, not that
//! the values are right. For that there are the published, the reference and the high-precision checks of `carb-core`.

use carb_core::Error;
use carb_core::basis::request::{Raw, Request, choices};
use carb_core::basis::{Answer, Function, Refusal, Values};
use carb_core::evidence::NoSteps;
use carb_core::plan::json;
use carb_core::quantity::field::Kind;
use carb_core::quantity::{Name, Unit};
use carb_core::table::{functions, tables};

/// One case.
#[derive(Clone, Debug, PartialEq)]
pub struct Case {
    /// The function, or `plan`.
    pub function: String,
    /// `name=value;name=value`.
    pub inputs: String,
    /// 0, or the error code.
    pub code: i32,
    /// The parameter at fault.
    pub parameter: String,
    /// `name=value;name=value`, empty for the plan.
    pub outputs: String,
    /// The request as JSON.
    pub request: String,
    /// The answer as JSON.
    pub answer: String,
}

/// The header of the file.
pub const HEADER: &str = "function\tinputs\tcode\tparameter\toutputs\trequest_json\tanswer_json";

impl Case {
    /// Runs a function on its inputs.
    pub fn run(function: &str, inputs: &str) -> Self {
        let request = request_json(inputs);
        let answer = json::answer_text(function, &request);
        let mut case = Self {
            function: function.into(),
            inputs: inputs.into(),
            code: 0,
            parameter: String::new(),
            outputs: String::new(),
            request,
            answer,
        };
        let found = match functions::named(function) {
            Some(function) => given(inputs).and_then(|r| function.answer(&r, &mut NoSteps).map(|a| (function, a))),
            // So does a table, whose rows stand in its answer.
            None => match job(function, &case.request) {
                Ok(()) => return case,
                Err(refusal) => Err(refusal.error),
            },
        };
        match found {
            Ok((function, answer)) => case.outputs = outputs(function, &answer),
            Err(error) => {
                case.code = error.code();
                case.parameter = error.parameter().as_str().into();
            }
        }
        case
    }

    /// The case as a line of the file.
    pub fn line(&self) -> String {
        let Self { function, inputs, code, parameter, outputs, request, answer } = self;
        format!("{function}\t{inputs}\t{code}\t{parameter}\t{outputs}\t{request}\t{answer}")
    }
}

/// Runs a table or a job. A job answers part by part; only a request that is none has a code of its own.
fn job(name: &str, request: &str) -> Result<(), Refusal> {
    if name == "crosscheck" {
        return carb_core::crosscheck::json::crosscheck_of(request).map(|_| ());
    }
    let asked = json::ask(request)?;
    let lists = asked.lists()?;
    match name {
        "plan" => carb_core::plan::plan(&asked.request, &lists).map(|_| ()),
        "bottling" => carb_core::plan::bottle(&asked.request, &lists).map(|_| ()),
        "kegging" => carb_core::plan::keg(&asked.request, &lists).map(|_| ()),
        _ => tables::named(name).expect("a function, a table or a job").rows(&asked.request, &lists, &mut |_| {}),
    }
    .map_err(Refusal::from)
}

/// The pairs of `name=value;name=value`; the rows of a list are a value in JSON.
pub fn pairs(inputs: &str) -> impl Iterator<Item = (&str, &str)> {
    inputs.split(';').filter_map(|pair| pair.split_once('='))
}

/// The inputs as a request in JSON.
pub fn request_json(inputs: &str) -> String {
    let members = pairs(inputs).map(|(name, value)| {
        let plain = value.parse::<f64>().is_ok() || value == "true" || value == "false" || value.starts_with('[');
        if plain { format!("\"{name}\":{value}") } else { format!("\"{name}\":\"{value}\"") }
    });
    let members: Vec<String> = std::iter::once("\"carb\":1".into()).chain(members).collect();
    format!("{{{}}}", members.join(","))
}

/// The inputs as a request.
///
/// # Errors
/// As [`Request::set`].
pub fn given(inputs: &str) -> Result<Request, Error> {
    let mut request = Request::new();
    for (name, value) in pairs(inputs) {
        let raw = match (value, value.parse::<f64>()) {
            ("true", _) => Raw::Flag(true),
            ("false", _) => Raw::Flag(false),
            (_, Ok(number)) => Raw::Number(number),
            (text, Err(_)) => Raw::Text(text),
        };
        request.set(name, raw)?;
    }
    Ok(request)
}

fn outputs(function: &Function, answer: &Answer<Values>) -> String {
    let mut all = Vec::new();
    for (output, &si) in function.outputs.iter().zip(answer.value.as_slice()) {
        for unit in output.key.dimension().into_iter().flat_map(Unit::of).filter(|u| u.shown) {
            all.push(format!("{}={:?}", Function::output_name(*output, unit), unit.from_si(si)));
        }
    }
    all.join(";")
}

/// Every case: some written by hand, some drawn with a fixed seed from the whole range of every input.
pub fn cases() -> Vec<Case> {
    let by_hand = BY_HAND.iter().map(|(function, inputs)| Case::run(function, inputs));
    let mut draw = Draw(0x9e37_79b9_7f4a_7c15);
    let drawn: Vec<Case> = carb_core::table::FUNCTIONS
        .iter()
        .flat_map(|function| (0..40).map(|_| draw.case(function)).collect::<Vec<_>>())
        .collect();
    by_hand.chain(drawn).collect()
}

/// A small generator (xorshift), so that the file does not depend on a library's stream of numbers.
struct Draw(u64);

impl Draw {
    fn next(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    fn below(&mut self, count: usize) -> usize {
        ((self.next() * count as f64) as usize).min(count - 1)
    }

    /// A request with every needed input, each in a unit drawn at random, and some of the others.
    fn case(&mut self, function: &Function) -> Case {
        use carb_core::basis::Need;
        use carb_core::quantity::Key;
        let mut inputs = Vec::new();
        let mut groups: Vec<&str> = Vec::new();
        for input in function.inputs {
            // A sugar of one's own is described in full by hand.
            if let Key::SugarWater | Key::SugarGravity | Key::SugarFermentable | Key::SugarKind = input.key {
                continue;
            }
            let wanted = match input.need {
                Need::Required => true,
                Need::OneOf(group) => {
                    let first = !groups.contains(&group);
                    groups.push(group);
                    first
                }
                // One of two is needed, and a measurement is rare.
                Need::Optional(_) if input.key == Key::Warmest => true,
                Need::Optional(_) => self.next() < 0.35,
            };
            if !wanted {
                continue;
            }
            let names: Vec<Name> = Name::of(input.key).collect();
            let name = names[self.below(names.len())];
            match input.key.field().kind {
                Kind::Number { .. } => {
                    let (low, high) = usual(name);
                    inputs.push(format!("{name}={}", low + (high - low) * self.next()));
                }
                Kind::Choice => {
                    let list = choices(input.key);
                    inputs.push(format!("{name}={}", list[self.below(list.len())]));
                }
                Kind::Flag => inputs.push(format!("{name}={}", self.next() < 0.5)),
                _ => {}
            }
        }
        Case::run(function.name, &inputs.join(";"))
    }
}

/// The part of a field's limits that a packaging day sees, in the unit of the name.
fn usual(name: Name) -> (f64, f64) {
    use carb_core::quantity::Key;
    let (low, high) = name.key.limits().unwrap_or_default();
    let (low, high) = match name.key {
        Key::Carbonation => (0.0, 12.0),
        Key::Gauge => (0.0, 4.0e5),
        Key::Absolute => (0.5e5, 5.0e5),
        Key::Headspace => (0.5, 12.0),
        Key::Packaged => (1.0e-3, 0.5),
        Key::Extract => (0.0, 120.0),
        Key::Fermentable => (0.0, 8.0),
        Key::Abv => (0.0, 14.0),
        Key::Altitude => (-100.0, 3500.0),
        Key::Gravity => (0.985, 1.14),
        Key::OriginalGravity => (1.03, 1.12),
        Key::OriginalPlato => (8.0, 27.0),
        Key::CurrentGravity => (0.99, 1.06),
        Key::CurrentPlato => (-2.0, 15.0),
        Key::FinalGravity => (0.985, 1.03),
        Key::FinalPlato => (-3.0, 6.0),
        Key::Dose => (0.0, 30.0),
        Key::Mass => (0.02, 1.0),
        Key::Residual => (0.5, 4.0),
        Key::FermenterGauge => (0.0, 1.5e5),
        Key::Crash => (273.15, 278.15),
        Key::FermenterHeadspace => (2.0, 40.0),
        Key::SyrupWater => (1.0e-4, 2.0e-3),
        Key::Dissolving => (273.15, 373.15),
        Key::WortOriginalGravity => (1.04, 1.09),
        Key::WortOriginalPlato => (9.0, 20.0),
        Key::WortCurrentGravity => (1.02, 1.04),
        Key::WortCurrentPlato => (4.0, 9.0),
        Key::WortCo2 => (0.0, 2.0),
        Key::LimitAttenuation => (55.0, 75.0),
        Key::ExpectedAttenuation => (65.0, 90.0),
        Key::Time => (0.0, 4.0e6),
        Key::Age => (0.0, 2.0e7),
        Key::Cells => (1.0e11, 8.0e12),
        Key::Progress => (1.0, 99.0),
        Key::Room => (281.15, 303.15),
        Key::SugarGravity => (1.2, 1.44),
        Key::Cylinder => (250.0, 304.0),
        Key::RelativeViscosity => (1.0, 2.0),
        Key::Co2Share => (20.0, 100.0),
        Key::HeadspaceAir => (0.0, 1.1e5),
        Key::KegRating => (1.0e5, 1.0e6),
        Key::Start => (0.5, 4.0),
        Key::Depth => (0.0, 3.0),
        Key::Wetting => (0.0, 1.0e5),
        Key::Margin => (0.0, 3.0e4),
        Key::PurgeGauge => (3.0e4, 4.0e5),
        Key::PushGauge => (2.0e4, 1.5e5),
        Key::Cycles => (0.0, 15.0),
        Key::Sweeps => (0.0, 12.0),
        Key::Oxygen => (1.0e-5, 2.0e-2),
        Key::StartOxygen => (1.0e-3, 0.21),
        Key::GasOxygen => (0.0, 1.0e-4),
        Key::Pocket => (0.0, 3.0e-4),
        Key::Keg => (5.0e-3, 0.06),
        Key::PurgeTemperature => (278.15, 303.15),
        Key::DissolvedOxygen => (0.0, 5.0e-4),
        Key::GasLoss => (0.0, 60.0),
        Key::Charge => (0.5, 12.0),
        Key::FillingRatio => (0.6, 0.8),
        Key::Gross => (3.0, 20.0),
        Key::Tare => (2.0, 12.0),
        Key::Gas => (0.05, 0.5),
        Key::Released => (0.05, 12.0),
        Key::RoomVolume => (5.0, 120.0),
        Key::AirChanges => (1.0e-5, 2.0e-3),
        Key::Leak => (1.0e-7, 5.0e-5),
        Key::BurstGauge => (1.0e5, 3.0e5),
        Key::KegDiameter => (0.15, 0.4),
        Key::Kla => (1.0e-6, 1.0e-2),
        Key::Supply => (5.0e-7, 3.0e-5),
        Key::Bore => (3.0e-3, 0.014),
        Key::Line => (0.3, 25.0),
        Key::Rise => (-1.0, 4.0),
        Key::Fittings => (0.0, 10.0),
        Key::Flow => (1.0e-5, 8.0e-5),
        Key::PourSize => (2.0e-4, 1.0e-3),
        Key::Pour => (5.0, 30.0),
        Key::Resistance => (1.0e3, 8.0e4),
        Key::Hardware => (0.0, 3.0e4),
        Key::FillLoss => (0.0, 1.5),
        Key::OtherVolume => (1.0e-3, 0.5),
        Key::OtherCarbonation => (0.0, 8.0),
        Key::SolubilityFactor | Key::ResidualFactor | Key::YieldFactor => (0.9, 1.1),
        Key::KegPrice | Key::BottlingPrice => (0.0, 500.0),
        Key::BottlePrice | Key::CapPrice => (0.0, 1.0),
        Key::SugarPrice | Key::GasPrice => (0.5, 20.0),
        Key::DrinkPrice => (0.0, 5000.0),
        Key::Batches | Key::Uses => (1.0, 40.0),
        Key::Bottle => (2.5e-4, 1.0e-3),
        Key::BottleLoss | Key::KegLoss => (0.0, 10.0),
        _ => (low, high),
    };
    name.unit.map_or((low, high), |unit| (unit.from_si(low), unit.from_si(high)))
}

const BY_HAND: &[(&str, &str)] = &[
    ("dissolved_co2", "gauge_psi=12;temperature_f=38;altitude_m=0"),
    ("dissolved_co2", "abs_bar=3;temperature_c=20;beverage=water"),
    ("dissolved_co2", "abs_kpa=250;temperature_c=6;beverage=wine;abv_percent=12.5;extract_g_per_l=10"),
    ("dissolved_co2", "gauge_bar=0.9;temperature_c=4;ambient_kpa=98.2;basis=physical"),
    ("dissolved_co2", "gauge_bar=0.9;temperature_c=4;altitude_ft=5280;sea_level_kpa=102.1;model=water_core"),
    ("dissolved_co2", "abs_psi=-5;temperature_c=4"),
    ("dissolved_co2", "gauge_psi=-20;temperature_c=4;altitude_m=0"),
    ("dissolved_co2", "gauge_psi=12;temperature_f=38"),
    ("dissolved_co2", "gauge_psi=12;abs_psi=26;temperature_f=38;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_f=38;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_c=30;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_c=4;altitude_m=0;beverage=cider"),
    ("keg_pressure", "co2_g_per_l=9.5;temperature_c=8;ambient_kpa=101.3;beverage=soft_drink"),
    ("keg_pressure", "volumes=0.5;temperature_c=4;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_c=4"),
    ("keg_pressure", "volumes=2.5;temperature_c=4;altitude_m=0;ambient_kpa=100"),
    ("keg_pressure", "volumes=2.5;temperature_c=4;ambient_kpa=100;sea_level_kpa=101"),
    ("keg_pressure", "volumes=2.5;temperature_c=4;sea_level_kpa=101"),
    ("keg_pressure", "volumes=2.5;tempertaure_c=4;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_c=4;temperature_f=39;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_c=4;altitude_m=0;packaged_l=19"),
    ("keg_pressure", "volumes=two;temperature_c=4;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_c=4;altitude_m=0;model=guess"),
    ("keg_pressure", "temperature_c=4;altitude_m=0"),
    ("keg_pressure", "volumes=2.5;temperature_f=38;altitude_m=0;co2_percent=70"),
    ("keg_pressure", "volumes=2.4;temperature_c=4;altitude_m=0;air_abs_kpa=101.325"),
    ("keg_pressure", "volumes=0.3;temperature_c=4;altitude_m=0;co2_percent=75"),
    ("keg_pressure", "volumes=2.5;temperature_f=38;altitude_m=0;co2_percent=0"),
    ("dissolved_co2", "gauge_psi=40;temperature_f=38;altitude_m=0;co2_percent=25"),
    ("dissolved_co2", "abs_bar=3;temperature_c=4;co2_percent=60;air_abs_kpa=20;basis=physical"),
    ("dissolved_co2", "gauge_psi=0;temperature_f=38;altitude_m=0;air_abs_bar=2"),
    ("dissolved_co2", "gauge_psi=40;temperature_f=38;altitude_m=0;co2_percent=101"),
    ("gas_blend", "volumes=2.5;temperature_f=38;gauge_psi=22;altitude_m=0"),
    ("gas_blend", "volumes=1.2;temperature_c=4;gauge_bar=2.5;altitude_ft=5280;basis=physical"),
    ("gas_blend", "volumes=2.5;temperature_f=38;gauge_psi=8;altitude_m=0"),
    ("gas_blend", "volumes=0.02;temperature_f=38;gauge_psi=40;altitude_m=0"),
    ("gas_blend", "volumes=2.5;temperature_f=38;gauge_psi=22"),
    ("gas_blend", "volumes=2.5;temperature_f=38;altitude_m=0"),
    ("keg_temperature", "volumes=2.5;gauge_psi=12;altitude_m=0"),
    ("keg_temperature", "volumes=2.5;gauge_psi=22;altitude_m=0;co2_percent=70"),
    ("keg_temperature", "volumes=2.5;gauge_bar=1;altitude_m=1500;beverage=soft_drink"),
    ("keg_temperature", "volumes=5;gauge_psi=2;altitude_m=0"),
    ("keg_temperature", "volumes=0.5;gauge_psi=40;altitude_m=0"),
    ("keg_temperature", "volumes=2.5;altitude_m=0"),
    ("warmed_keg", "volumes=2.5;filling_c=3.3;temperature_c=25;headspace_percent=3.5;altitude_m=0"),
    (
        "warmed_keg",
        "volumes=2.5;filling_c=3.3;temperature_c=38;headspace_percent=50;altitude_m=0;keg_rating_gauge_psi=130;basis=handbook",
    ),
    ("warmed_keg", "volumes=2.41;filling_c=4;temperature_c=22;headspace_percent=5;altitude_m=0;air_abs_kpa=101.3"),
    ("warmed_keg", "volumes=2.5;filling_c=3.3;temperature_c=40;altitude_m=0;keg_rating_gauge_bar=2"),
    ("warmed_keg", "volumes=2.5;filling_c=3.3;temperature_c=40;headspace_percent=0;altitude_m=0"),
    ("warmed_keg", "volumes=2.5;filling_c=3.3;temperature_c=10;altitude_m=0;fermentable_g_per_l=4"),
    ("warmed_keg", "volumes=2.5;temperature_c=10;altitude_m=0"),
    ("warmed_keg", "volumes=2.5;filling_c=3.3;temperature_c=10;altitude_m=0;beverage=cider"),
    ("spunding", "volumes=2.5;temperature_c=12;final_sg=1.010;fermenter_headspace_percent=10;altitude_m=0"),
    (
        "spunding",
        "volumes=2.5;temperature_c=20;final_plato=2.5;fermenter_headspace_percent=25;start_volumes=0.84;altitude_m=0;keg_rating_gauge_psi=15",
    ),
    (
        "spunding",
        "volumes=2.6;temperature_f=64;final_sg=1.012;fermenter_headspace_percent=5;altitude_m=900;basis=physical",
    ),
    ("spunding", "volumes=0.5;temperature_c=12;final_sg=1.010;fermenter_headspace_percent=10;altitude_m=0"),
    ("spunding", "volumes=2.5;temperature_c=50;final_sg=1.010;fermenter_headspace_percent=10;altitude_m=0"),
    ("spunding", "volumes=10;temperature_c=30;final_sg=1.010;fermenter_headspace_percent=1000;altitude_m=0"),
    ("spunding", "volumes=2.5;temperature_c=12;final_sg=1.010;altitude_m=0"),
    (
        "closed_fermentation",
        "current_sg=1.014;final_sg=1.010;temperature_c=18;fermenter_headspace_percent=10;altitude_m=0;keg_rating_gauge_bar=2",
    ),
    (
        "closed_fermentation",
        "current_plato=4;final_sg=1.010;temperature_c=18;fermenter_headspace_percent=10;altitude_m=0;start_volumes=0.9;basis=handbook",
    ),
    (
        "closed_fermentation",
        "current_sg=1.010;final_sg=1.014;temperature_c=18;fermenter_headspace_percent=10;altitude_m=0",
    ),
    (
        "closed_fermentation",
        "current_sg=1.050;final_sg=1.010;temperature_c=18;fermenter_headspace_percent=10;altitude_m=0",
    ),
    (
        "closed_fermentation",
        "current_sg=1.014;final_sg=1.010;temperature_c=18;fermenter_headspace_percent=0;altitude_m=0",
    ),
    ("stone_pressure", "volumes=2.5;temperature_f=38;depth_m=0.5;wetting_psi=4;margin_psi=1;altitude_m=0"),
    ("stone_pressure", "volumes=2.5;temperature_f=38;depth_ft=6;wetting_psi=0;sg=1.012;altitude_m=0;basis=physical"),
    ("stone_pressure", "volumes=0.5;temperature_f=38;depth_m=0.5;wetting_psi=4;altitude_m=0"),
    ("stone_pressure", "volumes=2.5;temperature_f=38;depth_m=0.5;altitude_m=0"),
    ("carbonation_chart", "chart=us;altitude_m=0"),
    ("carbonation_chart", "ambient_kpa=95;co2_percent=70;beverage=soft_drink"),
    ("carbonation_chart", "chart=imperial;altitude_m=0"),
    ("carbonation_chart", ""),
    ("keg_ratings", ""),
    ("residual_co2", "warmest_c=20;altitude_m=0"),
    ("residual_co2", "warmest_f=59;altitude_m=0"),
    ("residual_co2", "warmest_c=33;altitude_m=0"),
    ("residual_co2", "warmest_c=46;altitude_m=0"),
    ("residual_co2", "warmest_c=20;altitude_m=1500;basis=physical;abv_percent=5;extract_g_per_l=35"),
    ("residual_co2", "warmest_c=20"),
    ("priming_sugar", "volumes=2.5;warmest_f=68;packaged_us_gal=5;altitude_m=0;sugar=dextrose_monohydrate"),
    ("priming_sugar", "volumes=2.5;warmest_f=68;packaged_us_gal=5;altitude_m=0;sugar=dextrose_anhydrous"),
    ("priming_sugar", "volumes=2.5;warmest_f=68;packaged_us_gal=5;altitude_m=0;sugar=sucrose"),
    ("priming_sugar", "volumes=2.4;warmest_c=20.5;packaged_l=19.2;altitude_m=240;sugar=honey;basis=physical"),
    ("priming_sugar", "volumes=0.5;warmest_c=20;packaged_l=20;altitude_m=0"),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;sugar=dextrose"),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;sugar=erythritol"),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;beverage=cider"),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;beverage=cider;yeast=none"),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;beverage=cider;fermentable_g_per_l=2"),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20"),
    ("package_pressure", "volumes=2.4;temperature_c=30;headspace_percent=4;altitude_m=240"),
    ("package_pressure", "volumes=2.4;temperature_c=60;headspace_percent=4;altitude_m=240"),
    ("package_pressure", "volumes=2.4;temperature_c=20;altitude_m=0;fermentable_g_per_l=10"),
    ("package_pressure", "volumes=2.4;temperature_c=40;headspace_percent=0;altitude_m=0"),
    ("package_pressure", "volumes=2.4;temperature_c=20;headspace_percent=4"),
    ("package_carbonation", "gauge_bar=1.8;temperature_c=20;headspace_percent=4;altitude_m=240"),
    ("package_carbonation", "gauge_bar=1.8;temperature_c=20;headspace_percent=4"),
    ("package_carbonation", "gauge_bar=-1.01;temperature_c=20;headspace_percent=4;altitude_m=0"),
    ("package_carbonation", "gauge_bar=1.8;temperature_c=60;headspace_percent=0.5;altitude_m=0"),
    ("dissolved_co2", "gauge_psi=12;temperature_f=38;altitude_m=0;model=chart_quadratic"),
    ("dissolved_co2", "abs_bar=29;temperature_c=0;model=chart_quadratic"),
    ("dissolved_co2", "abs_bar=2;temperature_c=10;beverage=water;model=iapws_water"),
    ("dissolved_co2", "abs_bar=2;temperature_c=10;beverage=water;model=carroll_water"),
    ("dissolved_co2", "abs_bar=2;temperature_c=10;beverage=wine;model=chart_fit"),
    ("keg_pressure", "co2_g_per_l=5.5;temperature_c=7;altitude_m=0;model=european"),
    ("uptake_rate", "temperature_f=38"),
    ("uptake_rate", "temperature_c=4;packaged_l=9.5;method=on_side"),
    ("uptake_rate", "temperature_c=30;method=rocked"),
    ("uptake_rate", "temperature_c=4;kla_per_h=0.02"),
    ("uptake_rate", "temperature_c=4;kla_per_h=0.02;method=stone"),
    ("uptake_rate", "temperature_c=2;packaged_l=5000;keg_diameter_m=1.5"),
    ("carbonation_time", "start_volumes=0.85;volumes=2.4;gauge_psi=11.2;temperature_f=38;altitude_m=0"),
    ("carbonation_time", "start_volumes=3;volumes=2.6;gauge_psi=11.2;temperature_f=38;altitude_m=0"),
    ("carbonation_time", "start_volumes=0.85;volumes=2.6;gauge_psi=11.2;temperature_f=38;altitude_m=0"),
    (
        "carbonation_time",
        "start_volumes=0.85;volumes=2.4;gauge_psi=11.2;temperature_f=38;altitude_m=0;supply_g_per_h=5",
    ),
    ("carbonation_time", "start_volumes=0.85;volumes=2.4;gauge_psi=14;temperature_f=38;altitude_m=0;method=stone"),
    ("carbonation_time", "volumes=2.4;gauge_psi=11.2;temperature_f=38;altitude_m=0"),
    ("carbonation_progress", "start_volumes=0.85;time_d=7;gauge_psi=11.2;temperature_f=38;altitude_m=0"),
    ("carbonation_progress", "start_volumes=3.5;time_h=12;gauge_psi=5;temperature_f=38;altitude_m=1600"),
    (
        "carbonation_progress",
        "start_volumes=0.85;time_h=6;gauge_psi=40;temperature_f=38;altitude_m=0;supply_oz_per_h=0.1",
    ),
    ("carbonation_progress", "start_volumes=0.85;time_d=7;temperature_f=38;altitude_m=0"),
    ("burst_time", "start_volumes=0.85;volumes=2.5;burst_gauge_psi=30;temperature_f=38;altitude_m=0"),
    ("burst_time", "start_volumes=0.85;volumes=2.5;burst_gauge_psi=40;temperature_f=38;altitude_m=0;method=dip_tube"),
    ("burst_time", "start_volumes=0.85;volumes=2.5;burst_gauge_psi=11;temperature_f=38;altitude_m=0"),
    ("burst_time", "start_volumes=0.5;volumes=0.6;burst_gauge_psi=30;temperature_f=38;altitude_m=0"),
    ("carbonating_methods", ""),
    ("carbonation_curve", "start_volumes=0.85;gauge_psi=11.2;temperature_f=38;altitude_m=0"),
    ("carbonation_curve", "start_volumes=0.85;gauge_psi=11.2;temperature_f=38"),
    (
        "carbonation_schedule",
        r#"start_volumes=0.85;altitude_m=0;schedule=[{"gauge_psi":30,"temperature_f":38,"time_h":29},{"gauge_psi":11.2,"temperature_f":38,"time_d":5}]"#,
    ),
    ("carbonation_schedule", "start_volumes=0.85;altitude_m=0"),
    (
        "uptake_fit",
        r#"gauge_psi=11.2;temperature_f=38;altitude_m=0;uptake_readings=[{"time_d":0,"volumes":0.87},{"time_d":2,"volumes":1.68},{"time_d":4,"volumes":2.1},{"time_d":6,"volumes":2.31}]"#,
    ),
    (
        "uptake_fit",
        r#"gauge_psi=11.2;temperature_f=38;altitude_m=0;uptake_readings=[{"time_d":1,"volumes":1.35},{"time_d":2,"volumes":1.68}]"#,
    ),
    ("attenuation", "original_sg=1.048;current_sg=1.010"),
    ("attenuation", "original_plato=14.08;current_plato=3.11;real_extract_model=quotient"),
    ("attenuation", "original_plato=12;current_sg=1.06;extract_scale=lincoln"),
    ("attenuation", "original_sg=1.048;original_plato=12;current_sg=1.010"),
    ("gravity_co2", "current_sg=1.013;final_sg=1.012"),
    ("gravity_co2", "current_sg=1.010;final_plato=3"),
    ("added_co2", "addition=lactose;dose_g_per_l=25"),
    ("added_co2", "addition=maltodextrin;dose_g_per_l=20"),
    ("added_co2", "addition=erythritol;dose_g_per_l=20"),
    ("added_co2", "addition=sweetener_packets;dose_g_per_l=10"),
    ("added_co2", "addition=glucose;dose_g_per_l=10"),
    ("added_co2", "addition=custom;dose_g_per_l=10"),
    ("added_co2", "addition=custom;sugar_sg=1.33;sugar_fermentable_percent=95;sugar_kind=hexose;dose_g_per_l=8"),
    ("added_co2", "dose_g_per_l=10"),
    (
        "priming_sugar",
        "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;sugar=custom;sugar_water_percent=20;sugar_fermentable_percent=95;sugar_kind=disaccharide",
    ),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;sugar_water_percent=20"),
    ("residual_co2", "warmest_c=20;altitude_m=0;fermenter_gauge_bar=0.5"),
    ("residual_co2", "warmest_c=20;altitude_m=0;cold_crash=closed;crash_c=4;fermenter_headspace_percent=10.5"),
    ("residual_co2", "warmest_c=20;altitude_m=0;cold_crash=co2_supplied;crash_c=4"),
    ("residual_co2", "warmest_c=4;altitude_m=0;cold_crash=co2_supplied;crash_c=20"),
    ("residual_co2", "warmest_c=20;altitude_m=0;cold_crash=closed;crash_c=4"),
    ("residual_co2", "warmest_c=20;altitude_m=0;fermenter_headspace_percent=10"),
    ("priming_sugar", "volumes=2.5;residual_volumes=0.9;packaged_l=20;altitude_m=0"),
    ("priming_sugar", "volumes=2.5;warmest_c=20;packaged_l=20;altitude_m=0;basis=physical;syrup_water_ml=500"),
    ("priming_sugar", "volumes=2.5;packaged_l=20;altitude_m=0"),
    ("primed_carbonation", "mass_g=120;warmest_f=68;packaged_us_gal=5;altitude_m=0"),
    ("primed_carbonation", "mass_kg=20;warmest_f=68;packaged_us_gal=5;altitude_m=0"),
    (
        "priming_wort",
        "co2_g_per_l=5;residual_co2_g_per_l=1.7;packaged_l=20;wort_original_plato=12;limit_attenuation_percent=65;altitude_m=0",
    ),
    (
        "priming_wort",
        "volumes=2.6;warmest_c=12;packaged_l=20;wort_original_sg=1.050;wort_current_sg=1.030;limit_attenuation_percent=66;altitude_m=0",
    ),
    (
        "priming_wort",
        "volumes=2.6;warmest_c=12;packaged_l=20;wort_original_sg=1.050;wort_current_sg=1.005;limit_attenuation_percent=66;altitude_m=0",
    ),
    (
        "priming_wort",
        "volumes=9;warmest_c=12;packaged_l=20;wort_original_sg=1.012;limit_attenuation_percent=66;altitude_m=0",
    ),
    ("priming_syrup", "mass_g=116;syrup_water_ml=350"),
    ("priming_syrup", "mass_g=116;syrup_water_ml=30"),
    ("priming_syrup", "mass_g=116;syrup_water_ml=50;dissolving_c=80"),
    ("priming_syrup", "mass_g=116;sugar=honey"),
    ("conditioning", "room_c=20;time_d=14"),
    ("conditioning", "room_c=2;time_d=14"),
    ("conditioning", "room_c=12;time_d=40;abv_percent=11;beverage=wine"),
    ("conditioning_time", "room_c=20"),
    ("conditioning_time", "room_c=2"),
    ("conditioning_time", "room_c=20;progress_percent=100"),
    ("reyeasting", "packaged_l=19.2"),
    ("final_gravity", "original_sg=1.048;expected_attenuation_percent=78"),
    ("final_gravity", "original_sg=1.048;expected_attenuation_percent=124"),
    (
        "fill_list",
        "packaged_l=19.2;bottles=[{\"bottle_ml\":500,\"count\":30,\"capacity_ml\":521},{\"bottle_ml\":330,\"count\":24}]",
    ),
    (
        "fill_list",
        "packaged_l=19.2;fill_order=fewest_bottles;bottles=[{\"bottle_ml\":500,\"count\":30},{\"bottle_ml\":330,\"count\":24}]",
    ),
    ("fill_list", "packaged_l=19.2;bottles=[{\"bottle_ml\":500,\"count\":12}]"),
    ("fill_list", "packaged_l=19.2"),
    ("fill_list", "packaged_l=19.2;bottles=[{\"bottle_ml\":500,\"count\":12},{\"bottle_ml\":500,\"cuont\":12}]"),
    ("fill_list", "packaged_l=19.2;bottles=[{\"bottle_ml\":500}]"),
    ("fill_list", "packaged_l=19.2;bottles=[500, 330]"),
    ("fill_list", "packaged_l=19.2;history=[{\"temperature_c\":20,\"time_d\":3}]"),
    ("bottle_doses", "volumes=2.5;warmest_c=20;altitude_m=0;tablet_g=3"),
    ("bottle_doses", "volumes=2.5;warmest_c=20;altitude_m=0;bottles=[{\"bottle_ml\":500,\"count\":12}]"),
    ("bottle_pressures", "volumes=2.4;altitude_m=240"),
    ("bottle_pressures", "volumes=2.4;altitude_m=240;headspace_percent=0.5"),
    ("bottle_pressures", "volumes=2.4;altitude_m=240;bottle_class=light_one_way"),
    ("bottle_pressures", "volumes=2.4;altitude_m=240;rating_gauge_bar=3.5"),
    ("bottle_pressures", "volumes=2.4;altitude_m=240;rating_gauge_bar=-3.5"),
    ("bottle_verdicts", "volumes=2.4;altitude_m=240"),
    ("bottle_verdicts", "volumes=4.2;altitude_m=240"),
    ("pressure_parts", "volumes=2.5;temperature_f=68;filling_f=38;headspace_percent=1;altitude_m=0"),
    ("conditioning_days", ""),
    ("conditioning_days", "history=[{\"temperature_c\":21,\"time_d\":5},{\"temperature_c\":14,\"time_d\":30}]"),
    ("drink_properties", "temperature_c=4;sg=1.010"),
    ("drink_properties", "temperature_c=4;beverage=soft_drink"),
    ("line_flow", "gauge_psi=11;line_ft=10;tube=vinyl_3_16_in;rise_ft=2;temperature_f=38"),
    ("line_flow", "gauge_bar=0.8;line_m=10;bore_mm=9.5;temperature_c=4;beverage=cider"),
    ("line_flow", "gauge_psi=1;line_ft=10;tube=vinyl_3_16_in;rise_ft=5;temperature_f=38"),
    ("line_flow", "gauge_psi=11;line_ft=0;tube=vinyl_3_16_in;temperature_f=38;fittings_multiplier=0"),
    ("line_flow", "gauge_psi=11;line_ft=10;temperature_f=38"),
    ("line_flow", "gauge_psi=11;line_ft=10;tube=vinyl_3_16_in;bore_mm=5;temperature_f=38"),
    ("line_length", "gauge_psi=11;pour_seconds=12;tube=vinyl_3_16_in;rise_ft=2;temperature_f=38"),
    (
        "line_length",
        "gauge_psi=11;flow_us_fl_oz_per_s=2;tube=vinyl_3_16_in;rise_ft=2;temperature_f=38;glass_us_fl_oz=20",
    ),
    ("line_length", "gauge_psi=11;pour_seconds=2;tube=vinyl_3_16_in;temperature_f=38"),
    ("line_length", "gauge_psi=11;pour_seconds=12;flow_us_fl_oz_per_s=2;tube=vinyl_3_16_in;temperature_f=38"),
    ("line_pressure", "line_m=3;flow_l_per_min=3;tube=metric_7_mm;rise_m=0.5;temperature_c=4"),
    ("line_pressure", "line_m=500;flow_l_per_min=60;bore_mm=4;temperature_c=4"),
    ("handbook_line", "gauge_psi=11;tube=vinyl_3_16_in;rise_ft=2"),
    ("handbook_line", "gauge_psi=14.5;resistance_psi_per_ft=3;rise_ft=5;hardware_psi=3.5"),
    ("handbook_line", "gauge_psi=2;tube=vinyl_3_16_in;rise_ft=5"),
    ("handbook_line", "gauge_psi=11;resistance_psi_per_ft=0"),
    ("handbook_line", "gauge_psi=11;tube=vinyl_3_16_in;resistance_psi_per_ft=3"),
    ("handbook_pressure", "line_ft=20;tube=vinyl_1_4_in"),
    ("handbook_pressure", "line_ft=1600;resistance_psi_per_ft=3"),
    ("filling_carbonation", "volumes=2.4;fill_method=hand_counter_pressure"),
    ("filling_carbonation", "volumes=2.5;fill_method=tap_tube"),
    ("filling_carbonation", "volumes=2.5;fill_loss_volumes=0.2"),
    ("filling_carbonation", "volumes=2.5"),
    ("filling_carbonation", "co2_g_per_l=29;fill_loss_co2_g_per_l=2"),
    ("blend", "packaged_l=15;volumes=2.8;other_l=5;other_volumes=0.8"),
    ("blend", "packaged_l=15;volumes=2.8;other_l=5;other_volumes=0.8;temperature_c=4;gauge_bar=0.6;altitude_m=0"),
    ("blend", "packaged_l=15;volumes=2.8;other_l=5;other_volumes=0.8;temperature_c=4"),
    ("blend", "packaged_l=15;volumes=2.8;other_l=5;other_volumes=0.8;gauge_bar=0.6"),
    ("blend", "packaged_l=15;volumes=2.8;other_l=5"),
    ("line_balance", "gauge_psi=11;tube=vinyl_3_16_in;rise_ft=2;temperature_f=38;pour_seconds=10"),
    ("line_balance", "gauge_psi=11;bore_mm=4;rise_ft=2;temperature_f=38"),
    ("line_balance", "gauge_psi=1;tube=vinyl_3_16_in;rise_ft=5;temperature_f=38"),
    ("line_balance", "gauge_psi=11;rise_ft=2;temperature_f=38"),
    ("tubes", ""),
    ("filling_losses", ""),
    ("co2_saturation", "cylinder_c=20"),
    ("co2_saturation", "cylinder_c=31"),
    ("purge_oxygen", "purge_gauge_psi=30;cycles_count=5;altitude_m=0"),
    ("purge_oxygen", "purge_gauge_psi=30;cycles_count=3;ambient_psi=14.7;gas_oxygen_ppm=0;keg_l=50;temperature_c=4"),
    ("purge_oxygen", "purge_gauge_psi=60;cycles_count=3;altitude_m=0;keg_rating_gauge_psi=35"),
    ("purge_oxygen", "purge_gauge_psi=30;altitude_m=0"),
    ("purge_oxygen", "purge_gauge_bar=29.9;cycles_count=1;altitude_m=0"),
    ("purge_cycles", "purge_gauge_psi=30;oxygen_ppm=1000;altitude_m=0"),
    ("purge_cycles", "purge_gauge_psi=30;oxygen_ppm=1;ambient_psi=14.7;start_oxygen_vol_percent=21;gas_oxygen_ppm=0"),
    ("purge_cycles", "purge_gauge_psi=30;oxygen_ppm=20;altitude_m=0"),
    ("purge_cycles", "purge_gauge_psi=30;oxygen_vol_percent=22;altitude_m=0"),
    ("sweep_oxygen", "sweeps_count=5;altitude_m=0"),
    ("sweep_oxygen", "sweeps_count=0.5;altitude_m=1600;keg_us_gal=15.5"),
    ("push_oxygen", "pocket_ml=50;push_gauge_psi=10;altitude_m=0"),
    ("push_oxygen", "pocket_l=20;push_gauge_psi=10;altitude_m=0"),
    (
        "oxygen_pickup",
        "oxygen_ppm=1000;headspace_percent=3.5;temperature_c=4;altitude_m=0;volumes=2.5;start_volumes=0.84",
    ),
    ("oxygen_pickup", "oxygen_vol_percent=20.95;keg_l=19.93;packaged_l=18.93;temperature_c=4;altitude_m=0"),
    ("oxygen_pickup", "oxygen_ppm=1000;keg_l=19.6;temperature_c=4;altitude_m=0"),
    ("oxygen_pickup", "oxygen_ppm=1000;keg_l=19.6;packaged_l=20;temperature_c=4;altitude_m=0"),
    ("oxygen_pickup", "oxygen_ppm=1000;headspace_percent=4;temperature_c=4;altitude_m=0;volumes=1;start_volumes=2"),
    ("total_package_oxygen", "dissolved_oxygen_ppb=40;headspace_percent=5;temperature_c=20"),
    ("total_package_oxygen", "dissolved_oxygen_ppb=40;headspace_percent=5;temperature_c=45"),
    ("gas_budget", "packaged_us_gal=5;volumes=2.5;start_volumes=0.84;temperature_f=38;gauge_psi=11;altitude_m=0"),
    (
        "gas_budget",
        "packaged_l=18.93;keg_l=19.6;volumes=2.5;start_volumes=0.84;temperature_c=3.3;gauge_psi=11;altitude_m=0;purge=empty;purge_gauge_psi=15;cycles_count=5;gas_loss_percent=5;cylinder_size=cylinder_10_lb",
    ),
    (
        "gas_budget",
        "packaged_l=18.93;volumes=2.5;temperature_c=3.3;gauge_psi=11;altitude_m=0;purge=push;push_gauge_psi=5;charge_kg=2",
    ),
    ("gas_budget", "packaged_l=18.93;volumes=2.5;temperature_c=3.3;gauge_psi=11;altitude_m=0;purge=headspace"),
    ("gas_budget", "packaged_l=18.93;volumes=2.5;temperature_c=3.3;gauge_psi=11;altitude_m=0;cycles_count=5"),
    ("gas_budget", "packaged_l=18.93;volumes=0.5;start_volumes=0.84;temperature_c=3.3;gauge_psi=11;altitude_m=0"),
    ("gas_budget", "packaged_l=18.93;keg_l=18;volumes=2.5;temperature_c=3.3;gauge_psi=11;altitude_m=0"),
    ("cylinder_left", "cylinder_c=20;cylinder_size=cylinder_5_lb;altitude_m=0"),
    ("cylinder_left", "cylinder_f=84;filling_ratio_g_per_g=0.8;altitude_m=0"),
    ("cylinder_left", "cylinder_c=20;cylinder_size=cartridge_8_g;altitude_m=0"),
    ("cylinder_left", "cylinder_c=35;cylinder_size=cylinder_5_lb;altitude_m=0"),
    ("cylinder_contents", "gross_lb=10.2;tare_lb=7.7;cylinder_size=cylinder_5_lb"),
    ("cylinder_contents", "gross_kg=3.9;tare_kg=4;charge_kg=2"),
    ("cylinder_contents", "gross_kg=7;tare_kg=4;charge_kg=2;gas_g=130"),
    ("cylinder_contents", "gross_kg=5;tare_kg=4"),
    ("room_co2", "released_lb=5;room_m3=30;altitude_m=0;air_changes_per_h=0.5;time_h=2"),
    ("room_co2", "released_g=735;room_ft3=1000;altitude_m=0"),
    ("room_co2", "released_kg=10;room_m3=9;altitude_m=0;air_changes_per_h=0"),
    ("room_co2", "released_kg=10;altitude_m=0"),
    ("room_leak", "leak_g_per_h=94.5;room_m3=30;altitude_m=0;air_changes_per_h=0.5"),
    ("room_leak", "leak_oz_per_h=1;room_ft3=500;altitude_m=0"),
    ("oxygen_limits", ""),
    ("filling_densities", ""),
    ("exposure_limits", ""),
    ("solubility_models", "volumes=2.5;temperature_f=38;altitude_m=0"),
    ("solubility_models", "abs_bar=2;temperature_c=20;beverage=wine"),
    ("solubility_models", "gauge_bar=2;temperature_c=20"),
    ("solubility_models", "gauge_bar=2;volumes=2;temperature_c=20;altitude_m=0"),
    ("fermentables", ""),
    ("sweeteners", ""),
    ("carbonation_ranges", ""),
    ("bottle_sizes", ""),
    ("bottle_classes", ""),
    ("keg_sizes", ""),
    ("cylinder_sizes", ""),
    ("units", ""),
    ("fermentables", "volumes=2"),
    ("gravity", "sg=1.048"),
    ("gravity", "sg=1.048;extract_scale=lincoln"),
    ("gravity", "plato=12;extract_scale=quick"),
    ("gravity", "plato=12"),
    ("gravity", "sg=1.5"),
    ("gravity", "sg=1.048;plato=12"),
    ("gravity", ""),
    ("packaging_cost", "packaged_l=19;bottle_money=0.6;cap_money=0.04;outfit_money=320;gas_g=140;gas_money_per_kg=4"),
    ("packaging_cost", "packaged_us_gal=5;bottle_ml=330;bottle_money=0.5;drink_money_per_us_gal=6;batches_count=24"),
    ("packaging_cost", "packaged_l=19;bottle_loss_percent=100"),
    ("packaging_cost", "bottle_money=0.5"),
    ("break_even", "packaged_l=19;bottle_money=0.6;cap_money=0.04;mass_g=116;sugar_money_per_kg=2;outfit_money=320"),
    ("break_even", "packaged_l=19;outfit_money=0"),
    ("break_even", "packaged_l=19;bottle_money=0.1;outfit_money=2000"),
    // Claims: explained, agreeing, by several of one program, without an answer, and malformed.
    (
        "crosscheck",
        r#"claims=[{"quantity":"priming_sugar","value":"124.6","unit":"g","volumes":2.5,"warmest_f":68,"packaged_us_gal":5,"sugar":"dextrose_monohydrate","altitude_m":0}];most_readings=3"#,
    ),
    (
        "crosscheck",
        r#"claims=[{"label":"sugar","program":"A","quantity":"priming_sugar","value":"3.20","unit":"oz","volumes":2.2,"warmest_f":64,"packaged_us_gal":4.5,"altitude_m":1600},{"label":"keg","program":"A","quantity":"keg_pressure","value":"11.3","unit":"psi","volumes":2.5,"temperature_f":38,"altitude_m":1600},{"program":"A","quantity":"alcohol","value":4.99,"unit":"abv_percent","original_sg":1.048,"current_sg":1.01}]"#,
    ),
    (
        "crosscheck",
        r#"claims=[{"quantity":"priming_sugar","value":"400","unit":"g","volumes":2.5,"warmest_c":20,"packaged_l":19,"altitude_m":0},{"quantity":"package_pressure","value":"2.0","unit":"bar","volumes":2.4,"temperature_c":30,"headspace_percent":4,"altitude_m":240},{"quantity":"bottle_count","value":"54","unit":"count","packaged_us_gal":5,"bottle_us_fl_oz":12},{"quantity":"line_length","value":"3.7","unit":"ft","gauge_psi":11,"tube":"vinyl_3_16_in","rise_ft":2},{"quantity":"gas_used","value":"125","unit":"g","packaged_us_gal":5,"volumes":2.5,"start_volumes":0.84,"temperature_f":38,"gauge_psi":11,"altitude_m":0},{"quantity":"purge_cycles","value":"4.808","unit":"count","purge_gauge_psi":30,"oxygen_ppm":1000,"altitude_m":0},{"quantity":"residual_co2","value":"0.88","unit":"volumes","warmest_c":20,"altitude_m":0},{"quantity":"dissolved_co2","value":"2.60","unit":"volumes","gauge_psi":12,"temperature_f":38,"altitude_m":0},{"quantity":"keg_pressure","value":"12","unit":"psi","volumes":2.5,"temperature_f":38}];most_readings=2"#,
    ),
    ("crosscheck", r#"claims=[{"quantity":"priming_suger","value":"124.6","unit":"g"}]"#),
    ("crosscheck", r#"claims=[{"quantity":"priming_sugar","value":"12,5","unit":"g"}]"#),
    ("crosscheck", r#"claims=[{"quantity":"priming_sugar","value":"12.5","unit":"psi"}]"#),
    ("crosscheck", r#"claims=[{"quantity":"priming_sugar","value":"12.5","unit":"g","altitud_m":0}]"#),
    ("crosscheck", "most_readings=2"),
    ("kegging", "packaged_l=19.2;volumes=2.4;warmest_c=20.5;altitude_m=240"),
    (
        "kegging",
        "packaged_us_gal=10;volumes=2.6;start_volumes=0.85;serving_f=38;altitude_ft=5280;method=rocked;purge=push",
    ),
    ("kegging", "packaged_l=19;volumes=2.5;warmest_c=20;ambient_kpa=98;co2_percent=70;line_m=3;tube=barrier_1_4_in"),
    (
        "kegging",
        "packaged_l=50;volumes=2.5;warmest_c=20;altitude_m=0;keg_l=20;purge=empty;cycles_count=3;purge_gauge_bar=1",
    ),
    (
        "kegging",
        "packaged_l=19;volumes=2.5;warmest_c=12;altitude_m=0;final_sg=1.010;purge=none;room_m3=20;keg_rating_gauge_bar=1",
    ),
    (
        "kegging",
        "packaged_l=19;volumes=2.5;altitude_m=0;start_volumes=0.8;outfit_money=300;bottle_money=0.5;fill_method=tap_tube",
    ),
    ("kegging", "volumes=2.5"),
    ("kegging", "packaged_l=19;volumes=2.5;warmest_c=20;altitude_m=0;sugar=dextrose"),
    ("kegging", "packaged_l=19;volumes=2.5;warmest_c=20;altitude_m=0;hot_dog_c=20"),
    ("kegging", "packaged_l=19;volumes=2.5;warmest_c=20;altitude_m=0;bottles=[{\"bottle_ml\":500,\"count\":40}]"),
    ("ambient_pressure", "altitude_m=1609.344"),
    ("ambient_pressure", "altitude_ft=5280;sea_level_bar=1.02"),
    ("ambient_pressure", "altitude_m=20000"),
    (
        "plan",
        "beverage=beer;abv_percent=5.1;extract_g_per_l=38;packaged_l=19.2;volumes=2.4;warmest_c=20.5;altitude_m=240;sugar=sucrose;serving_c=4",
    ),
    ("plan", "title=Sour cherry;beverage=mead;packaged_us_gal=5;volumes=0.6;warmest_f=70;altitude_ft=900;working=true"),
    ("plan", "packaged_l=10;volumes=3.4;warmest_c=18;altitude_m=0;fermentable_g_per_l=10"),
    ("plan", "packaged_l=10;volumes=2.4;warmest_c=18;altitude_m=0;fermentable_g_per_l=10"),
    ("plan", "packaged_l=10;volumes=2.4;warmest_c=18;altitude_m=0;fermentable_g_per_l=100"),
    ("plan", "packaged_l=10;volumes=4.5;warmest_c=18;altitude_m=0;hot_day_c=50"),
    ("plan", "packaged_l=10;volumes=2.4;warmest_c=18;altitude_m=0;headspace_percent=0.2"),
    ("plan", "packaged_l=10;warmest_c=18;altitude_m=0"),
    ("plan", "packaged_l=10;volumes=2.4;warmest_c=18"),
    ("plan", "packaged_l=10;volumes=2.4;warmest_c=18;altitude_m=0;gauge_psi=3"),
    ("bottling", "packaged_l=10;volumes=2.4;warmest_c=18;altitude_m=0"),
    ("bottling", "packaged_l=10;mass_g=60;warmest_c=18;altitude_m=0;sugar=table_sugar;scale_g=5;syrup_water_ml=200"),
    (
        "bottling",
        "batch_l=21;loss_l=1.2;volumes=2.6;warmest_c=18;altitude_m=0;bottles=[{\"bottle_ml\":500,\"count\":30,\"bottle_class\":\"heavier_reusable\"},{\"bottle_ml\":330,\"count\":30,\"bottle_class\":\"light_one_way\"}];tablet_g=3",
    ),
    (
        "bottling",
        "packaged_l=19;volumes=2.5;warmest_c=18;altitude_m=0;bottles=[{\"bottle_ml\":1893,\"count\":12,\"bottle_class\":\"growler\"}]",
    ),
    (
        "bottling",
        "packaged_l=19;volumes=3.8;warmest_c=18;altitude_m=0;bottles=[{\"bottle_ml\":330,\"count\":72,\"rating_gauge_bar\":5}];pasteurising_c=60",
    ),
    (
        "bottling",
        "packaged_l=19;volumes=2.4;warmest_c=18;altitude_m=0;original_sg=1.05;final_sg=1.01;readings=[{\"time_d\":7,\"current_sg\":1.016},{\"time_d\":9,\"current_sg\":1.014}]",
    ),
    (
        "bottling",
        "packaged_l=19;volumes=2.4;warmest_c=18;altitude_m=0;original_sg=1.05;current_sg=1.012;expected_attenuation_percent=80;microbes=diastatic",
    ),
    (
        "bottling",
        "packaged_l=19;volumes=2.6;warmest_c=18;altitude_m=0;additions=[{\"addition\":\"honey\",\"mass_g\":60},{\"addition\":\"lactose\",\"mass_g\":200}]",
    ),
    (
        "bottling",
        "packaged_l=19;volumes=2.6;warmest_c=12;altitude_m=0;wort_original_plato=12;limit_attenuation_percent=65;cold_crash=closed;crash_c=2;fermenter_headspace_percent=10",
    ),
    (
        "bottling",
        "packaged_l=19;volumes=2.6;warmest_c=18;altitude_m=0;abv_percent=10.5;age_d=90;filtered=true;history=[{\"temperature_c\":20,\"time_d\":10},{\"temperature_c\":8,\"time_d\":20}]",
    ),
    ("bottling", "packaged_l=19;volumes=2.6;mass_g=100;warmest_c=18;altitude_m=0"),
    ("bottling", "packaged_l=19;volumes=2.6;warmest_c=18;altitude_m=0;serving_c=4"),
    ("bottling", "batch_l=19;loss_l=20;volumes=2.6;warmest_c=18;altitude_m=0"),
];

/// The Rust examples of the README run as they stand there.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
struct Readme;
