"""Studios of small patterns for tests: folders side by side below one studio.yaml."""

from helpers import DRAWING

STUDIO = """\
publication:
  studio: Hollow Fen Studio
  contact: patterns@hollowfen.example
  licence: Quilts made from this pattern may be sold.
"""
PATTERN = """\
title: {title}
publication: {{stock_number: {number}}}
fabrics:
  linen: {{name: Pale linen, colour: "#f4efe6"}}
  moss: {{name: Deep moss, colour: "#4f6b4a"}}
motifs:
  m: {{drawing: m.svg, folds: 8, fabric: moss}}
blocks:
  b: {{ground: linen, motif: m}}
sizes:
  mini: {{block_size: 9 in, motif_size: 7 in}}
"""
NAMES = ("bulrush", "reedmace", "sedge")


def house(folder, names=NAMES, studio=STUDIO):
    """Write patterns that have nothing in common but their cloth; return their folders."""
    (folder / "studio.yaml").write_text(studio, encoding="utf-8")
    return [
        one(folder / name, PATTERN.format(title=name.title(), number=f"HF-{number}"))
        for number, name in enumerate(names, 1)
    ]


def one(folder, text):
    """Write one pattern and return its folder."""
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "m.svg").write_text(DRAWING, encoding="utf-8")
    (folder / "pattern.yaml").write_text(text, encoding="utf-8")
    return folder


def changed(folder, old, new, name="pattern.yaml"):
    """Change one passage of a file."""
    path = folder / name
    text = path.read_text(encoding="utf-8")
    assert text.count(old) == 1, f"{old!r} stands {text.count(old)} times"
    path.write_text(text.replace(old, new), encoding="utf-8")
