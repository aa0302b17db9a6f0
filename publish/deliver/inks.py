"""What a colour of the pages is in the four inks of a printing condition.

In: sRGB colours and what they paint (`text`, `line`, `fill`). Out: shares of cyan,
magenta, yellow and black.
Invariant: the conversion is the condition's own ICC profile (relative colorimetric with
black point compensation, through Little CMS), the same colour always gives the same
inks, and text is never black on top of other inks.

Three rules stand before the profile, because thin strokes in four inks show every error
of register (common practice, no source): a neutral is black alone; text and lines count
as neutral sooner than fills; and dark text of any hue is solid black.
"""

from __future__ import annotations

import io
from dataclasses import dataclass
from functools import cache, cached_property
from pathlib import Path

from coloraide import Color
from PIL import Image, ImageCms

import publish

Rgb = tuple[int, int, int]
"""Red, green, blue, 0 to 255."""
Inks4 = tuple[float, float, float, float]
"""Cyan, magenta, yellow, black, 0 to 1."""

TEXT, LINE, FILL = "text", "line", "fill"
NEUTRAL = {TEXT: 8.0, LINE: 8.0, FILL: 2.5}
"""CIE chroma (D65) below which a colour is printed in black alone."""
DARK = 25.0
"""CIE L* below which text, and any neutral, is solid black: black ink alone reaches 16."""
RICH = 0.75
"""Share of black above which text takes no other ink."""
BLACK: Inks4 = (0.0, 0.0, 0.0, 1.0)
TOTAL = 3.0
"""The most ink that the profiles were made to lay down: 300 %."""

_INTENT = ImageCms.Intent.RELATIVE_COLORIMETRIC
_FLAGS = ImageCms.Flags.BLACKPOINTCOMPENSATION | ImageCms.Flags.HIGHRESPRECALC


@dataclass(frozen=True)
class Condition:
    """A printing condition that printers know by name, and its ICC profile."""

    identifier: str
    """As in the ICC's registry of characterisation data."""
    description: str
    file: str

    @property
    def path(self) -> Path:
        """Return the profile: inside an installed package, or beside a checkout's."""
        package = Path(publish.__file__).resolve().parent
        places = [home / "layouts" / "press" / self.file for home in (package, package.parent)]
        return next((p for p in places if p.is_file()), places[-1])

    @cached_property
    def profile(self) -> bytes:
        return self.path.read_bytes()


CONDITIONS = {
    "letter": Condition(
        "CGATS TR 006", "GRACoL printing on coated paper, grade 1, ISO 12647-2", "coated-tr006.icc"
    ),
    "a4": Condition(
        "FOGRA39", "Offset printing on coated paper, ISO 12647-2:2004", "coated-fogra39.icc"
    ),
}
"""By paper, or the paper that it is half of: what printers of that paper's countries work
to (common practice, no source)."""


class Press:
    """Colours for one printing condition. Use `press_for`, which keeps what was computed."""

    def __init__(self, condition: Condition) -> None:
        output = ImageCms.getOpenProfile(io.BytesIO(condition.profile))
        srgb, lab = ImageCms.createProfile("sRGB"), ImageCms.createProfile("LAB")
        self._to_inks = ImageCms.buildTransform(srgb, output, "RGB", "CMYK", _INTENT, _FLAGS)
        to_lab = ImageCms.buildTransform(output, lab, "CMYK", "LAB", _INTENT)
        scale = Image.new("CMYK", (101, 1))
        scale.putdata([(0, 0, 0, round(2.55 * share)) for share in range(101)])
        found = ImageCms.applyTransform(scale, to_lab)
        assert found is not None
        self._greys = [found.getpixel((share, 0))[0] / 2.55 for share in range(101)]  # type: ignore[index]
        self._known: dict[tuple[Rgb, str], Inks4] = {}

    def inks(self, colour: Rgb, use: str) -> Inks4:
        """Return the inks that a colour is printed in when it paints `use`."""
        key = (colour, use)
        if key not in self._known:
            self._known[key] = self._inks(colour, use)
        return self._known[key]

    def image(self, picture: Image.Image) -> Image.Image:
        """Return an RGB picture in the four inks."""
        made = ImageCms.applyTransform(picture.convert("RGB"), self._to_inks)
        assert made is not None
        return made

    def _inks(self, colour: Rgb, use: str) -> Inks4:
        lightness, chroma = _measured(colour)
        if chroma < NEUTRAL[use]:
            return self._grey(lightness)
        if use == TEXT and lightness < DARK:
            return BLACK
        values = self.image(Image.new("RGB", (1, 1), colour)).getpixel((0, 0))
        assert isinstance(values, tuple)
        cyan, magenta, yellow, black = (round(v / 255, 3) for v in values)
        if use == TEXT and black > RICH:
            return BLACK
        return cyan, magenta, yellow, black

    def _grey(self, lightness: float) -> Inks4:
        """Return the share of black alone that is as light as a colour."""
        if lightness < DARK:
            return BLACK
        share = min(range(101), key=lambda k: abs(self._greys[k] - lightness))
        return 0.0, 0.0, 0.0, share / 100


@cache
def press_for(condition: Condition) -> Press:
    """Return the colours of a printing condition."""
    return Press(condition)


def _measured(colour: Rgb) -> tuple[float, float]:
    """Return CIE L* and chroma (D65)."""
    lch = Color("srgb", [v / 255 for v in colour]).convert("lch-d65")
    return float(lch["lightness"]), float(lch["chroma"])
