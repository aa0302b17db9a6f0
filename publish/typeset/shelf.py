"""Everything that an edition's pages may refer to, and nothing else.

In: a layout, drawings as SVG, the designer's own pictures. Out: `Shelf`, which WeasyPrint
asks for each address.
Invariant: no address leads to the network or to a file outside the layout's folders.
"""

from __future__ import annotations

from collections.abc import Mapping
from urllib.parse import unquote

from weasyprint.urls import URLFetcher, URLFetcherResponse

from publish.typeset import fonts, plates
from publish.typeset.layout import Layout
from publish.typeset.pictures import Print

LAYOUT = "layout"
"""Addresses of a layout's own files: `layout:caution.svg`."""
_TYPES = {".svg": "image/svg+xml", ".png": "image/png", ".jpg": "image/jpeg", ".css": "text/css"}


class Shelf(URLFetcher):  # type: ignore[misc]  # WeasyPrint has no types
    """Fonts, drawings, pictures and files of the layout, by address."""

    def __init__(
        self, layout: Layout, drawings: Mapping[str, str], own: Mapping[str, Print]
    ) -> None:
        super().__init__()
        self._layout = layout
        self._fonts = {fonts.address(f): f.path for f in layout.fonts}
        self._drawings = drawings
        self._own = own

    def fetch(self, url: str, headers: Mapping[str, str] | None = None) -> URLFetcherResponse:
        """Return what stands at an address; refuse everything that is not on the shelf."""
        if url in self._fonts:
            return URLFetcherResponse(url, self._fonts[url].read_bytes(), {})
        if url in self._own:
            picture = self._own[url]
            return URLFetcherResponse(url, picture.data, {"Content-Type": picture.kind})
        scheme, _, name = url.partition(":")
        name = unquote(name).lstrip("/")
        if scheme in (plates.FIGURE, plates.SHEET):
            svg = self._drawings[f"{scheme}:{name}"]
            return URLFetcherResponse(url, svg.encode(), {"Content-Type": _TYPES[".svg"]})
        path = self._layout.file(name) if scheme == LAYOUT else None
        if path is None:
            raise ValueError("pages may only use the files of their layout and their figures")
        kind = _TYPES.get(path.suffix, "application/octet-stream")
        return URLFetcherResponse(url, path.read_bytes(), {"Content-Type": kind})
