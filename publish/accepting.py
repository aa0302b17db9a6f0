"""Whether what the designer accepts is there to be accepted.

In: a report, and the codes that a run has looked for. Out: notes at the acceptances.
Invariant: an acceptance that holds nothing back is a warning, but only where its code was
looked for; an error is never accepted.
"""

from __future__ import annotations

from collections.abc import Iterator
from difflib import get_close_matches

from publish.catalogue import ACCEPTING, BETWEEN, titles
from publish.notes import Acceptance, Note, Report, error, warning


def judge(report: Report, looked: frozenset[str]) -> Iterator[Note]:
    """Yield R172 for each acceptance of an error and R171 for each of nothing."""
    used = {acceptance for _, acceptance in report.accepted}
    for acceptance in report.accepts:
        stops = [n for n in report.errors if acceptance.covers(n)]
        if stops or acceptance.code in ACCEPTING:
            yield _refused(acceptance, stops)
        elif acceptance.code not in {*titles(), *BETWEEN}:
            yield _idle(acceptance, "there is no finding of this code", _near(acceptance.code))
        elif acceptance not in used and acceptance.code in looked:
            yield _idle(
                acceptance, "the acceptance holds back no warning", _instead(report, acceptance)
            )


def _refused(acceptance: Acceptance, stops: list[Note]) -> Note:
    what = "an error cannot be accepted" if stops else "this finding cannot be accepted"
    where = f"{stops[0].code} at {stops[0].place}" if stops else acceptance.code
    return error(
        "R172",
        acceptance.place,
        what,
        expected="the code of a warning",
        received=where,
        help="mend what the finding says, and remove the acceptance",
    )


def _idle(acceptance: Acceptance, what: str, help_: str) -> Note:
    where = f" at `{acceptance.at}`" if acceptance.at else ""
    return warning(
        "R171",
        acceptance.place,
        what,
        expected="a warning that is found",
        received=f"{acceptance.code}{where}",
        help=help_,
    )


def _near(code: str) -> str:
    known = [c for c in {**titles(), **BETWEEN} if c[0] == code[0]]
    near = get_close_matches(code, known, 1, 0.7)
    return f"write `{near[0]}`, or remove it" if near else "remove it"


def _instead(report: Report, acceptance: Acceptance) -> str:
    """Return what to do: name another place where the code is found, or remove it."""
    elsewhere = [
        n for n in (*report, *(n for n, _ in report.accepted)) if n.code == acceptance.code
    ]
    if acceptance.at and elsewhere and elsewhere[0].place.path:
        return f"remove it, or write `at: {elsewhere[0].place.path}`"
    return "remove it: what it was for has been mended"
