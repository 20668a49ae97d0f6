//! The root of an increasing or decreasing function, for the cases without a closed form.

/// The `x` between `lo` and `hi` at which `f` changes sign.
///
/// `f` must be increasing or decreasing. The bracket is shrunk until its ends are at most four doubles apart, and
/// the end with the smaller residual is returned. `None` if `lo` or `hi` is not finite, `lo > hi`, `f` has the same
/// sign at both ends, or `f` gives NaN anywhere it is asked.
///
/// Cost: about 10 evaluations of a smooth function in a bracket from a third of the root to three times the root, about
/// 13 from a thirtieth to thirty times, and never more than 102, because a bracket holds fewer than 2^64 doubles, and
/// every step that fails to halve their number is drawn from a fixed allowance.
pub fn bracketed(lo: f64, hi: f64, mut f: impl FnMut(f64) -> f64) -> Option<f64> {
    if !(lo.is_finite() && hi.is_finite() && lo <= hi) {
        return None;
    }
    let mut a = End::at(lo, f(lo))?;
    let mut b = End::at(hi, f(hi))?;
    if a.residual == 0.0 {
        return Some(lo);
    }
    if b.residual == 0.0 {
        return Some(hi);
    }
    if (a.residual > 0.0) == (b.residual > 0.0) {
        return None;
    }

    let mut allowance = SLOW_STEPS;
    let mut bisect = false;
    let mut last_moved_a = None;
    loop {
        let width = a.rank.abs_diff(b.rank);
        if width <= 2 * NUDGE.unsigned_abs() {
            return Some(if a.residual.abs() <= b.residual.abs() { a.x } else { b.x });
        }

        let rank = if bisect { i64::midpoint(a.rank, b.rank) } else { secant_rank(&a, &b) };
        let x = unrank(rank);
        let new = End::at(x, f(x))?;
        if new.residual == 0.0 {
            return Some(x);
        }

        let moved_a = (new.residual > 0.0) == (a.residual > 0.0);
        let (moved, kept) = if moved_a { (&mut a, &mut b) } else { (&mut b, &mut a) };
        // An end that stays twice has its weight cut, more so the less the residual fell, lest the secants creep up
        // on the root from one side only (Anderson and Bjorck 1973).
        if last_moved_a == Some(moved_a) {
            let cut = 1.0 - new.residual / moved.residual;
            kept.weight *= if cut > 0.0 && cut < 1.0 { cut } else { 0.5 };
        }
        last_moved_a = Some(moved_a);
        let little_gained = new.residual.abs() > 0.25 * moved.residual.abs();
        *moved = new;

        // Closing in from one side leaves the bracket wide, and is welcome as long as the residual falls fast.
        let slow = a.rank.abs_diff(b.rank) > width / 2 + 1;
        if slow {
            allowance -= 1;
        }
        bisect = allowance == 0 || (slow && little_gained);
    }
}

// Interpolation keeps this many doubles away from either end: once a secant is as good as exact, the next one lands
// just beyond the root, and the bracket closes.
const NUDGE: i64 = 2;

// How many steps may fail to halve the bracket before only bisection is left.
const SLOW_STEPS: u32 = 36;

struct End {
    x: f64,
    rank: i64,
    residual: f64,
    weight: f64,
}

impl End {
    fn at(x: f64, residual: f64) -> Option<Self> {
        (!residual.is_nan()).then_some(Self { x, rank: rank(x), residual, weight: 1.0 })
    }
}

fn secant_rank(a: &End, b: &End) -> i64 {
    let (ya, yb) = (a.weight * a.residual, b.weight * b.residual);
    // From the end that is nearer the root, for the smaller rounding.
    let x = if ya.abs() < yb.abs() { a.x - ya / (yb - ya) * (b.x - a.x) } else { b.x - yb / (yb - ya) * (b.x - a.x) };
    if x.is_finite() { rank(x).clamp(a.rank + NUDGE, b.rank - NUDGE) } else { i64::midpoint(a.rank, b.rank) }
}

// The place of a finite double in the order of all doubles. Halving a bracket of ranks, unlike one of values, finds a
// root of any magnitude within 64 steps.
fn rank(x: f64) -> i64 {
    let bits = x.to_bits().cast_signed();
    if bits >= 0 { bits } else { i64::MIN - bits }
}

fn unrank(rank: i64) -> f64 {
    let bits = if rank >= 0 { rank } else { i64::MIN - rank };
    f64::from_bits(bits.cast_unsigned())
}
