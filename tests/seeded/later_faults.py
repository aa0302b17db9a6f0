"""Slips thought of once the checks existed: before mending, they caught four in ten of these.

Not named yet, and left out: strips sewn to the wrong sides in the designer's own words, a
step of fastening off removed, a needle's size, a share of waste.

In: nothing. Out: lists as in the other files, by what the faults are put into.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from draft_faults import Change, motif, patch
from plan_faults import f, strip
from print_faults import Change as PrintChange
from print_faults import dropped, edited, reset
from state import State
from yaml_faults import inserted, step

from publish.model.cutplan import Package
from publish.model.words import Table

YAML: tuple[tuple[str, tuple[str, str], str], ...] = (
    ("strips of a width that nobody cuts", inserted("The strips are 2 1/8 in wide."), "P861"),
    (
        "a tip in wrong centimetres",
        step('{step: binding-press, tip: "It is 5.9 cm wide."}'),
        "P861",
    ),
    ("openings are never explained", step("{remove: applique-openings}"), "P857"),
    ("the quartered ground is never joined", step("{remove: piecing-ground-quartered}"), "P857"),
    ("blocks are never sewn into rows", step("{remove: assembling-row}"), "P857"),
    ("rows are never joined", step("{remove: assembling-centre}"), "P857"),
    (
        "the finished line is never drawn",
        step("{remove: marking-and-cutting-the-motif-finished-line-8}"),
        "P857",
    ),
    ("the ground is never quilted", step("{remove: quilting-ground-echo}"), "P857"),
    ("stay stitching is not explained", inserted("Stay-stitch the edge."), "P865"),
    ("a spray is not listed", inserted("Hold it with basting spray.", "placing-align"), "P868"),
    ("a foot is not listed", inserted("Fit an open-toe foot."), "P868"),
    (
        "more side borders than are cut",
        inserted("Take the seven strips **D**.", "borders-mini-sides-1"),
        "P808",
    ),
    (
        "a colourway loses its border",
        ('name: Lamp, colour: "#c98f4e"', 'name: Lamp, colour: "#2d3f4b"'),
        "P848",
    ),
    ("the subtitle counts another size", ("in three sizes", "in four sizes"), "P840"),
    (
        "the blurb folds once more",
        ("cut one eighth of the sprig", "cut one sixteenth of the sprig"),
        "P840",
    ),
    ("a removed step is not there", step("{remove: pillow-front}"), "W506"),
    (
        "a border is as narrow as a seam",
        ("{width: 2 in, fabric: sandbar}", "{width: 1/4 in, fabric: sandbar}"),
        "G203",
    ),
    ("a size in inches spelled out", inserted("The mini is 24 inches wide."), "P861"),
    ("a size with a fraction in one sign", inserted("Trim to 15⅜ in."), "P861"),
    (
        "a step lays down the wrong backing",
        step(
            '{step: quilting-layer, text: "Lay the backing **K** wrong side up, smooth the batting '
            'over it and centre the top. Baste the layers."}'
        ),
        "P804",
    ),
    (
        "a glue gun is not listed",
        inserted("Fix the label with a hot glue gun.", "label-and-care-label"),
        "P868",
    ),
    ("a fabric of the throw is never cut", step("{remove: cutting-throw-linen}"), "P857"),
    (
        "one colourway's ground is one cloth",
        ('name: Dry mud, colour: "#d9c7bd"', 'name: Dry mud, colour: "#f2ebe5"'),
        "P848",
    ),
    ("the binding is too narrow to fold", ("  width: 2 1/4 in", "  width: 3/4 in"), "R123"),
)

PLAN: tuple[tuple[str, Change, str], ...] = (
    ("two sleeves for one quilt", lambda s: s.piece("mini", "N", count=2), "P815"),
    ("a strip of binding too many", lambda s: strip(s, "mini", "glasswort", 0, count=4), "P832"),
    ("the hem of the backs is forgotten", lambda s: s.part("pillow", "pillow", hem=f("0")), "P844"),
    (
        "the binding joins to less",
        lambda s: s.part("throw", "binding", joined_length=f("250")),
        "P843",
    ),
    ("half panels are too narrow", lambda s: s.part("throw", "backing", half=f("12")), "P841"),
    ("a ground is planned narrower", lambda s: s.cut("mini", "B", across=f("17")), "P832"),
    ("grounds are said to be joined", lambda s: s.piece("throw", "B", joined_from=2), "P832"),
    (
        "a border is planned an eighth short",
        lambda s: s.cut("mini", "F", across=f("20 3/8")),
        "P832",
    ),
    (
        "a package is another in the plan",
        lambda s: s.part("mini", "batting", package=Package("king", Fraction(120), Fraction(124))),
        "P807",
    ),
    ("joins are fewer than strips ask", lambda s: s.part("throw", "binding", joins=3), "P843"),
    (
        "the thread for the motif is nothing",
        lambda s: s.part("throw", "thread", applique=f("0"), motifs={}),
        "P861",
    ),
    ("the sleeve is of another fabric", lambda s: s.piece("mini", "N", fabric="linen"), "P815"),
)


def exchanged(state: State) -> State:
    """A linen and a sandbar patch of the throw change places."""
    linen, sandbar = (
        next(
            p.key
            for p in state.drafts["throw"].patches
            if p.role == "ground" and p.fabric == fabric
        )
        for fabric in ("linen", "sandbar")
    )
    half = patch(state, "throw", lambda p: p.key == linen, fabric="sandbar")
    return patch(half, "throw", lambda p: p.key == sandbar, fabric="linen")


def turned(state: State) -> State:
    first, *rest = state.drafts["throw"].placements
    return state.draft("throw", placements=(replace(first, turn=45), *rest))


def lower(state: State) -> State:
    return state.draft(
        "throw",
        placements=tuple(replace(p, y=p.y + f("1/2")) for p in state.drafts["throw"].placements),
    )


DRAFT: tuple[tuple[str, Change, str], ...] = (
    ("two patches change places", exchanged, "P820"),
    ("a motif is turned in its block", turned, "P820"),
    ("every motif lies low", lower, "P818"),
    (
        "the quilting is half as long",
        lambda s: s.draft(
            "throw",
            quilting=tuple(replace(q, length=q.length / 2) for q in s.drafts["throw"].quilting),
        ),
        "P838",
    ),
    (
        "the folds are taken for each other",
        lambda s: motif(
            s,
            "mini",
            edges=lambda m: tuple(
                replace(e, kind=o.kind) for e, o in zip(m.edges, m.edges[::-1], strict=True)
            ),
        ),
        "P817",
    ),
    ("a span is told wrongly", lambda s: motif(s, "throw", span=lambda m: f("15")), "P817"),
    (
        "an edge is half as long",
        lambda s: motif(s, "throw", perimeter=lambda m: m.perimeter / 2),
        "P817",
    ),
    (
        "motifs are laid in the wrong row",
        lambda s: s.draft(
            "throw",
            placements=tuple(replace(p, row=0, home=None) for p in s.drafts["throw"].placements),
        ),
        "P818",
    ),
    ("the wedge has another angle", lambda s: motif(s, "mini", wedge_angle=lambda m: 60.0), "P817"),
    (
        "a border is of the backing's fabric",
        lambda s: patch(s, "mini", lambda p: p.role == "border", fabric="mist"),
        "P811",
    ),
    ("points are counted wrongly", lambda s: motif(s, "mini", tips=lambda m: 9), "P840"),
)


def said(old: str, new: str, section: str = "", step: str = "") -> Change:
    return lambda s: s.words(old, new, section, step)


def caption(state: State) -> State:
    return state.steps(
        lambda x: (
            (
                replace(
                    x,
                    figure=replace(
                        x.figure,
                        caption=x.figure.caption.replace(
                            "78 in (198.1 cm)", "76 3/8 in (194.0 cm)"
                        ),
                    ),
                ),
            )
            if x.key == "cutting-throw-linen" and x.figure
            else (x,)
        )
    )


def points(state: State) -> State:
    """The table of sizes tells five points for four."""

    def changed(block: object) -> tuple[object, ...]:
        if not isinstance(block, Table):
            return (block,)
        rows = tuple(
            replace(r, cells=(r.cells[0], *("5" for _ in r.cells[1:])))
            if r.cells[0].startswith("Points")
            else r
            for r in block.rows
        )
        return (replace(block, rows=rows),)

    return state.blocks("what-you-will-make", changed)


WORDS: tuple[tuple[str, Change, str], ...] = (
    (
        "a cutting step tells a larger ground",
        said("one **B**", "one **B**, 18 1/2 in (47.0 cm) square", "cutting-mini"),
        "P828",
    ),
    (
        "the batting is laid down smaller",
        said(
            "70 in (177.8 cm) square for the **Throw**",
            "64 in (162.6 cm) square for the **Throw**",
            step="quilting-layer",
        ),
        "P830",
    ),
    (
        "the sleeve comes out deeper",
        said("3 in (7.6 cm)", "4 in (10.2 cm)", step="sleeve-tube"),
        "P830",
    ),
    ("a spool of two is missing", said("two spools", "one spool", "materials"), "P840"),
    (
        "folding gives six layers of four",
        said("have four layers", "have six layers", "folding"),
        "P808",
    ),
    ("points are told wrongly", points, "P840"),
    (
        "the table tells eight blocks",
        said("Nine, three", "Eight, three", "what-you-will-make"),
        "P840",
    ),
    (
        "eight blocks are laid out",
        said("the nine blocks", "the eight blocks", "assembling"),
        "P808",
    ),
    (
        "rows of four blocks",
        said("three rows of three", "three rows of four", "assembling"),
        "P808",
    ),
    ("five fabrics are four", said("Five fabrics", "Four fabrics", "colour-and-fabric"), "P840"),
    ("a caption tells another length", caption, "P861"),
    (
        "the foot names another studio",
        lambda s: replace(s, manual=replace(s.manual, running_foot="Samphire · Hollow Fen")),
        "P855",
    ),
    ("the cover comes out smaller", said("17 in (43.2 cm)", "16 in (40.6 cm)", "pillow"), "P826"),
    (
        "blocks are trimmed large",
        said(
            "18 1/2 in (47.0 cm) square for the **Throw**",
            "19 1/2 in (49.5 cm) square for the **Throw**",
            step="applique-trim",
        ),
        "P809",
    ),
    (
        "the quilt is trimmed small",
        said(
            "64 1/2 in (163.8 cm) square for the **Throw**",
            "64 in (162.6 cm) square for the **Throw**",
            step="binding-trim",
        ),
        "P830",
    ),
    (
        "the margin of the motif is larger",
        said(
            "1 1/4 in (3.2 cm) for the **Pillow** and **Throw**",
            "1 1/2 in (3.8 cm) for the **Pillow** and **Throw**",
            step="placing-align",
        ),
        "P809",
    ),
    (
        "tails overlap by more",
        said("the width of the strip: 2 1/4 in", "the width of the strip: 2 1/2 in", "binding"),
        "P830",
    ),
    (
        "light and dark change places",
        said("Salt linen, Sandbar", "Sandbar, Salt linen", "colour-and-fabric"),
        "P850",
    ),
    (
        "the seam of the backing is a narrow one",
        said("1/2 in (13 mm) seam", "1/4 in (6 mm) seam", step="quilting-backing-throw"),
        "P830",
    ),
    ("a precut count is short", said("31, H and J", "21, H and J", "looking-up"), "P807"),
    (
        "the wrong square is folded",
        said("motif square **A**", "motif square **B**", "folding"),
        "P804",
    ),
    (
        "a seam is pressed to a fabric that is not there",
        said("toward Sandbar", "toward Creek mist", step="piecing-half-ground"),
        "P810",
    ),
    (
        "millimetres turn into centimetres",
        said("run 1/8 in (3.2 mm) apart", "run 1/8 in (3.2 cm) apart"),
        "P862",
    ),
    (
        "a strip is cut for another piece",
        said("strip 17 1/2 in (44.5 cm)", "strip 15 1/2 in (39.4 cm)", "cutting-mini"),
        "P808",
    ),
    (
        "the hem is folded twice as wide",
        said("fold 1/2 in (13 mm)", "fold 1 in (2.5 cm)", "pillow"),
        "P809",
    ),
    (
        "rows are pressed alike",
        said("to the right in row 2", "to the left in row 2", "assembling"),
        "P829",
    ),
    (
        "echo lines lie further apart",
        said(
            "3/4 in (19 mm) for the **Throw**",
            "1 in (2.5 cm) for the **Throw**",
            step="quilting-ground-echo",
        ),
        "P830",
    ),
    (
        "the table calls a border a sleeve",
        said("Side border", "Hanging sleeve", "cutting-mini"),
        "P806",
    ),
    (
        "a layout shows another fabric",
        lambda s: s.steps(
            lambda x: (
                (replace(x, figure=replace(x.figure, values=(("fabric", "mist"),))),)
                if x.key == "cutting-mini-linen" and x.figure
                else (x,)
            )
        ),
        "P810",
    ),
    (
        "the usable width is another",
        said("assume 40 in (101.6 cm)", "assume 42 in (106.7 cm)", "materials"),
        "P864",
    ),
    ("the binding's tail is short", said("6 in tail", "5 in tail", "binding"), "P830"),
)

PRINT: tuple[tuple[str, PrintChange, str], ...] = (
    ("the back cover is lost", edited(lambda b, p: b.pages.__delitem__(len(b.pages) - 1)), "P870"),
    ("the cover is lost", edited(lambda b, p: b.pages.__delitem__(0)), "P877"),
    ("the page of terms is lost", dropped("Terms"), "P870"),
    (
        "a step is set with another number",
        reset(lambda s: s.words("eight layers", "six layers")),
        "P870",
    ),
    (
        "a caution is set short",
        reset(
            lambda s: s.words(
                "Close and lock the blade every time you put the cutter down.", "Close it."
            )
        ),
        "P870",
    ),
)
