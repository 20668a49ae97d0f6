//! The kegging job as text.

use super::keg_parts::USUAL_TUBE;
use super::kegging::{BURST, CARBONATING, Kegging, REGULATOR};
use super::page::{Page, bar_and_psi, celsius};
use super::safety;
use super::text::{Grave, cautions, head, sources, sure};
use super::text_bottling::gravities;
use crate::property::carbonating::METHODS;
use crate::property::keg::PurgeMethod;
use crate::property::tube::{TRADE_FLOW, TUBES};
use crate::quantity::unit::{
    BAR, DAY, FOOT, GRAM, HOUR, LITRE, LITRE_PER_MINUTE, METRE, MICROGRAM_PER_LITRE, MILLILITRE, MINUTE,
    MONEY_PER_LITRE, OUNCE, PARTS_PER_MILLION, PSI, SECONDS, SPECIFIC_GRAVITY, US_FLUID_OUNCE_PER_SECOND,
    VOLUME_PERCENT, VOLUMES,
};
use crate::quantity::{Key, Temperature, Unit};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// A time in the unit that suits it.
fn time(seconds: f64) -> String {
    let (unit, word): (&Unit, &str) = unit_of(seconds);
    format!("{} {word}", shown(seconds, unit))
}

/// The unit that suits a time, and its name.
fn unit_of(seconds: f64) -> (&'static Unit, &'static str) {
    if seconds >= DAY.to_si(2.0) {
        (&DAY, "days")
    } else if seconds >= HOUR.to_si(2.0) {
        (&HOUR, "hours")
    } else {
        (&MINUTE, "minutes")
    }
}

fn shown(seconds: f64, unit: &Unit) -> String {
    let value = unit.from_si(seconds);
    if value < 9.95 { format!("{value:.1}") } else { format!("{value:.0}") }
}

/// A span of time in the unit that suits it.
pub(super) fn span(expected: f64, soonest: f64, latest: f64) -> String {
    let (unit, word) = unit_of(expected);
    format!("{} {word} ({} to {})", shown(expected, unit), shown(soonest, unit), shown(latest, unit))
}

fn grams(kg: f64) -> String {
    let grams = GRAM.from_si(kg);
    if grams < 9.95 { format!("{grams:.1}") } else { format!("{grams:.0}") }
}

fn oxygen(share: f64) -> String {
    let ppm = PARTS_PER_MILLION.from_si(share);
    if ppm < 9999.5 { format!("{ppm:.0} ppm") } else { format!("{:.1} %", VOLUME_PERCENT.from_si(share)) }
}

fn length(m: f64) -> String {
    format!("{:.1} m ({:.1} ft)", METRE.from_si(m), FOOT.from_si(m))
}

