"""A default is one value: what the reference states is what the model holds.

No source: that two parts of the program say the same is the point.
"""

from dataclasses import MISSING, fields

import pytest

from publish.model import pattern as model
from publish.read import schema, schema_design, schema_sewing, schema_sizes
from publish.read.defaults import defaults

PAIRS = [
    (schema.PUBLICATION, model.Publication),
    (schema_sewing.SEWING, model.Sewing),
    (schema_sewing.BINDING, model.BindingSpec),
    (schema_sewing.BACKING, model.BackingSpec),
    (schema_sewing.BATTING, model.BattingSpec),
    (schema_sewing.QUILTING, model.QuiltingSpec),
    (schema_design.BORDER, model.BorderSpec),
    (schema_design.SASHING, model.SashingSpec),
    (schema_sizes.PILLOW, model.PillowSpec),
    (schema_design.MOTIF, model.Motif),
]


@pytest.mark.parametrize(("section", "kind"), PAIRS, ids=lambda x: getattr(x, "__name__", ""))
def test_a_default_is_one_value(section, kind):
    stated = {key.name for key in section.keys}
    told = {k: v for k, v in defaults(section).items() if v is not None}
    held = {
        field.name: field.default
        for field in fields(kind)
        if field.default not in (MISSING, None, "", ()) and field.name in stated
    }
    assert {name: told.get(name) for name in held} == held
