"""What of a drawing's styling decides its outlines.

In: an element, its parent's style, the drawing's style sheets. Out: `Style`.
Invariant: only properties that change which cloth is meant are read: fill or not, stroke
and its width and ends, the fill rule, and whether the shape shows at all.

Attributes give way to style sheets, and those to the element's own `style`, as in SVG.
Style sheets may select by element name, class and id, and by several of these at once.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from xml.etree.ElementTree import Element

import tinycss2  # type: ignore[import-untyped]

from publish.draft.limits import MAX_STYLE
from publish.notes import Note, warning
from publish.svgfile import SvgFile, local

_READ = {
    "fill", "stroke", "stroke-width", "fill-rule", "stroke-linecap", "stroke-linejoin",
    "stroke-miterlimit", "display", "visibility", "clip-path", "mask", "filter", "transform",
}  # fmt: skip
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
class Rule:
    """One selector of a style sheet, and what it declares."""

    name: str
    ids: frozenset[str]
    classes: frozenset[str]
    declared: tuple[tuple[str, str], ...]

    @property
    def weight(self) -> tuple[int, int, int]:
        return len(self.ids), len(self.classes), int(bool(self.name))

    def selects(self, element: Element) -> bool:
        own = set((element.get("class") or "").split())
        return (
            self.name in ("", local(element))
            and self.classes <= own
            and self.ids <= {element.get("id", "")}
        )


def style_rules(svg: SvgFile) -> tuple[tuple[Rule, ...], tuple[Note, ...]]:
    """Return the rules of every style sheet in the file, weakest first."""
    rules: list[Rule] = []
    notes: list[Note] = []
    for element, place in svg.places.items():
        if local(element) != "style":
            continue
        sheet = (element.text or "")[:MAX_STYLE]
        for item in tinycss2.parse_stylesheet(sheet, skip_comments=True, skip_whitespace=True):
            if item.type != "qualified-rule":
                continue
            found = _rules(tinycss2.serialize(item.prelude), item.content)
            rules += found
            if not found:
                notes.append(warning(
                    "D312", place, "a style rule is not applied",
                    received=tinycss2.serialize(item.prelude).strip()[:60],
                    help="set fill and stroke on the shape itself",
                ))  # fmt: skip
    return tuple(sorted(rules, key=lambda r: r.weight)), tuple(notes)


def style_of(element: Element, parent: Style, rules: tuple[Rule, ...]) -> Style:
    """Return an element's style: its parent's with its own declarations over it."""
    declared = {k: v.strip() for k, v in element.attrib.items() if k in _READ}
    declared.pop("transform", None)
    for rule in rules:
        if rule.selects(element):
            declared.update(rule.declared)
    declared.update(_declarations(element.get("style", "")[:MAX_STYLE]))
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


def _rules(selectors: str, content: object) -> list[Rule]:
    declared = tuple(_declarations(content).items())
    found = []
    for part in selectors.split(","):
        match = _SELECTOR.fullmatch(part.strip())
        if match is None or not part.strip():
            continue
        name, marks = match.group(1) or "", re.findall(r"[.#][\w-]+", match.group(2))
        ids = frozenset(m[1:] for m in marks if m[0] == "#")
        classes = frozenset(m[1:] for m in marks if m[0] == ".")
        found.append(Rule("" if name == "*" else name, ids, classes, declared))
    return found


def _declarations(content: object) -> dict[str, str]:
    items = tinycss2.parse_blocks_contents(content, skip_comments=True, skip_whitespace=True)
    return {
        item.lower_name: tinycss2.serialize(item.value).strip()
        for item in items
        if item.type == "declaration" and item.lower_name in _READ
    }
