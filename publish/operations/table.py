"""The table: heaps of parts by what they are and what was done to them, and what is used up.

In: operations, one after another. Out: heaps, moments, `Failing`s.
Invariant: what is taken is gone until it is put back; what is not there is noted once, and
the work goes on as if it had been. Nothing here raises for a mistake in the making.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from publish.measures import INCHES, Measures
from publish.operations.operation import Moment, Operation
from publish.operations.parts import TOLERANCE, Measure, Part, missing
from publish.surd import Length

Maker = type[Operation] | str
"""Who should have left something: a kind of operation, or the key of one."""


@dataclass(frozen=True)
class Failing:
    """Something that an operation needs, or a goal asks for, and that is not so."""

    kind: str
    """`need`, `meet`, `size`, `left` or `goal`."""
    what: str
    operation: Operation | None = None
    """Which needs it; None for a goal."""
    maker: str = ""
    """The operation that should have left it, by its key, or its verb where none was told."""
    part: str = ""
    expected: str = ""
    received: str = ""

    def headline(self, size: str) -> str:
        """Return what fails in one line: the size, both operations, what is not so."""
        if self.operation is None:
            forms = {
                "left": f"{self.what} when the {size} is done",
                "size": f"{self.what} of the {size} when done is not the drafted one",
            }
            return forms.get(self.kind, f"the finished {size} has not {self.what}")
        at = f"{self.operation.key} of the {size}"
        if self.kind == "size":
            return f"{self.what} at {at} is not the drafted one"
        if self.kind == "meet":
            return f"{self.what} at {at} are not equally long"
        by = f", which {self.maker} leaves" if self.maker else ""
        return f"{at} needs {self.what}{by}"


class Table:
    """What lies on the table at one size."""

    def __init__(self, order: Sequence[Operation] = (), measures: Measures = INCHES) -> None:
        self.heaps: Counter[Part] = Counter()
        self.failings: list[Failing] = []
        self.used: Counter[str] = Counter()
        """Tools, templates and materials: how often each was used."""
        self.sewn: dict[str, Length] = {}
        """Inches of seam by purpose."""
        self.spare: set[str] = set()
        """Keys of heaps of which some may be left over."""
        self._order, self._measures = tuple(order), measures
        self._now: Operation | None = None
        self._took: list[tuple[Part, int]] = []
        self._gave: list[tuple[Part, int]] = []
        self._seen: dict[str, Part] = {}
        self._makers: dict[str, str] = {}

    def carry_out(self, operation: Operation) -> Moment:
        """Carry out an operation and return what it took and gave."""
        self._now, self._took, self._gave = operation, [], []
        for tool in operation.uses:
            self.used[tool] += 1
        operation.carry_out(self)
        self._now = None
        return Moment(operation, tuple(self._took), tuple(self._gave))

    def text(self, length: Length) -> str:
        """Return a length as its makers read it, for what fails."""
        return self._measures.text(length)

    # Heaps

    def count(self, key: str) -> int:
        """Return how many parts of a key there are, whatever their state."""
        return sum(n for part, n in self.heaps.items() if part.key == key)

    def there(self, key: str) -> Iterator[tuple[Part, int]]:
        """Yield the heaps of a key."""
        yield from ((part, n) for part, n in self.heaps.items() if part.key == key and n)

    def look(self, key: str) -> Part:
        """Return a part without taking it; a stand-in where there is none."""
        return next((part for part, _ in self.there(key)), None) or self._lacking(key, 1, 0)

    def take(self, key: str, count: int = 1, by: Maker | None = None, having: str = "") -> Part:
        """Take parts that are alike, those first that have a state, and return one of them.

        Where there are too few, that is noted with who should have made them (`by`), and
        what was last seen of them stands in.
        """
        heaps = sorted(self.there(key), key=lambda heap: (not heap[0].is_(having), -heap[1]))
        found = next((part for part, n in heaps if n >= count), None)
        if found is None:
            have = sum(n for _, n in heaps)
            found = heaps[0][0] if heaps else self._lacking(key, count, have, by)
            if heaps:
                self._lacking(key, count, have, by)
            for part, n in heaps:
                self.heaps[part] -= min(n, count)
        else:
            self.heaps[found] -= count
        self.heaps += Counter()  # drops what is used up
        self._took.append((found, count))
        return found

    def put(self, part: Part, count: int = 1) -> None:
        """Put parts on the table."""
        self.heaps[part] += count
        self._gave.append((part, count))
        self._seen[part.key] = part
        if self._now is not None:
            self._makers[part.key] = self._now.key

    def _lacking(self, key: str, count: int, have: int, by: Maker | None = None) -> Part:
        if count <= have:
            self._fail("need", f"{count} of {key}, alike", by, key)
        else:
            self._fail(
                "need",
                f"{key}" if count == 1 else f"{count} of {key}",
                by,
                key,
                str(count),
                str(have),
            )
        return self._seen.get(key) or missing(key)

    # Needs

    def need(
        self,
        met: bool,
        what: str,
        *,
        by: Maker | None = None,
        part: Part | None = None,
        expected: str = "",
        received: str = "",
    ) -> bool:
        """Note that something is not so which the operation needs; return whether it is.

        `by` is who should have left it so. A part that only stands in needs nothing.
        """
        if not met and (part is None or part.known):
            self._fail("need", what, by, part.key if part else "", expected, received)
        return met

    def meet(self, what: str, one: Measure, other: Measure, *parts: Part) -> None:
        """Hold two edges that are sewn together against each other.

        Exactly they are equal; as told they may differ by `TOLERANCE`.
        """
        if any(not part.known for part in parts):
            return
        names = " and ".join(dict.fromkeys(part.key for part in parts))
        if one.exact != other.exact:
            self._fail("meet", what, None, names, self.text(one.exact), self.text(other.exact))
        elif abs(one.told - other.told) > TOLERANCE:
            told = self.text(one.told), self.text(other.told)
            self._fail("meet", f"{what}, as told", None, names, *told)

    def drafted(
        self, part: Part, width: Length | None, height: Length | None, eased: int = 1
    ) -> Part:
        """Hold a part against its size in the draft, raw edge to raw edge; None is not asked.

        What is told may miss it by `TOLERANCE` for each of the parts that it is `eased` over.
        Return the part, at the drafted size where it missed it: one miss is noted once.
        """
        if not part.known:
            return part
        sides = (("width", part.width, width), ("height", part.height, height))
        found = []
        for name, side, asked in sides:
            right = side
            if asked is not None and (side.exact != asked or side.drift > TOLERANCE * eased):
                right = Measure(asked, asked)
                said = "" if side.exact != asked else ", as told"
                shown = side.told if said else side.exact
                self._fail(
                    "size",
                    f"the {name} of the {part.key}{said}",
                    None,
                    part.key,
                    self.text(asked),
                    self.text(shown),
                )
            found.append(right)
        return part.sized(*found)

    def goal(
        self,
        met: bool,
        what: str,
        *,
        by: Maker | None = None,
        part: str = "",
        expected: str = "",
        received: str = "",
        kind: str = "goal",
    ) -> None:
        """Note what the finished work lacks."""
        if not met:
            self._fail(kind, what, by, part, expected, received)

    # What is used up

    def sew(self, purpose: str, length: Measure | Length) -> None:
        """Take down a seam: thread follows from it."""
        exact = length.exact if isinstance(length, Measure) else length
        self.sewn[purpose] = self.sewn.get(purpose, 0) + exact

    def use(self, *what: str) -> None:
        """Take down tools, templates or materials that are used."""
        self.used.update(what)

    def _fail(
        self,
        kind: str,
        what: str,
        by: Maker | None,
        part: str,
        expected: str = "",
        received: str = "",
    ) -> None:
        made_by = self._maker(by) or self._makers.get(part.split(" and ")[0], "")
        if self._now is not None and made_by == self._now.key:
            made_by = ""
        failing = Failing(kind, what, self._now, made_by, part, expected, received)
        if failing not in self.failings:
            self.failings.append(failing)

    def _maker(self, by: Maker | None) -> str:
        """Return the key of the operation that should have left something.

        It may stand later in the order, or not be told at all; its verb is named then.
        """
        if by is None:
            return ""
        if isinstance(by, str):
            return by
        mine = [o for o in self._order if isinstance(o, by)]
        same = [o for o in mine if self._now is not None and o.chapter == self._now.chapter]
        return next((o.key for o in same or mine), by.__name__)
