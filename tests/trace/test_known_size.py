"""True sizes from photos with something of known size in them.

Markers and sheets are laid into made-up photos by the photo's own camera, whose truth the
tracer never sees. What a marker is, the library that reads them settles (OpenCV, ArUco
4 x 4); papers are those of ISO 216 and ANSI A.
"""

import io
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import cv2
import numpy as np
import pypdfium2
import pytest
import shapely
from PIL import Image
from trace_photos import Taking, _camera, icon_cut, outlines_apart, photo, traced_whole

from publish import cli, trace
from publish.model.book import PAPERS
from publish.notes import Place
from publish.trace.known import markers
from publish.trace.target import PIECE

ICONS = Path(__file__).parents[1] / "data" / "icons"
PLACE = Place("paper.jpg")
WIDTH = 20.0
"""Inches: the true width of the opened motif in these photos."""

GEAR, SIGN = (
    icon_cut(ICONS / f"{n}-fill.svg", f, 12) for n, f in (("gear", 8), ("sign-turn-right", 4))
)
TAKING = Taking(tilt=20, width=2400, jitter=0.0005)


def linear(coded):
    return np.asarray(coded, np.float32) ** np.float32(2.2)


def printed(paper="letter", dots=300):
    """Return the page of markers as another library renders it."""
    page = pypdfium2.PdfDocument(trace.target(PAPERS[paper]))[0]
    return np.asarray(page.render(scale=dots / 72).to_pil().convert("RGB")) / 255


def laid(cut, seed, image, at=(0.85, 0.5), dpi=300):
    """Return the photo of a motif with a flat picture laid beside it, its middle `at` shares
    of the photo's width and height."""
    data = photo(cut, seed, TAKING)
    base = cv2.imdecode(np.frombuffer(data, np.uint8), cv2.IMREAD_COLOR)[..., ::-1] / 255
    reach = float(np.hypot(*shapely.get_coordinates(cut.whole).T).max())
    matrix, size = _camera(TAKING, reach, np.random.default_rng(seed))
    over, unit = 3, WIDTH / 2 * dpi
    middle = np.linalg.solve(matrix, [at[0] * size[0], at[1] * size[1], 1])
    middle = middle[:2] / middle[2] - np.array(image.shape[1::-1]) / 2 / unit
    place = np.array([[1 / unit, 0, middle[0]], [0, 1 / unit, middle[1]], [0, 0, 1]])
    grow = np.array([[over, 0, (over - 1) / 2], [0, over, (over - 1) / 2], [0, 0, 1.0]])
    full = np.dstack([linear(image), np.ones(image.shape[:2], np.float32)])
    seen = cv2.warpPerspective(
        full, grow @ matrix @ place, (size[0] * over, size[1] * over), flags=cv2.INTER_AREA
    )
    seen = cv2.GaussianBlur(
        cv2.resize(seen, size, interpolation=cv2.INTER_AREA), (0, 0), TAKING.blur
    )
    mixed = linear(base) * (1 - seen[..., 3:]) + seen[..., :3]
    image = Image.fromarray((np.clip(mixed, 0, 1) ** (1 / 2.2) * 255).astype(np.uint8))
    stream = io.BytesIO()
    image.save(stream, "JPEG", quality=92)
    return stream.getvalue()


