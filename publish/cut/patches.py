"""The pieces of the top: patches, motif squares, borders, and what is made quicker.

In: pattern, size, draft. Out: `Top`: needs and batches.
Invariant: every patch of the top is in exactly one need.

Common practice, no source: the square for a folded motif is at least 1 1/2 in larger
than the motif; a ground that carries appliqué is cut larger and trimmed afterwards.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from publish.cut.borders import borders
from publish.cut.classify import ONCE, TWICE, rectangle, right_corner
from publish.cut.edges import Box, Edges
from publish.cut.forms import Form
from publish.cut.foundations import foundation_needs, held_keys
from publish.cut.kinds import PLAIN, Kind, Kinds
from publish.cut.needs import Need, plain
from publish.cut.notes import too_tight_note
from publish.cut.quick import Batch, Quick
from publish.cut.sized import needs_of
from publish.cut.words import piece_called
from publish.model.cutplan import Making
from publish.model.draft import Draft, Patch
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note
from publish.words.values import Length, Said, said

SETTING = {TWICE: "side triangle", ONCE: "corner triangle"}


@dataclass(frozen=True)
class Top:
    """What the patches of a top are cut as, and what is made from it quicker."""

    needs: tuple[Need, ...]
    batches: tuple[Batch, ...]
    notes: tuple[Note, ...] = ()
    """On what cannot be cut."""

    def makings(self, letters: dict[str, str]) -> tuple[Making, ...]:
        """Return the batches with letters, given by a need's key."""
        by_patch = {key: letters[n.key] for n in self.needs if n.key for key in n.patches}
        found = []
        for batch in self.batches:
            rows: Counter[str] = Counter()
            for kind, each in batch.pieces:
                rows[by_patch[kind.patches[0]]] += each
            found.append(
                Making(
                    batch.method,
                    batch.kind,
                    tuple(rows),
                    tuple(rows.values()),
                    batch.batches,
                    batch.makes,
                    batch.count,
                    batch.trim,
                    batch.segment,
                )
            )
        return tuple(found)


def gather(pattern: Pattern, size: Size, draft: Draft) -> Top:
    """Return the needs of every patch that is no border, and the batches."""
    edges, kinds = Edges(pattern, size, draft), Kinds()
    batches, taken = Quick(pattern, edges, kinds).batches(draft.assembly)
    taken |= held_keys(draft.assembly)
    notes = []
    for patch in draft.patches:
        if patch.role != "border" and patch.key not in taken:
            if patch.arcs and edges.form(patch).tight:
                widest = max(edges.allowances(patch))
                notes.append(too_tight_note(pattern, size, patch, widest))
            _add(pattern, size, patch, edges, kinds)
    needs = [*needs_of(pattern, kinds), *foundation_needs(pattern, size, draft)]
    return Top(tuple(needs), tuple(batches), tuple(dict.fromkeys(notes)))


def _add(pattern: Pattern, size: Size, patch: Patch, edges: Edges, kinds: Kinds) -> Kind:
    """Count a patch with its kind."""
    directional = pattern.fabrics[patch.fabric].directional
    form = edges.form(patch, directional)
    if patch.role == "sashing" and rectangle(form) is None and len(form.ring) > 3:
        form = _squared(form)
    long_side = right_corner(form) is not None and edges.straight_long_side(patch)
    purpose = patch.role
    if purpose == "setting":
        purpose = SETTING[TWICE if long_side else ONCE]
    note = _note(pattern, size, edges.block_box(patch), form) if edges.trimmed(patch) else None
    kind = kinds.add_patch(patch, purpose, form, long_side, directional, note)
    if kind.shape == PLAIN and (patch.block is None or edges.trimmed(patch)):
        kind.name = "ground" if patch.role == "ground" else kind.name
    return kind


def _squared(form: Form) -> Form:
    """Return a strip of sashing whose ends slant with its ends square: the box round it."""
    xs, ys = zip(*form.ring, strict=True)
    left, top, right, bottom = min(xs), min(ys), max(xs), max(ys)
    ring = (left, top), (right, top), (right, bottom), (left, bottom)
    return Form(ring, (max(form.allow),) * 4)


def _note(pattern: Pattern, size: Size, box: Box, form: Form) -> Said | None:
    """Return what is trimmed later, of a ground that is the whole of its block."""
    side = box[2] - box[0]
    if form.arcs or len(form.ring) != 4 or form.box != (side, side):
        return None
    # A block that is a whole pillow's front gets the pillow's own seam all round.
    alone = size.pillow is not None and size.block_count == 1 and not size.layers
    seam = size.pillow.seam if alone and size.pillow is not None else pattern.sewing.seam
    trimmed = side + 2 * seam
    return said("trim-square-after-applique", side=Length(trimmed))


def motif_squares(pattern: Pattern, size: Size, draft: Draft) -> list[Need]:
    """Return the squares that motifs are folded and cut from, one need for each motif."""
    found = []
    for key, count in Counter(p.motif for p in draft.placements).items():
        fabric = pattern.motifs[key].fabric
        exact = draft.motifs[key].span + pattern.sewing.motif_margin
        side = pattern.measures.rough_up(exact)
        found.append(
            Need(
                piece_called("motif square"),
                "motif",
                fabric,
                side,
                side,
                count,
                plain(side, side, count, pattern.fabrics[fabric].directional),
                exact_width=exact,
                exact_length=exact,
                motif=key,
            )
        )
    return found


def top_needs(pattern: Pattern, size: Size, draft: Draft, top: Top) -> list[Need]:
    """Return motif squares, patches and borders; `pattern` may sell its fabrics otherwise."""
    return [*motif_squares(pattern, size, draft), *top.needs, *borders(pattern, size, draft)]
