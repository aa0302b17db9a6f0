"""Fabrics for roles, and fabrics that take the place of others.

In: patches, and a mapping from role or fabric to fabric. Out: the patches in those
fabrics; notes.
Invariant: nothing is put into a fabric that the mapping does not name.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from publish.model.block import PatchSpec
from publish.read.characters import shown
from publish.read.forms import listed, nearest
from publish.read.ledger import Ledger

Fabrics = Mapping[str, str]


def in_fabrics(patches: tuple[PatchSpec, ...], fabrics: Fabrics) -> tuple[PatchSpec, ...]:
    """Return patches with their fabrics looked up; what is not there stays as it is."""
    return tuple(replace(p, fabric=fabrics.get(p.fabric, p.fabric)) for p in patches)


def roles_filled(
    fabrics: Fabrics, roles: Mapping[str, str], name: str, key: str, ledger: Ledger
) -> bool:
    """Return whether each role of a traditional block has a fabric; note it if not."""
    strange = [role for role in fabrics if role not in roles]
    for role in strange:
        near = nearest(role, [r for r in roles if r not in fabrics])
        ledger.note(
            "R159",
            ledger.place("blocks", key, "fabrics", shown(role)),
            f"`{shown(role)}` is not a role of the {name} block",
            expected=f"one of {listed(roles)}",
            received=role,
            help=f"write `{near}`" if near else f"its roles are {listed(roles)}",
        )
    lacking = [role for role in roles if role not in fabrics]
    for role in lacking if not strange else []:  # it may only be misspelt
        ledger.note(
            "R160",
            ledger.place("blocks", key, "fabrics"),
            f"the role `{role}` has no fabric",
            expected=f"a fabric for each of {listed(roles)}",
            received=", ".join(fabrics),
            help=f"add `{role}:` and its fabric; it is {roles[role]}",
        )
    return not strange and not lacking


def check_swaps(
    fabrics: Fabrics,
    patches: tuple[PatchSpec, ...],
    block: str,
    path: tuple[str, ...],
    ledger: Ledger,
) -> None:
    """Note each fabric that a block is to lose although it has none of it."""
    own = list(dict.fromkeys(p.fabric for p in patches))
    for fabric in fabrics:
        if fabric not in own:
            near = nearest(fabric, own)
            ledger.note(
                "R164",
                ledger.place(*path, "fabrics", shown(fabric)),
                f"the block `{shown(block)}` has no fabric `{shown(fabric)}`",
                expected=f"one of its own: {listed(own)}",
                received=fabric,
                help=f"write `{near}`" if near else f"its fabrics are {listed(own)}",
            )
