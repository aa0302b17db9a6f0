"""The designer's own fonts, logo and colour: a pattern's `style` over a layout.

In: pattern, layout. Out: the layout with the designer's fonts, the logo; notes.
Invariant: a font or logo that cannot be used is a note and never a traceback; where a
font of the designer's has no bold or italic, the layout's own stands in, so that what is
bold in the words stays bold on the page.
"""

from __future__ import annotations

import io
from collections.abc import Iterator, Mapping
from dataclasses import replace
from pathlib import Path

from fontTools.pens.basePen import NullPen  # type: ignore[import-untyped]
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from publish.model.pattern import Pattern
from publish.notes import Note, Place, error, warning
from publish.typeset import fonts, palette, pictures
from publish.typeset.layout import Layout
from publish.typeset.layout_file import ROLES, FontFace
from publish.typeset.numerals import with_room

OWN = "Own {}"
"""The name that a role's family gets when its font is the designer's."""
_BOLD, _REGULAR = 600, 400
_STYLES = {"": (_REGULAR, "normal"), "_bold": (_BOLD, "normal"), "_italic": (_REGULAR, "italic")}
"""By the end of a key of `style.fonts`: the weight and style that CSS asks for it by."""
_BASIC = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,-/()"
"""What a font for words must have; the rest may come from the layout's fonts."""
_NEEDED = ("head", "hhea", "hmtx", "maxp", "name", "post", "OS/2", "cmap")
"""Tables that every OpenType font has (OpenType specification, required tables)."""
PLAIN_LETTERS = 'html { font-language-override: "sw" }'
"""Style that lets a font without accents be used. Fontconfig prefers another weight of a
family to a font that lacks letters of the text's language, and counts é and ñ among those
of English; Swahili asks for A to Z alone, and is set no differently."""
_FRACTIONS = "frac"
"""The feature of true fractions (OpenType specification, registered features)."""
_RESTRICTED = 0x0002
"""OS/2 fsType: restricted licence embedding (OpenType specification, OS/2 table)."""


def check(pattern: Pattern) -> tuple[Note, ...]:
    """Return everything that is wrong with a pattern's own fonts, logo and accent."""
    own = pattern.style
    notes: list[Note] = []
    for key, path in own.fonts.items():
        notes += _font(key, path, pattern.place("style", "fonts", key))
    if own.logo is not None:
        notes += pictures.check_logo(own.logo, pattern.place("style", "logo"))
    if own.accent is not None:
        notes += _accent(own.accent, pattern.place("style", "accent"))
    return tuple(notes)


def _font(key: str, path: Path, place: Place) -> list[Note]:
    """Return what is wrong with a font file of the designer's."""
    try:
        letters, rights, features = _opened(path)
    except Exception as problem:  # a damaged font can make the library raise almost anything
        said = str(problem).splitlines()[0] if str(problem) else type(problem).__name__
        return [
            error(
                "T712",
                place,
                f"the file of `{key}` is not a font that can be read",
                expected="a TrueType or OpenType font",
                received=said[:80],
                help="export the font again as .ttf or .otf",
            )
        ]
    return list(_usable(key, place, letters, rights, features))


def _usable(
    key: str, place: Place, letters: frozenset[int], rights: int, features: frozenset[str]
) -> Iterator[Note]:
    """Yield what is wrong with the letters, the rights and the fractions of a font."""
    lacking = "".join(c for c in _BASIC if ord(c) not in letters)
    if lacking:
        yield warning(
            "T713",
            place,
            f"the font of `{key}` lacks letters of everyday words",
            expected="the Latin letters, digits and stops",
            received=lacking,
            help="the layout's own font stands in, for those letters or for all of "
            "the words; choose a font that has them",
        )
    if rights & _RESTRICTED:
        yield warning(
            "T714",
            place,
            f"the font of `{key}` does not allow to be put into a file",
            expected="a licence that allows embedding",
            received=f"fsType {rights:#06x} in the font's OS/2 table",
            help="ask the font's maker, or choose another font",
        )
    if _FRACTIONS not in features and not key.startswith("titles"):
        yield _no_fractions(key, place, features)


def _no_fractions(key: str, place: Place, features: frozenset[str]) -> Note:
    """Return the note on a font that has no true fractions."""
    return warning(
        "T722",
        place,
        f"the font of `{key}` has no true fractions",
        expected="the OpenType feature `frac`, which sets 1/2 as one sign",
        received=" ".join(sorted(features)) or "a font without features",
        help="fractions are set in a font that has them, another of yours or the "
        "layout's; choose a font with `frac` for fractions of its own",
    )


