//! The kegging job: every part is what its function says of the same day, conserves what it should, and warns where a keg
//! could burst.
#![cfg(feature = "json")]
#![allow(clippy::disallowed_methods)]

use carb_core::error::code;
use carb_core::evidence::{Level, NoSteps};
use carb_core::plan::json::{answer_text, kegging_of, plan_of};
use carb_core::plan::{KegPart, Kegging};
use carb_core::quantity::unit::{BAR, DAY, GRAM, HOUR, LITRE, PSI, VOLUMES};
use carb_core::quantity::{Carbonation, Key};

const BATCH: &str =
    r#""carb": 1, "packaged_l": 18.93, "volumes": 2.5, "warmest_c": 20, "altitude_m": 0, "serving_c": 3.5"#;

fn job(more: &str) -> Kegging {
    kegging_of(&format!("{{{BATCH}, {more}}}")).unwrap_or_else(|refusal| panic!("{more}: {refusal}"))
}

fn part<'a>(job: &'a Kegging, place: &str) -> &'a KegPart {
    job.part(place).unwrap_or_else(|| panic!("no {place}"))
}

fn value(job: &Kegging, place: &str, noun: &str, key: Key) -> f64 {
    job.value(place, noun, key).unwrap_or_else(|| panic!("{place} {noun}: {:?}", part(job, place).part.answer))
}

fn cautions(job: &Kegging) -> Vec<&'static str> {
    let answers = job.parts.iter().filter_map(|part| part.part.answer.as_ref().ok());
    answers.flat_map(|answer| answer.notes.cautions.iter().map(|caution| caution.kind.code)).collect()
}

#[test]
fn every_part_is_what_its_function_says() {
    let all = job(
        r#""final_sg": 1.01, "room_m3": 30, "fill_method": "automatic", "outfit_money": 300, "bottle_money": 0.6, "method": "stone", "burst_gauge_bar": 1.6, "wetting_psi": 4, "depth_m": 0.5, "purge": "push", "cycles_count": 3, "line_m": 3"#,
    );
    assert!(all.parts.len() > 15, "{:?}", all.parts.iter().map(|part| part.place).collect::<Vec<_>>());
    for part in &all.parts {
        let again = part.function.answer(&part.request, &mut NoSteps);
        let (here, there) = (part.part.answer.as_ref(), again.as_ref());
        match (here, there) {
            (Ok(here), Ok(there)) => assert_eq!(here.value, there.value, "{}", part.place),
            (here, there) => panic!("{}: {:?} {:?}", part.place, here.err(), there.err()),
        }
    }
}

