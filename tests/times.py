"""Which tests take long: measured by `make times`, kept in `long.txt`, left to `make thorough`.

In: a run of all tests with `-p times`. Out: `long.txt`: processor seconds and the test's name, for
each test over `MOST`. Processor time does not depend on what else the machine does.
"""

import os
from pathlib import Path

import pytest

LONG = Path(__file__).with_name("long.txt")
MOST = 0.75
"""Seconds of processor time up to which a test belongs to `make test`."""
ALWAYS = (
    "tests/independent/test_second_reckoning.py::test_metric_demo_agrees",
    "tests/pipeline/test_kept_editions.py::test_only_what_shows_a_change_is_set_again",
    "tests/seeded/test_seeded.py::test_the_demo_is_silent",
    "tests/seeded/test_seeded.py::test_the_printed_demo_is_silent",
    "tests/seeded/test_seeded.py::test_a_fault_is_named_by_its_code"
    "[print: a length to buy is set wrongly]",
    "tests/sew/test_each_operation.py::test_each_operation_is_missed[samphire]",
    "tests/sew/test_each_operation.py::test_no_operation_comes_before_what_it_needs[samphire]",
    "tests/trace/test_trace_photos.py::test_a_photo_gives_the_motif_that_was_cut",
    "tests/typeset/test_typeset_pages.py::test_every_page_is_the_size_of_the_paper[tideline-letter]",
    "tests/test_imports.py::test_imports_point_one_way",
    "tests/proof/test_press_checks.py::test_a_good_edition_has_no_finding[letter]",
)
"""One of each kind that is run all the same, however long it takes."""


def long():
    """Return the names of the tests that are left to `make thorough`."""
    lines = LONG.read_text(encoding="utf-8").splitlines()
    return {line.split(" ", 1)[1] for line in lines} - set(ALWAYS)


def _processor():
    times = os.times()
    return times.user + times.system + times.children_user + times.children_system


@pytest.hookimpl(hookwrapper=True)
def pytest_runtest_protocol(item):
    """Add what a test took to the list, one file for each process of the run."""
    before = _processor()
    yield
    taken = _processor() - before
    if taken > MOST:
        worker = os.environ.get("PYTEST_XDIST_WORKER", "all")
        with LONG.with_name(f"long-{worker}.new").open("a", encoding="utf-8") as kept:
            kept.write(f"{taken:.2f} {item.nodeid}\n")


def pytest_unconfigure(config):
    """Put the processes' lists together, the longest first."""
    if hasattr(config, "workerinput"):
        return
    found = []
    for part in LONG.parent.glob("long-*.new"):
        found += part.read_text(encoding="utf-8").splitlines()
        part.unlink()
    found.sort(key=lambda line: -float(line.split(" ", 1)[0]))
    LONG.write_text("".join(f"{line}\n" for line in found), encoding="utf-8")
