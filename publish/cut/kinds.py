"""Patches that are cut alike, counted together.

In: patches with their forms, pieces of quicker methods. Out: `Kind`s.
Invariant: two patches are of one kind exactly when they are cut from one fabric, for one
purpose, by the same cuts: congruent under turning, and turned over too where that makes
no difference or is a template's other side; of a print with a direction, only when they
lie alike.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Iterator
from dataclasses import dataclass, field

from publish.cut.classify import NEAR, Cutting, classify
from publish.cut.forms import Form
from publish.model.draft import Patch
from publish.surd import Length
from publish.words.values import Value

PLAIN = "rectangle"
OVERSIZE = "oversize"


@dataclass
class Kind:
    """Pieces cut alike. `patches` are cut one by one, `wholes` pieces are cut besides.

    `cutting` is None for a template, which then comes from `form`; `mirrored` counts the
    patches that are cut with it turned over.
    """

    purpose: str
    fabric: str
    cutting: Cutting | None
    form: Form | None = None
    name: str = ""
    """Where its shape does not say what it is."""
    note: Value | None = None
    single: int = 0
    wholes: int = 0
    mirrored: int = 0
    patches: list[str] = field(default_factory=list)
    """Keys of every patch of the top that comes from it."""
    serves: set[tuple[str, int]] = field(default_factory=set)

    @property
    def shape(self) -> str:
        return "template" if self.cutting is None else self.cutting.shape


class Kinds:
    """The kinds of one size, in the order in which they are met."""

    def __init__(self) -> None:
        self._found: dict[Hashable, Kind] = {}

    def __iter__(self) -> Iterator[Kind]:
        return iter(self._found.values())

    def add_patch(
        self,
        patch: Patch,
        purpose: str,
        form: Form,
        long_side: bool,
        directional: bool,
        note: Value | None = None,
    ) -> Kind:
        """Count a patch among those that are cut as it is."""
        cutting = classify(form, long_side)
        mirrored = False
        if cutting is None:
            key: Hashable = form.laid if directional else form.signature
            if not directional and self._known(purpose, patch.fabric, note, key) is None:
                over = form.mirrored.signature
                if self._known(purpose, patch.fabric, note, over) is not None:
                    key, mirrored = over, True
        else:
            key = size_key(cutting, directional)
        kind = self._near(purpose, patch.fabric, cutting)
        if kind is None:
            kind = self._found.setdefault(
                (purpose, patch.fabric, note, key),
                Kind(purpose, patch.fabric, cutting, form, note=note),
            )
        kind.single += 1
        kind.mirrored += mirrored
        self._serve(kind, (patch,))
        return kind

    def add_pieces(
        self,
        purpose: str,
        fabric: str,
        cutting: Cutting,
        count: int,
        patches: Iterable[Patch],
        name: str = "",
        directional: bool = False,
    ) -> Kind:
        """Count whole pieces, and the patches of the top that come from them."""
        key = (purpose, fabric, None, (*size_key(cutting, directional), name))
        if cutting.shape == PLAIN and not name:
            key = (purpose, fabric, None, size_key(cutting, directional))
        kind = self._found.setdefault(key, Kind(purpose, fabric, cutting, None, name))
        kind.wholes += count
        self._serve(kind, patches)
        return kind

    def _known(self, purpose: str, fabric: str, note: Value | None, key: Hashable) -> Kind | None:
        return self._found.get((purpose, fabric, note, key))

    def _near(self, purpose: str, fabric: str, cutting: Cutting | None) -> Kind | None:
        """Return the kind of all but the same regular shape; it takes the larger size."""
        if cutting is None or not cutting.near:
            return None
        for kind in self._found.values():
            other = kind.cutting
            if other is None or (kind.purpose, kind.fabric) != (purpose, fabric):
                continue
            alike = (other.shape, other.hand) == (cutting.shape, cutting.hand)
            sizes = (other.length, cutting.length), (other.apart, cutting.apart)
            if alike and all(_close(*pair) for pair in sizes):
                kind.cutting = max(other, cutting, key=lambda c: float(c.length))
                return kind
        return None

    @staticmethod
    def _serve(kind: Kind, patches: Iterable[Patch]) -> None:
        for patch in patches:
            kind.patches.append(patch.key)
            if patch.block is not None and patch.spec is not None:
                kind.serves.add((patch.block, patch.spec))


def size_key(cutting: Cutting, directional: bool) -> tuple[Hashable, ...]:
    """Return what cuttings share that give the same piece."""
    sides = [(cutting.width, cutting.finished[0]), (cutting.length, cutting.finished[1])]
    if cutting.shape not in (PLAIN, OVERSIZE):
        sides = [(cutting.width, None), (cutting.length, None)]
    elif not directional:
        sides.sort()
    return (cutting.shape, *sides, cutting.hand)


def _close(one: Length, two: Length) -> bool:
    return abs(float(one) - float(two)) < 2 * NEAR
