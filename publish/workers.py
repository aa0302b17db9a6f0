"""Who makes the parts of a build: this process, or several side by side.

In: how many, calls and their values. Out: futures.
Invariant: one worker is this process, which does each call when it is asked; several are
processes of their own, which share nothing with this one but the values of a call and its
result. Leaving early, by Ctrl-C, a request to end or an error, stops them all.
"""

from __future__ import annotations

import multiprocessing
import os
import signal
import threading
from collections.abc import Callable
from concurrent.futures import Executor, Future, ProcessPoolExecutor
from types import TracebackType
from typing import Any, TypeVar

Result = TypeVar("Result")
_MODULES = ["publish.pipeline"]
"""What a worker is going to need: loaded once, before the first is started."""


class Here(Executor):
    """Does each call in this process, when it is asked."""

    def submit(self, call: Callable[..., Any], /, *values: Any, **named: Any) -> Future[Any]:
        """Do the call; an exception goes on from here."""
        future: Future[Any] = Future()
        future.set_result(call(*values, **named))
        return future


class Workers:
    """`count` workers; use it in a `with` statement.

    Each worker begins by calling `begin` with some values; where this process does the work,
    that is done here.
    """

    def __init__(
        self, count: int = 1, begin: Callable[..., None] | None = None, values: tuple[Any, ...] = ()
    ) -> None:
        self.count = count
        self._begin = (begin, values)
        self._executor: Executor = Here()
        self._ending: Any = None
        """What a request to end (SIGTERM) did before."""

    def __enter__(self) -> Workers:
        if self.count > 1:
            if threading.current_thread() is threading.main_thread():
                self._ending = signal.signal(signal.SIGTERM, _leave)
            context = fresh_context()
            self._executor = ProcessPoolExecutor(self.count, context, _begin, self._begin)
        elif self._begin[0] is not None:
            self._begin[0](*self._begin[1])
        return self

    def submit(self, call: Callable[..., Result], /, *values: Any) -> Future[Result]:
        """Have a call done; its values and its result must be such as can be pickled."""
        return self._executor.submit(call, *values)

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._executor.shutdown(wait=kind is None, cancel_futures=kind is not None)
        if kind is not None:
            for child in multiprocessing.active_children():
                child.terminate()
        if self._ending is not None:
            signal.signal(signal.SIGTERM, self._ending)


def fresh_context() -> multiprocessing.context.BaseContext:
    """Return the way to start a process that shares nothing with this one's threads."""
    ways = multiprocessing.get_all_start_methods()
    context = multiprocessing.get_context("forkserver" if "forkserver" in ways else "spawn")
    if context.get_start_method() == "forkserver":
        context.set_forkserver_preload(_MODULES)
    return context


def cores() -> int:
    """Return how many processors this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1


def _leave(number: int, frame: object) -> None:
    """Leave as by an error, so that no worker is left behind."""
    raise SystemExit(128 + number)


def _begin(begin: Callable[..., None] | None, values: tuple[Any, ...]) -> None:
    """Ctrl-C reaches every process of a terminal; only the first one says that it stopped."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)
    signal.signal(signal.SIGTERM, signal.SIG_DFL)
    if begin is not None:
        begin(*values)
