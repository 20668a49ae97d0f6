"""Write ../high_precision/exp.csv and ln.csv: exp and ln of about 2000 doubles each, computed to 50 digits by mpmath.

Run from anywhere: python3 exp_ln.py
"""

import math
import random
import struct
from pathlib import Path

import mpmath

mpmath.mp.dps = 50
FOLDER = Path(__file__).resolve().parent.parent / "high_precision"


def bits(x):
    return struct.pack(">d", x).hex()


def split(value):
    """The nearest double and the remainder as a double."""
    hi = float(value)
    return hi, float(value - mpmath.mpf(hi))


def neighbours(x, count):
    """x and the `count` doubles on each side of it."""
    out = [x]
    down = up = x
    for _ in range(count):
        down, up = math.nextafter(down, -math.inf), math.nextafter(up, math.inf)
        out += [down, up]
    return out


def exp_arguments(rng):
    xs = [rng.uniform(-30, 30) for _ in range(800)]
    xs += [rng.uniform(-2, 2) for _ in range(400)]
    xs += [rng.uniform(-745, 709) for _ in range(400)]
    xs += [s * 2.0**-e for e in range(1, 61) for s in (-1, 1)]
    # Where the reduction passes from one power of two to the next.
    for k in range(-43, 43):
        xs += neighbours((k + 0.5) * math.log(2), 1)
    for x in (0.0, 1.0, -1.0, 30.0, -30.0, math.log(2), -708.3964185322641, -744.5, 709.7827128933839):
        xs += neighbours(x, 3)
    xs += [x for x in neighbours(709.782712893384, 2) if x <= 709.782712893384]
    # The worst of 18 million random points.
    xs += [-17.666017162160973, 543.08524988582849, -1.0360292648499856, -0.34420047081115818]
    return xs


def ln_arguments(rng):
    xs = [float(mpmath.exp(rng.uniform(-30, 30))) for _ in range(700)]
    xs += [1 + rng.uniform(-0.3, 0.5) for _ in range(400)]
    xs += [1 + s * 2.0**-e for e in range(1, 53) for s in (-1, 1)]
    xs += [float(mpmath.exp(rng.uniform(-744, 709))) for _ in range(400)]
    for e in range(-42, 43):
        xs += neighbours(2.0**e, 1) + [2.0**e * m for m in (0.75, 1.25)]
        # Where the reduction passes from one power of two to the next.
        xs += neighbours(2.0**e * math.sqrt(0.5), 1)
    xs += neighbours(1.0, 20)
    xs += [5e-324, 1e-323, 1e-310, 2.0**-1074 * 12345, math.nextafter(2.0**-1022, 0), 2.0**-1022]
    xs += [1.7976931348623157e308, 2.0**1023, 10.0, 100.0, math.e]
    # The worst of 26 million random points.
    xs += [0.70209110741338365, 1.4036448517434412, 0.7036798360869797, 1.4010104025199674]
    return xs


def write(name, arguments, function):
    lines = [
        f"# {name}(x) of doubles x to 30 digits, to measure the error of the library's own {name}.",
        "# Made by checks/scripts/exp_ln.py with mpmath at 50 digits; random points from a fixed seed.",
        "# x_bits, hi_bits, lo_bits: the 64 bits of a double in hexadecimal. hi is the double nearest the value and",
        "# lo the double nearest the remainder, so that the error of a result y is (y - hi) - lo.",
        "x_bits,x,value,hi_bits,lo_bits",
    ]
    for x in dict.fromkeys(arguments):
        value = function(mpmath.mpf(x))
        hi, lo = split(value)
        lines.append(f"{bits(x)},{x!r},{mpmath.nstr(value, 30)},{bits(hi)},{bits(lo)}")
    (FOLDER / f"{name}.csv").write_text("\n".join(lines) + "\n")


FOLDER.mkdir(exist_ok=True)
write("exp", exp_arguments(random.Random(20240601)), mpmath.exp)
write("ln", ln_arguments(random.Random(20240602)), mpmath.log)
