"""What `numbers.json` says of one size, held against the second reckoning.

Each function takes the pattern, the numbers and the size's key, and yields what differs.
"""

from collections import Counter
from fractions import Fraction
from math import ceil

from independent.cloth_plan import area_bound, first_fit, parts
from independent.makings import makings
from independent.tops import option, reckon
from independent.trade import (
    bias_from_square,
    envelope_back,
    length,
    rectangle,
    rounded_up,
    straight_binding,
    value,
)

NOT_OF_THE_TOP = ("motif", "backing", "binding", "pillow back", "sleeve", "foundation")
CLOSE = 1e-6


def measurements(pattern, numbers, key):
    """The finished top, the top without borders, once round it, the blocks."""
    size, top = numbers["sizes"][key], reckon(pattern, key)
    for name, wide, high in (("finished", top.width, top.height), ("inner", *top.inner)):
        told = size[name]
        if abs(value(told["width"]) - wide) > CLOSE or abs(value(told["height"]) - high) > CLOSE:
            yield f"{name} is {told}, reckoned {wide} x {high}"
    if abs(value(size["perimeter"]) - 2 * (top.width + top.height)) > CLOSE:
        yield f"the perimeter is {size['perimeter']}"
    told = Counter(n for row in size["blocks"]["arrangement"] for n in row)
    told += Counter(n for row in size["setting"]["alternates"] for n in row)
    told += Counter(n for r in size["setting"]["rounds"] for n, _ in r["blocks"])
    reckoned = Counter()
    for (name, _), count in top.placed.items():
        reckoned[name] += count
    if told != reckoned:
        yield f"blocks are {told}, reckoned {reckoned}"


def pieces(pattern, numbers, key):
    """Every piece of the top: its cloth, its cut size, how often it is cut."""
    size, top = numbers["sizes"][key], reckon(pattern, key)
    left = [p for p in size["pieces"] if not p["purpose"].startswith(NOT_OF_THE_TOP)]
    quick = {letter for m in size["makings"] for letter in m["pieces"]}
    left = [p for p in left if p["letter"] not in quick]
    if quick:
        yield from _some_quick(size, top, left)
        return
    for (cloth, shape, cut), count in sorted(top.pieces.items(), key=str):
        got, found = 0, [p for p in left if _is(p, cloth, shape, cut)]
        for piece in found:
            got += piece["count"] * piece["yields"]
            left.remove(piece)
        spare = sum(p["yields"] - 1 for p in found)
        if not count <= got <= count + spare:
            yield f"{cloth} {shape} {_told(cut)}: {got} are cut, reckoned {count}"
    for piece in left:
        if piece["shape"] != "template" or "template" in {k[1] for k in top.pieces}:
            yield f"{piece['letter']} {piece['fabric']} {piece['width']} x {piece['length']}: none"


def _some_quick(size, top, left):
    """Where units are made several at once, what is still cut singly must be reckoned too."""
    for piece in left:
        found = [
            n for (cloth, shape, cut), n in top.pieces.items() if _is(piece, cloth, shape, cut)
        ]
        if sum(found) < piece["count"] * piece["yields"] - piece["yields"] + 1:
            yield f"{piece['letter']}: {piece['count']} of {piece['width']} x {piece['length']}"


def _is(piece, cloth, shape, cut):
    if piece["fabric"] != cloth:
        return False
    if shape == "template":
        box = sorted(value(piece[k]) for k in ("finished_width", "finished_length"))
        return piece["shape"] == shape and all(
            abs(a - float(b)) < 1 / 16 for a, b in zip(box, cut, strict=True)
        )
    told = sorted(length(piece[k]) for k in ("width", "length"))
    more = 0.06 if piece["purpose"] in ("side triangle", "corner triangle") else 0.0
    same = all(rounded_up(exact, size, more) for exact, size in zip(sorted(cut), told, strict=True))
    return same and (piece["shape"] == shape or (shape, piece["shape"]) == ("rectangle", "square"))


def _told(cut):
    return " x ".join(f"{float(c):.3f}" for c in cut)


def foundations(pattern, numbers, key):
    """Each patch of a foundation has a piece of its cloth, as often as the block is made."""
    size, top = numbers["sizes"][key], reckon(pattern, key)
    cut = Counter()
    for piece in size["pieces"]:
        if piece["purpose"] == "foundation":
            cut[piece["fabric"]] += piece["count"]
    wanted = Counter({k[1]: n for k, n in top.patches.items() if k[0] == "foundation"})
    if cut != wanted:
        yield f"foundations take {cut}, reckoned {wanted}"


