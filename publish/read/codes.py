"""What reading can find, by code.

In: nothing. Out: `CODES`, each code's title.
Invariant: a code keeps its meaning for good and is never used again for another.
"""

from __future__ import annotations

CODES: dict[str, str] = {
    "R101": "The pattern file cannot be opened",
    "R102": "The file is not UTF-8 text",
    "R103": "The file holds no pattern",
    "R104": "The file is too large or too deeply nested",
    "R105": "The file is not well-formed YAML",
    "R106": "A tab indents a line",
    "R107": "An anchor, alias, merge key or tag stands in the file",
    "R108": "A key is written twice",
    "R109": "Text holds a character that cannot be printed",
    "R110": "A key is not known",
    "R111": "A key is missing",
    "R112": "A value has the wrong shape",
    "R113": "A key has no value",
    "R114": "A name of the designer's own is not well formed",
    "R120": "A number cannot be understood",
    "R121": "A unit is missing",
    "R122": "A unit is not known",
    "R123": "A length is impossible",
    "R124": "A number is impossible",
    "R125": "A word is not one of the choices",
    "R126": "A colour is not written as six digits",
    "R127": "Text is too long",
    "R128": "A list has too few or too many items",
    "R129": "A list repeats an item",
    "R130": "A name is used that nothing defines",
    "R131": "A drawing is not there",
    "R132": "A drawing lies outside the pattern's folder",
    "R133": "A drawing is not an SVG file",
    "R140": "Keys stand together that exclude each other",
    "R141": "The rows of a ground are of unequal length",
    "R142": "A motif is larger than its block",
    "R143": "A key has no effect where it stands",
    "R144": "A fabric, motif or block is never used",
    "R145": "Raw edges are given a turn-under",
    "R146": "A motif's cloth has no room for its turn-under",
    "R147": "A colourway swaps one fabric twice",
}
