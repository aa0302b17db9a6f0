"""All sizes as they will look: pictures with their names below them, and a bar to scale."""

import re
from dataclasses import replace
from functools import cache

import pytest
from shapely.geometry import Polygon
from top_figures import CONTEXT, illegible, spec, text_box, texts

from publish.draw import sizes
from publish.draw.context import Context
from publish.model.figure import Figure, Picture, row_name
from publish.render.together import arranged

COMPUTED = "Computed from the pattern, not photographed."

WIDE = 2100


@cache
def pictured(longer: bool = False) -> Context:
    """Return the hand-built sizes with a picture of all sizes, or of seven, in two rows."""
    own = CONTEXT
    shown = dict(own.sizes)
    if longer:
        for n in range(4):
            shown[f"more-{n}"] = replace(own.sizes["mini"], key=f"more-{n}", title=f"Number {n}")
    rows = arranged({key: (float(s.width), float(s.height)) for key, s in shown.items()})
    pictures = {
        row_name(n): Picture(b"", WIDE, row.high(WIDE), "figure-lying-flat", row.width, row.spots)
        for n, row in enumerate(rows)
    }
    return replace(own, sizes=shown, pictures=pictures)


def drawn(labels: str = "yes", longer: bool = False) -> Figure:
    return sizes.draw(pictured(longer), spec("sizes", labels=labels))


def images(figure: Figure) -> dict[str, tuple[float, ...]]:
    """Return where each picture is, in points: left, top, width and height."""
    found = re.findall(r"<image ([^>]*)/>", figure.svg)
    values = [dict(re.findall(r'(\w+)="([^"]*)"', each)) for each in found]
    return {v["href"]: tuple(float(v[k]) for k in ("x", "y", "width", "height")) for v in values}


def words(figure: Figure) -> dict[str, Polygon]:
    """Return the box of each line of text."""
    return {e.text: text_box(e) for e in texts(figure.svg)}


def test_each_name_stands_below_its_size() -> None:
    figure = drawn()
    ((left, top, wide, high),) = images(figure).values()
    assert list(images(figure)) == ["picture:sizes-0"]
    said = words(figure)
    for spot in pictured().pictures["sizes-0"].spots:
        name = said[pictured().sizes[spot.key].title]
        middle = left + (spot.left + spot.width / 2) * wide
        assert name.centroid.x == pytest.approx(middle, abs=0.5)
        assert name.bounds[1] > top + high
    for each in (figure, drawn(longer=True)):
        assert not illegible(re.sub(r"<image [^>]*/>", "", each.svg))


def test_the_bar_is_to_the_scale_of_the_pictures() -> None:
    figure = drawn()
    ((_, _, wide, _),) = images(figure).values()
    (text,) = [t for t in words(figure) if re.fullmatch(r"\d+ in \([\d.]+ cm\)", t)]
    inches = float(text.split()[0])
    level = [float(x) for x in re.findall(r'd="M[\d.]+ [\d.]+l([\d.]+) 0"', figure.svg)]
    expected = inches * wide / pictured().pictures["sizes-0"].inches
    assert any(length == pytest.approx(expected, abs=0.03) for length in level), level


def test_rows_stand_below_each_other_at_one_scale() -> None:
    for labels in ("yes", "no"):
        boxes = images(drawn(labels, longer=True))
        assert list(boxes) == ["picture:sizes-0", "picture:sizes-1"]
        one, two = boxes.values()
        assert one[2] == two[2] and two[1] > one[1] + one[3]


def test_without_labels_the_picture_is_the_figure() -> None:
    figure = drawn("no")
    ((left, top, wide, high),) = images(figure).values()
    assert not words(figure)
    assert (left, top) == (0, 0)
    assert figure.width * 72 == pytest.approx(wide, abs=1.5)
    assert figure.height * 72 == pytest.approx(high, abs=4.5)  # 2 points of margin


def test_its_words_say_that_it_is_computed() -> None:
    alt = drawn().alt
    assert alt.endswith(f", lying flat. {COMPUTED}") and "Throw 64 × 64 in" in alt