def units(pattern, numbers, key):
    """Each unit is its finished size and its seams; the blocks, rows and borders add up."""
    size, top, seam = numbers["sizes"][key], reckon(pattern, key), length(numbers["seam"])
    sides = {side for _, side in top.placed}
    pillow = "pillow" in pattern["sizes"][key]
    # At the edge of a ground that waits for its motif lies half the margin that is trimmed off.
    margin = length(pattern.get("sewing", {}).get("ground_margin", "1 in")) / 2
    edges = (0, 1, 2) if any(b.get("motif") for b in pattern["blocks"].values()) else (0,)
    grown = [float(2 * seam + margin * n) for n in edges]
    for unit in size["units"]:
        for name in ("width", "height"):
            more = value(unit["before"][name]) - value(unit["after"][name])
            known = any(abs(more - wanted) <= CLOSE for wanted in grown)
            if not known and not (pillow and more > 2 * float(seam)):
                yield f"{unit['kind']}: {name} grows by {more}"
        after = sorted(value(unit["after"][k]) for k in ("width", "height"))
        whole = unit["kind"].startswith("block ") and unit["name"] == "block"
        if whole and not any(abs(after[0] - side) < CLOSE for side in sides):
            yield f"{unit['kind']} finishes {after}"
    last = size["units"][-1]["after"]
    if (
        abs(value(last["width"]) - top.width) > CLOSE
        or abs(value(last["height"]) - top.height) > CLOSE
    ):
        yield f"the last unit finishes {last}"
    yield from _leaves(size, top)


def _leaves(size, top):
    """Patches that are sewn one by one are the patches of the blocks, box by box."""
    quick = any(u["made"] for u in size["units"])
    if quick or any(k[0] in ("foundation", "motif ground") for k in top.patches):
        return
    told = Counter()
    for unit in size["units"]:
        if unit["parts"] == 0 and unit["kind"].startswith("patch ") and unit["turn"] == 0:
            box = tuple(sorted(round(value(unit["after"][k]), 4) for k in ("width", "height")))
            told[box] += unit["count"]
    wanted = Counter()
    for (_, box), count in top.patches.items():
        wanted[tuple(round(float(b), 4) for b in box)] += count
    missing = {box: n for box, n in wanted.items() if told and told[box] not in (n, 0)}
    if missing:
        yield f"patches are {dict(told)}, reckoned {dict(wanted)}"


def layers(pattern, numbers, key):
    """Backing and batting reach past the top on every side; panels cover the backing."""
    given, size = pattern["sizes"][key], numbers["sizes"][key]
    top, seam = reckon(pattern, key), Fraction(1, 2)
    for name, otherwise in (("backing", "4 in"), ("batting", "3 in")):
        over = length(option(pattern, given, name, "overhang", otherwise))
        for wide, side in (("width", top.width), ("height", top.height)):
            told, exact = float(length(size[name][wide])), float(side + 2 * over)
            if not -CLOSE <= told - exact < 1:
                yield f"{name}: {wide} is {told}, reckoned {exact}"
    plan = size["backing"]
    count, panel = plan["panels"], length(plan["panel_width"])
    if count == 1:
        whole = sorted((panel, length(plan["panel_length"])))
        if whole != sorted((length(plan["width"]), length(plan["height"]))):
            yield f"one panel of {whole} for {plan['width']} x {plan['height']}"
        return
    seams = count - 1 + (1 if plan["half_panel"] else 0)
    across = length(plan["width"] if plan["seams"] != "horizontal" else plan["height"])
    if count * panel - seams * 2 * seam < across:
        yield f"{count} panels of {panel} in do not cover {across}"


