"""Kinds of patterns that differ in how the top is pieced and set.

Each takes a random generator and returns a pattern as a dictionary.
"""

from space.pieces_of_patterns import GRID_QUILTING, LIBRARY, TURNABLE, traditional
from space.whole_patterns import block_side, borders, plain, whole


def grid(rng):
    """Blocks of one kind side by side, 2 x 2 to 6 x 8, quilted as is said or by default."""
    block, side = plain(rng)
    size = {"block": "star", "columns": rng.randint(2, 6), "rows": rng.randint(2, 8)}
    quilting = rng.choice((None, GRID_QUILTING[:1]))
    return whole({"star": block}, {"throw": {**size, "block_size": side}}, quilting)


def runner(rng):
    """One row or one column of blocks, 1 to 6 long."""
    block, side = plain(rng)
    long = rng.randint(1, 6)
    columns, rows = rng.choice(((1, long), (long, 1)))
    size = {"block": "star", "columns": columns, "rows": rows, "block_size": side}
    if rng.random() < 0.5:
        size["borders"] = borders(rng, 1)
    return whole({"star": block}, {"runner": size}, GRID_QUILTING)


def bordered(rng):
    """Blocks with one to three borders, butted or mitred."""
    block, side = plain(rng)
    size = {"block": "star", "columns": rng.randint(1, 4), "rows": rng.randint(1, 5)}
    edges = borders(rng)
    if rng.random() < 0.3:
        edges = [{**b, "corners": "mitred"} for b in edges]
    size |= {"block_size": side, "borders": edges}
    return whole({"star": block}, {"throw": size}, GRID_QUILTING)


def sashed(rng):
    """Strips between the blocks, with and without cornerstones, outer strips and a border."""
    block, side = plain(rng)
    sashing = {"width": rng.choice(("1 in", "1 1/2 in", "2 in")), "fabric": "mist"}
    if rng.random() < 0.6:
        sashing["cornerstones"] = "amber"
    if rng.random() < 0.5:
        sashing["outer"] = "yes"
    size = {"block": "star", "columns": rng.randint(1, 5), "rows": rng.randint(1, 6)}
    size |= {"block_size": side, "sashing": sashing}
    if rng.random() < 0.4:
        size["borders"] = borders(rng, 1)
    return whole({"star": block}, {"throw": size}, GRID_QUILTING)


def large(rng):
    """Tops larger than the cloth is wide, whose strips are joined or lie along it."""
    block, side = plain(rng)
    mist = {"width": rng.choice(("1 1/2 in", "2 in", "3 in")), "fabric": "mist"}
    size = {"block": "star", "block_size": side, "sashing": mist}
    size |= {"columns": rng.randint(3, 5), "rows": rng.randint(4, 6)}
    if rng.random() < 0.4:
        mist["outer"] = "yes"
    if rng.random() < 0.4:
        size |= {"setting": "on point", "setting_fabric": "oat"}
        size |= {"columns": rng.randint(2, 4), "rows": rng.randint(3, 5)}
    if rng.random() < 0.5:
        size["borders"] = borders(rng, 2)
    made = whole({"star": block}, {"bed": size}, GRID_QUILTING)
    if rng.random() < 0.3:
        made["fabrics"]["mist"]["directional"] = "yes"
    return made


def on_point(rng):
    """Blocks on point, with blocks between them, with and without sashing and border."""
    block, side = plain(rng)
    size = {"block": "star", "setting": "on point", "setting_fabric": "mist", "block_size": side}
    size |= {"columns": rng.randint(1, 4), "rows": rng.randint(1, 4)}
    blocks = {"star": block}
    if rng.random() < 0.5:
        blocks["plain"] = {"ground": "amber"}
        size["alternate"] = "plain"
        if size["columns"] == 1 or size["rows"] == 1:
            size |= {"columns": 2, "rows": 2}
    if rng.random() < 0.3:
        size["sashing"] = {"width": "1 in", "fabric": "madder"}
    if rng.random() < 0.4:
        size["borders"] = borders(rng, 1)
    return whole(blocks, {"throw": size}, GRID_QUILTING)


