"""The schema: every key of pattern.yaml, declared once.

In: the sections of cloth and design. Out: `PATTERN`, the whole file; `SMALLEST`, the
least that is a pattern.
Invariant: what is checked, what editors are told and what the reference says are all
made from these declarations.
"""

from __future__ import annotations

from publish.measures import UNITS
from publish.model.book import PAPERS
from publish.read.forms import Choice, Name
from publish.read.schema_blocks import BLOCK, PIECING
from publish.read.schema_cloth import CLOTH, COLOURWAY, FABRIC, HAVE
from publish.read.schema_design import MOTIF
from publish.read.schema_house import (
    ACCEPT,
    CAUTION,
    PHOTO_SECTION,
    PRICE,
    SHOP,
    STEP,
    STYLE,
)
from publish.read.schema_publication import PUBLICATION
from publish.read.schema_sewing import BACKING, BATTING, BINDING, QUILTING, SEWING
from publish.read.schema_sizes import SIZE
from publish.read.sections import Key, Many, Named, Section
from publish.read.texts import Text
from publish.words import LANGUAGES

PATTERN = Section(
    "pattern",
    "Everything that one pattern says: its names, its cloth, its motifs and blocks, its sizes.",
    (
        Key(
            "title",
            Text(60, blank=False, name=True),
            "The pattern's name.",
            "Bulrush",
            required=True,
        ),
        Key(
            "subtitle",
            Text(120, sentence=True),
            "A line under the title.",
            "A quiet mini quilt",
            default='""',
        ),
        Key(
            "layout",
            Name(),
            "The layout that the booklet is set in.",
            "tideline",
            default="tideline",
        ),
        Key(
            "papers",
            Many(Choice(tuple(PAPERS)), 1, 4, distinct=True),
            "The papers that it is printed on. `half-letter` (5.5 x 8.5 in) and `a5` are for a "
            "small booklet; its template sheets are on the whole paper.",
            "[a4]",
            default="[letter, a4]",
            metric="[a4]",
        ),
        Key(
            "units",
            Choice(UNITS),
            "What lengths are planned and told in: what leads, and whether the other follows in "
            "parentheses. Where metric leads, cut sizes are on whole millimetres, purchases in "
            "steps of `metric_step`, and what you leave out has its metric default; a pattern "
            "in inches is planned anew. With `metric` alone no inch is printed.",
            "metric",
            default="inches, then metric",
        ),
        Key(
            "languages",
            Many(Choice(LANGUAGES), 1, len(LANGUAGES), distinct=True),
            "The languages that it is told in, each in booklets and files of its own; `en` is "
            "spelt as in North America, `en-GB` as in Britain. Any text of yours may be written "
            "by language: `title: {en: Bulrush, de: Rohrkolben}`.",
            "[en, de]",
            default="[en]",
        ),
        Key(
            "booklets",
            Choice(("whole", "by size")),
            "Which booklets are made: one for all sizes, "
            "or beside it one for each size, with only its own numbers, steps and sheets.",
            "by size",
            default="whole",
        ),
        Key(
            "style",
            STYLE,
            "Your own colour, logo and fonts.",
            '{accent: "#2f6152"}',
            derived="the layout's",
        ),
        Key(
            "photos",
            Many(PHOTO_SECTION, 1, 12),
            "Photographs, for the cover and the opening pages.",
            "[{file: throw.jpg, place: cover}]",
            derived="no photographs",
        ),
        Key(
            "cover",
            Choice(("rendered", "drawn", "photo")),
            "What the cover shows: the quilt as "
            "it will look, computed from the pattern; a diagram; or your photograph, which is used "
            "in any case where `photos` has one for the cover. With `drawn` the colourways are "
            "diagrams too.",
            "drawn",
            default="rendered",
        ),
        Key(
            "scene",
            Choice(("wall", "flat")),
            "Where computed pictures show a quilt: hanging on a "
            "wall or lying flat. Pillows stand on a bench; all sizes together lie flat.",
            "flat",
            default="wall",
        ),
        Key(
            "publication",
            PUBLICATION,
            "Who publishes it, and what the covers say.",
            "{studio: Hollow Fen Studio, year: 2026}",
            derived="its keys' defaults",
        ),
        Key(
            "shop",
            SHOP,
            "What the shop's page shows.",
            "{pictures: {cover: [2000]}}",
            derived="its keys' defaults",
        ),
        Key(
            "prices",
            Many(PRICE, 1, 12),
            "What it costs, by currency.",
            "[{currency: EUR, retail: 14.00, wholesale: 7.00}]",
            derived="no price is said",
        ),
        Key(
            "fabrics",
            Named(FABRIC, "fabric"),
            "The fabrics.",
            '{linen: {name: Pale linen, colour: "#f4efe6"}}',
            required=True,
        ),
        Key(
            "cloth",
            CLOTH,
            "What holds for every fabric.",
            "{usable_width: 42 in}",
            derived="its keys' defaults",
        ),
        Key(
            "colourways",
            Named(COLOURWAY, "colourway", 12),
            "Other palettes over the same design, shown side by side.",
            '{dusk: {title: Dusk, swaps: [{fabric: linen, name: Night water, colour: "#26343c"}]}}',
            derived="no colourways",
        ),
        Key(
            "motifs",
            Named(MOTIF, "motif"),
            "The motifs.",
            "{bulrush: {outline: [[0, 0], [60, 0], [40, 40]], folds: 8, fabric: moss}}",
            derived="no motifs",
        ),
        Key(
            "blocks",
            Named(BLOCK, "block"),
            "The blocks.",
            "{bulrush: {ground: linen, motif: bulrush}}",
            required=True,
        ),
        Key(
            "piecing",
            PIECING,
            "How units that repeat are cut and sewn, in every block.",
            "{triangles: two at once}",
            derived="its keys' defaults",
        ),
        Key(
            "sewing",
            SEWING,
            "Allowances and purchases.",
            "{seam: 1/4 in}",
            derived="its keys' defaults",
        ),
        Key(
            "backing",
            BACKING,
            "The back of every size.",
            "{fabric: mist, overhang: 4 in}",
            derived="its keys' defaults",
        ),
        Key(
            "batting",
            BATTING,
            "The batting of every size.",
            "{name: Wool, largest_gap: 3 in}",
            derived="its keys' defaults",
        ),
        Key(
            "binding",
            BINDING,
            "The binding of every quilt.",
            "{fabric: moss, cut: bias}",
            derived="its keys' defaults",
        ),
        Key(
            "quilting",
            Many(QUILTING, 1, 12),
            "How each area of every size is quilted.",
            "[{area: ground, style: echo, spacing: 1/2 in}]",
            derived="the motif in the ditch, echo lines 1/2 in apart round it; patchwork without "
            "a motif in a diagonal grid of 2 in; borders with lines 1 in apart, or in the ditch "
            "where they are too narrow (in metric 1.5, 5 and 2.5 cm)",
        ),
        Key(
            "have",
            Many(HAVE, 1, 60),
            "Pieces of cloth that you have. The report and the table "
            "of materials say what they suffice for, and a plan cuts them before anything that "
            "is bought.",
            "[{fabric: linen, width: 22 in, length: 18 in, count: 3}]",
            derived="nothing",
        ),
        Key(
            "sizes",
            Named(SIZE, "size"),
            "The sizes.",
            "{mini: {block_size: 16 in, motif_size: 14 in}}",
            required=True,
        ),
        Key(
            "cautions",
            Many(CAUTION, 1, 12),
            "Further cautions.",
            "[{title: Magnets, text: Keep magnets away from pacemakers.}]",
            derived="the usual cautions alone",
        ),
        Key(
            "steps",
            Many(STEP, 1, 200),
            "Changes to the steps, in your own words.",
            "[{remove: quilting-unpin}]",
            derived="the steps as they are written",
        ),
        Key(
            "accept",
            Many(ACCEPT, 1, 100),
            "Warnings that you keep, with the reason.",
            "[{code: D332, at: sizes.mini, reason: The stem is meant to be thin.}]",
            derived="nothing is accepted",
        ),
    ),
)

SMALLEST = """\
title: Bulrush
fabrics:
  linen: {name: Pale linen, colour: "#f4efe6"}
  moss: {name: Deep moss, colour: "#4f6b4a"}
motifs:
  bulrush: {drawing: bulrush.svg, folds: 8, fabric: moss}
blocks:
  bulrush: {ground: linen, motif: bulrush}
sizes:
  mini: {block_size: 16 in, motif_size: 14 in}
"""
