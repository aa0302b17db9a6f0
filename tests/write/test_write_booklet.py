"""What must hold for the words of any pattern, over patterns of many shapes."""

from __future__ import annotations

import re

import pytest
from write_cases import (
    CASES,
    made_for,
    manual,
    section,
    steps,
    strings,
    tables,
    text_of,
    written,
)

from publish.model.words import Steps, Table
from publish.units import fraction_text
from publish.words import language
from publish.write.glossary import lengths
from publish.write.terms import terms

# The kinds of figure that stage 6 draws, with the values each understands.
KINDS = {
    "quilt": {"dimensions"},
    "sizes": {"labels"},
    "swatches": set(),
    "layers": set(),
    "fold": {"stage", "motif"},
    "wedge-baste": {"motif"},
    "wedge-align": {"motif"},
    "wedge-mark": {"motif"},
    "wedge-cut": {"motif"},
    "unfold": {"motif"},
    "crease-ground": {"block"},
    "place-motif": {"motif", "block"},
    "stitch": {"detail"},
    "cutting-layout": {"fabric", "material"},
    "units": {"unit"},
    "rows": set(),
    "borders": {"border"},
    "sandwich": set(),
    "quilting": set(),
    "trim": {"unit", "block"},
    "binding": {"detail"},
    "sleeve": {"detail"},
    "pillow": {"detail"},
    "colouring": set(),
    "scale": set(),
    "pairs": set(),
    "colourways": set(),
    "block": {"block"},
    "sections": {"block"},
    "quick": {"method", "unit", "stage"},
    "curve": {"unit", "stage"},
    "set-in": {"unit"},
    "foundation": {"section", "stage"},
    "setting": set(),
    "press": {"unit"},
    "rounds": {"round"},
    "barcode": {"digits"},
}
DETAILS = {
    "stitch": {"edge", "tip", "corner", "hole"},
    "binding": {"join", "press", "start", "tuck", "corner", "close", "finish", "bias"},
    "sleeve": {"make", "attach"},
    "pillow": {"hem", "layer", "sew", "turn", "zip"},
}
# Work that cannot be understood from words alone; each needs a picture in its section.
PICTURED = {
    "folding": {"fold"},
    "marking-and-cutting-the-motif": {
        "wedge-baste",
        "wedge-align",
        "wedge-mark",
        "wedge-cut",
        "unfold",
    },
    "placing": {"crease-ground", "place-motif"},
    "applique": {"stitch", "trim"},
    "piecing": {"units"},
    "assembling": {"rows"},
    "borders": {"borders"},
    "quilting": {"layers", "sandwich", "quilting"},
    "binding": {"binding"},
    "sleeve": {"sleeve"},
    "pillow": {"pillow", "trim"},
    "cutting": {"cutting-layout"},
    "templates": set(),
    "before-you-start": {"scale"},
    "colouring-page": {"colouring"},
    "colour-and-fabric": {"swatches"},
    "what-you-will-make": {"sizes"},
}

every_case = pytest.mark.parametrize("name", CASES)


@every_case
def test_a_sound_pattern_gives_no_notes(name: str) -> None:
    assert written(name)[1] == ()


@every_case
def test_every_figure_is_of_a_kind_that_is_drawn(name: str) -> None:
    made = made_for(name)
    for figure in manual(name).figures():
        values = dict(figure.values)
        assert set(values) <= KINDS[figure.kind], figure
        assert figure.size is None or figure.size in made.sizes, figure
        if "detail" in values:
            assert values["detail"] in DETAILS[figure.kind]
        if "motif" in values and figure.size is not None:
            assert values["motif"] in made.drafts[figure.size].motifs
        if "block" in values and figure.size is not None:
            assert any(values["block"] in row for row in made.sizes[figure.size].arrangement)
        if "fabric" in values and figure.size is not None:
            assert values["fabric"] in made.plans[figure.size].fabrics
        if figure.kind == "borders" and figure.size is not None:
            assert int(values["border"]) < len(made.sizes[figure.size].borders)


@every_case
def test_one_key_means_one_figure(name: str) -> None:
    found: dict[str, object] = {}
    for part in manual(name).sections:
        for block in part.blocks:
            figures = (
                [s.figure for s in block.items]
                if isinstance(block, Steps)
                else [getattr(block, "figure", None)]
            )
            for figure in figures:
                if figure is not None:
                    assert figure.key not in found, figure.key
                    found[figure.key] = figure
    assert found


