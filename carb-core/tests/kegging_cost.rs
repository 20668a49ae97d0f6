//! Bottle or keg: what each costs, against sums made batch by batch.
#![allow(clippy::disallowed_methods)]

use carb_core::Error;
use carb_core::basis::Request;
use carb_core::basis::request::Raw;
use carb_core::evidence::NoSteps;
use carb_core::table::functions::named;

/// A household: liters of a batch and of a bottle, and prices.
struct House {
    packaged: f64,
    bottle: f64,
    outfit: f64,
    price: f64,
    cap: f64,
    sugar: f64,
    sugar_kg: f64,
    uses: f64,
    loss: f64,
    keg: f64,
    gas: f64,
    gas_kg: f64,
    keg_loss: f64,
    drink: f64,
}

impl House {
    fn request(&self) -> Request {
        let mut request = Request::new();
        for (name, value) in [
            ("packaged_l", self.packaged),
            ("bottle_l", self.bottle),
            ("bottling_outfit_money", self.outfit),
            ("bottle_money", self.price),
            ("cap_money", self.cap),
            ("sugar_money_per_kg", self.sugar),
            ("mass_kg", self.sugar_kg),
            ("uses_count", self.uses),
            ("bottle_loss_percent", self.loss),
            ("outfit_money", self.keg),
            ("gas_money_per_kg", self.gas),
            ("gas_kg", self.gas_kg),
            ("keg_loss_percent", self.keg_loss),
            ("drink_money_per_l", self.drink),
        ] {
            request.set(name, Raw::Number(value)).expect(name);
        }
        request
    }

    /// What is spent up to a batch, added up batch by batch.
    fn spent(&self, batches: u32) -> (f64, f64) {
        let bottles = self.packaged / self.bottle;
        let (mut on_bottles, mut on_kegs) = (self.outfit + bottles * self.price, self.keg);
        for batch in 1..=batches {
            on_bottles += bottles * self.cap + self.sugar * self.sugar_kg;
            on_bottles += self.packaged * self.loss / 100.0 * self.drink;
            on_kegs += self.gas * self.gas_kg + self.packaged * self.keg_loss / 100.0 * self.drink;
            // After as many batches as a bottle lasts, each further one wears out its share.
            if f64::from(batch) > self.uses {
                let worn = (f64::from(batch) - self.uses).min(1.0);
                on_bottles += worn * bottles * self.price / self.uses;
            }
        }
        (on_bottles, on_kegs)
    }
}

fn houses() -> Vec<House> {
    let mut state = 0x2545_f491_4f6c_dd1d_u64;
    let mut draw = |low: f64, high: f64| {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        low + (high - low) * ((state >> 11) as f64 / (1u64 << 53) as f64)
    };
    (0..300)
        .map(|_| House {
            packaged: draw(5.0, 60.0),
            bottle: draw(0.25, 1.0),
            outfit: draw(0.0, 80.0),
            price: draw(0.0, 1.2),
            cap: draw(0.0, 0.1),
            sugar: draw(0.5, 5.0),
            sugar_kg: draw(0.05, 0.3),
            uses: draw(1.0, 40.0).round(),
            loss: draw(0.0, 10.0),
            keg: draw(0.0, 600.0),
            gas: draw(1.0, 20.0),
            gas_kg: draw(0.05, 0.4),
            keg_loss: draw(0.0, 10.0),
            drink: draw(0.0, 5.0),
        })
        .collect()
}

fn close(ours: f64, theirs: f64) -> bool {
    (ours - theirs).abs() <= 1e-10 * theirs.abs().max(1.0)
}

#[test]
fn costs_are_what_a_ledger_adds_up_to() {
    for house in houses() {
        let mut request = house.request();
        request.set("batches_count", Raw::Number(25.0)).unwrap();
        let costs = named("packaging_cost").unwrap().answer(&request, &mut NoSteps).unwrap();
        let [first, first_keg, later, later_keg, all, all_kegs] = costs.value.as_slice() else { panic!("six") };
        let (spent, spent_keg) = house.spent(25);
        let (now, now_keg) = house.spent(1);
        // Money for a litre that is drunk; the kernel's SI is a cubic metre.
        let litre =
            |money: f64, batches: f64, loss: f64| money / (batches * house.packaged * (1.0 - loss / 100.0)) * 1000.0;
        assert!(close(*all, spent) && close(*all_kegs, spent_keg), "{all} {spent}");
        assert!(close(*first, litre(now, 1.0, house.loss)) && close(*first_keg, litre(now_keg, 1.0, house.keg_loss)));
        assert!(close(*later, litre(spent, 25.0, house.loss)));
        assert!(close(*later_keg, litre(spent_keg, 25.0, house.keg_loss)));
    }
}

#[test]
fn the_keg_pays_from_the_batch_that_is_told_on() {
    let (mut pays, mut never) = (0, 0);
    for house in houses() {
        match named("break_even").unwrap().answer(&house.request(), &mut NoSteps) {
            Ok(answer) => {
                let batch = answer.value.as_slice()[0];
                assert!(batch >= 1.0);
                let from = (batch - 1e-9).ceil() as u32;
                let (bottles, kegs) = house.spent(from);
                assert!(kegs <= bottles + 1e-6, "{batch}: {kegs} {bottles}");
                if from > 1 {
                    let (bottles, kegs) = house.spent(from - 1);
                    assert!(kegs > bottles - 1e-6, "{batch}: {kegs} {bottles}");
                }
                pays += 1;
            }
            Err(Error::OutOfReach { value, limit: high, .. }) => {
                assert!(value > high);
                for batches in [1, 2, 10, 1000] {
                    let (bottles, kegs) = house.spent(batches);
                    assert!(kegs > bottles, "{batches}");
                }
                // With an outfit as cheap as the error says, it pays, unless even a gift would not.
                if high > 0.0 {
                    let gift = House { keg: high * (1.0 - 1e-9), ..house };
                    assert!(named("break_even").unwrap().answer(&gift.request(), &mut NoSteps).is_ok());
                }
                never += 1;
            }
            Err(other) => panic!("{other}"),
        }
    }
    assert!(pays > 50 && never > 10, "{pays} {never}");
}
