//! The plan as a page of text.

use super::page::{Page, celsius};
use super::{Bottling, Kegging, Plan, Sure};
use crate::basis::{Ambient, Answer, Request, ResidualModel};
use crate::error::Error;
use crate::evidence::steps::significant;
use crate::evidence::{Caution, Equation, NoSteps, Notes, Source};
use crate::quantity::unit::{BAR, CO2_GRAMS_PER_LITRE, GRAM, LITRE, PSI, US_GALLON, VOLUMES};
use crate::quantity::{AmbientPressure, Key, Temperature};
use crate::uncertainty::{Doubt, Share};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

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

/// What the batch is.
pub(super) fn head(page: &mut Page, what: &str, request: &Request) {
    let title = match request.text(Key::Title) {
        Some(title) => format!("{what}: {title}"),
        None => String::from(what),
    };
    page.line(&title);
    page.line(&"=".repeat(title.chars().count()));
    if let Ok(drink) = request.drink() {
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
    if let Some(packaged) = request.number(Key::Packaged) {
        page.say(
            "To package",
            &format!("{:.1} L ({:.2} US gal)", LITRE.from_si(packaged), US_GALLON.from_si(packaged)),
        );
    }
    if let Some(warmest) = request.number(Key::Warmest) {
        page.say("Warmest", &format!("{} since active fermentation", celsius(Temperature::from_si(warmest))));
    }
    if let Ok(Some(air)) = request.air() {
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
    if let Some(target) = request.number(Key::Carbonation) {
        page.say(
            "Wanted",
            &format!("{:.2} volumes of CO2 ({:.2} g/L)", VOLUMES.from_si(target), CO2_GRAMS_PER_LITRE.from_si(target)),
        );
    }
}

/// Errors that are warnings to the brewer.
#[derive(Default)]
pub(super) struct Grave<'a> {
    /// Somebody may be hurt.
    pub danger: Vec<&'a Error>,
    /// Something is to be seen to.
    pub caution: Vec<&'a Error>,
}

impl<'a> Grave<'a> {
    /// Those of bottles.
    pub fn bottles(mut self, job: &'a Bottling) -> Self {
        self.danger.extend(job.beyond_every_bottle());
        let short = job.fill.as_ref().and_then(|fill| fill.answer.as_ref().err());
        self.caution.extend(short.filter(|error| matches!(error, Error::BottlesShort { .. })));
        self
    }

    /// Those of kegs.
    pub fn kegs(mut self, job: &'a Kegging) -> Self {
        match job.beyond_every_keg() {
            Some(error) => self.danger.push(error),
            // Where the job has no answer at all, this is not what to say first.
            None => self.caution.extend(job.unjudged().filter(|_| job.answered())),
        }
        self
    }
}

/// Every caution once, the gravest first.
pub(super) fn cautions(page: &mut Page, notes: &[&Notes], grave: &Grave<'_>) {
    let mut seen: Vec<Caution> = Vec::new();
    for caution in notes.iter().flat_map(|notes| notes.cautions.iter()) {
        // Of several of a kind, the one farthest beyond its limit; without limits, the largest.
        match seen.iter_mut().find(|s| s.kind == caution.kind) {
            Some(one) if (beyond(caution), caution.value) > (beyond(one), one.value) => *one = *caution,
            Some(_) => {}
            None => seen.push(*caution),
        }
    }
    seen.sort_by_key(|caution| caution.kind.level);
    if seen.is_empty() && grave.danger.is_empty() && grave.caution.is_empty() {
        return;
    }
    page.heading("Mind");
    for error in &grave.danger {
        page.bullet(&format!("DANGER: {error}"));
    }
    for error in &grave.caution {
        page.bullet(&format!("CAUTION: {error}"));
    }
    for caution in seen {
        page.bullet(&format!("{}: {caution}", caution.kind.level.word().to_uppercase()));
    }
}

/// A basis in words.
pub(super) fn basis<T>(answer: &Answer<T>) -> String {
    let b = &answer.context.basis;
    // The trade's table of residual CO2 needs no model of solubility.
    let by_model = b.count_headspace || b.residual == ResidualModel::Equilibrium;
    let solubility = if by_model { format!(" solubility {};", answer.context.model().title()) } else { String::new() };
    format!(
        "{} basis;{solubility} residual CO2 {}; yield {:.0} % of theory; headspace {}",
        b.name.name(),
        b.residual.title(),
        b.yield_percent,
        if b.count_headspace { "counted" } else { "left out" }
    )
}

/// Longest citation in short.
const SHORT: usize = 45;

/// Author and year of a citation; where it has no year near its beginning, what comes before the first comma.
fn short(citation: &str) -> &str {
    let dated = |text: &str| text.as_bytes().windows(4).any(|four| four.iter().all(u8::is_ascii_digit));
    let mut ends = citation.match_indices(',').filter_map(|(at, _)| citation.get(..at));
    let first = citation.split(',').next().unwrap_or(citation);
    ends.find(|text| dated(text)).filter(|text| text.len() <= SHORT).unwrap_or(first)
}

/// What the answers rest on.
pub(super) fn sources(page: &mut Page, notes: &[&Notes]) {
    let mut uncertain: Vec<&Equation> = Vec::new();
    let mut sources: Vec<&Source> = Vec::new();
    for notes in notes {
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
        // Author and year tell a source from the others; the table of sources has them in full.
        let list: Vec<&str> = sources.iter().map(|source| short(source.citation)).collect();
        page.say("Sources", &format!("{} (in full: the table \"sources\")", list.join("; ")));
    }
}

impl Plan {
    /// The plan as text. With `"working": true` in the request, the working follows.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut page = Page::default();
        let notes = self.all_notes();
        head(&mut page, "PACKAGING PLAN", &self.bottling.request);
        cautions(&mut page, &notes, &Grave::default().bottles(&self.bottling).kegs(&self.kegging));
        self.bottling.write(&mut page);
        self.kegging.write(&mut page);
        self.choice(&mut page);
        sure(&mut page, self.sure.as_ref());
        page.heading("What this stands on");
        self.bottling.standing(&mut page);
        self.kegging.standing(&mut page);
        sources(&mut page, &notes);
        if self.request.flag(Key::Working) == Some(true) {
            self.bottling.working(&mut page);
            self.kegging.working(&mut page);
        }
        page.text
    }
}

/// How sure the main answers are, and what to measure better.
pub(super) fn sure(page: &mut Page, sure: Option<&Sure>) {
    let Some(sure) = sure else { return };
    page.heading("How sure this is (95 cases in 100)");
    for (place, _, key, found) in sure.parts() {
        let label = match place {
            "priming" => "Dose",
            "carbonation" => "Carbonation",
            "hot_day" => "Bottle, hot day",
            "gas" => "CO2 for a keg",
            "warmed" => "Keg, hot day",
            _ => "Regulator",
        };
        let (low, high) = found.interval;
        let range = match key {
            Key::Mass | Key::Gas => format!("{:.0} to {:.0} g", GRAM.from_si(low), GRAM.from_si(high)),
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
    if sure.dose.is_some() {
        page.line("");
        page.wrapped("", 0, SURE);
    }
}
