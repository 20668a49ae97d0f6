//! Bottle or keg: what each costs, a litre of the first batch and of many, and from which batch on the keg is cheaper.
//!
//! Prices are the caller's own, in any one currency; what is not told costs nothing.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::error::{Error, code};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{Notes, Steps, Symbol};
use crate::quantity::unit::{KILOGRAM, LITRE, MONEY, MONEY_PER_KILOGRAM, MONEY_PER_LITRE, PERCENT, THINGS};
use crate::quantity::{Key, Mass, Name, Percent, Volume};

const DRINK: Symbol = limited("V", Measure::In(&LITRE), "drink of one batch", 1e-3, 1e6);
const LOSS: Symbol = limited("l", Measure::In(&PERCENT), "drink that is lost, percent", 0.0, 100.0);
const BATCHES: Symbol = limited("n", Measure::In(&THINGS), "batches", 1.0, 1e5);
const DRINK_PRICE: Symbol = limited("d", Measure::In(&MONEY_PER_LITRE), "what the drink costs", 0.0, 1e9);

/// Bottles for a batch.
pub static BOTTLES_NEEDED: Equation = Equation {
    id: "bottles_needed",
    title: "bottles for a batch, fractions and all",
    formula: "N = V/b",
    result: symbol("N", Measure::In(&THINGS), "bottles"),
    inputs: &[DRINK, limited("b", Measure::In(&LITRE), "drink in one bottle", 0.01, 100.0)],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / x[1],
};

/// What each batch costs in bottles, beside the bottles.
pub static BATCH_IN_BOTTLES: Equation = Equation {
    id: "batch_in_bottles",
    title: "caps, sugar and lost drink of one batch in bottles",
    formula: "r = N*c + m*s + V*l/100*d",
    result: symbol("r", Measure::In(&MONEY), "cost of each batch"),
    inputs: &[
        limited("N", Measure::In(&THINGS), "bottles", 0.0, 1e6),
        limited("c", Measure::In(&MONEY), "price of a cap", 0.0, 1e9),
        limited("m", Measure::In(&KILOGRAM), "sugar for a batch", 0.0, 1e6),
        limited("s", Measure::In(&MONEY_PER_KILOGRAM), "price of the sugar", 0.0, 1e9),
        DRINK,
        LOSS,
        DRINK_PRICE,
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] * x[1] + x[2] * x[3] + x[4] * x[5] / 100.0 * x[6],
};

/// What each batch costs in a keg.
pub static BATCH_IN_KEG: Equation = Equation {
    id: "batch_in_keg",
    title: "gas and lost drink of one batch in a keg",
    formula: "r = m*g + V*l/100*d",
    result: symbol("r", Measure::In(&MONEY), "cost of each batch"),
    inputs: &[
        limited("m", Measure::In(&KILOGRAM), "CO2 for a batch", 0.0, 1e6),
        limited("g", Measure::In(&MONEY_PER_KILOGRAM), "price of CO2", 0.0, 1e9),
        DRINK,
        LOSS,
        DRINK_PRICE,
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] * x[1] + x[2] * x[3] / 100.0 * x[4],
};

/// What bottles cost in all.
pub static SPENT_ON_BOTTLES: Equation = Equation {
    id: "spent_on_bottles",
    title: "spent on bottling in all, where a first set of bottles lasts for its uses and is replaced as it goes",
    formula: "S = o + N*p*max(1, n/u) + n*r",
    result: symbol("S", Measure::In(&MONEY), "spent in all"),
    inputs: &[
        limited("o", Measure::In(&MONEY), "price of the outfit", 0.0, 1e9),
        limited("N", Measure::In(&THINGS), "bottles", 0.0, 1e6),
        limited("p", Measure::In(&MONEY), "price of a bottle", 0.0, 1e9),
        BATCHES,
        limited("u", Measure::In(&THINGS), "uses of a bottle", 1.0, 1e5),
        limited("r", Measure::In(&MONEY), "cost of each batch", 0.0, 1e12),
    ],
    uncertainty_percent: None,
    uncertainty: "exact for prices that stay as they are",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| spent_on_bottles([x[0], x[1], x[2], x[4], x[5]], x[3]),
};

#[inline(always)]
fn spent_on_bottles([outfit, bottles, price, uses, batch]: [f64; 5], n: f64) -> f64 {
    let sets = n / uses;
    outfit + bottles * price * if sets > 1.0 { sets } else { 1.0 } + n * batch
}

