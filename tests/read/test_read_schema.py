"""One declaration: the checks, the JSON Schema and the reference agree.

Published sources: JSON Schema draft 2020-12 (its meta-schema, as the jsonschema library
carries it); YAML 1.2.2 core schema, section 10.3 (how editors read plain scalars).
"""

import json
import re

import pytest
import yaml
from helpers import DEMO, FAULTS, ROOT, changed
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from publish import read
from publish.read.defaults import defaults, read_value
from publish.read.files import File
from publish.read.forms import Form, Hint, Unfit
from publish.read.schema import PATTERN, SMALLEST
from publish.read.sections import sections_of
from publish.read.special import Length

SCHEMA = read.json_schema()
VALIDATOR = Draft202012Validator(SCHEMA)
SECTIONS = sections_of(PATTERN)
KEYS = [(section, key) for section in SECTIONS for key in section.keys]
FILES = [key.example for _, key in KEYS if isinstance(key.shape, File)]


class Core(yaml.SafeLoader):
    """YAML as editors read it: the core schema of YAML 1.2."""

    yaml_implicit_resolvers = {}  # noqa: RUF012


for tag, form, first in [
    ("null", r"~|null|Null|NULL|", [*"~nN", ""]),
    ("bool", r"true|True|TRUE|false|False|FALSE", list("tTfF")),
    ("int", r"[-+]?[0-9]+", list("-+0123456789")),
    ("float", r"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?", list("-+.0123456789")),
]:
    Core.add_implicit_resolver(f"tag:yaml.org,2002:{tag}", re.compile(f"^(?:{form})$"), first)


def editor_faults(text):
    """Return the paths of everything an editor would mark, branches of a choice included."""

    def leaves(error):
        return [leaf for inner in error.context for leaf in leaves(inner)] or [error]

    found = VALIDATOR.iter_errors(yaml.load(text, Core))
    every = [leaf for error in found for leaf in [error, *leaves(error)]]
    return {tuple(str(step) for step in leaf.absolute_path) for leaf in every}


def test_the_committed_schema_and_reference_are_up_to_date():
    committed = json.loads((ROOT / "projects/pattern.schema.json").read_text(encoding="utf-8"))
    assert committed == SCHEMA, "run `foldwork reference`"
    reference = (ROOT / "projects/REFERENCE.md").read_text(encoding="utf-8")
    assert reference == read.reference(), "run `foldwork reference`"


def test_the_schema_is_json_schema():
    Draft202012Validator.check_schema(SCHEMA)


DEMOS = [p.read_text(encoding="utf-8") for p in sorted(DEMO.parent.glob("*/pattern.yaml"))]


@pytest.mark.parametrize("text", [SMALLEST, *DEMOS])
def test_the_schema_accepts_whole_patterns(text):
    assert editor_faults(text) == set()


UNSEEN = {
    "R108": "an editor's parser marks it",
    "R109": "the schema has no word for it",
    "R123": "limits of lengths",
    "R130": "names",
    "R131": "files",
    "R132": "files",
    "R141": "rows",
    "R142": "sizes",
    "R143": "harmless",
    "R144": "harmless",
    "R134": "arithmetic",
    "R136": "formatting",
    "R166": "proportions",
    "R145": "two keys",
    "R146": "two keys",
    "R147": "two items",
    "R148": "two keys",
    "R177": "two keys",
    "R178": "harmless",
    "R149": "names",
    "R170": "two keys",
    "R174": "two items",
    "R175": "two keys",
    **dict.fromkeys([f"R{n}" for n in range(150, 166)], "what patches make together"),
}
BY_READING_ALONE = {
    ("choices.yaml", 7),  # a limit of a percentage
    ("drawings.yaml", 17),  # a folder for a drawing, found on disk
    *((("sizes.yaml", line)) for line in (12, 13, 15)),  # a motif_size that a block asks for
}
READABLE = [
    p
    for p in sorted(FAULTS.glob("*.yaml"))
    if not p.name.startswith(("syntax", "tabs", "aliases", "odd-key"))
]


@pytest.mark.parametrize("path", READABLE, ids=lambda p: p.stem)
def test_the_schema_marks_each_fault_that_it_can_see(path):
    marked = editor_faults(path.read_text(encoding="utf-8"))
    for note in read.load(path)[1]:
        steps = tuple(note.place.path.split(".")) if note.place.path else ()
        seen = note.code not in UNSEEN and (path.name, note.place.line) not in BY_READING_ALONE
        if seen:
            assert steps in marked or steps[:-1] in marked, note


