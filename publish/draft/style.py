"""What of a drawing's styling decides its outlines.

In: an element, its parent's style, the drawing's style sheets. Out: `Style`.
Invariant: only properties that change which cloth is meant are read: fill or not, stroke
and its width and ends, the fill rule, and whether the shape shows at all.

Attributes give way to style sheets, and those to the element's own `style`, as in SVG.
Style sheets may select by element name, class and id, and by several of these at once.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from xml.etree.ElementTree import Element

import tinycss2  # type: ignore[import-untyped]

from publish.draft.limits import MAX_STYLE, MAX_STYLED, MAX_STYLES
from publish.notes import Note, error, warning
from publish.svgfile import SvgFile, local

_READ = {
    "fill",
    "stroke",
    "stroke-width",
    "fill-rule",
    "stroke-linecap",
    "stroke-linejoin",
    "stroke-miterlimit",
    "display",
    "visibility",
    "clip-path",
    "mask",
    "filter",
    "transform",
}
_SELECTOR = re.compile(r"(\*|[A-Za-z][\w-]*)?((?:[.#][\w-]+)*)")


@dataclass(frozen=True)
class Style:
    """Inherited styling. `display`, `effect` and `moved` are the element's own."""

    fill: bool = True
    stroke: bool = False
    width: str = "1"
    rule: str = "nonzero"
    cap: str = "butt"
    join: str = "miter"
    limit: str = "4"
    visible: bool = True
    display: bool = True
    effect: str = ""
    """`clip-path`, `mask` or `filter` when one is set."""
    moved: bool = False
    """A transform is written as a style instead of an attribute."""


@dataclass(frozen=True)
class Selector:
    """What elements a rule is for: a name, ids and classes that they all have."""

    name: str
    ids: frozenset[str]
    classes: frozenset[str]

    @property
    def weight(self) -> tuple[int, int, int]:
        return len(self.ids), len(self.classes), int(bool(self.name))

    @property
    def mark(self) -> str:
        """One thing that every such element has, which it is looked up by."""
        return next((f"#{i}" for i in self.ids), "") or next(
            (f".{c}" for c in sorted(self.classes)), self.name
        )

    def selects(self, name: str, identity: str, classes: frozenset[str]) -> bool:
        return self.name in ("", name) and self.classes <= classes and self.ids <= {identity}


Declared = dict[str, tuple[tuple[int, int, int], int, str]]
"""By property: the weight of the selector, the number of its rule, the value. The greatest
of several is the one that applies."""


class Rules:
    """The style sheets of a drawing, asked element by element.

    Rules of one selector are kept together, selectors by one thing that an element must
    have, and answers by the element's marks, so that the work is about as much as there
    are elements and rules, not as their product.
    """

    def __init__(self) -> None:
        self._by_mark: dict[str, dict[Selector, Declared]] = {}
        self._found: dict[tuple[str, str, str], dict[str, str]] = {}
        self._own: dict[str, dict[str, str]] = {}
        self._count = self._tried = self._read = 0

    @property
    def too_many(self) -> bool:
        """Whether the limits on a drawing's styles are passed; what is asked then is empty."""
        return self._tried > MAX_STYLED or self._read > MAX_STYLES

    def add(self, selector: Selector, declared: Iterable[tuple[str, str]]) -> None:
        """Add a rule after those before it."""
        self._count += 1
        known = self._by_mark.setdefault(selector.mark, {}).setdefault(selector, {})
        known.update({k: (selector.weight, self._count, value) for k, value in declared})

    def of(self, element: Element) -> dict[str, str]:
        """Return what the rules declare for an element."""
        key = local(element), element.get("id", ""), element.get("class") or ""
        if key not in self._found:
            self._found[key] = self._look_up(*key)
        return self._found[key]

    def own(self, element: Element) -> dict[str, str]:
        """Return what an element's own style declares."""
        text = element.get("style", "")[:MAX_STYLE]
        if text not in self._own:
            self._read += len(text)
            self._own[text] = {} if self.too_many else _declarations(text)
        return self._own[text]

    def _look_up(self, name: str, identity: str, written: str) -> dict[str, str]:
        classes = frozenset(written.split())
        best: Declared = {}
        for mark in ("", name, f"#{identity}", *(f".{c}" for c in classes)):
            near = self._by_mark.get(mark, {})
            self._tried += len(near)
            if self.too_many:
                return {}
            for selector, declared in near.items():
                if selector.selects(name, identity, classes):
                    for key, value in declared.items():
                        best[key] = max(best.get(key, value), value)
        return {key: value for key, (_, _, value) in best.items()}


