//! The bottling job as a page of text.

use super::bottles::BottleRow;
use super::bottling::Bottling;
use super::page::{Page, bar_and_psi, celsius};
use super::text::{Grave, basis, cautions, head, sources, sure};
use super::{Part, Readiness, fermented, safety};
use crate::basis::beverage::Kind;
use crate::basis::{BasisName, ColdCrash};
use crate::bottling::before::Before;
use crate::quantity::unit::{BAR, DAY, GRAM, LITRE, MILLILITRE, OUNCE, PSI, US_FLUID_OUNCE, US_GALLON, VOLUMES};
use crate::quantity::{Key, Mass, Time, Unit};
use crate::table::inputs::before;
use alloc::format;
use alloc::string::{String, ToString};

/// What the second column of the pressures is.
const WORST_CASE: &str = "The worst case takes the lower of two published solubilities, 8 % more CO2 left from fermentation, everything that the sugar can give, and all the air sealed into the headspace.";

fn days(time: Time) -> String {
    format!("{:.0}", DAY.from_si(time.si()))
}

/// The name of a class, short enough for a column.
fn class_words(name: &str) -> String {
    if name.is_empty() { String::from("class not told") } else { name.replace('_', " ") }
}

const DRY: &str = "Sugar is what a bottle takes where it is dosed dry, instead of the syrup; then the drink alone fills it, and fewer bottles.";

impl Bottling {
    /// The job as text. With `"working": true` in the request, the working follows.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut page = Page::default();
        let notes = self.notes();
        head(&mut page, "BOTTLING", &self.request);
        cautions(&mut page, &notes, &Grave::default().bottles(self));
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

    /// What the balance says of the dose, in one sentence; `None` where it says nothing.
    pub fn expectation_sentence(&self) -> Option<String> {
        let answer = self.expectation.answer.as_ref().ok()?;
        let found = &answer.value;
        let expects = format!(
            "by mass balance this dose gives {:.2} volumes ({:.2}-{:.2})",
            found.expected.volumes(),
            found.low.volumes(),
            found.high.volumes()
        );
        if self.priming.answer.is_err() {
            return Some(format!(
                "Without any sugar it reaches, by mass balance, {:.2} volumes ({:.2}-{:.2}) in a bottle; the pressures below are those.",
                found.expected.volumes(),
                found.low.volumes(),
                found.high.volumes()
            ));
        }
        let handbook = self.priming.answer.as_ref().is_ok_and(|p| p.context.basis.name == BasisName::Handbook);
        if !handbook {
            return Some(format!(
                "With the yield and the headspace that you assume, {expects}; the pressures below assume the worst."
            ));
        }
        let kind = match answer.context.beverage.kind {
            Kind::Beer => "beer",
            Kind::SoftDrink => "soft drink",
            other => other.name(),
        };
        let more = match found.dose {
            Some(dose) => format!(" (by balance {:.1} g)", dose.mass.g()),
            None => String::new(),
        };
        let lower = match answer.context.beverage.kind {
            Kind::Water => String::from("headspace and yeast growth"),
            _ => format!("headspace, yeast growth and {kind}'s lower solubility"),
        };
        let held = match fermented(answer.context.beverage.kind) {
            true => format!(
                "Fresh {kind} can hold more CO2 than equilibrium, by an amount nobody has published, so the dose"
            ),
            false => String::from("The dose"),
        };
        Some(format!(
            "The printed tables leave out {lower}; {expects}. {held} is not raised; more sugar is your decision{more}, and the pressures below assume the worst."
        ))
    }

    /// What is said of the bottling.
    pub(super) fn write(&self, page: &mut Page) {
        self.finished(page);
        self.primings(page);
        self.fills(page);
        self.pressures(page);
        self.waiting(page);
        page.line("");
        for text in safety::BOTTLES {
            page.bullet(text);
        }
    }

    /// Whether it is finished, and what it would mean if it were not.
    fn finished(&self, page: &mut Page) {
        gravities(page, self.readiness.as_ref(), "bottle");
        if let Some(point) = self.point.value() {
            let what = format!(
                "0.001 of gravity that is not finished adds {:.2} volumes: {} in the room, up to {} in the worst case",
                point.co2.volumes(),
                bar_and_psi(point.pressure),
                bar_and_psi(point.worst)
            );
            page.say("Each point left", &what);
        }
    }

