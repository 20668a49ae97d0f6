"""docs/excel.md says the same as the C interface. Excel is not here: what is held is what can be held without it.

Its declarations are those of the library, and calls made as they declare them give the answers that the page promises.
"""

import ctypes
import json
import os
import re
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PAGE = (ROOT / "docs" / "excel.md").read_text(encoding="utf-8")
MODULE = re.sub(r" _\n\s*", " ", re.search(r"```vb\n(.*?)```", PAGE, re.DOTALL)[1])
"""The module, its continued lines joined."""
ABI = (ROOT / "carb-ffi" / "abi.txt").read_text(encoding="utf-8")
TARGET = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))

SIMPLE = {"Long": ctypes.c_int32, "Double": ctypes.c_double, "LongPtr": ctypes.c_size_t, "Byte": ctypes.c_uint8}
C_TYPES = {"Long": ("int32_t", "uint32_t"), "Double": ("double",), "LongPtr": ("size_t",), "Byte": ("char",)}


def snake(name):
    return re.sub(r"(?<!^)(?=[A-Z])", "_", name).lower()


def members():
    """The types of the module: name in C, and for each member its name in C, type and count."""
    for name, body in re.findall(r"Private Type (\w+)\n(.*?)End Type", MODULE, re.DOTALL):
        found = re.findall(r"^\s*(\w+)(?:\(0 To (\d+)\))? As (\w+)$", body, re.MULTILINE)
        yield name, [(snake(member), kind, int(last or 0) + 1) for member, last, kind in found]


def structs():
    def field(kind, count):
        return SIMPLE[kind] * count if count > 1 else SIMPLE[kind]

    return {
        name: type(name, (ctypes.Structure,), {"_fields_": [(key, field(kind, n)) for key, kind, n in rows]})
        for name, rows in members()
    }


STRUCTS = structs()


def declared():
    """The functions of the module that are the library's: what they return, and of each argument how and what."""
    pattern = r'Declare PtrSafe Function (carb_\w+) Lib "[^"]+" \((.*?)\) As (\w+)'
    for name, arguments, result in re.findall(pattern, MODULE):
        yield name, re.findall(r"(ByVal|ByRef) \w+ As (\w+)", arguments), result


def as_in_c(name, how, kind):
    """The ways in which C may write an argument of the module."""
    if kind in STRUCTS:
        assert how == "ByRef"
        return {f"{const}{snake(kind)} *" for const in ("", "const ")}
    if kind == "String":
        assert how == "ByVal"
        return {"const char *"}
    if how == "ByVal":
        return set(C_TYPES[kind])
    # Inputs are a row of numbers there, of the size that the page tells.
    opaque = {"carb_inputs *", "const carb_inputs *"} if kind == "Double" and name != "carb_convert" else set()
    return {f"{each} *" for each in C_TYPES[kind]} | opaque


def test_types_are_laid_out_as_the_library_has_them():
    for name, rows in members():
        struct = STRUCTS[name]
        assert f"struct {snake(name)} = {ctypes.sizeof(struct)}\n" in ABI
        assert len(re.findall(rf"^member {snake(name)}\.", ABI, re.MULTILINE)) == len(rows)
        for member, kind, count in rows:
            place = getattr(struct, member).offset
            lines = {f"member {snake(name)}.{member} = {place} {c} x {count}\n" for c in C_TYPES[kind]}
            assert any(line in ABI for line in lines), (name, member, place)
    assert {snake(name) for name, _ in members()} == {"carb_error", "carb_keg_pressure_result"}


def test_functions_are_declared_as_the_library_has_them():
    names = set()
    for name, arguments, result in declared():
        returned, listed = re.search(rf"^function {name} = (\w+) \((.*)\)$", ABI, re.MULTILINE).groups()
        # An argument ends with its name.
        wanted = [] if listed == "void" else [re.sub(r" \w+$", "", each) for each in listed.split(", ")]
        assert returned in C_TYPES[result]
        assert len(wanted) == len(arguments), name
        for c, (how, kind) in zip(wanted, arguments, strict=True):
            assert c in as_in_c(name, how, kind), (name, c, how, kind)
        names.add(name)
    assert names == set(re.findall(r"\b(carb_\w+)(?= ?\(| job)", MODULE)), "what is called is declared"


