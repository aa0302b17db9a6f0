"""Keys that were renamed, a maker never seeing them: the newer edition in the older's keys.

In: two editions. Out: the newer one, with sizes and fabrics under the keys that they had.
Invariant: a size keeps its identity by its key, or else by its title; a fabric by its key,
or else by its name. What has lost both is another thing: one is gone and one is new.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from publish.compare.model import Edition, SizeEdition


def aligned(old: Edition, new: Edition) -> Edition:
    """Return `new` with its keys those of `old` wherever the two mean the same."""
    fabrics = _same(
        {k: f.name for k, f in old.fabrics.items()}, {k: f.name for k, f in new.fabrics.items()}
    )
    sizes = _same(
        {k: s.title for k, s in old.sizes.items()}, {k: s.title for k, s in new.sizes.items()}
    )
    return replace(
        new,
        fabrics={fabrics.get(k, k): f for k, f in new.fabrics.items()},
        colourways={
            way: {fabrics.get(k, k): f for k, f in held.items()}
            for way, held in new.colourways.items()
        },
        steps=tuple(replace(s, sizes=_keys(s.sizes, sizes)) for s in new.steps),
        prose=tuple(replace(p, sizes=_keys(p.sizes, sizes)) for p in new.prose),
        sizes={
            sizes.get(k, k): _size(replace(s, key=sizes.get(k, k)), fabrics)
            for k, s in new.sizes.items()
        },
    )


def _same(old: Mapping[str, str], new: Mapping[str, str]) -> dict[str, str]:
    """Return the old key of each new one that is only renamed, by what a maker calls it."""
    gone = {said.casefold(): key for key, said in old.items() if key not in new}
    fresh = [key for key in new if key not in old]
    return {key: gone[new[key].casefold()] for key in fresh if new[key].casefold() in gone}


def _keys(keys: tuple[str, ...], instead: Mapping[str, str]) -> tuple[str, ...]:
    return tuple(instead.get(key, key) for key in keys)


def _size(size: SizeEdition, fabrics: Mapping[str, str]) -> SizeEdition:
    """Return a size that speaks of fabrics by their old keys."""
    return replace(
        size,
        borders=tuple(replace(b, fabric=fabrics.get(b.fabric, b.fabric)) for b in size.borders),
        pieces=tuple(replace(p, fabric=fabrics.get(p.fabric, p.fabric)) for p in size.pieces),
        fabrics={fabrics.get(k, k): f for k, f in size.fabrics.items()},
    )
