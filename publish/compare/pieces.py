"""What has to be cut otherwise: pieces, backing, binding, and how they lie on the cloth.

In: two editions under the same keys. Out: changes.
Invariant: whether a piece that is cut already can be trimmed is decided on exact lengths.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction
from typing import Any

from publish.compare.model import COSMETIC, CUT, Change, Edition, Piece, SizeEdition
from publish.units import fraction_text
from publish.words.en.phrase import counted, number
from publish.words.lengths import Lengths

SAY = Lengths()


def find(old: Edition, new: Edition) -> Iterator[Change]:
    """Yield every change of what is cut."""
    for key in (k for k in new.sizes if k in old.sizes):
        before, after = old.sizes[key], new.sizes[key]
        for was, is_ in _pairs(before.pieces, after.pieces):
            yield from _piece(old, new, after, was, is_)
        yield from _backing(before, after)
        yield from _binding(before, after)
        yield from _layouts(new, before, after)


_ALIKE: tuple[Callable[[Piece], tuple[object, ...]], ...] = (
    lambda p: (p.purpose, p.fabric, p.width, p.length, p.letter),
    lambda p: (p.purpose, p.fabric, p.width, p.length),
    lambda p: (p.fabric, p.width, p.length, p.letter),
    lambda p: (p.fabric, p.width, p.length),
    lambda p: (p.purpose, p.fabric, p.letter),
    lambda p: (p.purpose, p.fabric),
    lambda p: (p.purpose,),
)
"""What two pieces have in common that serve as one, the surest first. What is cut already
counts before what it is called: letters move when pieces come or go."""


def _pairs(
    old: tuple[Piece, ...], new: tuple[Piece, ...]
) -> Iterator[tuple[Piece | None, Piece | None]]:
    """Yield the pieces of two editions that serve as one, and those that have no other."""
    found: dict[int, Piece] = {}
    left = list(old)
    for alike in _ALIKE:
        for at, piece in enumerate(new):
            same = [p for p in left if alike(p) == alike(piece)] if at not in found else []
            if same:
                found[at] = same[0]
                left.remove(same[0])
    yield from ((found.get(at), piece) for at, piece in enumerate(new))
    yield from ((piece, None) for piece in left)


def _size(piece: Piece) -> tuple[Fraction, Fraction]:
    return piece.width, piece.length


def _piece(
    old: Edition, new: Edition, size: SizeEdition, was: Piece | None, is_: Piece | None
) -> Iterator[Change]:
    if is_ is None:
        assert was is not None
        sentence = f"{size.title}: do not cut {_called(was)}; it is no longer part of this size."
        yield Change(CUT, "piece", sentence, "", size.key, _values(was))
    elif was is None:
        sentence = (
            f"{size.title}: cut {is_.count} of {_called(is_)} from {_name(new, is_.fabric)}, "
            f"{SAY.rectangle(*_size(is_))}; it is new in this size."
        )
        yield Change(CUT, "piece", sentence, "", size.key, {}, _values(is_))
    elif said := _said(old, new, was, is_):
        sentence = f"{size.title}: {'; '.join(said)}."
        advice = " ".join(a for a in (_fits(was, is_), _enough(was, is_)) if a)
        yield Change(CUT, "piece", sentence, advice, size.key, _values(was), _values(is_))


def _said(old: Edition, new: Edition, was: Piece, is_: Piece) -> list[str]:
    """Return everything that a maker does otherwise with a piece."""
    called = _called(is_)
    parts = []
    if _size(was) != _size(is_):
        parts.append(f"cut {called} {SAY.rectangle(*_size(is_))}, not {SAY.rectangle(*_size(was))}")
    if was.count != is_.count:
        parts.append(f"cut {is_.count} of {called}, not {was.count}")
    if was.fabric != is_.fabric:
        parts.append(
            f"cut {called} from {_name(new, is_.fabric)}, not from {_name(old, was.fabric)}"
        )
    if was.joined_from != is_.joined_from:
        lengths, before = counted(is_.joined_from, "length"), number(was.joined_from)
        joined = f"join {called} from {lengths}, not {before}"
        parts.append(joined if is_.joined_from > 1 else f"{called} is no longer joined")
    if was.letter != is_.letter:
        now = is_.letter if was.name == is_.name else called
        parts.append(f"piece {was.letter} ({was.name}) is now called {now}")
    if was.note != is_.note:
        parts.append(
            f"of {called} the table now says “{is_.note}”"
            if is_.note
            else f"of {called} the table no longer says “{was.note}”"
        )
    if was.may_turn and not is_.may_turn:
        parts.append(f"{called} may no longer be turned on the cloth")
    return parts


def _called(piece: Piece) -> str:
    return f"{piece.letter} ({piece.name})"


def _name(edition: Edition, fabric: str) -> str:
    return edition.fabrics[fabric].name if fabric in edition.fabrics else fabric


def _values(piece: Piece) -> dict[str, str]:
    return {
        "letter": piece.letter,
        "fabric": piece.fabric,
        "width": fraction_text(piece.width),
        "length": fraction_text(piece.length),
        "count": str(piece.count),
    }


def _fits(was: Piece, is_: Piece) -> str:
    """Return what can be made of pieces that are cut to the old size."""
    if was.fabric != is_.fabric:
        return "Those you have cut are of the other fabric: cut them again."
    old, new = _size(was), _size(is_)
    if old == new:
        return ""
    ways = [old, old[::-1]] if is_.may_turn else [old]
    if any(new[0] <= w and new[1] <= l for w, l in ways):  # noqa: E741
        return "Those you have cut can be trimmed."
    return "Those you have cut are too small: cut them again."


def _enough(was: Piece, is_: Piece) -> str:
    more = is_.count - was.count
    if not more or was.fabric != is_.fabric:
        return ""
    if more > 0:
        return f"Cut {number(more)} more."
    return (
        f"{number(-more).capitalize()} of those you have cut {'is' if more == -1 else 'are'} over."
    )


def _backing(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    was, is_ = before.backing, after.backing
    if was is None or is_ is None:
        return
    names = ("width", "height", "panels", "seams", "half_panel")
    if all(was[n] == is_[n] for n in names):
        return
    parts = []
    if (was["width"], was["height"]) != (is_["width"], is_["height"]):
        sizes = [SAY.rectangle(b["width"], b["height"]) for b in (is_, was)]
        parts.append(f"the backing is joined to {sizes[0]}, not {sizes[1]}")
    if was["panels"] != is_["panels"]:
        parts.append(
            f"the backing takes {counted(is_['panels'], 'panel')}, not {number(was['panels'])}"
        )
    if was["seams"] != is_["seams"]:
        said = {
            "none": "the backing has no seam",
            "vertical": "the backing's seams run from top to bottom",
            "horizontal": "the backing's seams run from side to side",
        }
        parts.append(said.get(is_["seams"], f"the backing's seams are {is_['seams']}"))
    if was["half_panel"] != is_["half_panel"] and not parts:
        parts.append("the backing's panels are placed in another way")
    smaller = is_["width"] <= was["width"] and is_["height"] <= was["height"]
    advice = (
        "A backing that you have joined is large enough."
        if smaller
        else (f"A backing of {SAY.rectangle(was['width'], was['height'])} is too small.")
    )
    yield Change(
        CUT,
        "backing",
        f"{after.title}: {'; '.join(parts)}.",
        advice,
        after.key,
        _plain(was, names),
        _plain(is_, names),
    )


def _plain(part: Mapping[str, Any], names: tuple[str, ...]) -> dict[str, str]:
    """Return values as text, lengths exactly."""
    found = {n: part[n] for n in names if part[n] is not None}
    return {n: fraction_text(v) if isinstance(v, Fraction) else str(v) for n, v in found.items()}


def _binding(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    was, is_ = before.binding, after.binding
    if was is None and is_ is None:
        return
    if was is None or is_ is None:
        said = "is bound" if was is None else "is no longer bound"
        yield Change(CUT, "binding", f"{after.title}: this size {said}.", "", after.key)
        return
    names = ("length", "cut")
    if all(was[n] == is_[n] for n in names):
        return
    parts = []
    if was["length"] != is_["length"]:
        lengths = SAY.measure(is_["length"]), SAY.measure(was["length"])
        parts.append(f"the binding is {lengths[0]} long, not {lengths[1]}")
    if was["cut"] != is_["cut"]:
        parts.append(f"the binding is cut {is_['cut']}, not {was['cut']}")
    yield Change(
        CUT,
        "binding",
        f"{after.title}: {'; '.join(parts)}.",
        "",
        after.key,
        _plain(was, names),
        _plain(is_, names),
    )


def _layouts(new: Edition, before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    """Yield fabrics that are cut into the same pieces in another way."""
    for key, cloth in after.fabrics.items():
        was = before.fabrics.get(key)
        pieces = [[p for p in s.pieces if p.fabric == key] for s in (before, after)]
        if was is not None and was.layout != cloth.layout and pieces[0] == pieces[1]:
            name = new.fabrics[key].name if key in new.fabrics else key
            yield Change(
                COSMETIC,
                "layout",
                f"{after.title}: {name} is laid out for cutting in another way.",
                "The pieces are the same: what you have cut is right.",
                after.key,
            )
