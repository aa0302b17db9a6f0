"""Cutting-machine files read back by libraries that know nothing of how they were made.

Sources: SVG 1.1 (W3C, 2011) physical units, read by svgelements; DXF `$INSUNITS` 4 is
millimetres (DXF reference, read by ezdxf); 1 in = 25.4 mm exactly.
"""

import io
from types import SimpleNamespace

import ezdxf
import pytest
import svgelements
from shapely.geometry import MultiPolygon, Point, Polygon

from publish.deliver.machine import LAYERS, machine_files

MM2 = 25.4**2


class Shape:
    """As much of a motif as a cutting machine sees: a ring and a loose leaf, in inches."""

    key = "reed"
    ring = Point(0, 0).buffer(5, 96).difference(Point(0, 0).buffer(1.5, 96))
    leaf = Polygon([(6, 0), (7, 1), (8, 0), (7, -0.5)])
    whole = MultiPolygon([ring, leaf])
    cut_line = MultiPolygon([ring.buffer(0.125), leaf.buffer(0.125)])


OneDraft = SimpleNamespace(size="mini", motifs={"reed": Shape})


@pytest.fixture(scope="module")
def files():
    return machine_files([OneDraft])


def areas():
    return {"finished": Shape.whole.area * MM2, "cut": Shape.cut_line.area * MM2}


def test_svg_read_back_has_the_same_area_and_one_closed_path_for_each_piece(files):
    svg = svgelements.SVG.parse(io.BytesIO(files["cutting/reed-mini.svg"]), ppi=25.4)
    for layer in LAYERS:
        group = svg.get_element_by_id(layer)
        paths = list(group)
        assert len(paths) == 2
        area = 0.0
        for path in paths:
            subpaths = [list(s) for s in path.as_subpaths()]
            assert all(isinstance(s[-1], svgelements.Close) for s in subpaths)
            rings = [Polygon([(p.end.x, p.end.y) for p in s[:-1]]) for s in subpaths]
            area += rings[0].area - sum(r.area for r in rings[1:])
        # ppi 25.4 makes one user unit of the parsed drawing one millimetre on paper
        assert area == pytest.approx(areas()[layer], rel=1e-4)


def test_dxf_read_back_has_the_same_area_and_units(files):
    text = files["cutting/reed-mini.dxf"].decode()
    document = ezdxf.read(io.StringIO(text))
    assert document.header["$INSUNITS"] == 4
    assert not document.audit().has_errors
    for layer in LAYERS:
        lines = document.modelspace().query(f'LWPOLYLINE[layer=="{layer}"]')
        rings = [Polygon([(x, y) for x, y, *_ in line.get_points()]) for line in lines]
        assert all(line.closed for line in lines)
        assert len(rings) == 3
        outer = [r for r in rings if not any(o.contains(r) for o in rings if o is not r)]
        holes = [r for r in rings if r not in outer]
        area = sum(r.area for r in outer) - sum(r.area for r in holes)
        assert area == pytest.approx(areas()[layer], rel=1e-4)


def test_the_same_motif_gives_the_same_bytes(files):
    assert machine_files([OneDraft]) == files


def test_templates_of_patches_have_files_of_their_own():
    template = SimpleNamespace(
        key="template-b",
        finished=Polygon([(0, 0), (3, 0), (0, 2)]),
        cut=Polygon([(-0.25, -0.25), (3.6, -0.25), (-0.25, 2.4)]),
    )
    plan = SimpleNamespace(size="throw", templates=(template,))
    files = machine_files([], [plan])
    assert set(files) == {"cutting/template-b-throw.svg", "cutting/template-b-throw.dxf"}
    document = ezdxf.read(io.StringIO(files["cutting/template-b-throw.dxf"].decode()))
    areas = {
        line.dxf.layer: Polygon([p[:2] for p in line.get_points()]).area / MM2
        for line in document.modelspace()
    }
    assert areas["finished"] == pytest.approx(3.0, rel=1e-4)
    assert areas["cut"] == pytest.approx(template.cut.area, rel=1e-4)