/// What kegs cost in all.
pub static SPENT_ON_KEGS: Equation = Equation {
    id: "spent_on_kegs",
    title: "spent on kegging in all",
    formula: "S = o + n*r",
    result: symbol("S", Measure::In(&MONEY), "spent in all"),
    inputs: &[
        limited("o", Measure::In(&MONEY), "price of the outfit", 0.0, 1e9),
        BATCHES,
        limited("r", Measure::In(&MONEY), "cost of each batch", 0.0, 1e12),
    ],
    uncertainty_percent: None,
    uncertainty: "exact for prices that stay as they are",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1] * x[2],
};

/// What a litre costs that is drunk.
pub static COST_PER_LITRE: Equation = Equation {
    id: "cost_per_litre",
    title: "cost of a litre that is drunk, beside the drink itself",
    formula: "C = S/(n*V*(1 - l/100))",
    result: symbol("C", Measure::In(&MONEY_PER_LITRE), "cost of a litre"),
    inputs: &[
        limited("S", Measure::In(&MONEY), "spent in all", 0.0, 1e15),
        BATCHES,
        DRINK,
        limited("l", Measure::In(&PERCENT), "drink that is lost, percent", 0.0, 99.0),
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / (x[1] * x[2] * (1.0 - x[3] / 100.0)),
};

/// The batch at which the keg has caught up.
pub static BREAK_EVEN: Equation = Equation {
    id: "break_even",
    title: "batch at which kegging has caught up with bottling",
    formula: "n = m + D/s",
    result: symbol("n", Measure::In(&THINGS), "batches"),
    inputs: &[
        limited("m", Measure::In(&THINGS), "batch from which it is counted", 1.0, 1e5),
        limited("D", Measure::In(&MONEY), "what kegging has cost more by that batch", 0.0, 1e12),
        limited("s", Measure::In(&MONEY), "what each further batch saves in a keg", 0.01, 1e9),
    ],
    uncertainty_percent: None,
    uncertainty: "exact for prices that stay as they are",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1] / x[2],
};

/// What the two ways of packaging cost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prices {
    /// Drink of one batch.
    pub packaged: Volume,
    /// Drink in one bottle.
    pub bottle: Volume,
    /// Money: the outfit for bottling, one bottle, one cap, a kilogram of sugar.
    pub bottling: [f64; 4],
    /// Sugar for a batch.
    pub sugar: Mass,
    /// How often a bottle is used.
    pub uses: f64,
    /// Drink lost in bottling.
    pub bottle_loss: Percent,
    /// Money: the outfit for kegging, a kilogram of CO2.
    pub kegging: [f64; 2],
    /// CO2 for a batch.
    pub gas: Mass,
    /// Drink lost in kegging.
    pub keg_loss: Percent,
    /// Money for a cubic metre of the drink itself.
    pub drink: f64,
}

/// What is lost of a drink, percent, where it is not told: trub and foam in many bottles, a line that is rinsed. Judgement.
pub const USUAL_LOSS: f64 = 3.0;
/// How often a bottle is used where it is not told; judgement.
pub const USUAL_USES: f64 = 10.0;

const COUNT: usize = 14;

impl Prices {
    /// The kernels' columns, SI.
    pub(crate) fn columns(&self) -> [f64; COUNT] {
        let [outfit, bottle, cap, sugar] = self.bottling;
        let [keg, gas] = self.kegging;
        [
            self.packaged.si(),
            self.bottle.si(),
            outfit,
            bottle,
            cap,
            sugar,
            self.sugar.si(),
            self.uses,
            self.bottle_loss.si(),
            keg,
            gas,
            self.gas.si(),
            self.keg_loss.si(),
            self.drink,
        ]
    }
}

const COLUMNS: [Key; COUNT] = [
    Key::Packaged,
    Key::Bottle,
    Key::BottlingPrice,
    Key::BottlePrice,
    Key::CapPrice,
    Key::SugarPrice,
    Key::Mass,
    Key::Uses,
    Key::BottleLoss,
    Key::KegPrice,
    Key::GasPrice,
    Key::Gas,
    Key::KegLoss,
    Key::DrinkPrice,
];

