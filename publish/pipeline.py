"""The nine stages in order: a pattern's path in, every deliverable out.

In: a path. Out: `Work`, what each stage made, and a `Report`.
Invariant: a stage gets values and gives values; nothing is written before everything is
made, and nothing is made from a pattern whose report holds errors.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from pathlib import Path

from publish import cut, deliver, draft, draw, grade, proof, read, typeset, write
from publish.editions import Progress, Work, print_editions, set_edition, silent
from publish.model.book import PAPERS, full_size
from publish.notes import PublishError, Report
from publish.report import as_json

STAGES = ("read", "grade", "draft", "cut", "write", "draw", "typeset", "proof", "deliver")

FINDINGS = "findings/"
"""Of the results: the folder of the figures that show findings on a motif."""


def prepare(path: Path, progress: Progress = silent) -> Work:
    """Run stages 1 to 5 and the checks before typesetting; write nothing.

    Findings on a motif are drawn, as `findings/*.svg` in the files. Raises PublishError,
    carrying every finding and these files, when a stage cannot go on.
    """
    progress("read", str(path))
    pattern, notes, sources = read.load(path)
    report = Report().plus(notes, sources)
    if pattern is None:
        raise PublishError(report)
    work = Work(pattern, report=report)
    work.add(typeset.inspect(pattern))
    for key in pattern.sizes:
        _measure(work, key, progress)
    shown = draw.finding_figures(pattern, work.drafts, work.report)
    work.files |= {f"{FINDINGS}{name}.svg": svg.encode() for name, svg in shown.items()}
    work.stop_on_errors()
    progress("cut", "pieces, strips and lengths to buy")
    work.plans, notes = cut.cut(pattern, work.sizes, work.drafts)
    work.add(notes)
    work.stop_on_errors()
    progress("write", "steps and tables")
    work.manual, notes = write.write(pattern, work.sizes, work.drafts, work.plans)
    work.add(notes)
    work.add(proof.check(pattern, work.sizes, work.drafts, work.plans, work.manual))
    return work


def _measure(work: Work, key: str, progress: Progress) -> None:
    """Grade and draft one size."""
    progress("grade", key)
    size, notes = grade.grade(work.pattern, key)
    work.add(notes)
    if size is None:
        return
    work.sizes[key] = size
    progress("draft", key)
    drafted, notes = draft.draft(work.pattern, size)
    work.add(notes)
    if drafted is not None:
        work.drafts[key] = drafted


def build(
    path: Path,
    out: Path | None = None,
    papers: Iterable[str] | None = None,
    only: str | None = None,
    progress: Progress = silent,
    strict: bool = False,
) -> tuple[Work, Path]:
    """Make every deliverable of a pattern and put the complete set in its folder.

    `out` is the folder that gets one folder per pattern (default `build`). Raises
    PublishError when the report holds errors (or, when `strict`, warnings); the last
    complete set is then untouched.
    """
    work = prepare(path, progress)
    work.stop_on_errors(strict)
    print_editions(work, papers or work.pattern.papers, only, progress)
    work.add(deliver.picture_notes(work.pattern, work.editions[0]))
    work.stop_on_errors(strict)
    assert work.manual is not None
    preview = draw.colour_preview(work.pattern, work.sizes, work.drafts, work.plans, work.manual)
    work.files["colour/visions.svg"] = preview.svg.encode()
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    files = {f"{e.name}.pdf": e.pdf for e in work.editions}
    files |= work.files
    files |= deliver.machine_files(work.drafts.values(), work.plans.values())
    files |= deliver.shop_files(work.pattern, work.manual, numbers, work.editions)
    files["numbers.json"] = json.dumps(numbers, indent=2, ensure_ascii=False).encode() + b"\n"
    files["findings.json"] = as_json(work.report).encode() + b"\n"
    target = (out or Path("build")) / work.pattern.key
    progress("deliver", str(target))
    deliver.deliver(target, files)
    return work, target


def kits(path: Path, wanted: Mapping[str, int], out: Path | None = None,
         progress: Progress = silent) -> tuple[Work, Path]:  # fmt: skip
    """Make the sheet by which a fabric shop cuts `wanted` kits, by size key.

    It goes into a folder of its own beside the pattern's, as Markdown, JSON and one PDF for
    each whole paper. Raises ValueError for a size that is not there and PublishError as
    `build` does.
    """
    work = prepare(path, progress)
    work.stop_on_errors()
    assert work.manual is not None
    found = deliver.kits(work.pattern, work.plans, wanted)
    files = deliver.kit_files(found)
    manual = deliver.kit_manual(work.manual, found)
    for paper in dict.fromkeys(full_size(PAPERS[key]) for key in work.pattern.papers):
        progress("draw", f"swatches for {paper.name}")
        made = (work.pattern, work.sizes, work.drafts, work.plans, manual, paper)
        artwork, notes = draw.draw(*made)
        work.add(notes)
        set_edition(work, paper, manual, artwork, "kits", progress)
    work.stop_on_errors()
    files |= {f"{e.name}.pdf": e.pdf for e in work.editions}
    target = (out or Path("build")) / f"{work.pattern.key}-kits"
    progress("deliver", str(target))
    deliver.deliver(target, files)
    return work, target
