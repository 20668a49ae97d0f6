"""``python -m carb crosscheck``: claims from a file, what is found about them to the terminal or to files."""

from __future__ import annotations

import csv
import io
import os
import sys
from argparse import ArgumentParser, Namespace
from contextlib import suppress
from itertools import islice
from typing import Any

from ._claims import Sheet, claims_of, faults_of, read
from ._crosscheck import FOUND, Crosscheck, asking, checked
from ._errors import CarbError
from ._progress import Bar

MOST_FAULTS = 20


def declare(commands: Any) -> None:
    """Declares the command and its options."""
    told = "hold what other programs print against this library; exit code 1 where a claim may hurt somebody"
    doing: ArgumentParser = commands.add_parser("crosscheck", help=told)
    doing.add_argument("file", metavar="FILE.csv", help="the claims: a header, then a row for each")
    doing.add_argument("--json", action="store_true", help="the answer as JSON instead of a report")
    doing.add_argument("--output", metavar="FILE", help="where the report or the JSON goes instead of the terminal")
    doing.add_argument("--table", metavar="FILE.csv", help="where the claims go with what is found about each")
    doing.add_argument("--most-readings", metavar="N", type=int, default=10, help="the most that are listed of a claim")
    doing.set_defaults(run=run)


def run(asked: Namespace) -> int:
    """Gives 0, or 1 where a claim may hurt somebody, or 2 where something is malformed or nothing has an answer."""
    try:
        targets = _targets(asked)
        sheet, faults = read(asked.file)
        # The rows of a wrong header would all be wrong.
        if sheet.rows and not any(fault.line < sheet.rows[0][0] for fault in faults):
            faults += islice(faults_of(sheet, asking(asked.most_readings)), MOST_FAULTS + 1)
        if faults:
            told = [fault.told(asked.file) for fault in sorted(faults)[:MOST_FAULTS]]
            more = [f"{asked.file}: there is more; these are the first {MOST_FAULTS}"] * (len(faults) > MOST_FAULTS)
            print(*told, *more, sep="\n", file=sys.stderr)
            return 2
        bar = Bar(sys.stderr)
        try:
            done = checked(claims_of(sheet.claims()), asked.most_readings, bar)
        finally:
            bar.clear()
        report = f"{done.to_json()}\n" if asked.json else done.page()
        texts = {"output": report, "table": _table(sheet, done)}
        _write({targets[name]: text.encode() for name, text in texts.items() if name in targets})
    except (CarbError, OSError) as error:
        print(error, file=sys.stderr)
        return 2
    if "output" not in targets:
        sys.stdout.buffer.write(report.encode())
    return int(done.danger) if done.answered else 2


def _table(sheet: Sheet, done: Crosscheck) -> str:
    """The rows of the file, with what is found about each."""
    columns = done.to_columns()
    found = [columns[name] for name in (*FOUND, "explanation")]
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\n")
    writer.writerow([*sheet.header, *FOUND, "explanation"])
    for (_, cells), *more in zip(sheet.rows, *found, strict=True):
        writer.writerow([*cells, *(str(value).lower() if isinstance(value, bool) else value for value in more)])
    return text.getvalue()


def _targets(asked: Namespace) -> dict[str, str]:
    """The files to write; none of them may be another one, or no ordinary file."""
    asked_for = {"output": asked.output, "table": asked.table}
    targets = {name: os.path.realpath(path) for name, path in asked_for.items() if path is not None}
    if len({os.path.realpath(asked.file), *targets.values()}) <= len(targets):
        raise OSError("the claims, --output and --table should be different files")
    for path in targets.values():
        if os.path.exists(path) and not os.path.isfile(path):
            raise OSError(f"{path} is no file that could be replaced")
    return targets


def _write(files: dict[str, bytes]) -> None:
    """Writes all files or none: each beside its place first, then into it."""
    beside = {path: f"{path}.{os.getpid()}.part" for path in files}
    try:
        for path, content in files.items():
            with open(beside[path], "xb") as file:
                file.write(content)
        for path in files:
            os.replace(beside[path], path)
    finally:
        for path in beside.values():
            with suppress(FileNotFoundError):
                os.remove(path)
