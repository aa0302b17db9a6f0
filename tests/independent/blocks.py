"""Blocks as patches on the unit square, drawn from their trade names or from the YAML.

A patch is `(cloth, ring)`, a ring its corners as pairs of fractions; a curved patch is
`(cloth, None, box)` with the width and height of its finished outline. The traditional
blocks are drawn from common knowledge of them, no source.
"""

from fractions import Fraction


def _box(cloth, x, y, wide, high):
    return cloth, [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]


def _grid(rows, n, names):
    return [
        _box(names[c], Fraction(x, n), Fraction(y, n), Fraction(1, n), Fraction(1, n))
        for y, row in enumerate(rows)
        for x, c in enumerate(row)
    ]


def _halves(cloth, other, x, y, side, falling=True):
    """A square of two triangles, its seam falling or rising."""
    a, b, c, d = (x, y), (x + side, y), (x + side, y + side), (x, y + side)
    if falling:
        return [(cloth, [a, b, c]), (other, [a, c, d])]
    return [(cloth, [a, b, d]), (other, [b, c, d])]


def _quarters(pairs, x, y, side):
    """A square of four triangles: above, right, below, left."""
    a, b, c, d = (x, y), (x + side, y), (x + side, y + side), (x, y + side)
    middle = (x + side / 2, y + side / 2)
    edges = ((a, b), (b, c), (c, d), (d, a))
    return [(cloth, [p, q, middle]) for cloth, (p, q) in zip(pairs, edges, strict=True)]


def _goose(goose, sky, x, y, wide, high, way):
    """A goose and its two small triangles, its point up, right, down or left."""
    a, b, c, d = (x, y), (x + wide, y), (x + wide, y + high), (x, y + high)
    up = {
        "up": (c, d, (x + wide / 2, y), a, b),
        "down": (a, b, (x + wide / 2, y + high), c, d),
        "right": (d, a, (x + wide, y + high / 2), b, c),
        "left": (b, c, (x, y + high / 2), d, a),
    }[way]
    p, q, tip, r, s = up
    return [(goose, [p, q, tip]), (sky, [q, r, tip]), (sky, [p, tip, s])]


def four_patch(n):
    return _grid(("dl", "ld"), 2, {"d": n["dark"], "l": n["light"]})


def nine_patch(n):
    return _grid(("dld", "ldl", "dld"), 3, {"d": n["dark"], "l": n["light"]})


def checkerboard(n):
    return _grid(("dldl", "ldld") * 2, 4, {"d": n["dark"], "l": n["light"]})


def half_square_triangle(n):
    return _halves(n["light"], n["dark"], Fraction(0), Fraction(0), Fraction(1), falling=False)


def hourglass(n):
    return _quarters([n["light"], n["dark"]] * 2, Fraction(0), Fraction(0), Fraction(1))


def rail_fence(n):
    return [
        _box(n[k], Fraction(0), Fraction(i, 3), Fraction(1), Fraction(1, 3))
        for i, k in enumerate(("first", "second", "third"))
    ]


def pinwheel(n):
    h = Fraction(1, 2)
    return [
        p
        for x, y, f in ((0, 0, True), (h, 0, False), (0, h, False), (h, h, True))
        for p in _halves(n["blades"], n["background"], Fraction(x), Fraction(y), h, f)
    ]


def flying_geese(n):
    return [
        p
        for y in (Fraction(0), Fraction(1, 2))
        for p in _goose(
            n["geese"], n["background"], Fraction(0), y, Fraction(1), Fraction(1, 2), "up"
        )
    ]


def square_in_a_square(n):
    h, o, e = Fraction(1, 2), Fraction(0), Fraction(1)
    middle = [(h, o), (e, h), (h, e), (o, h)]
    corners = (
        [(o, o), (h, o), (o, h)],
        [(h, o), (e, o), (e, h)],
        [(e, h), (e, e), (h, e)],
        [(o, h), (h, e), (o, e)],
    )
    return [(n["centre"], middle), *((n["corners"], ring) for ring in corners)]


def sawtooth_star(n):
    q, h = Fraction(1, 4), Fraction(1, 2)
    star, sky = n["star"], n["background"]
    squares = [_box(sky, Fraction(x, 4), Fraction(y, 4), q, q) for x in (0, 3) for y in (0, 3)]
    geese = [
        *_goose(sky, star, q, Fraction(0), h, q, "down"),
        *_goose(sky, star, q, 3 * q, h, q, "up"),
        *_goose(sky, star, Fraction(0), q, q, h, "right"),
        *_goose(sky, star, 3 * q, q, q, h, "left"),
    ]
    return [*squares, *geese, _box(n["centre"], q, q, h, h)]


def shoofly(n):
    t = Fraction(1, 3)
    corners = [
        p
        for x in (0, 2)
        for y in (0, 2)
        for p in _halves(n["background"], n["wings"], x * t, y * t, t, x == y)
    ]
    sides = [_box(n["background"], x * t, y * t, t, t) for x, y in ((1, 0), (0, 1), (2, 1), (1, 2))]
    return [*corners, *sides, _box(n["centre"], t, t, t, t)]


