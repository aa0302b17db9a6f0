"""Which pictures a pattern has, how they are kept, and what is measured on them."""

import io
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from PIL import Image

from publish import draft, grade, read, render
from publish.kept import NOWHERE, Store
from publish.model.cloth import Swatch
from publish.model.draft import Draft
from publish.model.house import Photo
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.render import Shown, for_booklet, for_shop, making
from publish.render.scalebar import INK, bar_inches, with_bar
from publish.render.together import EDGE, LEAST, arranged

PROJECTS = Path(__file__).parents[2] / "projects"
SHOWN = Shown("mini", "mini")
Made = tuple[Pattern, dict[str, Size], dict[str, Draft]]


@pytest.fixture
def small(monkeypatch: pytest.MonkeyPatch) -> None:
    """Pictures of few pixels, none of them known from an earlier test."""
    few = {"COVER_PIXELS": 160, "WAYS_PIXELS": 450, "SHOP_PIXELS": 170, "ROW_PIXELS": 420}
    for name, count in few.items():
        monkeypatch.setattr(render, name, count)
    making._one.cache_clear()
    making._lit.cache_clear()


def made(pattern: Pattern, keys: tuple[str, ...] = ("mini", "pillow")) -> Made:
    sizes, drafts = {}, {}
    for key in keys:
        size, _ = grade.grade(pattern, key)
        assert size is not None
        shapes, _ = draft.draft(pattern, size)
        assert shapes is not None
        sizes[key], drafts[key] = size, shapes
    return pattern, sizes, drafts


@pytest.fixture(scope="module")
def samphire() -> Made:
    pattern, _, _ = read.load(PROJECTS / "samphire" / "pattern.yaml")
    assert pattern is not None
    return made(pattern)


def changed(design: Made, **values: Any) -> Made:
    pattern, *rest = design
    return replace(pattern, **values), *rest


def pixels(data: bytes) -> np.ndarray:
    return np.asarray(Image.open(io.BytesIO(data)).convert("RGB"), np.int16)


@pytest.mark.usefixtures("small")
def test_a_booklet_has_its_cover_its_sizes_and_each_colourway(samphire: Made) -> None:
    found = for_booklet(*samphire, SHOWN)
    ways = [f"way-{key}" for key in ("own", *samphire[0].colourways)]
    assert list(found) == ["cover", "sizes-0", *ways] and len(ways) > 2
    for picture in found.values():
        image = Image.open(io.BytesIO(picture.data))
        assert image.format == "JPEG" and image.size == (picture.width, picture.height)
        assert image.info["dpi"] == (300, 300) and "icc_profile" not in image.info
    assert len({found[name].data for name in ways}) == len(ways)


@pytest.mark.usefixtures("small")
def test_a_photograph_wins_and_a_drawn_cover_has_no_pictures(samphire: Made) -> None:
    photo = Photo(Path("throw.jpg"), place="cover")
    for cover in ("rendered", "photo"):
        found = for_booklet(*changed(samphire, photos=(photo,), cover=cover), SHOWN)
        assert "cover" not in found and "sizes-0" in found
    inside = Photo(Path("throw.jpg"), place="page")
    assert "cover" in for_booklet(*changed(samphire, photos=(inside,)), SHOWN)
    drawn = changed(samphire, cover="drawn", photos=(photo,))
    assert not for_booklet(*drawn, SHOWN) and not for_shop(*drawn, SHOWN)


@pytest.mark.usefixtures("small")
def test_a_shop_has_each_size_and_each_colourway(samphire: Made) -> None:
    found = for_shop(*samphire, SHOWN)
    assert list(found) == [
        "mini",
        "pillow",
        *(f"colourway-{key}" for key in samphire[0].colourways),
    ]
    assert len({p.data for p in found.values()}) == len(found)
    shows = [("mini", ""), ("pillow", ""), *(("mini", key) for key in samphire[0].colourways)]
    assert [(p.size, p.colourway) for p in found.values()] == shows


