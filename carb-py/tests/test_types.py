"""What the stubs say is what there is, and strict type checkers accept what users write."""

import ast
import inspect
import subprocess
import sys
from pathlib import Path

import carb
import pytest
from shared import FUNCTIONS, KNOWN, ROOT, TABLES

HERE = Path(__file__).parent
STUB = Path(carb.__file__).with_suffix(".pyi")
CACHE = ROOT / "target" / "mypy"
# Only what has a stub of its own is compared with it, not what is its own stub; and not what stubtest cannot look into:
# keywords that stand in a TypedDict, which are compared below.
OWN = [r"carb\.plot\..*", r"carb\._(?!carb\.).*", r"carb\._carb\.__all__"]
# What is only used, not compared.
CONFIG = "[mypy]\n[mypy-matplotlib.*]\nfollow_imports = skip\n[mypy-pandas.*]\nfollow_imports = skip\n"


def test_mypy():
    api = pytest.importorskip("mypy.api")
    out, err, code = api.run(["--strict", f"--cache-dir={CACHE}", str(HERE / "typed.py")])
    assert code == 0, out + err
    out, err, code = api.run(["--strict", f"--cache-dir={CACHE}", "-p", "carb"])
    assert code == 0, out + err


def test_pyright():
    pytest.importorskip("pyright")
    told = subprocess.run(
        [sys.executable, "-m", "pyright", "--pythonpath", sys.executable, str(HERE / "typed.py")],
        capture_output=True,
        text=True,
        check=False,
    )
    assert told.returncode == 0, told.stdout + told.stderr


def test_stubtest(tmp_path):
    pytest.importorskip("mypy.stubtest")
    named = [entry["name"] for kind in ("functions", "tables", "jobs") for entry in KNOWN[kind]]
    allowed = tmp_path / "allowed.txt"
    allowed.write_text("\n".join([*OWN, *(rf"carb\.(At\.)?{name}" for name in named)]))
    config = tmp_path / "mypy.ini"
    config.write_text(CONFIG)
    given = ["--ignore-unused-allowlist", "--allowlist", str(allowed), "--mypy-config-file", str(config)]
    told = subprocess.run(
        [sys.executable, "-m", "mypy.stubtest", "carb", *given],
        capture_output=True,
        text=True,
        check=False,
    )
    assert told.returncode == 0, told.stdout + told.stderr


def test_keywords_of_the_stubs_are_those_of_the_functions():
    classes = {node.name: node for node in ast.parse(STUB.read_text()).body if isinstance(node, ast.ClassDef)}
    compared = 0
    for name in [*FUNCTIONS, *TABLES, "bottling", "kegging"]:
        taken = [p for p in inspect.signature(getattr(carb, name)).parameters if p != "unknown"]
        if taken:
            kind = classes[f"_{''.join(word.capitalize() for word in name.split('_'))}Inputs"]
            assert [line.target.id for line in kind.body if isinstance(line, ast.AnnAssign)] == taken
            compared += 1
    assert compared > 60


def test_stubs_have_the_docstrings_of_the_functions():
    documented = {
        node.name: ast.get_docstring(node)
        for node in ast.parse(STUB.read_text()).body
        if isinstance(node, ast.FunctionDef) and ast.get_docstring(node)
    }
    for name in FUNCTIONS:
        assert documented[name] == inspect.getdoc(getattr(carb, name)).rstrip()
