"""The tags of a PDF made good before it is written, for readers who cannot see the page.

In: WeasyPrint's document and the objects of its PDF. Out: the same objects, changed.
Invariant: nothing that is seen on a page changes.

Before the PDF is made, `prepare` gives each element the tag that its `data-tag` names, since
HTML has no element for a step's number and a title is not always a heading to CSS; and it puts
back the space at which a line was broken, without which two words are read as one.

WeasyPrint leaves four things that ISO 14289-1 (PDF/UA-1; from memory) asks otherwise:
words in the margins, such as a running foot, are marked but in no structure, where they
should be artifacts (7.1); the headings of tables do not say what they head (7.5); a box
that WeasyPrint makes for itself repeats the tag of the one that it stands in, so that a
heading holds a heading; and each box inside a link is made a link again, one over the
other, and not all in the structure as links (7.18.5).
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from weasyprint.formatting_structure import boxes

_ONCE = ("/H1", "/H2", "/H3", "/H4", "/H5", "/H6", "/P", "/Link", "/Caption")
"""What does not hold another of its kind."""
_ARTIFACT = ("/Artifact", b"BMC")

Element = Any
"""A dictionary of the PDF's with its `reference`; pydyf has no types."""


_NAMED = {"Lbl": "li::marker", "H1": "h1", "TH": "th", "TD": "td"}
"""By what `data-tag` says: the element that WeasyPrint gives this tag."""


def prepare(document: Any) -> None:
    """Make the boxes of a laid-out document ready to be tagged."""
    for page in document.pages:
        _prepare(page._page_box)


def _prepare(box: Any) -> None:
    named = box.element.get("data-tag") if box.element is not None else None
    if named in _NAMED:
        box.element_tag = _NAMED[named]
    children = getattr(box, "children", ())
    lines = [c for c in children if isinstance(c, boxes.LineBox)]
    for line in lines[:-1]:
        last = _last(line)
        if last is not None and not last.pango_layout.text.endswith((" ", "-", "\u00ad")):
            last.pango_layout.text += " "
    for child in children:
        _prepare(child)


def _last(box: Any) -> Any:
    """Return the text that ends a line; None where it ends with something else."""
    while not isinstance(box, boxes.TextBox):
        children = getattr(box, "children", ())
        if not children:
            return None
        box = children[-1]
    return box


def finish(_: object, pdf: Any) -> None:
    """Make the tags good; WeasyPrint calls this with every object of the PDF."""
    found: dict[bytes, Any] = {o.reference: o for o in pdf.objects}
    roots = [o for o in pdf.objects if isinstance(o, dict) and o.get("S") == "/Document"]
    if not roots:
        return
    _flatten(roots[0], found)
    claimed: dict[bytes, set[int]] = {}
    for element, parents in _below(roots[0], (), found):
        _once(element, parents, found)
        _plain(element, parents)
        _scope(element, parents)
        numbers = [kid for kid in element["K"] if isinstance(kid, int)]
        claimed.setdefault(element.get("Pg", b""), set()).update(numbers)
    for reference in pdf.page_references:
        content = found[found[reference]["Contents"]].stream
        _to_artifacts(content, claimed.get(reference, set()))


def _below(
    element: Element, parents: tuple[Element, ...], found: dict[bytes, Any]
) -> Iterator[tuple[Element, tuple[Element, ...]]]:
    """Yield an element of the structure and all below it, each with what it stands in."""
    yield element, parents
    for kid in element["K"]:
        inner = found.get(kid) if isinstance(kid, bytes) else None
        if isinstance(inner, dict) and "S" in inner:
            yield from _below(inner, (*parents, element), found)


def _flatten(element: Element, found: dict[bytes, Any]) -> None:
    """Make a list that holds nothing but lists one list, and let a label head its item."""
    for kid in list(element["K"]):
        inner = found.get(kid) if isinstance(kid, bytes) else None
        if not isinstance(inner, dict) or "S" not in inner:
            continue
        _flatten(inner, found)
        if inner["S"] == element["S"] == "/L":
            at = element["K"].index(kid)
            element["K"][at : at + 1] = inner["K"]
            for moved in inner["K"]:
                found[moved]["P"] = element.reference
    if element["S"] == "/LI":
        _label(element, found)


def _label(item: Element, found: dict[bytes, Any]) -> None:
    """Move the label that stands in a list item's body before the body."""
    held = [kid for kid in item["K"] if isinstance(kid, bytes)]
    for element, parents in list(_below(item, (), found)):
        if element["S"] == "/Lbl" and len(parents) > 1 and held:
            parents[-1]["K"].remove(element.reference)
            item["K"].insert(0, element.reference)
            element["P"] = item.reference
            return
        if element["S"] == "/LI" and element is not item:
            return


def _once(element: Element, parents: tuple[Element, ...], found: dict[bytes, Any]) -> None:
    """Take away a link that lies on a part of the link that it stands in."""
    if not any(_links(p, found) for p in parents if p["S"] == "/Link"):
        return
    for reference in _links(element, found):
        shown = found[reference]
        element["K"].remove(reference)
        found[shown["Pg"]]["Annots"].remove(shown["Obj"])


def _links(element: Element, found: dict[bytes, Any]) -> list[bytes]:
    """Return the references by which an element holds links."""
    held = [kid for kid in element["K"] if isinstance(kid, bytes) and kid in found]
    return [k for k in held if isinstance(found[k], dict) and found[k].get("Type") == "/OBJR"]


def _plain(element: Element, parents: tuple[Element, ...]) -> None:
    """Turn an element that repeats the one it stands in into a mere run of words."""
    if parents and element["S"] in _ONCE and element["S"] == parents[-1]["S"]:
        element["S"] = "/Span"


def _scope(element: Element, parents: tuple[Element, ...]) -> None:
    """Let a heading of a table say whether it heads columns or rows."""
    if element["S"] == "/TH":
        in_head = any(p["S"] == "/THead" for p in parents)
        element["A"]["Scope"] = "/Column" if in_head else "/Row"


def _to_artifacts(content: list[Any], claimed: set[int]) -> None:
    """Make an artifact of each thing on a page that is marked and in no structure."""
    for at, operator in enumerate(content):
        marked = operator == b"BDC" and isinstance(content[at - 1], dict)
        if marked and content[at - 1].get("MCID") not in claimed:
            content[at - 2], content[at] = _ARTIFACT
            content[at - 1] = b""
