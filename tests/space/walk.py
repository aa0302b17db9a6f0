"""A walk through the space of patterns: from a seed, a small sound pattern as a dictionary.

Each kind is a function of a random generator and walks one corner of the space; a pattern
that it makes is one that a designer may well write, so that nothing should be found in it.
`pattern(seed)` is the same on every run and every machine.
"""

from random import Random

import yaml

from space import kinds_of_publishing as publishing
from space import kinds_of_tops as tops
from space import kinds_with_motifs as motifs

SEEDS = range(363)
"""As many as are walked: eleven of each of 33 kinds."""


def kind_of(seed):
    """Return the name of the kind that a seed belongs to."""
    return tuple(KINDS)[seed % len(KINDS)]


def pattern(seed):
    """Return the pattern of a seed, as `pattern.yaml` would say it."""
    rng = Random(f"walk {seed}")
    made = KINDS[kind_of(seed)](rng)
    return {"title": made.pop("title", f"Lode {seed}"), **made}


def written(seed):
    """Return the pattern of a seed as YAML."""
    return yaml.dump(pattern(seed), Dumper=Plain, sort_keys=False, allow_unicode=True, width=88)


class Plain(yaml.SafeDumper):
    """Writes a value that stands twice twice: patterns have no anchors."""

    def ignore_aliases(self, _data):
        return True


KINDS = {
    made.__name__.replace("_", " "): made
    for made in (
        *(tops.grid, tops.runner, tops.bordered, tops.sashed, tops.on_point, tops.medallion),
        *(tops.checkered, tops.turned, tops.pillow, tops.foundation),
        *(motifs.needle_turn, motifs.prepared, motifs.fused, motifs.folded, motifs.two_motifs),
        *(motifs.pieced_ground, motifs.beside_pieced),
        *(publishing.precut, publishing.named, publishing.papered, tops.quick),
        *(publishing.coloured, tops.metric, publishing.worded, publishing.several),
        *(tops.off_the_eighth, publishing.finished, tops.drawn, tops.library),
        tops.large,
        *(publishing.told_in_metric, motifs.motifs_told_in_metric, tops.tops_told_in_metric),
    )
}
"""Every kind by its name; the order says which seed is of which kind."""
