"""Tops of other shapes: mitred borders, a long runner, dark fabrics, many sizes."""

from dataclasses import replace
from fractions import Fraction

import pytest
from shapely.geometry import box
from top_figures import CONTEXT, illegible, texts
from top_samples import DRAFTS, FABRICS, SIZES

from publish.draw import DRAWINGS
from publish.draw.context import Context
from publish.draw.finishing.layers import draw as draw_layers
from publish.draw.piecing.borders import split
from publish.model.draft import Draft, Patch
from publish.model.words import FigureSpec

F = Fraction


def mitred() -> tuple[Context, Draft]:
    """Return the mini with its border's corners mitred: four trapezoids."""
    size = replace(SIZES["mini"], borders=(replace(SIZES["mini"].borders[0], corners="mitred"),))
    outer = [(F(0), F(0)), (F(20), F(0)), (F(20), F(20)), (F(0), F(20))]
    inner = [(F(2), F(2)), (F(18), F(2)), (F(18), F(18)), (F(2), F(18))]
    strips = []
    for i, side in enumerate(("top", "right", "bottom", "left")):
        j = (i + 1) % 4
        ring = (outer[i], outer[j], inner[j], inner[i])
        strips.append(Patch(f"border 1 {side}", ring, "sand", "border"))
    grounds = tuple(p for p in DRAFTS["mini"].patches if p.role == "ground")
    draft = replace(DRAFTS["mini"], patches=(*grounds, *strips))
    context = replace(CONTEXT, sizes={**SIZES, "mini": size}, drafts={**DRAFTS, "mini": draft})
    return context, draft


def test_a_mitred_border_is_sewn_before_its_corners() -> None:
    context, draft = mitred()
    strips, done = split(context.sizes["mini"], draft, 0)
    assert {side: patch.key for side, patch in strips.items()} == {
        side: f"border 1 {side}" for side in ("left", "right", "top", "bottom")
    }
    assert [p.role for p in done] == ["ground"]
    drawn = DRAWINGS["borders"](context, FigureSpec("b", "borders", "mini", (("border", "0"),)))
    assert sorted(e.text for e in texts(drawn.svg) if e.text.isdigit()) == list("11112222")
    assert "mitred corners" in drawn.alt and illegible(drawn.svg) == []


def runner() -> Context:
    """Return the throw's top cut down to one row of three blocks, without borders."""
    size = replace(
        SIZES["throw"],
        rows=1,
        arrangement=SIZES["throw"].arrangement[:1],
        borders=(),
        inner_height=F(18),
        inner_width=F(54),
        width=F(54),
        height=F(18),
    )
    patches = tuple(
        replace(p, ring=tuple((x - 5, y - 5) for x, y in p.ring))
        for p in DRAFTS["throw"].patches
        if p.row == 0
    )
    places = tuple(
        replace(p, x=p.x - 5, y=p.y - 5) for p in DRAFTS["throw"].placements if p.row == 0
    )
    draft = replace(
        DRAFTS["throw"],
        width=F(54),
        height=F(18),
        patches=patches,
        placements=places,
        quilting=(),
        edge_outline=box(0, 0, 54, 18),
    )
    plan = CONTEXT.plans["throw"]
    plan = replace(
        plan,
        backing=replace(plan.backing, width=F(62), height=F(26)),
        batting=replace(plan.batting, width=F(60), height=F(24)),
    )
    return replace(CONTEXT, sizes={"throw": size}, drafts={"throw": draft}, plans={"throw": plan})


@pytest.mark.parametrize(
    "kind", ["quilt", "sizes", "rows", "layers", "sandwich", "colouring", "crease-ground", "trim"]
)
def test_a_runner_is_legible(kind: str) -> None:
    drawn = DRAWINGS[kind](runner(), FigureSpec("r", kind, "throw", (("dimensions", "yes"),)))
    assert illegible(drawn.svg) == []
    assert drawn.width <= 6.5


def test_the_layers_keep_their_proportions() -> None:
    drawn = draw_layers(runner(), FigureSpec("r", "layers", "throw"))
    assert "62 × 26 in" in drawn.alt and "54 1/2 × 18 1/2 in" in drawn.alt


@pytest.mark.parametrize("count", [1, 5, 9])
def test_any_number_of_sizes_fits_the_column(count: int) -> None:
    keys = [f"size {i}" for i in range(count)]
    size, draft = SIZES["mini"], DRAFTS["mini"]
    context = replace(
        CONTEXT,
        sizes={k: replace(size, key=k, title=f"A fairly long title {k}") for k in keys},
        drafts=dict.fromkeys(keys, draft),
    )
    drawn = DRAWINGS["sizes"](context, FigureSpec("s", "sizes"))
    assert illegible(drawn.svg) == []
    assert sum(e.text == "20 × 20 in" for e in texts(drawn.svg)) == count


@pytest.mark.parametrize("colour", ["#000000", "#777777", "#ffffff", "#1d2433", "#e0b23c"])
@pytest.mark.parametrize("kind", ["quilt", "swatches", "crease-ground", "trim", "borders"])
def test_any_fabric_is_drawn_legibly(kind: str, colour: str) -> None:
    fabrics = {
        k: replace(f, colour=colour, name="A name of several long words in a row")
        for k, f in FABRICS.items()
    }
    context = replace(CONTEXT, pattern=replace(CONTEXT.pattern, fabrics=fabrics))
    drawn = DRAWINGS[kind](context, FigureSpec("s", kind, "mini", (("dimensions", "yes"),)))
    assert illegible(drawn.svg) == []
