"""Patterns built on other machines, through a Dask scheduler.

In: paths, what is asked for, a scheduler's address. Out: an `Outcome` for each pattern.
Invariant: a job carries every file that its pattern names and its result comes back as
bytes, so that no disk is shared; sets are delivered by this machine alone, each once, and
are byte for byte those of a build here, since only machines with the same program, Python
and libraries are given work. A job whose worker is lost is begun again by the scheduler.
"""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from distributed import Client, Future, as_completed

from publish import deliver, read
from publish.inputs import files, program
from publish.kept import Store, users
from publish.notes import Acceptance, Note, PublishError, Report, shown_path
from publish.studio.outcome import ClusterError, Outcome, State
from publish.studio.side_by_side import Asked, Ended, build_one, silent


@dataclass(frozen=True)
class Parcel:
    """A pattern with all it needs, as bytes; names are from the folder that holds them all."""

    top: Path
    """That folder, on this machine."""
    pattern: str
    """The name of the pattern's file."""
    held: Mapping[str, bytes]


@dataclass(frozen=True)
class Returned:
    """What a machine sends back; places are named from the parcel's folder."""

    outcome: Outcome
    held: Mapping[str, bytes]
    """The finished set; empty where none was made."""
    made_from: Mapping[str, str]


def build(
    paths: Sequence[Path], asked: Asked, ended: Ended = silent, *, address: str
) -> tuple[Outcome, ...]:
    """Build patterns on the workers of a scheduler, and deliver their sets here.

    Raises ClusterError where there is no scheduler at the address, where it has no workers,
    or where one of them runs another program than this.
    """
    try:
        client = Client(address, timeout=10)
    except (OSError, ValueError) as problem:
        raise ClusterError(f"there is no scheduler at {address}: {problem}") from problem
    with client:
        _alike(client)
        futures, found = {}, {}
        for path in paths:
            carried = parcel(path)
            if carried is None:
                found[path] = build_one(path, asked)
                ended(found[path])
            else:
                sent = client.submit(build_there, carried, asked, pure=False)
                futures[sent] = path, carried.top
        for future in as_completed(futures):
            path, top = futures[future]
            found[path] = _arrived(path, top, future, asked)
            ended(found[path])
            future.release()
    return tuple(found[path] for path in paths)


def _alike(client: Client) -> None:
    """Raise ClusterError where a worker would not make the bytes that this machine makes."""
    theirs = client.run(program)
    if not theirs:
        raise ClusterError("the scheduler has no workers")
    others = sorted(name for name, digest in theirs.items() if digest != program())
    if others:
        raise ClusterError(
            "these workers run another version of Foldwork, of Python or of a library: "
            + ", ".join(others)
        )


def parcel(path: Path) -> Parcel | None:
    """Return a pattern with every file that it names, those of its studio included; None for
    one that cannot be read, which is soon found wherever it is tried."""
    pattern, _, _ = read.load(path)
    if pattern is None:
        return None
    own = (path / "pattern.yaml" if path.is_dir() else path).resolve()
    needed, studio = [own], read.studio_file(own.parent)
    needed += [] if studio is None else [studio]
    needed += [p for p in files(pattern) if p.is_file()]
    whole = dict.fromkeys(p.resolve() for p in needed)
    top = Path(os.path.commonpath([p.parent for p in whole]))
    held = {p.relative_to(top).as_posix(): p.read_bytes() for p in whole}
    return Parcel(top, own.relative_to(top).as_posix(), held)


def build_there(sent: Parcel, asked: Asked) -> Returned:
    """Build a parcel, on whichever machine this runs."""
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder, "home").resolve()
        for name, data in sent.held.items():
            file = home / name
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_bytes(data)
        store = Store(users(), asked.store.fresh)
        here = replace(asked, out=Path(folder, "out"), store=store)
        outcome = build_one(home / sent.pattern, here)
        made, made_from = {}, {}
        if outcome.target is not None:
            made, made_from = deliver.held(outcome.target), deliver.recorded(outcome.target)
    report = _renamed(outcome.report, lambda file: os.path.relpath(os.path.abspath(file), home))
    return Returned(replace(outcome, report=report, target=None), made, made_from)


def _arrived(path: Path, top: Path, future: Future, asked: Asked) -> Outcome:
    """Return what has become of a pattern, its set delivered."""
    if future.status != "finished":
        said = f"no worker could build it: {future.exception()}"
        return Outcome(path, State.FAILED, Report(), failure=said)
    got: Returned = future.result()
    report = _renamed(got.outcome.report, lambda file: shown_path(top / file))
    outcome = replace(got.outcome, path=path, report=report)
    if not got.held:
        return outcome
    target = asked.out / outcome.key
    try:
        deliver.deliver(target, got.held, got.made_from)
    except PublishError as stopped:
        return replace(outcome, state=State.ERRORS, report=stopped.report)
    return replace(outcome, target=target)


def _renamed(report: Report, name: Callable[[str], str]) -> Report:
    """Return a report whose files have other names."""

    def moved(note: Note) -> Note:
        return replace(note, place=replace(note.place, file=name(note.place.file)))

    def held(reason: Acceptance) -> Acceptance:
        return replace(reason, place=replace(reason.place, file=name(reason.place.file)))

    return Report(
        tuple(map(moved, report.notes)),
        {name(file): text for file, text in report.sources.items()},
        tuple(map(held, report.accepts)),
        tuple((moved(note), held(reason)) for note, reason in report.accepted),
    )
