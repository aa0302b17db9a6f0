"""The demo patterns as the stages before drawing make them, once in a run."""

from helpers import PROJECTS
from shared import shared

from publish import pipeline
from publish.work import Work


@shared
def demo(name: str) -> Work:
    """Return what the first six stages make of a demo, which must be without findings."""
    work = pipeline.prepare(PROJECTS / name)
    assert not list(work.report), name
    return work
