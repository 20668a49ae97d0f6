//! Which bottles to fill, and how many: the exact optimum over the bottles at hand.
//!
//! Contents are counted in the largest unit that measures them all, such as 5 mL or 2 fluid ounces; where there is none, in
//! tenths of a millilitre, rounded up so that no more is filled than there is. For every volume that some bottles hold
//! exactly, one table per size keeps the cheapest way to it; the best volume is chosen at the end, and the way to it is read
//! back from the tables. Volumes from which the sizes behind cannot fill the batch are left out. Of more than some thousand
//! bottles the bulk goes into the largest, and the rest is chosen.

use crate::basis::FillOrder;
use crate::basis::lists::BOTTLES;
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

/// Step in which contents are counted that no larger unit measures, m3.
const FINEST: f64 = 1.0e-7;
/// What rounding may take from a unit that measures all contents.
const ROUNDING: f64 = 1.0e-6;
/// Most cells of all tables together, and of one.
const MOST_CELLS: usize = 24_000_000;
const MOST_OF_ONE: usize = 4_000_000;
/// Most different sizes.
const MOST_SIZES: usize = 100;
/// No way leads there.
const NONE: u32 = u32::MAX / 2;
/// Bits of a cost that count what settles ties: 100 sizes behind 4 million bottles, or the other way round.
const TIES: u32 = 7;
const SIZES_FIRST: u32 = 24;

/// Kinds of one content, put together.
struct Group {
    size: usize,
    count: usize,
    kinds: Vec<usize>,
}

/// The largest content that measures both, or what is left of it where it becomes too small to count in.
fn measure(a: f64, b: f64) -> f64 {
    let (mut a, mut b) = if a < b { (b, a) } else { (a, b) };
    while b > 0.5 * FINEST {
        let whole = (a / b + ROUNDING) as u64 as f64;
        let rest = a - whole * b;
        (a, b) = (b, if rest > ROUNDING * b { rest } else { 0.0 });
    }
    a
}

/// The unit in which contents are counted, m3.
fn unit_of(kinds: &[Kind]) -> f64 {
    let used = || kinds.iter().filter(|kind| kind.count > 0 && kind.content > 0.0).map(|kind| kind.content);
    let unit = used().fold(0.0, |unit: f64, content| if unit > 0.0 { measure(unit, content) } else { content });
    if unit < 1.001 * FINEST {
        return FINEST;
    }
    // The largest content tells the unit best.
    let largest = used().fold(0.0, f64::max);
    largest / ((largest / unit + 0.5) as u64 as f64)
}

