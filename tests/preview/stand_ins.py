"""Builds that take no time, for tests of the page: what they tell is what is asked of it."""

import io
import time

import pikepdf

from publish.notes import Place, Report, error, warning
from publish.preview.building import Doing, Ended, Offer, picture

OFFER = Offer((("letter", "Letter"),), (("mini", "Mini"),), (("tideline", "Tideline"),))


def pdf(*shades):
    """Return a PDF with a page of each shade of grey."""
    made = pikepdf.Pdf.new()
    for shade in shades:
        page = made.add_blank_page(page_size=(200, 300))
        page.Contents = made.make_stream(f"{shade} g 20 20 160 260 re f".encode())
    file = io.BytesIO()
    made.save(file)
    return file.getvalue()


def work(pipe, path, choice, known):
    """Show a page for each number in the pattern's text; `slow`, `broken` and `gone` are done."""
    text = path.read_text(encoding="utf-8")
    pipe.send(Doing(f"read: {path.name}", OFFER))
    if "slow" in text:
        time.sleep(600)
    if "gone" in text:
        raise SystemExit(3)
    if "broken" in text:
        note = error("R1", Place(str(path), 1, 1, "title"), "it is <broken>")
        pipe.send(Ended(False, Report().plus((note,), {str(path): text})))
    elif "fault" in text:
        pipe.send(Ended(False, Report(), "LookupError: unknown <encoding>"))
    else:
        note = warning("P891", Place(str(path), 1, 1), "type is small", page=2)
        picture(pipe.send, pdf(*text.split()[1:]), known)
        pipe.send(Ended(True, Report().plus((note,), {str(path): text})))


def until(true):
    """Wait for what a build brings; one save can bring several, as its files are written."""
    end = time.monotonic() + 60
    while not true():
        assert time.monotonic() < end, "no build came"
        time.sleep(0.02)
