"""Drawings set into a page of their own size, and looked at.

PDFium draws the PDF; cairo, which did not make it, draws the same drawing's SVG.
"""

from __future__ import annotations

import io
from importlib.resources import files

import cairosvg
import numpy as np
import numpy.typing as npt
import pypdfium2
from PIL import Image
from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration

from publish.draw.canvas.svg import svg_of
from publish.model.drawing import Drawing
from publish.typeset.drawn import DrawnImage

DOTS = 4
"""To the point."""
_FACES = (
    ("Regular", 400, "normal"),
    ("Semibold", 600, "normal"),
    ("Bold", 700, "normal"),
    ("It", 400, "italic"),
)
Dots = npt.NDArray[np.int_]


def page(drawing: Drawing) -> bytes:
    """Return a PDF page that shows a drawing at its own size and nothing else."""
    fonts = FontConfiguration()
    folder = files("font_source_sans_pro") / "files"
    faces = "".join(
        f"@font-face {{ font-family: 'Source Sans Pro'; font-weight: {weight}; "
        f"font-style: {style}; src: url('{(folder / f'SourceSansPro-{name}.otf').as_uri()}') }}"
        for name, weight, style in _FACES
    )
    _, _, wide, high = drawing.window
    look = f"@page {{ size: {wide}pt {high}pt; margin: 0 }}"
    look += "body { margin: 0 } img { display: block }"
    made = HTML(string='<img src="figure:x" alt="x">').render(
        font_config=fonts,
        stylesheets=[CSS(string=faces + look, font_config=fonts)],
        cache={"figure:x": DrawnImage(drawing, fonts)},
    )
    pdf: bytes = made.write_pdf()
    return pdf


def printed(drawing: Drawing) -> Dots:
    """Return a drawing as its page shows it."""
    shown = pypdfium2.PdfDocument(page(drawing))[0].render(scale=DOTS).to_pil().convert("RGB")
    return np.array(shown).astype(int)


def pictured(drawing: Drawing) -> Dots:
    """Return a drawing as cairo shows its SVG on white paper."""
    _, _, wide, high = drawing.window
    png = cairosvg.svg2png(
        svg_of(drawing).encode(),
        output_width=round(wide * DOTS),
        output_height=round(high * DOTS),
        background_color="#ffffff",
    )
    return np.array(Image.open(io.BytesIO(png)).convert("RGB")).astype(int)


def alike(one: Dots, other: Dots, share: float = 0.01) -> bool:
    """Return whether two pictures differ nowhere but in the softness of edges."""
    high, wide = (min(a, b) for a, b in zip(one.shape[:2], other.shape[:2], strict=True))
    apart = np.abs(one[:high, :wide] - other[:high, :wide]).max(axis=2)
    return bool((apart > 40).mean() < share and np.median(apart) <= 1)
