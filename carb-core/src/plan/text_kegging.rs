//! The kegging job as text.

use super::kegging::{BURST, CARBONATING, Kegging, REGULATOR};
use super::page::{Page, bar_and_psi, celsius};
use super::safety;
use super::text::{cautions, head, sources, sure};
use crate::property::carbonating::METHODS;
use crate::property::keg::PurgeMethod;
use crate::property::tube::TRADE_FLOW;
use crate::quantity::unit::{
    DAY, FOOT, GRAM, HOUR, LITRE, LITRE_PER_MINUTE, METRE, MICROGRAM_PER_LITRE, MILLILITRE, OUNCE, PARTS_PER_MILLION,
    SECONDS, SPECIFIC_GRAVITY, US_FLUID_OUNCE_PER_SECOND, VOLUME_PERCENT, VOLUMES,
};
use crate::quantity::{Key, Temperature, Unit};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// A span of time in the unit that suits it.
pub(super) fn span(expected: f64, soonest: f64, latest: f64) -> String {
    let in_days = expected >= DAY.to_si(2.0);
    let (unit, word): (&Unit, &str) = if in_days { (&DAY, "days") } else { (&HOUR, "hours") };
    let shown = |time: f64| {
        let value = unit.from_si(time);
        if value < 9.95 { format!("{value:.1}") } else { format!("{value:.0}") }
    };
    format!("{} {word} ({} to {})", shown(expected), shown(soonest), shown(latest))
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
        cautions(&mut page, &notes, None);
        self.write(&mut page);
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
            Err(error) => page.say(label, &error.to_string()),
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
                        "{} of {:.1} L; {:.1} L of drink{each}, {:.1} L of gas over it ({:.1} %)",
                        kegs.count,
                        kegs.capacity.l(),
                        kegs.drink.l(),
                        kegs.gas().l(),
                        kegs.headspace()
                    ),
                );
            }
            Err(error) => page.say("Kegs", &error.to_string()),
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
        if self.part("purge").is_some_and(|part| part.part.answer.is_err()) {
            self.say(page, "purge", "Purge", |_| String::new());
        }
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
            format!("95 % of the way in {}, {by}: an estimate; taste it", span(expected, soonest, latest))
        });
        self.say(page, BURST, "Or a burst", |value| {
            let gauge = self.part(BURST).and_then(|part| part.request.number(Key::BurstGauge)).unwrap_or(f64::NAN);
            format!(
                "{} for {:.0} hours and no longer, so that even a fast keg does not pass the target ({:.2} volumes then, {:.2} at least); vent it, hold {}, and it is there {:.1} days later ({:.0} at the latest)",
                bar_and_psi(gauge),
                HOUR.from_si(value("stop", Key::Time)),
                VOLUMES.from_si(value("expected", Key::Carbonation)),
                VOLUMES.from_si(value("least", Key::Carbonation)),
                bar_and_psi(value("hold", Key::Gauge)),
                DAY.from_si(value("rest", Key::Time)),
                DAY.from_si(value("latest_rest", Key::Time))
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
        if self.days.is_empty() {
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
        self.say(page, "keg_priming", "Or prime it", |value| {
            let mass = value("", Key::Mass);
            let each = if self.kegs.value().is_some_and(|kegs| kegs.count > 1) { " a keg" } else { "" };
            let sugar = self.request.priming_sugar().map_or("sugar", |sugar| sugar.title);
            format!(
                "{:.0} g ({:.2} oz){each} of {sugar}, by mass balance with the keg's own headspace; no less because it is a keg",
                GRAM.from_si(mass),
                OUNCE.from_si(mass)
            )
        });
        self.say(page, "spunding", "Or in the fermenter", |value| {
            format!(
                "close it at {:.4} ({:.1} points above the end) and let its valve open at {}",
                SPECIFIC_GRAVITY.from_si(value("closing", Key::Gravity)),
                1000.0 * value("", Key::GravityDrop),
                bar_and_psi(value("relief", Key::Gauge))
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
            format!("{} g ({:.1} oz) for a keg: {}", grams(total), OUNCE.from_si(total), parts.join(", "))
        });
        let size = self.request.cylinder_size().map_or("a 5 lb cylinder", |size| size.title);
        let size = if self.request.get(Key::Charge).is_some() { "the cylinder" } else { size };
        self.say(page, "gas", "Cylinder", |value| {
            format!(
                "{size} does {:.1} kegs; {:.1} at the bare minimum of {} g, without purging and losses",
                value("", Key::Kegs),
                value("most", Key::Kegs),
                grams(value("least", Key::Gas))
            )
        });
        self.say(page, "cylinder", "Its gauge", |value| {
            format!(
                "shows {} at {} while any liquid is left, and falls only when {:.0} % of a full charge are left: weigh it",
                bar_and_psi(value("", Key::Gauge)),
                celsius(Temperature::from_si(self.part("cylinder").and_then(|p| p.request.number(Key::Cylinder)).unwrap_or(f64::NAN))),
                value("falling", Key::LeftShare)
            )
        });
    }

    fn to_the_glass(&self, page: &mut Page) {
        let tube = self.request.tube().map_or("3/16 in vinyl", |tube| tube.title);
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
                "{} of {tube} pour {} in {:.0} s ({:.2} US fl oz/s), by physics; {:.0} mL stand in it",
                length(value("", Key::Line)),
                glass("line"),
                SECONDS.from_si(value("", Key::Pour)),
                flow(value("", Key::Flow)),
                MILLILITRE.from_si(value("", Key::LineContent))
            )
        });
        self.say(page, "pour", "Line", |value| {
            let line = self.request.number(Key::Line).unwrap_or(f64::NAN);
            format!(
                "{} of {tube} pour {} in {:.0} s ({:.2} US fl oz/s), by physics; {:.0} mL stand in it",
                length(line),
                glass("pour"),
                SECONDS.from_si(value("", Key::Pour)),
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
            format!("the keg needs {expected:.2} volumes ({least:.2} to {most:.2}) for the target in the package")
        });
    }

    fn when_warm(&self, page: &mut Page) {
        self.say(page, "warmed", "On a hot day", |value| {
            let warm = self.part("warmed").and_then(|part| part.request.number(Key::Temperature));
            let rating = self.request.number(Key::KegRating);
            let rating = rating
                .map_or(String::from("read its marking"), |rating| format!("it is rated for {}", bar_and_psi(rating)));
            format!(
                "closed and at {}: {} expected, {} in the worst case; {rating}",
                celsius(Temperature::from_si(warm.unwrap_or(f64::NAN))),
                bar_and_psi(value("expected", Key::Gauge)),
                bar_and_psi(value("worst", Key::Gauge))
            )
        });
        self.say(page, "room", "In the room", |value| {
            let aired = value("low_half_aired", Key::Time);
            format!(
                "if the cylinder emptied into it: {} of CO2, {} in its lower half; below 5000 ppm there after {:.1} hours",
                oxygen(value("mixed", Key::RoomAir)),
                oxygen(value("low_half", Key::RoomAir)),
                HOUR.from_si(aired)
            )
        });
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
