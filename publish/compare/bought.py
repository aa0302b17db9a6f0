"""What has to be bought otherwise: fabrics, batting and the rest, thread, tools.

In: two editions under the same keys. Out: changes.
Invariant: what to buy is said as the booklet says it; whether an old purchase is enough is
decided on exact lengths.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from publish.compare.model import BOUGHT, COSMETIC, CUT, Change, Cloth, Edition, SizeEdition
from publish.compare.sewn import size_text
from publish.units import fraction_text, metres_text, yards_text
from publish.words.lengths import Lengths

SAY = Lengths()


def find(old: Edition, new: Edition) -> Iterator[Change]:
    """Yield every change of what is bought."""
    yield from _sizes(old, new)
    yield from _widths(old, new)
    for key in (k for k in new.sizes if k in old.sizes):
        yield from _fabrics(old, new, old.sizes[key], new.sizes[key])
        yield from _others(old.sizes[key], new.sizes[key])
        yield from _threads(old.sizes[key], new.sizes[key])
    yield from _tools(old, new)


def _sizes(old: Edition, new: Edition) -> Iterator[Change]:
    for key, size in old.sizes.items():
        if key not in new.sizes:
            advice = f"If you have begun one, keep your copy of the older booklet ({old.edition})."
            yield Change(
                BOUGHT, "size", f"{size.title}: this size is no longer in the pattern.", advice, key
            )
    for key, size in new.sizes.items():
        if key not in old.sizes:
            yield Change(
                COSMETIC,
                "size",
                f"{size.title}: this size is new in the pattern, {size_text(size.finished)}.",
                "",
                key,
            )


def _widths(old: Edition, new: Edition) -> Iterator[Change]:
    """Yield fabrics whose lengths to buy assume another usable width."""
    for key in new.fabrics:
        pairs = {
            (old.sizes[s].fabrics[key].usable_width, size.fabrics[key].usable_width)
            for s, size in new.sizes.items()
            if s in old.sizes and key in old.sizes[s].fabrics and key in size.fabrics
        }
        for before, after in sorted(pairs):
            if before == after:
                continue
            advice = "" if after < before else ("If yours is narrower than that, ask for more.")
            yield Change(
                BOUGHT,
                "usable width",
                f"{new.fabrics[key].name}: the lengths to buy assume {SAY.measure(after)} of "
                f"usable width, not {SAY.measure(before)}.",
                advice,
                old={"usable_width": fraction_text(before)},
                new={"usable_width": fraction_text(after)},
            )


def _fabrics(
    old: Edition, new: Edition, before: SizeEdition, after: SizeEdition
) -> Iterator[Change]:
    for key in dict.fromkeys([*before.fabrics, *after.fabrics]):
        was, is_ = before.fabrics.get(key), after.fabrics.get(key)
        said = [cloth.said if cloth else "" for cloth in (was, is_)]
        if said[0] == said[1]:
            continue
        name = new.fabrics[key].name if key in new.fabrics else old.fabrics[key].name
        title, advice = after.title, ""
        if not said[0]:
            sentence = f"{title}: buy {said[1]} of {name}, which this size did not use before."
        elif not said[1]:
            sentence = f"{title}: do not buy {name}; this size no longer uses it ({said[0]})."
        else:
            sentence = f"{title}: buy {said[1]} of {name}, not {said[0]}."
            advice = _enough(was, is_) if was and is_ else ""
        yield Change(BOUGHT, "fabric", sentence, advice, after.key, _values(was), _values(is_))


def _values(cloth: Cloth | None) -> dict[str, str]:
    if cloth is None or not cloth.said:
        return {}
    return {
        "buy": fraction_text(cloth.buy),
        "needed": fraction_text(cloth.needed),
        "said": cloth.said,
    }


def _enough(old: Cloth, new: Cloth) -> str:
    """Return whether the old purchase covers the new need."""
    if old.precut or new.precut:
        return ""
    yards, metres = abs(new.buy - old.buy), abs(new.metres - old.metres)
    if not yards:
        short = (
            f"you are {metres_text(metres)} short" if new.metres > old.metres else "it is enough"
        )
        return f"What you have bought by the yard is enough; by the metre, {short}."
    apart = " ".join([yards_text(yards), *([f"({metres_text(metres)})"] if metres else [])])
    if new.needed > old.buy:
        return f"If you have bought {old.said}, you are {apart} short."
    return f"If you have bought {old.said}, it is enough, and {apart} is left over."


def _others(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    for name in dict.fromkeys([*before.other, *after.other]):
        was, is_ = before.other.get(name, ""), after.other.get(name, "")
        if was == is_:
            continue
        same = _same_batting(before, after) if name == "Batting" else None
        if same is not None:
            yield same
            continue
        what = name[:1].lower() + name[1:]
        if not was:
            sentence = f"{after.title}: you also need {what}: {is_}."
        elif not is_:
            sentence = f"{after.title}: {what} is no longer needed ({was})."
        else:
            sentence = f"{after.title}: the {what} to buy is {is_}, not {was}."
        yield Change(BOUGHT, what, sentence, "", after.key, _quoted(was), _quoted(is_))


def _quoted(said: str) -> dict[str, str]:
    return {"said": said} if said else {}


def _same_batting(before: SizeEdition, after: SizeEdition) -> Change | None:
    """Return how much of the same batting is needed otherwise, or None for another one."""
    old, new = before.batting, after.batting
    if old is None or new is None or old["name"] != new["name"]:
        return None
    sentence = f"{after.title}: cut the batting {_rectangle(new)}, not {_rectangle(old)}"
    if old["package"] != new["package"]:
        packages = [b["package"] or "no standard package" for b in (new, old)]
        sentence += f"; package: {packages[0]}, not {packages[1]}"
    smaller = new["width"] <= old["width"] and new["height"] <= old["height"]
    held = old["package"] == new["package"] and new["package"] is not None
    advice = f"A piece that you have cut {_rectangle(old)} is too small."
    if smaller:
        advice = "What you have is enough."
    elif held:
        advice += " The package still holds it."
    consequence = CUT if smaller or held else BOUGHT
    values = [{n: fraction_text(b[n]) for n in ("width", "height")} for b in (old, new)]
    return Change(consequence, "batting", f"{sentence}.", advice, after.key, values[0], values[1])


def _rectangle(part: Mapping[str, Fraction]) -> str:
    return SAY.rectangle(part["width"], part["height"])


def _threads(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    for use in dict.fromkeys([*before.thread, *after.thread]):
        was, is_ = before.thread.get(use, ""), after.thread.get(use, "")
        if was == is_:
            continue
        what = use.lower() if "bobbin" in use.lower() else f"thread for {use.lower()}"
        spools = [said.partition(": ")[2] for said in (was, is_)]
        same = bool(spools[0]) and spools[0] == spools[1]
        if not was:
            sentence = f"{after.title}: you also need {what}: {is_}."
        elif not is_:
            sentence = f"{after.title}: {what} is no longer needed ({was})."
        else:
            sentence = f"{after.title}: {what}: {is_}, not {was}."
        yield Change(
            COSMETIC if same else BOUGHT,
            "thread",
            sentence,
            f"It is {spools[0]} as before." if same else "",
            after.key,
            _quoted(was),
            _quoted(is_),
        )


def _tools(old: Edition, new: Edition) -> Iterator[Change]:
    for tool in new.tools:
        if tool not in old.tools:
            yield Change(BOUGHT, "tool", f"Tools: you also need this: {tool}.", new={"said": tool})
    for tool in old.tools:
        if tool not in new.tools:
            yield Change(
                BOUGHT, "tool", f"Tools: you no longer need this: {tool}.", old={"said": tool}
            )
