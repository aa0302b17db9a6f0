"""The line sheet: every pattern of a studio on a few pages, for shops to order from.

In: finished sets, as builds leave them. Out: the files of a folder of their own: PDFs,
JSON, and a picture for each pattern.
Invariant: all that is said of a pattern is read from its finished set; a pattern without
one is not on the sheet, and that is told.
"""

from __future__ import annotations

import hashlib
import io
import json
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from PIL import Image

from publish import deliver, web, web_pdf
from publish.inputs import program
from publish.model.book import PAPERS, Paper, full_size
from publish.notes import Note, Place, PublishError, Report, Severity, shown_path
from publish.site import BARCODE, FOLDER, TRADE
from publish.studio.across import LINE_SHEET
from publish.studio.outcome import Outcome, State

SIDE = 640
"""Pixels of a picture's longer side: 300 to the inch at the size that it is printed in."""
_QUALITY = 86

Json = dict[str, Any]


@dataclass(frozen=True)
class Entry:
    """One pattern on the sheet."""

    trade: Json
    picture: bytes
    """JPEG; empty where the pattern has none."""
    barcode: bytes
    """SVG; empty where the pattern has none."""


def make(outcomes: Sequence[Outcome], out: Path) -> Outcome:
    """Make the line sheet of patterns that have finished sets, in a folder beside theirs.

    A pattern without a whole set is left out, and the outcome says so.
    """
    started, target = time.monotonic(), out / LINE_SHEET
    read = [(o, _entry(o)) for o in outcomes]
    report = Report().plus(_left_out(o) for o, entry in read if entry is None)
    entries = sorted((entry for _, entry in read if entry is not None), key=_order)
    done = Outcome(target, State.ERRORS, report, LINE_SHEET)
    made_from = _made_from(entries)
    if not entries:
        return done
    if deliver.recorded(target) == made_from:
        return replace(done, state=State.UNCHANGED, target=target)
    made = files(entries)
    try:
        deliver.deliver(target, made, made_from)
    except PublishError as stopped:
        return replace(done, report=stopped.report.plus(report))
    pdfs = [data for name, data in made.items() if name.endswith(".pdf")]
    return replace(
        done,
        state=State.BUILT,
        target=target,
        pdfs=len(pdfs),
        pages=sum(map(deliver.page_count, pdfs)),
        seconds=time.monotonic() - started,
    )


def _left_out(outcome: Outcome) -> Note:
    return Note(
        "X907",
        Severity.INFO,
        Place(shown_path(outcome.path)),
        "the pattern is not on the line sheet",
        expected="a finished set with a booklet",
        received=outcome.state.value,
        help="mend what stops it, and build again",
    )


def _order(entry: Entry) -> tuple[str, str, str]:
    trade = entry.trade
    return (trade["studio"].casefold(), trade["stock_number"].casefold(), trade["pattern"])


def _entry(outcome: Outcome) -> Entry | None:
    """Return what a finished set says of its pattern; None where there is none to read."""
    if outcome.state not in (State.BUILT, State.UNCHANGED) or outcome.target is None:
        return None
    try:
        trade = json.loads((outcome.target / TRADE).read_text(encoding="utf-8"))
        shown = trade["picture"]
        picture = (outcome.target / FOLDER / shown["file"]).read_bytes() if shown else b""
        bars = (outcome.target / BARCODE).read_bytes() if trade["barcode"] else b""
    except (OSError, ValueError, KeyError, TypeError):
        return None
    return Entry(trade, _smaller(picture) if picture else b"", bars)


def _smaller(data: bytes) -> bytes:
    """Return a picture at the size that it is printed in, as JPEG."""
    with Image.open(io.BytesIO(data)) as image:
        small = image.convert("RGB")
    small.thumbnail((SIDE, SIDE), Image.Resampling.LANCZOS)
    stream = io.BytesIO()
    small.save(stream, "JPEG", quality=_QUALITY, optimize=True)
    return stream.getvalue()


def files(entries: Sequence[Entry]) -> dict[str, bytes]:
    """Return every file of the line sheet, by name."""
    found = {f"pictures/{e.trade['pattern']}.jpg": e.picture for e in entries if e.picture}
    found[f"{LINE_SHEET}.json"] = deliver.json_file({"patterns": [_plain(e) for e in entries]})
    keys = dict.fromkeys(key for e in entries for key in e.trade["papers"])
    for paper in dict.fromkeys(full_size(PAPERS[key]) for key in keys):
        found[f"{LINE_SHEET}-{paper.key}.pdf"] = web_pdf.pdf(page(entries, paper))
    return found


def page(entries: Sequence[Entry], paper: Paper) -> str:
    """Return the line sheet as a page that is complete in itself."""
    studios = dict.fromkeys(e.trade["studio"] for e in entries)
    contacts = dict.fromkeys(e.trade["contact"] for e in entries if e.trade["contact"])
    return web.render(
        "line-sheet.html",
        title=f"{next(iter(studios))}: line sheet" if len(studios) == 1 else "Line sheet",
        size=f"{paper.width:.4f}in {paper.height:.4f}in",
        count=len(entries),
        contact=next(iter(contacts)) if len(contacts) == 1 else "",
        groups=[
            (studio, [_shown(e) for e in entries if e.trade["studio"] == studio])
            for studio in studios
        ],
    )


def _shown(entry: Entry) -> Json:
    """Return what the page shows of a pattern."""
    return {
        **entry.trade,
        "image": entry.picture and web.embedded(entry.picture, "image/jpeg"),
        "bars": entry.barcode and web.embedded(entry.barcode),
    }


def _plain(entry: Entry) -> Json:
    """Return a pattern as data, with its picture's name in the line sheet's own folder."""
    trade = dict(entry.trade)
    del trade["papers"]
    if trade["picture"]:
        name = f"pictures/{trade['pattern']}.jpg"
        trade["picture"] = {"file": name, "alt": trade["picture"]["alt"]}
    return trade


def _made_from(entries: Sequence[Entry]) -> dict[str, str]:
    return {"program": program(), **dict(_digests(entries))}


def _digests(entries: Sequence[Entry]) -> Iterator[tuple[str, str]]:
    for entry in entries:
        whole = json.dumps(entry.trade).encode() + entry.picture + entry.barcode
        yield entry.trade["pattern"], hashlib.sha256(whole).hexdigest()
