//! Which bottles to fill, and how many: the exact optimum over the bottles at hand.
//!
//! Contents are counted in tenths of a millilitre, coarser only for more than 100 L or dozens of odd sizes. For every
//! volume that some bottles hold exactly, one table per size keeps the cheapest way to it; the best volume is chosen at
//! the end, and the way to it is read back from the tables.

use crate::basis::FillOrder;
use crate::error::Error;
use alloc::vec;
use alloc::vec::Vec;

/// Bottles of one kind that are at hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kind {
    /// Drink that goes into one, m3.
    pub content: f64,
    /// How many there are.
    pub count: u32,
}

/// Which bottles are filled.
#[derive(Clone, Debug, PartialEq)]
pub struct Filling {
    /// How many of each kind, in the order in which the kinds were given.
    pub filled: Vec<u32>,
    /// Drink that is left over, m3.
    pub leftover: f64,
}

/// Finest step in which contents are counted, m3.
const FINEST: f64 = 1.0e-7;
/// Volume up to which the finest step is taken, m3.
const SMALL_BATCH: f64 = 0.1;
/// Most cells of all tables together.
const MOST_CELLS: usize = 40_000_000;
/// No way leads there.
const NONE: u32 = u32::MAX / 2;
/// Bits of a cost that count what settles ties.
const TIES: u32 = 8;
const SIZES_FIRST: u32 = 24;

/// Kinds of one content, put together.
struct Group {
    size: usize,
    count: usize,
    kinds: Vec<usize>,
}

fn groups(kinds: &[Kind], step: f64) -> Vec<Group> {
    let mut all: Vec<Group> = Vec::new();
    for (at, kind) in kinds.iter().enumerate() {
        let size = (kind.content / step + 0.5) as usize;
        if kind.count == 0 || size == 0 {
            continue;
        }
        match all.iter_mut().find(|group| group.size == size) {
            Some(group) => {
                group.count += kind.count as usize;
                group.kinds.push(at);
            }
            None => all.push(Group { size, count: kind.count as usize, kinds: vec![at] }),
        }
    }
    all
}

fn common(a: usize, b: usize) -> usize {
    let (mut a, mut b) = (a, b);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}

/// What filling `x` bottles of a size costs: the criterion first, what settles ties behind it.
#[derive(Clone, Copy)]
struct Price {
    bottle: u32,
    size: u32,
}

impl Price {
    fn of(order: FillOrder) -> Self {
        match order {
            FillOrder::FewestSizes => Price { bottle: 1, size: 1 << SIZES_FIRST },
            _ => Price { bottle: 1 << TIES, size: 1 },
        }
    }

    fn some(self, x: u32) -> u32 {
        if x == 0 { 0 } else { self.size + x * self.bottle }
    }
}

/// `to[v]` becomes the cheaper of itself and of `from` less `shift`, which costs `price` more.
fn relax(to: &mut [u32], from: &[u32], shift: usize, price: u32) {
    if shift < to.len() {
        for (to, from) in to[shift..].iter_mut().zip(from) {
            let way = from + price;
            *to = if way < *to { way } else { *to };
        }
    }
}

/// Adds a size to the table of cheapest ways: any number of its bottles from none to all.
fn with_size(before: &[u32], group: &Group, price: Price, spare: &mut Vec<u32>) -> Vec<u32> {
    let mut some = vec![NONE; before.len()];
    relax(&mut some, before, group.size, price.some(1));
    // Any number of the others: by steps that double.
    let mut rest = group.count - 1;
    let mut step = 1;
    while rest > 0 {
        let now = if step < rest { step } else { rest };
        spare.clear();
        spare.extend_from_slice(&some);
        relax(&mut some, spare, now * group.size, now as u32 * price.bottle);
        rest -= now;
        step *= 2;
    }
    relax(&mut some, before, 0, 0);
    some
}