def piece(number=0, dots=300):
    page = printed(dots=dots)
    step, top = round(PIECE * dots), round(((11 - 9) / 2 + 0.2) * dots)
    left = round((8.5 - 6) / 2 * dots)
    y, x = top + step * (number // 2), left + step * (number % 2)
    return page[y : y + step, x : x + step]


def test_the_page_holds_markers_of_two_inches_that_the_library_reads():
    for paper in ("letter", "a4"):
        found = markers((printed(paper, 200) * 255).astype(np.uint8))
        assert len(found) == 6
        sides = [np.hypot(*np.diff(m.corners, axis=0, append=m.corners[:1]).T) / 200 for m in found]
        assert np.concatenate(sides) == pytest.approx(2.0, abs=0.006)  # a pixel is 0.005 in


@pytest.mark.parametrize("seed", [5, pytest.param(7, marks=pytest.mark.thorough)])
def test_one_marker_gives_the_true_width(seed):
    data = laid(GEAR, seed, piece())
    found, notes = trace.traced(data, PLACE)
    assert found is not None, notes
    assert found.folds == 8 and found.told_by == "1 marker"
    assert found.inches == pytest.approx(WIDTH, rel=0.003)
    assert outlines_apart(traced_whole(found), GEAR)[0] <= 0.3


def test_a_marker_gives_four_folds_their_proportions():
    """Without it a photo of four folds is only roughly as long as it is wide."""
    data = laid(SIGN, 7, piece(3))
    found, notes = trace.traced(data, PLACE, 4)
    assert found is not None and "D380" not in [n.code for n in notes]
    assert found.inches == pytest.approx(WIDTH, rel=0.005)
    assert outlines_apart(traced_whole(found), SIGN)[1] <= 0.2


def test_a_sheet_of_known_paper_gives_the_true_width():
    white = np.full((round(8.27 * 100), round(5.83 * 100), 3), 0.97)
    data = laid(GEAR, 5, white, dpi=100)
    found, notes = trace.traced(data, PLACE, None, "a5")
    assert found is not None, notes
    assert found.told_by == "the sheet of paper"
    assert found.inches == pytest.approx(WIDTH, rel=0.005)


def test_a_sheet_that_is_not_there_or_another_one_is_said():
    data = photo(GEAR, 5, TAKING)
    found, notes = trace.traced(data, PLACE, None, "a4")
    assert found is not None and found.inches is None and "D381" in [n.code for n in notes]
    white = np.full((round(8.27 * 100), round(5.83 * 100), 3), 0.97)
    other = laid(GEAR, 5, white, dpi=100)
    found, notes = trace.traced(other, PLACE, None, "letter")
    assert found is not None and found.inches is None and "D381" in [n.code for n in notes]


def test_the_command_writes_the_page(tmp_path, capsys):
    assert cli.main(["trace", "--target", "a4", "--out", str(tmp_path)]) == cli.CLEAN
    assert (tmp_path / "target-a4.pdf").read_bytes().startswith(b"%PDF")
    assert cli.main(["trace"]) == cli.USAGE
    assert "--target" in capsys.readouterr().err


def test_a_ruler_gives_the_width_and_is_held_against_what_is_seen(tmp_path, capsys):
    file = tmp_path / "gear.jpg"
    file.write_bytes(photo(GEAR, 5, TAKING))
    assert cli.main(["trace", str(file), "--width", "24 cm"]) == cli.CLEAN
    assert "9.45 in (240 mm), by your ruler" in capsys.readouterr().out
    assert 'width="9.83in"' in (tmp_path / "gear.svg").read_text()  # 104 of the 100 it holds
    assert cli.main(["trace", str(file), "--width", "24"]) == cli.USAGE
    assert "unit" in capsys.readouterr().err
    found, notes = trace.traced(laid(GEAR, 5, piece()), PLACE)
    assert found is not None
    for inches, codes in ((Fraction(20), []), (Fraction(18), ["D381"])):
        told, notes = trace.measured(found, inches, PLACE)
        assert told.inches == inches and [n.code for n in notes] == codes


def test_proportions_of_four_folds_from_aslant_are_said_to_be_in_doubt():
    """A camera at 23 degrees: its axis 2 % beside the middle is tan(23) of that, 0.8 %."""
    for tilt, asked in ((2, False), (23, True)):
        found, notes = trace.traced(photo(SIGN, 7, replace(TAKING, tilt=tilt)), PLACE, 4)
        assert found is not None
        assert [n.code for n in notes].count("D380") == asked