    fn primings(&self, page: &mut Page) {
        page.heading("In bottles");
        match &self.residual.answer {
            Ok(answer) => page.say(
                "Already in it",
                &format!(
                    "{:.2} volumes of CO2 ({:.2} g/L) {}",
                    answer.value.volumes(),
                    answer.value.co2_g_per_l(),
                    self.held_from()
                ),
            ),
            Err(error) => page.say("Already in it", &error.to_string()),
        }
        match self.added.as_ref().map(|part| &part.answer) {
            Some(Ok(answer)) => {
                let co2 = answer.value;
                page.say(
                    "Added besides",
                    &format!("{:.2} volumes of CO2 ({:.2} g/L)", co2.volumes(), co2.co2_g_per_l()),
                );
            }
            Some(Err(error)) => page.say("Added besides", &error.to_string()),
            None => {}
        }
        match &self.priming.answer {
            Ok(answer) => {
                let dose = &answer.value;
                page.say(
                    if self.was_weighed() { "Sugar weighed" } else { "Priming sugar" },
                    &format!(
                        "{:.1} g ({:.2} oz) of {}: {:.2} g per litre",
                        dose.mass.g(),
                        dose.mass.oz(),
                        self.sugar.title,
                        dose.dose.g_per_l()
                    ),
                );
            }
            Err(error) => page.say("Priming sugar", &error.to_string()),
        }
        match self.weighed.as_ref().map(|part| &part.answer) {
            Some(Ok(answer)) => {
                let found = &answer.value;
                let what = format!(
                    "{}, which makes {:.2} volumes ({:.2}-{:.2} for half a step either way)",
                    self.on_scale(found.mass),
                    found.carbonation.volumes(),
                    found.range.0.volumes(),
                    found.range.1.volumes()
                );
                page.say("On your scale", &what);
            }
            Some(Err(error)) => page.say("On your scale", &error.to_string()),
            None => {}
        }
        if self.priming.answer.is_ok() && !self.was_weighed() {
            page.line("");
            page.line("  or, for the same CO2                                     g       oz    g/L");
            for (sugar, dose) in self.sugars.iter().filter(|(sugar, _)| sugar.name != self.sugar.name) {
                if let Ok(dose) = dose {
                    page.line(&format!(
                        "    {:<50}{:>6.1} {:>8.2} {:>6.2}",
                        sugar.title,
                        GRAM.from_si(dose.mass.si()),
                        OUNCE.from_si(dose.mass.si()),
                        dose.dose.g_per_l()
                    ));
                }
            }
            page.line("");
        }
        match self.wort.as_ref().map(|part| &part.answer) {
            Some(Ok(answer)) => {
                let found = &answer.value;
                let what = format!(
                    "{:.2} L ({:.2} US gal), {:.1} % of the drink, which needs bottles too; what follows is for the sugar, and what wort makes is no surer than its limit attenuation",
                    found.volume.l(),
                    found.volume.us_gal(),
                    found.share.percent()
                );
                page.say("Or wort, instead", &what);
            }
            Some(Err(error)) => page.say("Or wort, instead", &error.to_string()),
            None => {}
        }
        self.recipe(page);
        if let Some(drink) = self.primed.value() {
            if self.was_weighed() {
                page.say(
                    "It makes",
                    &format!("{:.2} volumes ({:.2} g/L)", drink.carbonation.volumes(), drink.carbonation.co2_g_per_l()),
                );
            }
            let what = format!(
                "{:.1} % by volume, of which the sugar adds {:.2} %",
                drink.abv.percent(),
                drink.added_abv.percent()
            );
            page.say("Alcohol then", &what);
        }
        if let Some(sentence) = self.expectation_sentence() {
            page.line("");
            page.wrapped("", 0, &sentence);
        }
    }

    fn recipe(&self, page: &mut Page) {
        let dosed = self.priming.value().is_some_and(|dose| dose.mass.si() > 0.0);
        match &self.syrup.answer {
            Ok(answer) if dosed => {
                let (syrup, water) = &answer.value;
                let room = if self.request.get(Key::Tablet).is_some() { "" } else { ", counted in the bottles below" };
                let what = if water.si() > 0.0 {
                    format!(
                        "boil the sugar for 5 to 15 minutes in {:.0} mL ({:.0} fl oz) of water (at least {:.0} mL), covered, and let it cool: {:.0} mL of syrup of {:.0} %{room}",
                        water.ml(),
                        water.us_fl_oz(),
                        syrup.least_water.ml(),
                        syrup.volume.ml(),
                        syrup.strength.percent()
                    )
                } else {
                    format!(
                        "it goes in as it is, a thick one warmed or thinned with a little of the drink: {:.0} mL ({:.1} fl oz){room}",
                        syrup.volume.ml(),
                        syrup.volume.us_fl_oz()
                    )
                };
                page.say("Syrup", &what);
            }
            Ok(_) => {}
            Err(error) if self.priming.answer.as_ref().is_err_and(|dose| dose == error) => {}
            Err(error) => page.say("Syrup", &error.to_string()),
        }
    }

