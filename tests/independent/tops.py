"""One size of a pattern reckoned from its YAML: measurements, counts, every piece to cut.

In: the pattern as a dictionary and a size's key. Out: a `Top`. Lengths are Fractions of an
inch, or floats on the diagonal of a block.
"""

from collections import Counter
from dataclasses import dataclass, field

from independent import blocks
from independent.trade import (
    ROOT,
    corner_triangle,
    fits_sheet,
    length,
    on_point_counts,
    once_cut,
    rectangle,
    side_triangle,
    twice_cut,
)


@dataclass
class Top:
    """`pieces` counts `(cloth, shape, (width, length))`, exact, by shape in the trade's words;
    for triangles it counts triangles, and the size is that of the square they are cut from.
    """

    width: object = 0
    height: object = 0
    inner: tuple = ()
    placed: Counter = field(default_factory=Counter)
    """Blocks by name and side."""
    pieces: Counter = field(default_factory=Counter)
    patches: Counter = field(default_factory=Counter)
    """Finished boxes of the patches of blocks, by cloth."""


def option(pattern, size, name, key, otherwise):
    """Return a value that a size may say again for itself."""
    return size.get(name, {}).get(key, pattern.get(name, {}).get(key, otherwise))


def reckon(pattern, key):
    """Return what one size takes."""
    size = pattern["sizes"][key]
    seam = length(pattern.get("sewing", {}).get("seam", "1/4 in"))
    top = Top()
    side = length(size["block_size"])
    _set(pattern, size, top, side, seam)
    top.inner = top.width, top.height
    edge = length(size["pillow"].get("seam", "1/2 in")) if "pillow" in size else seam
    borders = size.get("borders", [])
    for number, border in enumerate(borders, start=1):
        _border(top, border, seam, edge if number == len(borders) else seam)
    for layer in size.get("rounds", []):
        if "border" in layer:
            _border(top, layer["border"], seam, seam)
        else:
            _round(top, layer)
    for (name, block_side), count in top.placed.items():
        outer = edge if "pillow" in size and not borders else seam
        _cut_block(pattern, top, name, block_side, count, seam, outer)
    return top


def _cycle(value, index):
    values = value if isinstance(value, list) else [value]
    return values[index % len(values)]


def _set(pattern, size, top, side, seam):
    """Set the blocks: straight, with sashing, or on point."""
    columns, rows = size.get("columns", 1), size.get("rows", 1)
    names = size.get("block", next(iter(pattern["blocks"])))
    for index in range(columns * rows):
        top.placed[_cycle(names, index), side] += 1
    if size.get("setting") == "on point":
        between, sides, corners = on_point_counts(columns, rows)
        for index in range(between):
            top.placed[_cycle(size.get("alternate", names), index), side] += 1
        cloth = size["setting_fabric"]
        top.pieces[cloth, "twice-cut triangle", (side_triangle(side, seam),) * 2] += sides
        top.pieces[cloth, "once-cut triangle", (corner_triangle(side, seam),) * 2] += corners
        top.width, top.height = columns * float(side) * ROOT, rows * float(side) * ROOT
        return
    top.width, top.height = columns * side, rows * side
    if "sashing" in size:
        _sash(size["sashing"], top, side, columns, rows, seam)


def _sash(sashing, top, side, columns, rows, seam):
    wide = length(sashing["width"])
    outer = 2 if str(sashing.get("outer", "no")) in ("yes", "True", "true") else 0
    across, down = columns - 1 + outer, rows - 1 + outer
    top.width += across * wide
    top.height += down * wide
    cut = rectangle(wide, seam)
    short = tuple(sorted((cut, rectangle(side, seam))))
    top.pieces[sashing["fabric"], "rectangle", short] += rows * across
    if sashing.get("cornerstones"):
        top.pieces[sashing["fabric"], "rectangle", short] += columns * down
        top.pieces[sashing["cornerstones"], "rectangle", (cut, cut)] += across * down
    else:
        long = tuple(sorted((cut, rectangle(top.width, seam))))
        top.pieces[sashing["fabric"], "rectangle", long] += down


def _border(top, border, seam, edge):
    """Sides first, then top and bottom; the outermost has the closing seam at its edge."""
    wide = length(border["width"])
    depth = wide + seam + edge
    if border.get("corners") == "mitred":
        top.width, top.height = top.width + 2 * wide, top.height + 2 * wide
        return
    top.pieces[border["fabric"], "rectangle", _pair(depth, top.height + 2 * seam)] += 2
    top.width += 2 * wide
    top.pieces[border["fabric"], "rectangle", _pair(depth, top.width + 2 * edge)] += 2
    top.height += 2 * wide


def _pair(a, b):
    return tuple(sorted((a, b)))


