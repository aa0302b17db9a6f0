"""The files of a finished set, by their names in the folder of results.

In: what a run has made. Out: file contents by name.
Invariant: nothing is written here.
"""

from __future__ import annotations

import json
from typing import Any

from publish import compare, deliver, draw, render, report_page, site
from publish.kept import Store
from publish.marked import marked
from publish.model.figure import Picture
from publish.notes import Note
from publish.report import as_json
from publish.work import REPORT, Work


def files(work: Work, store: Store) -> dict[str, bytes]:
    """Return every file of a finished set."""
    assert work.manual is not None
    preview = draw.colour_preview(work.pattern, work.sizes, work.drafts, work.plans, work.manual)
    work.files["colour/visions.svg"] = preview.svg.encode()
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    found = {f"{e.name}.pdf": e.pdf for e in work.editions}
    found |= work.files
    found |= deliver.machine_files(work.drafts.values(), work.plans.values())
    shown = _shop_pictures(work, store)
    found |= deliver.shop_files(work.pattern, work.manual, numbers, work.editions, shown)
    found |= site.of(work, found)
    found["numbers.json"] = deliver.json_file(numbers)
    found["edition.json"] = json.dumps(described(work), ensure_ascii=False).encode() + b"\n"
    found[REPORT] = report_page.page(work.report, subject(work)).encode()
    found["findings.json"] = as_json(work.report, work.pattern.places[""].folder).encode() + b"\n"
    return found


def _shop_pictures(work: Work, store: Store) -> dict[str, Picture]:
    """Compute a shop's pictures, where there is a booklet to show them with."""
    if not any(made.job.name == "booklet" for made in work.printed):
        return {}
    first = next(iter(work.sizes))
    made = (work.pattern, work.sizes, work.drafts, render.Shown(first, first))
    return render.for_shop(*made, store)


def subject(work: Work) -> report_page.Subject:
    """Return what the page says of a run, with a picture for each finding that has a place."""
    pictures: dict[Note, report_page.Picture] = {}
    for note in (*work.report, *(n for n, _ in work.report.accepted)):
        if note in work.figures:
            pictures[note] = "Where it is on the motif", note.what, work.figures[note]
        elif (top := marked(work.pattern, work.drafts, note.place.path)) is not None:
            pictures[note] = f"Where it is on the {top[0]}", f"The top of the {top[0]}", top[1]
    source = work.pattern.places[""]
    return report_page.Subject(
        work.pattern.title, source, work.looked, pictures, work.pattern.origins
    )


def described(work: Work) -> dict[str, Any]:
    """Return what later editions are compared with, for `edition.json`."""
    assert work.manual is not None
    return compare.record(work.pattern, work.drafts, work.plans, work.manual)