def _opened(path: Path) -> tuple[frozenset[int], int, frozenset[str]]:
    """Return the characters of a font, its embedding rights and the features by which it sets
    signs, once it has shown that every table that setting needs, and every everyday letter,
    can be read."""
    with TTFont(io.BytesIO(path.read_bytes()), fontNumber=0) as font:
        for table in _NEEDED:
            font[table]
        glyphs = font.getGlyphSet()
        names = font.getBestCmap()
        for name in (names[ord(c)] for c in _BASIC if ord(c) in names):
            glyphs[name].draw(NullPen())
        return frozenset(names), font["OS/2"].fsType, _features(font)


def _features(font: TTFont) -> frozenset[str]:
    """Return the tags of a font's features that put signs in the place of others."""
    rules = font["GSUB"].table.FeatureList if "GSUB" in font else None
    return frozenset(r.FeatureTag for r in rules.FeatureRecord) if rules else frozenset()


def _accent(colour: str, place: Place) -> list[Note]:
    """Return a note when an accent is printed darker than it is written."""
    printed = palette.accent_of(colour)
    if printed == colour:
        return []
    reached = palette.weakest(colour)
    return [
        warning(
            "T715",
            place,
            "the accent is too pale to be read as text, and is printed darker",
            expected=f"a contrast of at least {palette.READABLE:g} : 1 (WCAG 2.0, AA)",
            received=f"{colour}, {reached:.2f} : 1",
            help=f'write `"{printed}"`',
        )
    ]


def dressed(layout: Layout, pattern: Pattern) -> Layout:
    """Return a layout with the designer's fonts in the roles that they are given for."""
    own = pattern.style.fonts
    roles = [role for role in ROLES if role in own]
    if not roles:
        return layout
    faces, families = list(layout.fonts), dict(layout.families)
    for role in roles:
        family = OWN.format(role)
        faces += _faces(role, family, own, layout)
        families[role] = family
        if (
            role == "text"
            and "titles" not in own
            and layout.families["titles"] == (layout.families["text"])
        ):
            families["titles"] = family
    return with_room(replace(layout, fonts=tuple(faces), families=families))


def fractions_css(layout: Layout, pattern: Pattern) -> str:
    """Return the style that sets fractions in a font that has true ones, where one of the
    designer's has not: in another of theirs that has, else in that of the layout's words."""
    own = [role for role in ("text", "labels") if role in pattern.style.fonts]
    able = [role for role in own if _has_fractions(role, pattern.style.fonts)]
    if able == own:
        return ""
    family = OWN.format(able[0]) if able else _first_family(layout)
    return f".fraction {{ font-family: {fonts.quoted(family)} }}"


def _has_fractions(role: str, own: Mapping[str, Path]) -> bool:
    """Return whether every font of a role has true fractions."""
    given = [path for ending in _STYLES if (path := own.get(role + ending))]
    return all(_FRACTIONS in _opened(path)[2] for path in given)


def _first_family(layout: Layout) -> str:
    """Return the family that a layout sets words in by itself."""
    return next(f.family for f in layout.fonts if not f.family.startswith(OWN.format("")))


def _faces(role: str, family: str, own: Mapping[str, Path], layout: Layout) -> list[FontFace]:
    """Return the faces of one family of the designer's, the layout's own where it has none."""
    faces = []
    for ending, (weight, style) in _STYLES.items():
        path = own.get(role + ending)
        if path is None and (role != "titles" or not ending):
            path = _standing_in(layout, layout.families[role], weight, style)
        if path is not None:
            faces.append(FontFace(family, weight, style, path))
    return faces


def _standing_in(layout: Layout, family: str, weight: int, style: str) -> Path | None:
    """Return the layout's nearest face of a style."""
    alike = [f for f in layout.fonts if f.family == family and f.style == style]
    return min(alike, key=lambda f: abs(f.weight - weight)).path if alike else None


def stack(layout: Layout, role: str) -> str:
    """Return the CSS families of a role: its own, then the layout's, for missing signs."""
    names = [layout.families[role], *(f.family for f in layout.fonts)]
    names = [n for n in dict.fromkeys(names) if n == names[0] or not n.startswith(OWN.format(""))]
    return ", ".join(fonts.quoted(n) for n in names)
