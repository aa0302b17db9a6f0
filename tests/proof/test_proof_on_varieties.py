"""The proof on a pattern that uses what the demo does not, and on the words' own figures.

No source: that every stage agrees with the proof, which adds up by itself, is the point.
"""

from pathlib import Path

from publish import pipeline
from publish.proof.booklet.quoted import PRACTICE, PRACTICE_METRIC, PRACTICE_YARDS
from publish.write import practice

HERE = Path(__file__).parent


def test_two_methods_mitres_bias_a_zip_and_metric_sizes() -> None:
    work = pipeline.prepare(HERE / "variety")
    assert set(work.plans) == {"big", "cushion", "metric"}
    assert [f"{n.code} {n.what}" for n in work.report if n.code.startswith("P")] == []


def test_every_figure_of_the_trade_that_the_words_use_is_known_to_the_proof() -> None:
    figures = [v for v in vars(practice).values() if isinstance(v, practice.Practice)]
    assert len(figures) > 5
    known = PRACTICE | PRACTICE_METRIC | PRACTICE_YARDS
    assert [f for f in figures if f.value not in known and f is not practice.SPOOL_METRES] == []
