"""Reproduces every result of the conformance answers from their printed workings alone.

It shares nothing with the library: formulas are read as text, numbers as printed. From the JSON numbers a result must
come out to 1e-12 of the terms it consists of; from the text, whose numbers are rounded to nine digits, the interval that
the rounding of the inputs leaves must meet the interval of the printed result.
"""

import ast
import json
import math
import pathlib
import re

CASES = pathlib.Path(__file__).resolve().parent / "conformance" / "cases.tsv"
RELATIVE = 1e-12


class Interval:
    """From low to high, and the largest number that was added on the way."""

    def __init__(self, low: float, high: float, size: float = 0.0) -> None:
        self.low, self.high = low, high
        self.size = max(size, abs(low), abs(high))

    def of(self, other: "Interval", ends: list[float], size: float) -> "Interval":
        return Interval(min(ends), max(ends), size)

    def __add__(self, other: "Interval") -> "Interval":
        return Interval(self.low + other.low, self.high + other.high, max(self.size, other.size))

    def __neg__(self) -> "Interval":
        return Interval(-self.high, -self.low, self.size)

    def __sub__(self, other: "Interval") -> "Interval":
        return self + -other

    def __mul__(self, other: "Interval") -> "Interval":
        ends = [a * b for a in (self.low, self.high) for b in (other.low, other.high)]
        most = max(abs(other.low), abs(other.high)), max(abs(self.low), abs(self.high))
        return Interval(min(ends), max(ends), max(self.size * most[0], other.size * most[1]))

    def __truediv__(self, other: "Interval") -> "Interval":
        assert other.low > 0 or other.high < 0, "a division by what may be nothing"
        least = min(abs(other.low), abs(other.high))
        inverse = Interval(1 / other.high, 1 / other.low, other.size / least**2)
        return self * inverse

    def __pow__(self, other: "Interval") -> "Interval":
        if other.low == other.high == int(other.low) and self.low < 0 < self.high:
            ends = [0.0, self.low**other.low, self.high**other.low]
        else:
            ends = [a**b for a in (self.low, self.high) for b in (other.low, other.high)]
        grown = max(map(abs, ends)) * self.size / max(abs(self.low), abs(self.high), 1e-300) * abs(other.high)
        return Interval(min(ends), max(ends), grown)


def exp(x: Interval) -> Interval:
    low, high = math.exp(x.low), math.exp(x.high)
    # A rounding of the exponent is that part of the result.
    return Interval(low, high, high * max(1.0, x.size))


def ln(x: Interval) -> Interval:
    return Interval(math.log(x.low), math.log(x.high), max(1.0, x.size / abs(x.low)))


def least(x: Interval, y: Interval) -> Interval:
    return Interval(min(x.low, y.low), min(x.high, y.high), max(x.size, y.size))


def most(x: Interval, y: Interval) -> Interval:
    return Interval(max(x.low, y.low), max(x.high, y.high), max(x.size, y.size))


CALLS = {"exp": exp, "ln": ln, "min": least, "max": most}
OPERATORS = {
    ast.Add: Interval.__add__, ast.Sub: Interval.__sub__, ast.Mult: Interval.__mul__, ast.Div: Interval.__truediv__,
    ast.Pow: Interval.__pow__,
}
PARSED: dict[str, ast.expr] = {}


def evaluate(node: ast.expr, symbols: dict[str, Interval]) -> Interval:
    match node:
        case ast.Constant(value=value):
            return Interval(float(value), float(value))
        case ast.Name(id=name):
            return symbols[name]
        case ast.UnaryOp(op=ast.USub(), operand=operand):
            return -evaluate(operand, symbols)
        case ast.BinOp(left=left, op=op, right=right):
            return OPERATORS[type(op)](evaluate(left, symbols), evaluate(right, symbols))
        case ast.Call(func=ast.Name(id=name), args=arguments):
            return CALLS[name](*(evaluate(argument, symbols) for argument in arguments))
    raise ValueError(ast.dump(node))


def right_side(formula: str) -> ast.expr:
    if formula not in PARSED:
        text = formula.split(" = ", 1)[1].replace("^", "**")
        PARSED[formula] = ast.parse(text, mode="eval").body
    return PARSED[formula]


NUMBER = r"-?\d+(?:\.\d+)?(?:e-?\d+)?"


def printed(text: str) -> tuple[str, dict[str, Interval], Interval]:
    """The formula, the inputs and the result of a step as it is printed, each number as the interval it stands for."""
    first, second = text.split("\n")
    formula = first.split(": ", 1)[1]
    inputs, result = second.strip().rsplit(" -> ", 1)

    def interval(number: str) -> Interval:
        value = float(number)
        # Nine significant digits: half of the ninth.
        half = 0.5 * 10 ** (math.floor(math.log10(abs(value))) - 8) if value else 0.0
        return Interval(value - half, value + half)

    pairs = re.findall(rf"(\w+) = ({NUMBER})", inputs)
    found = re.search(rf"\w+ = ({NUMBER})", result)
    assert found, result
    return formula, {name: interval(number) for name, number in pairs}, interval(found[1])


def main() -> None:
    steps, skipped, worst = 0, 0, 0.0
    seen: set[str] = set()
    for line in CASES.read_text(encoding="utf-8").splitlines()[1:]:
        for step in json.loads(line.split("\t")[6]).get("working", []):
            seen.add(step["equation"])
            exact = {name: Interval(value, value) for name, value in step["inputs"].items()}
            got = evaluate(right_side(step["formula"]), exact)
            [wanted] = step["result"].values()
            error = abs(got.low - wanted) / max(abs(wanted), got.size, 1e-300)
            worst = max(worst, error)
            assert error <= RELATIVE, (step["text"], got.low, wanted)
            formula, inputs, result = printed(step["text"])
            assert formula == step["formula"] and inputs.keys() == step["inputs"].keys(), step["text"]
            try:
                around = evaluate(right_side(formula), inputs)
            except AssertionError:
                skipped += 1
                continue
            slack = RELATIVE * around.size
            assert around.low - slack <= result.high and result.low <= around.high + slack, step["text"]
            steps += 1
    print(f"{steps} steps of {len(seen)} equations come out from what is printed (worst {worst:.1e} from the JSON)")
    assert steps > 2000 and len(seen) > 40 and skipped < 0.01 * steps, (steps, len(seen), skipped)


if __name__ == "__main__":
    main()