    fn fills(&self, page: &mut Page) {
        let Some(fill) = &self.fill else { return };
        page.heading("Which bottles");
        match &fill.answer {
            Ok(answer) => {
                let all = &answer.value;
                let what = format!(
                    "{} bottles with {:.2} of {:.2} L; {:.0} mL stay over; wash {}",
                    all.filled,
                    LITRE.from_si(all.drink.si() - all.leftover.si()),
                    LITRE.from_si(all.drink.si()),
                    MILLILITRE.from_si(all.leftover.si()),
                    all.washed
                );
                page.say("Fill", &what);
            }
            Err(error) => page.say("Fill", &format!("{error}. (Bottles that are not for conditioning do not count.)")),
        }
        page.line("");
        let tablets = self.request.get(Key::Tablet).is_some();
        let last = if tablets { "or tablets" } else { "" };
        page.line(&format!("  fill  wash    of  bottle                      gas over  sugar     {last}"));
        for row in &self.bottles {
            let filled = row.filled.map_or(String::from("-"), |filled| filled.to_string());
            let (sugar, tablets) = match &row.dose {
                Some(dose) => {
                    let tablets = dose
                        .tablets
                        .map_or(String::new(), |(count, co2)| format!("{count} ({:.2} vol)", co2.volumes()));
                    (format!("{:.2} g", dose.mass.g()), tablets)
                }
                None => (String::from("-"), String::new()),
            };
            let washed = row.washed.map_or(String::from("-"), |washed| washed.to_string());
            let mut start = format!("  {filled:>4} {washed:>5} {:>5}  ", row.count);
            let bottle = format!("{}, {}", size_words(row), class_words(row.class));
            if bottle.chars().count() > 26 {
                page.line(&format!("{start}{bottle}"));
                start = format!("{:20}{:26}", "", "");
            } else {
                start += &format!("{bottle:<26}");
            }
            page.line(&format!("{start}{:>6.0} mL  {sugar:<9} {tablets}", row.gas.ml()));
        }
        let counted = self.syrup.value().is_some_and(|(syrup, _)| syrup.volume.si() > 0.0);
        if counted && !tablets && self.bottles.iter().any(|row| row.dose.is_some()) {
            page.line("");
            page.wrapped("", 0, DRY);
        }
    }

    fn pressures(&self, page: &mut Page) {
        page.heading("Will the glass stand it?");
        page.line("  Pressure in the bottle, gauge     expected              worst case");
        for place in &self.storage {
            let label = format!("    {:<13}{:<18}", place_words(place.place), celsius(place.temperature));
            match &place.pressure.answer {
                Ok(answer) => page.line(&format!(
                    "{label} {:<21} {}",
                    bar_and_psi(answer.value.expected.gauge.si()),
                    bar_and_psi(answer.value.worst.gauge.si())
                )),
                Err(error) if self.priming.answer.as_ref().is_err_and(|dose| dose == error) => {
                    page.line(&format!("{label} not worked out: see the priming sugar"));
                }
                Err(error) => page.wrapped(&label, 8, &error.to_string()),
            }
        }
        if self.storage.iter().any(|place| place.pressure.answer.is_ok()) {
            page.line("");
            page.wrapped("", 0, WORST_CASE);
        }
        if self.bottles.iter().any(|row| row.glass.answer.is_ok()) {
            page.line("");
            let unit = if self.us() { "psi" } else { "bar" };
            let names: String =
                self.columns().map(|at| format!("{:>8}", place_words(self.storage[at].place))).collect();
            page.line(&format!("  Worst case, {unit:<14}{names} not more than      up to"));
            for row in &self.bottles {
                self.verdict(page, row);
            }
            page.line("");
            let all = || self.bottles.iter().filter_map(|row| row.glass.value());
            let mut legend = String::from(
                "Not more than: what the class sees in usual use at 40 °C. Up to that temperature the worst case stays within it; above 40 °C no margin is given. The maker's rating decides.",
            );
            if all().any(|found| found.rated) {
                legend = legend.replace("Not more than: ", "Not more than: a rating (r), or ");
            }
            if all().any(|found| found.word == "high") {
                legend += " !: only the stronger ones of the class.";
            }
            if all().any(|found| !matches!(found.word, "within" | "high")) {
                legend += " NO: not these bottles, for their carbonation or their pressure.";
            }
            if self.request.get(Key::Tablet).is_some() {
                legend += " Each is judged by the sugar or by the tablets, whichever makes more.";
            }
            page.wrapped("", 0, &legend);
        }
    }

