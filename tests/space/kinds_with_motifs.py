"""Kinds of patterns with motifs, by every method and fold count, on every ground.

Each takes a random generator and returns a pattern as a dictionary.
"""

from space.pieces_of_patterns import MOTIF_QUILTING, motif, traditional
from space.whole_patterns import borders, whole


def appliqued(rng, method, folds, **more):
    """Blocks of one motif on whole cloth."""
    span = rng.choice((9, 10, 12, 14))
    size = {"block": "sprig", "columns": rng.choice((1, 1, 2, 3)), "rows": rng.choice((1, 2, 3))}
    size |= {"block_size": f"{span + 3} in", "motif_size": f"{span} in"}
    if rng.random() < 0.5:
        size["borders"] = borders(rng, rng.choice((1, 2)))
    motifs = {"sprig": motif("madder", folds, method=method, **more)}
    blocks = {"sprig": {"ground": "oat", "motif": "sprig"}}
    return whole(blocks, {"wall": size}, MOTIF_QUILTING, motifs=motifs)


def needle_turn(rng):
    """Motifs turned with the needle."""
    return appliqued(rng, "needle-turn", rng.choice((4, 6, 8)))


def prepared(rng):
    """Motifs whose edges are turned beforehand."""
    return appliqued(rng, "prepared edge", rng.choice((4, 6, 8)))


def fused(rng):
    """Fused motifs, one alone or several beside each other on the web."""
    return appliqued(rng, "fusible", rng.choice((4, 6, 8)))


def folded(rng):
    """Every fold count, mirrored and turning, by every method."""
    folds = rng.choice((4, 6, 8, 12, 16))
    symmetry = rng.choice(("mirror", "turning"))
    method = rng.choice(("needle-turn", "prepared edge", "fusible"))
    return appliqued(rng, method, folds, symmetry=symmetry)


def two_motifs(rng):
    """Two motifs in two cloths, side by side."""
    method = rng.choice(("needle-turn", "prepared edge", "fusible"))
    motifs = {"sprig": motif("madder", 8, method=method), "leaf": motif("fern", 6, method=method)}
    blocks = {k: {"ground": "oat", "motif": k} for k in motifs}
    size = {"block": ["sprig", "leaf"], "columns": 2, "rows": rng.randint(1, 3)}
    size |= {"block_size": "13 in", "motif_size": "10 in"}
    return whole(blocks, {"wall": size}, MOTIF_QUILTING, motifs=motifs)


def pieced_ground(rng):
    """A motif on a ground of squares, 1 x 2 to 4 x 4."""
    across, down = rng.choice(((2, 2), (2, 2), (3, 3), (4, 4), (2, 1), (1, 2)))
    rows = [["oat" if (x + y) % 2 == 0 else "mist" for x in range(across)] for y in range(down)]
    blocks = {"sprig": {"ground": {"rows": rows}, "motif": "sprig"}}
    size = {"block": "sprig", "columns": rng.choice((1, 2)), "rows": rng.choice((1, 2))}
    size |= {"block_size": rng.choice(("15 in", "16 in")), "motif_size": "12 in"}
    if rng.random() < 0.4:
        blocks["plain"] = {"ground": "amber"}
        size |= {"block": ["sprig", "plain"], "columns": 3, "rows": 3}
    motifs = {"sprig": motif("madder", 8)}
    return whole(blocks, {"wall": size}, MOTIF_QUILTING, motifs=motifs)


def beside_pieced(rng):
    """A motif block beside a pieced block."""
    blocks = {"sprig": {"ground": "oat", "motif": "sprig"}}
    blocks["star"] = traditional(rng.choice(("nine patch", "sawtooth star", "four patch")))
    size = {"block": ["sprig", "star"], "columns": rng.choice((2, 3)), "rows": rng.randint(1, 3)}
    size |= {"block_size": "12 in", "motif_size": "9 in"}
    motifs = {"sprig": motif("madder", 8)}
    return whole(blocks, {"wall": size}, MOTIF_QUILTING, motifs=motifs)


def motifs_told_in_metric(rng):
    """Motifs by every method, written in inches and told in centimetres alone."""
    made = rng.choice((needle_turn, prepared, fused, pieced_ground, beside_pieced))(rng)
    return {**made, "units": "metric", "papers": ["a4"]}
