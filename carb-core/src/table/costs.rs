//! Functions of money: bottle or keg.

use super::inputs::{each, output, packaged, under};
use crate::basis::function::{optional, required};
use crate::basis::{Answer, BasisName, Function, Input, Request, Values};
use crate::error::Error;
use crate::kegging::cost::{self, Prices, USUAL_LOSS, USUAL_USES};
use crate::quantity::unit::LITRE;
use crate::quantity::{Key, Mass, Percent, Volume};

/// What the prices are, beside the drink of a batch.
pub(crate) const PRICES: [Input; 11] = [
    optional(Key::Bottle, "0.5 L"),
    optional(Key::BottlingPrice, "0"),
    optional(Key::BottlePrice, "0"),
    optional(Key::CapPrice, "0"),
    optional(Key::SugarPrice, "0"),
    optional(Key::Uses, "10"),
    optional(Key::BottleLoss, "3 %"),
    optional(Key::KegPrice, "0"),
    optional(Key::GasPrice, "0"),
    optional(Key::KegLoss, "3 %"),
    optional(Key::DrinkPrice, "0"),
];
/// What a batch takes.
const TAKEN: [Input; 2] = [optional(Key::Mass, "0"), optional(Key::Gas, "0")];
const USUAL_BOTTLE: f64 = LITRE.to_si(0.5);
/// How many batches are looked at where it is not told; judgement.
pub const USUAL_BATCHES: f64 = 10.0;

fn prices(request: &Request) -> Result<Prices, Error> {
    let money = |key: Key| request.or(key, 0.0);
    Ok(Prices {
        packaged: packaged(request)?,
        bottle: Volume::from_si(request.or(Key::Bottle, USUAL_BOTTLE)?),
        bottling: [
            money(Key::BottlingPrice)?,
            money(Key::BottlePrice)?,
            money(Key::CapPrice)?,
            money(Key::SugarPrice)?,
        ],
        sugar: Mass::from_si(money(Key::Mass)?),
        uses: request.or(Key::Uses, USUAL_USES)?,
        bottle_loss: Percent::from_si(request.or(Key::BottleLoss, USUAL_LOSS)?),
        kegging: [money(Key::KegPrice)?, money(Key::GasPrice)?],
        gas: Mass::from_si(money(Key::Gas)?),
        keg_loss: Percent::from_si(request.or(Key::KegLoss, USUAL_LOSS)?),
        drink: money(Key::DrinkPrice)?,
    })
}

const COLUMNS: [Key; 15] = [
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
    Key::Batches,
];

/// What packaging costs.
pub static PACKAGING_COST: Function = Function {
    name: "packaging_cost",
    summary: "What a litre costs that is drunk from bottles and from a keg, of the first batch and over several, by prices of one's own; of the drink itself only what is lost counts.",
    home: "kegging::cost::packaging_cost",
    inputs: super::inputs::join!([required(Key::Packaged)], PRICES, TAKEN, [optional(Key::Batches, "10")]),
    outputs: &[
        under("bottles_first", Key::Cost),
        under("keg_first", Key::Cost),
        under("bottles", Key::Cost),
        under("keg", Key::Cost),
        under("bottles", Key::Spent),
        under("keg", Key::Spent),
    ],
    columns: &COLUMNS,
    example: r#"{"packaged_l": 19, "bottle_money": 0.6, "cap_money": 0.04, "outfit_money": 320, "gas_g": 140, "gas_money_per_kg": 4, "batches_count": 12}"#,
    run: |request, steps| {
        let batches = request.or(Key::Batches, USUAL_BATCHES)?;
        let (c, notes) = cost::packaging_cost(&prices(request)?, batches, &mut &mut *steps)?;
        let value = Values::new([c.first[0], c.first[1], c.later[0], c.later[1], c.spent[0], c.spent[1]]);
        Ok(Answer { value, context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| {
        let x = cost::columns(&prices(request)?, request.or(Key::Batches, USUAL_BATCHES)?);
        cost::visit(each(request, x, s))
    },
};

/// When the keg pays.
pub static BREAK_EVEN: Function = Function {
    name: "break_even",
    summary: "The batch at which kegging will have cost no more than bottling, fractions and all, by prices of one's own; 1 where it does from the first.",
    home: "kegging::cost::break_even",
    inputs: super::inputs::join!([required(Key::Packaged)], PRICES, TAKEN),
    outputs: &[output(Key::Batches)],
    columns: COLUMNS.split_at(14).0,
    example: r#"{"packaged_l": 19, "bottle_money": 0.6, "cap_money": 0.04, "sugar_money_per_kg": 2, "mass_g": 116, "outfit_money": 320, "gas_g": 140, "gas_money_per_kg": 4}"#,
    run: |request, steps| {
        let (batches, notes) = cost::break_even(&prices(request)?, &mut &mut *steps)?;
        Ok(Answer { value: Values::new([batches]), context: request.context(BasisName::Handbook)?, notes })
    },
    slices: |request, s| cost::visit_break_even(each(request, prices(request)?.columns(), s)),
};
