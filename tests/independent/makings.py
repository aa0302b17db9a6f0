"""What `numbers.json` says of units made several at once, held against the second reckoning."""

from independent.trade import geese_at_once, length, once_cut, rounded_up, twice_cut


def makings(pattern, numbers, key):
    """What is made several at once is made often enough, of squares of the trade's sizes."""
    size, seam = numbers["sizes"][key], length(numbers["seam"])
    cut = {p["letter"]: p for p in size["pieces"]}
    for making in size["makings"]:
        made = making["batches"] * making["each_batch"]
        if not making["count"] <= made < making["count"] + making["each_batch"]:
            yield f"{making['method']}: {made} are made of {making['count']}"
        for letter, each in making["pieces"].items():
            if cut[letter]["count"] < each * making["batches"] and making["method"] != "strips":
                yield f"{letter}: {cut[letter]['count']} are cut of {each * making['batches']}"
        wide, high = (length(making["trim"][k]) - 2 * seam for k in ("width", "height"))
        yield from _squares(making, cut, max(wide, high), min(wide, high), seam)


def _squares(making, cut, wide, high, seam):
    rules = {
        "geese": geese_at_once(wide, high, seam),
        "triangles": (once_cut(wide, seam),),
        "hourglasses": (twice_cut(wide, seam),),
    }
    for letter in making["pieces"]:
        told = length(cut[letter]["width"])
        if making["method"] in rules and not any(
            rounded_up(exact, told) for exact in rules[making["method"]]
        ):
            yield f"{letter}, for {making['method']}, is {told} in"
