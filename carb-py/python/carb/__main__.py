"""``python -m carb plan FILE.json`` and ``python -m carb version``."""

from __future__ import annotations

import argparse
import sys

from . import CarbError, __version__, plan


def main(arguments: list[str] | None = None) -> int:
    """Runs a command; gives 0, or 1 where a plan holds a danger, or 2 where there is no plan."""
    parser = argparse.ArgumentParser(prog="python -m carb", description="Plan a packaging day.")
    commands = parser.add_subparsers(dest="command", required=True)
    planning = commands.add_parser("plan", help="print the page of a plan; exit code 1 where it holds a danger")
    planning.add_argument("file", metavar="FILE.json", help="the request")
    commands.add_parser("version", help="print the version")
    asked = parser.parse_args(arguments)
    if asked.command == "version":
        print(__version__)
        return 0
    try:
        with open(asked.file, encoding="utf-8") as file:
            day = plan(file.read())
    except (CarbError, OSError, UnicodeDecodeError) as error:
        print(error, file=sys.stderr)
        return 2
    sys.stdout.buffer.write(day.page().encode())
    return (1 if day.danger else 0) if day["answered"] else 2


if __name__ == "__main__":
    sys.exit(main())
