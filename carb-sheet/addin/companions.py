"""The companions of the functions: their names, their arguments (name, text) and what the wizard says of them."""

from typing import Any

Entry = dict[str, Any]
PAIRS = ("pairs", "The arguments of the function: names and values in turn, or blocks of two columns.")
FUNCTION = ("function", 'The name of the function in quotes, such as "KEG_PRESSURE".')

COMPANIONS: list[Entry] = [
    {
        "name": "carb_cautions",
        "summary": "What is to be minded about an answer, what may hurt somebody first; where there is no answer, why, "
        "and what to do.",
        "arguments": (FUNCTION, PAIRS),
    },
    {
        "name": "carb_sources",
        "summary": "The sources behind an answer, one a line.",
        "arguments": (FUNCTION, PAIRS),
    },
    {
        "name": "carb_working",
        "summary": "The working of an answer: each equation with the numbers that went in and came out.",
        "arguments": (FUNCTION, PAIRS),
    },
    {
        "name": "carb_convert",
        "summary": "A value, or a range of values, from one unit to another. Between gauge and absolute pressure "
        "nothing is converted: that takes the air outside.",
        "arguments": (
            ("value", "The value or the range of values."),
            ("from_unit", 'The unit it is in, such as "psi", or a name that ends with it, such as "gauge_psi".'),
            ("to_unit", 'The unit wanted, such as "bar", or a name of the same quantity, such as "gauge_bar".'),
        ),
    },
    {
        "name": "carb_table",
        "summary": "A table of the library, names of the columns first. Enter it as an array formula.",
        "arguments": (
            ("table", "The name of the table in quotes. "),
            (
                "pairs",
                "What the table is asked: names and values in turn, or blocks of two columns. A list, such as bottles, "
                "is a range with the names of its columns in the first row.",
            ),
        ),
    },
    {"name": "carb_version", "summary": "The version of the library that works in this add-in.", "arguments": ()},
]
