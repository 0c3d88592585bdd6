"""Writes DXF files of several releases with ezdxf, an independent general library, and what ezdxf measures on them.

Usage: samples.py FOLDER. Every line of expected.csv: file, number of the line in it, kind, layer, colour, length and bounds in mm.
"""
import sys

import ezdxf
from ezdxf import colors, disassemble
from ezdxf.math import Vec2

FOLDER = sys.argv[1]
UNITS = {"R12": (None, 1), "R2000": (4, 1), "R2004": (5, 10), "R2007": (1, 25.4), "R2010": (4, 1), "R2013": (6, 1000), "R2018": (13, 0.001)}


def draw(doc, mm):
    new = doc.dxfversion > "AC1009"  # AC1009 is release 12
    k = 1 / mm
    msp = doc.modelspace()
    doc.layers.add("size 10", color=1)
    doc.layers.add("size 12", color=5, linetype="DASHED")
    one, two = {"layer": "size 10"}, {"layer": "size 12", "color": 94}
    msp.add_line((0, 0), (300 * k, 400 * k), dxfattribs=one)
    msp.add_circle((10 * k, -20 * k), 35 * k, dxfattribs=two)
    msp.add_arc((100 * k, 50 * k), 80 * k, 350, 70, dxfattribs=one)
    msp.add_arc((100 * k, 50 * k), 80 * k, 30, 10, dxfattribs=one)
    msp.add_polyline2d([(0, 0, 0.5), (100 * k, 0, -2), (100 * k, 80 * k, 0), (0, 80 * k, 0.001)], format="xyb", close=True, dxfattribs=two)
    msp.add_polyline2d([(5 * k, 5 * k), (25 * k, 9 * k), (40 * k, 44 * k)], dxfattribs=one)
    if new:
        msp.add_lwpolyline([(0, 0, -0.3), (60 * k, 10 * k, 1), (60 * k, 70 * k, 0)], format="xyb", close=True, dxfattribs=one)
        msp.add_lwpolyline([(0, 0, 1e-7), (600 * k, 10 * k, 0.02), (90 * k, 70 * k, 0)], format="xyb", dxfattribs=two)
        msp.add_ellipse((30 * k, 40 * k), (90 * k, 30 * k), 0.4, dxfattribs=one)
        msp.add_ellipse((30 * k, 40 * k), (20 * k, -60 * k), 0.7, 1.0, 4.5, dxfattribs=two)
        msp.add_ellipse((0, 0), (50 * k, 0), 0.5, 5.5, 0.7, dxfattribs={"layer": "size 10", "extrusion": (0, 0, -1)})
        points = [(0, 0, 0), (40 * k, 90 * k, 0), (120 * k, -30 * k, 0), (200 * k, 60 * k, 0), (260 * k, 0, 0), (300 * k, 120 * k, 0)]
        msp.add_open_spline(points, degree=3, dxfattribs=one)
        msp.add_open_spline(points, degree=2, dxfattribs=one)
        msp.add_spline(dxfattribs=two).set_closed(points, degree=3)
        msp.add_spline(dxfattribs=one).set_open_rational(points, [1, 2, 1, 0.5, 3, 1], degree=3)
        msp.add_open_spline(points, degree=5, dxfattribs=two)
        knots = [0, 0, 0, 0, 1, 1, 1, 3, 3, 3, 3]
        spline = msp.add_spline(dxfattribs=one)
        spline.control_points, spline.knots = points + [(340 * k, 100 * k, 0)], knots
        spline.dxf.degree = 3
    pocket = doc.blocks.new("POCKET", base_point=(10 * k, 10 * k))
    pocket.add_line((0, 0), (100 * k, 0))
    pocket.add_arc((50 * k, 0), 50 * k, 0, 180, dxfattribs={"color": 0})
    pair = doc.blocks.new("PAIR")
    pair.add_blockref("POCKET", (0, 0), dxfattribs={"rotation": 30})
    pair.add_blockref("POCKET", (200 * k, 5 * k), dxfattribs={"xscale": -1, "layer": "size 10"})
    msp.add_blockref("POCKET", (7 * k, 9 * k), dxfattribs=two)
    msp.add_blockref("PAIR", (500 * k, -40 * k), dxfattribs={"layer": "size 12", "rotation": 77, "xscale": 1.5, "yscale": 1.5})
    msp.add_blockref("POCKET", (0, 0), dxfattribs={"layer": "size 10", "extrusion": (0, 0, -1), "rotation": 20})
    msp.add_blockref("POCKET", (0, 900 * k), dxfattribs={"column_count": 3, "row_count": 2, "column_spacing": 200 * k, "row_spacing": 150 * k, "rotation": 10})
    msp.add_text("Front \u00e9 10", dxfattribs={"insert": (3 * k, 4 * k), "height": 8 * k, "layer": "size 10"})


def stretches(e, mm):
    """The points of an entity in mm, part by part, by its own formula and not by curves put in its place."""
    if e.dxftype() in ("POLYLINE", "LWPOLYLINE"):
        return [stretch for part in e.virtual_entities() for stretch in stretches(part, mm)]
    if e.dxftype() == "LINE":
        found = [e.dxf.start, e.dxf.end]
    elif e.dxftype() in ("CIRCLE", "ARC"):
        found = e.flattening(1e-4 / mm)
    elif e.dxftype() == "SPLINE":
        found = e.construction_tool().approximate(1500)
    else:
        found = e.flattening(1e-4 / mm, 64)
    return [[Vec2(p) * mm for p in found]]


def expected(doc, name, mm, out):
    number = 0
    for top in doc.modelspace():
        for e in disassemble.recursive_decompose([top]):
            if e.dxftype() in ("TEXT", "POINT"):
                continue
            parts = stretches(e, mm)
            points = [p for part in parts for p in part]
            length = sum(a.distance(b) for part in parts for a, b in zip(part, part[1:]))
            xs, ys = [p.x for p in points], [p.y for p in points]
            layer, colour = "", ""
            if top.dxftype() != "INSERT":
                layer = e.dxf.layer
                colour = e.dxf.color if e.dxf.hasattr("color") else doc.layers.get(layer).color
                r, g, b = colors.int2rgb(colors.DXF_DEFAULT_COLORS[colour])
                colour = f"#{r:02x}{g:02x}{b:02x}"
            out.write(f"{name},{number},{e.dxftype()},{layer},{colour},{length!r},{min(xs)!r},{min(ys)!r},{max(xs)!r},{max(ys)!r}\n")
            number += 1


with open(f"{FOLDER}/expected.csv", "w") as out:
    for version, (units, mm) in UNITS.items():
        doc = ezdxf.new(version, setup=True)
        if units is not None:
            doc.header["$INSUNITS"] = units
        draw(doc, mm)
        doc.saveas(f"{FOLDER}/{version}.dxf")
        expected(doc, f"{version}.dxf", mm, out)
