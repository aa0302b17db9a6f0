"""The page for a studio's own site: valid, readable by everybody, and nothing but a page.

Published sources: parse errors are those of the HTML standard (WHATWG, 13.2), as tinyhtml5
counts them; contrast and success criteria are those of WCAG 2.2 (1.1.1, 1.3.1, 1.4.3, 2.4.2,
3.1.1), its formula written out here; the vocabulary is schema.org's Product and Offer.
"""

import io
import json
import re
import shutil
import subprocess
from html import unescape
from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree

import pytest
from houses import changed, house
from PIL import Image
from tinyhtml5.parser import HTMLParser

from publish import pipeline
from publish.kept import Store, users

STUDIO = """\
publication:
  studio: Reed & Rush <Fen>
  contact: patterns@hollowfen.example
  licence: Quilts made from this pattern may be sold.
papers: [letter]
prices:
  - {currency: EUR, retail: 14.00, wholesale: 7.25}
  - {currency: JPY, retail: 2000}
"""
BROWSERS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")


@pytest.fixture(scope="module")
def target(tmp_path_factory):
    home = tmp_path_factory.mktemp("studio")
    (folder,) = house(home, ("sedge",), STUDIO)
    more = 'HF-1, skill: Beginner, blurb: A fen, barcode: "2000000001012"}'
    changed(folder, "HF-1}", more)
    return pipeline.build(folder, home / "out", only="booklet", store=Store(users()))[1]


@pytest.fixture(scope="module")
def text(target):
    return (target / "site" / "index.html").read_text(encoding="utf-8")


@pytest.fixture(scope="module")
def tree(text):
    parser = HTMLParser(namespace_html_elements=False)
    root = parser.parse(text)
    assert parser.errors == []
    return root


def words(node):
    return " ".join("".join(node.itertext()).split())


def test_a_parser_that_keeps_the_standard_finds_no_error(tree):
    assert tree.tag == "html"
    parser = HTMLParser()
    parser.parse("<!DOCTYPE html><p><div></p>")
    assert parser.errors  # it would


def test_nothing_runs_and_nothing_is_fetched(tree, target):
    assert not [n.tag for n in tree.iter() if n.tag in ("script", "iframe", "object", "form")]
    assert not [k for n in tree.iter() for k in n.attrib if k.startswith("on")]
    named = {n.attrib["src"] for n in tree.iter("img")}
    links = [n.attrib["href"] for n in tree.iter() if "href" in n.attrib]
    assert links == ["mailto:patterns@hollowfen.example"]
    there = {p.name for p in (target / "site").iterdir()}
    assert there == {*named, "index.html"}
    style = "".join(words(n) for n in tree.iter("style"))
    assert "url(" not in style and "@import" not in style


def test_it_has_a_language_a_title_and_headings_in_order(tree):
    assert re.fullmatch("en(-[A-Z]{2})?", tree.attrib["lang"])
    (title,) = tree.iter("title")
    assert words(title) == "Sedge: a quilt pattern by Reed & Rush <Fen>"
    levels = [int(n.tag[1]) for n in tree.iter() if re.fullmatch("h[1-6]", n.tag)]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(b - a <= 1 for a, b in pairwise(levels))
    assert len(list(tree.iter("main"))) == 1


def test_every_picture_is_described_and_as_large_as_it_says(tree, target):
    pictures = list(tree.iter("img"))
    assert len(pictures) >= 3
    for node in pictures:
        assert len(node.attrib["alt"]) > 10
        with Image.open(target / "site" / node.attrib["src"]) as image:
            size = [int(node.attrib[k]) for k in ("width", "height")]
            assert [image.width, image.height] == size
    first = pictures[0].attrib["alt"]
    assert "9 × 9 in" in first and "Deep moss" in first


