"""From kinds of patches to needs: sizes rounded up, rectangles counted, names given.

In: the kinds of one size, its pattern. Out: `Need`s, the largest of a purpose first.
Invariant: a cut size is the exact one rounded up to the grid of the
pattern's measures, and the exact one is kept
beside it where it is a number a + b√2; the rectangles give at least the patches wanted.

Where √2 comes in, handbooks multiply by 1.414 and add 7/8 or 1 1/4 in; where that and the
exact size are not rounded to the same 1/8 in, the larger is cut.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace
from fractions import Fraction

from publish.cut.classify import FROM_STRIPS, ONCE, OVER_ROOT_3, TWICE, Cutting
from publish.cut.forms import FINE
from publish.cut.kinds import PLAIN, Kind
from publish.cut.needs import Need, cloth_of, long_ways, plain
from publish.cut.templates import FLAT, Outline, outline
from publish.cut.words import piece_called
from publish.measures import Measures
from publish.model.pattern import Fabric, Pattern
from publish.surd import ROOT_2, parts
from publish.surd import Length as Exact
from publish.words.values import Count, Length, Rectangle, Said, Several, Value, Word, said, yes

PURPOSES = ("ground", "sashing", "cornerstone", "side triangle", "corner triangle", "foundation")
NAMES = {
    ("cornerstone", PLAIN): "cornerstone",
    ("cornerstone", TWICE): "half cornerstone",
    ("cornerstone", ONCE): "quarter cornerstone",
    ("sashing", PLAIN): "sashing strip",
    ("side triangle", TWICE): "side triangle",
    ("corner triangle", ONCE): "corner triangle",
    ("ground", "template"): "patch from a template",
}
RANKED = tuple(map(piece_called, ("large square for geese", "small square for geese")))
"""Names that say a rank already."""
SIZES = {2: ("large", "small"), 3: ("large", "medium", "small")}


def needs_of(pattern: Pattern, kinds: Iterable[Kind]) -> list[Need]:
    """Return a need for each kind, by purpose, fabric and size."""
    made = [_need(pattern, kind) for kind in kinds]
    fabrics = list(pattern.fabrics)
    ordered = sorted(
        made,
        key=lambda n: (
            PURPOSES.index(n.purpose),
            fabrics.index(n.fabric),
            -n.width * n.length,
            -n.width,
        ),
    )
    named = _told_apart(ordered)
    return [replace(n, key=f"{n.purpose} {i}") for i, n in enumerate(named, start=1)]


def _need(pattern: Pattern, kind: Kind) -> Need:
    fabric = pattern.fabrics[kind.fabric]
    cutting = kind.cutting
    if cutting is None:
        assert kind.form is not None
        return _template(kind, outline(kind.form), fabric, pattern.measures.grid)
    if cutting.shape in FROM_STRIPS:
        return _from_strips(kind, cutting, fabric, pattern.measures)
    if kind.purpose == "sashing" and not fabric.directional:
        cutting = _upright(cutting)
    width, length, note = _rounded(cutting, pattern.measures)
    if cutting.near:
        note = nearly(pattern.measures)
    elif fabric.directional and cutting.yields > 1:
        note = note or said("note-print-turns")
    count = kind.wholes + -(-kind.single // cutting.yields)
    ways = plain(width, length, count, fabric.directional)
    if kind.purpose == "sashing":
        short, long = sorted((width, length))
        ways = long_ways(
            short,
            long,
            count,
            cloth_of(fabric, pattern.measures.grid),
            2 * pattern.sewing.seam,
            level=width > length,
        )
    finished = known(cutting.finished[0]), known(cutting.finished[1])
    return _filled(
        Need(
            called(kind),
            kind.purpose,
            kind.fabric,
            width,
            length,
            count,
            ways,
            *finished,
            note=kind.note or note,
            shape=cutting.shape,
            yields=cutting.yields,
        ),
        kind,
        _exact(cutting),
    )


def _upright(cutting: Cutting) -> Cutting:
    """Return a strip with its length along the fabric, as long strips are cut."""
    if cutting.shape != PLAIN or cutting.width <= cutting.length:
        return cutting
    return replace(
        cutting, width=cutting.length, length=cutting.width, finished=cutting.finished[::-1]
    )


def _rounded(cutting: Cutting, measures: Measures) -> tuple[Fraction, Fraction, Said | None]:
    """Return the cut size, and what is said where the handbooks' rule cuts larger."""
    width, length = measures.up(cutting.width), measures.up(cutting.length)
    if cutting.handbook is None or measures.metric:  # a rule of inch rulers
        return width, length, None
    book = measures.up(cutting.handbook)
    if book <= width:
        return width, length, None
    return book, book, said("note-step-larger")


def _exact(cutting: Cutting) -> tuple[Exact | None, Exact | None]:
    """Return the exact size where all that goes into it is known exactly."""
    if cutting.angle == 60:
        return None, None
    return known(cutting.width), known(cutting.length)


def known(length: Exact | None) -> Exact | None:
    """Return a length, or None for one that `length_of` had to round to a billionth."""
    if length is None or max(part.denominator for part in parts(length)) > FINE // 1000:
        return None
    return length