def edges(pattern, numbers, key):
    """The binding is long enough, and no strip of it is too many; pillow backs and sleeve."""
    given, size, top = pattern["sizes"][key], numbers["sizes"][key], reckon(pattern, key)
    if "pillow" in given:
        yield from _pillow(given["pillow"], size)
        return
    plan, seam = size["binding"], length(numbers["seam"])
    wide = length(option(pattern, given, "binding", "width", "2 1/4 in"))
    needed = 2 * (top.width + top.height) + length(
        option(pattern, given, "binding", "allowance", "10 in")
    )
    if not -CLOSE <= float(length(plan["length"])) - float(needed) < 0.126:
        yield f"binding: {plan['length']} in, reckoned {needed}"
    usable = length(size["fabrics"][plan["fabric"]]["usable_width"])
    if plan["square"] is not None:
        gives = bias_from_square(length(plan["square"]), wide, seam)
        if gives < float(needed) - CLOSE:
            yield f"a square of {plan['square']} in gives {gives:.1f} in of {float(needed):.1f}"
    elif plan["cut"] == "straight" and length(plan["strip_length"]) == usable:
        strips = straight_binding(needed, wide, usable)
        if plan["strips"] != strips:
            yield f"{plan['strips']} strips of binding, reckoned {strips}"
    if "sleeve" in given:
        depth, long = (length(size["sleeve"][k]) for k in ("width", "length"))
        least = rectangle(2 * length(given["sleeve"]), seam)
        if depth < least or not top.width - 4 <= long <= top.width:
            yield f"the sleeve is {depth} x {long}, reckoned {least} by under {top.width}"


def _pillow(given, size):
    form = length(given["form"])
    overlap, hem = length(given.get("overlap", "4 in")), length(given.get("hem", "1 in"))
    told = sorted(length(size["pillow"][k]) for k in ("piece_width", "piece_length"))
    if given.get("back", "envelope") == "envelope":
        reckoned = sorted((form, envelope_back(form, overlap, hem)))
        if any(not rounded_up(a, b) for a, b in zip(reckoned, told, strict=True)):
            yield f"backs are {told}, reckoned {reckoned}"


def motifs(pattern, numbers, key):
    """A motif's square is its span and margin; its ground the block, seams and margin."""
    given, size = pattern["sizes"][key], numbers["sizes"][key]
    if "motif_size" not in given or not size["motifs"]:
        return
    margin = length(pattern.get("sewing", {}).get("motif_margin", "1 1/2 in"))
    square = length(given["motif_size"]) + margin
    if length(size["motif_square"]) != square:
        yield f"the motif's square is {size['motif_square']}, reckoned {square}"
    placed = reckon(pattern, key).placed
    wanted = sum(n for (name, _), n in placed.items() if pattern["blocks"][name].get("motif"))
    if sum(m["count"] for m in size["motifs"].values()) != wanted:
        yield f"motifs: {size['motifs']}, reckoned {wanted}"


def yardage(pattern, numbers, key):
    """What is planned holds the area of the pieces; no more is bought than first fit asks."""
    size, seam = numbers["sizes"][key], length(numbers["seam"])
    allowed = length(numbers["straightening"]) + length(numbers["mis_cut"])
    squaring = length(numbers["squaring"])  # common practice, no source
    step = length(numbers["purchase_step"])
    for fabric, plan in size["fabrics"].items():
        if plan["precut"] is not None or length(plan["buy"]) == 0:
            continue
        usable, cut = length(plan["usable_width"]), parts(size, fabric, seam)
        strips = sum(s["count"] for s in plan["strips"])
        planned = length(plan["length"])
        shaped = any(
            p["fabric"] == fabric and (p["shape"] == "template" or "nested" in p["name"])
            for p in size["pieces"]
        )
        if not shaped and planned < area_bound(cut, usable):
            yield f"{fabric}: {planned} in are planned, the area takes {area_bound(cut, usable)}"
        share = (
            1 - Fraction(str(pattern["fabrics"][fabric].get("shrinkage", "0%")).rstrip("%")) / 100
        )
        least = (planned + strips * squaring + allowed) / share
        bought = length(plan["buy"])
        if not least <= bought < least + step:
            yield f"{fabric}: {bought} in are bought for {least}"
        fitted = first_fit(cut, usable, squaring)
        if not shaped and bought > ceil((fitted + allowed) / share / step) * step:
            yield f"{fabric}: {bought} in are bought, and first fit needs {fitted}"


CHECKS = (measurements, pieces, foundations, makings, units, layers, edges, motifs, yardage)


def differences(pattern, numbers):
    """Return everything in which the numbers differ from the second reckoning."""
    return [
        f"{key}: {check.__name__}: {text}"
        for key in pattern["sizes"]
        for check in CHECKS
        for text in check(pattern, numbers, key)
    ]
