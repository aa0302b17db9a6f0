"""What of a block is foundation pieced, and the names that its patches go by.

In: a block's patches and what is written under `foundation`. Out: `Foundation`s; notes.
Invariant: a patch is in one section at most, and a name means one patch.
"""

from __future__ import annotations

from collections import Counter

from publish.model.block import Foundation, PatchSpec
from publish.read.characters import shown
from publish.read.forms import listed, nearest
from publish.read.ledger import Ledger

DERIVED = "derived"


def check_names(patches: tuple[PatchSpec, ...], key: str, ledger: Ledger) -> None:
    """Note each name that two patches of one block have."""
    counts = Counter(p.name for p in patches if p.name)
    seen: set[str] = set()
    for patch in patches:
        if counts[patch.name] > 1 and patch.name in seen and patch.item is not None:
            ledger.note(
                "R163",
                ledger.place("blocks", key, "patches", patch.item, "name"),
                f"two patches are called `{shown(patch.name)}`",
                expected="a name for one patch alone",
                received=patch.name,
                help="give one of them another name, or none",
            )
        seen.add(patch.name)


def foundations(
    patches: tuple[PatchSpec, ...], written: str | list[list[str]] | None, key: str, ledger: Ledger
) -> tuple[Foundation, ...]:
    """Return what is written under `foundation`; nothing where nothing is."""
    if written is None:
        return ()
    if written == DERIVED:
        return (Foundation(tuple(range(len(patches))), in_order=False),)
    known = {p.name: number for number, p in enumerate(patches) if p.name}
    taken: set[str] = set()
    found = []
    for number, section in enumerate(written):
        numbers = []
        for place, name in enumerate(section):
            path = ("blocks", key, "foundation", number, place)
            if name not in known:
                _unknown(name, list(known), path, ledger)
            elif name in taken:
                ledger.note(
                    "R162",
                    ledger.place(*path),
                    f"the patch `{shown(name)}` is sewn twice",
                    expected="each patch in one section, once",
                    received=name,
                    help="remove one of the two",
                )
            else:
                numbers.append(known[name])
            taken.add(name)
        found.append(Foundation(tuple(numbers), in_order=True))
    return tuple(found)


def _unknown(name: str, known: list[str], path: tuple[str | int, ...], ledger: Ledger) -> None:
    near = nearest(name, known)
    if near:
        help_ = f"write `{near}`"
    elif known:
        help_ = f"the named patches are {listed(known[:12])}"
    else:
        help_ = "give each patch of the section a `name`, or write `foundation: derived`"
    ledger.note(
        "R162",
        ledger.place(*path),
        f"the block has no patch `{shown(name)}`",
        expected="the name of a patch of this block",
        received=name,
        help=help_,
    )