@pytest.mark.usefixtures("small")
def test_what_is_kept_is_what_is_made(
    samphire: Made, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    anew = for_booklet(*samphire, SHOWN, NOWHERE)
    assert for_booklet(*samphire, SHOWN, Store(tmp_path)) == anew
    count = len(list(tmp_path.iterdir()))
    assert count == len(anew)

    def never(*_: object) -> bytes:
        raise AssertionError("made although it was kept")

    with monkeypatch.context() as patch:
        patch.setattr(making, "_one", never)
        patch.setattr(making, "_row", never)
        assert for_booklet(*samphire, SHOWN, Store(tmp_path)) == anew
        with pytest.raises(AssertionError):
            for_booklet(*samphire, SHOWN, Store(tmp_path, fresh=True))
    assert len(list(tmp_path.iterdir())) == count


@pytest.mark.usefixtures("small")
def test_whatever_is_seen_makes_another_picture(samphire: Made, tmp_path: Path) -> None:
    """Each change of the pattern below changes the cover, and what was kept is not taken."""
    pattern = samphire[0]
    store = Store(tmp_path)
    covers = {for_booklet(*samphire, SHOWN, store)["cover"].data}
    linen = pattern.fabrics["linen"]
    swatch = tmp_path / "print.png"
    seen = []
    for shade in (90, 200):  # the same file, written again
        stripes = np.tile(np.array([[shade, 255, 255]], np.uint8).repeat(40, axis=1), (60, 1))
        Image.fromarray(stripes).save(swatch)
        printed = replace(linen, swatch=Swatch(swatch, linen.usable_width / 20))
        now = changed(samphire, fabrics={**pattern.fabrics, "linen": printed})
        seen.append(for_booklet(*now, SHOWN, store)["cover"].data)
    dyed = {**pattern.fabrics, "linen": replace(linen, colour="#d0c0a0")}
    seen.append(for_booklet(*changed(samphire, fabrics=dyed), SHOWN, store)["cover"].data)
    seen.append(for_booklet(*changed(samphire, scene="flat"), SHOWN, store)["cover"].data)
    seen.append(for_booklet(*samphire, Shown("pillow", "mini"), store)["cover"].data)
    assert len(covers | set(seen)) == len(seen) + 1


@pytest.mark.usefixtures("small")
def test_each_size_lies_where_the_picture_says(samphire: Made) -> None:
    """What differs from the ground fills each place, and its scale is that of the others."""
    found = for_booklet(*samphire, SHOWN)["sizes-0"]
    image = pixels(found.data)
    corner = image[3:9, 3:9].mean(axis=(0, 1))
    apart = np.abs(image - corner).sum(axis=2) > 60
    for spot in found.spots:
        size = samphire[1][spot.key]
        fine = found.width / found.inches
        assert spot.width * found.width == pytest.approx(float(size.width) * fine, abs=0.6 * fine)
        x, y = (spot.left * found.width, spot.top * found.height)
        wide, high = spot.width * found.width, spot.height * found.height
        inside = apart[round(y) : round(y + high), round(x) : round(x + wide)]
        assert inside.mean() > 0.5
        before = apart[round(y) : round(y + high), round(x - 0.02 * found.width) - 3 : round(x) - 4]
        assert before.mean() < 0.05


@pytest.mark.parametrize(
    "widths", [(20.0,), (17.0, 20.0, 64.0), (60.0, 62.0, 80.0, 90.0), tuple(range(10, 90, 9))]
)
def test_rows_have_one_scale_and_room_for_names(widths: tuple[float, ...]) -> None:
    rows = arranged({str(n): (wide, 1.3 * wide) for n, wide in enumerate(widths)})
    assert [s.key for row in rows for s in row.spots] == [str(n) for n in range(len(widths))]
    assert len({row.width for row in rows}) == 1
    for row in rows:
        for spot in row.spots:
            assert spot.width * row.width == pytest.approx(widths[int(spot.key)])
            assert spot.height * row.height == pytest.approx(1.3 * widths[int(spot.key)])
            assert spot.column >= LEAST - 1e-9 and spot.left >= EDGE - 1e-9
            assert (spot.top + spot.height) * row.height == pytest.approx(
                row.height - EDGE * row.width
            )
        for one, other in zip(row.spots, row.spots[1:], strict=False):
            assert one.left + one.width < other.left
            middles = [s.left + s.width / 2 for s in (one, other)]
            assert middles[1] - middles[0] > (one.column + other.column) / 2
        last = row.spots[-1]
        assert last.left + last.width <= 1 - EDGE + 1e-9


@pytest.mark.parametrize("fine", [4.0, 19.7, 61.0])
def test_a_scale_bar_is_as_long_as_it_says(fine: float) -> None:
    blank = np.full((900, 1200, 3), 220, np.uint8)
    inches = float(bar_inches(1200, fine))
    assert 0.05 * 1200 < inches * fine <= 0.2 * 1200 or inches == 1
    ink = (with_bar(blank, fine) == INK).all(axis=2)
    low = np.flatnonzero(ink.any(axis=1)).max()
    columns = np.flatnonzero(ink[low])  # below the line there are the two ticks alone
    left, right = columns[columns < columns.mean()], columns[columns > columns.mean()]
    assert right.mean() - left.mean() == pytest.approx(inches * fine, abs=1)


@pytest.mark.usefixtures("small")
def test_a_scale_bar_comes_where_it_is_asked_for(samphire: Made) -> None:
    pattern = samphire[0]
    with_one = changed(samphire, shop=replace(pattern.shop, scale="bar"))
    without = changed(samphire, shop=replace(pattern.shop, scale=""))
    plain, barred = for_shop(*without, SHOWN), for_shop(*with_one, SHOWN)
    for key in plain:
        differ = np.abs(pixels(plain[key].data) - pixels(barred[key].data)).max(axis=2) > 40
        rows, columns = np.nonzero(differ)
        assert len(rows) and rows.min() > 120 and columns.max() < 90
    assert for_booklet(*with_one, SHOWN) == for_booklet(*without, SHOWN)
