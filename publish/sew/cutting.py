"""From cloth as it is bought to the pieces of every letter, a fabric at a time.

In: fabric plans. Out: operations of the chapter on cutting.
Invariant: strips are cut in the order of the plan, from no more cloth than is bought; what is
cut from them is put down at the size that the list of pieces has.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from publish.model.cutplan import Cut, FabricPlan, Piece, PrecutPlan, Sheet, Strip
from publish.model.spare import left_long
from publish.operations.cutting import (
    CutOff,
    CutPieces,
    CutSection,
    CutShapes,
    CutStrips,
    SetOutCutting,
    StraightenCloth,
    cloth_heap,
    uncut_heap,
)
from publish.operations.operation import Where
from publish.operations.parts import Part, measured, sheet
from publish.operations.piece_templates import MakeTemplates
from publish.operations.ready_cut import CutReadyCut, SheetStrips
from publish.operations.trusted import Trusted
from publish.sew.bench import Bench, heap, side
from publish.surd import Length

CHAPTER = "cutting"
ONCE, TWICE = "once-cut triangle", "twice-cut triangle"
DIAGONAL = {ONCE: "once", TWICE: "twice"}
SLANTED = ("parallelogram", "diamond")
SHAPED = (*DIAGONAL, *SLANTED, "hexagon", "equilateral triangle", "template")


def plan(bench: Bench) -> None:
    """Lay out the cloth that is bought, and cut everything from it."""
    plans = {f: p for f, p in bench.plan.fabrics.items() if p.precut is not None or p.strips}
    by_length = tuple(cloth_heap(f) for f, p in plans.items() if p.precut is None)
    _buy(bench, plans, by_length)
    if by_length:
        bench.add(StraightenCloth(chapter=CHAPTER, step="straighten", on=by_length))
    on = tuple((cloth_heap(f), 1 if p.precut is None else p.precut.used) for f, p in plans.items())
    if on:
        bench.add(
            SetOutCutting(
                chapter=CHAPTER, step="strips", on=on, within=bench.pattern.measures.finest
            )
        )
    letters = tuple(t.letter for t in bench.plan.templates)
    if letters:
        bench.add(MakeTemplates(chapter=CHAPTER, step="make-templates", letters=letters))
    for key, fabric in plans.items():
        cutter = _Cutter(bench, key, fabric)
        if fabric.precut is not None:
            cutter.ready_cut(fabric.precut)
        else:
            cutter.strips()
        cutter.shapes()


def _buy(bench: Bench, plans: dict[str, FabricPlan], by_length: tuple[str, ...]) -> None:
    """Put on the table what is bought: cloth by length or ready cut, and batting."""
    bought = [
        (_as_sold(key, plan.precut), plan.precut.used)
        if plan.precut is not None
        else (_by_length(bench, key, plan), 1)
        for key, plan in plans.items()
    ]
    batting = bench.plan.batting
    if batting is not None:
        bought.append((sheet("batting", measured(batting.width), measured(batting.height)), 1))
    spare = tuple(heap(p) for p in bench.plan.pieces if p.yields > 1)
    bench.add(
        Trusted(chapter="materials", step="buy", gives=tuple(bought), spare=(*spare, *by_length))
    )


def _by_length(bench: Bench, key: str, plan: FabricPlan) -> Part:
    """Return a length of cloth, of which the shorter purchase is there to cut strips from."""
    cloth, sewing = bench.pattern.fabrics.get(key), bench.pattern.sewing
    shrinkage = Fraction(0) if cloth is None else cloth.shrinkage
    bought = min(plan.buy, plan.buy_metric) * (1 - shrinkage)
    long = bought - sewing.straightening - sewing.mis_cut
    return sheet(cloth_heap(key), measured(plan.usable_width), measured(long))


def _as_sold(key: str, plan: PrecutPlan) -> Part:
    sides = measured(plan.sold_as.width), measured(plan.sold_as.length)
    return sheet(cloth_heap(key), *sides)


class _Cutter:
    """Cuts one fabric of a size."""

    def __init__(self, bench: Bench, fabric: str, plan: FabricPlan) -> None:
        self.bench, self.fabric, self.plan = bench, fabric, plan
        self.where: Where = {"chapter": CHAPTER, "step": fabric}
        cloth = bench.pattern.fabrics.get(fabric)
        self.name = fabric if cloth is None else cloth.name
        self.pieces = {p.letter: p for p in plan.pieces}
        self.long = left_long(bench.plan)
        self.templates = {t.key: t.letter for t in bench.plan.templates}

    def strips(self) -> None:
        """Cut the strips of the layout in order, and each kind at once into its pieces."""
        for at, strip in enumerate(self.plan.strips, start=1):
            last = at == len(self.plan.strips)
            key = f"strips {self.fabric} {at}"
            self.bench.add(
                CutStrips(
                    **self.where,
                    tag=str(at),
                    cloth=cloth_heap(self.fabric),
                    fabric=self.fabric,
                    name=self.name,
                    number=at,
                    of=len(self.plan.strips),
                    strips=key,
                    count=strip.count,
                    depth=strip.depth,
                    squaring=self.bench.pattern.sewing.squaring,
                )
            )
            names = [f"section {self.fabric} {at}.{n}" for n, _ in enumerate(strip.sections, 1)]
            inner = strip.sections[-1].strips if strip.sections else ()
            self._cut(key, strip, str(at), strip.count, names, last and not inner)
            for place, (name, section) in enumerate(zip(names, strip.sections, strict=True), 1):
                for number, own in enumerate(section.strips, 1):
                    done = number == len(section.strips)
                    end = last and done and place == len(names)
                    self._section(name, own, (at, place, number), strip, done, end)

    def _section(
        self,
        name: str,
        own: Strip,
        at: tuple[int, int, int],
        strip: Strip,
        done: bool,
        last: bool,
    ) -> None:
        tag = ".".join(map(str, at))
        key = f"strips {self.fabric} {tag}"
        self.bench.add(
            CutSection(
                **self.where,
                tag=tag,
                section=name,
                count=strip.count,
                place=at[1],
                of=len(strip.sections),
                strips=key,
                each=own.count,
                depth=own.depth,
                last=done,
            )
        )
        self._cut(key, own, tag, strip.count * own.count, [], last)

    def _cut(
        self, key: str, strip: Strip, tag: str, count: int, sections: Sequence[str], last: bool
    ) -> None:
        wide = [section.width for section in strip.sections]
        self.bench.add(
            CutPieces(
                **self.where,
                tag=tag,
                strips=key,
                count=count,
                pieces=tuple(map(self._off, strip.cuts)),
                sections=tuple(zip(sections, wide, strict=True)),
                how=self._how(strip),
                room=strip.used if strip.placements else None,
                rest=self.plan.left if last and self.plan.spare is None else None,
            )
        )

    def _how(self, strip: Strip) -> str:
        if strip.placements:
            return "nested"
        if len(strip.cuts) != 1 or strip.sections or strip.cuts[0].count > 1:
            return "from"
        (cut,) = strip.cuts
        if cut.letter in self.long:
            return "long"
        whole = cut.across == self.plan.usable_width and cut.along == strip.depth
        return "whole" if whole else "from"

    def ready_cut(self, plan: PrecutPlan) -> None:
        """Cut each kind of sheet in the order of the layout."""
        for at, one in enumerate(plan.sheets, start=1):
            strips = tuple(
                SheetStrips(s.count, s.depth, tuple(map(self._off, s.cuts))) for s in one.strips
            )
            self.bench.add(
                CutReadyCut(
                    **self.where,
                    tag=str(at),
                    cloth=cloth_heap(self.fabric),
                    fabric=self.fabric,
                    name=self.name,
                    number=at,
                    of=len(plan.sheets),
                    kind=plan.sold_as.kind,
                    count=one.count,
                    strips=strips,
                    lengthwise=one.lengthwise,
                    whole=_is_whole(plan, one),
                )
            )

    def shapes(self) -> None:
        """Cut triangles, shapes with slanting ends and templates' outlines."""
        for shape, often in DIAGONAL.items():
            mine = [p for p in self.plan.pieces if p.shape == shape]
            if mine:
                pieces = tuple(map(self._shaped, mine))
                self.bench.add(CutShapes(**self.where, tag=often, shape=often, pieces=pieces))
        for piece in self.plan.pieces:
            if piece.shape in SHAPED and piece.shape not in DIAGONAL:
                self.bench.add(
                    CutShapes(
                        **self.where,
                        tag=piece.letter,
                        shape="slant" if piece.shape in SLANTED else piece.shape.replace(" ", "-"),
                        pieces=(self._shaped(piece),),
                        angle=piece.angle,
                        apart=piece.apart,
                        leans=piece.shape == "parallelogram",
                        template=self.templates.get(piece.template, ""),
                    )
                )

    def _shaped(self, piece: Piece) -> tuple[str, int, Part, int]:
        count = piece.count * piece.joined_from
        return piece.letter, count, self._part(piece, heap(piece)), piece.yields

    def _off(self, cut: Cut) -> CutOff:
        piece = self.pieces[cut.letter]
        key = uncut_heap(cut.letter) if piece.shape in SHAPED else heap(piece)
        part = self._part(piece, key)
        return CutOff(
            cut.letter, part, cut.count, (cut.across, cut.along), exact=piece.joined_from == 1
        )

    def _part(self, piece: Piece, key: str) -> Part:
        """Return what a piece is put down as; a strip's width is how deep it is."""
        width = side(piece.width, piece.exact_width)
        length = side(piece.length, piece.exact_length)
        if _lies_across(self.bench, piece):
            width, length = length, width
        if piece.joined_from > 1:
            narrow = min(width, length, key=lambda side: side.exact)
            return sheet(key, narrow, measured(self._each(piece)))
        # Shapes are known by the square or strip that they are cut from.
        return sheet(key, width, length)

    def _each(self, piece: Piece) -> Length:
        """Return how long each length of a joined strip is cut."""
        return next(max(c.across, c.along) for c in self._cuts() if c.letter == piece.letter)

    def _cuts(self) -> Iterator[Cut]:
        yield from (c for strip in self.plan.strips for c in strip.held)
        if self.plan.precut is not None:
            yield from (c for s in self.plan.precut.sheets for t in s.strips for c in t.held)


def _is_whole(plan: PrecutPlan, one: Sheet) -> bool:
    """Return whether a sheet is used as it is sold, as one piece."""
    cuts = [c for strip in one.strips for c in strip.cuts]
    size = plan.sold_as.width, plan.sold_as.length
    return len(cuts) == 1 and cuts[0].count == 1 and (cuts[0].across, cuts[0].along) == size


def _lies_across(bench: Bench, piece: Piece) -> bool:
    """Return whether a strip's length is what the plan calls its width."""
    if piece.purpose == "sleeve":
        return piece.width > piece.length
    if piece.purpose == "binding" and bench.size.binding is not None:
        return piece.length == bench.size.binding.width
    if piece.purpose.startswith("border "):
        number = int(piece.purpose.split()[1]) - 1
        return piece.finished_width != bench.size.borders[number].width
    return False
