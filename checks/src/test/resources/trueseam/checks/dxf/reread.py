"""Reads an apparel DXF with ezdxf, an independent general library, and says what it finds.

Usage: reread.py FOLDER. Reads every .dxf of the folder; read.csv has for each block and layer every line and point:
file, block, layer, kind, closed, length, area, bounds. placed.csv has the inserts, audit.csv what ezdxf finds wrong.
"""
import glob
import os
import sys

import ezdxf
from ezdxf.math import Vec2, area

FOLDER = sys.argv[1]
with open(f"{FOLDER}/read.csv", "w") as out, open(f"{FOLDER}/placed.csv", "w") as placed, open(f"{FOLDER}/audit.csv", "w") as audit:
    for file in sorted(glob.glob(f"{FOLDER}/*.dxf")):
        name = os.path.basename(file)
        doc = ezdxf.readfile(file)
        for error in doc.audit().errors:
            audit.write(f"{name},{error.message}\n")
        for insert in doc.modelspace().query("INSERT"):
            placed.write(f"{name},{insert.dxf.name},{insert.dxf.insert.x!r},{insert.dxf.insert.y!r}\n")
        for block in doc.blocks:
            if block.name.startswith("*"):
                continue
            for e in block:
                closed = False
                if e.dxftype() == "POLYLINE":
                    points, closed = [Vec2(v.dxf.location) for v in e.vertices], e.is_closed
                elif e.dxftype() == "LINE":
                    points = [Vec2(e.dxf.start), Vec2(e.dxf.end)]
                elif e.dxftype() == "POINT":
                    points = [Vec2(e.dxf.location)]
                else:
                    points = [Vec2(e.dxf.insert)]
                ring = points + points[:1] if closed else points
                length = sum(a.distance(b) for a, b in zip(ring, ring[1:]))
                xs, ys = [p.x for p in points], [p.y for p in points]
                words = e.dxf.text if e.dxftype() == "TEXT" else ""
                size = abs(area(points)) if closed else 0
                out.write(
                    f"{name}|{block.name}|{e.dxf.layer}|{e.dxftype()}|{closed}|{length!r}|{size!r}|{min(xs)!r}|{min(ys)!r}|{max(xs)!r}|{max(ys)!r}|{words}\n"
                )
