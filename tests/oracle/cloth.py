"""A top laid from cut cloth: pieces as they are told, sewn seam by seam, as polygons.

In: one size of `numbers.json` and the seam. Out: the outline of the top as it lies on the
table, and what did not fit. It imports nothing of the program; lengths are floats, and cloth
is rigid. Sewing two parts takes a seam from either and leaves their outlines flush; nothing
is trimmed but what `numbers.json` calls a ground under a motif. Units with slanting seams are
taken as they are told, once triangles are cut that are large enough for them.

`numbers.json` says of how many parts a unit is joined, not of which: they are found by trying,
as of a puzzle: each part is as deep as the seam is long, and every unit is used up.
"""

import re
from collections import Counter
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cached_property

from shapely import affinity
from shapely.geometry import box
from shapely.ops import unary_union

CLOSE = 1 / 32
"""How far the laid top may differ from what is told, inches."""
SMALL = 1e-6
NOT_SEWN = ("motif", "backing", "binding", "sleeve", "pillow back")


def inches(text):
    """Return `2 1/2` or `5/2 + 36√2` as a float."""
    total = 0.0
    for term in re.split(r"\s\+\s", text):
        plain, root, _ = term.partition("√")
        total += float(sum(map(Fraction, plain.split()), Fraction(0)) if plain else 1) * (
            2**0.5 if root else 1
        )
    return total


def dimensions(pair):
    return inches(pair["width"]), inches(pair["height"])


def sewn(first, second, seam, down=False):
    """Return two laid pieces sewn together: the second to the right of the first, or below.

    Each loses a seam's width along the edge where they meet.
    """
    if down:
        return _upright(sewn(_upright(first), _upright(second), seam))
    left, right = at_origin(first), at_origin(second)
    width = left.bounds[2]
    line = box(-1e6, -1e6, width - seam, 1e6)
    shown = right.intersection(box(seam, -1e6, 1e6, 1e6))
    moved = affinity.translate(shown, width - 2 * seam, 0)
    return (
        unary_union([left.intersection(line), moved])
        .buffer(SMALL, join_style="mitre")
        .buffer(-SMALL, join_style="mitre")
    )


def at_origin(shape):
    left, top, _, _ = shape.bounds
    return affinity.translate(shape, -left, -top)


def _upright(shape):
    return affinity.affine_transform(shape, [0, 1, 1, 0, 0, 0])