    fn verdict(&self, page: &mut Page, row: &BottleRow) {
        let bottle = format!("{} {}", size_words(row), class_words(row.class));
        let mut label = format!("    {bottle:<24}");
        if bottle.chars().count() > 24 {
            page.line(&label);
            label = format!("{:28}", "");
        }
        let (unit, other) = if self.us() { (&PSI, &BAR) } else { (&BAR, &PSI) };
        let places_of = |unit: &Unit| if *unit == PSI { 0 } else { 2 };
        let shown = |unit: &Unit, pa: f64| format!("{:.*}", places_of(unit), unit.from_si(pa));
        match &row.glass.answer {
            Ok(answer) => {
                let found = &answer.value;
                let limit = match found.word {
                    "not_for_conditioning" => String::from("not for this"),
                    _ => {
                        let pa = found.limit.si();
                        let rated = if found.rated { " r" } else { "" };
                        format!("{}{rated} ({} {})", shown(unit, pa), shown(other, pa), other.symbol)
                    }
                };
                let warmest = match found.warmest {
                    // Never rounded up: above it the bottle is not safe.
                    Some(t) if self.us() => format!("{} °F", (t.f() + 1e-9) as i64),
                    Some(t) => format!("{} °C", (t.c() + 1e-9) as i64),
                    None => String::from("-"),
                };
                let word = match found.word {
                    "within" => "",
                    "high" => " !",
                    _ => " NO",
                };
                let mut places = String::new();
                for (_, pressure) in self.columns().filter_map(|at| row.pressures.get(at)) {
                    let worst = pressure.map(|pressure| shown(unit, pressure.worst.gauge.si()));
                    places += &format!("{:>8}", worst.unwrap_or(String::from("-")));
                }
                page.line(&format!("{label}{places} {limit:<18}{warmest}{word}"));
            }
            Err(error) => page.wrapped(&label, 8, &error.to_string()),
        }
    }

    /// The places that the table shows: where bottles are kept, the three last told, so that the warmest is among them.
    fn columns(&self) -> impl Iterator<Item = usize> {
        let kept = self.storage.iter().filter(|place| place.place != super::PASTEURISING).count();
        kept.saturating_sub(3)..kept
    }

    /// Whether the batch was told in US units.
    fn us(&self) -> bool {
        let told = [Key::Packaged, Key::Batch].into_iter().filter_map(|key| self.request.name_of(key));
        let mut units = told.filter_map(|name| name.unit);
        units.any(|unit| *unit == US_GALLON)
    }

    /// Where the CO2 in the drink is known from.
    fn held_from(&self) -> String {
        let Ok(Before::Fermented(fermenter)) = before(&self.request) else { return String::from("as measured") };
        let cold = celsius(fermenter.cold);
        match fermenter.crash {
            ColdCrash::Open if self.request.get(Key::Crash).is_some() => {
                String::from("left after fermentation; chilling it under an airlock adds none to count on")
            }
            ColdCrash::Open => String::from("left after fermentation"),
            ColdCrash::Closed => format!("left after fermentation, and taken up in the closed fermenter at {cold}"),
            ColdCrash::Supplied => format!("taken up under CO2 at {cold}"),
        }
    }

    /// A mass in the unit of the scale, and in grams.
    fn on_scale(&self, mass: Mass) -> String {
        match self.request.name_of(Key::Scale).and_then(|name| name.unit) {
            Some(unit) if *unit != GRAM => {
                format!("{} {} ({:.0} g)", trimmed(unit.from_si(mass.si())), unit.symbol, mass.g())
            }
            _ => format!("{} g", trimmed(mass.g())),
        }
    }

