"""Answers as cells show them."""

import struct

# Calc keeps the error of a cell in the low bits of a NaN. Where it did not, the cell would show #NUM!: an error too.
(FAILED,) = struct.unpack("<d", struct.pack("<Q", 0x7FF8_0000_0000_0000 | 502))


def for_calc(rows):
    """Rows of values; a single value is one row of one."""
    return rows if isinstance(rows, tuple) else ((rows,),)
