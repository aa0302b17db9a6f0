"""Stage 9, delivering: finished files as one complete set, and every number as data.

In: file contents by name; pattern, sizes, drafts, plans. Out: a folder of results with a
manifest; the content of `numbers.json`; files for cutting machines.
Invariant: the only stage that writes results; a reader of the folder sees the last
complete set or the new one, never a mixture.
"""

from __future__ import annotations

from publish.deliver.folder import deliver, recover
from publish.deliver.machine import machine_files
from publish.deliver.numbers import numbers

__all__ = ["CODES", "deliver", "machine_files", "numbers", "recover"]

CODES: dict[str, str] = {
    "X901": "A file of the results has a name that cannot be used",
    "X902": "The folder for the results holds files that were not made here",
    "X903": "The results cannot be written",
}
