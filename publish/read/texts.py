"""The form of words for the maker.

In: the text of one YAML scalar. Out: the words, or an `Unfit`.
Invariant: as in `forms`; a name reads in print as it is written.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from markdown_it import MarkdownIt

from publish.read.forms import Form, Hint, Unfit
from publish.words import LANGUAGES


@dataclass(frozen=True)
class Text(Form):
    """Words for the maker. `lines` keeps paragraphs; otherwise white space is one blank.

    A `name` is printed amid Markdown and must read there as it is written. What is `told` in
    sentences is to be written in each of a pattern's languages; so is all that has `lines`.
    """

    most: int
    blank: bool = True
    lines: bool = False
    name: bool = False
    sentence: bool = False
    lone: bool = False
    """Whether it is the text in one language, which is never a mapping."""

    @property
    def told(self) -> bool:
        return (self.lines or self.sentence) and not self.lone

    @property
    def alone(self) -> Text:
        """Return the form of the text in one language."""
        return replace(self, lone=True)

    @property
    def words(self) -> str:
        kind = "text of one or more paragraphs" if self.lines else "text on one line"
        return f"{kind}, at most {self.most} characters"

    def json(self) -> dict[str, Any]:
        # A stock number or a title may be bare digits, which an editor takes for a number.
        least = {} if self.blank else {"minLength": 1, "pattern": r"\S"}
        plain = {"type": ["string", "number"], **least, "maxLength": self.most}
        if self.lone:
            return plain
        each = {
            "type": "object",
            "propertyNames": {"enum": list(LANGUAGES)},
            "additionalProperties": {"type": plain["type"], **least},
            "minProperties": 1,
        }
        return {"anyOf": [plain, each]}

    def read(self, text: str, hint: Hint) -> Any:
        value = text.strip() if self.lines else " ".join(text.split())
        if not value and not self.blank:
            return Unfit("R113", "has no value", f"write it out, such as `{hint.example}`")
        over = len(value) - self.most
        if over > 0:
            return Unfit(
                "R127",
                f"is {len(value)} characters long",
                f"shorten it by {over} character{'' if over == 1 else 's'}",
            )
        if self.name and value and not _as_written(value):
            return Unfit(
                "R136",
                "holds marks that would be set as a link, code or bold type",
                "write the name without `*`, `_`, backticks, brackets and backslashes",
            )
        return value


_MARKDOWN = MarkdownIt("commonmark", {"html": False}).disable(["image", "html_inline"])


def _as_written(name: str) -> bool:
    """Return whether a name stays as it is amid Markdown, bold type included."""
    (line,) = _MARKDOWN.parseInline(f"the **{name}**, and")
    types = [part.type for part in line.children or ()]
    return types == ["text", "strong_open", "text", "strong_close", "text"] and any(
        part.content == name for part in line.children or ()
    )
