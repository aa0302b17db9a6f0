"""Small patterns from seeds, of what the second reckoning knows how to cut.

Straight tops with sashing and borders, tops on point, medallions, bordered pillows, motifs
on whole and pieced grounds, straight and bias bindings, wide and narrow cloth, two seams.
"""

from random import Random

SEEDS = range(200)
CLOTHS = {
    "oat": ("Oat cloth", "#f4ecd8"),
    "fern": ("Fern cloth", "#1f4a3a"),
    "madder": ("Madder cloth", "#9a4038"),
    "mist": ("Mist cloth", "#c9d3d2"),
    "amber": ("Amber cloth", "#d79a3c"),
}
ROLES = {
    "four patch": ("dark", "light"),
    "nine patch": ("dark", "light"),
    "checkerboard": ("dark", "light"),
    "half-square triangle": ("light", "dark"),
    "hourglass": ("light", "dark"),
    "rail fence": ("first", "second", "third"),
    "pinwheel": ("blades", "background"),
    "flying geese": ("geese", "background"),
    "sawtooth star": ("star", "centre", "background"),
    "shoofly": ("wings", "centre", "background"),
    "churn dash": ("dash", "centre", "background"),
    "ohio star": ("star", "centre", "background"),
    "log cabin": ("centre", "light", "dark"),
}
GRID = {
    "four patch": 2,
    "nine patch": 3,
    "checkerboard": 4,
    "half-square triangle": 1,
    "hourglass": 2,
    "rail fence": 3,
    "pinwheel": 2,
    "flying geese": 2,
    "sawtooth star": 4,
    "shoofly": 3,
    "churn dash": 6,
    "ohio star": 6,
    "log cabin": 7,
}
PETAL = [[0, 0, "corner"], [55, 0, "corner"], [85, 35.2, "corner"], [38.9, 38.9, "corner"]]


def pattern(seed):
    """Return the pattern of a seed as a dictionary, the same on every run."""
    rng = Random(f"second reckoning {seed}")
    made = {
        "title": f"Sluice {seed}",
        "fabrics": {k: {"name": name, "colour": colour} for k, (name, colour) in CLOTHS.items()},
        "backing": {"fabric": "mist"},
        "binding": {"fabric": "amber"},
        "quilting": [{"area": "ground", "style": "grid", "spacing": "1 1/2 in"}],
        "blocks": {},
        "sizes": {},
    }
    _general(made, rng)
    for key in ("small", "large")[: rng.choice((1, 1, 2))]:
        made["sizes"][key] = kind_of(seed)(made, rng)
    return made


def kind_of(seed):
    """Return the kind of top that a seed makes."""
    kinds = (straight, sashed, on_point, medallion, pillow, appliqued, slanting)
    return kinds[seed % len(kinds)]


def _general(made, rng):
    if rng.random() < 0.25:
        made["sewing"] = {"seam": rng.choice(("3/8 in", "1/2 in"))}
    if rng.random() < 0.3:
        made["binding"]["width"] = rng.choice(("2 in", "2 1/2 in"))
    if rng.random() < 0.3:
        made["backing"]["overhang"] = rng.choice(("3 in", "5 in"))
    if rng.random() < 0.3:
        made["fabrics"]["fern"]["usable_width"] = rng.choice(("42 in", "44 in", "58 in"))


def block(made, rng, names=tuple(ROLES)):
    """Add a block and return its key and a side that falls on halves of an inch."""
    name = rng.choice(names)
    key = name.replace(" ", "-")
    cloths = ("fern", "oat", "madder")
    made["blocks"][key] = {
        "traditional": name,
        "fabrics": dict(zip(ROLES[name], cloths, strict=False)),
    }
    grid = GRID[name]
    return key, grid * rng.choice((1, 2) if grid > 3 else (2, 3))


def borders(rng, most=2):
    return [
        {
            "width": rng.choice(("1 in", "2 in", "2 1/2 in", "4 in")),
            "fabric": rng.choice(("madder", "amber")),
        }
        for _ in range(rng.randint(0, most))
    ]


def straight(made, rng):
    key, side = block(made, rng)
    size = {
        "block": key,
        "columns": rng.randint(1, 5),
        "rows": rng.randint(1, 5),
        "block_size": f"{side} in",
        "borders": borders(rng),
    }
    if rng.random() < 0.3 and "sewing" not in made:
        size["sleeve"] = "1 in"
    return size


def slanting(made, rng):
    """A top bound on the bias, with or without a sleeve."""
    made["binding"]["cut"] = "bias"
    size = straight(made, rng)
    if rng.random() < 0.3:
        size["sleeve"] = "1 in"
    return size


def sashed(made, rng):
    size = straight(made, rng)
    size["columns"], size["rows"] = max(2, size["columns"]), max(2, size["rows"])
    size["sashing"] = {
        "width": rng.choice(("1 in", "1 1/2 in")),
        "fabric": "mist",
        "outer": rng.choice(("yes", "no")),
    }
    if rng.random() < 0.6:
        size["sashing"]["cornerstones"] = "amber"
    return size


def on_point(made, rng):
    key, side = block(made, rng)
    made["blocks"]["plain"] = {"ground": "oat"}
    return {
        "block": key,
        "setting": "on point",
        "alternate": "plain",
        "setting_fabric": "mist",
        "columns": rng.randint(2, 4),
        "rows": rng.randint(2, 4),
        "block_size": f"{side} in",
        "borders": borders(rng, 1),
    }


def medallion(made, rng):
    key, _ = block(made, rng, ("sawtooth star", "churn dash", "ohio star", "nine patch"))
    small, _ = block(made, rng, ("four patch", "half-square triangle", "hourglass"))
    rounds = [
        {"blocks": small, "block_size": rng.choice(("3 in", "4 in"))},
        {"border": {"width": "2 in", "fabric": "amber"}},
    ]
    return {"block": key, "block_size": "12 in", "rounds": rounds}


def pillow(made, rng):
    key, _ = block(made, rng, ("sawtooth star", "churn dash", "nine patch", "pinwheel"))
    wide = rng.choice((1, 2, 3))
    form = 12 + 2 * wide + 1
    return {
        "finish": "pillow",
        "block": key,
        "block_size": "12 in",
        "borders": [{"width": f"{wide} in", "fabric": "madder"}],
        "pillow": {"form": f"{form} in", "fabric": "amber"},
    }


def appliqued(made, rng):
    made["motifs"] = {"sprig": {"outline": PETAL, "folds": 8, "fabric": "madder"}}
    ground = rng.choice(("oat", {"rows": [["oat", "mist"], ["mist", "oat"]]}))
    made["blocks"]["sprig"] = {"ground": ground, "motif": "sprig"}
    span = rng.choice((9, 12))
    return {
        "block": "sprig",
        "columns": rng.randint(1, 3),
        "rows": rng.randint(1, 2),
        "block_size": f"{span + 3} in",
        "motif_size": f"{span} in",
        "borders": borders(rng),
    }
