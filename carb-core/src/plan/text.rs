//! The plan as a page of text, 80 columns wide, to be pinned to the wall.

use super::{Plan, safety};
use crate::basis::beverage::Kind;
use crate::basis::{Ambient, Answer, BasisName};
use crate::evidence::steps::significant;
use crate::evidence::{Caution, Equation, NoSteps, Source};
use crate::quantity::unit::{
    BAR, CELSIUS, CO2_GRAMS_PER_LITRE, FAHRENHEIT, GRAM, LITRE, OUNCE, PSI, US_GALLON, VOLUMES,
};
use crate::quantity::{AmbientPressure, Key, Temperature};
use crate::uncertainty::{Doubt, Share};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

const WIDTH: usize = 80;

/// What the second column of the pressures is.
const WORST_CASE: &str = "The worst case takes the lower of two published solubilities, 8 % more CO2 left from fermentation, everything that the sugar can give, and all the air sealed into the headspace.";

struct Page {
    text: String,
}

impl Page {
    fn line(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    fn heading(&mut self, title: &str) {
        self.line("");
        self.line(title);
        self.line(&"-".repeat(title.chars().count()));
    }

    /// A label and what it says, wrapped under itself.
    fn say(&mut self, label: &str, what: &str) {
        self.wrapped(&format!("{label:<20}"), 20, what);
    }

    fn bullet(&mut self, what: &str) {
        self.wrapped("  * ", 4, what);
    }

    fn wrapped(&mut self, first: &str, indent: usize, what: &str) {
        let mut line = String::from(first);
        let mut used = 0;
        for word in what.split_whitespace() {
            if used > 0 && line.chars().count() + 1 + word.chars().count() > WIDTH {
                self.line(&line);
                line = " ".repeat(indent);
                used = 0;
            }
            if used > 0 {
                line.push(' ');
            }
            line.push_str(word);
            used += 1;
        }
        self.line(&line);
    }
}

fn celsius(t: Temperature) -> String {
    format!("{:.1} °C ({:.0} °F)", CELSIUS.from_si(t.si()), FAHRENHEIT.from_si(t.si()))
}

fn bar_and_psi(pa: f64) -> String {
    format!("{:.2} bar ({:.1} psi)", BAR.from_si(pa), PSI.from_si(pa))
}

fn beyond(caution: &Caution) -> f64 {
    (caution.value - caution.limit).abs()
}

/// A part of a budget: its share, and what makes it.
fn part_in_words(part: &Share) -> String {
    let percent = 100.0 * part.share;
    let source = &part.source;
    if source.equation {
        let equation = match source.name.key {
            Key::SolubilityFactor => "solubility equation",
            Key::ResidualFactor => "residual CO2 equation",
            _ => "yield of the sugar",
        };
        return format!("{percent:.0} % the {equation}");
    }
    let even = if matches!(source.doubt, Doubt::Range(_)) { " (even)" } else { "" };
    format!("{percent:.0} % {} ± {}{even}", source.name, significant(source.doubt.half_width(), 2))
}

const SURE: &str = "The bottle holds the sugar that was weighed, whatever the truth about the rest; its worst case, above, is a bound. What makes the largest share is what to measure better.";

impl Plan {
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
        let held = match super::fermented(answer.context.beverage.kind) {
            true => format!(
                "Fresh {kind} can hold more CO2 than equilibrium, by an amount nobody has published, so the dose"
            ),
            false => String::from("The dose"),
        };
        Some(format!(
            "The printed tables leave out {lower}; {expects}. {held} is not raised; more sugar is your decision{more}, and the pressures below assume the worst."
        ))
    }

