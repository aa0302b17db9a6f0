"""Several patterns at once: found, compared with one another, checked and built side by side.

In: paths. Out: `Outcome`s, one for each pattern.
Invariant: patterns do not know of each other; whatever one needs is in its own folder and
its studio's file, so that any of them can be made by any process, in any order.
"""