def medallion(rng):
    """Rounds of borders and of blocks about a centre."""
    name = rng.choice(("sawtooth star", "nine patch", "ohio star", "churn dash"))
    small = rng.choice(("four patch", "half-square triangle", "hourglass", "nine patch"))
    rounds = [{"blocks": "small", "block_size": rng.choice(("3 in", "4 in", "2 in"))}]
    if rng.random() < 0.5:
        rounds.insert(0, {"border": {"width": "6 in", "fabric": "amber"}})
    if rng.random() < 0.6:
        rounds.append({"border": {"width": "2 in", "fabric": "madder"}})
    blocks = {"star": traditional(name), "small": traditional(small)}
    size = {"block": "star", "block_size": "12 in", "rounds": rounds}
    return whole(blocks, {"wall": size}, GRID_QUILTING)


def checkered(rng):
    """Two blocks by turns in straight rows."""
    first, second = rng.sample(("nine patch", "four patch", "sawtooth star", "pinwheel"), 2)
    blocks = {"chain": traditional(first), "pool": traditional(second)}
    if rng.random() < 0.4:
        blocks["pool"] = {"ground": "mist"}
    columns = rng.choice((1, 2, 3, 5))
    size = {"block": ["chain", "pool"], "columns": columns, "rows": rng.randint(1, 5)}
    size["block_size"] = rng.choice(("6 in", "12 in"))
    if size["columns"] * size["rows"] == 1:
        size["rows"] = 2
    return whole(blocks, {"throw": size}, GRID_QUILTING)


def turned(rng):
    """Blocks turned by turns, so that their pattern runs on from one to the next."""
    name = rng.choice(TURNABLE)
    turns = rng.choice(([0, 90], [0, 180], [0, 90, 180, 270], [90, 0], [0, 90, 90, 0]))
    size = {"block": "cabin", "turns": turns, "columns": rng.randint(1, 4)}
    size |= {"rows": rng.randint(2, 4), "block_size": block_side(rng, name)}
    if rng.random() < 0.3:
        size["borders"] = borders(rng, 1)
    return whole({"cabin": traditional(name)}, {"throw": size}, GRID_QUILTING)


def pillow(rng):
    """A pieced pillow: one block or several, with and without borders, either back."""
    name = rng.choice(("nine patch", "sawtooth star", "four patch", "churn dash", "pinwheel"))
    across = rng.choice((1, 1, 2, 3))
    edges = borders(rng, 1) if rng.random() < 0.5 else []
    inner = {1: 12, 2: 12, 3: 18}[across]
    grown = inner + sum(
        2 * {"1 in": 1, "2 in": 2, "1 1/2 in": 1.5, "3 in": 3}.get(b["width"], 2.25) for b in edges
    )
    back = {"form": f"{grown + 1:g} in", "fabric": "amber"}
    if rng.random() < 0.4:
        back["back"] = "zip"
    size = {"finish": "pillow", "block": "star", "columns": across, "rows": across}
    size |= {"block_size": f"{inner // across} in", "borders": edges, "pillow": back}
    return whole({"star": traditional(name)}, {"pillow": size}, GRID_QUILTING)


def foundation(rng):
    """Blocks sewn on printed foundations, at one size or two."""
    name = rng.choice(
        (
            "log cabin",
            "courthouse steps",
            "square in a square",
            "flying geese",
            "roman stripe",
            "economy patch",
        )
    )
    block = {**traditional(name), "foundation": "derived"}
    size = {"block": "paper", "columns": rng.randint(1, 3), "rows": rng.randint(1, 3)}
    sizes = {"small": {**size, "block_size": rng.choice(("4 in", "6 in", "7 in"))}}
    if rng.random() < 0.4:
        sizes["large"] = {**size, "block_size": "8 in", "borders": borders(rng, 1)}
    return whole({"paper": block}, sizes, GRID_QUILTING)


