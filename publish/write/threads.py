"""The table of thread: how much each use takes, in spools, and the bobbins for quilting.

In: plans. Out: a table.
Invariant: a length of thread is counted up to whole yards and metres, spools and bobbins to
whole ones; nothing else is rounded.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import partial

from publish.model.cutplan import CutPlan
from publish.model.words import Table
from publish.units import round_up
from publish.words.lengths import spools
from publish.words.values import Count, Named, Said, Thread, Value, Word, said, yes
from publish.write.columns import Cell, rows_of, table_of
from publish.write.context import Book
from publish.write.practice import BOBBIN, SPOOL_METRES


def _uses(book: Book) -> list[tuple[Said, Cell]]:
    """Return each use of thread with what it is matched to, and how to read its length."""
    around = Word(book.ground_kind(book.used_blocks))
    motifs = dict.fromkeys(m.fabric for m in book.motifs)
    bindings = dict.fromkeys(
        b.fabric for k in book.keys if (b := book.plans[k].binding) is not None
    )
    alone = len(motifs) == 1
    rows: list[tuple[Said, Callable[[CutPlan], Fraction]]] = [
        (said("thread-piecing", pillows=yes(book.pillows)), lambda p: p.thread.piecing),
        *(
            (said("thread-applique", fabric=Named(book.fabric(f))), partial(_sewn_on, f, alone))
            for f in motifs
        ),
        (said("thread-quilting", around=around), lambda p: p.thread.quilting),
        *(
            (said("thread-binding", fabric=Named(book.fabric(f))), partial(_bound, f))
            for f in bindings
        ),
    ]
    return [(name, partial(_thread, read)) for name, read in rows]


def _sewn_on(fabric: str, alone: bool, plan: CutPlan) -> Fraction:
    """Return the thread that sews the motifs of a fabric on."""
    return plan.thread.applique if alone else plan.thread.motifs.get(fabric, Fraction(0))


def _bound(fabric: str, plan: CutPlan) -> Fraction:
    """Return the thread of a binding of this fabric."""
    mine = plan.binding is not None and plan.binding.fabric == fabric
    return plan.thread.binding if mine else Fraction(0)


def _thread(read: Callable[[CutPlan], Fraction], plan: CutPlan) -> Value | None:
    length = read(plan)
    if length <= 0:
        return None
    count = spools(length, SPOOL_METRES.value)
    return said("thread-cell", thread=Thread(length), spools=Count(count, "spool"))


def table(book: Book) -> Table:
    rows = rows_of(book, _uses(book))
    notes = [book.text("thread-spool", metres=Count(int(SPOOL_METRES.value)))]
    filled = rows_of(book, [(said("thread-bobbins"), _bobbins)])
    if filled:
        notes.append(book.text("thread-bobbin", length=Thread(BOBBIN.value)))
    return table_of(book, "thread", [*rows, *filled], tuple(notes))


def _bobbins(plan: CutPlan) -> Value | None:
    length = plan.thread.quilting
    return Count(bobbins(length), "bobbin") if length > 0 else None


def bobbins(length: Fraction) -> int:
    """Return how many full bobbins hold the bobbin's half of a lockstitch's thread."""
    return int(round_up(length / 2 / BOBBIN.value, Fraction(1)))