/// Both ways, batch by batch.
#[derive(Clone, Copy)]
struct Ways {
    /// Outfit, bottles, price of one, uses, cost of each batch.
    bottles: [f64; 5],
    /// Outfit, cost of each batch.
    kegs: [f64; 2],
}

impl Ways {
    #[inline(always)]
    fn of(x: &[f64; COUNT], steps: &mut impl Steps) -> Self {
        let [drink, bottle, outfit, price, cap, sugar, mass, uses, loss, keg, gas_price, gas, keg_loss, worth] = *x;
        let count = steps.step(&BOTTLES_NEEDED, &[drink, bottle], drink / bottle);
        let batch = count * cap + mass * sugar + drink * loss / 100.0 * worth;
        steps.record(&BATCH_IN_BOTTLES, &[count, cap, mass, sugar, drink, loss, worth], batch);
        let keg_batch = gas * gas_price + drink * keg_loss / 100.0 * worth;
        steps.record(&BATCH_IN_KEG, &[gas, gas_price, drink, keg_loss, worth], keg_batch);
        Self { bottles: [outfit, count, price, uses, batch], kegs: [keg, keg_batch] }
    }

    #[inline(always)]
    fn on_bottles(&self, n: f64, steps: &mut impl Steps) -> f64 {
        let [outfit, count, price, uses, batch] = self.bottles;
        steps.step(&SPENT_ON_BOTTLES, &[outfit, count, price, n, uses, batch], spent_on_bottles(self.bottles, n))
    }

    #[inline(always)]
    fn on_kegs(&self, n: f64, steps: &mut impl Steps) -> f64 {
        let [outfit, batch] = self.kegs;
        steps.step(&SPENT_ON_KEGS, &[outfit, n, batch], outfit + n * batch)
    }
}

/// Losses beyond which nothing is left to drink.
const MOST_LOSS: f64 = 99.0;

#[derive(Clone, Copy)]
struct Costs;

impl Kernel<15, 6> for Costs {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 15] = {
        let mut all = [Key::Batches; 15];
        let mut at = 0;
        while at < COUNT {
            all[at] = COLUMNS[at];
            at += 1;
        }
        all
    };
    #[inline(always)]
    fn eval(&self, x: [f64; 15], steps: &mut impl Steps) -> ([f64; 6], i32) {
        let [prices @ .., batches] = x;
        let ways = Ways::of(&prices, steps);
        let (drink, lost, keg_lost) = (prices[0], prices[8], prices[12]);
        let mut each = |spent: f64, n: f64, loss: f64| {
            steps.step(&COST_PER_LITRE, &[spent, n, drink, loss], spent / (n * drink * (1.0 - loss / 100.0)))
        };
        let [first, first_keg] =
            [ways.on_bottles(1.0, &mut crate::evidence::NoSteps), ways.on_kegs(1.0, &mut crate::evidence::NoSteps)];
        let now = [each(first, 1.0, lost), each(first_keg, 1.0, keg_lost)];
        let (all, all_kegs) = (ways.on_bottles(batches, steps), ways.on_kegs(batches, steps));
        let mut each = |spent: f64, loss: f64| {
            let left = batches * drink * (1.0 - loss / 100.0);
            steps.step(&COST_PER_LITRE, &[spent, batches, drink, loss], spent / left)
        };
        let later = [each(all, lost), each(all_kegs, keg_lost)];
        let nothing = (lost > MOST_LOSS) | (keg_lost > MOST_LOSS);
        ([now[0], now[1], later[0], later[1], all, all_kegs], if nothing { code::OUT_OF_RANGE } else { 0 })
    }
    fn explain(&self, _: i32, x: [f64; 15]) -> Error {
        let (key, value) = if x[8] > MOST_LOSS { (Key::BottleLoss, x[8]) } else { (Key::KegLoss, x[12]) };
        Error::OutOfRange { parameter: Name::first(key), value, low: 0.0, high: MOST_LOSS }
    }
}

/// From which batch on the keg has cost less.
///
/// What bottling has cost lies on two straight lines, the second (when bottles have to be replaced) the steeper: so the
/// difference to kegging is found on the one or on the other.
#[derive(Clone, Copy)]
struct BreakEven;

