"""The elementwise functions: wanted name, then names and values; ranges in, arrays out.

An element of an array is what the formula would say with the cells of that element alone. So elements are put together
that differ in numbers only, and the library works each such group out at once.
"""

from . import library
from .arguments import EMPTY, cells, pairs, shape
from .empties import filled
from .names import KINDS, VARYING, spelled
from .refusal import Refusal
from .result import FAILED


def of(function):
    """The function of this name, as Calc calls it."""

    def call(caller=None, wanted=None, *rest):
        wanted, *rest = filled(caller, function, (wanted, *rest))
        return answer(function, cells(wanted), pairs(rest, 1))

    return call


def answer(function, wanted, given):
    height, width = shape([wanted, *(one for _, one in given)])
    columns = [(name, one.spread(height, width)) for name, one in given]
    outputs = wanted.spread(height, width)
    if height == width == 1:
        return group(function, output(outputs[0]), [(name, values[0]) for name, values in columns], {}, 1)[0]
    found = elements(function, outputs, columns, height * width)
    return tuple(tuple(found[row * width : (row + 1) * width]) for row in range(height))


def output(wanted):
    if isinstance(wanted, str):
        return spelled(wanted)
    raise Refusal('the first argument is the name of what is wanted, in quotes, such as "gauge_psi"', 0)


def is_number(value):
    return isinstance(value, float)


def elements(function, outputs, columns, count):
    """The value of every element, an error where there is none."""
    fixed = [(name, values[0]) for name, values in columns if len(values) == 1]
    varying = [(name, values) for name, values in columns if len(values) > 1]
    alike = {}
    for place in range(count):
        wanted = outputs[place if len(outputs) > 1 else 0]
        key = tuple(
            True if is_number(values[place]) and name in VARYING[function] else (values[place],)
            for name, values in varying
        )
        alike.setdefault((wanted, key), []).append(place)
    found, refusals = [FAILED] * count, []
    for (wanted, key), places in alike.items():
        several = {name: [values[at] for at in places] for (name, values), same in zip(varying, key) if same is True}
        single = [(name, same[0]) for (name, _), same in zip(varying, key) if same is not True]
        try:
            values = group(function, output(wanted), [*fixed, *single], several, len(places))
        except Refusal as refusal:
            refusals.append(refusal)
            continue
        for place, value in zip(places, values):
            found[place] = value
    if len(refusals) == len(alike):
        raise refusals[0]
    return found


def group(function, wanted, single, several, count):
    """Elements that have all but numbers in common: the values, an error where one has none."""
    choices, numbers = [], [*several.items()]
    for name, value in single:
        if value in EMPTY:
            continue
        kind = KINDS.get(name)
        if kind == "number" and is_number(value):
            numbers.append((name, [value]))
        elif (choice := chosen(kind, value)) is not None:
            choices.append((name, choice))
        else:
            raise refused(function, single, several)
    if len({name for name, _ in choices}) < len(choices):
        raise refused(function, single, several)
    values, statuses = library.each(function, wanted, choices, numbers, count)
    if count == 1 and statuses[0] < 0:
        raise refused(function, single, several)
    return [FAILED if status < 0 else value for value, status in zip(values, statuses)]


def chosen(kind, value):
    """A choice or a flag by its name; None where the value is neither."""
    if kind == "choice" and isinstance(value, str):
        return spelled(value)
    if kind == "flag":
        if isinstance(value, str) and spelled(value) in ("true", "false"):
            return spelled(value)
        return {0.0: "false", 1.0: "true"}.get(value)
    return None


def in_json(name, value):
    """A value as a request in JSON has it."""
    choice = chosen(KINDS.get(name), value)
    if choice is None:
        return value
    return choice == "true" if KINDS.get(name) == "flag" else choice


def requested(single):
    return [(name, in_json(name, value)) for name, value in single if value not in EMPTY]


def refused(function, single, several):
    """Why the library does not answer, in its own words."""
    first = [(name, values[0]) for name, values in several.items()]
    try:
        library.answer(function, requested([*single, *first]))
    except Refusal as refusal:
        return refusal
    return Refusal(f"{function} does not take this")
