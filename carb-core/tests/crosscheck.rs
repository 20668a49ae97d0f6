//! The cross-check: claims of other programs held against this library's answers.
#![cfg(feature = "json")]

use carb_core::basis::Request;
use carb_core::basis::request::Raw;
use carb_core::crosscheck::{Claim, Crosscheck, Outcome, Printed, QUANTITIES, QUESTIONS, Verdict, crosscheck, json};
use carb_core::evidence::NoSteps;
use proptest::prelude::*;

/// A packaging day for each quantity: what a program would be told.
const DAYS: &[(&str, &str, &str)] = &[
    (
        "priming_sugar",
        "g",
        r#""volumes": 2.5, "warmest_f": 68, "packaged_us_gal": 5, "sugar": "sucrose", "altitude_m": 0"#,
    ),
    (
        "priming_sugar",
        "g_per_l",
        r#""co2_g_per_l": 5, "warmest_c": 20, "packaged_l": 20, "sugar": "honey", "altitude_m": 900"#,
    ),
    (
        "priming_sugar",
        "oz",
        r#""volumes": 2.4, "warmest_c": 35, "packaged_l": 20, "sugar": "dry_malt_extract", "altitude_m": 300, "fermentable_g_per_l": 1"#,
    ),
    ("priming_sugar", "lb", r#""volumes": 2.4, "residual_volumes": 0.9, "packaged_l": 40"#),
    (
        "priming_sugar",
        "kg",
        r#""volumes": 2.4, "warmest_c": 20, "packaged_l": 400, "altitude_m": 0, "fermenter_gauge_bar": 0.4"#,
    ),
    ("keg_pressure", "psi", r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#),
    ("keg_pressure", "bar", r#""co2_g_per_l": 5, "temperature_c": 6, "altitude_m": 1500, "co2_percent": 70"#),
    ("keg_pressure", "kpa", r#""volumes": 3, "temperature_c": 4, "ambient_kpa": 95, "beverage": "wine""#),
    ("keg_pressure", "psi", r#""volumes": 3.5, "temperature_c": 4, "altitude_m": 0, "beverage": "soft_drink""#),
    ("dissolved_co2", "volumes", r#""gauge_psi": 12, "temperature_f": 38, "altitude_m": 0"#),
    ("dissolved_co2", "co2_g_per_l", r#""abs_bar": 2.2, "temperature_c": 6"#),
    (
        "dissolved_co2",
        "volumes",
        r#""gauge_kpa": 180, "temperature_c": 4, "altitude_m": 2000, "co2_percent": 60, "beverage": "cider""#,
    ),
    ("residual_co2", "volumes", r#""warmest_c": 20, "altitude_m": 0"#),
    ("residual_co2", "co2_g_per_l", r#""warmest_f": 70, "altitude_m": 1600, "fermenter_gauge_psi": 5"#),
    ("package_pressure", "bar", r#""volumes": 2.4, "temperature_c": 30, "headspace_percent": 4, "altitude_m": 240"#),
    (
        "package_pressure",
        "psi",
        r#""volumes": 2.5, "temperature_f": 68, "headspace_percent": 3, "filling_f": 40, "altitude_m": 0"#,
    ),
    ("bottle_count", "count", r#""packaged_us_gal": 5, "bottle_us_fl_oz": 12"#),
    ("line_length", "ft", r#""gauge_psi": 11, "tube": "vinyl_3_16_in", "rise_ft": 2"#),
    ("line_length", "m", r#""gauge_bar": 0.9, "resistance_psi_per_ft": 2.2, "rise_m": 0.5, "hardware_psi": 1"#),
    (
        "gas_used",
        "g",
        r#""packaged_us_gal": 5, "volumes": 2.5, "start_volumes": 0.84, "temperature_f": 38, "gauge_psi": 11, "altitude_m": 0"#,
    ),
    (
        "gas_used",
        "oz",
        r#""packaged_l": 19, "keg_l": 19.6, "volumes": 2.5, "temperature_c": 4, "gauge_bar": 0.8, "altitude_m": 1200, "gas_loss_percent": 10, "purge": "empty", "purge_gauge_bar": 1, "cycles_count": 3"#,
    ),
    ("purge_cycles", "count", r#""purge_gauge_psi": 30, "oxygen_ppm": 1000, "altitude_m": 0"#),
    ("purge_cycles", "count", r#""purge_gauge_bar": 1.5, "oxygen_ppm": 200, "altitude_m": 1500, "gas_oxygen_ppm": 5"#),
    ("alcohol", "percent", r#""original_sg": 1.048, "current_sg": 1.010"#),
    ("alcohol", "abv_percent", r#""original_plato": 12.5, "current_plato": 2.4"#),
];

fn found(claims: &str) -> Crosscheck {
    let text = format!(r#"{{"carb": 1, "claims": [{claims}], "most_readings": 1000}}"#);
    json::crosscheck_of(&text).unwrap_or_else(|refusal| panic!("{refusal}: {text}"))
}

fn claim(quantity: &str, value: &str, unit: &str, told: &str) -> String {
    format!(r#"{{"quantity": "{quantity}", "value": "{value}", "unit": "{unit}", {told}}}"#)
}

fn outcome(found: &Crosscheck) -> &Outcome {
    found.claims[0].outcome.as_ref().unwrap_or_else(|error| panic!("{error}"))
}

/// Why a claim may hurt somebody, whether or not it has an answer.
fn danger(quantity: &str, value: &str, unit: &str, told: &str) -> Option<String> {
    found(&claim(quantity, value, unit, told)).claims[0].danger.clone()
}

/// One claim that has an answer.
fn one(quantity: &str, value: &str, unit: &str, told: &str) -> Outcome {
    outcome(&found(&claim(quantity, value, unit, told))).clone()
}

fn habits(outcome: &Outcome) -> Vec<Vec<(&'static str, &'static str)>> {
    let named = |reading: &carb_core::crosscheck::Reading| {
        reading.departures.iter().map(|d| (d.question.matter().name, d.habit.name)).collect()
    };
    outcome.readings.iter().map(named).collect()
}

#[test]
fn every_quantity_has_a_day_and_a_program_with_our_habits_says_what_we_say() {
    for quantity in QUANTITIES {
        assert!(DAYS.iter().any(|(name, ..)| *name == quantity.name), "no day for {}", quantity.name);
    }
    for (quantity, unit, told) in DAYS {
        let digits = if *quantity == "bottle_count" { "1" } else { "1.0" };
        let ours = one(quantity, digits, unit, told).ours;
        // Printed to so many digits nothing but our own habits fits.
        let again = one(quantity, &format!("{ours:.9}"), unit, told);
        assert_eq!(again.verdict, Verdict::Agrees, "{quantity} {told}");
        let reading = again.readings.iter().find(|reading| reading.departures.is_empty());
        let reading = reading.unwrap_or_else(|| panic!("{quantity} {told}: {ours} {:?}", again.readings));
        assert!((reading.value - ours).abs() <= 1e-9 * ours.abs(), "{quantity} {told}: {} {ours}", reading.value);
        // What it says is what its function says.
        let asked = &found(&claim(quantity, "1", unit, told)).claims[0].claim;
        if let Some(function) = asked.quantity.function {
            let answer = function.answer(&asked.asked(), &mut NoSteps).expect("an answer");
            let si = answer.value.as_slice()[asked.unit.output];
            assert!((asked.unit.unit.from_si(si) - ours).abs() <= 1e-12 * ours.abs(), "{quantity}");
        }
    }
}

#[test]
fn the_shares_of_a_question_are_a_whole_and_its_habits_have_names_of_their_own() {
    let mut names = Vec::new();
    for matter in QUESTIONS {
        let sum: f64 = matter.habits.iter().map(|habit| habit.prior).sum();
        assert!((sum - 1.0).abs() < 1e-12, "{}: {sum}", matter.name);
        for habit in matter.habits {
            assert!(habit.prior > 0.0 && !habit.says.is_empty(), "{} {}", matter.name, habit.name);
        }
        let mut known: Vec<_> = matter.habits.iter().map(|habit| habit.name).collect();
        known.sort_unstable();
        known.dedup();
        assert_eq!(known.len(), matter.habits.len(), "{}", matter.name);
        names.push(matter.name);
    }
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), QUESTIONS.len());
}

#[test]
fn the_hydrate_that_was_taken_for_anhydrous_sugar_is_found() {
    let told =
        r#""volumes": 2.5, "warmest_f": 68, "packaged_us_gal": 5, "sugar": "dextrose_monohydrate", "altitude_m": 0"#;
    // By hand: 18.92706 L x (2.5 - 0.8615) vol x 1.9768 g/L / 0.48857 g/g.
    let outcome = one("priming_sugar", "125.48", "g", told);
    assert_eq!(outcome.verdict, Verdict::Explained);
    assert_eq!(habits(&outcome)[0], [("sugar_taken", "anhydrous")]);
    let size = outcome.readings[0].departures[0].size.expect("a size");
    // 180.156/198.171, which is the hydrate's water.
    assert!((size + 1.0 - 180.156 / 198.171).abs() < 1e-5, "{size}");
}

#[test]
fn a_forgotten_altitude_is_found() {
    let told = r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 1609.344"#;
    let sea_level = one("keg_pressure", "1", "psi", r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#).ours;
    let outcome = one("keg_pressure", &format!("{sea_level:.2}"), "psi", told);
    assert_eq!(outcome.verdict, Verdict::Explained);
    assert_eq!(habits(&outcome)[0], [("altitude", "forgotten")]);
}

#[test]
fn printed_digits_make_the_interval() {
    let told = r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#;
    assert_eq!(one("keg_pressure", "11.2", "psi", told).verdict, Verdict::Agrees);
    assert_ne!(one("keg_pressure", "11.20", "psi", told).verdict, Verdict::Agrees);
    assert_eq!(one("keg_pressure", "11", "psi", told).verdict, Verdict::Agrees);
    assert_eq!(one("keg_pressure", "1.1e1", "psi", told).verdict, Verdict::Agrees);
    // More digits say more: chance falls with each.
    let chance = |value| one("keg_pressure", value, "psi", told).chance;
    assert!(chance("11") > chance("11.2") && chance("11.2") > chance("11.21"));
}

#[test]
fn a_dose_that_would_burst_bottles_is_unsafe_before_all_else() {
    let told = r#""volumes": 2.5, "warmest_c": 20, "packaged_l": 19, "altitude_m": 0"#;
    assert_eq!(danger("priming_sugar", "120", "g", told), None);
    let claims = format!("{},{}", claim("priming_sugar", "120", "g", told), claim("priming_sugar", "400", "g", told));
    let found = found(&claims);
    assert!(found.danger());
    assert!(found.claims[1].danger.as_ref().is_some_and(|text| text.contains("burst")), "{:?}", found.claims[1].danger);
    assert!(found.claims[1].sentences().starts_with("UNSAFE"));
    let page = found.to_text();
    assert!(page.find("UNSAFE").unwrap_or(usize::MAX) < page.find("Claims\n").unwrap_or(0), "{page}");
    assert!(page.contains("maker's rating"));
}

#[test]
fn a_bottle_of_its_class_judges_the_dose() {
    let told = r#""volumes": 3.5, "warmest_c": 20, "packaged_l": 19, "altitude_m": 0"#;
    let ours = one("priming_sugar", "1", "g", told).ours;
    let dose = format!("{ours:.0}");
    let in_class = |class: &str| danger("priming_sugar", &dose, "g", &format!(r#"{told}, "bottle_class": "{class}""#));
    assert!(in_class("light_one_way").is_some());
    assert!(in_class("champagne").is_none());
}

#[test]
fn a_pressure_beyond_the_keg_is_unsafe() {
    let told = r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#;
    assert_eq!(danger("keg_pressure", "11.2", "psi", told), None);
    // Some kegs are marked for 60 psi; who knows of a stronger one says so.
    assert!(danger("keg_pressure", "61", "psi", told).is_some());
    assert_eq!(danger("keg_pressure", "61", "psi", &format!(r#"{told}, "keg_rating_gauge_psi": 130"#)), None);
    let rated = format!(r#"{told}, "keg_rating_gauge_psi": 10"#);
    assert!(danger("keg_pressure", "11.2", "psi", &rated).is_some_and(|text| text.contains("rated")));
}

#[test]
fn every_told_rating_judges_every_told_pressure() {
    let sealed = r#""volumes": 2.4, "temperature_c": 30, "headspace_percent": 4, "altitude_m": 0"#;
    assert_eq!(danger("package_pressure", "2.6", "bar", sealed), None);
    assert!(danger("package_pressure", "2.6", "bar", &format!(r#"{sealed}, "keg_rating_gauge_bar": 1"#)).is_some());
    assert!(danger("package_pressure", "15", "bar", &format!(r#"{sealed}, "rating_gauge_bar": 4"#)).is_some());
    let held = r#""gauge_psi": 200, "temperature_f": 38, "altitude_m": 0, "keg_rating_gauge_bar": 4"#;
    assert!(danger("dissolved_co2", "21", "volumes", held).is_some());
    let closed = r#""warmest_c": 20, "altitude_m": 0, "fermenter_gauge_bar": 3, "keg_rating_gauge_bar": 1"#;
    assert!(danger("residual_co2", "3.4", "volumes", closed).is_some());
    // A rating that judges nothing is refused, so that nobody relies on it.
    let told = r#""volumes": 2.5, "warmest_c": 20, "packaged_l": 19, "altitude_m": 0, "keg_rating_gauge_bar": 9"#;
    let text = format!(r#"{{"carb": 1, "claims": [{}]}}"#, claim("priming_sugar", "120", "g", told));
    assert_eq!(json::crosscheck_of(&text).expect_err("a refusal").error.parameter().as_str(), "keg_rating_gauge_bar");
}

#[test]
fn what_this_library_cannot_answer_is_judged_all_the_same() {
    let light = r#""bottle_class": "light_one_way", "volumes": 2.5, "packaged_l": 19, "sugar": "sucrose""#;
    for told in [
        // Measured residual and no altitude; nothing but a dose; unfinished beer; a drink whose extract nobody told.
        format!(r#"{light}, "residual_volumes": 0.86"#),
        light.into(),
        format!(r#"{light}, "warmest_c": 20, "altitude_m": 0, "fermentable_g_per_l": 8"#),
        format!(r#"{light}, "warmest_c": 20, "altitude_m": 0, "beverage": "cider""#),
    ] {
        let found = found(&claim("priming_sugar", "400", "g", &told));
        assert!(found.danger() && found.claims[0].sentences().starts_with("UNSAFE"), "{told}");
        assert!(found.to_text().contains("1 unsafe"));
    }
    // What no bottle holds is said in words, not as a number out of its limits.
    let text = danger("priming_sugar", "20000", "g", &format!(r#"{light}, "residual_volumes": 0.86"#));
    assert!(text.is_some_and(|text| text.contains("glass bursts")));
    // 80 g on top of 8 g/L that still ferments.
    let told = format!(r#"{light}, "warmest_c": 20, "altitude_m": 0, "fermentable_g_per_l": 8"#);
    assert!(danger("priming_sugar", "80", "g", &told).is_some());
}

#[test]
fn slips_of_units_are_explained() {
    let keg = r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#;
    let sugar = r#""volumes": 2.5, "warmest_c": 20, "packaged_us_gal": 5, "altitude_m": 0"#;
    // By hand: 11.214 psi is 77.32 kPa; 2.576 volumes are 5.092 g/L; an imperial gallon is 1.20095 US gallons.
    let cases = [
        ("keg_pressure", "77.3", "psi", keg, ("pressure_label", "kpa")),
        ("keg_pressure", "25.9", "psi", keg, ("gauge", "absolute")),
        (
            "dissolved_co2",
            "5.09",
            "volumes",
            r#""gauge_psi": 12, "temperature_f": 38, "altitude_m": 0"#,
            ("carbonation_unit", "other"),
        ),
        ("priming_sugar", "143.2", "g", sugar, ("gallon", "other")),
    ];
    for (quantity, value, unit, told, slip) in cases {
        let outcome = one(quantity, value, unit, told);
        assert_eq!(outcome.verdict, Verdict::Explained, "{quantity} {value}: {:?}", habits(&outcome));
        assert!(habits(&outcome)[0].contains(&slip), "{quantity} {value}: {:?}", habits(&outcome));
    }
}

#[test]
fn whole_purge_cycles_have_to_be_enough() {
    // By hand: ln(70/209470)/ln(14.696/29.696) = 11.38.
    let told = r#""purge_gauge_psi": 15, "oxygen_ppm": 100, "altitude_m": 0"#;
    assert_eq!(one("purge_cycles", "12", "count", told).verdict, Verdict::Agrees);
    assert_ne!(one("purge_cycles", "11", "count", told).verdict, Verdict::Agrees);
    assert_eq!(one("purge_cycles", "11.38", "count", told).verdict, Verdict::Agrees);
}

#[test]
fn claims_of_one_program_are_joined_on_what_they_share() {
    // All made with 1.9635 g/L, anhydrous dextrose, the quadratic and a forgotten altitude.
    let sugar = |volumes: f64, litres: f64| {
        let left = 3.0378 - 0.050062 * 68.0 + 0.00026555 * 68.0 * 68.0;
        let grams = litres * (volumes - left) * (44.0095 / 22.41397) / (2.0 * 44.0095 / 180.156);
        let told = format!(
            r#""program": "A", "volumes": {volumes}, "warmest_f": 68, "packaged_l": {litres}, "sugar": "dextrose_monohydrate", "altitude_m": 1500"#
        );
        claim("priming_sugar", &format!("{grams:.1}"), "g", &told)
    };
    let keg = |v: f64, f: f64| {
        let psi = -16.6999 - 0.0101059 * f + 0.00116512 * f * f + 0.173354 * f * v + 4.24267 * v - 0.0684226 * v * v;
        let told = format!(r#""program": "A", "volumes": {v}, "temperature_f": {f}, "altitude_m": 1500"#);
        claim("keg_pressure", &format!("{psi:.2}"), "psi", &told)
    };
    let claims = [sugar(2.5, 19.0), sugar(2.1, 40.0), sugar(2.8, 23.0), keg(2.5, 38.0), keg(2.2, 50.0), keg(2.8, 40.0)];
    let found = found(&claims.join(","));
    let [program] = found.programs.as_slice() else { panic!("one program: {:?}", found.programs) };
    assert_eq!((program.name.as_str(), program.answered), ("A", 6));
    let first = &program.survivors[0];
    let said: Vec<_> = first.departures.iter().map(|d| (d.question.matter().name, d.habit.name)).collect();
    let wanted = [
        ("gas_volume", "ideal"),
        ("beer_solubility", "quadratic"),
        ("sugar_taken", "anhydrous"),
        ("altitude", "forgotten"),
    ];
    assert_eq!(said, wanted, "{:#?}", program.survivors);
    assert!(program.survivors.len() <= 2, "{:#?}", program.survivors);
    // What a survivor makes of each claim rounds to it.
    for survivor in &program.survivors {
        for (value, at) in survivor.values.iter().zip(&program.claims) {
            let printed = &found.claims[at - 1].claim.printed;
            assert!((value - printed.value).abs() <= 0.501 * printed.step, "{value} {}", printed.text);
        }
    }
    // A seventh claim that does not fit leaves nothing.
    let mut with_wrong = claims.to_vec();
    with_wrong.push(claim(
        "keg_pressure",
        "19.07",
        "psi",
        r#""program": "A", "volumes": 2.5, "temperature_f": 38, "altitude_m": 1500"#,
    ));
    let found = self::found(&with_wrong.join(","));
    assert!(found.programs[0].survivors.is_empty());
    assert!(found.programs[0].sentences().starts_with("No habits"));
}

#[test]
fn parts_are_merged_as_if_they_had_been_asked_together() {
    let sugar = r#""volumes": 2.5, "warmest_c": 20, "packaged_l": 19, "altitude_m": 0"#;
    let keg = r#""volumes": 2.5, "temperature_c": 4, "altitude_m": 700"#;
    let of = |program: &str, told: &str| format!(r#""program": "{program}", {told}"#);
    let claims = [
        claim("priming_sugar", "117.1", "g", &of("A", sugar)),
        claim("keg_pressure", "0.80", "bar", &of("B", keg)),
        claim("keg_pressure", "0.80", "bar", &of("A", keg)),
        claim("priming_sugar", "119.0", "g", &of("B", sugar)),
        claim("priming_sugar", "130", "g", sugar),
    ];
    let together = found(&claims.join(","));
    let part = |places: &[usize]| {
        let some: Vec<&str> = places.iter().map(|&at| claims[at].as_str()).collect();
        (places.to_vec(), found(&some.join(",")))
    };
    let merged = Crosscheck::merged(vec![part(&[1, 3]), part(&[0, 2, 4])]);
    assert_eq!(json::answer(&merged), json::answer(&together));
    assert_eq!(merged.to_text(), together.to_text());
}

#[test]
fn what_this_library_cannot_answer_is_an_error_of_its_row() {
    let found = found(
        r#"{"quantity": "keg_pressure", "value": "11", "unit": "psi", "volumes": 2.5, "temperature_f": 38},
           {"quantity": "alcohol", "value": "5.0", "unit": "percent", "original_sg": 1.048, "current_sg": 1.010},
           {"quantity": "bottle_count", "value": "50", "unit": "count", "bottle_ml": 330}"#,
    );
    let error = found.claims[0].outcome.as_ref().expect_err("no altitude");
    assert_eq!(error.parameter().as_str(), "altitude_m");
    assert!(found.claims[1].outcome.is_ok() && found.answered());
    assert_eq!(found.claims[2].outcome.as_ref().expect_err("no volume").parameter().as_str(), "packaged_l");
}

#[test]
fn what_cannot_be_read_is_refused_with_its_row_and_its_column() {
    let told = r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#;
    let good = claim("keg_pressure", "11", "psi", told);
    let refused = |claims: &str| {
        let text = format!(r#"{{"carb": 1, "claims": [{claims}]}}"#);
        json::crosscheck_of(&text).expect_err("a refusal")
    };
    let cases = [
        (claim("keg_presure", "11", "psi", told), "quantity"),
        (claim("keg_pressure", "11", "feet", told), "unit"),
        (claim("keg_pressure", "", "psi", told), "value"),
        (claim("keg_pressure", "11 psi", "psi", told), "value"),
        (claim("keg_pressure", "11,2", "psi", told), "value"),
        (claim("keg_pressure", "inf", "psi", told), "value"),
        (claim("keg_pressure", "1e999", "psi", told), "value"),
        (claim("keg_pressure", "0x1p3", "psi", told), "value"),
        (claim("keg_pressure", "11", "psi", r#""volumez": 2.5"#), "volumez"),
        (claim("keg_pressure", "11", "psi", r#""volumes": "much""#), "volumes"),
        (claim("keg_pressure", "11", "psi", r#""volumes": 2.5, "co2_g_per_l": 5"#), "co2_g_per_l"),
        (claim("keg_pressure", "11", "psi", r#""model": "water_core""#), "model"),
        (claim("keg_pressure", "11", "psi", r#""sugar": "sucrose""#), "sugar"),
        (claim("keg_pressure", "11", "psi", r#""value": "12""#), "value"),
        (r#"{"value": "11", "unit": "psi"}"#.into(), "quantity"),
        (r#"{"quantity": "keg_pressure", "value": "11"}"#.into(), "unit"),
        ("7".into(), "claims"),
    ];
    for (bad, parameter) in cases {
        let refusal = refused(&format!("{good}, {bad}"));
        assert_eq!(refusal.place, Some(("claims", 2)), "{bad}");
        assert_eq!(refusal.error.parameter().as_str(), parameter, "{bad}: {refusal}");
        let text = refusal.to_string();
        assert!(text.starts_with("in row 2 of claims: ") && text.len() > 40, "{text}");
    }
    for whole in [
        r#"{"claims": []}"#,
        r#"{"carb": 1}"#,
        r#"{"carb": 2, "claims": []}"#,
        r#"{"carb": 1, "claims": {}}"#,
        r#"{"carb": 1, "claims": [], "claims": []}"#,
        r#"{"carb": 1, "claims": [], "most_readings": -1}"#,
        r#"{"carb": 1, "claims": [], "most_readings": 1.5}"#,
        r#"{"carb": 1, "claims": [], "more": 1}"#,
        r#"{"carb": 1, "claims": ["#,
        "",
    ] {
        assert!(json::crosscheck_of(whole).is_err_and(|refusal| refusal.place.is_none()), "{whole}");
    }
    assert_eq!(json::crosscheck_of(r#"{"carb": 1, "claims": []}"#).expect("nothing").claims.len(), 0);
}

#[test]
fn printed_numbers_keep_their_digits() {
    let step = |text: &str| Printed::read(text).map(|printed| (printed.value, printed.step));
    assert_eq!(step("140").expect("whole"), (140.0, 1.0));
    assert_eq!(step("140.").expect("whole"), (140.0, 1.0));
    assert_eq!(step(" 4.0 ").expect("tenths"), (4.0, 0.1));
    assert_eq!(step("-.25").expect("hundredths"), (-0.25, 0.01));
    assert_eq!(step("1.4e2").expect("tens"), (140.0, 10.0));
    let (value, step) = step("5.0E-1").expect("hundredths");
    assert!((value - 0.5).abs() < 1e-15 && (step - 0.01).abs() < 1e-15);
    assert_eq!(Printed::of(11.25).expect("a number").step, 0.01);
    assert!(Printed::of(f64::NAN).is_err() && Printed::of(f64::INFINITY).is_err());
    assert!(Printed::read("1e127").is_err() && Printed::read("0.0000000000001").is_err());
}

#[test]
fn a_claim_by_hand_is_as_one_in_json() {
    let mut request = Request::new();
    for (name, number) in [("volumes", 2.5), ("temperature_f", 38.0), ("altitude_m", 0.0)] {
        request.set(name, Raw::Number(number)).expect("an input");
    }
    let claim = Claim::new("keg_pressure", "11.3", "gauge_psi", request).expect("a claim").labelled("chart");
    let by_hand = crosscheck(vec![claim.clone().of_program("A")]);
    let told = r#""label": "chart", "program": "A", "volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#;
    let read = found(&self::claim("keg_pressure", "11.3", "psi", told));
    let same = |a: &Crosscheck| a.claims[0].sentences();
    assert_eq!(same(&by_hand), same(&read));
    // One claim makes no program.
    assert!(by_hand.programs.is_empty());
}

fn wrong_number() -> impl Strategy<Value = (usize, f64, usize)> {
    (0..DAYS.len(), 0.5..1.6, 0..4usize)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 150, ..ProptestConfig::default() })]

    #[test]
    fn whatever_is_claimed_the_finding_is_consistent((day, factor, places) in wrong_number()) {
        let (quantity, unit, told) = DAYS[day];
        let ours = one(quantity, "1", unit, told).ours;
        let text = format!("{:.places$}", ours * factor);
        let outcome = one(quantity, &text, unit, told);
        let printed = Printed::read(&text).expect("a number");
        prop_assert!(outcome.chance > 0.0 && outcome.chance <= 1.0);
        prop_assert!((0.0..=1.0 + 1e-9).contains(&outcome.mass) && (0.0..=1.0).contains(&outcome.matched));
        prop_assert_eq!(outcome.readings.is_empty(), outcome.mass == 0.0);
        prop_assert_eq!(outcome.nearest.is_some(), outcome.readings.is_empty());
        prop_assert!(outcome.readings.iter().all(|r| (r.value - printed.value).abs() <= 0.501 * printed.step + 4e-5 * printed.value.abs()));
        prop_assert!(outcome.readings.windows(2).all(|pair| pair[0].prior >= pair[1].prior));
        let agrees = (outcome.ours - printed.value).abs() <= 0.5 * printed.step;
        prop_assert!(!agrees || outcome.verdict == Verdict::Agrees);
        if outcome.verdict == Verdict::Explained {
            prop_assert!(outcome.mass >= 3.0 * outcome.chance);
        }
        if outcome.verdict == Verdict::NotExplained {
            prop_assert!(outcome.readings.is_empty());
        }
        // No two readings are told by the same words.
        let told: Vec<_> = habits(&outcome);
        for (at, words) in told.iter().enumerate() {
            prop_assert!(!told[..at].contains(words), "{words:?}");
        }
    }

    #[test]
    fn no_text_makes_it_panic(text in ".{0,60}") {
        let _ = Printed::read(&text);
        let _ = json::crosscheck_of(&text);
        let quoted = serde_json::to_string(&text).expect("a text");
        let _ = json::crosscheck_of(&format!(r#"{{"carb": 1, "claims": [{{"quantity": "alcohol", "unit": "percent", "value": {quoted}, "label": {quoted}}}]}}"#));
    }
}
