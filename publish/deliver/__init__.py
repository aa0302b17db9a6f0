"""Stage 9, delivering: finished files as one complete set, and every number as data.

In: file contents by name; pattern, sizes, drafts, plans, manual, editions. Out: a folder
of results with a manifest; the content of `numbers.json`; files for cutting machines, for
a print shop (`press`, `impose`) and for a fabric shop (`shop_files`, `kit_files`).
Invariant: the only stage that writes results; a reader of the folder sees the last
complete set or the new one, never a mixture.
"""

from __future__ import annotations

from publish.deliver.folder import deliver, held, recorded, recover
from publish.deliver.impose import HALVES, SPREADS, Imposed, impose, page_count
from publish.deliver.kit_pages import kit_manual
from publish.deliver.kits import kits
from publish.deliver.machine import machine_files
from publish.deliver.numbers import numbers
from publish.deliver.press import press
from publish.deliver.shop import FOLDER as SHOP
from publish.deliver.shop import (
    json_file,
    kit_files,
    nothing_of,
    picture_notes,
    pictures,
    shop_files,
)

__all__ = [
    "CODES",
    "HALVES",
    "SHOP",
    "SPREADS",
    "Imposed",
    "deliver",
    "held",
    "impose",
    "json_file",
    "kit_files",
    "kit_manual",
    "kits",
    "machine_files",
    "nothing_of",
    "numbers",
    "page_count",
    "picture_notes",
    "pictures",
    "press",
    "recorded",
    "recover",
    "shop_files",
]

CODES: dict[str, str] = {
    "X901": "A file of the results has a name that cannot be used",
    "X902": "The folder for the results holds files that were not made here",
    "X903": "The results cannot be written",
    "X904": "A page to picture is not in the booklet",
    "X906": "A pattern has nothing of what was asked for",
    "X905": "A picture would give a template away",
}