def drawn(rng):
    """A block of the designer's own: a grid filled with rectangles, rows of them or columns."""
    across = rng.choice((4, 6))
    patches, y = [], 0
    while y < across:
        high = min(rng.choice((1, 2)), across - y)
        x = 0
        while x < across:
            wide = min(rng.choice((1, 2, 3)), across - x)
            cloth = ("oat", "fern", "madder")[(x + 2 * y) % 3]
            patches.append({"fabric": cloth, "rectangle": [x, y, wide, high]})
            x += wide
        y += high
    block = {"grid": [across, across], "patches": patches}
    size = {"block": "own", "columns": rng.randint(1, 3), "rows": rng.randint(1, 3)}
    size["block_size"] = f"{across * rng.choice((1, 2))} in"
    return whole({"own": block}, {"throw": size}, GRID_QUILTING)


def library(rng):
    """Any traditional block at a size that suits its grid."""
    name = rng.choice(tuple(LIBRARY))
    side = {"bear's paw": "14 in", "double nine patch": "9 in", "cake stand": "10 in"}
    size = {"block": "old", "columns": rng.randint(1, 3), "rows": rng.randint(1, 3)}
    size["block_size"] = side.get(name, "12 in")
    return whole({"old": traditional(name)}, {"throw": size}, GRID_QUILTING)


def off_the_eighth(rng):
    """Blocks whose grid does not fall on eighths of an inch."""
    name, sides = rng.choice(
        (
            ("nine patch", (4, 8, 10, 14, 16)),
            ("shoofly", (8, 10)),
            ("ohio star", (8, 10)),
            ("friendship star", (8, 10)),
            ("churn dash", (8, 10)),
            ("log cabin", (8, 10, 12)),
        )
    )
    size = {"block": "star", "columns": rng.randint(1, 4), "rows": rng.randint(1, 4)}
    size["block_size"] = f"{rng.choice(sides)} in"
    return whole({"star": traditional(name)}, {"throw": size}, GRID_QUILTING)


def metric(rng):
    """Lengths in centimetres and millimetres, as they are written where cloth is metric."""
    name = rng.choice(("four patch", "nine patch", "sawtooth star", "pinwheel"))
    side = rng.choice((24, 30, 36))
    size = {"block": "star", "columns": rng.randint(1, 4), "rows": rng.randint(1, 4)}
    size["block_size"] = f"{side} cm"
    if rng.random() < 0.5:
        size["borders"] = [{"width": rng.choice(("5 cm", "7.5 cm")), "fabric": "madder"}]
    quilting = [
        {"area": "ground", "style": "grid", "spacing": "4 cm"},
        {"area": "border", "style": "parallel", "spacing": "25 mm"},
    ]
    return whole({"star": traditional(name)}, {"throw": size}, quilting)


def tops_told_in_metric(rng):
    """Tops of every sort, written in inches and told in centimetres alone."""
    kinds = (bordered, sashed, on_point, medallion, checkered, turned, pillow, foundation, quick)
    return {**rng.choice(kinds)(rng), "units": "metric", "papers": ["a4"]}


def quick(rng):
    """Units made several at once, in quilts and pillows."""
    name, piecing = rng.choice(
        (
            ("sawtooth star", {"geese": "four at once"}),
            ("sawtooth star", {"corners": "flipped"}),
            ("pinwheel", {"triangles": "two at once"}),
            ("churn dash", {"triangles": "two at once", "strips": "strip sets"}),
            ("ohio star", {"hourglasses": "two at once"}),
            ("four patch", {"strips": "strip sets"}),
            ("nine patch", {"strips": "strip sets"}),
            ("snowball", {"corners": "flipped"}),
            ("square in a square", {"corners": "flipped"}),
            ("broken dishes", {"triangles": "two at once"}),
            ("rail fence", {"strips": "strip sets"}),
            ("flying geese", {"geese": "four at once"}),
        )
    )
    sides = {"snowball": "6 in", "square in a square": "4 in"}
    side = sides.get(name) or block_side(rng, name)
    size = {"block": "star", "columns": rng.randint(1, 4), "rows": rng.randint(1, 4)}
    size["block_size"] = side
    return whole({"star": traditional(name)}, {"throw": size}, GRID_QUILTING, piecing=piecing)
