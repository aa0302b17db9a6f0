"""Editions to compare: the demo, and copies of it with something changed.

In: passages to change. Out: `Edition`s, each prepared once in a run.
"""

import shutil
import tempfile
from pathlib import Path

from helpers import DEMO
from shared import shared

from publish import comparing
from publish.compare import Change, Edition, compare


@shared
def demo() -> Edition:
    return comparing.opened(DEMO)


@shared
def edited(*passages: tuple[str, str]) -> Edition:
    """Return the demo with passages of its pattern.yaml changed, each standing there once."""
    text = (DEMO / "pattern.yaml").read_text(encoding="utf-8")
    for old, new in passages:
        assert text.count(old) == 1, f"{old!r} stands {text.count(old)} times"
        text = text.replace(old, new)
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder) / "samphire"
        home.mkdir()
        shutil.copy(DEMO / "samphire.svg", home)
        (home / "pattern.yaml").write_text(text, encoding="utf-8")
        return comparing.opened(home)


def changes(*passages: tuple[str, str]) -> tuple[Change, ...]:
    return compare(demo(), edited(*passages))


def said(found: tuple[Change, ...], consequence: str = "") -> list[str]:
    """Return the sentences of one consequence, or of all."""
    return [c.sentence for c in found if not consequence or c.consequence == consequence]