@every_case
def test_every_figure_in_the_text_says_what_it_shows(name: str) -> None:
    one_size = len(made_for(name).sizes) == 1
    covers = {manual(name).cover.figure.key, manual(name).back.figure.key}
    for figure in manual(name).figures():
        if figure.key in covers or (figure.kind == "colouring" and one_size):
            continue
        assert re.fullmatch(r"[A-Z].*[.]", figure.caption), figure


@every_case
def test_work_that_needs_a_picture_has_one(name: str) -> None:
    book = manual(name)
    for part in book.sections:
        if part.parent is not None or part.key not in PICTURED:
            continue
        family = [s for s in book.sections if part.key in (s.key, s.parent)]
        shown = {
            f.kind
            for member in family
            for block in member.blocks
            for f in (
                [s.figure for s in block.items]
                if isinstance(block, Steps)
                else [getattr(block, "figure", None)]
            )
            if f is not None
        }
        wanted = PICTURED[part.key]
        if part.key == "applique" and made_for(name).sizes.keys() == {"pillow"}:
            wanted = wanted - {"trim"}
        if part.key == "marking-and-cutting-the-motif" and name.startswith("turning"):
            continue  # cut flat: the template itself is the picture
        if part.key == "before-you-start" and name == "patchwork":
            continue  # nothing is printed
        assert wanted <= shown, part.key


@every_case
def test_steps_are_numbered_from_one_without_gaps(name: str) -> None:
    keys: list[str] = []
    for part in manual(name).sections:
        assert [s.number for s in steps(part)] == list(range(1, len(steps(part)) + 1)), part.key
        keys += [s.key for s in steps(part)]
    assert len(keys) == len(set(keys))


@every_case
def test_sections_have_one_key_each_and_follow_their_parent(name: str) -> None:
    seen: list[str] = []
    for part in manual(name).sections:
        assert part.key not in seen
        assert part.parent is None or part.parent in seen
        children = [s for s in manual(name).sections if s.parent == part.key]
        assert part.blocks or (children and part.lead)
        seen.append(part.key)


@every_case
def test_text_has_no_slips_of_the_machine(name: str) -> None:
    for where, text in strings(manual(name)):
        assert "None" not in text, (where, text)
        assert "  " not in text and text == text.strip(), (where, text)
        assert not re.search(r"[{}<>|]", text), (where, text)
        assert not re.search(r" [,.;:!?]|\.\.|,,|::|;,|,\.|\( | \)", text), (where, text)
        assert text.count("**") % 2 == 0 and text.count("(") == text.count(")"), (where, text)
        assert "Fraction" not in text and "’s" not in text, (where, text)


@every_case
def test_sentences_begin_with_a_capital_and_end(name: str) -> None:
    for part in manual(name).sections:
        for step in steps(part):
            for text in filter(None, (step.text, step.right, step.tip, step.caution)):
                assert re.match(r"[*]*[A-Z0-9]", text), text
                assert text.endswith((".", "?")), text
                assert not re.search(r"[.?] [a-z]", text), text


@every_case
def test_articles_agree_with_how_the_next_word_sounds(name: str) -> None:
    for where, text in strings(manual(name)):
        plain = re.sub(r"\*\*[A-Z]\*\*", "", text).replace("*", "")  # letters of pieces away
        assert not re.search(r"\b[Aa] (?:[aeio](?!ne\b|nce\b)|8|11 |18 |unusable|hour)", plain), (
            where,
            text,
        )
        assert not re.search(r"\b[Aa]n (?:[bcdfgjklmnpqrstvwxyz]|[1-79](?![18])|one|un)", plain), (
            where,
            text,
        )


@every_case
def test_counts_agree_with_their_nouns(name: str) -> None:
    text = text_of(name).replace("*", "")
    nouns = "strips|squares|blocks|pieces|panels|seams|rows|wedges|layers|spools|lengths|motifs"
    assert not re.search(rf"\b[Oo]ne (?:\w+ )?(?:{nouns})\b", text)
    for noun in nouns.split("|"):
        assert not re.search(rf"\b(?:two|three|four|five|nine|1[3-9]) {noun[:-1]}\b", text), noun