def test_numbers_on_the_page_are_those_of_the_interface():
    inputs = int(re.search(r"^struct carb_inputs = (\d+)$", ABI, re.MULTILINE)[1])
    assert int(re.search(r"carb_inputs_init\(inputs\(0\), (\d+)\)", MODULE)[1]) == inputs
    last = int(re.search(r"Dim inputs\(0 To (\d+)\) As Double", MODULE)[1])
    assert (last + 1) * ctypes.sizeof(ctypes.c_double) == inputs
    assert f"kept as {last + 1} numbers" in PAGE
    for variable, kind in (("result", "CarbKegPressureResult"), ("fault", "CarbError")):
        size = int(re.search(rf"LenB\({variable}\) <> (\d+)", MODULE)[1])
        assert size == ctypes.sizeof(STRUCTS[kind])
    small = int(re.search(r"needed\) <> (-\d+)", MODULE)[1])
    assert f"enumerator CARB_BUFFER_TOO_SMALL = {small}\n" in ABI


# The calls of the module, made as it declares them.


def library():
    found = [path for kind in ("debug", "release") if (path := TARGET / kind / "libcarb.so").exists()]
    if not found:
        pytest.skip(f"the shared library is not built: no libcarb.so in {TARGET}")
    newest = ctypes.CDLL(str(max(found, key=lambda path: path.stat().st_mtime)))
    for name, arguments, result in declared():
        function = getattr(newest, name)
        function.restype = SIMPLE[result]
        function.argtypes = [argument(how, kind) for how, kind in arguments]
    return newest


def argument(how, kind):
    if kind == "String":
        return ctypes.c_char_p
    given = STRUCTS.get(kind) or SIMPLE[kind]
    return given if how == "ByVal" else ctypes.POINTER(given)


def keg_gauge_psi(carb, volumes, temperature_f, altitude_m):
    """KegGaugePsi of the page, once its cells were read; None where that gives #N/A."""
    inputs = (ctypes.c_double * 119)()
    result, fault, psi = STRUCTS["CarbKegPressureResult"](), STRUCTS["CarbError"](), ctypes.c_double()
    result.struct_size, fault.struct_size = ctypes.sizeof(result), ctypes.sizeof(fault)
    if carb.carb_abi_version() != 0 or carb.carb_inputs_init(inputs, 952) != 0:
        return None
    for key, number in (("volumes", volumes), ("temperature_f", temperature_f), ("altitude_m", altitude_m)):
        if carb.carb_inputs_set(inputs, key.encode(), number, fault) != 0:
            return None
    if carb.carb_keg_pressure(inputs, result, fault) != 0:
        return None
    return psi.value if carb.carb_convert(b"kpa", b"psi", result.gauge_kpa, psi, fault) == 0 else None


def carb_json(carb, job, request):
    """CarbJson of the page."""
    needed, nothing = ctypes.c_size_t(), (ctypes.c_uint8 * 1)()
    if carb.carb_json(job, request, len(request), nothing, 0, needed) != -103:
        return ""
    buffer = (ctypes.c_uint8 * needed.value)()
    carb.carb_json(job, request, len(request), buffer, needed.value, needed)
    return bytes(buffer)[: needed.value - 1].decode()


def test_calls_as_they_are_declared_give_what_the_page_promises():
    carb = library()
    numbers, promised = re.search(r"=KegGaugePsi\((.*?)\)\s+→ ([\d.]+)", PAGE).groups()
    assert f"{keg_gauge_psi(carb, *map(float, numbers.split(','))):.3f}" == promised
    assert promised in PAGE.split("What to try first")[1]
    assert keg_gauge_psi(carb, 2.5, 176, 0) is None
    assert keg_gauge_psi(carb, float("nan"), 38, 0) is None
    job, request = re.search(r'=CarbJson\("(\w+)", "(.*)"\)', PAGE).groups()
    text = carb_json(carb, job.encode(), request.replace('""', '"').encode())
    assert text.startswith('{"carb":1,') and "°" in text
    answer = json.loads(text)
    assert f"{answer['gauge_psi']:.3f}" == promised
    assert answer["cautions"] and answer["cautions"][0]["text"]


def test_what_the_module_begins_it_ends():
    for kind in ("Function", "Type"):
        begun = re.findall(rf"^(?:Public|Private) {kind} ", MODULE, re.MULTILINE)
        assert len(begun) == MODULE.count(f"End {kind}") > 0
