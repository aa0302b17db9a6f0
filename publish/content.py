"""The content of values as one digest: what tells two designs apart, and nothing else.

In: dataclasses, containers, exact numbers, geometry, files. Out: bytes.
Invariant: the same content has the same digest in every process and wherever its folder
lies; line and column of what the designer wrote count for nothing, the path through the YAML
does. A kind of value that is not known here is TypeError, never passed over in silence.
"""

from __future__ import annotations

import dataclasses
import hashlib
from collections.abc import Callable, Iterable, Mapping, Set
from decimal import Decimal
from enum import Enum
from fractions import Fraction
from pathlib import Path
from typing import Any

import numpy as np
from shapely.geometry.base import BaseGeometry

from publish.notes import Place

_PLAIN = (str, int, float, bool, Fraction, Decimal, type(None))


def content(*values: object, passing: Mapping[type, Iterable[str]] | None = None) -> bytes:
    """Return the digest of values; `passing` names fields of a class that do not count."""
    found = hashlib.sha256()
    _tell(values, found.update, {k: frozenset(v) for k, v in (passing or {}).items()}, {})
    return found.digest()


def _tell(
    value: object,
    add: Callable[[bytes], None],
    passing: Mapping[type, frozenset[str]],
    known: dict[int, tuple[bytes, object]],
) -> None:
    """Add a value's kind, how much of it there is, and what it holds."""
    if isinstance(value, Enum):
        add(f"{type(value).__name__}.{value.name};".encode())
    elif isinstance(value, _PLAIN):
        text = repr(value).encode()
        add(b"%d:%s;" % (len(text), text))
    elif isinstance(value, bytes):
        add(b"b%d:" % len(value))
        add(value)
    elif isinstance(value, Place):
        _tell(value.path, add, passing, known)
    elif dataclasses.is_dataclass(value) and not isinstance(value, type):
        add(_of_dataclass(value, passing, known))
    else:
        _tell_many(value, add, passing, known)


def _of_dataclass(
    value: Any, passing: Mapping[type, frozenset[str]], known: dict[int, tuple[bytes, object]]
) -> bytes:
    """Return the digest of a dataclass's fields: once, however often it is met."""
    if id(value) not in known:
        kind = type(value)
        found = hashlib.sha256(kind.__qualname__.encode())
        for name in (field.name for field in dataclasses.fields(kind)):
            if name not in passing.get(kind, ()):
                _tell(getattr(value, name), found.update, passing, known)
        # The value is held as well: its number is its own only as long as it lives.
        known[id(value)] = found.digest(), value
    return known[id(value)][0]


def _tell_many(
    value: object,
    add: Callable[[bytes], None],
    passing: Mapping[type, frozenset[str]],
    known: dict[int, tuple[bytes, object]],
) -> None:
    """Add what holds other values, geometry or a file."""
    if isinstance(value, Mapping):
        add(b"m%d:" % len(value))
        for pair in value.items():
            _tell(pair, add, passing, known)
    elif isinstance(value, tuple | list):
        add(b"l%d:" % len(value))
        for inner in value:
            _tell(inner, add, passing, known)
    elif isinstance(value, Set):
        add(b"s%d:" % len(value))
        for one in sorted(content(inner, passing=passing) for inner in value):
            add(one)
    elif isinstance(value, BaseGeometry):
        add(b"g" + bytes(value.wkb))
    elif isinstance(value, np.ndarray):
        add(f"a{value.dtype}{value.shape}:".encode())
        add(value.tobytes())
    elif isinstance(value, Path):
        add(b"f" + hashlib.sha256(value.read_bytes()).digest() if value.is_file() else b"f-")
    else:
        raise TypeError(f"the content of a {type(value).__qualname__} is not known")