impl Kegging {
    /// The kegging as text. With `"working": true` in the request, the working follows.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut page = Page::default();
        let notes = self.notes();
        head(&mut page, "KEGGING", &self.request);
        cautions(&mut page, &notes, &Grave::default().kegs(self));
        if self.readiness.is_some() {
            gravities(&mut page, self.readiness.as_ref(), "keg");
        }
        self.write(&mut page);
        self.cost(&mut page);
        sure(&mut page, self.sure.as_ref());
        page.heading("What this stands on");
        self.standing(&mut page);
        sources(&mut page, &notes);
        if self.request.flag(Key::Working) == Some(true) {
            self.working(&mut page);
        }
        page.text
    }

    /// What a part says, where it has an answer; its error, where it has none.
    fn say(&self, page: &mut Page, place: &str, label: &str, text: impl FnOnce(&dyn Fn(&str, Key) -> f64) -> String) {
        let Some(part) = self.part(place) else { return };
        match &part.part.answer {
            // Every output of a function has a value where it has an answer.
            Ok(_) => page.say(label, &text(&|noun, key| part.value(noun, key).unwrap_or(f64::NAN))),
            // What several parts lack is said once.
            Err(error) => page.say_once(label, &error.to_string()),
        }
    }

    /// The sections of the page, in the order of the day.
    pub(super) fn write(&self, page: &mut Page) {
        page.heading("In a keg");
        match &self.kegs.answer {
            Ok(answer) => {
                let kegs = answer.value;
                let each = if kegs.count == 1 { "" } else { " in each" };
                page.say(
                    "Kegs",
                    &format!(
                        "{} of {:.1} L ({:.2} US gal); {:.1} L ({:.2} US gal) of drink{each}, {:.1} L of gas over it ({:.1} %)",
                        kegs.count,
                        kegs.capacity.l(),
                        kegs.capacity.us_gal(),
                        kegs.drink.l(),
                        kegs.drink.us_gal(),
                        kegs.gas().l(),
                        kegs.headspace()
                    ),
                );
            }
            Err(error) => page.say_once("Kegs", &error.to_string()),
        }
        match &self.start.answer {
            Ok(answer) => page.say("Already in it", &format!("{:.2} volumes of CO2", answer.value.volumes())),
            Err(error) => page.say_once("Already in it", &error.to_string()),
        }
        self.say(page, REGULATOR, "Regulator", |value| {
            let gas = self.request.number(Key::Co2Share).filter(|share| *share < 100.0);
            let gas = gas.map_or(String::new(), |share| format!(", of a blend with {share:.0} % CO2"));
            format!("{} gauge, held at {}{gas}", bar_and_psi(value("", Key::Gauge)), celsius(self.serving))
        });
        self.without_air(page);
        self.in_time(page);
        self.natural(page);
        self.supply(page);
        self.to_the_glass(page);
        self.when_warm(page);
        page.line("");
        for text in safety::KEGS {
            page.bullet(text);
        }
    }

    fn without_air(&self, page: &mut Page) {
        self.say(page, "push", "Push", |value| {
            format!(
                "fill the keg to the brim with sanitiser and push it out with CO2: {} of oxygen are left; takes {} g of CO2",
                oxygen(value("", Key::Oxygen)),
                grams(value("", Key::Gas))
            )
        });
        let gauge = |place: &str| {
            let told = self.part(place).and_then(|part| part.request.number(Key::PurgeGauge));
            bar_and_psi(told.unwrap_or(f64::NAN))
        };
        let empty = matches!(self.request.purge(), PurgeMethod::Empty);
        let what = if empty { "the empty keg" } else { "the gas over the drink" };
        self.say(page, "purged", "Purge", |value| {
            let cycles = self.part("purged").and_then(|part| part.request.number(Key::Cycles)).unwrap_or(f64::NAN);
            format!(
                "fill {what} to {} and vent it, {cycles:.0} times: {} of oxygen are left; takes {} g of CO2",
                gauge("purged"),
                oxygen(value("", Key::Oxygen)),
                grams(value("total", Key::Gas))
            )
        });
        self.say(page, "oxygen", "Oxygen", |value| {
            let [all, over, brought] = [("", Key::TotalOxygen), ("headspace", Key::PickedUp), ("gas", Key::PickedUp)]
                .map(|(noun, key)| MICROGRAM_PER_LITRE.from_si(value(noun, key)));
            format!("{all:.0} µg/L (ppb) in the package: {over:.0} from the gas over the drink, {brought:.0} at most brought by the CO2 that carbonates it")
        });
    }

    fn in_time(&self, page: &mut Page) {
        let method = self.request.method().unwrap_or(METHODS[0]).title;
        let by = if self.request.get(Key::Kla).is_some() { "by the rate given" } else { method };
        self.say(page, CARBONATING, "Carbonated", |value| {
            let [expected, soonest, latest] = ["expected", "soonest", "latest"].map(|noun| value(noun, Key::Time));
            let down = self
                .part(CARBONATING)
                .is_some_and(|part| part.request.number(Key::Start) > part.request.number(Key::Carbonation));
            let way = if down { "vented again and again, it is down" } else { "at that pressure" };
            format!("{way} 95 % of the way in {}, {by}: an estimate; taste it", span(expected, soonest, latest))
        });
        self.say(page, BURST, "Or a burst", |value| {
            let gauge = self.part(BURST).and_then(|part| part.request.number(Key::BurstGauge)).unwrap_or(f64::NAN);
            format!(
                "{} for {} and no longer, so that even a fast keg does not pass the target ({:.2} volumes then, {:.2} at least); vent it, hold {}, and it is there, but for 0.1 volumes, {} later ({} at the latest)",
                bar_and_psi(gauge),
                time(value("stop", Key::Time)),
                VOLUMES.from_si(value("expected", Key::Carbonation)),
                VOLUMES.from_si(value("least", Key::Carbonation)),
                bar_and_psi(value("hold", Key::Gauge)),
                time(value("rest", Key::Time)),
                time(value("latest_rest", Key::Time))
            )
        });
        self.say(page, "stone", "Stone", |value| {
            format!(
                "{} at the regulator: {} at the surface, the rest for {} of drink over the stone and for its pores",
                bar_and_psi(value("", Key::Gauge)),
                bar_and_psi(value("surface", Key::Gauge)),
                bar_and_psi(value("head", Key::Drop))
            )
        });
        // What is done within a day needs no table of days.
        let latest = self.value(CARBONATING, "latest", Key::Time).unwrap_or(0.0);
        if self.days.is_empty() || latest < DAY.to_si(2.0) {
            return;
        }
        page.line("");
        let row = |label: &str, cells: Vec<String>| {
            let cells: String = cells.iter().map(|cell| format!("{cell:>9}")).collect();
            format!("    {label:<12}{cells}")
        };
        page.line(&row("day", self.days.iter().map(|day| format!("{:.0}", day.time.d())).collect()));
        let volumes = |day: &super::Day| format!("{:.2}", day.carbonation.expected.volumes());
        page.line(&row("volumes", self.days.iter().map(volumes).collect()));
        let range =
            |day: &super::Day| format!("{:.1}-{:.1}", day.carbonation.least.volumes(), day.carbonation.most.volumes());
        page.line(&row("from - to", self.days.iter().map(range).collect()));
        page.line("");
    }

    fn natural(&self, page: &mut Page) {
        let asked = |place: &str, key| self.part(place).and_then(|part| part.request.number(key)).unwrap_or(f64::NAN);
        self.say(page, "keg_priming", "Or prime it", |value| {
            let mass = value("", Key::Mass);
            let each = if self.kegs.value().is_some_and(|kegs| kegs.count > 1) { " a keg" } else { "" };
            let sugar = self.request.priming_sugar().map_or("sugar", |sugar| sugar.title);
            format!(
                "{:.0} g ({:.2} oz){each} of {sugar}: by mass balance, with the keg's own headspace, where bottles' usual dose is by the printed tables; no less because it is a keg. Seat the lid with gas, and keep it as warm and as long as bottles",
                GRAM.from_si(mass),
                OUNCE.from_si(mass)
            )
        });
        self.say(page, "spunding", "Or in the fermenter", |value| {
            format!(
                "close it at {:.3} ({:.1} points above the end) and let its valve open at {}, at {}: only in a fermenter whose maker rates it for that",
                SPECIFIC_GRAVITY.from_si(value("closing", Key::Gravity)),
                1000.0 * value("", Key::GravityDrop),
                bar_and_psi(value("relief", Key::Gauge)),
                celsius(Temperature::from_si(asked("spunding", Key::Temperature)))
            )
        });
    }

    fn supply(&self, page: &mut Page) {
        self.say(page, "gas", "CO2", |value| {
            let parts = [
                ("dissolve", "dissolved"),
                ("headspace", "over the drink"),
                ("purge", "to purge"),
                ("serve", "to serve"),
                ("loss", "lost"),
            ];
            let parts: Vec<String> = parts
                .into_iter()
                .filter(|(noun, _)| value(noun, Key::Gas) > 0.0)
                .map(|(noun, what)| format!("{} g {what}", grams(value(noun, Key::Gas))))
                .collect();
            let total = value("total", Key::Gas);
            let count = self.kegs.value().map_or(1, |kegs| kegs.count);
            let all = if count > 1 {
                format!("; {} g for all {count}", grams(total * f64::from(count)))
            } else {
                String::new()
            };
            format!("{} g ({:.1} oz) for a keg: {}{all}", grams(total), OUNCE.from_si(total), parts.join(", "))
        });
        let size = self.request.cylinder_size().map_or("5 lb cylinder", |size| size.title);
        let size = if self.request.get(Key::Charge).is_some() { "cylinder" } else { size };
        self.say(page, "gas", "Cylinder", |value| {
            let kegs = value("", Key::Kegs);
            if kegs < 1.0 {
                return format!("a keg takes {:.1} of them ({size})", 1.0 / kegs);
            }
            format!(
                "one {size} does {kegs:.1} kegs; {:.1} at the bare minimum of {} g, without purging and losses",
                value("most", Key::Kegs),
                grams(value("least", Key::Gas))
            )
        });
        self.say(page, "cylinder", "Its gauge", |value| {
            format!(
                "shows about {:.0} bar ({:.0} psi) at {} while any liquid is left, and falls only when {:.0} % of a full charge are left: weigh it",
                BAR.from_si(value("", Key::Gauge)),
                PSI.from_si(value("", Key::Gauge)),
                celsius(Temperature::from_si(self.part("cylinder").and_then(|p| p.request.number(Key::Cylinder)).unwrap_or(f64::NAN))),
                value("falling", Key::LeftShare)
            )
        });
    }

    fn to_the_glass(&self, page: &mut Page) {
        let usual = TUBES.iter().find(|tube| tube.name == USUAL_TUBE);
        let tube = self.request.tube().as_ref().or(usual).map_or("tubing", |tube| tube.title);
        let tube = match self.request.number(Key::Bore) {
            Some(bore) => format!("a bore of {:.1} mm", 1000.0 * bore),
            None => String::from(tube),
        };
        let glass = |place: &str| {
            let told = self.part(place).and_then(|part| part.request.number(Key::PourSize));
            told.map_or(String::from("a US pint"), |glass| format!("{:.0} mL", MILLILITRE.from_si(glass)))
        };
        let flow = |value: f64| US_FLUID_OUNCE_PER_SECOND.from_si(value);
        self.say(page, "line", "Line", |value| {
            format!(
                "{} of {tube} pour {} in {:.0} s ({:.1} L/min, {:.2} US fl oz/s), by physics; {:.0} mL stand in it",
                length(value("", Key::Line)),
                glass("line"),
                SECONDS.from_si(value("", Key::Pour)),
                LITRE_PER_MINUTE.from_si(value("", Key::Flow)),
                flow(value("", Key::Flow)),
                MILLILITRE.from_si(value("", Key::LineContent))
            )
        });
        self.say(page, "pour", "Line", |value| {
            let line = self.request.number(Key::Line).unwrap_or(f64::NAN);
            format!(
                "{} of {tube} pour {} in {:.0} s ({:.1} L/min, {:.2} US fl oz/s), by physics; {:.0} mL stand in it",
                length(line),
                glass("pour"),
                SECONDS.from_si(value("", Key::Pour)),
                LITRE_PER_MINUTE.from_si(value("", Key::Flow)),
                flow(value("", Key::Flow)),
                MILLILITRE.from_si(value("", Key::LineContent))
            )
        });
        self.say(page, "handbook_line", "By the handbook", |value| {
            let trade = self.request.tube().map_or(TRADE_FLOW, |tube| tube.flow);
            let ours = |key| self.value("trade_line", "", key);
            let physics = ours(Key::Line).map_or(String::from("no length"), length);
            let times = ours(Key::Resistance).map_or(f64::NAN, |ours| value("", Key::Resistance) / ours);
            let cut = if times > 1.0 { "Begin with the longer, and cut" } else { "The longer of them pours slower" };
            let ratio = if times.is_finite() {
                format!(": its figure for this tube is {times:.1} times that of a smooth straight one. {cut}")
            } else {
                String::new()
            };
            format!(
                "{} for {:.2} US fl oz/s ({:.1} L/min), where physics has {physics}{ratio}",
                length(value("", Key::Line)),
                flow(trade),
                LITRE_PER_MINUTE.from_si(trade)
            )
        });
        self.say(page, "filling", "To fill from it", |value| {
            let [expected, least, most] =
                ["expected", "least", "most"].map(|noun| VOLUMES.from_si(value(noun, Key::Carbonation)));
            let hold = self
                .value("filling_regulator", "", Key::Gauge)
                .map_or(String::new(), |hold| format!(": hold {} instead", bar_and_psi(hold)));
            format!("the keg needs {expected:.2} volumes ({least:.2} to {most:.2}) for the target in the package{hold}")
        });
    }

    fn when_warm(&self, page: &mut Page) {
        self.say(page, "warmed", "On a hot day", |value| {
            let warm = self.part("warmed").and_then(|part| part.request.number(Key::Temperature));
            let rating = self.request.number(Key::KegRating);
            let rating = rating
                .map_or(String::from("read its marking"), |rating| format!("it is rated for {}", bar_and_psi(rating)));
            format!(
                "closed and at {}: {} expected, {} in the worst case (the lower of two solubilities, 8 % more CO2, a headspace of air, all that can ferment); {rating}",
                celsius(Temperature::from_si(warm.unwrap_or(f64::NAN))),
                bar_and_psi(value("expected", Key::Gauge)),
                bar_and_psi(value("worst", Key::Gauge))
            )
        });
        self.say(page, "room", "In the room", |value| {
            let aired = value("low_half_aired", Key::Time);
            let mass = self.part("room").and_then(|part| part.request.number(Key::Released)).unwrap_or(f64::NAN);
            let escaped = if self.request.get(Key::Released).is_some() {
                format!("{} g", grams(mass))
            } else {
                format!("the whole cylinder ({} g)", grams(mass))
            };
            format!(
                "if {} escaped into it: {} of CO2, {} in its lower half; below 5000 ppm there after {:.1} hours",
                escaped,
                oxygen(value("mixed", Key::RoomAir)),
                oxygen(value("low_half", Key::RoomAir)),
                HOUR.from_si(aired)
            )
        });
    }

    /// What packaging costs either way, on a page of its own.
    fn cost(&self, page: &mut Page) {
        let Some(part) = self.part("cost") else { return };
        page.heading("What it costs");
        if let Err(error) = &part.part.answer {
            page.say_once("Cost", &error.to_string());
            return;
        }
        let litre = |noun| MONEY_PER_LITRE.from_si(part.value(noun, Key::Cost).unwrap_or(f64::NAN));
        let way =
            |first, later| format!("{:.2} a litre for the first batch, {:.2} over all", litre(first), litre(later));
        page.say("In kegs", &way("keg_first", "keg"));
        page.say("In bottles", &format!("{} (what is not told costs nothing)", way("bottles_first", "bottles")));
        let paid = self.value("break_even", "", Key::Batches);
        let words = paid.map_or(String::from("by money alone, never"), |batch| format!("{batch:.1} batches"));
        page.say("The keg pays after", &words);
    }

    /// What the numbers of the kegs stand on.
    pub(super) fn standing(&self, page: &mut Page) {
        if let Some(Ok(answer)) = self.part(REGULATOR).map(|part| &part.part.answer) {
            let b = &answer.context.basis;
            page.say("Keg", &format!("{} basis; solubility {}", b.name.name(), answer.context.model().title()));
        }
    }

    pub(super) fn working(&self, page: &mut Page) {
        for part in &self.parts {
            if part.part.working.steps.is_empty() {
                continue;
            }
            page.heading(&format!("Working: {}", part.place.replace('_', " ")));
            page.text.push_str(&part.part.working.text());
            page.text.push('\n');
        }
    }

    /// Drink in a keg, L, for the page of the choice.
    pub(super) fn litres(&self) -> Option<f64> {
        self.kegs.value().map(|kegs| LITRE.from_si(kegs.drink.si()) * f64::from(kegs.count))
    }
}
