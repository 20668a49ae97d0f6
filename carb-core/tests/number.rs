//! `carb_core::number` against 50-digit values, IEEE special cases, itself at every vector width, and its own
//! recorded bits.

use carb_core::number::root::bracketed;
use carb_core::number::{exp, exp_within, ln, pow};
use proptest::prelude::*;

const EXP: &str = include_str!("../checks/high_precision/exp.csv");
const LN: &str = include_str!("../checks/high_precision/ln.csv");

struct Point {
    x: f64,
    hi: f64,
    lo: f64,
}

fn points(csv: &str) -> impl Iterator<Item = Point> + '_ {
    let double = |text: &str| f64::from_bits(u64::from_str_radix(text, 16).unwrap());
    csv.lines().filter(|line| !line.starts_with('#')).skip(1).map(move |line| {
        let cells: Vec<_> = line.split(',').collect();
        assert_eq!(cells[1].parse::<f64>().unwrap().to_bits(), double(cells[0]).to_bits());
        Point { x: double(cells[0]), hi: double(cells[3]), lo: double(cells[4]) }
    })
}

fn ulp(y: f64) -> f64 {
    y.abs().next_up() - y.abs()
}

/// The error of `got` in units in the last place, to a small fraction of a unit.
fn error(got: f64, point: &Point) -> f64 {
    (((got - point.hi) - point.lo) / ulp(point.hi)).abs()
}

#[test]
fn exp_is_within_its_stated_error() {
    let (mut inside, mut outside, mut subnormal, mut count) = (0.0_f64, 0.0_f64, 0.0_f64, 0);
    for point in points(EXP) {
        let error = error(exp(point.x), &point);
        let worst = match (point.x.abs() <= 30.0, point.hi.is_normal()) {
            (true, _) => &mut inside,
            (false, true) => &mut outside,
            (false, false) => &mut subnormal,
        };
        *worst = worst.max(error);
        count += 1;
    }
    println!("exp: {count} points; ulp on [-30, 30] {inside:.4}, beyond {outside:.4}, subnormal {subnormal:.4}");
    assert!(count > 2000);
    assert!(inside <= 0.75 && outside <= 0.75 && subnormal <= 1.0);
}

#[test]
fn ln_is_within_its_stated_error() {
    let (mut inside, mut outside, mut count) = (0.0_f64, 0.0_f64, 0);
    for point in points(LN) {
        let error = error(ln(point.x), &point);
        let worst = if point.hi.abs() <= 30.0 { &mut inside } else { &mut outside };
        *worst = worst.max(error);
        count += 1;
    }
    println!("ln: {count} points; ulp for values on [-30, 30] {inside:.4}, beyond {outside:.4}");
    assert!(count > 2000);
    assert!(inside <= 0.95 && outside <= 0.95);
}

#[test]
fn special_values() {
    let same = |got: f64, want: f64| assert_eq!(got.to_bits(), want.to_bits(), "{got} {want}");
    same(exp(0.0), 1.0);
    same(exp(-0.0), 1.0);
    same(exp(f64::INFINITY), f64::INFINITY);
    same(exp(f64::NEG_INFINITY), 0.0);
    same(exp(f64::MAX), f64::INFINITY);
    same(exp(f64::MIN), 0.0);
    same(exp(f64::MIN_POSITIVE), 1.0);
    // The last finite result and the last that is not zero.
    assert!(exp(709.782712893384).is_finite());
    same(exp(709.782712893384_f64.next_up()), f64::INFINITY);
    same(exp(-745.1332191019411), f64::from_bits(1));
    same(exp((-745.1332191019412_f64).next_down()), 0.0);
    assert!(exp(f64::NAN).is_nan());

    same(ln(1.0), 0.0);
    same(ln(0.0), f64::NEG_INFINITY);
    same(ln(-0.0), f64::NEG_INFINITY);
    same(ln(f64::INFINITY), f64::INFINITY);
    same(ln(2.0), core::f64::consts::LN_2);
    for x in [-f64::from_bits(1), -1.0, f64::MIN, f64::NEG_INFINITY, f64::NAN, -f64::NAN] {
        assert!(ln(x).is_nan(), "{x}");
    }

    same(pow(1.0, 5.0), 1.0);
    same(pow(3.0, 0.0), 1.0);
    same(pow(0.0, 2.0), 0.0);
    same(pow(0.0, -2.0), f64::INFINITY);
    assert!(pow(-2.0, 2.0).is_nan());
    assert!(pow(0.0, 0.0).is_nan());
}

/// Numbers from 0 to 1 that are the same in every run.
struct Uniform(u64);

impl Uniform {
    fn next(&mut self, lo: f64, hi: f64) -> f64 {
        // SplitMix64.
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^= z >> 31;
        lo + (hi - lo) * ((z >> 11) as f64 / (1_u64 << 53) as f64)
    }
}

