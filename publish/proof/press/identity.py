"""Whether a press edition says what it is, and holds only what a print shop can use.

In: a printed press edition. Out: notes.
Invariant: one PDF/X output intent, with the profile of an output device in four inks;
title, dates, `Trapped` and PDF/X-4 in the XMP, alike in the document information; an
identifier; no encryption, links, forms, actions or attached files.

The rules are those of PDF/X-4 (ISO 15930-7), from memory. ICC headers: ICC.1:2010, 7.2.
"""

from __future__ import annotations

import xml.etree.ElementTree as ET
from collections.abc import Iterator

import pikepdf

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.printed.paper import Printed

CODES = {
    "P887": Code(
        "The printing condition is not stated",
        "the printer guesses the colours",
        "a file without an output intent",
        "one output intent with its profile",
    ),
    "P888": Code(
        "The file does not say that it is PDF/X-4",
        "the printer refuses it",
        "a file that is PDF/X-4 and does not say so",
        "version, title and trapping in the file's metadata",
    ),
    "P889": Code(
        "The file holds what cannot be printed",
        "the printer refuses it",
        "a link or an attachment in the file for the shop",
        "pages alone",
    ),
}
VERSION = "PDF/X-4"
_RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#"
_XMP = "http://ns.adobe.com/xap/1.0/"
_WANTED = {
    "GTS_PDFXVersion": "{http://www.npes.org/pdfx/ns/id/}GTS_PDFXVersion",
    "title": "{http://purl.org/dc/elements/1.1/}title",
    "CreateDate": f"{{{_XMP}}}CreateDate",
    "ModifyDate": f"{{{_XMP}}}ModifyDate",
    "MetadataDate": f"{{{_XMP}}}MetadataDate",
    "DocumentID": f"{{{_XMP}mm/}}DocumentID",
    "VersionID": f"{{{_XMP}mm/}}VersionID",
    "RenditionClass": f"{{{_XMP}mm/}}RenditionClass",
    "Trapped": "{http://ns.adobe.com/pdf/1.3/}Trapped",
}
_ROOT = ("/AcroForm", "/OpenAction", "/AA")
_SIGNATURE, _DEVICE, _SPACE = slice(36, 40), slice(12, 16), slice(16, 20)


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each thing that the file lacks or should not have."""
    for code, what in (
        *_intents(printed.objects),
        *_said(printed.objects),
        *_unprintable(printed.objects),
    ):
        yield error(code, printed.pattern.place("layout"), f"{printed.edition.name} {what}")


def _intents(book: pikepdf.Pdf) -> Iterator[tuple[str, str]]:
    found = [
        i for i in book.Root.get("/OutputIntents", pikepdf.Array()) if i.get("/S") == "/GTS_PDFX"
    ]
    if len(found) != 1:
        yield "P887", f"has {len(found)} PDF/X output intents instead of one"
        return
    if not str(found[0].get("/OutputConditionIdentifier", "")).strip():
        yield "P887", "names no printing condition"
    profile = found[0].get("/DestOutputProfile")
    if not isinstance(profile, pikepdf.Stream):
        yield "P887", "has no profile of its printing condition"
        return
    data = profile.read_bytes()
    head = (data[_SIGNATURE], data[_DEVICE], data[_SPACE])
    if head != (b"acsp", b"prtr", b"CMYK") or int(profile.get("/N", 0)) != 4:
        yield "P887", "has a profile that is not one of an output device in four inks"
    elif int.from_bytes(data[:4], "big") != len(data):
        yield "P887", "has a profile that is cut off"


def _said(book: pikepdf.Pdf) -> Iterator[tuple[str, str]]:
    metadata = book.Root.get("/Metadata")
    if not isinstance(metadata, pikepdf.Stream):
        yield "P888", "has no XMP"
        return
    if "/Filter" in metadata:
        yield "P888", "has XMP that is compressed, so that nobody can read it by itself"
    words = _words(metadata.read_bytes())
    for name in _WANTED:
        if not words.get(name):
            yield "P888", f"has no {name} in its XMP"
    if words.get("GTS_PDFXVersion") not in (None, VERSION):
        yield "P888", f"says that it is {words['GTS_PDFXVersion']}"
    info = book.trailer.get("/Info", pikepdf.Dictionary())
    trapped = str(info.get("/Trapped", "")).lstrip("/")
    if trapped not in ("True", "False") or trapped != words.get("Trapped"):
        yield "P888", "does not say alike in both places whether it is trapped"
    if str(info.get("/Title", "")) != words.get("title"):
        yield "P888", "does not say its title alike in both places"
    for name in ("/CreationDate", "/ModDate"):
        if not str(info.get(name, "")).startswith("D:"):
            yield "P888", f"has no {name.lstrip('/')}"
    if len(book.trailer.get("/ID", pikepdf.Array())) != 2:
        yield "P888", "has no identifier"


def _words(xmp: bytes) -> dict[str, str]:
    """Return what an XMP packet says, by name; a list's first item stands for it."""
    try:
        root = ET.fromstring(xmp.decode("utf-8-sig").strip())
    except (ET.ParseError, UnicodeDecodeError):
        return {}
    found: dict[str, str] = {}
    for part in root.iter(f"{{{_RDF}}}Description"):
        for name, full in _WANTED.items():
            element = part.find(full)
            if element is not None:
                found[name] = "".join(element.itertext()).strip()
            elif full in part.attrib:
                found[name] = part.attrib[full]
    return found


def _unprintable(book: pikepdf.Pdf) -> Iterator[tuple[str, str]]:
    if book.is_encrypted:
        yield "P889", "is encrypted"
    for key in _ROOT:
        if key in book.Root:
            yield "P889", f"has {key.lstrip('/')}"
    if "/EmbeddedFiles" in book.Root.get("/Names", pikepdf.Dictionary()):
        yield "P889", "has files attached"
    for number, page in enumerate(book.pages, start=1):
        if "/Annots" in page.obj or "/AA" in page.obj:
            yield "P889", f"has links or actions on page {number}"