fn groups(kinds: &[Kind], unit: f64) -> Vec<Group> {
    let mut all: Vec<Group> = Vec::new();
    for (at, kind) in kinds.iter().enumerate() {
        let exact = kind.content / unit;
        let near = (exact + 0.5) as usize;
        let measured = (exact - near as f64).abs() < 10.0 * ROUNDING * exact;
        // Rounded up, so that no more is filled than there is.
        let size = if measured { near } else { exact as usize + 1 };
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

/// The cheapest ways to the volumes from `from` on, by their cells.
struct Ways {
    from: usize,
    costs: Vec<u32>,
}

impl Ways {
    fn end(&self) -> usize {
        self.from + self.costs.len()
    }

    fn to(&self, v: usize) -> u32 {
        v.checked_sub(self.from).and_then(|at| self.costs.get(at)).copied().unwrap_or(NONE)
    }

    /// Each way becomes the cheaper of itself and of another's by `shift` less, which costs `price` more.
    fn relax(&mut self, other: &Ways, shift: usize, price: u32) {
        let start = (other.from + shift).max(self.from);
        let end = (other.end() + shift).min(self.end());
        if start < end {
            let mine = &mut self.costs[start - self.from..end - self.from];
            let theirs = &other.costs[start - shift - other.from..end - shift - other.from];
            for (to, from) in mine.iter_mut().zip(theirs) {
                let way = from + price;
                *to = if way < *to { way } else { *to };
            }
        }
    }

    /// The ways with any number of a size's bottles from none to all: those that end within `window`.
    fn with_size(&self, group: &Group, price: Price, window: (usize, usize)) -> Ways {
        let end = window.1.min(self.end() + group.size * group.count);
        let mut some = Ways { from: self.from, costs: vec![NONE; end.saturating_sub(self.from)] };
        some.relax(self, group.size, price.some(1));
        // Any number of the others: by steps that double.
        let mut before = Ways { from: self.from, costs: Vec::new() };
        let (mut rest, mut step) = (group.count - 1, 1);
        while rest > 0 {
            let now = if step < rest { step } else { rest };
            before.costs.clear();
            before.costs.extend_from_slice(&some.costs);
            some.relax(&before, now * group.size, now as u32 * price.bottle);
            rest -= now;
            step *= 2;
        }
        some.relax(self, 0, 0);
        let start = window.0.clamp(some.from, some.end());
        some.costs.drain(..start - some.from);
        Ways { from: start, costs: some.costs }
    }
}

/// A table for each size: the ways with it and those before it. Only what the sizes behind it can still bring to `least`
/// cells is kept.
fn tables(groups: &[Group], price: Price, least: usize, cells: usize) -> Vec<Ways> {
    let mut behind: usize = groups.iter().map(|group| group.size * group.count).sum();
    let mut tables = vec![Ways { from: 0, costs: vec![0] }];
    for group in groups {
        behind -= group.size * group.count;
        let window = (least.saturating_sub(behind), cells + 1);
        let next = tables.last().map(|before| before.with_size(group, price, window));
        tables.extend(next);
    }
    tables
}

/// Chooses bottles for a volume of drink (m3).
///
/// The default leaves the least over, then takes the fewest bottles, then the fewest sizes. Where something else comes
/// first, at most what would not fill one more of the smallest bottles is left over, if the bottles allow that.
///
/// # Errors
/// Where all bottles together hold less than the drink, or there are more than a hundred sizes.
pub fn fill(volume: f64, kinds: &[Kind], order: FillOrder) -> Result<Filling, Error> {
    let held: f64 = kinds.iter().map(|kind| kind.content * f64::from(kind.count)).sum();
    if held < volume * (1.0 - 1e-12) {
        return Err(Error::BottlesShort { packaged: volume, held });
    }
    let filled = match order {
        FillOrder::AsListed => as_listed(volume, kinds),
        _ => best(volume, kinds, order)?,
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

/// Gives a group's bottles to its kinds, in their order.
fn give(filled: &mut [u32], kinds: &[Kind], group: &Group, mut x: usize) {
    for &kind in &group.kinds {
        let room = (kinds[kind].count - filled[kind]) as usize;
        let here = x.min(room);
        filled[kind] += here as u32;
        x -= here;
    }
}

fn best(volume: f64, kinds: &[Kind], order: FillOrder) -> Result<Vec<u32>, Error> {
    let unit = unit_of(kinds);
    let mut groups = groups(kinds, unit);
    if groups.len() > MOST_SIZES {
        return Err(Error::TooManyRows { list: BOTTLES.name, most: MOST_SIZES });
    }
    let mut filled = vec![0; kinds.len()];
    let count = |volume: f64| (volume / unit * (1.0 + 1e-12) + ROUNDING) as usize;
    // The bulk of very many bottles goes into the largest.
    let most = MOST_OF_ONE.min(MOST_CELLS / (groups.len() + 1));
    let mut left = volume;
    if count(left) > most {
        groups.sort_by_key(|group| core::cmp::Reverse(group.size));
        for group in &mut groups {
            let content = group.kinds.first().map_or(unit, |&kind| kinds[kind].content);
            let bulk = left - 0.5 * most as f64 * unit;
            let x = group.count.min((bulk / content) as usize);
            give(&mut filled, kinds, group, x);
            group.count -= x;
            left -= x as f64 * content;
        }
    }
    let cells = count(left).min(most);
    for group in &mut groups {
        group.count = group.count.min(cells / group.size);
    }
    groups.retain(|group| group.count > 0);
    let price = Price::of(order);
    let smallest = groups.iter().map(|group| group.size).min().unwrap_or(1);
    let least = (cells + 1).saturating_sub(smallest);
    let mut tables = self::tables(&groups, price, least, cells);
    if tables.last().is_none_or(|ways| ways.costs.iter().all(|&way| way >= NONE)) {
        // No bottles come so near: then whatever comes nearest.
        tables = self::tables(&groups, price, 0, cells);
    }
    let Some(mut v) = tables.last().and_then(|ways| choose(ways, least, order)) else { return Ok(filled) };
    for (at, group) in groups.iter().enumerate().rev() {
        let (before, now) = (&tables[at], tables[at + 1].to(v));
        let way = |x: &usize| x * group.size <= v && before.to(v - x * group.size) + price.some(*x as u32) == now;
        let x = (0..=group.count).find(way).unwrap_or_default();
        v -= x * group.size;
        give(&mut filled, kinds, group, x);
    }
    Ok(filled)
}

/// The volume to fill, in cells: of those from `least` on, if there are any, else the most that there is.
fn choose(ways: &Ways, least: usize, order: FillOrder) -> Option<usize> {
    let mut reached = (ways.from..ways.end()).rev().filter(|&v| ways.to(v) < NONE);
    let fullest = reached.next()?;
    if order == FillOrder::LeastLeftover || fullest < least {
        return Some(fullest);
    }
    // What comes first decides; of equals the fullest, and then what settles ties.
    let first = |v: &usize| match order {
        FillOrder::FewestSizes => ways.to(*v) >> SIZES_FIRST,
        _ => ways.to(*v) >> TIES,
    };
    core::iter::once(fullest).chain(reached).take_while(|v| *v >= least).min_by_key(first)
}

/// Bottles to wash beyond those to fill: a share of them (percent), rounded up.
pub fn spares(filled: u32, percent: f64) -> u32 {
    let exact = f64::from(filled) * percent / 100.0;
    let whole = exact as u32;
    // A share that is whole but for rounding is whole.
    if exact - f64::from(whole) > 1e-9 { whole + 1 } else { whole }
}