fn assert_never_decreasing(f: impl Fn(f64) -> f64, start: f64) {
    let (mut x, mut y) = (start, f(start));
    for _ in 0..500 {
        let (next_x, next_y) = (x.next_up(), f(x.next_up()));
        assert!(next_y >= y, "at {x:e}: {y:e} then {next_y:e}");
        (x, y) = (next_x, next_y);
    }
}

#[test]
fn neighbouring_arguments_keep_their_order() {
    let mut uniform = Uniform(1);
    for _ in 0..2000 {
        assert_never_decreasing(exp, uniform.next(-2.0, 2.0));
        assert_never_decreasing(exp, uniform.next(-30.0, 30.0));
        assert_never_decreasing(exp, uniform.next(-745.0, 709.0));
        assert_never_decreasing(ln, uniform.next(0.5, 2.0));
        assert_never_decreasing(ln, exp(uniform.next(-30.0, 30.0)));
        assert_never_decreasing(ln, exp(uniform.next(-745.0, 709.0)));
    }
    // Across the seams of the two reductions.
    for k in -1000..1000 {
        let seam = (f64::from(k) + 0.5) * core::f64::consts::LN_2;
        assert_never_decreasing(exp, (0..250).fold(seam, |x, _| x.next_down()));
        let seam = power_of_two(k) * core::f64::consts::FRAC_1_SQRT_2;
        assert_never_decreasing(ln, (0..250).fold(seam, |x, _| x.next_down()));
        assert_never_decreasing(ln, (0..250).fold(power_of_two(k), |x, _| x.next_down()));
    }
}

fn power_of_two(k: i32) -> f64 {
    f64::from_bits(((1023 + k) as u64) << 52)
}

// One loop at several x86 levels; a machine that lacks a level runs the plain loop again.
macro_rules! slice_loops {
    ($($name:ident: $targets:meta;)*) => {$(
        #[$targets]
        fn $name(x: &[f64], e: &mut [f64], l: &mut [f64], p: &mut [f64]) {
            for (out, &x) in e.iter_mut().zip(x) {
                *out = exp(x);
            }
            for (out, &x) in l.iter_mut().zip(x) {
                *out = ln(x);
            }
            for (out, &x) in p.iter_mut().zip(x) {
                *out = pow(x, 0.3);
            }
        }
    )*};
}

slice_loops! {
    plain: inline(never);
    best: multiversion::multiversion(targets("x86_64+avx512f+avx512dq+avx512vl", "x86_64+avx2+fma", "aarch64+neon"));
    avx2: multiversion::multiversion(targets("x86_64+avx2+fma"));
    avx: multiversion::multiversion(targets("x86_64+avx"));
}

#[test]
fn a_slice_gives_the_bits_of_a_scalar() {
    let mut uniform = Uniform(2);
    let mut x: Vec<f64> = (0..100_003).map(|_| uniform.next(-800.0, 800.0)).collect();
    x.extend((0..100_000).map(|_| exp(uniform.next(-745.0, 710.0))));
    x.extend([0.0, -0.0, 1.0, -1.0, f64::INFINITY, f64::NEG_INFINITY, f64::NAN, f64::MAX, f64::from_bits(1)]);
    let canonical = |y: f64| if y.is_nan() { 0x7ff8 << 48 } else { y.to_bits() };
    for slice_loop in [plain, best, avx2, avx] {
        let (mut e, mut l, mut p) = (vec![0.0; x.len()], vec![0.0; x.len()], vec![0.0; x.len()]);
        slice_loop(&x, &mut e, &mut l, &mut p);
        for (i, &x) in x.iter().enumerate() {
            let x = std::hint::black_box(x);
            assert_eq!(canonical(e[i]), canonical(exp(x)), "exp({x:e})");
            assert_eq!(canonical(l[i]), canonical(ln(x)), "ln({x:e})");
            assert_eq!(canonical(p[i]), canonical(pow(x, 0.3)), "pow({x:e}, 0.3)");
        }
    }
}

/// Regression: the same bits on every machine. A change of one last bit anywhere changes these constants, and with
/// them the last bits of every result of the crate.
#[test]
fn the_same_bits_on_every_machine() {
    let hash = |h: u64, y: f64| (h ^ y.to_bits()).wrapping_mul(0x0000_0100_0000_01b3).rotate_left(29);
    let (mut of_exp, mut of_ln) = (0xcbf2_9ce4_8422_2325, 0xcbf2_9ce4_8422_2325);
    let mut uniform = Uniform(3);
    for i in 0..1_000_000 {
        let reach = if i % 4 == 0 { 745.0 } else { 30.0 };
        let x = uniform.next(-reach, reach);
        of_exp = hash(of_exp, exp(x));
        of_ln = hash(of_ln, ln(exp(x)));
    }
    println!("{of_exp:#018x} {of_ln:#018x}");
    assert_eq!((of_exp, of_ln), (0xf5ce_b211_b70d_a927, 0x1f85_e7fa_56b8_4cfa));
}

