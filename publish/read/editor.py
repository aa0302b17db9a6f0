"""The schema as JSON Schema, for editors that complete and check YAML as it is typed.

In: the declarations. Out: a JSON Schema, draft 2020-12 (json-schema.org).
Invariant: what it refuses, reading refuses; what only reading can see (names that lead
nowhere, limits of lengths, files) it lets pass.
"""

from __future__ import annotations

from typing import Any

import yaml

from publish.read.forms import KEY_PATTERN, Form
from publish.read.schema import PATTERN
from publish.read.sections import Either, Key, Many, Named, Pairs, Row, Section, Shape, sections_of

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def json_schema(root: Section = PATTERN) -> dict[str, Any]:
    """Return the JSON Schema of pattern.yaml, or of another file that has one."""
    inner = [s for s in sections_of(root) if s is not root]
    return {
        "$schema": DIALECT,
        "title": f"Foldwork {root.name}",
        **_section(root),
        "$defs": {section.name: _section(section) for section in inner},
    }


def _section(section: Section) -> dict[str, Any]:
    schema: dict[str, Any] = {
        "description": section.meaning,
        "type": "object",
        "properties": {key.name: _key(key) for key in section.keys},
        "additionalProperties": False,
    }
    required = [key.name for key in section.keys if key.required]
    if required:
        schema["required"] = required
    if section.one_of:
        schema["oneOf"] = [{"required": [name]} for name in section.one_of]
    if section.apart:
        schema["not"] = {"required": list(section.apart)}
    whenever = {n.key: [n.other] for n in section.needs if not n.values}
    if whenever:
        schema["dependentRequired"] = whenever
    conditions = [_condition(section, n.key, n.values, n.other) for n in section.needs if n.values]
    if conditions:
        schema["allOf"] = conditions
    return schema


def _condition(section: Section, key: str, values: tuple[str, ...], other: str) -> dict[str, Any]:
    """Return the rule that `other` stands where `key` has one of `values`."""
    test: dict[str, Any] = {"properties": {key: {"enum": list(values)}}}
    if section.key(key).default not in values:
        test["required"] = [key]
    wanted: dict[str, Any] = {"required": [other]}
    if section.key(other).may_be_none:
        wanted["properties"] = {other: {"not": {"const": "none"}}}
    return {"if": test, "then": wanted}


def _key(key: Key) -> dict[str, Any]:
    schema = _shape(key.shape)
    if key.may_be_none:
        schema = {"anyOf": [{"const": "none"}, schema]}
    words = key.meaning
    if key.derived:
        words += f" Left out: {key.derived.replace('`', '')}."
    schema = {**schema, "description": words}
    if key.default is not None:
        schema["default"] = yaml.safe_load(key.default)
    if isinstance(key.shape, Form):
        schema["examples"] = [yaml.safe_load(key.example)]
    return schema


def _shape(shape: Shape) -> dict[str, Any]:
    if isinstance(shape, Form):
        return shape.json()
    if isinstance(shape, Section):
        return {"$ref": f"#/$defs/{shape.name}"}
    if isinstance(shape, Named):
        return {
            "type": "object",
            "propertyNames": {"pattern": KEY_PATTERN},
            "additionalProperties": _shape(shape.section),
            "minProperties": 1,
            "maxProperties": shape.most,
        }
    if isinstance(shape, Many):
        distinct = {"uniqueItems": True} if shape.distinct else {}
        counts = {"minItems": shape.least, "maxItems": shape.most}
        return {"type": "array", "items": _shape(shape.item), **counts, **distinct}
    if isinstance(shape, Row):
        return {
            "type": "array",
            "prefixItems": [form.json() for form in shape.forms],
            "items": False,
            "minItems": shape.least,
        }
    if isinstance(shape, Pairs):
        return {
            "type": "object",
            "propertyNames": {"pattern": KEY_PATTERN},
            "additionalProperties": shape.form.json(),
            "minProperties": 1,
            "maxProperties": shape.most,
        }
    assert isinstance(shape, Either)
    return {"anyOf": [_shape(shape.plain), _shape(shape.other)]}
