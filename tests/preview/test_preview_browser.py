"""The page in a real browser: headless Chromium, where the system has one."""

import shutil

import pytest
from stand_ins import until

CHROMIUM = next(
    filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None
)


@pytest.fixture
def page(served):
    """Yield what watches and the page, opened."""
    if CHROMIUM is None:
        pytest.skip("no Chromium on this system: the page is not seen in a browser")
    playwright = pytest.importorskip(
        "playwright.sync_api", reason="`pip install foldwork[browser]` opens the page in Chromium"
    )
    watching, get = served
    with playwright.sync_playwright() as engine:
        browser = engine.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        opened = browser.new_page(viewport={"width": 900, "height": 400})
        faults = []
        opened.on("pageerror", lambda fault: faults.append(fault))
        opened.goto(get.address)
        yield watching, opened
        assert not faults
        browser.close()


def test_a_reader_keeps_her_place_and_sees_what_changed(page):
    watching, opened = page
    until(lambda: opened.locator(".leaf img").count() == 3)
    until(lambda: "Up to date" in opened.text_content("#state"))
    assert "type is small" in opened.text_content("#page-2 .note")
    opened.evaluate("document.getElementById('page-3').scrollIntoView()")
    place = opened.evaluate("document.getElementById('pages').scrollTop")
    picture = opened.get_attribute("#page-1 img", "src")

    watching.shown.path.write_text("title: 0.2 0.4 0.8", encoding="utf-8")
    opened.wait_for_selector("#page-2.new")
    assert opened.locator(".leaf.new").count() == 1
    assert opened.evaluate("document.getElementById('pages').scrollTop") == place > 0
    assert opened.get_attribute("#page-1 img", "src") == picture
    opened.click("#changed button")
    assert opened.evaluate("document.getElementById('pages').scrollTop") < place


def test_a_finding_is_text_and_the_pages_stay(page):
    watching, opened = page
    until(lambda: opened.locator(".leaf img").count() == 3)
    watching.shown.path.write_text("title: broken", encoding="utf-8")
    opened.wait_for_selector("li.error")
    assert "it is <broken>" in opened.text_content("li.error")
    assert opened.text_content("li.error pre") == "1  title: broken"
    assert opened.locator(".leaf img").count() == 3


def test_a_size_is_chosen(page):
    watching, opened = page
    opened.wait_for_selector("select[name=size]")
    opened.select_option("select[name=size]", "mini")
    until(lambda: watching.shown.choice.size == "mini")
    assert opened.input_value("select[name=size]") == "mini"
