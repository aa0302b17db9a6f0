"""An independent reading of a tagged PDF, with pikepdf alone.

ISO 14289-1 (PDF/UA-1) and ISO 32000-1, 14.7 and 14.8, both from memory: the clauses are
named at each check. Every fault is a line of text; a file without faults gives none.
"""

from __future__ import annotations

import ctypes
import io
import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field

import pikepdf
import pypdfium2
import pypdfium2.raw as raw

SHOWS = {"Tj", "TJ", "'", '"', "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "sh", "Do", "EI"}
"""Operators that put something on the page (ISO 32000-1, annex A)."""
STANDARD = {
    "Document",
    "Part",
    "Art",
    "Sect",
    "Div",
    "BlockQuote",
    "Caption",
    "TOC",
    "TOCI",
    "Index",
    "NonStruct",
    "Private",
    "P",
    "H",
    "H1",
    "H2",
    "H3",
    "H4",
    "H5",
    "H6",
    "L",
    "LI",
    "Lbl",
    "LBody",
    "Table",
    "TR",
    "TH",
    "TD",
    "THead",
    "TBody",
    "TFoot",
    "Span",
    "Quote",
    "Note",
    "Reference",
    "BibEntry",
    "Code",
    "Link",
    "Annot",
    "Ruby",
    "Warichu",
    "Figure",
    "Formula",
    "Form",
}
"""Standard structure types (ISO 32000-1, 14.8.4)."""


@dataclass
class Tags:
    """What was found on the way through the structure."""

    headings: list[str] = field(default_factory=list)
    figures: int = 0
    tables: int = 0
    kinds: Counter[str] = field(default_factory=Counter)
    faults: list[str] = field(default_factory=list)
    rows: list[list[str]] = field(default_factory=list)
    """The kinds of cells of each row below a table's heading."""
    empty: list[str] = field(default_factory=list)
    """Lists that hold lists and nothing else, or nothing at all."""
    marked: dict[tuple[int, int], set[int]] = field(default_factory=dict)
    """Marked-content identifiers that the structure claims, by page."""


def read_tags(pdf: bytes) -> Tags:
    """Return what a tagged PDF holds and everything that is wrong with it."""
    tags = Tags()
    with pikepdf.open(io.BytesIO(pdf)) as book:
        tags.faults += document_faults(book)
        if "/StructTreeRoot" not in book.Root:
            return tags
        roles = {
            str(k).lstrip("/"): str(v).lstrip("/")
            for k, v in book.Root.StructTreeRoot.get("/RoleMap", {}).items()
        }
        for child in kids(book.Root.StructTreeRoot):
            walk(child, "", roles, None, tags)
        tags.faults += heading_faults(tags.headings)
        for number, page in enumerate(book.pages, 1):
            tags.faults += [f"page {number}: {f}" for f in page_faults(page, tags)]
        tags.faults += font_faults(book)
    return tags


def document_faults(book: pikepdf.Pdf) -> Iterator[str]:
    """ISO 14289-1, clauses 5 (identification), 6.2, 7.1 (title), 7.2 (language)."""
    root = book.Root
    if "/StructTreeRoot" not in root:
        yield "no structure tree"
    if not bool(root.get("/MarkInfo", {}).get("/Marked", False)):
        yield "not marked as tagged"
    if not re.fullmatch(r"[a-z]{2}(-[A-Z]{2})?", str(root.get("/Lang", ""))):
        yield "no language"
    if not bool(root.get("/ViewerPreferences", {}).get("/DisplayDocTitle", False)):
        yield "the title is not displayed"
    words = root.Metadata.read_bytes().decode() if "/Metadata" in root else ""
    if not re.search(r"pdfuaid:part(=\"1\"|>\s*1\s*<)", words):
        yield "no pdfuaid:part 1 in the metadata"
    if not re.search(r"<dc:title>.*?<rdf:li[^>]*>[^<]+</rdf:li>", words, re.DOTALL):
        yield "no title in the metadata"


def kids(element: pikepdf.Object) -> list[pikepdf.Object]:
    found = element.get("/K")
    if found is None:
        return []
    return list(found) if isinstance(found, pikepdf.Array) else [found]


def walk(element: object, parent: str, roles: dict[str, str], page: object, tags: Tags) -> None:
    """Look at one element of the structure and all below it."""
    if not isinstance(element, pikepdf.Dictionary) and not isinstance(element, pikepdf.Object):
        claim(page, int(str(element)), tags)
        return
    kind = str(element.get("/Type", "/StructElem"))
    if kind == "/MCR":
        claim(element.get("/Pg", page), int(element.MCID), tags)
    if kind == "/OBJR" and element.Obj.get("/Subtype") == "/Link" and parent != "Link":
        tags.faults.append(f"a link stands in {parent}")  # ISO 14289-1, 7.18.5
    if kind in ("/MCR", "/OBJR"):
        return
    page = element.get("/Pg", page)
    name = str(element.S).lstrip("/")
    name = roles.get(name, name)
    tags.kinds[name] += 1
    tags.faults += element_faults(element, name, parent)
    if re.fullmatch(r"H[1-6]", name):
        tags.headings.append(name)
    tags.figures += name == "Figure"
    tags.tables += name == "Table"
    names = [str(k.S).lstrip("/") for k in kids(element) if hasattr(k, "S") and "/S" in k]
    if name == "TR" and parent == "TBody":
        tags.rows.append(names)
    if name == "L" and "LI" not in names:
        tags.empty.append(f"a list of {names}")
    for child in kids(element):
        walk(child, name, roles, page, tags)


def read_aloud(pdf: bytes) -> str:
    """Return the words of a tagged PDF in the order of its structure, with nothing put between
    its runs of letters: what a program says that trusts the file."""
    book, found = pypdfium2.PdfDocument(pdf), list[str]()
    runs = [_runs(page) for page in book]
    with pikepdf.open(io.BytesIO(pdf)) as file:
        numbers = {page.obj.objgen: n for n, page in enumerate(file.pages)}

        def say(element: object, page: object) -> None:
            if not isinstance(element, pikepdf.Dictionary):
                found.append(runs[numbers[page.objgen]].get(int(str(element)), ""))  # type: ignore[attr-defined]
            elif "/S" in element:
                for child in kids(element):
                    say(child, element.get("/Pg", page))
                if str(element.S) in ("/P", "/LI", "/TD", "/TH", "/Caption"):
                    found.append("\n")

        for child in kids(file.Root.StructTreeRoot):
            say(child, None)
    return "".join(found)


def _runs(page: pypdfium2.PdfPage) -> dict[int, str]:
    """Return the letters of each marked run of a page, by its number."""
    words, found = page.get_textpage(), dict[int, str]()
    for at in range(raw.FPDFPage_CountObjects(page)):
        thing = raw.FPDFPage_GetObject(page, at)
        number = raw.FPDFPageObj_GetMarkedContentID(thing)
        if raw.FPDFPageObj_GetType(thing) == raw.FPDF_PAGEOBJ_TEXT and number >= 0:
            length = raw.FPDFTextObj_GetText(thing, words, None, 0)
            buffer = ctypes.create_string_buffer(length)
            there = ctypes.cast(buffer, ctypes.POINTER(ctypes.c_ushort))
            raw.FPDFTextObj_GetText(thing, words, there, length)
            found[number] = found.get(number, "") + buffer.raw.decode("utf-16-le").rstrip("\0")
    return found


def claim(page: object, number: int, tags: Tags) -> None:
    if isinstance(page, pikepdf.Object):
        tags.marked.setdefault(page.objgen, set()).add(number)


def element_faults(element: pikepdf.Object, name: str, parent: str) -> Iterator[str]:
    """ISO 14289-1, 7.1 (standard types), 7.3 (figures), 7.5 (tables), 7.6 (lists)."""
    if name not in STANDARD:
        yield f"{name} is no standard type"
    if name == "Figure" and not str(element.get("/Alt", "")).strip():
        yield "a figure has no alternative text"
    if name in ("TH", "TD") and parent != "TR":
        yield f"{name} stands in {parent}"
    if name == "TR" and parent not in ("Table", "THead", "TBody", "TFoot"):
        yield f"TR stands in {parent}"
    if name == "TH" and scope(element) not in ("Column", "Row", "Both"):
        yield "a table heading has no scope"
    if name == "LI" and parent != "L":
        yield f"LI stands in {parent}"
    if name in ("Lbl", "LBody") and parent != "LI" and name == "LBody":
        yield f"{name} stands in {parent}"


def scope(element: pikepdf.Object) -> str:
    given = element.get("/A")
    every = list(given) if isinstance(given, pikepdf.Array) else [given]
    found = [str(a.Scope) for a in every if isinstance(a, pikepdf.Dictionary) and "/Scope" in a]
    return found[0].lstrip("/") if found else ""


def heading_faults(headings: list[str]) -> Iterator[str]:
    """ISO 14289-1, 7.4.2: the first heading is H1, and no level is passed over on the way
    down."""
    level = 0
    for name in headings:
        if int(name[1]) > level + 1:
            yield f"{name} follows H{level}"
        level = int(name[1])
    if not headings:
        yield "no headings"


def page_faults(page: pikepdf.Page, tags: Tags) -> Iterator[str]:
    """ISO 14289-1, 7.1 (all content is tagged or an artifact), 7.18.3 (tab order), 7.18.5
    (links)."""
    claimed = tags.marked.get(page.obj.objgen, set())
    stack: list[str] = []
    loose = 0
    for step in pikepdf.parse_content_stream(page):
        name = str(step.operator)
        if name in ("BMC", "BDC"):
            stack.append(mark_of(step.operands, claimed))
        elif name == "EMC":
            stack.pop()
        elif name in SHOWS and not any(stack):
            loose += 1
    if loose:
        yield f"{loose} things are neither tagged nor artifacts"
    if stack:
        yield "marked content does not end"
    if page.obj.get("/Annots") is not None and page.obj.get("/Tabs") != "/S":
        yield "the tab order is not that of the structure"
    for note in page.obj.get("/Annots", []):
        if note.get("/Subtype") == "/Link" and "/StructParent" not in note:
            yield "a link is not in the structure"
        if note.get("/Subtype") == "/Link" and not str(note.get("/Contents", "")):
            yield "a link has no words"


def mark_of(operands: list[object], claimed: set[int]) -> str:
    """Return what a mark stands for: `artifact`, `tagged`, or nothing."""
    if str(operands[0]) == "/Artifact":
        return "artifact"
    more = operands[1] if len(operands) > 1 else None
    number = more.get("/MCID") if isinstance(more, pikepdf.Dictionary) else None
    return "tagged" if number is not None and int(number) in claimed else ""


def font_faults(book: pikepdf.Pdf) -> Iterator[str]:
    """ISO 14289-1, 7.21.4 (embedding) and 7.21.7 (characters)."""
    for page in book.pages:
        for font in page.obj.get("/Resources", {}).get("/Font", {}).values():
            if "/ToUnicode" not in font:
                yield f"{font.BaseFont} cannot be read back"
