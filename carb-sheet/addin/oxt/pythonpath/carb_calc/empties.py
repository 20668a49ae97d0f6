"""An empty cell is missing, not 0.

Calc hands over 0 for a reference to an empty cell, and does not say which cell is asking. So where a 0 comes in, the
document is asked: of the calls in its formulas that these arguments fit, is the 0 that of an empty cell, or a number?
Where they agree, that is it. Where they do not, or where a function such as IF picked what may be an empty cell,
nothing is guessed: that is an error. Values of formulas are never read, for that would ask in circles.

What was read of a document is kept until it says that it was changed. But some changes (copying, filling) are worked
out before they are told; so it is kept only a few times as long as the reading took, and for no more calls than were
seen. LibreOffice may bring a Python as old as 3.8 along: nothing here needs a newer one.
"""

import time

import unohelper
from com.sun.star.sheet.CellFlags import FORMULA as FORMULAS
from com.sun.star.table.CellContentType import EMPTY, FORMULA, TEXT
from com.sun.star.util import XModifyListener

from .formula import Constant, Named, Reference, Several, Worked, argument, calls
from .names import plain
from .refusal import Refusal

NUMBER, NOTHING, DOUBTFUL = "number", "nothing", "doubtful"
KEPT = 5
"""How many times as long as it took to read a document, what was read is kept."""
ANY = object()

_read = {}


def filled(caller, function, arguments, counted=True):
    """The arguments, None for those that are empty cells. Only a call that comes from a cell counts."""
    zeros = [place for place, value in enumerate(arguments) if type(value) is float and value == 0]
    known = document(caller) if zeros else None
    if known is None:
        return arguments
    readings = known.readings(plain(function), arguments, zeros, counted)
    found = list(arguments)
    for place in zeros:
        said = {reading[place] for reading in readings}
        if said == {NOTHING}:
            found[place] = None
        elif said - {NUMBER}:
            raise Refusal(doubt(place, DOUBTFUL in said), place)
    return tuple(found)


def doubt(place, picked):
    if picked:
        text = f"argument {place + 1} is 0, or an empty cell that a function such as IF or INDEX picked: "
        return text + "where it is a number, write +0 behind it"
    text = f"argument {place + 1} is 0 in one cell and an empty cell in another, with the same values beside it: "
    return text + "write the cell as a range, such as B2:B2 instead of B2"


def document(caller):
    """What is known of a document; None where there is none (somebody asks for a function by itself)."""
    name = getattr(caller, "RuntimeUID", None)
    if name is None:
        return None
    known = _read.get(name)
    if known is None:
        known = _read[name] = Document(caller, name)
    return known


