"""The designer's preview of grey and of colour-vision deficiencies, made with each build."""

import json
from xml.etree import ElementTree

from helpers import pattern

from publish import pipeline

SVG = "{http://www.w3.org/2000/svg}"
MOSS = (0x4F, 0x6B, 0x4A)


def luminance(red, green, blue):
    """Return relative luminance (WCAG 2.2, definition; sRGB)."""
    parts = [c / 255 for c in (red, green, blue)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def test_a_build_holds_it_in_true_greys(tmp_path):
    work, target = pipeline.build(pattern(tmp_path), tmp_path / "out", ["letter"], "templates")
    root = ElementTree.fromstring((target / "colour" / "visions.svg").read_text())
    words = [t.text for t in root.iter(f"{SVG}text")]
    assert words == ["in grey", "red-weak sight", "green-weak sight", "blue-weak sight"]
    fills = {e.get("fill", "") for e in root.iter()}
    greys = [int(f[1:3], 16) for f in fills if len(f) == 7 and f[1:3] == f[3:5] == f[5:7]]
    wanted = luminance(*MOSS)
    assert any(abs(luminance(g, g, g) - wanted) < 0.004 for g in greys)
    listed = json.loads((target / "manifest.json").read_text())
    assert "colour/visions.svg" in json.dumps(listed)
    drawn = {n for n in work.files if n.startswith("findings/")}
    assert all((target / name).is_file() for name in drawn)
