"""A whole pattern round some blocks and sizes, and the parts that kinds share."""

import yaml

from space.pieces_of_patterns import FABRICS, GRIDS, PUBLICATION, traditional


def whole(blocks, sizes, quilting=None, **more):
    """Return a pattern of these blocks and sizes, with all that is published beside them."""
    made = {"publication": dict(PUBLICATION), "fabrics": {k: dict(v) for k, v in FABRICS.items()}}
    made |= {k: v for k, v in more.items() if k in ("publication", "fabrics", "title")}
    used = {k: v for k, v in more.items() if k not in made}
    made |= {"backing": {"fabric": "mist"}, "binding": {"fabric": "amber"}} | used
    if quilting is not None:
        made["quilting"] = quilting
    made |= {"blocks": blocks, "sizes": sizes}
    return only_used(made)


def only_used(made):
    """Leave out the fabrics that nothing is made of: they would be a finding of their own."""
    said = yaml.safe_dump({k: v for k, v in made.items() if k not in ("fabrics", "publication")})
    words = set(
        said.replace(":", " ").replace(",", " ").replace("[", " ").replace("]", " ").split()
    )
    made["fabrics"] = {k: v for k, v in made["fabrics"].items() if k in words}
    return made


def block_side(rng, name):
    """Return a side at which the grid squares of a block measure halves of an inch."""
    grid = GRIDS[name]
    return f"{grid * rng.choice((2, 3, 4) if grid < 5 else (1, 2))} in"


def plain(rng):
    """Return a traditional block that every kind may use, and its side."""
    name = rng.choice(tuple(GRIDS))
    return traditional(name), block_side(rng, name)


def borders(rng, count=None):
    """Return one to three borders."""
    widths = ("1 in", "2 in", "1 1/2 in", "3 in", "2 1/4 in")
    cloths = rng.sample(("fern", "madder", "amber"), 3)
    count = count or rng.randint(1, 3)
    return [{"width": rng.choice(widths), "fabric": cloths[i]} for i in range(count)]