class Document(unohelper.Base, XModifyListener):
    """The calls in the formulas of a document."""

    def __init__(self, model, name):
        self.model, self.name = model, name
        self.until = 0.0
        model.addModifyListener(self)

    def modified(self, event):
        self.until = 0.0

    def disposing(self, event):
        _read.pop(self.name, None)

    def read(self):
        start = time.monotonic()
        self.calls, self.indexes, self.cells, self.safe, self.answered = {}, {}, {}, {}, {}
        sheets = [self.model.Sheets.getByIndex(at) for at in range(self.model.Sheets.Count)]
        texts = [
            (sheet, text)
            for sheet in sheets
            for one in sheet.queryContentCells(FORMULAS)
            for row in one.getFormulaArray()
            for text in row
        ]
        texts += [(None, name.Content) for name in self.model.NamedRanges]
        for sheet, text in texts:
            for function, arguments in calls(text):
                self.calls.setdefault((function, len(arguments)), []).append((sheet, arguments))
        self.keep(start)

    def keep(self, start):
        """Keeps what was read for some time more."""
        now = time.monotonic()
        self.until = max(self.until, now) + KEPT * (now - start)

    def readings(self, function, arguments, zeros, counted):
        """How the calls that fit take each argument."""
        asked = (function, len(arguments))
        fresh = time.monotonic() >= self.until
        if fresh:
            self.read()
        found, seen = self.fitting(asked, arguments, zeros)
        key = asked if found is None else (asked, arguments)
        self.answered[key] = self.answered.get(key, 0) + counted
        if self.answered[key] > seen and counted and not fresh:
            self.read()
            found, _ = self.fitting(asked, arguments, zeros)
        return found or set()

    def fitting(self, asked, arguments, zeros):
        """The readings of the calls that fit, and how many there are; None where all calls give numbers there."""
        known = self.calls.get(asked, ())
        if asked not in self.safe:
            self.safe[asked] = {at for at in range(asked[1]) if all(is_value(taken[at]) for _, taken in known)}
        if self.safe[asked].issuperset(zeros):
            return None, len(known)
        if asked not in self.indexes:
            start = time.monotonic()
            self.indexes[asked] = self.index(known)
            self.keep(start)
        found = []
        for places, by_values in self.indexes[asked].items():
            values = tuple(arguments[place] for place in places)
            if ANY not in values:
                found += by_values.get(values, ())
                continue
            for others, readings in by_values.items():
                if all(one is ANY or one == other for one, other in zip(values, others)):
                    found += readings
        return set(found), len(found)

    def index(self, known):
        """The readings of calls by the values that are known beforehand, for each set of places where they are."""
        found = {}
        for sheet, taken in known:
            looked = [self.look(sheet, one) for one in taken]
            places = tuple(place for place, (value, _) in enumerate(looked) if value is not ANY)
            values = tuple(looked[place][0] for place in places)
            readings = tuple(reading for _, reading in looked)
            found.setdefault(places, {}).setdefault(values, []).append(readings)
        return found

    def look(self, sheet, taken):
        """The value of an argument where it is known beforehand, and how it is to be taken where it is 0."""
        if isinstance(taken, Constant):
            return taken.value, NUMBER
        if isinstance(taken, Reference):
            return self.cell(sheet, taken)
        if isinstance(taken, Named):
            return self.named(sheet, taken)
        return ANY, DOUBTFUL if isinstance(taken, Worked) and taken.picks else NUMBER

    def cell(self, sheet, at):
        sheets = self.model.Sheets
        if at.sheet is not None:
            if not sheets.hasByName(at.sheet):
                return ANY, DOUBTFUL
            sheet = sheets.getByName(at.sheet)
        if sheet is None:
            return ANY, DOUBTFUL
        key = (sheet.Name, at.column, at.row)
        if key not in self.cells:
            self.cells[key] = held(sheet.getCellByPosition(at.column, at.row))
        return self.cells[key]

    def named(self, sheet, taken):
        """What a name stands for. A cell that moves with the formula is not followed."""
        scopes = [scope.NamedRanges for scope in (sheet, self.model) if scope is not None]
        scope = next((names for names in scopes if names.hasByName(taken.name)), None)
        if scope is None:
            return ANY, NUMBER
        text = scope.getByName(taken.name).Content
        inner = argument(text)
        if isinstance(inner, Named):
            return ANY, DOUBTFUL
        if isinstance(inner, Reference):
            fixed = text.count("$") == 3 and inner.sheet is not None
            return self.cell(sheet, inner) if fixed else (ANY, DOUBTFUL)
        return (ANY, NUMBER) if isinstance(inner, Several) else self.look(sheet, inner)


def is_value(taken):
    """Whether an argument is never an empty cell, whatever the document holds."""
    return isinstance(taken, (Constant, Several)) or taken == Worked(picks=False)


def held(cell):
    """What a cell holds that is no formula; of a formula nothing is asked."""
    kind = cell.Type
    if kind == EMPTY:
        return 0.0, NOTHING
    if kind == FORMULA:
        return ANY, NUMBER
    return (cell.String if kind == TEXT else cell.Value), NUMBER