def _filled(need: Need, kind: Kind, exact: tuple[Exact | None, Exact | None]) -> Need:
    return replace(
        need,
        exact_width=exact[0],
        exact_length=exact[1],
        mirrored=kind.mirrored,
        patches=tuple(kind.patches),
        serves=frozenset() if kind.name == "ground" else frozenset(kind.serves),
    )


def _template(kind: Kind, shape: Outline, fabric: Fabric, step: Fraction) -> Need:
    width, length = shape.box(step)
    count = kind.single
    assert kind.form is not None
    finished = kind.form.box
    left, top, right, bottom = shape.finished.bounds
    bulges = right - left > float(finished[0]) + FLAT or bottom - top > float(finished[1]) + FLAT
    sides: tuple[Exact | None, Exact | None] = (None, None) if bulges else finished
    need = Need(
        called(kind),
        kind.purpose,
        kind.fabric,
        width,
        length,
        count,
        plain(width, length, count, fabric.directional),
        *sides,
        note=kind.note,
        shape="template",
        outline=shape,
    )
    return _filled(need, kind, (None, None))


def _from_strips(kind: Kind, cutting: Cutting, fabric: Fabric, measures: Measures) -> Need:
    """Return strips across the fabric that shapes with slanting ends are cut from.

    Cuts lie `apart`; each uses up that much and its slant of the strip, and the ends of
    the strip are lost to the slant once.
    """
    strip, apart = measures.up(cutting.length), measures.up(cutting.apart)
    steep = cutting.angle == 45
    step: Exact = apart * ROOT_2 if steep else apart * 2 * OVER_ROOT_3
    spare: Exact = strip if steep else strip * OVER_ROOT_3
    if cutting.shape == "equilateral triangle":
        step = spare
    most = max(1, int((cloth_of(fabric).reach - spare) // step))
    count = -(-kind.single // most)
    each = -(-kind.single // count)
    width = measures.up(each * step + spare)
    values: dict[str, Value] = {"count": Count(each), "angle": Count(cutting.angle)}
    note: Value = said("note-cut-apart", **values, apart=Length(apart))
    between: Fraction | None = apart
    if cutting.shape == "equilateral triangle":
        between = None
        note = said("note-cut-in-turn", **values)
    if cutting.near:
        note = Several((note, nearly(measures)), ";")
    need = Need(
        called(kind),
        kind.purpose,
        kind.fabric,
        width,
        strip,
        count,
        plain(width, strip, count, fabric.directional),
        note=note,
        shape=cutting.shape,
        yields=each,
        angle=cutting.angle,
        apart=between,
    )
    return _filled(need, kind, (None, None))


def called(kind: Kind) -> Said:
    """Return what a kind is called."""
    return piece_called(_name(kind))


def _name(kind: Kind) -> str:
    if kind.name:
        return kind.name
    cutting = kind.cutting
    known = NAMES.get((kind.purpose, kind.shape))
    if known is not None or cutting is None:
        return known or f"{kind.purpose} from a template"
    if kind.purpose != "ground":
        return kind.purpose
    if cutting.shape == PLAIN:
        return "square" if cutting.width == cutting.length else "rectangle"
    if cutting.hand:
        return f"parallelogram leaning {'left' if cutting.hand > 0 else 'right'}"
    return cutting.shape


def _told_apart(needs: Sequence[Need]) -> list[Need]:
    """Return needs whose names differ within a purpose and a fabric, largest first."""
    groups: dict[tuple[str, str, Said], list[Need]] = {}
    for need in needs:
        groups.setdefault((need.purpose, need.fabric, need.called), []).append(need)
    given: Counter[tuple[str, str, Said]] = Counter()
    found = []
    for need in needs:
        rank, name = _longer(need, groups[need.purpose, need.fabric, need.called])
        given[need.purpose, need.fabric, name] += 1
        times = given[need.purpose, need.fabric, name]
        # Different shapes may lie in boxes of one size.
        if times > 1:
            name = said("cut-numbered", name=name, number=Count(times))
        found.append(replace(need, called=name, rank=rank, sized=_sized(need)))
    return found


def _longer(need: Need, like: Sequence[Need]) -> tuple[str, Said]:
    """Return a rank, or nothing, and a name with what tells it from those of needs that are
    called the same."""
    sizes = list(dict.fromkeys(n.width * n.length for n in like))
    words = SIZES.get(len(like)) if len(sizes) == len(like) else None
    if len(like) == 1:
        return "", need.called
    if words is None or need.called in RANKED:
        return "", _sized(need)
    rank = words[sizes.index(need.width * need.length)]
    return rank, said("cut-ranked", rank=Word(rank), name=need.called)


def _sized(need: Need) -> Said:
    """Return a name with its size."""
    return said("cut-sized", name=need.called, size=Rectangle(need.width, need.length))


def nearly(measures: Measures) -> Said:
    """Return what is said of a shape that is cut as the regular one that it almost is."""
    return said("note-nearly", metric=yes(measures.metric))