    /// The plan as text. With `"working": true` in the request, the working follows.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut page = Page { text: String::new() };
        self.head(&mut page);
        self.cautions(&mut page);
        self.bottles(&mut page);
        self.keg(&mut page);
        self.sure(&mut page);
        self.standing(&mut page);
        if self.request.flag(Key::Working) == Some(true) {
            self.working(&mut page);
        }
        page.text
    }

    fn head(&self, page: &mut Page) {
        let title = match self.request.text(Key::Title) {
            Some(title) => format!("PACKAGING PLAN: {title}"),
            None => String::from("PACKAGING PLAN"),
        };
        page.line(&title);
        page.line(&"=".repeat(title.chars().count()));
        if let Ok(drink) = self.request.drink() {
            page.say(
                "Drink",
                &format!(
                    "{}, {:.1} % alcohol by volume, extract {:.0} g/L",
                    drink.kind.name().replace('_', " "),
                    drink.abv(),
                    drink.extract()
                ),
            );
        }
        if let Some(packaged) = self.request.number(Key::Packaged) {
            page.say(
                "To package",
                &format!("{:.1} L ({:.2} US gal)", LITRE.from_si(packaged), US_GALLON.from_si(packaged)),
            );
        }
        if let Some(warmest) = self.request.number(Key::Warmest) {
            page.say("Warmest", &format!("{} since active fermentation", celsius(Temperature::from_si(warmest))));
        }
        if let Ok(Some(air)) = self.request.air() {
            let pressure = air.pressure(&mut NoSteps);
            let from = match air {
                Ambient::Measured(_) => String::from("measured"),
                Ambient::Altitude(z) => format!("at {:.0} m ({:.0} ft)", z.m(), z.ft()),
                Ambient::Weather { altitude, sea_level } => {
                    format!("from {:.2} kPa at sea level, at {:.0} m", sea_level.kpa(), altitude.m())
                }
            };
            page.say("Air outside", &format!("{:.2} kPa, {from}", AmbientPressure::from_si(pressure).kpa()));
        }
        if let Some(target) = self.request.number(Key::Carbonation) {
            page.say(
                "Wanted",
                &format!(
                    "{:.2} volumes of CO2 ({:.2} g/L)",
                    VOLUMES.from_si(target),
                    CO2_GRAMS_PER_LITRE.from_si(target)
                ),
            );
        }
    }

    /// Every caution of the plan once, the gravest first.
    fn cautions(&self, page: &mut Page) {
        let mut seen: Vec<Caution> = Vec::new();
        for caution in self.all_notes().into_iter().flat_map(|notes| notes.cautions.iter()) {
            // Of several of a kind, the one farthest beyond its limit.
            match seen.iter_mut().find(|s| s.kind == caution.kind) {
                Some(one) if beyond(caution) > beyond(one) => *one = *caution,
                Some(_) => {}
                None => seen.push(*caution),
            }
        }
        seen.sort_by_key(|caution| caution.kind.level);
        let burst = self.beyond_every_bottle();
        if seen.is_empty() && burst.is_none() {
            return;
        }
        page.heading("Mind");
        if let Some(error) = burst {
            page.bullet(&format!("DANGER: {error}"));
        }
        for caution in seen {
            page.bullet(&format!("{}: {caution}", caution.kind.level.word().to_uppercase()));
        }
    }

    fn bottles(&self, page: &mut Page) {
        page.heading("In bottles");
        match &self.residual.answer {
            Ok(answer) => page.say(
                "Already in it",
                &format!(
                    "{:.2} volumes of CO2 ({:.2} g/L) left after fermentation",
                    answer.value.volumes(),
                    answer.value.co2_g_per_l()
                ),
            ),
            Err(error) => page.say("Already in it", &error.to_string()),
        }
        match &self.priming.answer {
            Ok(answer) => {
                let dose = &answer.value;
                page.say(
                    "Priming sugar",
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
        if self.priming.answer.is_ok() {
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
        }
        if let Some(sentence) = self.expectation_sentence() {
            page.line("");
            page.wrapped("", 0, &sentence);
        }
        page.line("");
        page.line("  Pressure in the bottle, gauge      expected              worst case");
        for place in &self.storage {
            let label = match place.place {
                "hot_day" => "hot day",
                other => other,
            };
            let label = format!("    {label:<9}{:<20}", celsius(place.temperature));
            match &place.pressure.answer {
                Ok(answer) => page.line(&format!(
                    "{label}  {:<20}  {}",
                    bar_and_psi(answer.value.expected.gauge.si()),
                    bar_and_psi(answer.value.worst.gauge.si())
                )),
                Err(error) if self.priming.answer.as_ref().is_err_and(|dose| dose == error) => {
                    page.line(&format!("{label}  no dose, no pressure"));
                }
                Err(error) => page.wrapped(&label, 8, &error.to_string()),
            }
        }
        if self.storage.iter().any(|place| place.pressure.answer.is_ok()) {
            page.line("");
            page.wrapped("", 0, WORST_CASE);
        }
        page.line("");
        for text in safety::BOTTLES {
            page.bullet(text);
        }
    }

    fn keg(&self, page: &mut Page) {
        page.heading("In a keg");
        match &self.regulator.answer {
            Ok(answer) => page.say(
                "Regulator",
                &format!("{} gauge, held at {}", bar_and_psi(answer.value.gauge.si()), celsius(self.serving)),
            ),
            Err(error) => page.say("Regulator", &error.to_string()),
        }
        page.line("");
        for text in safety::KEGS {
            page.bullet(text);
        }
    }

    /// How sure the main answers are, and what to measure better.
    fn sure(&self, page: &mut Page) {
        let Some(sure) = &self.sure else { return };
        page.heading("How sure this is (95 cases in 100)");
        for (place, _, key, found) in sure.parts() {
            let label = match place {
                "priming" => "Dose",
                "carbonation" => "Carbonation",
                "hot_day" => "Bottle, hot day",
                _ => "Regulator",
            };
            let (low, high) = found.interval;
            let range = match key {
                Key::Mass => format!("{:.0} to {:.0} g", GRAM.from_si(low), GRAM.from_si(high)),
                Key::Carbonation => format!("{:.2} to {:.2} volumes", VOLUMES.from_si(low), VOLUMES.from_si(high)),
                _ => format!(
                    "{:.2} to {:.2} bar ({:.0} to {:.0} psi)",
                    BAR.from_si(low),
                    BAR.from_si(high),
                    PSI.from_si(low),
                    PSI.from_si(high)
                ),
            };
            let parts: Vec<String> = found.budget.iter().filter(|part| part.share >= 0.01).map(part_in_words).collect();
            page.say(label, &format!("{range}; of the variance {}", parts.join(", ")));
        }
        page.line("");
        page.wrapped("", 0, SURE);
    }

    fn standing(&self, page: &mut Page) {
        page.heading("What this stands on");
        fn basis<T>(answer: &Answer<T>) -> String {
            let b = &answer.context.basis;
            format!(
                "{} basis; solubility {}; residual CO2 {}; yield {:.0} % of theory; headspace {}",
                b.name.name(),
                answer.context.model().title(),
                b.residual.title(),
                b.yield_percent,
                if b.count_headspace { "counted" } else { "left out" }
            )
        }
        if let Ok(answer) = &self.priming.answer {
            page.say("Dose", &basis(answer));
        }
        if let Some(Ok(answer)) = self.storage.first().map(|s| &s.pressure.answer) {
            page.say("Bottle pressure", &basis(answer));
        }
        if let Ok(answer) = &self.regulator.answer {
            let b = &answer.context.basis;
            page.say("Keg", &format!("{} basis; solubility {}", b.name.name(), answer.context.model().title()));
        }
        let mut uncertain: Vec<&Equation> = Vec::new();
        let mut sources: Vec<&Source> = Vec::new();
        for notes in self.all_notes() {
            for equation in notes.equations() {
                if equation.uncertainty_percent.is_some_and(|u| u >= 5.0) && !uncertain.contains(&equation) {
                    uncertain.push(equation);
                }
            }
            for source in notes.sources() {
                if !sources.contains(&source) {
                    sources.push(source);
                }
            }
        }
        uncertain.sort_by(|a, b| b.uncertainty_percent.unwrap_or(0.0).total_cmp(&a.uncertainty_percent.unwrap_or(0.0)));
        let shares: Vec<String> =
            uncertain.iter().map(|e| format!("{} {:.0} %", e.title, e.uncertainty_percent.unwrap_or(0.0))).collect();
        if !shares.is_empty() {
            page.say("Least certain", &format!("{} (each k = 2)", shares.join("; ")));
        }
        if !sources.is_empty() {
            let list: Vec<&str> = sources.iter().map(|s| s.citation).collect();
            page.say("Sources", &list.join("; "));
        }
    }

    fn working(&self, page: &mut Page) {
        page.heading("Working of the dose");
        page.text.push_str(&self.priming.working.text());
        page.text.push('\n');
        page.heading("Working of the regulator pressure");
        page.line("(P is solved for, so that the drink holds the CO2 wanted.)");
        page.text.push_str(&self.regulator.working.text());
        page.text.push('\n');
    }
}
