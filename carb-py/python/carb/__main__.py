"""``python -m carb``: ``plan``, ``bottling``, ``kegging`` of a file; ``crosscheck``, ``selfcheck``, ``version``."""

from __future__ import annotations

import argparse
import platform
import sys

import numpy as np

from . import Bottling, CarbError, Kegging, Plan, __version__, _crosscheck_command, _selfcheck

JOBS = {Plan: "a plan", Bottling: "a bottling", Kegging: "a kegging"}


def main(arguments: list[str] | None = None) -> int:
    """Runs a command; gives 0, or 1 where a job holds a danger, or 2 where it has no answer."""
    parser = argparse.ArgumentParser(
        prog="python -m carb", description="Plan a packaging day, or check what other programs print."
    )
    commands = parser.add_subparsers(dest="command", required=True)
    for kind, said in JOBS.items():
        doing = commands.add_parser(kind.job, help=f"print the page of {said}; exit code 1 where it holds a danger")
        doing.add_argument("file", metavar="FILE.json", help="the request")
        doing.add_argument("--json", action="store_true", help="the answer as JSON instead of a page")
        doing.set_defaults(kind=kind, run=job)
    _crosscheck_command.declare(commands)
    told = "compare this installation with published values, and with its own bits; exit code 1 where something differs"
    commands.add_parser("selfcheck", help=told).set_defaults(run=_selfcheck.run)
    commands.add_parser("version", help="print the versions of carb, Python and NumPy").set_defaults(run=version)
    asked = parser.parse_args(arguments)
    code: int = asked.run(asked)
    return code


def job(asked: argparse.Namespace) -> int:
    """Prints a whole job."""
    try:
        with open(asked.file, encoding="utf-8") as file:
            done = asked.kind(file.read())
    except (CarbError, OSError, UnicodeDecodeError) as error:
        print(error, file=sys.stderr)
        return 2
    sys.stdout.buffer.write((f"{done.to_json()}\n" if asked.json else done.page()).encode())
    return (1 if done.danger else 0) if done["answered"] else 2


def version(_: argparse.Namespace) -> int:
    """Prints the versions that a report of a fault should name."""
    print(f"carb {__version__}")
    print(f"NumPy {np.__version__}")
    print(f"{platform.python_implementation()} {platform.python_version()}, {platform.system()} {platform.machine()}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