@pytest.mark.parametrize("path", READABLE, ids=lambda p: p.stem)
def test_reading_refuses_what_the_schema_marks(path):
    if editor_faults(path.read_text(encoding="utf-8")):
        assert read.load(path)[0] is None


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("title: Bulrush\n", ""),
        ("folds: 8", "folds: 10"),
        ("block_size: 16 in", "block_size: 16"),
        ("block_size: 16 in", "block_size: 16 kg"),
        ("block_size: 16 in", "block_size: no"),
        ('"#f4efe6"', '"#fff"'),
        ("drawing: bulrush.svg", "drawing: bulrush.svg, outline: [[0, 0], [1, 0], [1, 1]]"),
        ("{block_size", "{finish: pillow, block_size"),
        ("{block_size", "{quilting: [{area: ground, style: grid}], block_size"),
        ("linen:", "Pale Linen:"),
        ("ground: linen", "ground: [linen]"),
        ("ground: linen, ", ""),
        ("ground: linen", "ground: linen, traditional: four patch, fabrics: {dark: linen}"),
        ("ground: linen", "patches: [{fabric: linen, square: [0, 0, 1]}]"),
        ("ground: linen", "grid: [1, 1], patches: [{square: [0, 0, 1]}]"),
        ("ground: linen", "grid: [1, 1], patches: [{fabric: linen, square: [0, 0]}]"),
        ("ground: linen", "grid: [1, 1], patches: [{block: bulrush}]"),
        ("ground: linen", "traditional: four patches, fabrics: {dark: linen}"),
        ("ground: linen", "traditional: four patch"),
        ("{block_size", "{setting: on point, block_size"),
        ("{block_size", "{turns: [45], block_size"),
        ("{block_size", "{rounds: [{blocks: bulrush}], block_size"),
    ],
)
def test_the_schema_refuses(old, new):
    assert editor_faults(changed(old, new))


@pytest.mark.parametrize(("section", "key"), KEYS, ids=[f"{s.name}.{k.name}" for s, k in KEYS])
def test_a_key_has_a_meaning_and_an_example_that_holds(section, key, tmp_path, monkeypatch):
    assert re.fullmatch(r"[A-Z].*\.", key.meaning)
    monkeypatch.chdir(tmp_path)
    for name in ("bulrush.svg", *FILES):
        (tmp_path / name).write_text("<svg/>", encoding="utf-8")
    read_value(key, key.example)  # asserts that there are no notes
    if isinstance(key.shape, Form):
        Draft202012Validator(key.shape.json()).validate(yaml.load(key.example, Core))
    filled = defaults(section)
    said = [key.required, key.name in filled, bool(key.derived), key.name in section.one_of]
    assert said.count(True) == 1, "required, with a default, or said what stands in for it"


@pytest.mark.parametrize(("section", "key"), KEYS, ids=[f"{s.name}.{k.name}" for s, k in KEYS])
def test_a_key_is_in_the_reference_and_in_the_schema(section, key):
    home = SCHEMA if section is PATTERN else SCHEMA["$defs"][section.name]
    assert key.meaning in home["properties"][key.name]["description"]
    title = "The file" if section is PATTERN else section.name.capitalize()
    part = read.reference().split(f"\n## {title}\n")[1].split("\n## ")[0]
    line = next(x for x in part.splitlines() if x.startswith(f"| `{key.name}` |"))
    assert line.count(" | ") == 4
    assert key.meaning in line


def test_the_smallest_pattern_in_the_reference_is_a_pattern(tmp_path):
    block = re.search(r"```yaml\n(.*?)```", read.reference(), re.DOTALL)[1]
    (tmp_path / "pattern.yaml").write_text(block, encoding="utf-8")
    (tmp_path / "bulrush.svg").write_text("<svg/>", encoding="utf-8")
    assert read.load(tmp_path)[1] == ()
    assert len(block.splitlines()) == 10


length_texts = st.text(alphabet="0123456789./- ½⅜⁄incmyd\"'″xX%", max_size=9) | st.builds(
    "{}{}{}".format,
    st.sampled_from(["1", "2 1/2", "2-1/2", "2½", "2 ½", "½", ".5", "2.5", "1/0", "1 ", "2."]),
    st.sampled_from(["", " ", "  "]),
    st.sampled_from(["in", "IN", "Inches", '"', "cm", "m", "yds", "kg", "", "in.", "ft"]),
)


@settings(max_examples=400)
@given(length_texts)
def test_editors_and_reading_agree_on_what_is_a_length(text):
    length = Length("0 in", "100000 yd")
    result = length.read(text, Hint("1 in", ROOT))
    understood = not isinstance(result, Unfit) or result.code == "R123"
    if not text.strip().startswith("-"):  # below zero is a limit, which editors do not see
        assert bool(re.search(length.json()["pattern"], text)) == understood