@dataclass
class Laid:
    """A size laid out: the cloth of each kind of unit, and what went wrong."""

    size: dict
    seam: float
    faults: list = field(default_factory=list)

    @cached_property
    def units(self):
        return {u["kind"]: u for u in self.size["units"]}

    @cached_property
    def order(self):
        return list(self.units)

    def top(self):
        """Return the outline of the last unit, laid from its parts."""
        parts = self.parts()
        if parts is None:
            self.faults.append("no parts make the units that are told")
            return None
        return self._cloth(self.order[-1], parts, {})

    def _cloth(self, kind, parts, made):
        """Return the cloth of a kind of unit, laid once."""
        if kind not in made:
            unit = self.units[kind]
            if parts.get(kind):
                for part in parts[kind]:
                    self._cloth(part, parts, made)
                made[kind] = self._join(unit, parts[kind], made)
            else:
                made[kind] = self._cut(unit)
        return made[kind]

    def _cut(self, unit):
        """Return the cloth of one piece, as it is cut, or of a unit taken as it is told."""
        wide, high = dimensions(unit["before"])
        if _given(unit):
            return self._triangles(unit, wide, high)
        if any(trimmed for *_, trimmed in self._pieces(unit)):
            return self._trimmed(unit)
        best = min(self._pieces(unit), key=lambda p: abs(p[0] - wide) + abs(p[1] - high), default=0)
        if not best:
            self.faults.append(f"{unit['kind']}: no piece is cut for it")
            return box(0, 0, wide, high)
        return box(0, 0, *best[:2])

    def _trimmed(self, unit):
        """Return a ground as it is sewn on: trimmed to its finished size and two seams."""
        wide, high = dimensions(unit["after"])
        return box(0, 0, wide + 2 * self.seam, high + 2 * self.seam)

    def _pieces(self, unit):
        """Yield the rectangles that a leaf may be cut as: width, length, whether trimmed."""
        words = unit["kind"].split(" ")
        for piece in self.size["pieces"]:
            if piece["shape"] != "rectangle" or piece["purpose"] in NOT_SEWN:
                continue
            if words[0] == "patch" and piece["fabric"] not in words[1].split(","):
                continue
            if words[0] != "block" and "trim" in piece["note"]:
                continue
            if words[0] == "border" and piece["purpose"] != unit["kind"]:
                continue
            a, b = inches(piece["width"]), inches(piece["length"])
            trimmed = "trim" in piece["note"]
            yield a, b, trimmed
            yield b, a, trimmed

    def _triangles(self, unit, wide, high):
        """Return a unit of slanting seams as it is trimmed, once triangles are cut for it.

        A square c cut once gives triangles that make a unit of c - √2 seam with its seams; cut
        twice, triangles whose long side is c - (2 + 2√2) seam when sewn (geometry).
        """
        root, reach = 2**0.5, max(wide, high)
        made = [
            inches(piece["width"])
            - (1 if piece["shape"].startswith("once") else 2) * root * self.seam
            for piece in self.size["pieces"]
            if piece["shape"] in ("once-cut triangle", "twice-cut triangle")
        ]
        level = unit["join"] == "slant" and unit["parts"] == 2
        level = level and not unit["turn"] and not unit["made"]
        if level and made and not any(-CLOSE <= m - reach <= 1 / 8 for m in made):
            self.faults.append(f"{unit['kind']}: no triangles are cut for {wide:.3f} in")
        return box(0, 0, wide, high)

    def _join(self, unit, parts, cloth):
        down = unit["join"] == "down"
        along = 1 if down else 0
        whole = None
        for kind, times in parts.items():
            for _ in range(times):
                part = self._as_deep(cloth[kind], unit, along)
                whole = part if whole is None else sewn(whole, part, self.seam, down)
        if "ground" in unit["name"]:  # its outer edges are trimmed when the motif is on
            return self._trimmed(unit) if unit["name"] == "ground" else whole
        self._compare(unit, whole)
        return whole

    def _as_deep(self, part, unit, along):
        """Return a part turned so that it is as deep as the unit, across the seams."""
        part = at_origin(part)
        deep = dimensions(unit["before"])[1 - along]
        turned = _upright(part)
        own, other = part.bounds[3 - along], turned.bounds[3 - along]
        return part if abs(own - deep) <= abs(other - deep) else turned

    def _compare(self, unit, cloth):
        wide, high = dimensions(unit["before"])
        got = at_origin(cloth).bounds[2:]
        if abs(got[0] - wide) > CLOSE or abs(got[1] - high) > CLOSE:
            self.faults.append(
                f"{unit['kind']}: laid {got[0]:.3f} x {got[1]:.3f}, told {wide:.3f} x {high:.3f}"
            )
        ragged = box(0, 0, *got).area - at_origin(cloth).area
        if ragged > CLOSE * (wide + high):
            self.faults.append(f"{unit['kind']}: its parts do not lie level: {ragged:.3f} sq in")

    def parts(self):
        """Return the parts of every joined unit, `{kind: {part: times}}`, or None."""
        left = {kind: unit["count"] for kind, unit in self.units.items()}
        left[self.order[-1]] -= 1
        chosen = {}
        return chosen if self._solve(len(self.order) - 1, left, chosen) else None

    def _solve(self, index, left, chosen):
        if index < 0:
            return True
        kind = self.order[index]
        unit = self.units[kind]
        if left[kind] != 0 and not self._hidden(kind):
            return False
        if unit["join"] is None or _given(unit):
            return self._solve(index - 1, left, chosen)
        for option in self._options(index, unit, left):
            taken = {k: n * unit["count"] for k, n in option.items()}
            for k, n in taken.items():
                left[k] -= n
            chosen[kind] = option
            if self._solve(index - 1, left, chosen):
                return True
            del chosen[kind]
            for k, n in taken.items():
                left[k] += n
        return False

    def _hidden(self, kind):
        """Return whether a kind may go into units whose parts are not looked for."""
        given = any(map(_given, self.size["units"]))
        return given and (kind.startswith("patch") or _given(self.units[kind]))

    def _may_be_sewn(self, unit):
        """Return whether a unit has straight edges: a patch that a rectangle is cut for."""
        if unit["parts"] or not unit["kind"].startswith("patch"):
            return True
        wide, high = dimensions(unit["before"])
        return any(abs(a - wide) < 1 and abs(b - high) < 1 for a, b, _ in self._pieces(unit))

    def _options(self, index, unit, left):
        """Yield the ways to fill a unit with earlier ones, each as deep as the unit."""
        wide, high = dimensions(unit["after"])
        deep, long = (high, wide) if unit["join"] == "across" else (wide, high)
        parts = []
        for kind in reversed(self.order[:index]):
            a, b = dimensions(self.units[kind]["after"])
            lengths = {
                b if abs(a - deep) < SMALL else a
                for _ in (0,)
                if abs(a - deep) < SMALL or abs(b - deep) < SMALL
            }
            most = left[kind] // unit["count"]
            if most > 0 and self._may_be_sewn(self.units[kind]):
                parts += [(kind, length, most) for length in lengths]
        yield from _fill(parts, unit["parts"], long)


def _given(unit):
    """Return whether a unit is taken as it is told: slanting and curved seams, quick ways."""
    joined = unit["join"] not in (None, "across", "down")
    return bool(joined or unit["turn"] or unit["made"] or unit["section"])


def _fill(parts, count, long):
    """Yield `{kind: times}` of so many parts, together so long."""
    if count == 0:
        if abs(long) < SMALL * 10:
            yield {}
        return
    if not parts:
        return
    (kind, length, most), rest = parts[0], parts[1:]
    for times in range(min(count, most), -1, -1):
        if length * times > long + SMALL:
            continue
        for other in _fill(rest, count - times, long - length * times):
            yield Counter({kind: times}) + Counter(other) if times else other


def faults(numbers, key):
    """Return what does not fit when a size is laid from its cut cloth."""
    size = numbers["sizes"][key]
    laid = Laid(size, inches(numbers["seam"]))
    laid.top()
    return laid.faults
