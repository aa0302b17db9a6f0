"""From element to element through a drawing, gathering what is drawn.

In: a parsed file and its style rules. Out: `Shape`s with their matrices and styles.
Invariant: every transform between an element and the drawing is applied once; what cannot
be drawn is a note at its own line; repeated elements cannot repeat without end.

Filled shapes are cloth; a stroked shape without fill is cloth as wide as its stroke.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from xml.etree.ElementTree import Element

import numpy as np

from publish.draft.curves import Points
from publish.draft.limits import MAX_NUMBERS
from publish.draft.shapes import (
    DRAWN,
    NUMBER,
    DrawingError,
    Subpath,
    length,
    subpaths,
    transform,
)
from publish.draft.style import Rules, Style, style_of
from publish.draft.viewport import root_matrix, root_view, viewport
from publish.notes import Note, Place, Severity, error, warning
from publish.svgfile import MAX_DEPTH, MAX_ELEMENTS, SvgFile, href, local

_GROUPS = ("g", "a", "svg", "switch")
_SILENT = (
    "defs",
    "symbol",
    "clipPath",
    "mask",
    "marker",
    "pattern",
    "linearGradient",
    "radialGradient",
    "filter",
    "metadata",
    "title",
    "desc",
    "style",
    "",
)


@dataclass(frozen=True)
class Shape:
    """One shape in its own coordinates, and the matrix that takes it to the drawing's."""

    subpaths: tuple[Subpath, ...]
    matrix: Points
    style: Style
    stroke: float
    """Stroke width in the shape's own coordinates; 0 for filled shapes."""
    place: Place


@dataclass(frozen=True)
class Context:
    """What an element gets from those around it; `uses` are the elements being repeated."""

    matrix: Points
    style: Style
    view: tuple[float, float]
    uses: tuple[Element, ...] = ()


@dataclass
class Walk:
    """Goes through the elements that are drawn and gathers their shapes."""

    svg: SvgFile
    rules: Rules
    notes: list[Note]
    shapes: list[Shape] = field(default_factory=list)
    numbers: int = 0
    visits: int = 0

    @property
    def failed(self) -> bool:
        return any(n.severity is Severity.ERROR for n in self.notes)

    def above(self, element: Element) -> Context:
        """Return the context that an element's ancestors give it."""
        line: list[Element] = []
        while element in self.svg.parents:
            element = self.svg.parents[element]
            line.insert(0, element)
        view = root_view(self.svg.root)
        context = Context(root_matrix(self.svg.root), Style(), view)
        for ancestor in line:
            context = self.enter(ancestor, context)
        return context

    def enter(self, element: Element, context: Context) -> Context:
        """Return the context inside an element: its style, transform and viewport."""
        style = style_of(element, context.style, self.rules)
        if self.rules.too_many and self.visits <= MAX_ELEMENTS:
            self.note_limit(element, "there are too many styles")
            self.visits = MAX_ELEMENTS + 1
        matrix, view = context.matrix, context.view
        try:
            matrix = matrix @ transform(element.get("transform") or "")
            if local(element) == "svg" and element in self.svg.parents:
                inner, view = viewport(element, element, view)
                matrix = matrix @ inner
        except DrawingError as fault:
            self.fault(element, fault)
        return replace(context, matrix=matrix, style=style, view=view)

    def draw(self, element: Element, context: Context) -> None:
        """Gather what an element draws, everything inside it included."""
        self.visits += 1
        if self.visits > MAX_ELEMENTS or len(context.uses) > MAX_DEPTH:
            if self.visits <= MAX_ELEMENTS + 1:
                self.note_limit(element, "elements repeat too often")
                self.visits = MAX_ELEMENTS + 1
            return
        name = local(element)
        used = name == "symbol" and bool(context.uses)
        if (name in _SILENT and not used) or self.is_mark(element):
            return
        inside = self.enter(element, context)
        if not inside.style.display:
            return
        self.effects(element, inside.style)
        if name in _GROUPS or name == "symbol":
            for child in element:
                self.draw(child, inside)
        elif name == "use":
            self.use(element, inside)
        elif name in DRAWN:
            self.shape(element, inside)
        else:
            self.notes.append(
                warning(
                    "D307",
                    self.svg.places[element],
                    f"<{name}> is not a shape and is left out",
                    help="turn text into paths and trace pictures, or delete them",
                )
            )

    def is_mark(self, element: Element) -> bool:
        return element.get("id") == "centre" and local(element) in DRAWN

    def effects(self, element: Element, style: Style) -> None:
        what = style.effect or ("transform as a style" if style.moved else "")
        if what:
            self.notes.append(
                warning(
                    "D312",
                    self.svg.places[element],
                    f"{what} is not applied",
                    help="apply it to the shape in your drawing program, then save again",
                )
            )

    def use(self, element: Element, context: Context) -> None:
        """Draw the element that a <use> repeats."""
        target = self.svg.by_id.get(href(element)[1:]) if href(element) else None
        if target is None or target in context.uses or element in context.uses:
            why = "is not in the drawing" if target is None else "repeats itself"
            self.notes.append(
                error(
                    "D308",
                    self.svg.places[element],
                    f"the element that <use> repeats {why}",
                    received=href(element)[:60] or "no href",
                    help="draw the shape itself instead of a reference to it",
                )
            )
            return
        try:
            moved = np.eye(3)
            moved[0, 2] = length(element.get("x") or "0", context.view[0], "x")
            moved[1, 2] = length(element.get("y") or "0", context.view[1], "y")
            view = context.view
            if local(target) == "symbol":
                inner, view = viewport(target, element, view, placed=False)
                moved = moved @ inner
        except DrawingError as fault:
            self.fault(element, fault)
            return
        uses = (*context.uses, target)
        self.draw(target, replace(context, matrix=context.matrix @ moved, view=view, uses=uses))

    def shape(self, element: Element, context: Context) -> None:
        """Gather one shape, unless it is hidden or neither filled nor stroked."""
        style = context.style
        line = local(element) == "line"
        if not style.visible or not (style.stroke or (style.fill and not line)):
            return
        data = element.get("d") or element.get("points") or ""
        self.numbers += sum(1 for _ in NUMBER.finditer(data))
        if self.numbers > MAX_NUMBERS:
            self.note_limit(element, "the shapes hold too many numbers")
            self.visits = MAX_ELEMENTS + 1
            return
        try:
            paths = subpaths(element, context.view)
            both = math.hypot(*context.view) / math.sqrt(2)
            stroke = 0.0 if style.fill and not line else length(style.width, both, "stroke-width")
            limit = float(length(style.limit, 1, "stroke-miterlimit"))
        except DrawingError as fault:
            self.fault(element, fault)
            return
        if paths and (stroke > 0 or (style.fill and not line)):
            style = replace(style, limit=str(max(limit, 1.0)))
            place = self.svg.places[element]
            self.shapes.append(Shape(paths, context.matrix, style, stroke, place))

    def fault(self, element: Element, fault: DrawingError, code: str = "D309") -> None:
        note = error(
            code,
            self.svg.places[element],
            str(fault),
            help="correct the value, or redraw and save the shape again",
        )
        if note not in self.notes:
            self.notes.append(note)

    def note_limit(self, element: Element, what: str) -> None:
        self.notes.append(
            error(
                "D302",
                self.svg.places[element],
                what,
                help="simplify the drawing, or save only the motif",
            )
        )
