"""What the walk makes patterns from: cloth, blocks, motifs, ways to publish.

Everything is invented and plain; colours lie far enough apart to tell in grey.
"""

from math import cos, pi, sin

FABRICS = {
    "oat": {"name": "Oat cloth", "colour": "#f4ecd8"},
    "fern": {"name": "Fern cloth", "colour": "#1f4a3a"},
    "madder": {"name": "Madder cloth", "colour": "#9a4038"},
    "mist": {"name": "Mist cloth", "colour": "#c9d3d2"},
    "amber": {"name": "Amber cloth", "colour": "#d79a3c"},
}
PUBLICATION = {
    "studio": "Hollow Fen Studio",
    "stock_number": "HF-900",
    "year": 2026,
    "skill": "Confident beginner",
    "licence": "You may sew as many as you like, to keep or to sell.",
    "contact": "patterns@hollowfen.example",
    "blurb": "The lode runs straight to the sluice, and the reeds stand on either side of it.",
}
GRID_QUILTING = [
    {"area": "ground", "style": "grid", "spacing": "1 1/2 in"},
    {"area": "border", "style": "parallel", "spacing": "3/4 in"},
]
MOTIF_QUILTING = [
    {"area": "motif", "style": "ditch"},
    {"area": "ground", "style": "echo", "spacing": "1/2 in"},
    {"area": "border", "style": "parallel", "spacing": "3/4 in"},
]

TWO_CLOTHS = {
    "broken dishes": ("light", "dark"),
    "checkerboard": ("light", "dark"),
    "drunkard's path": ("path", "background"),
    "dutchman's puzzle": ("geese", "background"),
    "flock of geese": ("light", "dark"),
    "flying geese": ("geese", "background"),
    "four patch": ("light", "dark"),
    "friendship star": ("star", "background"),
    "half-square triangle": ("light", "dark"),
    "hourglass": ("light", "dark"),
    "nine patch": ("light", "dark"),
    "orange peel": ("peel", "background"),
    "pinwheel": ("blades", "background"),
    "snail's trail": ("light", "dark"),
    "snowball": ("ball", "corners"),
    "spool": ("spool", "background"),
    "square in a square": ("centre", "corners"),
    "bow tie": ("tie", "background"),
    "robbing peter to pay paul": ("centre", "edges"),
}
THREE_CLOTHS = {
    "attic windows": ("window", "side", "sill"),
    "basket weave": ("first", "second", "third"),
    "cake stand": ("basket", "cake", "background"),
    "churn dash": ("dash", "centre", "background"),
    "courthouse steps": ("centre", "light", "dark"),
    "double four patch": ("dark", "light", "plain"),
    "double nine patch": ("dark", "light", "plain"),
    "economy patch": ("centre", "sides", "corners"),
    "jacob's ladder": ("rungs", "sides", "background"),
    "log cabin": ("centre", "light", "dark"),
    "maple leaf": ("leaf", "stem", "background"),
    "ohio star": ("star", "centre", "background"),
    "puss in the corner": ("corners", "sides", "centre"),
    "rail fence": ("first", "second", "third"),
    "sawtooth star": ("star", "centre", "background"),
    "shoofly": ("wings", "centre", "background"),
}
MORE_CLOTHS = {
    "bear's paw": ("pads", "claws", "middle", "background"),
    "card trick": ("first", "second", "third", "fourth", "background"),
    "pandora's box": ("front", "lid", "side", "background"),
    "roman stripe": ("plain", "first", "second", "third", "fourth"),
}
LIBRARY = {**TWO_CLOTHS, **THREE_CLOTHS, **MORE_CLOTHS}
"""Every traditional block with its roles."""

GRIDS = {
    "four patch": 2,
    "pinwheel": 2,
    "hourglass": 2,
    "flying geese": 2,
    "nine patch": 3,
    "shoofly": 3,
    "rail fence": 3,
    "friendship star": 3,
    "sawtooth star": 4,
    "checkerboard": 4,
    "broken dishes": 4,
    "dutchman's puzzle": 4,
    "puss in the corner": 4,
    "double four patch": 4,
    "ohio star": 6,
    "churn dash": 6,
    "log cabin": 7,
    "courthouse steps": 7,
}
"""Grid squares along a side, of the blocks that every kind may use."""
TURNABLE = (
    "log cabin",
    "nine patch",
    "rail fence",
    "sawtooth star",
    "ohio star",
    "churn dash",
    "double four patch",
    "courthouse steps",
    "pinwheel",
    "hourglass",
)


def traditional(name):
    """Return a traditional block with a cloth for each role."""
    cloths = ("fern", "oat", "madder", "amber", "mist")
    return {"traditional": name, "fabrics": dict(zip(LIBRARY[name], cloths, strict=False))}


INNER = {4: 45, 6: 50, 8: 55, 12: 66, 16: 74}
"""Where two petals meet on a fold, in hundredths of half the span, by folds."""


def petal(folds, reach=92):
    """Return a wedge: half petals that hang together at the folds and meet in one tip."""
    angle = 2 * pi / folds
    inner = INNER[folds]
    points = [(0, 0), (inner, 0), (reach, angle / 2), (inner, angle)]
    return [[round(r * cos(t), 3), round(r * sin(t), 3), "corner"] for r, t in points]


def motif(fabric="madder", folds=8, **more):
    """Return a motif written out as an outline."""
    return {"outline": petal(folds), "folds": folds, "fabric": fabric, **more}
