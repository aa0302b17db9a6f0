"""The schema of the designer's own look and voice: style, photos, steps.

In: forms and shapes. Out: sections for `schema`.
Invariant: declarations only. What stands together in a change of a step is checked in
`changes`.
"""

from __future__ import annotations

from publish.read.files import FONT, LOGO, PHOTO
from publish.read.forms import Choice, Whole
from publish.read.money import Currency, Money
from publish.read.sections import Key, Many, Section
from publish.read.special import Code, Colour, Ref, Way
from publish.read.texts import Text

FONTS = Section(
    "fonts",
    "Font files of your own, in the folder of the file that names them. Where one has no bold "
    "or italic beside it, the layout's own stands in for those words.",
    (
        Key(
            "titles",
            FONT,
            "For the pattern's title and headings.",
            "fen-display.ttf",
            derived="the font of `text`, where the layout sets both alike",
        ),
        Key("text", FONT, "For what is read.", "fen-text.ttf", derived="the layout's"),
        Key(
            "text_bold", FONT, "For bold words in it.", "fen-text-bold.ttf", derived="the layout's"
        ),
        Key(
            "text_italic",
            FONT,
            "For italic words in it.",
            "fen-text-italic.ttf",
            derived="the layout's",
        ),
        Key(
            "labels",
            FONT,
            "For what is looked up: labels, tables, captions.",
            "fen-sans.ttf",
            derived="the layout's",
        ),
        Key("labels_bold", FONT, "For bold labels.", "fen-sans-bold.ttf", derived="the layout's"),
        Key(
            "labels_italic",
            FONT,
            "For italic labels.",
            "fen-sans-italic.ttf",
            derived="the layout's",
        ),
    ),
)

STYLE = Section(
    "style",
    "Your own colour, logo and fonts over those of the layout.",
    (
        Key(
            "accent",
            Colour(),
            "The colour of headings, numerals and covers. One too pale to "
            "read is printed darker, with a note.",
            '"#2f6152"',
            derived="the darkest fabric's",
        ),
        Key(
            "logo",
            LOGO,
            "Your logo, for the covers.",
            "logo.svg",
            derived="the studio's name in words",
        ),
        Key("fonts", FONTS, "Your own fonts.", "{titles: fen-display.ttf}", derived="the layout's"),
    ),
)

PHOTO_SECTION = Section(
    "photo",
    "A photograph. It is turned upright, converted to sRGB and thinned out to 300 pixels to "
    "the printed inch; fewer than 200 are a finding.",
    (
        Key("file", PHOTO, "The picture, in the pattern's folder.", "throw.jpg", required=True),
        Key(
            "caption",
            Text(200, sentence=True),
            "A line under it; on the cover there is none.",
            "The throw on the saltmarsh.",
            default='""',
        ),
        Key(
            "place",
            Choice(("cover", "page")),
            "On the cover in place of the drawing, or after the opening section.",
            "cover",
            default="page",
        ),
        Key(
            "alt",
            Text(400, sentence=True),
            "What it shows, for a reader who cannot see it.",
            "The throw over a gate, reeds behind it.",
            derived="the caption",
        ),
    ),
)

_SIDE = Whole(200, 6000, unit="pixels on the longer side")

PICTURES = Section(
    "pictures",
    "Pictures of pages for a shop: PNG files in `shop/`, each named after its page and its "
    "size, such as `cover-2000.png`.",
    (
        Key(
            "cover",
            Many(_SIDE, 1, 6, distinct=True),
            "Sizes of the two covers.",
            "[2000, 600]",
            default="[2000, 600]",
        ),
        Key(
            "page",
            Many(_SIDE, 1, 6, distinct=True),
            "Sizes of the pages inside.",
            "[1200]",
            default="[1200]",
        ),
        Key(
            "pages",
            Many(Whole(1, 999), 1, 12, distinct=True),
            "Which pages inside are shown, as numbered in the booklet on the first paper.",
            "[3, 4]",
            derived="the first pages of the opening section and of the materials",
        ),
        Key(
            "scale",
            Choice(("bar",)),
            "What shows how large the quilt is in its computed pictures: a bar in the corner.",
            "bar",
            derived="nothing does",
        ),
    ),
)