def _round(top, layer):
    """Blocks all round, each side clockwise from its corner."""
    side = length(layer["block_size"])
    for reach in (top.width, top.height) * 2:
        for index in range(int(reach / side) + 1):
            top.placed[_cycle(layer["blocks"], index), side] += 1
    top.width, top.height = top.width + 2 * side, top.height + 2 * side


def _cut_block(pattern, top, name, side, count, seam, outer):
    """Add the pieces of a block, as often as it is placed."""
    block = pattern["blocks"][name]
    if block.get("motif"):
        top.patches["motif ground", ()] += count
        if "ground" in block:
            _cut_ground(pattern, top, block["ground"], side, count, seam, outer)
            return
    piecing = {**pattern.get("piecing", {}), **block.get("piecing", {})}
    patches = blocks.patches(pattern, name)
    ruled = _off_paper(patches, side, seam) if block.get("foundation") == "derived" else ()
    for number, (cloth, ring, *box) in enumerate(patches):
        if block.get("foundation") and number not in ruled:
            top.patches["foundation", cloth] += count
            continue
        if ring is None:
            finished = tuple(sorted(b * side for b in box[0]))
            top.pieces[cloth, "template", finished] += count
            continue
        if block.get("motif"):
            continue  # patches at the edge have a margin of their own
        _cut_patch(top, cloth, [(x * side, y * side) for x, y in ring], count, seam, piecing)


def _off_paper(patches, side, seam):
    """Return which patches of a block on one foundation stay off its paper.

    They are bars from edge to edge, cut with a ruler and sewn on last: the fewest, and four at
    most, without which the rest with its seams goes on a sheet. Of those the ones that leave
    the most. Where no four do, all stay on the paper (geometry; the sheet is the project's own).
    """
    boxes = [_reach(ring) if ring and len(ring) == 4 else None for _, ring, *_ in patches]
    left = {(): (0, 0, 1, 1)}
    for _ in range(5):
        small = {off: rest for off, rest in left.items() if fits_sheet(*_sides(rest, side), seam)}
        if small:
            return max(small, key=lambda off: _sides(small[off])[0] * _sides(small[off])[1])
        left = {
            (*off, n): shorter
            for off, rest in left.items()
            for n, bar in enumerate(boxes)
            if bar and n not in off and (shorter := _without(rest, bar))
        }
    return ()


def _reach(ring):
    """Return the box of a ring that is a rectangle lying square, otherwise None."""
    xs, ys = {x for x, _ in ring}, {y for _, y in ring}
    square = len(xs) == len(ys) == 2
    return (min(xs), min(ys), max(xs), max(ys)) if square else None


def _sides(box, side=1):
    left, top, right, bottom = box
    return (right - left) * side, (bottom - top) * side


def _without(rest, bar):
    """Return what is left of a box beside a bar that fills one of its edges, or None."""
    left, top, right, bottom = rest
    if (bar[0], bar[2]) == (left, right):
        if bar[1] == top:
            return left, bar[3], right, bottom
        return (left, top, right, bar[1]) if bar[3] == bottom else None
    if (bar[1], bar[3]) == (top, bottom):
        if bar[0] == left:
            return bar[2], top, right, bottom
        return (left, top, bar[0], bottom) if bar[2] == right else None
    return None


def _cut_ground(pattern, top, ground, side, count, seam, outer):
    """Add a ground that a motif lies on: its outer edges have half of the margin each."""
    margin = length(pattern.get("sewing", {}).get("ground_margin", "1 in")) / 2 + outer
    rows = [[ground]] if isinstance(ground, str) else ground["rows"]
    wide, high = side / len(rows[0]), side / len(rows)
    for y, row in enumerate(rows):
        for x, cloth in enumerate(row):
            across = wide + sum(margin if edge else seam for edge in (x == 0, x == len(row) - 1))
            down = high + sum(margin if edge else seam for edge in (y == 0, y == len(rows) - 1))
            top.pieces[cloth, "rectangle", _pair(across, down)] += count


def _cut_patch(top, cloth, ring, count, seam, piecing):
    xs, ys = [p[0] for p in ring], [p[1] for p in ring]
    wide, high = max(xs) - min(xs), max(ys) - min(ys)
    top.patches[cloth, _pair(wide, high)] += count
    on_box = sum(x in (min(xs), max(xs)) and y in (min(ys), max(ys)) for x, y in ring)
    if len(ring) == 4 and on_box == 4:
        cut = _pair(rectangle(wide, seam), rectangle(high, seam))
        top.pieces[cloth, "rectangle", cut] += count
    elif len(ring) == 3 and on_box == 3:
        top.pieces[cloth, "once-cut triangle", (once_cut(wide, seam),) * 2] += count
    elif len(ring) == 3:
        long = max(wide, high)
        top.pieces[cloth, "twice-cut triangle", (twice_cut(long, seam),) * 2] += count
    else:
        square = float(wide) / ROOT
        top.pieces[cloth, "rectangle", (square + 2 * float(seam),) * 2] += count