#[test]
fn ln_undoes_exp() {
    let mut uniform = Uniform(4);
    for _ in 0..1_000_000 {
        // exp turns the absolute error of its argument, 0.95 ulp(y), into a relative one, and adds its own of
        // 0.75 * 2^-52; the quotient rounds once more.
        let x = exp(uniform.next(-30.0, 30.0));
        let y = ln(x);
        assert!((exp(y) / x - 1.0).abs() <= 0.95 * ulp(y) + 2.8e-16, "{x:e}");
        // ln turns the relative error of its argument, 0.75 * 2^-52, into an absolute one, and adds its own.
        let t = uniform.next(-700.0, 700.0);
        assert!((ln(exp(t)) - t).abs() <= 1.7e-16 + 0.95 * ulp(t), "{t:e}");
    }
}

#[test]
fn pow_is_within_its_stated_error() {
    let mut uniform = Uniform(5);
    for _ in 0..100_000 {
        // Against multiplication and the square root, which are exactly rounded; the quotient rounds once more.
        let x = exp(uniform.next(-30.0, 30.0));
        let reference = x * x * x;
        let bound = 2.4e-16 + 3.6e-16 * (3.0 * ln(x)).abs() + 3.5e-16;
        assert!((pow(x, 3.0) / reference - 1.0).abs() <= bound, "{x:e}");
        let reference = x.sqrt();
        let bound = 2.4e-16 + 3.6e-16 * (0.5 * ln(x)).abs() + 2.3e-16;
        assert!((pow(x, 0.5) / reference - 1.0).abs() <= bound, "{x:e}");
    }
}

/// The root of `f` and the number of evaluations it took.
fn counted(lo: f64, hi: f64, mut f: impl FnMut(f64) -> f64) -> (Option<f64>, u32) {
    let mut count = 0;
    let root = bracketed(lo, hi, |x| {
        count += 1;
        f(x)
    });
    (root, count)
}

/// Within four doubles of `root`, `f` changes sign.
fn is_root(root: f64, mut f: impl FnMut(f64) -> f64) -> bool {
    let below = (0..4).fold(root, |x, _| x.next_down());
    let above = (0..4).fold(root, |x, _| x.next_up());
    f(root) == 0.0 || (f(below) > 0.0) != (f(above) > 0.0) || f(below) == 0.0 || f(above) == 0.0
}

/// Mean and greatest number of evaluations for smooth functions, the bracket from `root / wide` to `root * wide`.
fn evaluations(wide: f64) -> (f64, u32) {
    const TRIALS: u32 = 10_000;
    let mut uniform = Uniform(6);
    let (mut total, mut most) = (0, 0);
    for trial in 0..TRIALS {
        let (root, slope, curve) = (uniform.next(0.1, 40.0), uniform.next(0.1, 5.0), uniform.next(0.0, 1.0));
        let (lo, hi) = (root / uniform.next(1.0, wide), root * uniform.next(1.0, wide));
        let f = |x: f64| match trial % 4 {
            0 => slope * (x - root) + curve * (x * x * x - root * root * root),
            1 => exp(-slope * x / root) - exp(-slope),
            2 => ln(x / root) + 0.01 * curve * (x - root),
            _ => (root * root + 1.0) / (x * x + 1.0) - 1.0,
        };
        let (found, count) = counted(lo, hi, f);
        assert!((found.unwrap() / root - 1.0).abs() < 1e-11, "{root} {found:?}");
        total += count;
        most = most.max(count);
    }
    (f64::from(total) / f64::from(TRIALS), most)
}

#[test]
fn smooth_functions_take_few_evaluations() {
    for (wide, mean_limit, limit) in [(3.0, 12.0, 20), (30.0, 16.0, 30)] {
        let (mean, most) = evaluations(wide);
        println!("root finder, bracket root / {wide} to root * {wide}: {mean:.1} evaluations, at most {most}");
        assert!(mean <= mean_limit && most <= limit);
    }
}

