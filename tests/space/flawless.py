"""All rules together: what is wrong with one pattern of the walk.

In: a seed. Out: what is wrong, by rule; nothing where the pattern is flawless.
"""

from space import rules_cloth, rules_sense, rules_sewn, rules_words
from space.case import case

RULES = (*rules_cloth.RULES, *rules_sewn.RULES, *rules_words.RULES, *rules_sense.RULES)


def wrong_in(made):
    """Return what is wrong with a prepared pattern: `{rule: [in words]}`."""
    if made.manual is None:
        return {"finding": list(made.findings) or ["nothing was written"]}
    found = {}
    for rule in RULES:
        if said := list(rule(made)):
            found[rule.__name__] = said
    return found


def wrong(seed):
    """Prepare the pattern of a seed and return what is wrong with it, by rule."""
    return wrong_in(case(seed))
