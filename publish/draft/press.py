"""Which way each seam is pressed, so that seams that meet lock together.

In: a seam tree. Out: a direction for each node that joins parts.
Invariant: where a seam ends against a seam that carries it on, on the other side of a
crossing seam, the two are pressed opposite ways, unless three or more of them form an odd
ring, which no pressing can satisfy. Borders are pressed out.
"""

from __future__ import annotations

from collections import defaultdict, deque
from fractions import Fraction

from publish.draft.seams import Node

WAYS = {"across": ("left", "right"), "down": ("down", "up")}
"""The first seam of a chain is pressed the first way, the next the other."""


def pressing(root: Node) -> dict[Node, str]:
    """Return how the seams of every joined node are pressed; rows alternate."""
    found: dict[Node, str] = {}
    joined = [n for n in root.every() if n.parts]
    for node in joined:
        if any(i.layer for i in node.items):
            found[node] = "out"
        elif node.join not in WAYS:
            found[node] = "open"
    for join, (first, second) in WAYS.items():
        nodes = [n for n in joined if n.join == join and n not in found]
        nodes.sort(key=lambda n: (n.box[1], n.box[0]))
        found.update(_alternated(nodes, _meetings(nodes), first, second))
    return found


def seam_ends(node: Node) -> list[tuple[Fraction, Fraction, Fraction]]:
    """Return each seam of a node: where it lies, where it begins and where it ends."""
    across = node.join == "across"
    left, top, right, bottom = node.box
    low, high = (top, bottom) if across else (left, right)
    return [(part.box[2 if across else 3], low, high) for part in node.parts[:-1]]


def _meetings(nodes: list[Node]) -> dict[Node, list[Node]]:
    """Return for each node the nodes whose seams carry on one of its own."""
    begins: dict[tuple[Fraction, Fraction], list[Node]] = defaultdict(list)
    for node in nodes:
        for at, low, _ in seam_ends(node):
            begins[at, low].append(node)
    found: dict[Node, list[Node]] = defaultdict(list)
    for node in nodes:
        for at, _, high in seam_ends(node):
            for other in begins.get((at, high), ()):
                found[node].append(other)
                found[other].append(node)
    return found


def _alternated(
    nodes: list[Node], meetings: dict[Node, list[Node]], first: str, second: str
) -> dict[Node, str]:
    found: dict[Node, str] = {}
    for start in nodes:
        if start in found:
            continue
        found[start] = first
        waiting = deque([start])
        while waiting:
            node = waiting.popleft()
            for other in meetings[node]:
                if other not in found:
                    found[other] = second if found[node] == first else first
                    waiting.append(other)
    return found
