"""libcarb, which lies inside the add-in, through its C interface."""

import ctypes
import json
import math
import platform
from ctypes import POINTER, Structure, byref, c_char, c_char_p, c_double, c_int32, c_size_t, c_uint32
from functools import lru_cache
from pathlib import Path

from .names import PLATFORM
from .refusal import Refusal

LIBRARIES = {"Windows": "carb.dll", "Darwin": "libcarb.dylib"}
WORD = ctypes.sizeof(c_double)
MOST_INPUTS = 1024
ANSWER_SIZE = 1 << 16
BURSTING = (-15, -16)
"""CARB_VESSEL_FULL and CARB_PRESSURE_TOO_HIGH of carb.h: more than any package holds."""


class Error(Structure):
    _fields_ = (
        ("struct_size", c_uint32),
        ("code", c_int32),
        ("parameter", c_char * 64),
        ("value", c_double),
        ("low", c_double),
        ("high", c_double),
        ("text", c_char * 512),
    )

    def __init__(self):
        super().__init__(struct_size=ctypes.sizeof(Error))

    def refusal(self):
        return Refusal(self.text.decode("utf-8", "replace"))


class Series(Structure):
    _fields_ = (("name", c_char_p), ("values", POINTER(c_double)), ("count", c_size_t))


def here():
    """The name of this platform, as the folders of libraries are called."""
    machine = platform.machine().lower()
    return f"{platform.system().lower()}-{ {'amd64': 'x86_64', 'aarch64': 'arm64'}.get(machine, machine) }"


@lru_cache(maxsize=None)
def library():
    name = LIBRARIES.get(platform.system(), "libcarb.so")
    path = Path(__file__).parents[2] / "lib" / here() / name
    if not path.exists():
        text = f"this add-in was built for {PLATFORM} and has no library for {here()}: build it there with `make addin`"
        raise Refusal(text)
    try:
        found = ctypes.CDLL(str(path))
    except OSError as error:
        raise Refusal(f"the library of this add-in could not be loaded: {error}") from None
    found.carb_version.restype = c_char_p
    found.carb_convert.argtypes = (c_char_p, c_char_p, c_double, POINTER(c_double), POINTER(Error))
    return found


def text_for_c(text):
    """A text for C, which ends at the first NUL: what holds one is no name, and would be cut to another."""
    if "\0" in text:
        raise Refusal("a text holds a character that no name has")
    return text.encode("utf-8", "replace")


def version():
    return library().carb_version().decode()


@lru_cache(maxsize=None)
def inputs_size():
    """The largest struct of inputs that the library takes: it leaves alone what it does not know."""
    room = (c_double * MOST_INPUTS)()
    sizes = range(MOST_INPUTS * WORD, 0, -WORD)
    return next(size for size in sizes if library().carb_inputs_init(room, size) == 0)


class Inputs:
    """The inputs of a call that are not numbers."""

    def __init__(self, choices):
        self.room = (c_double * (inputs_size() // WORD))()
        library().carb_inputs_init(self.room, inputs_size())
        for name, choice in choices:
            error = Error()
            if library().carb_inputs_choose(self.room, text_for_c(name), text_for_c(choice), byref(error)) < 0:
                raise error.refusal()


def each(function, output, choices, numbers, count):
    """Values and statuses of so many elements; numbers are names and lists of one value, or of one for each element."""
    inputs = Inputs(choices)
    series = (Series * len(numbers))()
    for place, (name, values) in zip(series, numbers):
        place.name, place.values, place.count = text_for_c(name), (c_double * len(values))(*values), len(values)
    out, status, error = (c_double * count)(), (c_int32 * count)(), Error()
    call = getattr(library(), f"carb_{function}_n")
    call.argtypes = None
    arguments = (inputs.room, series, c_size_t(len(numbers)), text_for_c(output), c_size_t(count), out, status)
    if call(*arguments, byref(error)) < 0:
        raise error.refusal()
    return out[:], status[:]


def convert(value, source, target):
    out, error = c_double(math.nan), Error()
    if library().carb_convert(text_for_c(source), text_for_c(target), value, byref(out), byref(error)) < 0:
        raise error.refusal()
    return out.value


def request(pairs):
    """A request as JSON; what is given twice stands there twice, for the library to refuse."""
    values = "".join(f", {json.dumps(name)}: {json.dumps(value)}" for name, value in pairs)
    return f'{{"carb": 1{values}}}'


def answer(function, pairs):
    """What the library says of a request, as JSON tells it, or a refusal."""
    body = request(pairs).encode()
    room = ANSWER_SIZE
    needed = c_size_t(0)
    for _ in range(2):
        buffer = ctypes.create_string_buffer(room)
        library().carb_json(text_for_c(function), body, c_size_t(len(body)), buffer, c_size_t(room), byref(needed))
        if needed.value <= room:
            break
        room = needed.value
    if needed.value == 0:
        raise Refusal(f"{function} could not be asked: a name is too long, or not a text")
    found = json.loads(buffer.value)
    if "error" in found:
        raise Refusal(found["error"]["text"], danger=found["error"]["code"] in BURSTING)
    return found
