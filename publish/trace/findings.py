"""What a photo's findings say, and what to do about each.

In: a place, what was measured. Out: notes.
Invariant: the codes are those of drafting, since a traced photo is a drawing; each tells
what a designer can do with paper, light or camera.
"""

from __future__ import annotations

from publish.notes import Note, Place, error, warning

UNREAD = "D382"
"""Of what a width that is said makes up for."""


def no_paper(place: Place) -> Note:
    return error(
        "D372",
        place,
        "no cut paper can be told from what it lies on",
        expected="paper of one colour on a ground of another",
        help="lay it on something much darker or lighter, without stripes; light it evenly from "
        "the side",
    )


def cut_off(place: Place, side: str) -> Note:
    return error(
        "D373",
        place,
        "the paper runs off the picture",
        expected="ground to be seen all round the paper",
        received=f"paper at the {side} edge",
        help="step back, or move the paper to the middle",
    )


def blurred(place: Place, spread: float) -> Note:
    return error(
        "D374",
        place,
        "the picture is too blurred to trace",
        expected="an edge that turns from ground to paper within 1 % of the motif",
        received=f"{_tenths(spread)} of the motif",
        help="hold the camera still, tap the paper to focus, and go nearer",
    )


def too_small(place: Place, pixels: float) -> Note:
    return error(
        "D371",
        place,
        "the motif is too small in the picture",
        expected="at least 250 pixels across",
        received=f"{pixels:.0f} pixels",
        help="go nearer, until the paper fills most of the picture",
    )


def no_repeat(place: Place, folds: int | None) -> Note:
    what = "does not repeat on any folds" if folds is None else f"does not repeat on {folds} folds"
    return error(
        "D375",
        place,
        f"the paper {what}",
        expected="the opened cut, lying flat, all of it in the picture; or the folded wedge with "
        "its two folds straight",
        help="press the paper flat and take the photo from above; check that all folds are "
        "opened, or that none is",
    )


def not_told(place: Place, folds: tuple[int, ...]) -> Note:
    either = " or ".join(str(f) for f in folds)
    return error(
        "D376",
        place,
        "the number of folds cannot be told",
        received=f"it may be {either}",
        help="say how the paper was folded: `--folds`, or `folds` in the pattern",
    )


def other_folds(place: Place, asked: int, found: int) -> Note:
    return error(
        "D376",
        place,
        f"the paper was folded into {found} wedges, not {asked}",
        expected=f"{asked} wedges",
        received=f"{found} wedges",
        help=f"write `folds: {found}`, or take a photo of the other paper",
    )


def strays(place: Place, share: float, text: str) -> Note:
    return warning(
        "D377",
        place,
        "copies of the wedge stray from the one that most agree on",
        expected="at most 1 % of the motif's width",
        received=_tenths(share) + text,
        help="look at the overlay: what most copies agree on is drawn; cut again where that is "
        "not what you meant",
    )


def differs(place: Place, share: float) -> Note:
    return error(
        "D377",
        place,
        "the copies of the wedge do not agree",
        expected="edges within 0.5 % of the motif's width",
        received=f"{_tenths(share)} on average",
        help="press the paper flat, or photograph the folded wedge instead",
    )


def elsewhere(place: Place, count: int) -> Note:
    return error(
        "D377",
        place,
        "the copies of the wedge do not agree",
        expected="what one wedge shows in all others too",
        received=f"{count} places where paper or ground is not",
        help="press the paper flat; where it was cut on fewer folds, say so with `--folds`",
    )


def specks(place: Place, count: int) -> Note:
    were = "1 speck was" if count == 1 else f"{count} specks were"
    return warning(
        "D378",
        place,
        f"{were} left out",
        expected="parts and openings of at least 1 mm in a motif of 14 in",
        help="look at the overlay: if one of them was meant, cut it larger",
    )


def slips(place: Place, text: str) -> Note:
    return warning(
        "D379",
        place,
        "the outline is nearly square to a fold",
        expected="square, to run on round when it is opened; or clearly aslant, for a point",
        received=text,
        help="a slip of the scissors, most likely: set it square in the drawing, or keep it",
    )


def proportions(place: Place) -> Note:
    return warning(
        "D380",
        place,
        "how long the motif is for its width is known only roughly",
        expected="a camera's focal length in the file, or a scan",
        help="four folds do not tell it: scan the paper, or use the camera's own file, not a copy "
        "sent in a message",
    )


def tilted(place: Place, doubt: float) -> Note:
    return warning(
        "D380",
        place,
        f"how long the motif is for its width is known only to {_tenths(doubt)}",
        expected="a photo of four folds from straight above, a scan, or a printed marker beside it",
        received="a photo from aslant",
        help="four folds do not tell it: hold the camera level over the paper, or lay a marker of "
        "`foldwork trace --target` beside it",
    )


def no_sheet(place: Place, paper: str) -> Note:
    return warning(
        "D381",
        place,
        f"no sheet of {paper} paper is found, so the true size is not measured by it",
        expected="the whole sheet in the picture, beside the cut, flat and of much the same colour",
        help="lay it beside the cut and not on it; or use the markers of `foldwork trace --target`",
    )


def sizes_differ(place: Place, share: float) -> Note:
    return warning(
        "D381",
        place,
        "what is of known size in the picture does not agree about the true size",
        expected="lengths within 2 % of one another",
        received=_tenths(share),
        help="lay markers or sheet flat, in one plane with the cut; print the page at 100 %; name "
        "the paper that it is",
    )


def ruler_unread(place: Place, count: int) -> Note:
    return warning(
        UNREAD,
        place,
        "what a ruler's ticks are worth cannot be told",
        expected="millimetres in tens, or inches in 8, 16 or 32 parts, over two inches or more",
        received=f"{count} even ticks whose lengths tell neither, or both",
        help="go nearer, so that the shortest ticks are seen apart; or measure the opened cut "
        "and say `--width`",
    )


def _tenths(share: float) -> str:
    """Return a measured share to a tenth of a percent: `0.4 %`."""
    return f"{share * 100:.1f} %"
