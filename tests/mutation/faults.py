"""Deliberate faults: every place in a module where one slip could have been made.

In: the source of a module. Out: how many faults it can have, and each by its number, with the
line it is on, what it is, and the source with it. A fault is one of those that a tired
programmer makes: a seam left out, a count off by one, a side or an edge swapped, a bound
moved, a sign turned, a condition turned round.
"""

import ast
from dataclasses import dataclass

SWAPPED = {
    "width": "height",
    "height": "width",
    "columns": "rows",
    "rows": "columns",
    "across": "along",
    "along": "across",
    "inner_width": "inner_height",
    "inner_height": "inner_width",
}
SIDES = {
    "left": "right",
    "right": "left",
    "up": "down",
    "down": "up",
    "across": "down",
    "first": "last",
    "last": "first",
    "side": "top",
    "top": "side",
    "vertical": "horizontal",
    "horizontal": "vertical",
}
OPERATORS = {ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Add}
COMPARED = {
    ast.Lt: ast.LtE,
    ast.LtE: ast.Lt,
    ast.Gt: ast.GtE,
    ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.Is: ast.IsNot,
    ast.IsNot: ast.Is,
    ast.In: ast.NotIn,
    ast.NotIn: ast.In,
}


@dataclass(frozen=True)
class Fault:
    module: str
    line: int
    what: str
    source: str


def places(source):
    """Return how many faults a module can have."""
    return len(_spots(ast.parse(source)))


def fault(module, source, number):
    """Return one fault of a module, by its number."""
    tree = ast.parse(source)
    node, what, apply = _spots(tree)[number]
    apply(node)
    return Fault(module, node.lineno, what, ast.unparse(tree))


def _spots(tree):
    _mark_words(tree)
    return [
        (node, what, apply)
        for node in ast.walk(tree)
        if not getattr(node, "is_doc", False)
        for what, apply in _changes(node)
    ]


def _mark_words(tree):
    """Docstrings and types are no part of what runs."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            node.value.is_doc = True
        for name in ("annotation", "returns"):
            if getattr(node, name, None) is not None:
                for inner in ast.walk(getattr(node, name)):
                    inner.is_doc = True


def _changes(node):
    """Yield what may go wrong at a node: a name for it, and the function that does it."""
    if isinstance(node, ast.BinOp) and type(node.op) in OPERATORS:
        yield f"{_text(node)}: another sign", _operator
        if any(_is_seam(side) for side in (node.left, node.right)):
            yield f"{_text(node)}: the seam left out", _without_seam
    elif isinstance(node, ast.Constant) and type(node.value) is int and node.value in range(1, 13):
        yield f"{node.value} becomes {node.value + 1}", _one_more
    elif isinstance(node, ast.Constant) and node.value in SIDES and isinstance(node.value, str):
        yield f"{node.value!r} becomes {SIDES[node.value]!r}", _other_side
    elif isinstance(node, ast.Attribute) and node.attr in SWAPPED:
        yield f"{_text(node)}: {SWAPPED[node.attr]} for {node.attr}", _swapped
    elif isinstance(node, ast.Compare) and type(node.ops[0]) in COMPARED:
        yield f"{_text(node)}: turned or moved", _compared
    elif isinstance(node, ast.BoolOp):
        yield f"{_text(node)}: and for or", _other_bool
    elif isinstance(node, ast.UnaryOp) and isinstance(node.op, (ast.Not, ast.USub)):
        yield f"{_text(node)}: left out", _plain


def _text(node):
    return ast.unparse(node)[:60]


def _is_seam(node):
    return getattr(node, "id", getattr(node, "attr", "")) in ("seam", "allowance", "margin")


def _operator(node):
    node.op = OPERATORS[type(node.op)]()


def _without_seam(node):
    name = "left" if _is_seam(node.left) else "right"
    none = 1 if isinstance(node.op, ast.Mult) else 0
    setattr(node, name, ast.copy_location(ast.Constant(none), node))


def _one_more(node):
    node.value += 1


def _other_side(node):
    node.value = SIDES[node.value]


def _swapped(node):
    node.attr = SWAPPED[node.attr]


def _compared(node):
    node.ops[0] = COMPARED[type(node.ops[0])]()


def _other_bool(node):
    node.op = ast.And() if isinstance(node.op, ast.Or) else ast.Or()


def _plain(node):
    node.op = ast.UAdd() if isinstance(node.op, ast.USub) else node.op
    if isinstance(node.op, ast.Not):
        node.operand = ast.copy_location(ast.UnaryOp(ast.Not(), node.operand), node)
