"""The first minutes of a stranger: setting up, the lock, the README's own words.

The setup is run with stand-ins for Python, pip and apt-get, so that nothing is fetched:
what is tried is when it installs, what it says, and that an interruption is made good.
"""

import json
import os
import re
import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from publish.cli import main

ROOT = Path(__file__).parents[1]
TOOLS = ("sh", "env", "dirname", "uname", "rm", "touch", "cat", "mkdir", "cp", "chmod", "mv")

PYTHON = """#!/bin/sh
# Stands in for Python: does what the setup asks, as the files in $STATE say.
echo "$(basename "$0") $*" >>"$STATE/log"
case "$*" in
--version) echo "Python 3.11.0" ;;
*version_info\\ \\<*) [ ! -e "$STATE/old" ] ;;
*version_info\\[*) echo python3.11 ;;
*ensurepip*) [ ! -e "$STATE/no-venv" ] ;;
-) cat >/dev/null; [ ! -e "$STATE/no-libraries" ] ;;
*"-m venv --clear"*) rm -rf .venv; mkdir -p .venv/bin; cp "$0" .venv/bin/python ;;
*" install "*) [ ! -e "$STATE/no-network" ] ;;
esac
"""
APT = """#!/bin/sh
echo "apt-get $*" >>"$STATE/log"
case "$*" in *update*) exit 0 ;; esac
rm -f "$STATE/no-libraries" "$STATE/no-venv"
"""


class Machine:
    """A folder with the project's setup in it, and a machine on which only stand-ins are."""

    def __init__(self, folder: Path, user: int = 0) -> None:
        self.home, self.bin, self.state = folder / "foldwork", folder / "bin", folder / "state"
        for place in (self.home / ".ci", self.bin, self.state):
            place.mkdir(parents=True)
        for name in (".ci/setup", "requirements.lock", "pyproject.toml", "Makefile"):
            shutil.copy(ROOT / name, self.home / name)
        for tool in (*TOOLS, "basename", "make"):
            found = shutil.which(tool)
            if found:
                (self.bin / tool).symlink_to(found)
        self.add("id", f"#!/bin/sh\necho {user}\n")

    def add(self, name: str, script: str = PYTHON) -> None:
        (self.bin / name).write_text(script)
        (self.bin / name).chmod(0o755)

    def lacks(self, *things: str) -> None:
        for thing in things:
            (self.state / thing).touch()

    def run(self, *command: str) -> subprocess.CompletedProcess[str]:
        surroundings = {"PATH": str(self.bin), "STATE": str(self.state)}
        return subprocess.run(
            command or ("sh", ".ci/setup"),
            cwd=self.home,
            env=surroundings,
            check=False,
            capture_output=True,
            text=True,
            timeout=60,
        )

    @property
    def log(self) -> str:
        log = self.state / "log"
        return log.read_text() if log.exists() else ""

    @property
    def ready(self) -> bool:
        return (self.home / ".venv" / ".ready").exists()


@pytest.fixture
def machine(tmp_path: Path) -> Machine:
    return Machine(tmp_path)


posix = pytest.mark.skipif(os.name != "posix", reason="the setup is a shell script")


@posix
def test_a_whole_machine_is_set_up_once(machine: Machine) -> None:
    machine.add("python3")
    assert machine.run().returncode == 0
    assert machine.ready
    assert (machine.home / ".venv/.ready").read_text().strip() == str(machine.home.resolve())
    assert machine.log.count("venv --clear") == 1
    assert "--require-hashes" in machine.log and "--only-binary :all:" in machine.log
    assert machine.run().returncode == 0
    assert machine.log.count("venv --clear") == 1, "a .venv that works is kept"


@posix
@pytest.mark.parametrize("name", ["python3.11", "python3.13"])
def test_a_newer_python_beside_an_old_one_is_found(machine: Machine, name: str) -> None:
    machine.add("python3", "#!/bin/sh\nexit 1\n")
    machine.add(name)
    assert machine.run().returncode == 0
    assert f"{name} -m venv" in machine.log


@posix
def test_an_interrupted_setup_begins_again(machine: Machine) -> None:
    machine.add("python3")
    machine.lacks("no-network")
    stopped = machine.run()
    assert stopped.returncode == 1 and not machine.ready
    assert "could not be installed" in stopped.stderr
    (machine.state / "no-network").unlink()
    assert machine.run().returncode == 0 and machine.ready
    assert machine.log.count("venv --clear") == 2


@posix
@pytest.mark.parametrize("missing", ["python", "libraries"])
def test_one_line_names_what_is_missing(tmp_path: Path, missing: str) -> None:
    machine = Machine(tmp_path, user=1000)
    if missing == "libraries":
        machine.add("python3")
        machine.lacks("no-libraries")
    stopped = machine.run()
    assert stopped.returncode == 1 and not machine.ready
    (line,) = stopped.stderr.splitlines()
    for words in ("sudo apt-get install", "libpango-1.0-0", "brew install", "pango", "Windows"):
        assert words in line


