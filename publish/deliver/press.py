"""The press edition: a booklet with bleed as PDF/X-4 for a print shop.

In: an edition that was typeset with bleed, its pattern. Out: PDF bytes.
Invariant: what stands on the pages stays where it is; every colour is in four inks of one
named printing condition; the file says what it is and has neither clock nor chance in it.

PDF/X-4 is ISO 15930-7. The rules kept here are from memory: one PDF/X output intent, trim
and bleed boxes nested in the media box, fonts embedded, no links, actions or encryption,
XMP with title, dates, document identifier and `GTS_PDFXVersion`, and a `Trapped` that is
not unknown. A validator at the print shop has the last word.
"""

from __future__ import annotations

import hashlib
import io
from dataclasses import dataclass
from uuid import NAMESPACE_URL, uuid5
from xml.sax.saxutils import escape

import pikepdf

from publish.deliver.inks import CONDITIONS, Condition, press_for
from publish.deliver.marks import LENGTH, Box, crop_marks
from publish.deliver.recolour import recolour
from publish.model.book import Edition
from publish.model.pattern import Pattern

VERSION = "PDF/X-4"
REGISTRY = "http://www.color.org"
"""The ICC's registry of characterisation data, where the conditions are listed."""
MAKER = "Foldwork"
EPOCH = 1970
"""The year that a pattern without one is dated to: a build must not ask the clock."""
EDGE = 9.0
"""Points beyond the marks, so that a printer does not cut into them."""
_NOT_FOR_PRESS = (
    "/Outlines",
    "/Names",
    "/Dests",
    "/OpenAction",
    "/AA",
    "/AcroForm",
    "/PageMode",
    "/StructTreeRoot",
    "/MarkInfo",
    "/PageLabels",
    "/ViewerPreferences",
)

_XMP = """<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about=""
 xmlns:dc="http://purl.org/dc/elements/1.1/"
 xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
 xmlns:pdfxid="http://www.npes.org/pdfx/ns/id/"
 xmlns:xmp="http://ns.adobe.com/xap/1.0/"
 xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
<dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>
<xmp:CreateDate>{date}</xmp:CreateDate>
<xmp:ModifyDate>{date}</xmp:ModifyDate>
<xmp:MetadataDate>{date}</xmp:MetadataDate>
<xmp:CreatorTool>{maker}</xmp:CreatorTool>
<xmpMM:DocumentID>{identifier}</xmpMM:DocumentID>
<xmpMM:InstanceID>{identifier}</xmpMM:InstanceID>
<xmpMM:VersionID>1</xmpMM:VersionID>
<xmpMM:RenditionClass>default</xmpMM:RenditionClass>
<pdf:Producer>{maker}</pdf:Producer>
<pdf:Trapped>False</pdf:Trapped>
<pdfxid:GTS_PDFXVersion>{version}</pdfxid:GTS_PDFXVersion>
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>"""


@dataclass(frozen=True)
class _Imprint:
    """What the file says about itself."""

    title: str
    author: str
    year: int
    identifier: str


def press(pattern: Pattern, edition: Edition) -> bytes:
    """Return an edition that was typeset for the press as PDF/X-4.

    The pages' own trim and bleed boxes are kept; the printing condition is the one of the
    edition's paper.
    """
    condition = CONDITIONS[edition.paper.parent or edition.paper.key]
    out = pattern.publication
    digest = hashlib.sha256(edition.pdf).hexdigest()
    title = f"{pattern.title}: {pattern.subtitle}" if pattern.subtitle else pattern.title
    imprint = _Imprint(title, out.studio, out.year or EPOCH, f"uuid:{uuid5(NAMESPACE_URL, digest)}")
    stream = io.BytesIO()
    with pikepdf.open(io.BytesIO(edition.pdf)) as book:
        recolour(book, press_for(condition))
        for page in book.pages:
            _frame(book, page)
        for key in _NOT_FOR_PRESS:
            if key in book.Root:
                del book.Root[key]
        _intend(book, condition)
        _say(book, imprint)
        book.save(stream, force_version="1.6", deterministic_id=True, compress_streams=True)
    return stream.getvalue()


def _frame(book: pikepdf.Pdf, page: pikepdf.Page) -> None:
    """Give a page room for crop marks, draw them, and take off what a reader would click."""
    trim, bleed = _box(page, "/TrimBox"), _box(page, "/BleedBox")
    gap = max(trim[0] - bleed[0], EDGE)
    room = gap + LENGTH + EDGE
    page.obj["/MediaBox"] = pikepdf.Array(
        [*(round(v - room, 4) for v in trim[:2]), *(round(v + room, 4) for v in trim[2:])]
    )
    for key in ("/CropBox", "/ArtBox", "/Annots", "/AA", "/Tabs", "/StructParents"):
        if key in page.obj:
            del page.obj[key]
    clip = f"{bleed[0]} {bleed[1]} {bleed[2] - bleed[0]} {bleed[3] - bleed[1]} re W n"
    page.contents_add(f"q {clip}\n".encode(), prepend=True)
    page.contents_add(f"\nQ\n{crop_marks(trim, gap)}".encode())


def _box(page: pikepdf.Page, name: str) -> Box:
    left, bottom, right, top = (float(v) for v in page.obj.get(name, page.mediabox))
    return left, bottom, right, top


def _intend(book: pikepdf.Pdf, condition: Condition) -> None:
    """State the printing condition, with its profile in the file."""
    profile = pikepdf.Stream(book, condition.profile)
    profile["/N"] = 4
    intent = pikepdf.Dictionary(
        Type=pikepdf.Name.OutputIntent,
        S=pikepdf.Name.GTS_PDFX,
        OutputConditionIdentifier=pikepdf.String(condition.identifier),
        OutputCondition=pikepdf.String(condition.description),
        RegistryName=pikepdf.String(REGISTRY),
        Info=pikepdf.String(condition.description),
        DestOutputProfile=book.make_indirect(profile),
    )
    book.Root["/OutputIntents"] = pikepdf.Array([book.make_indirect(intent)])


def _say(book: pikepdf.Pdf, imprint: _Imprint) -> None:
    """Write title, dates and identity, alike in XMP and in the document information."""
    words = _XMP.format(
        title=escape(imprint.title),
        author=escape(imprint.author),
        date=f"{imprint.year:04d}-01-01T00:00:00Z",
        maker=MAKER,
        identifier=imprint.identifier,
        version=VERSION,
    )
    metadata = pikepdf.Stream(book, words.encode())
    metadata["/Type"], metadata["/Subtype"] = pikepdf.Name.Metadata, pikepdf.Name.XML
    book.Root["/Metadata"] = book.make_indirect(metadata)
    date = pikepdf.String(f"D:{imprint.year:04d}0101000000Z")
    book.trailer["/Info"] = book.make_indirect(
        pikepdf.Dictionary(
            Title=pikepdf.String(imprint.title),
            Author=pikepdf.String(imprint.author),
            Creator=pikepdf.String(MAKER),
            Producer=pikepdf.String(MAKER),
            CreationDate=date,
            ModDate=date,
            Trapped=pikepdf.Name("/False"),
            GTS_PDFXVersion=pikepdf.String(VERSION),
        )
    )