#[test]
fn hostile_functions_stay_within_the_bound() {
    let mut most = 0;
    let mut uniform = Uniform(7);
    for _ in 0..2000 {
        let root = uniform.next(-1.0, 1.0) * exp(uniform.next(-700.0, 700.0));
        let steep = exp(uniform.next(-600.0, 600.0));
        let functions: [&dyn Fn(f64) -> f64; 6] = [
            &|x| if x < root { -1.0 } else { 1.0 },
            &|x| if x < root { -1e-300 } else { f64::MAX },
            &|x| if x < root { f64::INFINITY } else { f64::NEG_INFINITY },
            &|x| if x < root { -steep } else { x - root },
            &|x| (x - root) * (x - root) * (x - root),
            &|x| exp(x.clamp(-1e4, 1e4)) - exp(root.clamp(-1e4, 1e4)),
        ];
        for (i, f) in functions.iter().enumerate() {
            let (found, count) = counted(-f64::MAX, f64::MAX, f);
            if i < 4 {
                assert!(is_root(found.unwrap(), f), "{i} {root:e} {found:?}");
            }
            most = most.max(count);
        }
    }
    // An adversary who keeps the larger part every time.
    for (lo, hi) in [(-f64::MAX, f64::MAX), (0.0, 1.0), (1.0, 2.0), (-1.0, 1e-300)] {
        for size in [1.0, 1e-200, f64::MAX] {
            let (mut a, mut b) = (lo, hi);
            let (_, count) = counted(lo, hi, |x| {
                let keep_upper = order(x).abs_diff(order(a)) < order(b).abs_diff(order(x));
                if x == lo || (x != hi && keep_upper) {
                    a = x;
                    -size
                } else {
                    b = x;
                    1.0
                }
            });
            most = most.max(count);
        }
    }
    println!("root finder, hostile functions: at most {most} evaluations");
    assert!(most <= 102);
}

fn order(x: f64) -> i128 {
    let magnitude = i128::from(x.abs().to_bits());
    if x < 0.0 { -magnitude } else { magnitude }
}

#[test]
fn what_has_no_root_gives_none() {
    let (nan, inf) = (f64::NAN, f64::INFINITY);
    for (lo, hi) in [(nan, 1.0), (0.0, nan), (1.0, 0.0), (-inf, 1.0), (0.0, inf), (-inf, inf), (inf, inf)] {
        assert_eq!(bracketed(lo, hi, |x| x - 0.5), None, "{lo} {hi}");
    }
    assert_eq!(bracketed(0.0, 1.0, |x| x + 1.0), None);
    assert_eq!(bracketed(0.0, 1.0, |x| -x - 1.0), None);
    assert_eq!(bracketed(1.0, 1.0, |x| x), None);
    assert_eq!(bracketed(0.0, 1.0, |_| nan), None);
    assert_eq!(bracketed(0.0, 1.0, |x| if x > 0.3 && x < 0.7 { nan } else { x - 0.5 }), None);
    // A root at an end is a root.
    assert_eq!(bracketed(1.0, 1.0, |x| x - 1.0), Some(1.0));
    assert_eq!(bracketed(0.0, 1.0, |x| x), Some(0.0));
    assert_eq!(bracketed(0.0, 1.0, |x| x - 1.0), Some(1.0));
    assert_eq!(bracketed(-1.0, 1.0, |x| x), Some(0.0));
}

proptest! {
    #[test]
    fn cubics(
        root in -100.0..100.0_f64,
        a in 0.0..10.0_f64,
        b in 1e-3..10.0_f64,
        down in any::<bool>(),
        below in 1e-6..1e3_f64,
        above in 1e-6..1e3_f64,
    ) {
        let sign = if down { -1.0 } else { 1.0 };
        let f = |x: f64| {
            let d = x - root;
            sign * d * (b + a * d * d)
        };
        let (found, count) = counted(root - below, root + above, f);
        let found = found.unwrap();
        prop_assert!(is_root(found, f), "{found}");
        prop_assert!(count <= 60, "{count}");
    }

    #[test]
    fn any_bounds_and_any_values(
        lo in any::<f64>(),
        hi in any::<f64>(),
        values in prop::collection::vec(any::<f64>(), 1..120),
    ) {
        let mut next = values.iter().cycle();
        let (found, count) = counted(lo, hi, |_| *next.next().unwrap());
        prop_assert!(count <= 102);
        if let Some(x) = found {
            prop_assert!(lo <= x && x <= hi);
        }
    }

    #[test]
    fn any_argument(x in any::<f64>(), y in any::<f64>()) {
        prop_assert_eq!(exp(x).is_nan(), x.is_nan());
        prop_assert_eq!(ln(x).is_nan(), x.is_nan() || x < 0.0);
        prop_assert!(exp(x) >= 0.0 || x.is_nan());
        pow(x, y);
    }
}

#[test]
fn exp_within_is_exp_where_it_is_meant_for() {
    let mut x = -700.0;
    while x <= 700.0 {
        assert_eq!(exp_within(x).to_bits(), exp(x).to_bits(), "{x}");
        x += 0.003_7;
    }
    for x in [0.0, -0.0, 1e-300, f64::MIN_POSITIVE, 700.0, -700.0] {
        assert_eq!(exp_within(x).to_bits(), exp(x).to_bits(), "{x}");
    }
    assert!(exp_within(f64::NAN).is_nan());
}
