"""What is costly and asked for by many tests is made once in a run, by whichever process
asks first.

In: a function of plain values whose result can be pickled. Out: the same function; its
result is kept in the process, and for the others in the run's own folder.
Invariant: nothing outlives the run, so that no test sees what another version has made; a
result is for looking at, and no test changes it.
"""

from __future__ import annotations

import fcntl
import hashlib
import os
import pickle
import shutil
import tempfile
from collections.abc import Callable
from functools import cache, wraps
from pathlib import Path
from typing import ParamSpec, TypeVar

P = ParamSpec("P")
R = TypeVar("R")

VARIABLE = "FOLDWORK_TEST_RUN"
"""Of the environment: the run's folder, which the run's processes inherit."""


def begin() -> None:
    """Make the folder of a run; its first process calls this, before others start."""
    os.environ[VARIABLE] = tempfile.mkdtemp(prefix="foldwork-tests-")


def folder() -> Path:
    """Return the run's folder."""
    return Path(os.environ[VARIABLE])


def end() -> None:
    """Remove the folder of a run."""
    shutil.rmtree(os.environ.pop(VARIABLE), ignore_errors=True)


def shared(make: Callable[P, R]) -> Callable[P, R]:
    """Return `make` with its results shared by all processes of a run."""

    @cache
    @wraps(make)
    def found(*values: P.args, **named: P.kwargs) -> R:
        if VARIABLE not in os.environ:  # a benchmark: there is no run
            return make(*values, **named)
        asked = repr((make.__module__, make.__qualname__, values, sorted(named.items())))
        path = folder() / hashlib.sha256(asked.encode()).hexdigest()
        with path.with_suffix(".lock").open("w") as lock:
            fcntl.flock(lock, fcntl.LOCK_EX)  # freed by the system where the maker dies
            if not path.exists():
                made = make(*values, **named)
                path.write_bytes(pickle.dumps(made))
                return made
        return pickle.loads(path.read_bytes())

    return found
