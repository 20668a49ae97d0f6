//! Which bottles to fill, and how many: the exact optimum over the bottles at hand.
//!
//! Contents are counted in tenths of a millilitre, coarser only for more than 100 L or dozens of odd sizes. For every
//! volume that some bottles hold exactly, one table per size keeps the cheapest way to it; the best volume is chosen at
//! the end, and the way to it is read back from the tables. Volumes from which the sizes behind cannot fill the batch are
//! left out.

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
    let smallest = groups.iter().map(|group| group.size).min().unwrap_or(1);
    let least = (cells + 1).saturating_sub(smallest);
    let mut tables = self::tables(&groups, price, least, cells);
    if tables.last().is_none_or(|ways| ways.costs.iter().all(|&way| way >= NONE)) {
        // No bottles come so near: then whatever comes nearest.
        tables = self::tables(&groups, price, 0, cells);
    }
    let Some(mut v) = tables.last().and_then(|ways| choose(ways, least, order)) else { return vec![0; kinds.len()] };
    let mut filled = vec![0; kinds.len()];
    for (at, group) in groups.iter().enumerate().rev() {
        let (before, now) = (&tables[at], tables[at + 1].to(v));
        let way = |x: &usize| x * group.size <= v && before.to(v - x * group.size) + price.some(*x as u32) == now;
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
