"""A page that is served as it is for a designer, with builds that take no time."""

import threading
import urllib.request

import pytest
import stand_ins

from publish import preview
from publish.preview.service import Guarded, application, server


@pytest.fixture
def served(tmp_path):
    """Yield what watches and how to get an answer of its page, until the test is over."""
    path = tmp_path / "pattern.yaml"
    path.write_text("title: 0.2 0.5 0.8", encoding="utf-8")
    listener = preview.listening(0)
    port = listener.getsockname()[1]
    with preview.Watching(preview.Shown(path), stand_ins.work) as watching:
        service = server(Guarded(application(watching), port))
        thread = threading.Thread(target=service.run, kwargs={"sockets": [listener]})
        thread.start()
        stand_ins.until(lambda: service.started)

        def get(name, data=None, **headers):
            asked = urllib.request.Request(
                f"{preview.address(listener)}{name}",
                data=data,
                headers={k.replace("_", "-"): v for k, v in headers.items()},
            )
            with urllib.request.urlopen(asked, timeout=10) as answer:
                get.answered = answer.headers
                return answer.headers["Content-Type"], answer.read()

        get.port, get.address = port, preview.address(listener)
        yield watching, get
        service.should_exit = True
        thread.join(20)
    listener.close()
