#!/usr/bin/python3
"""Reads DXF files with ezdxf, which shares nothing with the program, and tells what
is in them as JSON; or writes a drawing with every entity that the program reads.

    check_dxf.py read FILE      blocks with their layers, texts, boundary areas
    check_dxf.py write FILE     a drawing in mm, and what is in it as JSON
"""
import json
import math
import re
import sys

import ezdxf
from ezdxf.math import Vec2


def area(points):
    return abs(sum(a[0] * b[1] - a[1] * b[0] for a, b in zip(points, points[1:] + points[:1]))) / 2


def letters(text):
    """Text with the letters that R12 has by their numbers."""
    return re.sub(r"\\U\+([0-9A-F]{4})", lambda m: chr(int(m.group(1), 16)), text)


def read(path):
    doc = ezdxf.readfile(path)
    auditor = doc.audit()
    out = {"version": doc.dxfversion, "errors": [e.message for e in auditor.errors], "blocks": [], "style": [],
           "inserts": []}
    for e in doc.modelspace():
        if e.dxftype() == "TEXT":
            out["style"].append(letters(e.dxf.text))
        elif e.dxftype() == "INSERT":
            out["inserts"].append(e.dxf.name)
    for block in doc.blocks:
        if block.name.startswith("*"):
            continue
        one = {"name": block.name, "texts": [], "layers": {}, "areas": {}}
        for e in block:
            layer = e.dxf.layer
            key = layer + " " + e.dxftype()
            one["layers"][key] = one["layers"].get(key, 0) + 1
            if e.dxftype() == "TEXT":
                one["texts"].append(letters(e.dxf.text))
            if e.dxftype() == "POLYLINE" and e.is_closed:
                one["areas"][layer] = area([(v.dxf.location.x, v.dxf.location.y) for v in e.vertices])
        out["blocks"].append(one)
    return out


def frame(msp, x, y, width, height):
    """A rectangle of four lines, in no order, one of them backwards."""
    a, b, c, d = (x, y), (x + width, y), (x + width, y + height), (x, y + height)
    for p, q in ((c, d), (a, b), (c, b), (d, a)):
        msp.add_line(p, q)


def write(path, version):
    doc = ezdxf.new(version)
    doc.header["$INSUNITS"] = 4
    msp = doc.modelspace()
    want = []

    def add(name, x, y, surface):
        msp.add_text(name, dxfattribs={"height": 6, "insert": (x, y)})
        want.append({"name": name, "area": surface})

    frame(msp, 0, 0, 300, 200)
    add("lines", 100, 100, 300 * 200)
    # Half a circle over a line.
    msp.add_arc((700, 0), 100, 0, 180)
    msp.add_line((600, 0), (800, 0))
    add("arc", 690, 30, math.pi * 100 ** 2 / 2)
    msp.add_circle((1000, 100), 80)
    add("circle", 990, 100, math.pi * 80 ** 2)
    old = version == "R12"
    if not old:
        msp.add_ellipse((1400, 100), major_axis=(120, 50), ratio=0.4)
        add("ellipse", 1390, 100, math.pi * 0.4 * (120 ** 2 + 50 ** 2))
        msp.add_lwpolyline([(1800, 0, 0), (2000, 0, 0.5), (2000, 150, 0), (1800, 150, -0.3)], format="xyb", close=True)
        add("bulges", 1890, 60, lens(150, 0.5) - lens(150, 0.3) + 200 * 150)
        spline = msp.add_spline(degree=3)
        spline.set_closed([(2300, 0, 0), (2500, 0, 0), (2550, 180, 0), (2400, 260, 0), (2250, 150, 0)], degree=3)
        add("spline", 2390, 100, flat(spline))
        rational = msp.add_rational_spline([(2900, 0, 0), (3000, 0, 0), (3000, 100, 0)],
                                           weights=[1, math.sqrt(0.5), 1], degree=2, knots=[0, 0, 0, 1, 1, 1])
        msp.add_line((3000, 100), (2900, 100))
        msp.add_line((2900, 100), (2900, 0))
        add("rational", 2920, 60, math.pi * 100 ** 2 / 4)
        assert rational.dxf.degree == 2
    polyline = [(0, 1000), (250, 1000, 0, 0, 0.4), (250, 1100), (0, 1100)]
    msp.add_polyline2d([(p[0], p[1], 0, 0, p[4] if len(p) > 4 else 0) for p in polyline], format="xyseb", close=True)
    add("polyline", 100, 1050, 250 * 100 + lens(100, 0.4))
    # A block in a block, turned, scaled, mirrored and stretched.
    inner = doc.blocks.new("INNER", base_point=(10, 10))
    inner.add_lwpolyline([(10, 10), (110, 10), (110, 60), (10, 60)], close=True) if not old else \
        inner.add_polyline2d([(10, 10), (110, 10), (110, 60), (10, 60)], close=True)
    inner.add_circle((60, 35), 4)
    outer = doc.blocks.new("OUTER")
    outer.add_blockref("INNER", (0, 0), dxfattribs={"xscale": 2, "yscale": 3, "rotation": 30})
    msp.add_blockref("OUTER", (700, 1000), dxfattribs={"xscale": -1, "yscale": 1, "rotation": 45})
    corner = Vec2(100, 75).rotate_deg(30)
    corner = Vec2(-corner.x, corner.y).rotate_deg(45) + Vec2(700, 1000)
    add("insert", corner.x, corner.y, 100 * 50 * 6)
    # A circle that is stretched to an ellipse.
    ring = doc.blocks.new("RING")
    ring.add_circle((0, 0), 50)
    msp.add_blockref("RING", (1400, 1100), dxfattribs={"xscale": 3, "yscale": 1})
    add("stretched", 1390, 1100, math.pi * 50 * 150)
    # Drawn as seen from below.
    msp.add_arc((-1800, 1000), 100, 0, 180, dxfattribs={"extrusion": (0, 0, -1)})
    msp.add_line((1700, 1000), (1900, 1000))
    add("below", 1790, 1030, math.pi * 100 ** 2 / 2)
    doc.saveas(path)
    return want


def lens(chord, bulge):
    """Area between a chord and its arc."""
    angle = 4 * math.atan(bulge)
    radius = chord / 2 / math.sin(angle / 2)
    return radius ** 2 / 2 * (angle - math.sin(angle))


def flat(spline):
    return area([(p.x, p.y) for p in spline.flattening(1e-4, segments=64)])


if __name__ == "__main__":
    if sys.argv[1] == "read":
        print(json.dumps(read(sys.argv[2])))
    else:
        print(json.dumps(write(sys.argv[2], sys.argv[3])))