@posix
@pytest.mark.parametrize(
    ("lacks", "wanted"),
    [("no-libraries", "libpango-1.0-0 libpangoft2-1.0-0"), ("no-venv", "python3.11-venv")],
)
def test_root_has_it_installed(machine: Machine, lacks: str, wanted: str) -> None:
    machine.add("python3")
    machine.add("apt-get", APT)
    machine.lacks(lacks)
    assert machine.run().returncode == 0, machine.log
    (line,) = [x for x in machine.log.splitlines() if x.startswith("apt-get")]
    assert " install " in line and wanted in line


@posix
def test_a_user_who_must_type_a_password_is_told_instead(tmp_path: Path) -> None:
    machine = Machine(tmp_path, user=1000)
    machine.add("python3")
    machine.add("apt-get", APT)
    machine.add("sudo", "#!/bin/sh\nexit 1\n")
    machine.lacks("no-libraries")
    assert machine.run().returncode == 1
    assert "apt-get " not in machine.log


@posix
@pytest.mark.skipif(shutil.which("make") is None, reason="needs make")
def test_make_sets_up_when_it_must_and_not_again(machine: Machine) -> None:
    machine.add("python3")
    assert machine.run("make", "setup").returncode == 0
    before = machine.log
    assert machine.run("make", "setup").returncode == 0
    assert machine.log == before, "the second run does nothing"
    later = (machine.home / ".venv/.ready").stat().st_mtime + 5
    os.utime(machine.home / "requirements.lock", (later, later))
    machine.run("make", "setup")
    assert len(machine.log) > len(before), "another lock is installed"
    before = machine.log
    moved = machine.home.rename(machine.home.with_name("moved"))
    machine.home = moved
    assert machine.run("make", "setup").returncode == 0
    assert len(machine.log) > len(before), "a folder that was moved is set up again"
    assert (moved / ".venv/.ready").read_text().strip() == str(moved.resolve())


def pins() -> dict[str, list[str]]:
    """Return the versions of each package in the lock."""
    found: dict[str, list[str]] = {}
    for name, version in re.findall(
        r"^([\w.-]+)==([^\s;\\]+)", (ROOT / "requirements.lock").read_text(), re.MULTILINE
    ):
        found.setdefault(canonicalize_name(name), []).append(version)
    return found


def test_every_pin_has_hashes_and_no_address() -> None:
    text = (ROOT / "requirements.lock").read_text()
    blocks = re.split(r"\n(?=\S)", text.strip())
    assert all(re.search(r"--hash=sha256:[0-9a-f]{64}", block) for block in blocks)
    assert not re.search(r"://|--(extra-)?index|file:|/\w+/", text)


def test_the_lock_holds_what_the_project_asks_for() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
    asked = [*project["dependencies"], *project["optional-dependencies"]["dev"]]
    locked = pins()
    for text in asked:
        wanted = Requirement(text)
        versions = locked.get(canonicalize_name(wanted.name), [])
        assert versions and all(v in wanted.specifier for v in versions), f"run make lock: {text}"


def test_help_is_instant() -> None:
    script = "import sys, publish.cli; print(*sys.modules)"
    loaded = subprocess.run(
        [sys.executable, "-c", script], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout.split()
    assert not {"shapely", "weasyprint", "numpy", "yaml", "rich"} & set(loaded)


def readme(language: str) -> list[str]:
    return re.findall(rf"```{language}\n(.*?)```", (ROOT / "README.md").read_text(), re.DOTALL)


def test_the_readmes_make_commands_exist() -> None:
    targets = set(re.findall(r"^(\w+):", (ROOT / "Makefile").read_text(), re.MULTILINE))
    named = set(re.findall(r"^make (\w+)", readme("sh")[0], re.MULTILINE))
    assert named == {"booklet", "test"} and named <= targets


def test_the_readmes_pattern_is_clean(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = tmp_path / "bulrush"
    assert main(["new", str(folder)]) == 0
    yaml, studio = readme("yaml")
    (tmp_path / "studio.yaml").write_text(studio)
    (tmp_path / "logo.svg").write_text((folder / "bulrush.svg").read_text())
    assert len(yaml.splitlines()) == 10
    (folder / "pattern.yaml").write_text(yaml)
    capsys.readouterr()
    code = main(["check", str(folder), "--json"])
    found = json.loads(capsys.readouterr().out)["findings"]
    assert (code, {f["code"] for f in found}) == (0, {"W504", "P854"}), (
        "but for the licence and the stock number"
    )


def test_what_new_writes_is_clean_and_never_overwrites(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = tmp_path / "sea lavender"
    assert main(["new", str(folder)]) == 0
    capsys.readouterr()
    assert main(["check", str(folder), "--json"]) == 0
    found = json.loads(capsys.readouterr().out)["findings"]
    assert {f["code"] for f in found} <= {"W504", "W505", "P854"}, (
        "but for the designer's own words"
    )
    assert main(["new", str(folder)]) == 2