SHOP = Section(
    "shop",
    "What the shop's page shows.",
    (
        Key(
            "pictures",
            PICTURES,
            "Sizes of its pictures, and which pages they show.",
            "{cover: [2000], page: [1200]}",
            derived="its keys' defaults",
        ),
    ),
)

_STEP = Text(120, blank=False)
_OTHER = "another kind of change"
_WORDS = Text(2000, blank=False, lines=True)

STEP = Section(
    "step",
    "A change to the steps that the program writes. `step` rewrites one; `before` or `after` "
    "alone puts a new one there; `remove` takes one out; `move` takes one to another place. "
    "Changes are made one after another, and the numbers follow. `foldwork steps PATTERN` "
    "lists the key of every step. Texts are Markdown, and may name "
    "[computed values](#values-for-steps) in double braces: `{{ mini.block }}`.",
    (
        Key(
            "step",
            _STEP,
            "The step to rewrite; what is left out stays as it is.",
            "folding-half-8",
            derived=_OTHER,
        ),
        Key(
            "before",
            _STEP,
            "The step that a new or moved one comes before.",
            "folding-half-8",
            derived=_OTHER,
        ),
        Key(
            "after",
            _STEP,
            "The step that a new or moved one comes after.",
            "folding-half-8",
            derived=_OTHER,
        ),
        Key("remove", _STEP, "The step to take out.", "quilting-unpin", derived=_OTHER),
        Key(
            "move", _STEP, "The step to move before or after another.", "sleeve-hem", derived=_OTHER
        ),
        Key(
            "text",
            _WORDS,
            "What to do.",
            "Fold the square in half and press it with your thumbnail.",
            derived="the step's own; a new step needs one",
        ),
        Key(
            "right",
            _WORDS,
            "How it looks when it is right; `none` to leave it out.",
            "The edges meet.",
            default="none",
        ),
        Key("tip", _WORDS, "A tip; `none` to leave it out.", "Use a cold iron.", default="none"),
        Key(
            "caution",
            _WORDS,
            "A caution; `none` to leave it out.",
            "Mind the pins.",
            default="none",
        ),
        Key(
            "figure",
            Choice(("none",)),
            "Only `none`, which takes the picture out.",
            "none",
            derived="the step's own",
        ),
        Key(
            "sizes",
            Many(Ref("sizes", "size"), 1, 20, distinct=True),
            "The sizes that the change is for.",
            "[mini]",
            derived="all that the step is for",
        ),
    ),
)

CAUTION = Section(
    "caution",
    "A caution of your own, on the page about working safely, after the usual ones.",
    (
        Key(
            "title", Text(60, blank=False, name=True), "What it is about.", "Magnets", required=True
        ),
        Key(
            "text",
            Text(1200, blank=False, lines=True),
            "What to mind, as Markdown.",
            "Keep magnets away from pacemakers.",
            required=True,
        ),
    ),
)

PRICE = Section(
    "price",
    "The pattern's price in one currency, for the line sheet that shops order from and the "
    "pattern's page.",
    (
        Key("currency", Currency(), "The code of the currency (ISO 4217).", "EUR", required=True),
        Key("retail", Money(), "What a maker pays.", "14.00", required=True),
        Key(
            "wholesale",
            Money(),
            "What a shop pays; it stands on the line sheet alone.",
            "7.00",
            default="none",
        ),
    ),
)

ACCEPT = Section(
    "acceptance",
    "A warning that you have weighed and keep. It is no longer shown among the findings, and "
    "`--strict` does not count it; reports list it with your reason. Errors cannot be accepted. "
    "An acceptance that no warning answers to is itself a warning, so that none outlives its "
    "cause.",
    (
        Key("code", Code(), "The warning's code.", "D332", required=True),
        Key(
            "at",
            Way(),
            "Where it is accepted: the way to a value, through the keys that it "
            "stands under and, in lists, its number from 0. What stands below it counts.",
            "sizes.mini",
            derived="everywhere",
        ),
        Key(
            "reason",
            Text(400, blank=False),
            "Why you keep it.",
            "The stem is meant to be thin.",
            required=True,
        ),
    ),
)
