"""What is alike is matched by what is on the table, and filed by what it means.

The small pattern's figures: a flying geese unit 4 x 8 in from one square cut twice on the
diagonal, 8 + 1 1/4 in, and small squares cut once, 4 + 7/8 in; made four at once from the
same squares (common practice, no source).
"""

import tempfile
from dataclasses import replace
from functools import cache
from pathlib import Path

from helpers import pattern

from publish import comparing
from publish.compare import compare

HEAD = """title: Lode
fabrics:
  mist: {name: Mist, colour: "#f4efe6"}
  moss: {name: Moss, colour: "#3f5a3c"}
blocks:
  geese: {traditional: flying geese, fabrics: {geese: moss, background: mist}}
"""
MINI = "  mini: {title: Mini, columns: 2, rows: 2, block: geese, block_size: 8 in%s}\n"
THROW = "  throw: {title: Throw, columns: 3, rows: 3, block: geese, block_size: 12 in}\n"
FOUR = "piecing: {geese: four at once}\n"


@cache
def edition(text):
    with tempfile.TemporaryDirectory() as folder:
        return comparing.opened(pattern(Path(folder), text, drawings=()))


def changes(one, other):
    return compare(edition(one), edition(other))


PLAIN = f"{HEAD}sizes:\n{MINI % ''}{THROW}"


def test_sizes_only_listed_in_another_order_are_no_change():
    both = f"{HEAD}sizes:\n{THROW}{MINI % ''}"
    # What is told for both at once is pictured in the first of them, and says in which.
    (pictured,) = changes(PLAIN, both)
    told = [(kind, text) for kind, text in pictured.words if kind != "same"]
    assert pictured.consequence == "cosmetic" and told == [("gone", "Mini."), ("new", "Throw.")]


def test_blocks_that_are_turned_are_told_with_their_row():
    found = changes(PLAIN, f"{HEAD}sizes:\n{MINI % ', turns: [0, 90]'}{THROW}")
    (turned,) = [c for c in found if c.subject == "turns"]
    assert turned.consequence == "sewn" and turned.size == "mini"
    assert "row 1 by 0, 90 degrees, not 0, 0" in turned.sentence


def test_one_patch_turned_within_a_block_is_told():
    """Of four squares two and two alike: a pair laid the other way is another block, from the
    same pieces."""
    rows = "  p: {ground: {rows: [[mist, moss], [moss, mist]]}}\n"
    head = HEAD.partition("blocks:")[0] + "blocks:\n"
    size = "sizes:\n  mini: {title: Mini, columns: 2, rows: 2, block: p, block_size: 8 in}\n"
    turned = rows.replace("[[mist, moss], [moss, mist]]", "[[mist, moss], [mist, moss]]")
    found = changes(head + rows + size, head + turned + size)
    (told,) = [c for c in found if c.subject == "units"]
    assert told.consequence == "sewn" and "put together in another way" in told.sentence
    assert not [c for c in changes(PLAIN, PLAIN) if c.subject == "units"]


def test_pieces_that_are_cut_alike_are_never_cut_again():
    """Of four at once and singly both the large squares and, in the mini, the small ones
    are the same: only how many is another number, and what is done with them."""
    four = f"{HEAD}{FOUR}sizes:\n{MINI % ''}{THROW}"
    for old, new in ((PLAIN, four), (four, PLAIN)):
        found = [c for c in changes(old, new) if c.subject == "piece"]
        assert not [c for c in found if "cut them again" in c.advice or "do not" in c.sentence]


def test_a_piece_is_matched_by_its_measures_before_its_letter():
    old = edition(PLAIN)
    size = old.sizes["mini"]
    first, second = size.pieces[:2]
    swapped = replace(first, letter=second.letter), replace(second, letter=first.letter)
    new = replace(
        old, sizes={**old.sizes, "mini": replace(size, pieces=(*swapped, *size.pieces[2:]))}
    )
    found = [c for c in compare(old, new) if c.subject == "piece"]
    assert len(found) == 2 and all("is now called" in c.sentence for c in found)
    assert not any(c.advice for c in found)


def test_a_step_is_moved_only_for_those_who_read_it():
    old = edition(PLAIN)
    assert any(s.sizes for s in old.steps)
    mini_last = tuple(sorted(old.steps, key=lambda s: s.sizes == ("mini",)))
    assert {c.subject for c in compare(old, replace(old, steps=mini_last))} <= {"step"}
    throw = tuple(s for s in old.steps if s.sizes == ("throw",))
    turned = iter(reversed(throw))
    moved = tuple(next(turned) if s.sizes == ("throw",) else s for s in old.steps)
    assert (
        len([c for c in compare(old, replace(old, steps=moved)) if "now comes" in c.sentence]) > 0
    )


def test_a_licence_binds_whatever_has_been_done():
    new = replace(edition(PLAIN), licence="For your own use; do not sell what you make.")
    (change,) = compare(edition(PLAIN), new)
    assert (change.subject, change.consequence) == ("licence", "safety")


def test_words_with_other_figures_are_no_cosmetic_change():
    old = edition(PLAIN)
    prose = replace(old.prose[0], text="Lines of quilting lie no more than 8 in apart.")
    one = replace(old, prose=(*old.prose, prose))
    for text, consequence in (("4 in apart", "sewn"), ("8 in from each other", "cosmetic")):
        said = prose.text.replace("8 in apart", text)
        other = replace(old, prose=(*old.prose, replace(prose, text=said)))
        assert [c.consequence for c in compare(one, other)] == [consequence]
