"""What stands beside the functions: conversions, cautions, sources, working, tables."""

from . import library
from .arguments import cells, pairs, shape
from .empties import ANY, filled
from .functions import in_json
from .names import FUNCTIONS, INPUTS, LISTS, TABLES, role_and_unit, spelled
from .refusal import Refusal
from .result import FAILED

LEVELS = {"danger": "DANGER: ", "caution": "Caution: ", "note": "Note: "}


def laid_out(found, height, width):
    """One value, or rows of them."""
    if height == width == 1:
        return found[0]
    return tuple(tuple(found[row * width : (row + 1) * width]) for row in range(height))


def one_text(argument, what, place):
    name = cells(argument)
    if name.is_one and isinstance(name.first, str):
        return name.first.strip()
    raise Refusal(f"argument {place + 1} should be {what}, in quotes", place)


def named(argument, known, what):
    """A name from the library's tables, in either case."""
    name = spelled(one_text(argument, f"the name of {what}", 0))
    if name not in known:
        raise Refusal(f'there is no {what} "{name}": choose one of {", ".join(known)}')
    return name


def given(function, rest):
    """The pairs of a function. Its arguments may be taken over whole: then the name of what is wanted stands first."""
    try:
        found = pairs(rest, 1)
        if not found or found[0][0] in INPUTS[function]:
            return None, found
    except Refusal as refusal:
        found, wrong = None, refusal
    try:
        wanted = spelled(one_text(rest[0], "a name", 1)) if rest else None
        return wanted, pairs(rest[1:], 2)
    except Refusal:
        if found is None:
            raise wrong from None
        return None, found


def requests(function, rest):
    """The request of each element, and how many rows and columns there are."""
    wanted, found = given(function, rest)
    if wanted is not None and wanted not in FUNCTIONS[function]:
        known = ", ".join(FUNCTIONS[function])
        raise Refusal(f'{function} has no output "{wanted}": it has {known}')
    height, width = shape([one for _, one in found])
    columns = [(name, one.spread(height, width)) for name, one in found]
    elements = [
        [
            (name, in_json(name, value))
            for name, values in columns
            if (value := values[at if len(values) > 1 else 0]) is not None
        ]
        for at in range(height * width)
    ]
    return elements, height, width


def told(name, tell, refusal_told):
    """A companion that says something of a function's answer, for every element."""

    def call(caller=None, function=None, *rest):
        try:
            asked, *known = filled(caller, name, (function, *rest))
            function = named(asked, FUNCTIONS, "function")
            agreed(caller, function, rest)
            rest = known
            elements, height, width = requests(function, rest)
        except Refusal as refusal:
            if not refusal_told:
                raise
            return refusal.told()
        found = []
        for request in elements:
            try:
                found.append(tell(function, request))
            except Refusal as refusal:
                if not refusal_told and len(elements) == 1:
                    raise
                found.append(refusal.told() if refusal_told else FAILED)
        return laid_out(found, height, width)

    return call


def agreed(caller, function, rest):
    """Where it is not clear if a 0 in the formulas of the function itself is an empty cell, that is what is told."""
    for arguments in ((ANY, *rest), rest):
        filled(caller, function, arguments, counted=False)


def cautions(function, request):
    """What is to be minded, what may hurt somebody first."""
    found = library.answer(function, request)["cautions"]
    return "\n".join(
        LEVELS[level] + caution["text"] for level in LEVELS for caution in found if caution["level"] == level
    )


def sources(function, request):
    return "\n".join(source["citation"] for source in library.answer(function, request)["sources"])


def working(function, request):
    return "\n".join(step["text"] for step in library.answer(function, request)["working"])


def table(caller=None, name=None, *rest):
    """A table of the library: a row of names, then its rows. What a row does not tell is an empty text."""
    name, *rest = filled(caller, "carb_table", (name, *rest))
    name = named(name, TABLES, "table")
    found = pairs(rest, 1)
    request = [(column, listed(column, one) if column in LISTS else single(column, one)) for column, one in found]
    request = [(column, value) for column, value in request if value is not None]
    rows = library.answer(name, request)["rows"]
    columns = TABLES[name]
    return (tuple(columns), *(tuple(shown(row.get(column)) for column in columns) for row in rows))


def single(name, one):
    if not one.is_one:
        raise Refusal(f"a table takes one value for {name}, not a range")
    return None if one.first is None else in_json(name, one.first)


def listed(name, one):
    """A list of rows from a range that has the names in its first row; rows without values are left out."""
    names, *rows = one.rows
    if not all(isinstance(column, str) for column in names):
        raise Refusal(f'{name} is a range with the names of its columns in the first row, such as "bottle_ml"')
    names = [spelled(column) for column in names]
    found = [{at: in_json(at, value) for at, value in zip(names, row) if value is not None} for row in rows]
    return [row for row in found if row]


def shown(value):
    """A value of a row as a cell shows it."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    return float(value) if isinstance(value, int) else value


def convert(caller=None, value=None, source=None, target=None):
    """Values from one unit to another; units by themselves, or as the ends of names."""
    value, source, target = filled(caller, "carb_convert", (value, source, target))
    source, target = units(source, target)
    values = cells(value)
    height, width = values.height, values.width
    found = []
    for one in values.spread(height, width):
        if isinstance(one, float):
            found.append(converted(one, source, target, height * width))
        elif height == width == 1:
            raise Refusal("the first argument is the number to be converted; it is missing or no number", 0)
        else:
            found.append(FAILED)
    return laid_out(found, height, width)


def units(source, target):
    """The units of two names of one quantity, or of units by themselves."""
    what = "the name of a unit, or of a quantity in a unit"
    names = [spelled(one_text(source, what, 1)), spelled(one_text(target, what, 2))]
    (role, first), (other, second) = map(role_and_unit, names)
    if role and other and role != other:
        text = f"{names[0]} and {names[1]} are two quantities, not one in two units: convert units by themselves"
        raise Refusal(f"{text} ({first} to {second}), and between gauge and absolute pressure nothing is converted")
    return first, second


def converted(value, source, target, count):
    try:
        return library.convert(value, source, target)
    except Refusal:
        if count == 1:
            raise
        return FAILED


def version():
    return library.version()


CALLS = {
    "carb_convert": convert,
    "carb_cautions": told("carb_cautions", cautions, True),
    "carb_sources": told("carb_sources", sources, False),
    "carb_working": told("carb_working", working, False),
    "carb_table": table,
    "carb_version": version,
}