def churn_dash(n):
    t, s = Fraction(1, 3), Fraction(1, 6)
    dash, sky = n["dash"], n["background"]
    corners = [
        p for x in (0, 2) for y in (0, 2) for p in _halves(sky, dash, x * t, y * t, t, x == y)
    ]
    bars = [
        _box(c, t, y, t, s)
        for c, y in ((sky, Fraction(0)), (dash, s), (dash, 2 * t), (sky, 2 * t + s))
    ]
    bars += [
        _box(c, x, t, s, t)
        for c, x in ((sky, Fraction(0)), (dash, s), (dash, 2 * t), (sky, 2 * t + s))
    ]
    return [*corners, *bars, _box(n["centre"], t, t, t, t)]


def ohio_star(n):
    t = Fraction(1, 3)
    sky, star = n["background"], n["star"]
    corners = [_box(sky, x * t, y * t, t, t) for x in (0, 2) for y in (0, 2)]
    points = [
        p
        for x, y in ((1, 0), (2, 1), (1, 2), (0, 1))
        for p in _quarters([sky, star] * 2 if x == 1 else [star, sky] * 2, x * t, y * t, t)
    ]
    return [*corners, *points, _box(n["centre"], t, t, t, t)]


def log_cabin(n):
    """Logs round a square, clockwise from above; each as long as what it is sewn to."""
    s = Fraction(1, 7)
    found = [_box(n["centre"], 3 * s, 3 * s, s, s)]
    left, top, right, bottom = 3 * s, 3 * s, 4 * s, 4 * s
    for _ in range(3):
        found.append(_box(n["light"], left, top - s, right - left, s))
        top -= s
        found.append(_box(n["light"], right, top, s, bottom - top))
        right += s
        found.append(_box(n["dark"], left, bottom, right - left, s))
        bottom += s
        found.append(_box(n["dark"], left - s, top, s, bottom - top))
        left -= s
    return found


def drunkards_path(n):
    """A quarter circle of three quarters of the side, and what is left of the square."""
    return [
        (n["path"], None, (Fraction(3, 4), Fraction(3, 4))),
        (n["background"], None, (Fraction(1), Fraction(1))),
    ]


TRADITIONAL = {
    "four patch": four_patch,
    "nine patch": nine_patch,
    "checkerboard": checkerboard,
    "half-square triangle": half_square_triangle,
    "hourglass": hourglass,
    "rail fence": rail_fence,
    "pinwheel": pinwheel,
    "flying geese": flying_geese,
    "square in a square": square_in_a_square,
    "sawtooth star": sawtooth_star,
    "shoofly": shoofly,
    "churn dash": churn_dash,
    "ohio star": ohio_star,
    "log cabin": log_cabin,
    "drunkard's path": drunkards_path,
}


def patches(pattern, name):
    """Return the patches of a block on the unit square."""
    block = pattern["blocks"][name]
    if "traditional" in block:
        return TRADITIONAL[block["traditional"]](block["fabrics"])
    if "ground" in block:
        return _ground(block["ground"])
    across, down = block["grid"]
    return [p for item in block["patches"] for p in _placed(pattern, item, across, down)]


def _ground(ground):
    if isinstance(ground, str):
        return [_box(ground, Fraction(0), Fraction(0), Fraction(1), Fraction(1))]
    rows = ground["rows"]
    wide, high = Fraction(1, len(rows[0])), Fraction(1, len(rows))
    return [
        _box(c, x * wide, y * high, wide, high)
        for y, row in enumerate(rows)
        for x, c in enumerate(row)
    ]


def _placed(pattern, item, across, down):
    if "block" in item:
        return _within(pattern, item, across, down)
    if "square" in item:
        x, y, side = map(Fraction, item["square"])
        return [_box(item["fabric"], x / across, y / down, side / across, side / down)]
    if "rectangle" in item:
        x, y, wide, high = map(Fraction, item["rectangle"])
        return [_box(item["fabric"], x / across, y / down, wide / across, high / down)]
    ring = item.get("triangle") or item["points"]
    return [
        (item["fabric"], [(Fraction(str(x)) / across, Fraction(str(y)) / down) for x, y in ring])
    ]


def _within(pattern, item, across, down):
    """Return a block within a block, turned clockwise and set in its place."""
    inner = pattern["blocks"][item["block"]]
    turn = item.get("turn", 0)
    size = item.get("size") or inner.get("grid") or [2, 2]
    if "size" not in item and turn in (90, 270):
        size = size[::-1]
    other = item.get("fabrics", {})
    left, top = item["at"]
    found = []
    for cloth, ring, *box in patches(pattern, item["block"]):
        cloth = other.get(cloth, cloth)
        if ring is None:
            wide, high = box[0]
            found.append((cloth, None, (wide * size[0] / across, high * size[1] / down)))
            continue
        turned = [_turned(point, turn) for point in ring]
        found.append(
            (
                cloth,
                [((left + x * size[0]) / across, (top + y * size[1]) / down) for x, y in turned],
            )
        )
    return found


def _turned(point, turn):
    x, y = point
    return {0: (x, y), 90: (1 - y, x), 180: (1 - x, 1 - y), 270: (y, 1 - x)}[turn]
