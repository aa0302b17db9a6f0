"""Printing SVG pages to PDF with WeasyPrint, and reading the PDF back with PDFium."""

from __future__ import annotations

import base64
import re
from pathlib import Path
from xml.etree import ElementTree

import font_source_sans_pro
import numpy as np
import pypdfium2
import weasyprint
from shapely.affinity import rotate
from shapely.geometry import Polygon, box

from publish.draw.canvas.letters import CAP_HEIGHT, text_width

FOLDER = Path(font_source_sans_pro.__file__).parent / "files"
FACES = (
    ("Regular", 400, "normal"),
    ("It", 400, "italic"),
    ("Semibold", 600, "normal"),
    ("Bold", 700, "normal"),
)


def printed(svg: str, width: float, height: float) -> pypdfium2.PdfDocument:
    """Return a PDF whose one page, in inches, is filled by an SVG at its own size."""
    return pypdfium2.PdfDocument(page_pdf(svg, width, height))


def page_pdf(svg: str, width: float, height: float) -> bytes:
    """Return the same PDF as bytes."""
    faces = "".join(
        f"@font-face {{ font-family: 'Source Sans Pro'; font-weight: {weight}; "
        f"font-style: {style}; src: url('{(FOLDER / f'SourceSansPro-{name}.otf').as_uri()}') }}"
        for name, weight, style in FACES
    )
    data = base64.b64encode(svg.encode()).decode()
    page = f"@page {{ size: {width}in {height}in; margin: 0 }} body {{ margin: 0 }}"
    image = f'<img style="display: block" src="data:image/svg+xml;base64,{data}">'
    html = f"<style>{faces} {page}</style>{image}"
    pdf = weasyprint.HTML(string=html).write_pdf()
    assert pdf is not None
    return pdf


def raster(document: pypdfium2.PdfDocument, dpi: int) -> np.ndarray:
    """Return the first page as grey values, a row for each row of dots."""
    return np.asarray(document[0].render(scale=dpi / 72, grayscale=True).to_pil())


def words_on(document: pypdfium2.PdfDocument) -> list[tuple[float, float, float, float, str]]:
    """Return each run of words on the first page: left, top, right, bottom in points."""
    page = document[0]
    text = page.get_textpage()
    height = page.get_height()
    found = []
    for index in range(text.count_rects()):
        left, bottom, right, top = text.get_rect(index)
        run = text.get_text_bounded(left, bottom, right, top)
        found.append((left, height - top, right, height - bottom, run))
    return found


def line_middle(dark: np.ndarray, near: float, reach: float) -> float:
    """Return the middle, in dots, of the ruled line nearest to where it belongs.

    `dark` says how much of each row or column is dark, from 0 to 1.
    """
    first = int(near - reach)
    window = dark[first : int(near + reach) + 1]
    hit = np.flatnonzero(window > 0.9 * window.max())
    assert window.max() > 0.3, "no ruled line here"
    return first + float(hit[0] + hit[-1] + 1) / 2


def text_boxes(svg: str) -> list[tuple[Polygon, str]]:
    """Return the box of each line of text in an SVG, capitals high, turned as it is set."""
    found = []

    def walk(element, inherited):
        own = {**inherited, **element.attrib}
        if element.tag.endswith("text"):
            found.append((_box(own, element.text), element.text))
        shared = {k: v for k, v in own.items() if k.startswith("font")}
        for child in element:
            walk(child, shared)

    walk(ElementTree.fromstring(svg), {})
    return found


def _box(own: dict[str, str], text: str) -> Polygon:
    size, x, y = (float(own[name]) for name in ("font-size", "x", "y"))
    bold = own.get("font-weight", "400")
    face = {"600": "semibold", "700": "bold"}.get(bold, own.get("font-style", "regular"))
    flat = box(x, y - size * CAP_HEIGHT, x + text_width(text, size, face), y)
    turned = re.fullmatch(r"rotate\((\S+) (\S+) (\S+)\)", own.get("transform", ""))
    if turned is None:
        return flat
    angle, *about = (float(value) for value in turned.groups())
    return rotate(flat, angle, origin=about)