def style_rules(svg: SvgFile) -> tuple[Rules, tuple[Note, ...]]:
    """Return the rules of every style sheet in the file."""
    rules = Rules()
    notes: list[Note] = []
    for element, place in svg.places.items():
        if local(element) != "style":
            continue
        sheet = element.text or ""
        if len(sheet) > MAX_STYLE:
            notes.append(
                error(
                    "D302",
                    place,
                    "a style sheet is too long",
                    expected=f"at most {MAX_STYLE:,} characters",
                    received=f"{len(sheet):,}",
                    help="simplify the drawing, or save only the motif",
                )
            )
            continue
        for item in tinycss2.parse_stylesheet(sheet, skip_comments=True, skip_whitespace=True):
            if item.type != "qualified-rule":
                continue
            if not _add(rules, _text(item.prelude), item.content):
                notes.append(
                    warning(
                        "D312",
                        place,
                        "a style rule is not applied",
                        received=_text(item.prelude)[:60],
                        help="set fill and stroke on the shape itself",
                    )
                )
    return rules, tuple(notes)


def style_of(element: Element, parent: Style, rules: Rules) -> Style:
    """Return an element's style: its parent's with its own declarations over it."""
    declared = {k: v.strip() for k, v in element.attrib.items() if k in _READ}
    declared.pop("transform", None)
    declared.update(rules.of(element))
    declared.update(rules.own(element))
    declared = {k: v for k, v in declared.items() if v and v != "inherit"}
    effects = [k for k in ("clip-path", "mask", "filter") if declared.get(k, "none") != "none"]
    return replace(
        parent,
        fill=_painted(declared.get("fill"), parent.fill),
        stroke=_painted(declared.get("stroke"), parent.stroke),
        width=declared.get("stroke-width", parent.width),
        rule=declared.get("fill-rule", parent.rule),
        cap=declared.get("stroke-linecap", parent.cap),
        join=declared.get("stroke-linejoin", parent.join),
        limit=declared.get("stroke-miterlimit", parent.limit),
        visible=declared.get("visibility", "visible" if parent.visible else "hidden") == "visible",
        display=declared.get("display") != "none",
        effect=effects[0] if effects else "",
        moved=declared.get("transform", "none") != "none",
    )


def _painted(value: str | None, inherited: bool) -> bool:
    return inherited if value is None else value not in ("none", "transparent")


def _add(rules: Rules, selectors: str, content: object) -> bool:
    """Add a rule for each of its selectors, and say whether there is one that is read."""
    declared = _declarations(content).items()
    found = False
    for part in selectors.split(","):
        match = _SELECTOR.fullmatch(part.strip())
        if match is None or not part.strip():
            continue
        name, marks = match.group(1) or "", re.findall(r"[.#][\w-]+", match.group(2))
        ids = frozenset(m[1:] for m in marks if m[0] == "#")
        classes = frozenset(m[1:] for m in marks if m[0] == ".")
        rules.add(Selector("" if name == "*" else name, ids, classes), declared)
        found = True
    return found


def _declarations(content: object) -> dict[str, str]:
    items = tinycss2.parse_blocks_contents(content, skip_comments=True, skip_whitespace=True)
    return {
        item.lower_name: _text(item.value)
        for item in items
        if item.type == "declaration" and item.lower_name in _READ
    }


def _text(nodes: object) -> str:
    """Return CSS as text; nothing where brackets are nested deeper than any value's are."""
    try:
        return str(tinycss2.serialize(nodes)).strip()
    except RecursionError:
        return ""
