//! Wrong, absurd and malicious requests: each gets one clear error that names the parameter, the value and what is
//! allowed, and nothing panics. The random requests are the same on every run.

use carb_core::Error;
use carb_core::basis::request::{Raw, Value, choices};
use carb_core::basis::{Answer, Lists, Need, Request, Values};
use carb_core::error::code;
use carb_core::evidence::{Level, NoSteps};
use carb_core::plan::plan;
use carb_core::quantity::{Carbonation, Key, Name};
use carb_core::table::TABLES;
use carb_core::table::functions::{FUNCTIONS, named};
use carb_core::table::tables::{self, Cell};

enum Given<'a> {
    Number(f64),
    Word(&'a str),
}
use Given::{Number, Word};

fn request(pairs: &[(&str, Given<'_>)]) -> Result<Request, Error> {
    let mut request = Request::new();
    for (name, given) in pairs {
        request.set(
            name,
            match given {
                Number(value) => Raw::Number(*value),
                Word(word) => Raw::Text(word),
            },
        )?;
    }
    Ok(request)
}

fn answer(function: &str, pairs: &[(&str, Given<'_>)]) -> Result<Answer<Values>, Error> {
    named(function).unwrap().answer(&request(pairs)?, &mut NoSteps)
}

/// The error, whose text must name every one of `words`.
fn refused(function: &str, pairs: &[(&str, Given<'_>)], words: &[&str]) -> Error {
    let error = answer(function, pairs).expect_err(function);
    let text = error.to_string();
    for word in words {
        assert!(text.contains(word), "\"{word}\" is not in: {text}");
    }
    assert!(!error.parameter().as_str().is_empty() && !text.contains('\n'), "{text}");
    error
}

/// A request that is answered, with one number replaced.
fn usual(function: &str) -> Vec<(&'static str, f64)> {
    match function {
        "dissolved_co2" => vec![("gauge_bar", 0.9), ("temperature_c", 4.0), ("altitude_m", 0.0), ("abv_percent", 5.0)],
        "keg_pressure" => {
            vec![("volumes", 2.5), ("temperature_c", 4.0), ("altitude_m", 0.0), ("extract_g_per_l", 30.0)]
        }
        "gas_blend" => vec![
            ("volumes", 2.5),
            ("temperature_f", 38.0),
            ("gauge_psi", 22.0),
            ("altitude_m", 0.0),
            ("air_abs_kpa", 2.0),
        ],
        "keg_temperature" => {
            vec![
                ("volumes", 2.5),
                ("gauge_psi", 12.0),
                ("co2_percent", 90.0),
                ("air_abs_kpa", 1.0),
                ("altitude_m", 0.0),
            ]
        }
        "warmed_keg" => vec![
            ("volumes", 2.5),
            ("filling_c", 3.3),
            ("temperature_c", 25.0),
            ("headspace_percent", 3.5),
            ("air_abs_kpa", 20.0),
            ("keg_rating_gauge_bar", 9.0),
            ("altitude_m", 0.0),
        ],
        "spunding" => vec![
            ("volumes", 2.5),
            ("temperature_c", 12.0),
            ("final_sg", 1.010),
            ("fermenter_headspace_percent", 10.0),
            ("start_volumes", 0.9),
            ("keg_rating_gauge_bar", 4.0),
            ("altitude_m", 0.0),
        ],
        "closed_fermentation" => vec![
            ("current_sg", 1.014),
            ("final_plato", 2.5),
            ("temperature_c", 18.0),
            ("fermenter_headspace_percent", 10.0),
            ("start_volumes", 0.9),
            ("keg_rating_gauge_bar", 4.0),
            ("altitude_m", 0.0),
        ],
        "stone_pressure" => vec![
            ("volumes", 2.5),
            ("temperature_c", 4.0),
            ("depth_m", 0.5),
            ("wetting_psi", 4.0),
            ("margin_psi", 1.0),
            ("sg", 1.01),
            ("altitude_m", 0.0),
        ],
        "residual_co2" => vec![("warmest_c", 20.0), ("altitude_m", 0.0)],
        "priming_sugar" => vec![("volumes", 2.5), ("warmest_c", 20.0), ("packaged_l", 19.0), ("altitude_m", 0.0)],
        "package_pressure" => {
            vec![("volumes", 2.4), ("temperature_c", 30.0), ("headspace_percent", 4.0), ("altitude_m", 0.0)]
        }
        "package_carbonation" => vec![("gauge_bar", 1.8), ("temperature_c", 20.0), ("altitude_m", 0.0)],
        "primed_carbonation" => vec![("mass_g", 116.0), ("warmest_c", 20.0), ("packaged_l", 19.0), ("altitude_m", 0.0)],
        "priming_wort" => vec![
            ("volumes", 2.5),
            ("warmest_c", 20.0),
            ("packaged_l", 19.0),
            ("wort_original_plato", 12.0),
            ("limit_attenuation_percent", 65.0),
            ("altitude_m", 0.0),
        ],
        "priming_syrup" => vec![("mass_g", 116.0), ("syrup_water_l", 0.35), ("dissolving_c", 20.0)],
        "conditioning" => vec![("room_c", 20.0), ("time_d", 7.0), ("yeast_million_per_ml", 1.0)],
        "conditioning_time" => vec![("room_c", 20.0), ("progress_percent", 95.0), ("abv_percent", 5.0)],
        "reyeasting" => vec![("packaged_l", 19.0), ("yeast_million_per_ml", 1.0)],
        "final_gravity" => vec![("original_sg", 1.048), ("expected_attenuation_percent", 78.0)],
        "gravity" => vec![("sg", 1.048)],
        "attenuation" => vec![("original_sg", 1.048), ("current_plato", 2.6)],
        "gravity_co2" => vec![("current_sg", 1.013), ("final_sg", 1.012)],
        "added_co2" => vec![("dose_g_per_l", 6.0)],
        "drink_properties" => vec![("temperature_c", 4.0), ("sg", 1.010), ("viscosity_multiplier", 1.6)],
        "co2_saturation" => vec![("cylinder_c", 20.0)],
        "purge_oxygen" => vec![
            ("purge_gauge_psi", 30.0),
            ("cycles_count", 5.0),
            ("altitude_m", 0.0),
            ("start_oxygen_vol_percent", 20.95),
            ("gas_oxygen_ppm", 30.0),
            ("keg_l", 19.6),
            ("temperature_c", 20.0),
            ("keg_rating_gauge_bar", 9.0),
        ],
        "purge_cycles" => vec![("purge_gauge_psi", 30.0), ("oxygen_ppm", 1000.0), ("altitude_m", 0.0)],
        "sweep_oxygen" => vec![("sweeps_count", 5.0), ("altitude_m", 0.0)],
        "push_oxygen" => vec![("pocket_ml", 50.0), ("push_gauge_psi", 10.0), ("altitude_m", 0.0)],
        "oxygen_pickup" => vec![
            ("oxygen_ppm", 1000.0),
            ("headspace_percent", 3.5),
            ("temperature_c", 4.0),
            ("altitude_m", 0.0),
            ("gauge_bar", 0.8),
            ("dissolved_oxygen_ppb", 20.0),
            ("volumes", 2.5),
            ("start_volumes", 0.84),
        ],
        "total_package_oxygen" => {
            vec![("dissolved_oxygen_ppb", 40.0), ("headspace_percent", 5.0), ("temperature_c", 20.0)]
        }
        "gas_budget" => vec![
            ("packaged_l", 18.93),
            ("volumes", 2.5),
            ("start_volumes", 0.84),
            ("temperature_c", 3.3),
            ("gauge_psi", 11.0),
            ("altitude_m", 0.0),
            ("keg_l", 19.6),
            ("gas_loss_percent", 5.0),
            ("charge_kg", 2.0),
        ],
        "cylinder_left" => vec![("cylinder_c", 20.0), ("filling_ratio_g_per_g", 0.68), ("altitude_m", 0.0)],
        "cylinder_contents" => {
            vec![("gross_kg", 4.6), ("tare_kg", 3.4), ("charge_kg", 2.268), ("gas_g", 150.0)]
        }
        "room_co2" => vec![
            ("released_kg", 2.268),
            ("room_m3", 30.0),
            ("room_c", 20.0),
            ("altitude_m", 0.0),
            ("air_changes_per_h", 0.5),
            ("time_h", 2.0),
        ],
        "room_leak" => vec![("leak_g_per_h", 94.5), ("room_m3", 30.0), ("altitude_m", 0.0)],
        "line_flow" => vec![
            ("gauge_psi", 11.0),
            ("line_ft", 10.0),
            ("bore_in", 0.1875),
            ("rise_ft", 2.0),
            ("temperature_c", 4.0),
            ("fittings_multiplier", 3.0),
            ("glass_ml", 473.0),
        ],
        "line_length" => vec![
            ("gauge_bar", 0.8),
            ("flow_l_per_min", 2.4),
            ("bore_mm", 4.76),
            ("rise_m", 0.6),
            ("temperature_c", 4.0),
            ("sg", 1.01),
        ],
        "line_pressure" => vec![
            ("line_m", 3.0),
            ("pour_seconds", 12.0),
            ("bore_mm", 4.76),
            ("temperature_c", 4.0),
            ("viscosity_multiplier", 1.6),
        ],
        "handbook_line" => {
            vec![("gauge_psi", 11.0), ("resistance_psi_per_ft", 3.0), ("rise_ft", 2.0), ("hardware_psi", 1.0)]
        }
        "handbook_pressure" => vec![("line_m", 3.0), ("resistance_bar_per_m", 0.05), ("rise_m", 1.0)],
        "filling_carbonation" => vec![("volumes", 2.4), ("fill_loss_volumes", 0.25)],
        "blend" => vec![
            ("packaged_l", 15.0),
            ("volumes", 2.8),
            ("other_l", 5.0),
            ("other_volumes", 0.8),
            ("temperature_c", 4.0),
            ("gauge_bar", 0.6),
            ("altitude_m", 0.0),
        ],
        "ambient_pressure" => vec![("altitude_m", 240.0), ("sea_level_kpa", 101.0)],
        "packaging_cost" => vec![("packaged_l", 19.0), ("bottle_money", 0.6), ("outfit_money", 300.0)],
        "break_even" => vec![("packaged_l", 19.0), ("cap_money", 0.05), ("outfit_money", 300.0)],
        "uptake_rate" => vec![("temperature_c", 4.0), ("packaged_l", 19.0), ("keg_diameter_m", 0.215)],
        "carbonation_time" => vec![
            ("start_volumes", 0.85),
            ("volumes", 2.4),
            ("gauge_bar", 0.9),
            ("temperature_c", 4.0),
            ("kla_per_h", 0.02),
            ("supply_g_per_h", 20.0),
            ("altitude_m", 0.0),
        ],
        "carbonation_progress" => vec![
            ("start_volumes", 0.85),
            ("time_d", 3.0),
            ("gauge_bar", 0.9),
            ("temperature_c", 4.0),
            ("packaged_l", 19.0),
            ("altitude_m", 0.0),
        ],
        "burst_time" => vec![
            ("start_volumes", 0.85),
            ("volumes", 2.4),
            ("burst_gauge_bar", 2.0),
            ("temperature_c", 4.0),
            ("keg_diameter_m", 0.215),
            ("altitude_m", 0.0),
        ],
        _ => panic!("{function}"),
    }
}

fn set_all(pairs: &[(&str, f64)]) -> Result<Request, Error> {
    let mut all: Vec<_> = pairs.iter().map(|&(name, value)| (name, Number(value))).collect();
    // What is added has to be named.
    if pairs.iter().any(|(name, _)| name.starts_with("dose")) {
        all.push(("addition", Word("honey")));
    }
    request(&all)
}

#[test]
fn no_number_that_is_none_and_none_that_is_absurd_is_answered() {
    for function in FUNCTIONS {
        let pairs = usual(function.name);
        assert!(function.answer(&set_all(&pairs).unwrap(), &mut NoSteps).is_ok(), "{}", function.name);
        for at in 0..pairs.len() {
            for (wrong, expected) in [
                (f64::NAN, code::NOT_A_NUMBER),
                (f64::INFINITY, code::NOT_A_NUMBER),
                (f64::NEG_INFINITY, code::NOT_A_NUMBER),
                (1e300, code::OUT_OF_RANGE),
                (-1e300, code::OUT_OF_RANGE),
            ] {
                let mut spoilt = pairs.clone();
                spoilt[at].1 = wrong;
                let error = set_all(&spoilt).and_then(|r| function.answer(&r, &mut NoSteps)).expect_err(function.name);
                assert_eq!(error.code(), expected, "{} {spoilt:?}: {error}", function.name);
                assert_eq!(error.parameter().as_str(), pairs[at].0, "{error}");
                assert!(error.to_string().contains(pairs[at].0), "{error}");
            }
        }
    }
}

#[test]
fn less_than_nothing_is_no_pressure() {
    let error = refused(
        "dissolved_co2",
        &[("abs_psi", Number(-5.0)), ("temperature_c", Number(4.0))],
        &["abs_psi", "-5", "psi"],
    );
    assert_eq!(error.code(), code::OUT_OF_RANGE);
    assert_eq!((error.value(), error.limits().unwrap().0), (Some(-5.0), 0.0));

    let air = [("temperature_c", Number(4.0)), ("ambient_kpa", Number(100.0)), ("gauge_kpa", Number(-100.5))];
    let error = refused("dissolved_co2", &air, &["gauge_kpa", "-100.5", "gauge against absolute"]);
    assert_eq!(error.code(), code::PRESSURE_TOO_LOW);
    // At 4 °C the chart's line leaves no CO2 a little above vacuum.
    let (low, _) = error.limits().unwrap();
    assert!(low > -100.5 && low < -98.0, "{low}");
}

#[test]
fn beer_at_20_c_holds_more_than_half_a_volume_already() {
    let pairs = [("volumes", 0.5), ("warmest_c", 20.0), ("packaged_l", 19.0), ("altitude_m", 0.0)];
    let pairs = pairs.map(|(name, value)| (name, Number(value)));
    let error = refused("priming_sugar", &pairs, &["volumes = 0.5", "0.861"]);
    assert_eq!(error.code(), code::TARGET_BELOW_HELD);
    assert!((error.limits().unwrap().0 - 0.8615).abs() < 1e-4);
    assert_eq!(error.value(), Some(0.5));
}

#[test]
fn a_sugar_that_is_two_things_or_makes_no_co2_is_refused() {
    for name in ["dextrose", "glucose", "corn sugar", "Corn-Sugar"] {
        let error = request(&[("sugar", Word(name))]).unwrap_err();
        assert_eq!(error.code(), code::AMBIGUOUS_SUGAR);
        let text = error.to_string();
        assert!(
            text.contains(name) && text.contains("dextrose_monohydrate") && text.contains("dextrose_anhydrous"),
            "{text}"
        );
    }
    for name in ["sweetener", "stevia", "sucralose", "lactose", "Maltodextrin", "erythritol"] {
        let error = request(&[("sugar", Word(name))]).unwrap_err();
        assert_eq!((error.code(), error.parameter().as_str()), (code::MAKES_NO_CO2, "sugar"));
        assert!(error.to_string().contains(name) && error.to_string().contains("sucrose"), "{error}");
    }
    let error = request(&[("sugar", Word("sand"))]).unwrap_err();
    assert_eq!(error.code(), code::UNKNOWN_CHOICE);
    assert!(choices(Key::Sugar).iter().all(|sugar| error.to_string().contains(sugar)), "{error}");
}

#[test]
fn what_yeast_can_do_in_the_package_must_be_said() {
    let dose = || {
        vec![
            ("volumes", Number(2.5)),
            ("warmest_c", Number(18.0)),
            ("packaged_l", Number(19.0)),
            ("altitude_m", Number(0.0)),
        ]
    };
    for drink in ["cider", "mead", "wine", "soft_drink"] {
        let mut sweet = dose();
        sweet.push(("beverage", Word(drink)));
        let error = refused("priming_sugar", &sweet, &["fermentable_g_per_l", "yeast"]);
        assert_eq!((error.code(), error.parameter().as_str()), (code::MISSING, "fermentable_g_per_l"));
        sweet.push(("fermentable_g_per_l", Number(0.0)));
        assert!(answer("priming_sugar", &sweet).is_ok());
    }
    let mut dead = dose();
    dead.push(("yeast", Word("none")));
    let error = refused("priming_sugar", &dead, &["yeast", "none", "keg"]);
    assert_eq!((error.code(), error.parameter().as_str()), (code::NO_LIVE_YEAST, "yeast"));
}

#[test]
fn a_gravity_beyond_all_wort_is_refused() {
    let error = refused("gravity", &[("sg", Number(1.5))], &["sg = 1.5", "0.98", "1.16"]);
    assert_eq!((error.code(), error.limits()), (code::OUT_OF_RANGE, Some((0.98, 1.165))));
    assert_eq!(refused("gravity", &[("plato", Number(90.0))], &["plato = 90"]).code(), code::OUT_OF_RANGE);
}

#[test]
fn a_sugar_of_ones_own_is_described_whole_or_refused() {
    let dose = |more: &[(&'static str, Given<'static>)]| {
        let mut pairs = vec![("addition", Word("custom")), ("dose_g_per_l", Number(6.0))];
        pairs.extend(more.iter().map(|(name, given)| {
            (
                *name,
                match given {
                    Number(number) => Number(*number),
                    Word(word) => Word(word),
                },
            )
        }));
        pairs
    };
    let water = || ("sugar_water_percent", Number(20.0));
    let share = || ("sugar_fermentable_percent", Number(95.0));
    let kind = || ("sugar_kind", Word("hexose"));
    assert!(answer("added_co2", &dose(&[water(), share(), kind()])).is_ok());
    for (left_out, missing) in [
        (dose(&[share(), kind()]), "sugar_water_percent"),
        (dose(&[water(), kind()]), "sugar_fermentable_percent"),
        (dose(&[water(), share()]), "sugar_kind"),
    ] {
        let error = refused("added_co2", &left_out, &[missing]);
        assert_eq!((error.code(), error.parameter().as_str()), (code::MISSING, missing));
    }
    let both = dose(&[water(), ("sugar_sg", Number(1.33)), share(), kind()]);
    assert_eq!(refused("added_co2", &both, &["sugar_water_percent", "sugar_sg"]).code(), code::EXCLUDED);
    for empty in [
        [("sugar_water_percent", Number(100.0)), share(), kind()],
        [water(), ("sugar_fermentable_percent", Number(0.0)), kind()],
    ] {
        assert_eq!(refused("added_co2", &dose(&empty), &["custom"]).code(), code::MAKES_NO_CO2);
    }
    // Its parts without its name, or beside another sugar, would be forgotten.
    let prime = |sugar: Option<&'static str>| {
        let mut pairs = vec![
            ("volumes", Number(2.5)),
            ("warmest_c", Number(18.0)),
            ("packaged_l", Number(19.0)),
            ("altitude_m", Number(0.0)),
            water(),
        ];
        pairs.extend(sugar.map(|name| ("sugar", Word(name))));
        pairs
    };
    assert_eq!(refused("priming_sugar", &prime(None), &["custom"]).code(), code::MISSING);
    assert_eq!(refused("priming_sugar", &prime(Some("honey")), &["sugar", "sugar_water"]).code(), code::EXCLUDED);
}

#[test]
fn what_brewing_yeast_leaves_says_what_does_ferment_it() {
    let caution = |name: &'static str, words: &[&str]| {
        let found = answer("added_co2", &[("addition", Word(name)), ("dose_g_per_l", Number(25.0))]).unwrap();
        let text = found.notes.cautions.iter().map(ToString::to_string).collect::<String>();
        for word in words {
            assert!(text.contains(word), "{name}: {text}");
        }
        [found.value.as_slice()[0], found.value.as_slice()[1]]
    };
    assert_eq!(caution("lactose", &["Brettanomyces", "Kluyveromyces"]), [0.0, 0.0]);
    assert_eq!(caution("maltodextrin", &["diastatic", "Brettanomyces", "glucoamylase"])[0], 0.0);
    assert_eq!(caution("erythritol", &["sugar alcohols"]), [0.0, 0.0]);
    // Table-top packets: 0 to 0.42 g of CO2 a gram, and safety takes the most.
    let [expected, worst] = caution("sweetener_packets", &["dextrose", "safety"]);
    assert_eq!(expected, 0.0);
    assert!((worst - 0.42 * 25.0).abs() < 1e-12);
}

#[test]
fn fermentation_never_runs_backwards() {
    for (pairs, parameter) in [
        ([("original_sg", 1.048), ("current_sg", 1.05)], "current_sg"),
        ([("original_plato", 12.0), ("current_sg", 1.05)], "current_sg"),
        ([("original_sg", 1.048), ("current_plato", 12.5)], "current_plato"),
    ] {
        let error = refused("attenuation", &pairs.map(|(name, value)| (name, Number(value))), &[parameter]);
        assert_eq!((error.code(), error.parameter().as_str()), (code::OUT_OF_RANGE, parameter));
    }
    // Nor below the wort from which everything has fermented: 0.1808 O + 0.8192 A = 0 where A = -2.65 °P.
    let pairs = [("original_plato", 12.0), ("current_plato", -2.7)].map(|(name, value)| (name, Number(value)));
    let error = refused("attenuation", &pairs, &["current_plato = -2.7"]);
    assert!((error.limits().unwrap().0 + 12.0 * 0.1808 / 0.8192).abs() < 1e-12);
    let pairs = [("current_plato", 2.0), ("final_sg", 1.012)].map(|(name, value)| (name, Number(value)));
    let error = refused("gravity_co2", &pairs, &["final_sg = 1.012"]);
    assert_eq!(error.code(), code::OUT_OF_RANGE);
    assert!((error.limits().unwrap().1 - 1.0078).abs() < 1e-4, "2 °P are 1.0078");
}

#[test]
fn a_cylinder_above_31_c_holds_no_liquid() {
    for t in [31.0, 40.0, -57.0] {
        let error = refused("co2_saturation", &[("cylinder_c", Number(t))], &["cylinder_c"]);
        assert_eq!(error.code(), code::OUT_OF_RANGE);
    }
    assert!(answer("co2_saturation", &[("cylinder_c", Number(30.9))]).unwrap().notes.cautions.has("near_critical"));
}

#[test]
fn no_model_leaves_less_than_nothing_in_the_drink() {
    for model in choices(Key::Model) {
        for t in [0.0, 20.0, 45.0] {
            for altitude in [0.0, 3000.0, 9000.0] {
                let pairs = [
                    ("warmest_c", Number(t)),
                    ("altitude_m", Number(altitude)),
                    ("model", Word(model)),
                    ("residual_model", Word("equilibrium")),
                ];
                let held = answer("residual_co2", &pairs).unwrap().value.as_slice()[0];
                assert!(held >= 0.0, "{model} at {t} °C and {altitude} m: {held}");
            }
        }
    }
}

#[test]
fn a_dose_beyond_any_drink_is_refused() {
    let pairs = [
        ("volumes", Number(4.0)),
        ("warmest_c", Number(20.0)),
        ("packaged_l", Number(20.0)),
        ("altitude_m", Number(0.0)),
        ("sugar", Word("custom")),
        ("sugar_water_percent", Number(0.0)),
        ("sugar_fermentable_percent", Number(2.0)),
        ("sugar_kind", Word("hexose")),
    ];
    assert_eq!(refused("priming_sugar", &pairs, &["dose_g_per_l", "400"]).code(), code::OUT_OF_RANGE);
}

#[test]
fn a_model_made_for_another_drink_says_so() {
    let held = |drink: &'static str, model: &'static str| {
        let pairs = [
            ("abs_bar", Number(2.0)),
            ("temperature_c", Number(10.0)),
            ("beverage", Word(drink)),
            ("model", Word(model)),
        ];
        answer("dissolved_co2", &pairs).unwrap().notes.cautions.has("foreign_model")
    };
    assert!(
        held("wine", "chart_fit")
            && held("beer", "eu_wine")
            && held("beer", "iapws_water")
            && held("water", "european")
    );
    assert!(!held("wine", "eu_wine") && !held("beer", "european") && !held("water", "carroll_water"));
}

#[test]
fn tables_refuse_what_they_do_not_take() {
    for table in TABLES {
        let mut wrong = Request::new();
        wrong.set("serving_c", Raw::Number(30.0)).unwrap();
        let mut rows = 0;
        let error = table.rows(&wrong, &Lists::new(), &mut |_| rows += 1).expect_err(table.name);
        assert_eq!((error.code(), rows), (code::NOT_TAKEN, 0));
    }
    let spread = tables::named("solubility_models").unwrap();
    for (pairs, expected) in [
        (vec![("temperature_c", 4.0)], code::MISSING),
        (vec![("volumes", 2.5)], code::MISSING),
        (vec![("gauge_bar", 1.0), ("temperature_c", 4.0)], code::MISSING),
        (vec![("gauge_bar", 1.0), ("volumes", 2.0), ("temperature_c", 4.0), ("altitude_m", 0.0)], code::EXCLUDED),
        (vec![("abs_bar", 90.0), ("temperature_c", 4.0)], code::OUT_OF_RANGE),
    ] {
        let error = spread.rows(&set_all(&pairs).unwrap(), &Lists::new(), &mut |_| {}).expect_err("no state");
        assert_eq!(error.code(), expected, "{error}");
    }
    let end = [("abs_bar", Number(29.0)), ("temperature_c", Number(0.0)), ("model", Word("chart_quadratic"))];
    assert_eq!(
        refused("dissolved_co2", &end, &["abs_bar", "model ends", "water_core"]).code(),
        code::PRESSURE_TOO_HIGH
    );
    // Where a model has no answer, its row says so by what is missing.
    let mut missing = 0;
    let cold = set_all(&[("abs_bar", 29.0), ("temperature_c", 0.0)]).unwrap();
    spread.rows(&cold, &Lists::new(), &mut |cells| missing += usize::from(cells[2] == Cell::Missing)).unwrap();
    assert_eq!(missing, 1, "the quadratic ends before 29 bar");
}

#[test]
fn a_slip_of_the_pen_gets_the_name_that_was_meant() {
    for (slip, meant) in [
        ("tempertaure_c", "temperature_c"),
        ("temperature_C", "temperature_c"),
        ("volume", "volumes"),
        ("altitude", "altitude_m"),
        ("headspace_pct", "headspace_percent"),
        ("guage_psi", "gauge_psi"),
    ] {
        let error = request(&[(slip, Number(4.0))]).unwrap_err();
        assert_eq!((error.code(), error.parameter().as_str()), (code::UNKNOWN_NAME, slip));
        assert!(error.to_string().ends_with(&format!("did you mean \"{meant}\"?")), "{error}");
    }
    let error = request(&[("xyzzy", Number(4.0))]).unwrap_err();
    assert!(error.to_string().contains("warmest_c"), "{error}");
}

#[test]
fn one_quantity_is_given_once() {
    let error = request(&[("temperature_c", Number(4.0)), ("temperature_f", Number(39.2))]).unwrap_err();
    assert_eq!((error.code(), error.parameter().as_str()), (code::GIVEN_TWICE, "temperature_f"));
    assert!(error.to_string().contains("temperature_c"), "{error}");
    let both = [("sg", Number(1.048)), ("plato", Number(12.0))];
    assert_eq!(refused("gravity", &both, &["sg", "plato"]).code(), code::EXCLUDED);
    let both = [
        ("gauge_psi", Number(12.0)),
        ("abs_psi", Number(26.7)),
        ("temperature_c", Number(4.0)),
        ("altitude_m", Number(0.0)),
    ];
    assert_eq!(refused("dissolved_co2", &both, &["gauge_psi", "abs_psi"]).code(), code::EXCLUDED);
    let other = [("altitude_m", Number(0.0)), ("volumes", Number(2.0))];
    assert_eq!(refused("ambient_pressure", &other, &["volumes", "ambient_pressure"]).code(), code::NOT_TAKEN);
}

#[test]
fn no_gauge_without_the_air_outside() {
    let mut asked = 0;
    for function in FUNCTIONS.iter().filter(|f| f.takes(Key::Altitude)) {
        let pairs: Vec<_> = usual(function.name).into_iter().filter(|(name, _)| *name != "altitude_m").collect();
        let error = function.answer(&set_all(&pairs).unwrap(), &mut NoSteps).expect_err(function.name);
        assert_eq!((error.code(), error.parameter().as_str()), (code::MISSING, "altitude_m"), "{}", function.name);
        assert!(
            error.to_string().contains("0 for sea level") || pairs.iter().any(|(n, _)| *n == "sea_level_kpa"),
            "{error}"
        );
        asked += 1;
    }
    assert_eq!(asked, 28, "all that know a gauge, a residual or an altitude");
}

#[test]
fn a_full_bottle_that_warms_is_an_error_and_no_pressure() {
    for (headspace, t) in [(0.0, 30.0), (0.0, 20.5), (1.0, 55.0), (0.3, 40.0)] {
        let pairs = [("volumes", 2.4), ("altitude_m", 0.0), ("headspace_percent", headspace), ("temperature_c", t)];
        let pairs = pairs.map(|(name, value)| (name, Number(value)));
        let error = refused("package_pressure", &pairs, &["temperature_c", &format!("{t:.1}"), "headspace"]);
        assert_eq!((error.code(), error.value()), (code::VESSEL_FULL, Some(t)));
    }
}

/// 10 g/L of fermentable extract make 10 * 0.51428 g/L of CO2, which is 2.60 volumes.
#[test]
fn ten_grams_of_sugar_left_are_2_6_volumes_and_a_danger() {
    let bottle = |volumes, left| {
        let pairs = [("volumes", volumes), ("fermentable_g_per_l", left), ("temperature_c", 20.0), ("altitude_m", 0.0)];
        answer("package_pressure", &pairs.map(|(name, value)| (name, Number(value)))).unwrap()
    };
    let added = 10.0 * (4.0 * 44.0095 / 342.297) / (44.0095 / 22.263);
    assert!((added - 2.6_f64).abs() < 0.005);
    let sweet = bottle(2.4, 10.0);
    // The margin of 8 % lies on what is stated, not on what is still to come.
    let carbonated = bottle(2.4 + added / 1.08, 0.0);
    let worst = |answer: &Answer<Values>| answer.value.as_slice()[4];
    assert!((worst(&sweet) - worst(&carbonated)).abs() <= 1e-12 * worst(&sweet));

    let danger = sweet.notes.cautions.iter().find(|c| c.kind.code == "fermentable_danger").unwrap();
    assert_eq!(danger.kind.level, Level::Danger);
    assert!((danger.value - 10.0 * 4.0 * 44.0095 / 342.297).abs() < 1e-12);
    assert!(danger.to_string().contains("2.60 volumes") && danger.to_string().contains("burst"), "{danger}");
    assert!(!bottle(2.4, 0.0).notes.cautions.has("fermentable_danger"));
    assert!(bottle(2.4, 1.0).notes.cautions.has("fermentable_left"));

    let day = |left| {
        let pairs = [
            ("volumes", 4.5),
            ("fermentable_g_per_l", left),
            ("warmest_c", 20.0),
            ("packaged_l", 19.0),
            ("altitude_m", 0.0),
        ];
        plan(&request(&pairs.map(|(name, value)| (name, Number(value)))).unwrap(), &Lists::new()).unwrap()
    };
    let sweet = day(10.0);
    assert!(sweet.danger());
    for place in &sweet.bottling.storage {
        let answer = place.pressure.answer.as_ref().unwrap();
        assert!(answer.notes.cautions.has("fermentable_danger"), "{}", place.place);
    }
    let dry = day(0.0);
    assert!(
        dry.bottling.storage.iter().all(|s| !s
            .pressure
            .answer
            .as_ref()
            .unwrap()
            .notes
            .cautions
            .has("fermentable_danger"))
    );
}

#[test]
fn a_cask_ale_that_needs_no_sugar_still_gets_its_keg() {
    // Kept at 4 °C it holds 1.48 volumes; served at 12 °C, 1.3 volumes need a little pressure.
    let pairs = [("volumes", 1.3), ("warmest_c", 4.0), ("serving_c", 12.0), ("packaged_l", 40.0), ("altitude_m", 0.0)];
    let day = plan(&request(&pairs.map(|(name, value)| (name, Number(value)))).unwrap(), &Lists::new()).unwrap();
    assert_eq!(day.bottling.priming.answer.as_ref().unwrap_err().code(), code::TARGET_BELOW_HELD);
    // Without sugar it is what it is: the bottles' pressures are those of the drink as it stands.
    assert!(day.bottling.storage.iter().all(|s| s.pressure.value().is_some_and(|p| p.dissolved.volumes() < 1.5)));
    assert!(day.bottling.residual.answer.is_ok());
    assert!(day.kegging.value("regulator", "", Key::Gauge).unwrap() > 0.0);

    // And the other way round: without the warmest temperature there is no dose, but there is a keg.
    let pairs = [("volumes", 2.4), ("packaged_l", 40.0), ("altitude_m", 0.0)];
    let day = plan(&request(&pairs.map(|(name, value)| (name, Number(value)))).unwrap(), &Lists::new()).unwrap();
    assert_eq!(day.bottling.priming.answer.as_ref().unwrap_err().parameter().as_str(), "warmest_c");
    assert!(day.kegging.answered());
}

/// A small generator, so that the same requests are made everywhere.
struct Dice(u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }
    fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1u64 << 53) as f64
    }
    fn below(&mut self, n: usize) -> usize {
        (self.next() % n as u64) as usize
    }
    fn of<T: Copy>(&mut self, list: &[T]) -> T {
        list[self.below(list.len())]
    }
}

/// A request as a line.
fn shown(request: &Request) -> String {
    let one = |name: Name| match request.get(name.key) {
        Some(Value::Number(number, _)) => format!("{name}={number}"),
        Some(Value::Choice(at)) => format!("{name}={}", choices(name.key)[at]),
        other => format!("{name}={other:?}"),
    };
    request.given().map(one).collect::<Vec<_>>().join(" ")
}

const ODD: &[f64] = &[
    0.0,
    -0.0,
    1.0,
    -1.0,
    5e-324,
    -5e-324,
    1e-300,
    1e300,
    -1e300,
    f64::MAX,
    f64::MIN,
    f64::EPSILON,
    273.15,
    1e9,
    4.0e6,
];

fn random_request(dice: &mut Dice, inputs: &[carb_core::basis::Input]) -> Request {
    let mut request = Request::new();
    // Mostly one member of a group, so that many requests are whole.
    let second = dice.share() < 0.5;
    let mut groups: Vec<&str> = Vec::new();
    for input in inputs {
        let likely = match input.need {
            Need::Required => 0.98,
            Need::OneOf(group) => {
                let first = !groups.contains(&group);
                groups.push(group);
                if first != second { 0.97 } else { 0.03 }
            }
            Need::Optional(_) => 0.2,
        };
        if dice.share() > likely {
            continue;
        }
        let names: Vec<_> = Name::of(input.key).collect();
        let name = dice.of(&names).spelling();
        let _ = match (input.key.limits(), dice.of(&names).unit) {
            (Some((low, high)), Some(_)) => {
                let unit = Name::parse(name.as_str()).unwrap().unit.unwrap();
                let value = match dice.below(40) {
                    0 => dice.of(ODD),
                    1 => f64::from_bits(dice.next()),
                    2 => unit.from_si(low),
                    3 => unit.from_si(high),
                    4..20 => unit.from_si(low + (high - low) * (0.2 * dice.share())),
                    _ => unit.from_si(low + (high - low) * dice.share()),
                };
                request.set(name.as_str(), Raw::Number(value))
            }
            _ if !choices(input.key).is_empty() => request.set(name.as_str(), Raw::Text(dice.of(choices(input.key)))),
            _ => request.set(name.as_str(), Raw::Flag(dice.share() < 0.5)),
        };
    }
    request
}

#[test]
fn a_hundred_thousand_random_requests_are_answered_with_numbers_or_refused_with_words() {
    let mut dice = Dice(1516);
    let (mut answered, mut refused) = (0, 0);
    for at in 0..100_000 {
        let function = FUNCTIONS[at % FUNCTIONS.len()];
        let request = random_request(&mut dice, function.inputs);
        match function.answer(&request, &mut NoSteps) {
            Ok(answer) => {
                let values = answer.value.as_slice();
                assert!(values.iter().all(|v| v.is_finite()), "{} {}: {values:?}", function.name, shown(&request));
                assert!(answer.notes.cautions.iter().all(|c| c.value.is_finite() && !c.to_string().contains("NaN")));
                answered += 1;
            }
            Err(error) => {
                let text = error.to_string();
                assert!(error.code() < 0 && text.contains(error.parameter().as_str()), "{text}");
                assert!(!text.contains("NaN") && !text.contains("inf "), "{text}");
                assert_ne!(error.code(), code::NOT_CONVERGED, "{} {}", function.name, shown(&request));
                refused += 1;
            }
        }
    }
    println!("{answered} answered, {refused} refused");
    assert!(answered > 20_000 && refused > 20_000, "{answered} answered, {refused} refused");
}

#[test]
fn two_thousand_random_packaging_days_are_planned() {
    let mut dice = Dice(1857);
    let mut whole = 0;
    for _ in 0..2000 {
        let mut request = random_request(&mut dice, &carb_core::plan::inputs());
        // A dose that was weighed and a carbonation wanted exclude each other, as do two volumes.
        for (key, other) in [(Key::Carbonation, Key::Mass), (Key::Packaged, Key::Batch), (Key::Batch, Key::Loss)] {
            if request.get(key).is_some() || other == Key::Loss && request.get(Key::Packaged).is_some() {
                request = request.without(other);
            }
        }
        // Gravities drawn at random contradict each other: half of the days do without.
        if dice.share() < 0.5 {
            for key in [Key::OriginalGravity, Key::CurrentGravity, Key::FinalGravity, Key::ExpectedAttenuation] {
                request = request.without(key);
            }
            for key in [Key::OriginalPlato, Key::CurrentPlato, Key::FinalPlato] {
                request = request.without(key);
            }
        }
        let day = match plan(&request, &Lists::new()) {
            Ok(day) => day,
            // What contradicts itself is refused as a whole.
            Err(error) => {
                assert_eq!(error.code(), code::EXCLUDED, "{error}");
                continue;
            }
        };
        let package = day.bottling.storage.iter().filter_map(|s| s.pressure.value());
        for pressure in package {
            assert!(pressure.worst.gauge.si().is_finite() && pressure.expected.gauge.si().is_finite());
            whole += 1;
        }
        if let Some(found) = day.bottling.expectation.value() {
            let [low, expected, high] = [found.low, found.expected, found.high].map(Carbonation::volumes);
            assert!(low <= expected && expected <= high, "{low} {expected} {high} for {}", shown(&request));
        }
    }
    println!("{whole} package pressures");
    assert!(whole > 100, "{whole}");
}

#[cfg(feature = "json")]
mod json {
    use super::*;
    use carb_core::plan::json::{answer_text, plan_text, read};
    use proptest::prelude::*;
    use proptest::test_runner::RngSeed;

    fn code_of(text: &str) -> i32 {
        read(text).expect_err(text).code()
    }

    #[test]
    fn what_is_no_json_is_refused_with_its_place() {
        for text in [
            "",
            " ",
            "{",
            "null x",
            "[1, 2]",
            "\"carb\"",
            "1",
            r#"{"carb": 1,}"#,
            r#"{"carb": 1} {}"#,
            r#"{"carb": 1} trailing"#,
            r#"{"carb": 1, "volumes": NaN}"#,
            r#"{"carb": 1, "volumes": Infinity}"#,
            r#"{"carb": 1, "volumes": -Infinity}"#,
            r#"{"carb": 1, "volumes": 1e999}"#,
            r#"{"carb": 1, "volumes": -1e999}"#,
            r#"{"carb": 1, "volumes": 0x10}"#,
            r#"{"carb": 1, "volumes": 2,5}"#,
            r#"{"carb": 1, "volumes": .5}"#,
            r#"{"carb": 1, "volumes": +2}"#,
            r#"{"carb": 1, "title": "\q"}"#,
            r#"{"carb": 1, "title": "\ud800"}"#,
            r#"{"carb": 1, "title": "\u12"}"#,
            "{\"carb\": 1, \"title\": \"a\nb\"}",
            "{'carb': 1}",
            "{carb: 1}",
            "\u{feff}{\"carb\": 1}",
        ] {
            let error = read(text).expect_err(text);
            assert_eq!(error.code(), code::BAD_JSON, "{text}: {error}");
            let Error::BadJson { line, .. } = error else { panic!("{error:?}") };
            assert!(line >= 1 || text.trim().is_empty(), "{text}: {error}");
            assert!(plan_text(text).contains("\"error\""), "{text}");
        }
        let Error::BadJson { line, column, .. } = read("{\"carb\": 1,\n \"volumes\": NaN}").unwrap_err() else {
            panic!()
        };
        assert_eq!(line, 2);
        assert!((12..=14).contains(&column), "{column}");
    }

    #[test]
    fn a_request_says_of_which_version_it_is() {
        for text in [
            "{}",
            r#"{"volumes": 2.5}"#,
            r#"{"carb": 2}"#,
            r#"{"carb": "1"}"#,
            r#"{"carb": null}"#,
            r#"{"carb": 1, "carb": 1}"#,
        ] {
            assert_eq!(code_of(text), code::WRONG_VERSION, "{text}");
        }
        assert!(read(r#"{"carb": 1}"#).is_ok() && read(r#"{"carb": 1.0}"#).is_ok());
    }

    #[test]
    fn a_name_is_given_once_and_holds_one_plain_value() {
        assert_eq!(code_of(r#"{"carb": 1, "volumes": 2.5, "volumes": 2.5}"#), code::GIVEN_TWICE);
        assert_eq!(code_of(r#"{"carb": 1, "temperature_c": 4, "temperature_f": 39.2}"#), code::GIVEN_TWICE);
        for value in ["[2.5]", "{}", "{\"volumes\": 2.5}", "null", "true", "\"2.5\""] {
            let text = format!("{{\"carb\": 1, \"volumes\": {value}}}");
            let error = read(&text).expect_err(&text);
            assert_eq!((error.code(), error.parameter().as_str()), (code::WRONG_TYPE, "volumes"), "{text}");
        }
        assert_eq!(code_of(r#"{"carb": 1, "sugar": 3}"#), code::WRONG_TYPE);
        assert_eq!(code_of(r#"{"carb": 1, "sugar": "dextrose"}"#), code::AMBIGUOUS_SUGAR);
        let answer = plan_text(r#"{"carb": 1, "tempertaure_c": 4}"#);
        assert!(answer.contains("did you mean \\\"temperature_c\\\"?"), "{answer}");
    }

    #[test]
    fn size_and_depth_harm_nobody() {
        let million = "x".repeat(1 << 20);
        let title = format!("{{\"carb\": 1, \"title\": \"{million}\"}}");
        assert_eq!(code_of(&title), code::WRONG_TYPE);
        let fitting = format!("{{\"carb\": 1, \"title\": \"{}\"}}", &million[..64]);
        assert_eq!(read(&fitting).unwrap().text(Key::Title).unwrap().as_str().len(), 64);
        assert_eq!(code_of(r#"{"carb": 1, "title": "two\nlines"}"#), code::WRONG_TYPE);
        assert_eq!(code_of(&format!("{{\"carb\": 1, \"{million}\": 1}}")), code::UNKNOWN_NAME);
        assert!(plan_text(&format!("{{\"carb\": 1, \"{million}\": 1}}")).len() < 1000);
        assert_eq!(code_of(&format!("{{\"carb\": 1, \"beverage\": \"{million}\"}}")), code::UNKNOWN_CHOICE);
        assert_eq!(code_of(&million), code::BAD_JSON);
        let digits = format!("{{\"carb\": 1, \"volumes\": 2.5{}}}", "0".repeat(1 << 20));
        assert_eq!(
            read(&digits).unwrap().number(Key::Carbonation),
            read(r#"{"carb": 1, "volumes": 2.5}"#).unwrap().number(Key::Carbonation)
        );
        for (open, close) in [("[", "]"), ("{\"a\":", "}")] {
            let inside = if open == "[" { "" } else { "1" };
            let deep = format!("{}{inside}{}", open.repeat(100_000), close.repeat(100_000));
            // Too deep a list is no object; of an object, the first name is already wrong.
            assert!([code::BAD_JSON, code::UNKNOWN_NAME].contains(&read(&deep).unwrap_err().code()));
            let error = read(&format!("{{\"carb\": 1, \"volumes\": {deep}}}")).unwrap_err();
            assert!([code::BAD_JSON, code::WRONG_TYPE].contains(&error.code()), "{error}");
        }
        let many = (0..20_000).map(|at| format!("\"n{at}\": {at},")).collect::<String>();
        assert_eq!(code_of(&format!("{{{many}\"carb\": 1}}")), code::UNKNOWN_NAME);
    }

    #[test]
    fn only_functions_that_exist_are_run() {
        let answer = answer_text("make_beer", r#"{"carb": 1}"#);
        assert!(answer.contains("\"error\"") && answer.contains("make_beer"), "{answer}");
        // The answer names every function and table that there is, and of the megabyte no more than a name's length.
        let names = FUNCTIONS.iter().map(|f| f.name).chain(TABLES.iter().map(|table| table.name));
        let known: usize = names.map(|name| name.len() + 2).sum();
        assert!(answer_text(&"x".repeat(1 << 20), "{}").len() < known + 500);
    }

    /// A text that answers: an object with an error or with values, and nothing that JSON has no word for.
    fn is_an_answer(answer: &str) -> bool {
        answer.starts_with("{\"carb\":1,")
            && answer.ends_with('}')
            && !answer.contains("NaN")
            && !answer.contains(":inf")
    }

    proptest! {
        #![proptest_config(ProptestConfig {
            cases: 3000, rng_seed: RngSeed::Fixed(1516), failure_persistence: None, ..ProptestConfig::default()
        })]

        #[test]
        fn random_bytes_are_no_request(bytes in proptest::collection::vec(any::<u8>(), 0..300)) {
            let text = String::from_utf8_lossy(&bytes);
            prop_assert!(is_an_answer(&plan_text(&text)));
            prop_assert!(plan_text(&text).contains("\"error\""));
            prop_assert!(is_an_answer(&answer_text(&text, &text)));
        }

        /// Examples with some bytes changed, dropped, doubled, or moved: many still parse.
        #[test]
        fn a_damaged_request_is_answered_or_refused(
            which in 0..FUNCTIONS.len(),
            damage in proptest::collection::vec((0..4u8, any::<prop::sample::Index>(), any::<u8>()), 1..5)
        ) {
            let function = FUNCTIONS[which];
            let mut bytes = function.example.replacen('{', "{\"carb\": 1, ", 1).into_bytes();
            for (kind, at, byte) in damage {
                let at = at.index(bytes.len());
                match kind {
                    0 => bytes[at] = byte,
                    1 => { bytes.remove(at); }
                    2 => bytes.insert(at, b"0123456789eE+-.\",:{}[]"[usize::from(byte) % 22]),
                    _ => {
                        let end = (at + usize::from(byte) % 20).min(bytes.len());
                        let part = bytes[at..end].to_vec();
                        bytes.splice(at..at, part);
                    }
                }
            }
            let text = String::from_utf8_lossy(&bytes);
            prop_assert!(is_an_answer(&answer_text(function.name, &text)), "{}", text);
            prop_assert!(is_an_answer(&plan_text(&text)), "{}", text);
        }
    }
}
