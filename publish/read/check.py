"""The tree of YAML nodes against the schema: every value read, every fault noted.

In: PyYAML nodes and a section of the schema. Out: the values that hold, by key; notes
and places in a `Ledger`.
Invariant: a fault is noted once, at the value or key it stands in, and reading goes on
past it. A value that does not hold is left out of the result, but it has a place, so
that it does not count as missing.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import Any

import yaml

from publish.notes import Place, Severity
from publish.read.characters import shown, unprintable
from publish.read.forms import KEY_PATTERN, Form, Hint, Unfit, key_like, listed, nearest
from publish.read.in_languages import InLanguages
from publish.read.ledger import At, Ledger, Path_, Use
from publish.read.lists import FAULTY
from publish.read.rules import check_rules
from publish.read.sections import Either, Key, Many, Named, Pairs, Row, Section, Shape, homes
from publish.read.source import REFUSED
from publish.read.special import Colour, Ref
from publish.read.telling import DEFAULT, Telling, languages_of
from publish.read.texts import Text

_NULL = "tag:yaml.org,2002:null"
_MERGE = "tag:yaml.org,2002:merge"
_SURE = 0.8


Entry = tuple[str, At, yaml.Node]
"""A key as written, where it stands, its value."""


class Checker(InLanguages):
    """Reads one file's nodes into values."""

    def __init__(self, ledger: Ledger, root: Section, telling: Telling = DEFAULT) -> None:
        super().__init__(ledger, telling)
        self.root, self.homes = root, homes(root)

    def read(self, node: yaml.Node) -> dict[str, Any]:
        """Return the values of the whole file."""
        value = self.value(self.root, node, At((), self.ledger.places[""], ""))
        return value if isinstance(value, dict) else {}

    def value(self, shape: Shape, node: yaml.Node, at: At) -> Any:
        """Return what `node` stands for in the given shape, or FAULTY."""
        if node.tag == REFUSED:
            return FAULTY
        if node.tag == _NULL:
            return self._empty(shape, at)
        if isinstance(shape, Either):
            narrow: Shape = shape.plain if isinstance(node, yaml.ScalarNode) else shape.other
        else:
            narrow = shape
        if isinstance(narrow, Form) and isinstance(node, yaml.ScalarNode):
            if isinstance(narrow, Text):
                self.one_for_all(narrow, node, at)
            return self.plain(narrow, node, at)
        if isinstance(narrow, Text) and isinstance(node, yaml.MappingNode) and languages_of(node):
            return self.by_language(narrow, list(self.entries(node, at.path)), at)
        if isinstance(narrow, Section) and isinstance(node, yaml.MappingNode):
            return self._section(narrow, node, at)
        if isinstance(narrow, Named) and isinstance(node, yaml.MappingNode):
            return self._named(narrow, node, at)
        if isinstance(narrow, Many) and isinstance(node, yaml.SequenceNode):
            return self.many(narrow, node, at)
        if isinstance(narrow, Row) and isinstance(node, yaml.SequenceNode):
            return self.row(narrow, node, at)
        if isinstance(narrow, Pairs) and isinstance(node, yaml.MappingNode):
            return self._pairs(narrow, node, at)
        return self._wrong_shape(shape, node, at)

    def _empty(self, shape: Shape, at: At) -> Any:
        help_ = f"write it out, such as `{at.example}`, or remove the key"
        colour = re.search(r":\s+(#[0-9a-fA-F]{3,8})\b", self.ledger.line_after(at.place))
        if isinstance(shape, Colour) and colour:
            help_ = f'write `"{colour[1]}"` in quotes: a bare # begins a comment'
        self.note(
            "R113",
            at.place,
            f"{at.subject} has no value",
            expected=shape.words,
            received="nothing",
            help=help_,
        )
        return FAULTY

    def _wrong_shape(self, shape: Shape, node: yaml.Node, at: At) -> Any:
        received = "keys with values"
        if not isinstance(node, yaml.MappingNode):
            received = "a plain value" if isinstance(node, yaml.ScalarNode) else "a list"
        self.note(
            "R112",
            self.ledger.at(node, at.path).place,
            f"{at.subject} has the wrong shape",
            expected=shape.words,
            received=received,
            help=f"write it as `{at.example}`"
            if at.example
            else "write keys, each with a colon after it: `title: Bulrush`",
        )
        return FAULTY

    def plain(self, form: Form, node: yaml.ScalarNode, at: At) -> Any:
        place = self.ledger.at(node, at.path).place
        bad = unprintable(node.value)
        if bad:
            self.note(
                "R109",
                place,
                f"{at.subject} holds a character that cannot be printed",
                expected="printable text",
                received=bad,
                help="delete the character, or the backslash that makes it",
            )
            return FAULTY
        result = form.read(node.value, Hint(at.example, self.ledger.folder))
        if isinstance(result, Unfit):
            self.note(
                result.code,
                place,
                f"{at.subject} {result.says}",
                expected=result.expected or form.words,
                received=node.value,
                help=result.help,
            )
            return FAULTY
        taken = form.taken(node.value)
        if taken is not None:
            self.ledger.note(
                taken.code,
                place,
                f"{at.subject} {taken.says}",
                expected=taken.expected,
                received=node.value,
                help=taken.help,
                severity=Severity.INFO,
            )
        if isinstance(form, Ref):
            self.ledger.uses.append(Use(form, result, place))
        return result

    def entries(self, node: yaml.MappingNode, path: Path_) -> Iterator[tuple[str, At, yaml.Node]]:
        """Yield each key once, as text, noting repeats and keys that are no words."""
        first: dict[str, int] = {}
        for key, value in node.value:
            at = self.ledger.at(key, path)
            if key.tag == REFUSED or (key.tag == _MERGE and value.tag == REFUSED):
                continue
            if not isinstance(key, yaml.ScalarNode) or key.tag == _MERGE or not key.value.strip():
                self._no_key(key, at)
            elif key.value in first:
                self.note(
                    "R108",
                    at.place,
                    f"`{shown(key.value)}` is written twice",
                    expected="each key once",
                    received=f"first on line {first[key.value]}",
                    help="remove one of the two, or give it another key",
                )
            else:
                first[key.value] = at.place.line
                own = (*path, shown(key.value))
                yield key.value, self.ledger.at(key, own), value

    def _no_key(self, key: yaml.Node, at: At) -> None:
        """Note what stands in a key's stead."""
        code, what, received = "R112", "a colon has no key before it", "nothing"
        help_ = "write the key, or remove the colon"
        if not isinstance(key, yaml.ScalarNode):
            what, received = "a key is not a plain word", "a list or keys"
            help_ = "put braces and brackets in quotes where they are text"
        elif key.tag == _MERGE:
            code, what, received = "R107", "a merge key is not used in patterns", "<<"
            help_ = "write out the keys that it would bring in"
        self.note(code, at.place, what, expected="a key", received=received, help=help_)

    def _section(self, section: Section, node: yaml.MappingNode, at: At) -> dict[str, Any]:
        values: dict[str, Any] = {}
        present: dict[str, Place] = {}
        known = {key.name: key for key in section.keys}
        entries = self._commas(self.entries(node, at.path))
        taken = {name for name, _, _ in entries}
        for name, there, inner in entries:
            key = known.get(name) or self._unknown(section, name, there, taken, present)
            if key is None:
                continue
            taken.add(key.name)
            present[key.name] = there.place
            value = self.keyed(key, inner, At((*at.path, key.name), there.place, key.example))
            if value is not FAULTY:
                values[key.name] = value
        check_rules(self.note, section, values, present, at.place, at.subject)
        return values

    def _commas(self, entries: Iterable[Entry]) -> list[Entry]:
        """Return entries with `15,5 in` in braces as the one value that it was meant for."""
        found: list[Entry] = []
        for name, at, value in entries:
            empty = isinstance(value, yaml.ScalarNode) and value.value == ""
            if found and empty and name[0].isdigit():
                key, there, whole = found[-1]
                text = f"{whole.value},{name}"
                line = self.ledger.line_after(there.place)
                if re.match(rf"{re.escape(key)}:\s+{re.escape(text)}", line):
                    meant = yaml.ScalarNode(whole.tag, text, whole.start_mark, value.end_mark)
                    found[-1] = key, there, meant
                    continue
            found.append((name, at, value))
        return found

    def keyed(self, key: Key, node: yaml.Node, at: At) -> Any:
        """Return a key's value, and keep its place: the value's own, if it is plain."""
        plain = isinstance(node, yaml.ScalarNode) and node.tag != _NULL
        self.ledger.keep(self.ledger.at(node, at.path) if plain else at)
        if key.may_be_none and isinstance(node, yaml.ScalarNode) and node.value == "none":
            return None
        return self.value(key.shape, node, at)

    def _unknown(
        self, section: Section, name: str, at: At, taken: set[str], present: dict[str, Place]
    ) -> Key | None:
        """Note an unknown key; return the key to read it as, where that is plain enough."""
        free = [key.name for key in section.keys if key.name not in taken]
        sure = nearest(name, free, _SURE)
        elsewhere = dict.fromkeys(self.homes.get(name, []))
        near = sure or (None if elsewhere else nearest(name, free))
        if near:
            present[near] = at.place
            help_ = f"write `{near}`"
        elif (double := nearest(name, [key.name for key in section.keys], _SURE)) is not None:
            help_ = f"`{double}` stands here already: keep one of the two"
        elif elsewhere:
            help_ = f"`{name}` is a key of {listed(elsewhere)}: move it there"
        else:
            help_ = f"known keys are {listed(key.name for key in section.keys)}"
        where = f"the {section.name}" if section is self.root else f"`{section.name}`"
        self.note(
            "R110",
            at.place,
            f"`{shown(name)}` is not a key of {where}",
            expected=f"a key of {where}",
            received=name,
            help=help_,
        )
        return section.key(sure) if sure else None

    def _named(self, named: Named, node: yaml.MappingNode, at: At) -> dict[str, Any]:
        values: dict[str, Any] = {}
        entries = list(self.entries(node, at.path))
        self.count(len(entries), 1, named.most, at)
        self.ledger.defined[at.path[-1]] = [name for name, _, _ in entries]
        for name, there, inner in entries[: named.most]:
            self.ledger.keep(there)
            under = At(there.path, there.place, named.section.example)
            value = self.value(named.section, inner, under)
            if self._can_name(name, named.noun, there) and value is not FAULTY:
                values[name] = value
        return values

    def _can_name(self, name: str, noun: str, at: At) -> bool:
        """Return whether a name is well formed; note it when it is not."""
        if re.fullmatch(KEY_PATTERN, name):
            return True
        self.note(
            "R114",
            at.place,
            f"`{shown(name)}` cannot name a {noun}",
            expected="small letters, digits, `-` and `_`, at most 40, not `none`",
            received=name,
            help=f"write {key_like(name)}",
        )
        return False

    def _pairs(self, pairs: Pairs, node: yaml.MappingNode, at: At) -> Any:
        """Return plain values by the names they stand under."""
        values: dict[str, Any] = {}
        entries = list(self.entries(node, at.path))
        fits = self.count(len(entries), 1, pairs.most, at)
        for name, there, inner in entries[: pairs.most]:
            value = self.value(pairs.form, inner, self.ledger.keep(there))
            fits = self._can_name(name, pairs.noun, there) and value is not FAULTY and fits
            values[name] = value
        return values if fits else FAULTY