impl BreakEven {
    /// Slopes of the difference, keg less bottles, before and after bottles have to be replaced; the difference at the
    /// first batch and where the first set of bottles is used up.
    #[inline(always)]
    fn difference(x: &[f64; COUNT], steps: &mut impl Steps) -> ([f64; 2], [f64; 2], f64) {
        let ways = Ways::of(x, steps);
        let [_, count, price, uses, batch] = ways.bottles;
        let before = ways.kegs[1] - batch;
        let quiet = &mut crate::evidence::NoSteps;
        let at = [1.0, uses].map(|n| ways.on_kegs(n, quiet) - ways.on_bottles(n, quiet));
        ([before, before - count * price / uses], at, uses)
    }
}

impl Kernel<14, 1> for BreakEven {
    const SCALAR: bool = true;
    const COLUMNS: [Key; COUNT] = COLUMNS;
    #[inline(always)]
    fn eval(&self, x: [f64; COUNT], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let ([early, late], [first, used_up], uses) = Self::difference(&x, steps);
        let on_first_set = (early < 0.0) & (used_up <= 0.0);
        let [from, more, saved] = if on_first_set { [1.0, first, -early] } else { [uses, used_up, -late] };
        // Where it is the cheaper from the first, nothing has to be caught up.
        let [from, more, saved] = if first <= 0.0 { [1.0, 0.0, 1.0] } else { [from, more, saved] };
        let n = steps.step(&BREAK_EVEN, &[from, more, saved], from + more / saved);
        ([n], if (saved > 0.0) & (n < MOST_BATCHES) { 0 } else { code::OUT_OF_REACH })
    }
    fn explain(&self, _: i32, x: [f64; COUNT]) -> Error {
        let ([_, late], [first, used_up], _) = Self::difference(&x, &mut crate::evidence::NoSteps);
        // The most that the outfit may cost and ever pay: what bottling will have cost beyond the keg's batches.
        let spare = if late < 0.0 { first.min(used_up + MOST_BATCHES * late) } else { first.min(used_up) };
        Error::OutOfReach {
            parameter: Name::first(Key::KegPrice),
            value: x[9],
            limit: (x[9] - spare).max(0.0),
            advice: "at these prices kegging never catches up with bottling: it does with an outfit that costs no more than that, or where bottles, caps or what is lost cost more",
        }
    }
}

/// Batches beyond which nobody waits for a keg to pay.
const MOST_BATCHES: f64 = 1.0e5;

/// Hands the kernel of the costs to a visitor.
pub(crate) fn visit<V: Visit<15, 6>>(visitor: V) -> V::Output {
    visitor.visit(Costs)
}

/// Hands the kernel of the break-even batch to a visitor.
pub(crate) fn visit_break_even<V: Visit<14, 1>>(visitor: V) -> V::Output {
    visitor.visit(BreakEven)
}

/// What packaging costs, beside the drink itself (of which only what is lost counts).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackagingCost {
    /// Money for a cubic metre of the first batch, in bottles and in a keg.
    pub first: [f64; 2],
    /// The same over all batches.
    pub later: [f64; 2],
    /// Money spent in all.
    pub spent: [f64; 2],
}

/// The kernel's columns, SI.
pub(crate) fn columns(prices: &Prices, batches: f64) -> [f64; 15] {
    let mut all = [batches; 15];
    all[..COUNT].copy_from_slice(&prices.columns());
    all
}

/// What each way of packaging costs for a litre that is drunk: of the first batch, and over some number of them.
///
/// # Errors
/// Where a value lies outside its limits, or a loss leaves nothing to drink.
pub fn packaging_cost(prices: &Prices, batches: f64, steps: &mut impl Steps) -> Result<(PackagingCost, Notes), Error> {
    let mut notes = Notes::default();
    let x = columns(prices, batches);
    let [first, first_keg, later, later_keg, spent, spent_keg] =
        visit(Once { x, steps: &mut Both(&mut notes, steps) })?;
    let found = PackagingCost { first: [first, first_keg], later: [later, later_keg], spent: [spent, spent_keg] };
    Ok((found, notes))
}

/// The batch at which kegging will have cost no more than bottling, fractions and all; 1 where it does from the first.
///
/// # Errors
/// Where a value lies outside its limits, or kegging never becomes the cheaper.
pub fn break_even(prices: &Prices, steps: &mut impl Steps) -> Result<(f64, Notes), Error> {
    let mut notes = Notes::default();
    let x = prices.columns();
    let [batches] = visit_break_even(Once { x, steps: &mut Both(&mut notes, steps) })?;
    Ok((batches, notes))
}
