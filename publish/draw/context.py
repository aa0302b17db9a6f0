"""What every drawing is given, and how it says that it cannot draw.

In: the stage's inputs. Out: `Context` and `Drawing`, the type of each kind's function.
Invariant: a drawing reads its numbers from here and computes none of its own.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.style import NARROW_COLUMN, TEXT_COLUMN, Palette
from publish.model.book import Paper
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, MotifShape
from publish.model.figure import Figure, Picture
from publish.model.pattern import Motif, Pattern
from publish.model.size import Size
from publish.model.words import FigureSpec, Manual
from publish.words import Language


class CannotDrawError(Exception):
    """A figure asks for something that is not there; becomes a note with the figure's key."""


@dataclass(frozen=True)
class Context:
    """The inputs of the stage and the palette they give."""

    pattern: Pattern
    sizes: Mapping[str, Size]
    drafts: Mapping[str, Draft]
    plans: Mapping[str, CutPlan]
    manual: Manual
    paper: Paper
    palette: Palette
    pictures: Mapping[str, Picture] = field(default_factory=dict)
    """Computed pictures: `cover`, rows of all sizes, and one for each colourway."""

    @property
    def words(self) -> Language:
        """Return the language that labels and alternative texts are in."""
        return self.pattern.words

    @property
    def labels(self) -> Labels:
        """Return how lengths are set in this pattern's figures."""
        return Labels(self.words)

    def canvas(self, width: float, height: float) -> Canvas:
        """Return an empty canvas of so many inches, lettered in the pattern's language."""
        return Canvas(width, height, self.labels)

    @property
    def column(self) -> float:
        """Return the printed width of a full figure on this paper, in inches."""
        return NARROW_COLUMN if self.paper.parent else TEXT_COLUMN

    def size(self, spec: FigureSpec) -> Size:
        """Return the figure's size, or the pattern's first where it names none."""
        return self.sizes[self._key(spec, self.sizes)]

    def draft(self, spec: FigureSpec) -> Draft:
        return self.drafts[self._key(spec, self.drafts)]

    def plan(self, spec: FigureSpec) -> CutPlan:
        return self.plans[self._key(spec, self.plans)]

    def motif(self, spec: FigureSpec) -> tuple[Motif, MotifShape]:
        """Return the motif a figure names with `motif`, or the first that its size uses."""
        shapes = self.draft(spec).motifs
        key = spec.get("motif") or next(iter(shapes), "")
        if key not in shapes:
            raise CannotDrawError(f"there is no motif {key!r} at this size")
        return self.pattern.motifs[key], shapes[key]

    def colour(self, fabric: str) -> str:
        """Return a fabric's colour by its key."""
        if fabric not in self.pattern.fabrics:
            raise CannotDrawError(f"there is no fabric {fabric!r}")
        return self.pattern.fabrics[fabric].colour

    def _key(self, spec: FigureSpec, known: Mapping[str, object]) -> str:
        key = spec.size or next(iter(known), "")
        if key not in known:
            raise CannotDrawError(f"there is no size {key!r}")
        return key


Drawing = Callable[[Context, FigureSpec], Figure]
