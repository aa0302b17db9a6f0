"""Builds again after each save, the newest save alone.

In: what is shown. Out: nothing; it goes on until it is stopped.
Invariant: one build runs at a time; a save, or another choice, ends the one that runs.
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from multiprocessing.connection import Connection
from pathlib import Path
from typing import Any

from watchfiles import Change, watch

from publish.notes import Report
from publish.preview.building import Choice, Ended, work
from publish.preview.shown import Shown
from publish.read import studio_file
from publish.workers import fresh_context

SUFFIXES = {".yaml", ".yml", ".svg", ".png", ".jpg", ".jpeg", ".tif", ".tiff", ".heic"}
SUFFIXES |= {".ttf", ".otf", ".css", ".html", ".md"}
"""Of the files that a pattern, its studio or a layout of its own may name."""
LOOK = 0.1
"""Seconds between looks at whether something newer is asked for."""


def watched(change: Change, path: str) -> bool:
    """Return whether a changed file is one that a build may read."""
    return Path(path).suffix.lower() in SUFFIXES


class Watching:
    """Two threads: one waits for saves, one has builds made."""

    def __init__(self, shown: Shown, work: Callable[..., None] = work) -> None:
        self.shown = shown
        self._work = work
        self._again, self._stop = threading.Event(), threading.Event()
        self._threads = [
            threading.Thread(target=self._build, daemon=True),
            threading.Thread(target=self._watch, daemon=True),
        ]

    def __enter__(self) -> Watching:
        self._again.set()
        for thread in self._threads:
            thread.start()
        return self

    def __exit__(self, *error: object) -> None:
        self._stop.set()
        for thread in self._threads:
            thread.join(10)

    def choose(self, choice: Choice) -> None:
        """Build what the reader chose."""
        self.shown.choice = choice
        self._again.set()

    def folders(self) -> tuple[Path, ...]:
        """Return what is watched: the pattern's folder, and that of its studio."""
        path = self.shown.path
        own = path if path.is_dir() else path.parent
        studio = studio_file(own)
        return (own,) if studio is None else (own, studio.parent)

    def _watch(self) -> None:
        own, *beside = self.folders()
        if beside:
            threading.Thread(target=self._saves, args=(beside[0], False), daemon=True).start()
        self._saves(own, True)

    def _saves(self, folder: Path, below: bool) -> None:
        for _ in watch(
            folder, watch_filter=watched, stop_event=self._stop, recursive=below, debounce=200
        ):
            self._again.set()

    def _build(self) -> None:
        while not self._stop.is_set():
            if self._again.wait(LOOK):
                self._again.clear()
                self._once()

    def _once(self) -> None:
        """Have one build made, and listen to it until it ends or is no longer wanted."""
        shown, context = self.shown, fresh_context()
        shown.begin()
        here, there = context.Pipe(duplex=False)
        values = (there, shown.path, shown.choice, shown.known())
        process: Any = context.Process(target=self._work, args=values, daemon=True)  # type: ignore[attr-defined]
        process.start()
        there.close()
        try:
            self._listen(here)
        finally:
            process.kill()
            process.join()
            here.close()

    def _listen(self, here: Connection) -> None:
        """Take in messages up to the last, or until something newer is asked for."""
        while not (self._again.is_set() or self._stop.is_set()):
            try:
                if not here.poll(LOOK):
                    continue
                message = here.recv()
            except (EOFError, OSError):
                message = Ended(False, Report(), "the build's process ended")
            self.shown.take(message)
            if isinstance(message, Ended):
                return