@every_case
def test_a_step_for_some_sizes_says_so_in_words(name: str) -> None:
    made = made_for(name)
    for part in manual(name).sections:
        for step in steps(part):
            assert set(step.sizes) < set(made.sizes) or not step.sizes
            for key in step.sizes:
                assert f"**{made.sizes[key].title}**" in step.text
            assert ("only: " in step.text) == bool(step.sizes), step.text


@every_case
def test_every_piece_is_in_its_table_and_in_a_step(name: str) -> None:
    made, book = made_for(name), manual(name)
    for key, plan in made.plans.items():
        table = tables(book)[f"cutting-{key}"]
        cells = {row.cells[0] for row in table.rows}
        part = next(
            s
            for s in book.sections
            if s.key in (f"cutting-{key}", "cutting")
            and any(isinstance(b, Table) for b in s.blocks)
            and (not s.sizes or key in s.sizes)
        )
        told = " ".join(s.text for s in steps(part))
        for piece in plan.pieces:
            assert f"**{piece.letter}**" in cells, (key, piece)
            assert f"**{piece.letter}**" in told, (key, piece)


@every_case
def test_every_piece_is_taken_up_after_it_is_cut(name: str) -> None:
    """Backing panels are named by what they are; every other piece by its letter."""
    made, book = made_for(name), manual(name)
    told = " ".join(
        s.text for part in book.sections if not part.key.startswith("cutting") for s in steps(part)
    )
    for plan in made.plans.values():
        for piece in plan.pieces:
            if piece.purpose != "backing":
                assert f"**{piece.letter}**" in told, piece
    assert "backing" in told


@every_case
def test_glossary_terms_occur_in_the_text(name: str) -> None:
    book = manual(name)
    rest = "\n".join(t for where, t in strings(book) if where != "glossary")
    forms = {t.name: t.form for t in terms(language())}
    rows = tables(book)["glossary"].rows
    assert rows
    for row in rows:
        assert re.search(forms[row.cells[0].strip("*")], rest, re.IGNORECASE), row


@every_case
def test_a_term_that_is_not_used_is_not_explained(name: str) -> None:
    listed = {row.cells[0].strip("*") for row in tables(manual(name))["glossary"].rows}
    rest = "\n".join(t for where, t in strings(manual(name)) if where not in ("glossary", "cover"))
    for term in terms(language()):
        assert (term.name in listed) == bool(re.search(term.form, rest, re.IGNORECASE)), term.name


@every_case
def test_the_metric_table_holds_every_length_of_the_booklet(name: str) -> None:
    text = "\n".join(t for where, t in strings(manual(name)) if where != "cover")
    table = tables(manual(name))["metric"]
    listed = [row.cells[i] for row in table.rows for i in (0, 2, 4, 6) if row.cells[i]]
    assert sorted(listed) == sorted(fraction_text(v) for v in lengths(text))


@every_case
def test_abbreviations_are_those_in_use(name: str) -> None:
    listed = {r.cells[0].strip("*") for r in tables(manual(name))["abbreviations"].rows}
    used = set(re.findall(r"\d (in|yd|mm|cm|m|%)(?![\w])", text_of(name)))
    used |= {"×"} if " × " in text_of(name) else set()
    assert listed == used
    # Nothing else is shortened: no word of two or more capitals but letters of pieces.
    letters = {p.letter for plan in made_for(name).plans.values() for p in plan.pieces}
    short = set(re.findall(r"(?<![\w-])[A-Z]{2,}(?![\w-])", text_of(name)))
    assert short - letters <= {"HF"}


@every_case
def test_every_size_has_its_templates(name: str) -> None:
    made = made_for(name)
    asked = {
        (b.motif, b.size, b.part)
        for s in manual(name).sections
        for b in s.blocks
        if type(b).__name__ == "TemplateSheets"
    }
    wanted = {
        (p.motif, key, "wedge" if made.pattern.motifs[p.motif].symmetry == "mirror" else "whole")
        for key, draft in made.drafts.items()
        for p in draft.placements
    }
    assert asked == wanted


@every_case
def test_cautions_are_there_and_defer(name: str) -> None:
    text = " ".join(t for where, t in strings(manual(name)) if where == "cautions")
    for word in (
        "blade",
        "iron",
        "needles",
        "under one year",
        "under three",
        "flame",
        "instructions that come with",
        "laws and codes where you live",
    ):
        assert word in text, word
    assert section(name, "cautions").blocks