def test_tables_and_lists_are_what_they_look_like(tree):
    for cell in tree.iter("th"):
        assert cell.attrib["scope"] in ("col", "row")
    for rows in tree.iter("table"):
        counts = {len(row) for row in rows.iter("tr")}
        assert len(counts) == 1
    for kind in ("ul", "ol"):
        assert {c.tag for n in tree.iter(kind) for c in n} <= {"li"}
    for node in tree.iter("dl"):
        assert node[0].tag == "dt" and {c.tag for c in node} == {"dt", "dd"}
    ids = [n.attrib["id"] for n in tree.iter() if "id" in n.attrib]
    assert len(ids) == len(set(ids))


def luminance(colour):
    """WCAG 2.2, relative luminance."""
    channels = [int(colour[n : n + 2], 16) / 255 for n in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return sum(w * c for w, c in zip((0.2126, 0.7152, 0.0722), linear, strict=True))


def test_text_can_be_read_on_its_ground(tree):
    style = "".join(words(n) for n in tree.iter("style"))
    found = dict(re.findall(r"--([a-z]+): (#[0-9a-f]{6})", style))
    white = luminance("#ffffff")
    for name in ("ink", "quiet", "accent"):
        for ground in (white, luminance(found["tint"])):
            contrast = (ground + 0.05) / (luminance(found[name]) + 0.05)
            assert contrast >= 4.5, name


def test_it_says_what_the_listing_says(tree, target):
    listing = json.loads((target / "shop" / "listing.json").read_text(encoding="utf-8"))
    said = words(tree).replace("\u00a0", " ")
    for line in (
        *listing["included"],
        *listing["summary"],
        listing["stock_number"],
        listing["skill"],
        listing["edition"],
        listing["licence"],
        listing["sizes"][0]["finished"],
        "2000000001012",
    ):
        assert line in said
    rows = [" ".join(map(words, row)).replace("\u00a0", " ") for row in tree.iter("tr")]
    for fabric, amount in listing["to_buy"]["mini"].items():
        assert f"{fabric} {amount['yards']} yd ({amount['metres']} m)" in rows


def test_prices_are_for_makers(tree, text):
    offers = [n for n in tree.iter("dd") if n.attrib.get("itemprop") == "offers"]
    assert [words(n) for n in offers] == ["EUR 14.00", "JPY 2000"]
    assert "7.25" not in text and "wholesale" not in text.lower()


def test_what_a_file_says_is_text(text):
    assert "Reed &amp; Rush &lt;Fen&gt;" in text
    assert "<Fen>" not in text
    assert "<Fen>" in unescape(text)


def test_what_shops_are_told_has_both_prices(target):
    trade = json.loads((target / "shop" / "trade.json").read_text(encoding="utf-8"))
    assert trade["prices"] == [
        {"currency": "EUR", "retail": "14.00", "wholesale": "7.25"},
        {"currency": "JPY", "retail": "2000", "wholesale": None},
    ]
    assert trade["barcode"] == {"kind": "EAN-13", "digits": "2000000001012"}
    assert (trade["pattern"], trade["stock_number"]) == ("sedge", "HF-1")
    ElementTree.parse(target / "shop" / "barcode.svg")


def test_templates_alone_make_no_page(tmp_path):
    (folder,) = house(tmp_path, ("sedge",))
    _, made = pipeline.build(folder, tmp_path / "out", only="full-size")
    assert not (made / "site").exists() and not (made / "shop" / "trade.json").exists()


BROWSER = next((found for name in BROWSERS if (found := shutil.which(name))), None)


@pytest.mark.skipif(BROWSER is None, reason=f"needs a browser: {', '.join(BROWSERS)}")
def test_a_browser_shows_it(target, tmp_path):
    picture = tmp_path / "seen.png"
    address = Path(target / "site" / "index.html").resolve().as_uri()
    run = [BROWSER, "--headless", "--no-sandbox", "--disable-gpu", "--window-size=1000,1600"]
    subprocess.run([*run, f"--screenshot={picture}", address], check=True, capture_output=True)
    with Image.open(io.BytesIO(picture.read_bytes())) as seen:
        colours = seen.convert("RGB").getcolors(1 << 24)
    assert len(colours) > 1000  # the quilt is on it, not the frame of a missing picture
