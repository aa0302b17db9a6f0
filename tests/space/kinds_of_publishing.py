"""Kinds of patterns that differ in cloth, names, papers, words and finishing.

Each takes a random generator and returns a pattern as a dictionary.
"""

from space.pieces_of_patterns import FABRICS, GRID_QUILTING, traditional
from space.whole_patterns import borders, plain, whole


def precut(rng):
    """Fabrics bought as fat quarters, squares or strips."""
    sold = rng.choice(
        (
            "fat quarter",
            {"squares": "10 in", "count": 42},
            {"squares": "5 in"},
            {"strips": "2 1/2 in", "count": 40},
            {"strips": "2 1/2 in"},
        )
    )
    fabrics = {k: dict(v) for k, v in FABRICS.items()}
    fabrics["fern"]["sold_as"] = sold
    size = {"block": "nine", "columns": rng.randint(2, 4), "rows": rng.randint(2, 4)}
    size["block_size"] = "6 in"
    blocks = {"nine": traditional("nine patch")}
    return whole(blocks, {"throw": size}, GRID_QUILTING, fabrics=fabrics)


def named(rng):
    """Names that are long, that hold signs, that are words of the trade."""
    names = (
        "Old blue shirting with the narrow stripe",
        "Aunt Wren's best",
        "Dusk & dawn",
        "No. 12",
        "Square",
        "Ground",
        "Élan vert",
        "Half-seen heron, washed twice",
        "Unit",
        "The last of the oat",
    )
    fabrics = {k: dict(v) for k, v in FABRICS.items()}
    for key, name in zip(("oat", "mist", "fern", "amber"), rng.sample(names, 4), strict=True):
        fabrics[key]["name"] = name
    title = rng.choice(
        (
            "LC",
            "The long drain from the upper fen to the sluice at the sea wall",
            "Thirty-four & one",
            "1 in 40",
            "Reach",
        )
    )
    block, side = plain(rng)
    size = {"block": "star", "columns": rng.randint(1, 3), "rows": rng.randint(1, 3)}
    size |= {
        "title": rng.choice(("S", "Large", "A wall hanging for the long hall")),
        "block_size": side,
    }
    backing = {"fabric": rng.choice(("mist", "oat"))}
    return whole(
        {"star": block},
        {"s": size},
        GRID_QUILTING,
        fabrics=fabrics,
        title=title[:60],
        backing=backing,
    )


def papered(rng):
    """Small booklets, and patterns printed on one paper only."""
    papers = rng.choice((["letter"], ["a4"], ["half-letter"], ["a5"], ["a5", "letter"]))
    block, side = plain(rng)
    size = {"block": "star", "columns": rng.randint(1, 3), "rows": rng.randint(1, 3)}
    size |= {"block_size": side, "borders": borders(rng, 1)}
    return whole({"star": block}, {"wall": size}, GRID_QUILTING, papers=papers)


def coloured(rng):
    """One to three other palettes."""
    swaps = [
        {"fabric": "fern", "name": "Night cloth", "colour": "#26343c"},
        {"fabric": "oat", "name": "Shell cloth", "colour": "#efe3dc"},
    ]
    names = ("Dusk", "First frost", "Low water")[: rng.randint(1, 3)]
    colourways = {
        n.split()[0].lower(): {"title": n, "swaps": swaps[: i % 2 + 1]} for i, n in enumerate(names)
    }
    size = {"block": "nine", "columns": rng.randint(2, 3), "rows": rng.randint(2, 3)}
    size["block_size"] = "6 in"
    blocks = {"nine": traditional("nine patch")}
    return whole(blocks, {"throw": size}, GRID_QUILTING, colourways=colourways)


OWN = (
    ("quilting-baste", "Baste with safety pins about a hand apart."),
    ("quilting-top", "Press the top for the last time; look for loose threads."),
    ("binding-press", "Press the joined strip in half along its length, wrong sides together."),
    ("label-and-care-label", "Sign your quilt on a scrap of cloth, and sew it to the back."),
    ("cutting-straighten", "Press the cloth, fold it, and cut one end straight."),
    ("quilting-unpin", "Take the pins out."),
)


def worded(rng):
    """Steps in the designer's own words, added, moved and taken out."""
    own = rng.sample(OWN, rng.randint(1, len(OWN)))
    steps = [{"step": key, "text": text} for key, text in own]
    if rng.random() < 0.5:
        steps.append({"after": "quilting-top", "text": "Hang it up for a day: cloth rests too."})
    block, side = plain(rng)
    size = {"block": "star", "columns": rng.randint(1, 3), "rows": rng.randint(1, 3)}
    size["block_size"] = side
    return whole({"star": block}, {"throw": size}, GRID_QUILTING, steps=steps)


def several(rng):
    """Two to five sizes of one design."""
    name = rng.choice(("nine patch", "sawtooth star", "four patch", "pinwheel", "shoofly"))
    titles = ("mini", "cot", "lap", "throw", "bed")
    sizes = {}
    for number, key in enumerate(titles[: rng.randint(2, 5)], start=1):
        sizes[key] = {"block": "star", "columns": number, "rows": number + rng.randint(0, 1)}
        sizes[key]["block_size"] = rng.choice(("6 in", "12 in"))
        if rng.random() < 0.5:
            sizes[key]["borders"] = borders(rng, rng.randint(1, 2))
    made = whole({"star": traditional(name)}, sizes, GRID_QUILTING)
    return {**made, "booklets": "by size"} if rng.random() < 0.5 else made


def finished(rng):
    """Backings, bindings, sleeves, batting and quilting of every sort."""
    block, side = plain(rng)
    size = {"block": "star", "columns": rng.randint(1, 5), "rows": rng.randint(1, 6)}
    size["block_size"] = side
    binding = {"fabric": "amber", "width": rng.choice(("2 in", "2 1/4 in", "2 1/2 in"))}
    if rng.random() < 0.4:
        binding["cut"] = "bias"
    style = rng.choice(("grid", "parallel", "ditch", "as desired"))
    ground = {"area": "ground", "style": style}
    if style in ("grid", "parallel"):
        ground |= {"spacing": rng.choice(("1 in", "2 in")), "angle": rng.choice((0, 45, 90))}
    if rng.random() < 0.4 and size["rows"] > 1:
        size["sleeve"] = rng.choice(("3 in", "4 in"))
    batting = {"name": rng.choice(("Wool", "Cotton", "Needle-punched cotton and wool"))}
    backing = {"fabric": "mist", "overhang": rng.choice(("3 in", "4 in", "6 in"))}
    return whole(
        {"star": block},
        {"throw": size},
        [ground],
        binding=binding,
        batting=batting,
        backing=backing,
    )


def told_in_metric(rng):
    """Patterns written in inches and told in centimetres alone, planned anew for them."""
    made = rng.choice((several, finished, coloured, papered))(rng)
    made["units"] = "metric"
    made.setdefault("papers", ["a4"])
    return made