    fn waiting(&self, page: &mut Page) {
        page.heading("When is it ready?");
        match &self.ready.answer {
            Ok(answer) => {
                let found = &answer.value;
                let what = format!(
                    "after {} days ({} to {}): an estimate; open one after a week and one before you serve",
                    days(found.time.expected),
                    days(found.time.least),
                    days(found.time.most)
                );
                page.say("95 % carbonated", &what);
                page.line("");
                let tables = self.priming.answer.as_ref().is_ok_and(|p| p.context.basis.name == BasisName::Handbook);
                let mut head = String::from("    day        ");
                let (mut share, mut range, mut co2) = (
                    String::from("    carbonated "),
                    String::from("    from - to  "),
                    String::from(if tables { "    vol, tables" } else { "    volumes    " }),
                );
                for (time, made, now) in &found.days {
                    head += &format!("{:>10}", days(*time));
                    share += &format!("{:>8.0} %", made.expected.percent());
                    range += &format!("{:>10}", format!("{:.0}-{:.0} %", made.least.percent(), made.most.percent()));
                    co2 += &now.map_or(String::new(), |co2| format!("{:>10.2}", VOLUMES.from_si(co2.si())));
                }
                for line in [head, share, range] {
                    page.line(&line);
                }
                if found.days.iter().any(|(_, _, now)| now.is_some()) {
                    page.line(&co2);
                }
            }
            Err(error) => page.say("95 % carbonated", &error.to_string()),
        }
        match self.yeast.as_ref().map(|part| &part.answer) {
            Some(Ok(answer)) => {
                page.line("");
                let what = format!(
                    "{:.1} g of dry yeast, rehydrated and stirred in with the sugar: 1 million cells in a millilitre",
                    answer.value.g()
                );
                page.say("Fresh yeast", &what);
            }
            Some(Err(error)) => page.say("Fresh yeast", &error.to_string()),
            None => {}
        }
    }

    /// What the answers stand on.
    pub(super) fn standing(&self, page: &mut Page) {
        if let Ok(answer) = &self.priming.answer {
            page.say("Dose", &basis(answer));
        }
        if let Some(Ok(answer)) = self.storage.first().map(|s| &s.pressure.answer) {
            page.say("Bottle pressure", &basis(answer));
        }
    }

    pub(super) fn working(&self, page: &mut Page) {
        let mut write = |title: &str, text: String| {
            if !text.is_empty() {
                page.heading(title);
                page.text.push_str(&text);
                page.text.push('\n');
            }
        };
        write("Working of the dose", self.priming.working.text());
        if let Some(wort) = &self.wort {
            write("Working of the wort", wort.working.text());
        }
    }
}

/// A number without the zeros that say nothing.
fn trimmed(number: f64) -> String {
    let text = format!("{number:.3}");
    String::from(text.trim_end_matches('0').trim_end_matches('.'))
}

/// The size of a bottle as it was told.
fn size_words(row: &BottleRow) -> String {
    match row.unit {
        Some(unit) if *unit == US_FLUID_OUNCE => format!("{} fl oz", trimmed(unit.from_si(row.content.si()))),
        _ => format!("{:.0} mL", row.content.ml()),
    }
}

fn place_words(place: &str) -> &str {
    match place {
        "hot_day" => "hot day",
        other => other,
    }
}

/// What the gravities say; `act` is what is done with a finished drink.
pub(super) fn gravities(page: &mut Page, readiness: Option<&Part<Readiness>>, act: &str) {
    page.heading("Is it finished?");
    match readiness.map(|part| &part.answer) {
        None => page.say("Gravity", &format!("not told: {act} only what has stood still for three days and more")),
        Some(Err(error)) => page.say("Gravity", &error.to_string()),
        Some(Ok(answer)) => {
            let found = &answer.value;
            let words = match found.verdict {
                "finished" => "as far as gravity can tell, yes",
                "not_finished" => "no. Do not package it yet",
                _ => "not proven",
            };
            let end = found.end.map_or(String::from("its end not told"), |end| format!("to end at {:.4}", end.sg()));
            page.say("Gravity", &format!("{:.4} now, {end}: {words}", found.current.sg()));
            if let (Some(left), Some(co2)) = (found.left, found.to_come) {
                let what = format!(
                    "{:.1} g/L of extract, which would make {:.2} volumes of CO2",
                    left.g_per_l(),
                    co2.volumes()
                );
                page.say("Left to ferment", &what);
            } else if found.end.is_some() {
                page.say("Left to ferment", "not known: below its end, something ferments what yeast leaves");
            } else {
                page.say("Left to ferment", "not known: nothing tells where it ends");
            }
            if let (Some(span), Some(fall)) = (found.span, found.fall) {
                let fell = if fall > 0.0 {
                    format!(
                        "in the last of them it fell by {fall:.4} (0.001 is what a hydrometer cannot tell from nothing)"
                    )
                } else {
                    String::from("in the last of them it stood still")
                };
                page.say("Readings", &format!("over {} days; {fell}", days(span)));
            }
        }
    }
}
