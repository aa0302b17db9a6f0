"""The reference of codes, and modules that load late. No source: the project's own promise."""

import subprocess
import sys
from pathlib import Path

from publish import proof
from publish.catalogue import titles
from publish.checks import reference

ROOT = Path(__file__).parents[2]


def test_every_code_of_the_proof_has_all_four_parts() -> None:
    assert len(proof.EXPLAINED) > 80
    for code, said in proof.EXPLAINED.items():
        assert all((said.title, said.why, said.wrong, said.right)), code
        assert said.wrong != said.right, code


def test_every_code_stands_in_the_reference_once() -> None:
    text = reference()
    for code in titles():
        headed, row = text.count(f"### {code}\n"), text.count(f"| {code} |")
        assert headed + row == 1, code


def test_the_reference_in_the_folder_is_current() -> None:
    assert (ROOT / "projects" / "CHECKS.md").read_text(encoding="utf-8") == reference()


def test_a_module_put_off_loads_when_it_is_used() -> None:
    program = (
        "import sys; from publish.later import later; later('json.tool', 'colorsys')\n"
        "import colorsys\n"
        "assert 'rgb_to_hsv' not in object.__getattribute__(colorsys, '__dict__')\n"
        "assert colorsys.rgb_to_hsv(1, 1, 1) == (0.0, 0.0, 1)\n"
    )
    subprocess.run([sys.executable, "-c", program], check=True, cwd=ROOT)


def test_checking_loads_neither_pages_nor_their_library() -> None:
    program = (
        "import sys; from publish.cli import main\n"
        "code = main(['check', 'projects/samphire', '--json'])\n"
        "assert code == 0 and 'weasyprint' not in sys.modules, 'weasyprint was loaded'\n"
    )
    done = subprocess.run([sys.executable, "-c", program], cwd=ROOT, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