/// Chooses bottles for a volume of drink (m3).
///
/// The default leaves the least over, then takes the fewest bottles, then the fewest sizes. Where something else comes
/// first, at most what would not fill one more of the smallest bottles is left over, if the bottles allow that.
///
/// # Errors
/// Where all bottles together hold less than the drink.
pub fn fill(volume: f64, kinds: &[Kind], order: FillOrder) -> Result<Filling, Error> {
    let held: f64 = kinds.iter().map(|kind| kind.content * f64::from(kind.count)).sum();
    if held < volume * (1.0 - 1e-12) {
        return Err(Error::BottlesShort { packaged: volume, held });
    }
    let filled = match order {
        FillOrder::AsListed => as_listed(volume, kinds),
        _ => best(volume, kinds, order),
    };
    let used: f64 = kinds.iter().zip(&filled).map(|(kind, &x)| kind.content * f64::from(x)).sum();
    let leftover = volume - used;
    Ok(Filling { filled, leftover: if leftover > 0.0 { leftover } else { 0.0 } })
}

fn as_listed(volume: f64, kinds: &[Kind]) -> Vec<u32> {
    let mut left = volume * (1.0 + 1e-12);
    let take = |kind: &Kind| {
        let fit = (left / kind.content) as u32;
        let x = if fit < kind.count { fit } else { kind.count };
        left -= f64::from(x) * kind.content;
        x
    };
    kinds.iter().map(take).collect()
}

fn best(volume: f64, kinds: &[Kind], order: FillOrder) -> Vec<u32> {
    let mut step = if volume > SMALL_BATCH { 10.0 * FINEST } else { FINEST };
    let (mut groups, mut cells);
    loop {
        groups = self::groups(kinds, step);
        let unit = groups.iter().fold(0, |unit, group| common(unit, group.size)).max(1);
        cells = ((volume / step + 1e-6) as usize) / unit;
        for group in &mut groups {
            group.size /= unit;
            group.count = group.count.min(cells / group.size);
        }
        if (groups.len() + 1).saturating_mul(cells + 1) <= MOST_CELLS {
            break;
        }
        step *= 10.0;
    }
    groups.retain(|group| group.count > 0);
    let price = Price::of(order);
    let mut tables = vec![vec![NONE; cells + 1]];
    tables[0][0] = 0;
    let mut spare = Vec::new();
    for group in &groups {
        let next = tables.last().map(|before| with_size(before, group, price, &mut spare)).unwrap_or_default();
        tables.push(next);
    }
    let last = tables.last().map(Vec::as_slice).unwrap_or_default();
    let mut v = choose(last, &groups, order);
    let mut filled = vec![0; kinds.len()];
    for (at, group) in groups.iter().enumerate().rev() {
        let (before, now) = (&tables[at], tables[at + 1][v]);
        let way = |x: &usize| x * group.size <= v && before[v - x * group.size] + price.some(*x as u32) == now;
        let mut x = (0..=group.count).find(way).unwrap_or_default();
        v -= x * group.size;
        for &kind in &group.kinds {
            let here = x.min(kinds[kind].count as usize);
            filled[kind] = here as u32;
            x -= here;
        }
    }
    filled
}

/// The volume to fill, in cells.
fn choose(ways: &[u32], groups: &[Group], order: FillOrder) -> usize {
    let fullest = ways.iter().rposition(|&way| way < NONE).unwrap_or_default();
    let smallest = groups.iter().map(|group| group.size).min().unwrap_or(1);
    let least = ways.len().saturating_sub(smallest);
    if order == FillOrder::LeastLeftover || fullest < least {
        return fullest;
    }
    // What comes first decides; of equals the fullest, and then what settles ties.
    let first = |way: u32| match order {
        FillOrder::FewestSizes => way >> SIZES_FIRST,
        _ => way >> TIES,
    };
    (least..ways.len()).rev().filter(|&v| ways[v] < NONE).min_by_key(|&v| first(ways[v])).unwrap_or(fullest)
}

/// Bottles to wash beyond those to fill: a share of them (percent), rounded up.
pub fn spares(filled: u32, percent: f64) -> u32 {
    let exact = f64::from(filled) * percent / 100.0;
    let whole = exact as u32;
    // A share that is whole but for rounding is whole.
    if exact - f64::from(whole) > 1e-9 { whole + 1 } else { whole }
}
