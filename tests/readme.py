"""Runs the C and Python examples of the README, and the C examples of docs/c.md, as they stand there, and compares what
they print.

The Rust example is a doctest of the `carb-tests` crate.
"""

import os
import pathlib
import re
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
TARGET = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")).resolve() / "debug"


def blocks(language: str, page: str = "README.md") -> list[str]:
    text = (ROOT / page).read_text(encoding="utf-8")
    found = re.findall(rf"```{language}\n(.*?)```", text, re.DOTALL)
    assert found, f"{page} should hold an example in {language}"
    return found


def promised(code: str) -> list[str]:
    lines = re.findall(r"-> (.*?)(?: \*/)?$", code, re.MULTILINE)
    assert lines, "the example should say what it prints, behind an arrow"
    return lines


def run(command: list[str], **options: object) -> list[str]:
    done = subprocess.run(command, check=True, capture_output=True, text=True, **options)
    return done.stdout.splitlines()


def check_python() -> None:
    for code in blocks("python"):
        assert run([sys.executable, "-c", code]) == promised(code)


def check_c() -> None:
    for code in [*blocks("c"), *blocks("c", "docs/c.md")]:
        check_c_program(code)


def check_c_program(code: str) -> None:
    with tempfile.TemporaryDirectory() as folder:
        source = pathlib.Path(folder) / "example.c"
        program = pathlib.Path(folder) / "example"
        source.write_text(code, encoding="utf-8")
        flags = ["-std=c99", "-Wall", "-Wextra", "-Wpedantic", "-Werror"]
        include = ["-I", str(ROOT / "carb-ffi" / "include")]
        link = ["-L", str(TARGET), f"-Wl,-rpath,{TARGET}", "-lcarb"]
        run(["gcc", *flags, *include, str(source), "-o", str(program), *link])
        # The library is asked for by its SONAME, which cargo does not make a file of.
        library = pathlib.Path(folder) / "libcarb.so.0"
        library.symlink_to(TARGET / "libcarb.so")
        assert run([str(program)], env={**os.environ, "LD_LIBRARY_PATH": folder}) == promised(code)


if __name__ == "__main__":
    check_python()
    check_c()
    print("the examples of README.md and docs/c.md print what they promise")