#[test]
fn a_week_to_ten_days_at_serving_pressure() {
    // Common practice, no source: 10 to 12 psi at 3 to 4 °C carbonates in about a week to ten days.
    let found = job(r#""title": "as usual""#);
    let gauge = PSI.from_si(value(&found, "regulator", "", Key::Gauge));
    assert!((10.0..=12.5).contains(&gauge), "{gauge}");
    let days = DAY.from_si(value(&found, "carbonating", "expected", Key::Time));
    assert!((6.0..=10.0).contains(&days), "{days}");
    let volumes: Vec<f64> = found.days.iter().map(|day| day.carbonation.expected.volumes()).collect();
    assert!(volumes.windows(2).all(|pair| pair[0] < pair[1]), "{volumes:?}");
    assert!(found.days.iter().all(|day| day.carbonation.least.si() <= day.carbonation.most.si()));
    let week = volumes[4];
    assert!((2.3..2.5).contains(&week), "{week} after a week");
}

#[test]
fn a_burst_ends_before_even_a_fast_keg_passes_the_target() {
    let found = job(r#""burst_gauge_psi": 30"#);
    let stop = HOUR.from_si(value(&found, "burst", "stop", Key::Time));
    let expected = VOLUMES.from_si(value(&found, "burst", "expected", Key::Carbonation));
    assert!((20.0..40.0).contains(&stop) && expected < 2.5, "{stop} h, {expected}");
    // Where the keg is not rated for it, it is a danger, and without being told of a burst there is none.
    let weak = job(r#""burst_gauge_psi": 30, "keg_rating_gauge_psi": 25"#);
    assert!(cautions(&weak).contains(&"working_pressure_danger") && weak.danger());
    assert!(job(r#""keg_rating_gauge_psi": 25"#).part("burst").is_none());
    // A rocked keg, and a drink that holds enough already, need none.
    assert!(job(r#""method": "rocked""#).part("burst").is_none());
}

#[test]
fn the_gas_of_a_keg_is_itemised_and_adds_up() {
    let found = job(r#""gas_loss_percent": 20, "purge": "empty", "purge_gauge_psi": 15, "cycles_count": 5"#);
    let of = |noun| GRAM.from_si(value(&found, "gas", noun, Key::Gas));
    let parts: f64 = ["dissolve", "headspace", "purge", "serve", "loss"].into_iter().map(of).sum();
    assert!((parts - of("total")).abs() < 1e-9, "{parts} {}", of("total"));
    let (start, target) = (found.start.value().unwrap().si(), Carbonation::from_volumes(2.5).si());
    let dissolved = (target - start) * LITRE.from_si(found.kegs.value().unwrap().drink.si());
    assert!((of("dissolve") - dissolved).abs() < 1e-9, "{dissolved}");
    // Common practice, no source: 6 to 8 kegs from 5 lb, with purging and losses; some 17 at the bare minimum.
    assert!((4.5..8.0).contains(&value(&found, "gas", "", Key::Kegs)), "{:?}", part(&found, "gas").part.value());
    assert!((16.5..18.5).contains(&value(&found, "gas", "most", Key::Kegs)));
}

#[test]
fn several_kegs_share_a_batch() {
    let found =
        kegging_of(r#"{"carb": 1, "batch_l": 52, "loss_l": 2, "volumes": 2.4, "start_volumes": 0.8, "altitude_m": 0}"#);
    let found = found.unwrap();
    let kegs = *found.kegs.value().unwrap();
    assert_eq!(kegs.count, 3);
    assert!((kegs.drink.l() - 50.0 / 3.0).abs() < 1e-9 && (kegs.gas().l() - (19.6 - 50.0 / 3.0)).abs() < 1e-9);
    // A keg that is just full enough is one keg.
    let full = job(r#""keg_l": 19.3086"#);
    assert_eq!(full.kegs.value().unwrap().count, 1);
    let over = job(r#""keg_l": 19.3"#);
    assert_eq!(over.kegs.value().unwrap().count, 2);
}

#[test]
fn under_a_blend_the_drink_takes_up_co2_as_under_co2_alone() {
    let (pure, blend) = (job(r#""co2_percent": 100"#), job(r#""co2_percent": 70"#));
    let gauge = |job: &Kegging| BAR.from_si(value(job, "regulator", "", Key::Gauge));
    assert!(gauge(&blend) > gauge(&pure) + 0.5, "{} {}", gauge(&blend), gauge(&pure));
    let time = |job: &Kegging| value(job, "carbonating", "expected", Key::Time);
    assert!((time(&blend) / time(&pure) - 1.0).abs() < 1e-9);
    // What is over the drink when it is served pushes it through the line.
    assert!(value(&blend, "line", "", Key::Line) > value(&pure, "line", "", Key::Line));
}

#[test]
fn a_warm_keg_is_judged_by_its_rating() {
    let safe = job(r#""keg_rating_gauge_bar": 9, "hot_day_c": 35"#);
    assert!(!safe.danger() && !cautions(&safe).contains(&"vessel_unrated"), "{:?}", cautions(&safe));
    let weak = job(r#""keg_rating_gauge_bar": 2, "hot_day_c": 35"#);
    assert!(weak.danger() && weak.to_text().contains("DANGER"));
    assert!(cautions(&job(r#""title": "no marking told""#)).contains(&"vessel_unrated"));
    // A cylinder in a small room is a danger to whoever is in it, and the page says so first.
    let cellar = job(r#""room_m3": 9, "keg_rating_gauge_bar": 9"#);
    let page = cellar.to_text();
    let (danger, keg) = (page.find("DANGER").unwrap(), page.find("In a keg").unwrap());
    assert!(cellar.danger() && danger < keg, "{page}");
}

#[test]
fn what_one_part_lacks_is_an_error_of_that_part() {
    // Nothing is said of the fermentation: the pressure is known, the time is not.
    let found = kegging_of(r#"{"carb": 1, "packaged_l": 19, "volumes": 2.5, "altitude_m": 0}"#).unwrap();
    assert!(found.answered());
    let error = part(&found, "carbonating").part.answer.as_ref().unwrap_err();
    assert_eq!((error.code(), error.parameter().as_str()), (code::MISSING, "warmest_c"));
    // Nothing of the air: not even the pressure.
    let found = kegging_of(r#"{"carb": 1, "packaged_l": 19, "volumes": 2.5, "warmest_c": 20}"#).unwrap();
    assert!(!found.answered());
    // A temperature that is wrong is named as the job calls it.
    let found = kegging_of(
        r#"{"carb": 1, "packaged_l": 19, "volumes": 2.5, "start_volumes": 0.8, "altitude_m": 0, "serving_f": 200}"#,
    );
    let error = *found.unwrap().part("regulator").unwrap().part.answer.as_ref().unwrap_err();
    assert_eq!((error.code(), error.parameter().as_str()), (code::OUT_OF_RANGE, "serving_f"));
    // No keg half of a drink that holds more than is wanted, and its page says why.
    let found = job(r#""co2_percent": 100, "start_volumes": 3.2"#);
    assert!(value(&found, "carbonating", "expected", Key::Time) > 0.0, "it is vented");
    assert!(found.part("keg_priming").is_none() && value(&found, "gas", "dissolve", Key::Gas) == 0.0);
}

#[test]
fn the_plan_keeps_both_ways_side_by_side() {
    let plan =
        plan_of(&format!(r#"{{{BATCH}, "outfit_money": 240, "bottle_money": 0.7, "gas_money_per_kg": 6}}"#)).unwrap();
    let alone = job(r#""outfit_money": 240, "bottle_money": 0.7, "gas_money_per_kg": 6"#);
    assert_eq!(plan.kegging.value("regulator", "", Key::Gauge), alone.value("regulator", "", Key::Gauge));
    let page = plan.to_text();
    let (bottles, keg, choice) =
        (page.find("In bottles").unwrap(), page.find("In a keg").unwrap(), page.find("Bottle or keg?").unwrap());
    assert!(bottles < keg && keg < choice && page.contains("The keg has paid with batch"), "{page}");
    // Where the sugar was weighed, the keg is for what it makes.
    let weighed = plan_of(
        r#"{"carb": 1, "packaged_l": 18.93, "mass_g": 120, "warmest_c": 20, "altitude_m": 0, "serving_c": 3.5}"#,
    )
    .unwrap();
    let made = weighed.bottling.primed.value().unwrap().carbonation;
    let asked = part(&weighed.kegging, "regulator").request.number(Key::Carbonation).unwrap();
    assert!((asked - made.si()).abs() < 1e-12);
}

#[test]
fn every_kegging_page_fits_eighty_columns() {
    for more in [
        r#""title": "as usual""#,
        r#""final_sg": 1.01, "room_ft3": 500, "fill_method": "tap_tube", "method": "stone", "wetting_psi": 4, "depth_m": 0.5, "purge": "push", "cycles_count": 3, "line_ft": 10, "bore_in": 0.1875"#,
        r#""co2_percent": 25, "keg_l": 5, "purge": "none", "charge_kg": 10, "kla_per_h": 0.02, "flow_us_fl_oz_per_s": 2"#,
        r#""outfit_money": 100000, "bottle_money": 0.01, "cylinder_size": "cartridge_16_g", "batches_count": 3, "uses_count": 1"#,
        r#""yeast": "none", "beverage": "soft_drink", "extract_g_per_l": 100"#,
        r#""volumes": 0.3"#,
        r#""working": true"#,
    ] {
        let request = if more.contains("\"volumes\"") { BATCH.replace("\"volumes\": 2.5, ", "") } else { BATCH.into() };
        let text = format!("{{{request}, {}}}", more);
        let found = kegging_of(&text).unwrap_or_else(|refusal| panic!("{more}: {refusal}"));
        let (page, plan) = (found.to_text(), plan_of(&text).unwrap().to_text());
        for line in page.lines().chain(plan.lines()).filter(|_| !more.contains("working")) {
            assert!(line.chars().count() <= 80, "{line}");
        }
        assert!(!page.contains("NaN") && !page.contains(" inf") && !plan.contains("NaN"), "{page}");
        let answer = answer_text("kegging", &text);
        assert!(answer.starts_with("{\"carb\":1,") && !answer.contains("NaN"), "{answer}");
    }
}

#[test]
fn what_the_job_does_not_take_is_refused_by_name() {
    let said = |text: &str| kegging_of(text).unwrap_err().to_string();
    assert!(said(&format!(r#"{{{BATCH}, "bottle_class": "champagne"}}"#)).contains("bottle_class"));
    assert!(said(&format!(r#"{{{BATCH}, "bottles": [{{"bottle_ml": 500, "count": 4}}]}}"#)).contains("bottles"));
    assert!(said(&format!(r#"{{{BATCH}, "keg_litres": 20}}"#)).contains("keg_l"));
    let found = job(r#""kla_per_h": 0.02, "method": "still""#);
    assert_eq!(part(&found, "carbonating").part.answer.as_ref().unwrap_err().code(), code::EXCLUDED);
}

#[test]
fn levels_are_what_they_should_be_for_a_usual_day() {
    // An alarm on every keg is no alarm.
    let usual = job(r#""keg_rating_gauge_bar": 9, "room_m3": 200"#);
    let answers = usual.parts.iter().filter_map(|part| part.part.answer.as_ref().ok());
    let grave: Vec<_> = answers
        .flat_map(|answer| answer.notes.cautions.iter().filter(|c| c.kind.level == Level::Danger))
        .map(|caution| caution.to_string())
        .collect();
    assert!(grave.is_empty(), "{grave:?}");
}

#[test]
fn a_keg_that_nothing_would_hold_is_a_danger_however_high_its_pressure() {
    // The more is left to ferment, the worse: no figure at all is the worst of them.
    for more in [
        r#""current_sg": 1.016, "final_sg": 1.010, "keg_rating_gauge_bar": 9"#,
        r#""current_sg": 1.040, "final_sg": 1.010, "keg_rating_gauge_bar": 9"#,
        r#""fermentable_g_per_l": 100, "keg_rating_gauge_bar": 9"#,
        r#""fermentable_g_per_l": 100"#,
        r#""fermentable_g_per_l": 25"#,
        r#""original_sg": 1.050, "current_sg": 1.030, "keg_rating_gauge_bar": 9"#,
    ] {
        let found = job(more);
        assert!(found.danger() && found.to_text().contains("DANGER"), "{more}");
    }
    let sweet = kegging_of(
        r#"{"carb": 1, "packaged_l": 19, "volumes": 3, "altitude_m": 0, "beverage": "cider", "warmest_c": 20}"#,
    );
    assert!(sweet.unwrap().to_text().contains("CAUTION: fermentable_g_per_l is missing"));
}

#[test]
fn nitrogen_stays_in_a_keg_that_is_sealed() {
    let nitro = job(r#""co2_percent": 70, "hot_day_c": 35"#);
    let cold = value(&nitro, "regulator", "", Key::Gauge);
    let warm = value(&nitro, "warmed", "expected", Key::Gauge);
    let pure = value(&job(r#""hot_day_c": 35"#), "warmed", "expected", Key::Gauge);
    assert!(warm > cold && warm > pure + 0.8e5, "{cold} {warm} {pure}");
    // Nothing of a burst, and no gauge of a cylinder that holds liquid.
    assert!(nitro.part("burst").is_none() && nitro.part("cylinder").is_none());
    assert!(cautions(&nitro).contains(&"blend_counted"));
    // A stout: less CO2 than the drink would hold open to CO2 alone, and a time all the same.
    let stout = kegging_of(
        r#"{"carb": 1, "packaged_l": 19, "volumes": 1.2, "start_volumes": 0.9, "altitude_m": 0, "serving_f": 38, "co2_percent": 25}"#,
    )
    .unwrap();
    assert!((30.0..40.0).contains(&PSI.from_si(value(&stout, "regulator", "", Key::Gauge))));
    assert!((3.0..15.0).contains(&DAY.from_si(value(&stout, "carbonating", "expected", Key::Time))));
}

#[test]
fn what_the_job_takes_as_usual_a_told_rating_stands() {
    let weak = job(r#""keg_rating_gauge_bar": 1.5, "hot_day_c": 4"#);
    let purge = part(&weak, "purge").request.number(Key::PurgeGauge).unwrap();
    assert!((purge - 1.5e5).abs() < 1e-6 && !cautions(&weak).contains(&"purge_above_rating"));
    // What stands at a carbonation stone counts too, and the regulator itself.
    let stone =
        job(r#""keg_rating_gauge_bar": 2.2, "wetting_bar": 2, "depth_m": 0.5, "hot_day_c": 3.5, "purge": "none""#);
    assert!(cautions(&stone).contains(&"working_pressure_danger"));
    assert!(cautions(&job(r#""keg_rating_gauge_bar": 0.5"#)).contains(&"working_pressure_danger"));
    // Without its depth a stone is asked for it, and not left out.
    assert!(part(&job(r#""method": "stone""#), "stone").part.answer.is_err());
    // Air that nobody drove out is told, and keeps its pressure on a hot day.
    let unpurged = job(r#""purge": "none""#);
    assert!(cautions(&unpurged).contains(&"unpurged"));
    let hot = |job: &Kegging| value(job, "warmed", "expected", Key::Gauge);
    assert!(hot(&unpurged) > hot(&job(r#""title": "purged""#)) + 1.0e5);
}

#[test]
fn the_fermenter_is_spoken_of_only_while_it_ferments() {
    assert!(job(r#""final_sg": 1.010"#).part("spunding").is_some());
    assert!(job(r#""final_sg": 1.010, "current_sg": 1.010"#).part("spunding").is_none());
    assert!(job(r#""final_sg": 1.010, "yeast": "none""#).part("spunding").is_none());
    // The keg's rating is none of the fermenter's.
    let found = job(r#""final_sg": 1.010, "current_sg": 1.020, "keg_rating_gauge_bar": 9"#);
    assert!(cautions(&found).contains(&"vessel_unrated"));
    assert!(found.readiness.is_some() && found.to_text().contains("Is it finished?"));
}

#[test]
fn a_hot_cylinder_is_a_danger_and_not_an_error() {
    let hot = job(r#""room_c": 35, "keg_rating_gauge_bar": 9"#);
    assert!(cautions(&hot).contains(&"cylinder_hot") && hot.danger() && hot.part("cylinder").is_none());
}
