//! Bottle or keg: the two ways side by side, as text.

use super::kegging::{BURST, CARBONATING};
use super::page::Page;
use super::text_kegging::span;
use super::{Part, Plan};
use crate::kegging::cost::USUAL_LOSS;
use crate::quantity::unit::{DAY, GRAM, MONEY_PER_LITRE};
use crate::quantity::{Key, Unit};
use crate::table::costs::USUAL_BATCHES;
use alloc::format;
use alloc::string::String;

const NOTHING: &str = "-";

/// A row of the comparison.
fn row(page: &mut Page, label: &str, bottles: &str, keg: &str) {
    page.line(&format!("  {label:<22}{bottles:<24}{keg}"));
}

fn shown(value: Option<f64>, unit: &Unit, places: usize) -> String {
    value.map_or(String::from(NOTHING), |value| format!("{:.places$}", unit.from_si(value)))
}

impl Plan {
    /// The comparison that a newcomer asks for.
    pub(super) fn choice(&self, page: &mut Page) {
        let (bottles, kegs) = (&self.bottling, &self.kegging);
        if !bottles.answered() || !kegs.answered() {
            return;
        }
        page.heading("Bottle or keg?");
        row(page, "", "in bottles", "in a keg");
        let ready = bottles.ready.value().map(|ready| ready.time);
        let days = |time: f64| DAY.from_si(time);
        let ready = ready.map_or(String::from(NOTHING), |time| {
            format!(
                "{:.0} days ({:.0} to {:.0})",
                days(time.expected.si()),
                days(time.least.si()),
                days(time.most.si())
            )
        });
        row(page, "carbonated after", &ready, &self.keg_ready());
        let sugar = bottles.priming.value().map(|dose| dose.mass.si());
        let kegs_count = kegs.kegs.value().map_or(1, |found| found.count);
        let gas = kegs.value("gas", "total", Key::Gas).map(|gas| gas * f64::from(kegs_count));
        row(
            page,
            "CO2 from",
            &format!("{} g of sugar", shown(sugar, &GRAM, 0)),
            &format!("{} g of gas, to serve it too", shown(gas, &GRAM, 0)),
        );
        let washed = bottles.fill.as_ref().and_then(Part::value).map(|fill| format!("{} bottles", fill.washed));
        let washed = washed.unwrap_or_else(|| format!("{:.0} half-litre bottles", 2.0 * kegs.litres().unwrap_or(0.0)));
        row(page, "to wash", &washed, &format!("{kegs_count} keg{}", if kegs_count == 1 { "" } else { "s" }));
        let loss = |key| format!("{:.0} %", self.request.number(key).unwrap_or(USUAL_LOSS));
        row(page, "drink lost", &loss(Key::BottleLoss), &loss(Key::KegLoss));
        let Some(cost) = kegs.part("cost") else {
            page.line("");
            page.wrapped("", 0, "Tell your prices (outfit_money, bottle_money, gas_money_per_kg, ...) and it says what a litre costs either way, and when a keg has paid.");
            return;
        };
        if let Err(error) = &cost.part.answer {
            page.line("");
            page.wrapped("", 0, &format!("Cost: {error}"));
            return;
        }
        let litre = |noun| shown(cost.value(noun, Key::Cost), &MONEY_PER_LITRE, 2);
        row(page, "a litre, first batch", &litre("bottles_first"), &litre("keg_first"));
        let batches = self.request.number(Key::Batches).unwrap_or(USUAL_BATCHES);
        row(page, &format!("a litre, {batches:.0} batches"), &litre("bottles"), &litre("keg"));
        page.line("");
        let paid = kegs.part("break_even").map(|part| &part.part.answer);
        let words = match paid {
            Some(Ok(answer)) if answer.value.as_slice().first().is_some_and(|batch| *batch <= 1.0) => {
                String::from("The keg costs less from the first batch on.")
            }
            Some(Ok(answer)) => {
                let batch = answer.value.as_slice().first().copied().unwrap_or(f64::NAN);
                format!("The keg has paid with batch {}.", whole(batch))
            }
            Some(Err(_)) | None => String::from("At these prices a keg never pays by money alone."),
        };
        page.wrapped(
            "",
            0,
            &format!(
                "{words} Costs are those of packaging, in your currency; what is not told costs nothing, and of the drink itself only what is lost counts."
            ),
        );
    }

    /// When the keg is carbonated, the faster way first.
    fn keg_ready(&self) -> String {
        let kegs = &self.kegging;
        let burst = |noun| kegs.value(BURST, noun, Key::Time);
        if let (Some(stop), Some(rest), Some(latest)) = (burst("stop"), burst("rest"), burst("latest_rest")) {
            return format!("{}, by a burst", span(stop + rest, stop, stop + latest));
        }
        let time = |noun| kegs.value(CARBONATING, noun, Key::Time);
        match (time("expected"), time("soonest"), time("latest")) {
            (Some(expected), Some(soonest), Some(latest)) => span(expected, soonest, latest),
            _ => String::from(NOTHING),
        }
    }
}

/// A batch in whole numbers: the first at which it holds.
fn whole(batch: f64) -> u32 {
    let down = (batch - 1e-9) as u32;
    down.saturating_add(1)
}
