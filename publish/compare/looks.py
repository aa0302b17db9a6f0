"""What only looks different: names and colours of fabrics, other palettes.

In: two editions under the same keys. Out: cosmetic changes.
Invariant: a fabric that is here is in both editions, for the same pieces or others.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.compare.model import COSMETIC, Change, Edition


def find(old: Edition, new: Edition) -> Iterator[Change]:
    """Yield every change of names and colours."""
    for key, is_ in new.fabrics.items():
        was = old.fabrics.get(key)
        if was is None or was == is_:
            continue
        if was.name != is_.name:
            yield Change(
                COSMETIC,
                "fabric name",
                f"The fabric {was.name} is now called {is_.name}.",
                "It is used in the same way: read the new name for the old one.",
                old={"name": was.name},
                new={"name": is_.name},
            )
        if was.colour != is_.colour:
            yield Change(
                COSMETIC,
                "colour",
                f"{is_.name} is shown in another colour: {is_.colour}, not {was.colour}.",
                old={"colour": was.colour},
                new={"colour": is_.colour},
            )
    yield from _colourways(old, new)


def _colourways(old: Edition, new: Edition) -> Iterator[Change]:
    for title in dict.fromkeys([*old.colourways, *new.colourways]):
        was, is_ = old.colourways.get(title), new.colourways.get(title)
        if was == is_:
            continue
        said = "has changed"
        if was is None or is_ is None:
            said = "is new" if was is None else "is no longer shown"
        yield Change(COSMETIC, "colourway", f"The colourway {title} {said}.")
