"""Whether each change of a step says one thing that can be done.

In: the values that hold, and the ledger. Out: notes in the ledger; `StepChange`s.
Invariant: a change is one of four: rewrite, put in, take out, move. Whether its step is
there only writing can say, since the steps are written there.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from publish.model.pattern import StepChange
from publish.read.forms import listed
from publish.read.ledger import Ledger

Values = Mapping[str, Any]
_WORDS = ("text", "right", "tip", "caution", "figure")
_SIDES = ("before", "after")
_ACTS = {"step": "replace", "remove": "remove", "move": "move"}


def check_changes(values: Values, ledger: Ledger) -> None:
    """Note each change that says nothing, or two things at once."""
    for number, _ in enumerate(values.get("steps", ())):
        path = f"steps.{number}"
        here = [p.removeprefix(f"{path}.") for p in ledger.places if p.startswith(f"{path}.")]
        written = {p for p in here if "." not in p}
        for key, what, expected, help_ in _faults(written):
            place = ledger.places.get(f"{path}.{key}", ledger.places[path])
            ledger.note(
                "R170",
                place,
                what,
                expected=expected,
                received=", ".join(sorted(written)),
                help=help_,
            )


def _faults(written: set[str]) -> Iterator[tuple[str, str, str, str]]:
    """Yield key, headline, what is expected and what to do, for the keys of one change."""
    acts = [k for k in _ACTS if k in written]
    sides = [k for k in _SIDES if k in written]
    words = [k for k in _WORDS if k in written]
    one = "one of `step`, `before`, `after`, `remove`, `move`"
    if len(acts) > 1:
        yield acts[1], f"{listed(acts)} are two changes", one, "write a change for each"
    elif len(sides) > 1:
        yield sides[1], f"{listed(sides)} are two places", one, "keep one of the two"
    elif not acts and not sides:
        yield "", "the change does not say which step it is about", one, "add `step`, or `after`"
    elif acts == ["move"] and not sides:
        yield "move", "the step is not moved anywhere", "`before` or `after`", "add `after`"
    elif acts and acts != ["move"] and sides:
        help_ = "leave it out; `move` takes a step to another place"
        yield sides[0], f"`{acts[0]}` takes no place", f"`{acts[0]}` alone", help_
    elif acts in (["remove"], ["move"]) and words:
        help_ = "leave it out, or rewrite the step with `step`"
        yield words[0], f"`{acts[0]}` takes no words", f"`{acts[0]}` without words", help_
    elif acts == ["step"] and not words:
        yield "step", "nothing of the step is changed", "`text`, `tip` …", "add `text`"
    elif not acts and "text" not in written:
        yield sides[0], "the new step has no text", "`text`", "add `text`"
    elif acts == ["move"] and "sizes" in written:
        help_ = "leave `sizes` out"
        yield "sizes", "a step is moved for all of its sizes", "no `sizes`", help_


def change_of(values: Values) -> StepChange:
    """Return a change that has no faults."""
    acts = [k for k in _ACTS if k in values]
    side = next((k for k in _SIDES if k in values), None)
    return StepChange(
        action=_ACTS[acts[0]] if acts else "insert",
        step=values[acts[0]] if acts else "",
        beside=values[side] if side else "",
        before=side == "before",
        text=values.get("text"),
        right=_worded(values, "right"),
        tip=_worded(values, "tip"),
        caution=_worded(values, "caution"),
        figure="figure" not in values,
        sizes=tuple(values.get("sizes", ())),
    )


def _worded(values: Values, key: str) -> str | None:
    """Return words as written, nothing for `none`, and None for what is left out."""
    return (values[key] or "") if key in values else None
