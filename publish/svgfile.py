"""An SVG file as a tree that is safe to walk.

In: the bytes of a file. Out: elements with their places, or notes on why not.
Invariant: nothing outside the file is opened, no entity is expanded, nothing runs; the
work is bounded by the limits on size, depth and number of elements.

A document type is passed over, as drawing programs write one; what it may declare is
refused: entities are how a small file becomes an endless one, and attributes for every
element would come from no line of the drawing.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from xml.etree.ElementTree import Element
from xml.parsers import expat

from publish.notes import Note, Place, error

MAX_BYTES = 5_000_000
"""Of an SVG file. A hand-drawn motif is a few hundred kilobytes at most."""
MAX_ELEMENTS = 20_000
MAX_DEPTH = 60

SVG = "http://www.w3.org/2000/svg"
XLINK = "http://www.w3.org/1999/xlink"

_OUTSIDE = re.compile(r"url\(\s*['\"]?\s*(?!#|['\"]?\s*#)|@import|javascript:", re.IGNORECASE)


@dataclass
class SvgFile:
    """A parsed file: the root, where each element stands, and elements by id."""

    root: Element
    places: dict[Element, Place]
    by_id: dict[str, Element]
    parents: dict[Element, Element]


class _RefusedError(Exception):
    """Reading ends here, for the reason in `note`."""

    def __init__(self, note: Note) -> None:
        super().__init__(note.what)
        self.note = note


@dataclass
class _Reader:
    """Builds the tree and refuses what a drawing has no use for."""

    file: str
    path: str
    parser: expat.XMLParserType
    stack: list[Element] = field(default_factory=list)
    places: dict[Element, Place] = field(default_factory=dict)
    by_id: dict[str, Element] = field(default_factory=dict)
    parents: dict[Element, Element] = field(default_factory=dict)
    root: Element | None = None

    def here(self) -> Place:
        parser = self.parser
        line, column = parser.CurrentLineNumber, parser.CurrentColumnNumber
        return Place(self.file, max(line, 1), max(column, 0) + 1, self.path)

    def start(self, name: str, attributes: dict[str, str]) -> None:
        place = self.here()
        element = Element(_tag(name), {_tag(k): v for k, v in attributes.items()})
        if len(self.stack) >= MAX_DEPTH:
            limit = f"at most {MAX_DEPTH} levels"
            raise _RefusedError(_too("groups are nested too deeply", place, limit))
        if len(self.places) >= MAX_ELEMENTS:
            raise _RefusedError(_too("too many elements", place, f"at most {MAX_ELEMENTS}"))
        _refuse_active(element, place)
        self.places[element] = place
        self.by_id.setdefault(element.get("id", ""), element)
        if self.stack:
            self.stack[-1].append(element)
            self.parents[element] = self.stack[-1]
        else:
            self.root = element
        self.stack.append(element)

    def end(self, _name: str) -> None:
        element = self.stack.pop()
        if local(element) == "style" and _OUTSIDE.search(element.text or ""):
            raise _RefusedError(_outside(self.places[element], "a style sheet or picture"))

    def text(self, data: str) -> None:
        if self.stack and local(self.stack[-1]) == "style":
            self.stack[-1].text = (self.stack[-1].text or "") + data

    def declared(self, *_: object) -> None:
        raise _RefusedError(
            error(
                "D303",
                self.here(),
                "the drawing's document type declares entities or attributes",
                expected="a <!DOCTYPE ...> without <!ENTITY ...> and <!ATTLIST ...>, or none",
                help="save the drawing as plain SVG",
            )
        )

    def skipped(self, name: str, _parameter: bool) -> None:
        raise _RefusedError(_malformed(ValueError(f"undefined entity &{name};"), self.here()))

    def instruction(self, target: str, _data: str) -> None:
        if target.lower() == "xml-stylesheet":
            raise _RefusedError(_outside(self.here(), "a style sheet"))


def read_svg(data: bytes, file: str, path: str) -> tuple[SvgFile | None, tuple[Note, ...]]:
    """Parse an SVG file; `path` is the way through the YAML that led to it.

    Returns the file, or None and one note that says where and why it was refused.
    """
    top = Place(file, 1, 1, path)
    if len(data) > MAX_BYTES:
        limit = f"at most {MAX_BYTES // 1_000_000} MB"
        return None, (_too("the file is too large", top, limit, f"{len(data)} bytes"),)
    parser = expat.ParserCreate(namespace_separator="}")
    reader = _Reader(file, path, parser)
    parser.buffer_text = True
    parser.StartElementHandler = reader.start
    parser.EndElementHandler = reader.end
    parser.CharacterDataHandler = reader.text
    parser.EntityDeclHandler = reader.declared
    parser.AttlistDeclHandler = reader.declared
    parser.SkippedEntityHandler = reader.skipped
    parser.ProcessingInstructionHandler = reader.instruction
    try:
        parser.Parse(data, True)
    except _RefusedError as stop:
        return None, (stop.note,)
    except (expat.ExpatError, ValueError, LookupError) as fault:
        return None, (_malformed(fault, top),)
    root = reader.root
    if root is None or root.tag != f"{{{SVG}}}svg":
        return None, (_not_svg(root, top),)
    return SvgFile(root, reader.places, reader.by_id, reader.parents), ()


def local(element: Element) -> str:
    """Return an element's name without its namespace; empty outside SVG's own."""
    space, _, name = element.tag.rpartition("}")
    return name if space in ("", f"{{{SVG}") else ""


def href(element: Element) -> str:
    """Return what an element refers to, by the newer or the older attribute."""
    return (element.get("href") or element.get(f"{{{XLINK}}}href") or "").strip()


def _tag(name: str) -> str:
    return f"{{{name}" if "}" in name else name


def _refuse_active(element: Element, place: Place) -> None:
    """Stop at scripts, event handlers and references that leave the file."""
    if local(element) == "script" or element.tag.endswith("}script"):
        raise _RefusedError(_script(place, "a <script> element"))
    for name, value in element.attrib.items():
        bare = name.rpartition("}")[2].lower()
        if bare.startswith("on") and bare.isalpha():
            raise _RefusedError(_script(place, f"the attribute {bare}"))
        if bare == "href" and not _inside(element, value.strip()):
            raise _RefusedError(_outside(place, f"{value.strip()[:60]!r}"))
        if _OUTSIDE.search(value):
            raise _RefusedError(_outside(place, f"{value.strip()[:60]!r}"))


def _inside(element: Element, target: str) -> bool:
    embedded = local(element) == "image" and target.lower().startswith("data:image/")
    return not target or target.startswith("#") or embedded


def _too(what: str, place: Place, expected: str, received: str = "") -> Note:
    return error(
        "D302",
        place,
        what,
        expected=expected,
        received=received,
        help="simplify the drawing, or save only the motif",
    )


def _script(place: Place, what: str) -> Note:
    return error(
        "D305",
        place,
        "the drawing holds a script",
        received=what,
        help="save the drawing as plain SVG, without scripts",
    )


def _outside(place: Place, what: str) -> Note:
    return error(
        "D304",
        place,
        "the drawing refers to something outside itself",
        received=what,
        help="embed or remove it: a motif needs only its own shapes",
    )


def _malformed(fault: Exception, top: Place) -> Note:
    place, reason = top, str(fault)
    if isinstance(fault, expat.ExpatError):
        place = Place(top.file, max(fault.lineno, 1), fault.offset + 1, top.path)
        reason = reason.split(":")[0]
    return error(
        "D301",
        place,
        "the drawing is not well-formed SVG",
        received=reason,
        help="open it in a drawing program and save it again as plain SVG",
    )


def _not_svg(root: Element | None, top: Place) -> Note:
    return error(
        "D301",
        top,
        "the file is not an SVG drawing",
        expected=f'<svg xmlns="{SVG}">',
        received=f"<{root.tag.rpartition('}')[2]}>" if root is not None else "nothing",
        help="save the drawing as plain SVG",
    )
