"""Patterns built on other machines: a scheduler and two workers of this machine stand for them."""

import os
import signal
import threading
import time
from pathlib import Path

import pytest
from houses import NAMES, changed, house

from publish import cli
from publish.deliver import held
from publish.studio.outcome import State

distributed = pytest.importorskip(
    "distributed", reason="`pip install foldwork[cluster]` builds on a local cluster"
)
if distributed:
    from publish.studio import cluster
    from publish.studio.side_by_side import Asked, build


@pytest.fixture
def workers():
    """Yield a cluster of two worker processes, which are begun again when they end."""
    with distributed.LocalCluster(
        n_workers=2, threads_per_worker=1, dashboard_address=None, host="127.0.0.1"
    ) as made:
        yield made


def kill_one_at_work(address, begun):
    """Kill a worker in the middle of a job."""
    with distributed.Client(address) as client:
        end = time.monotonic() + 60
        while not (busy := [w for w, jobs in client.processing().items() if jobs]):
            assert time.monotonic() < end
            time.sleep(0.05)
        time.sleep(1)
        pids = client.run(os.getpid)
        begun.append(pids[busy[0]])
        os.kill(pids[busy[0]], signal.SIGKILL)


@pytest.mark.thorough
def test_a_worker_killed_in_the_middle_changes_nothing(tmp_path, workers):
    folders = house(tmp_path)
    paths = [folder / "pattern.yaml" for folder in folders]
    here = Asked(tmp_path / "here", only="templates")
    there = Asked(tmp_path / "there", only="templates")
    address, killed, seen = workers.scheduler_address, [], []
    thread = threading.Thread(target=kill_one_at_work, args=(address, killed))
    thread.start()
    outcomes = cluster.build(paths, there, seen.append, address=address)
    thread.join()
    assert len(killed) == 1
    assert [o.state for o in outcomes] == [State.BUILT] * 3
    assert sorted(o.key for o in seen) == sorted(NAMES), "nothing lost, nothing twice"
    build(paths, here, 1)
    for name in NAMES:
        assert held(there.out / name) == held(here.out / name)
        manifest = [(asked.out / name / "manifest.json").read_bytes() for asked in (here, there)]
        assert manifest[0] == manifest[1]


def test_findings_point_into_the_files_of_this_machine(tmp_path, workers, monkeypatch):
    folders = house(tmp_path, NAMES[:1])
    changed(folders[0], "motif_size: 7 in", "motif_size: 1/2 in")
    monkeypatch.chdir(tmp_path)
    paths = [Path(NAMES[0], "pattern.yaml")]
    asked = Asked(Path("out"))
    (there,) = cluster.build(paths, asked, address=workers.scheduler_address)
    (here,) = build(paths, asked, 1)
    assert there.state is State.ERRORS and there.report == here.report
    assert there.report.sources == here.report.sources and not Path("out").exists()


def test_what_cannot_do_the_work_is_said(tmp_path, monkeypatch, capsys):
    (folder,) = house(tmp_path, NAMES[:1])
    with distributed.LocalCluster(
        n_workers=1, threads_per_worker=1, dashboard_address=None, processes=False
    ) as made:
        asked = ["build", str(folder), "--out", str(tmp_path / "out"), "--cluster"]
        address = made.scheduler_address
        monkeypatch.setattr(cluster, "program", lambda: str(id(threading.current_thread())))
        assert cli.main([*asked, address]) == cli.USAGE
    assert "another version of Foldwork" in capsys.readouterr().err
    assert cli.main([*asked, "tcp://127.0.0.1:1"]) == cli.USAGE
    assert "no scheduler at tcp://127.0.0.1:1" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()
