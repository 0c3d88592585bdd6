"""Lists the lines of SVG and PDF files of a folder as chords in mm, y up, read by libraries of other people:
svgelements for SVG, pdfminer for PDF. One row a line: file|page|piece|edge|x y x y ...; of curves 128 chords each."""
import pathlib
import sys

CHORDS = 128
MM = 25.4 / 72


def curve(p, q, r, s):
    for i in range(1, CHORDS + 1):
        t = i / CHORDS
        u = 1 - t
        yield tuple(u**3 * p[k] + 3 * u * u * t * q[k] + 3 * u * t * t * r[k] + t**3 * s[k] for k in (0, 1))


def of_svg(path):
    import svgelements

    # So many dots to the inch make a dot a millimetre.
    drawing = svgelements.SVG.parse(str(path), ppi=25.4)
    for shape in drawing.elements():
        if not isinstance(shape, svgelements.Shape):
            continue
        points = []
        for segment in abs(svgelements.Path(shape)):
            if isinstance(segment, svgelements.Move):
                if len(points) > 1:
                    yield 1, shape, points
                points = [segment.end]
            elif isinstance(segment, (svgelements.Line, svgelements.Close)):
                points.append(segment.end)
            else:
                points.extend(segment.point(i / CHORDS) for i in range(1, CHORDS + 1))
        if len(points) > 1:
            yield 1, shape, [p for p in points if p is not None]


def of_pdf(path):
    from pdfminer.pdfdevice import PDFDevice
    from pdfminer.pdfinterp import PDFPageInterpreter, PDFResourceManager
    from pdfminer.pdfpage import PDFPage

    class Lines(PDFDevice):
        def set_ctm(self, ctm):
            self.ctm = ctm

        def paint_path(self, gstate, stroke, fill, evenodd, path):
            if not stroke:
                return
            a, b, c, d, e, f = self.ctm

            def at(x, y):
                return (a * x + c * y + e) * MM, (b * x + d * y + f) * MM

            points, start = [], None
            for op, *numbers in path:
                ends = [at(*numbers[i : i + 2]) for i in range(0, len(numbers), 2)]
                if op == "m":
                    if len(points) > 1:
                        self.found.append(points)
                    points, start = [ends[0]], ends[0]
                elif op == "l":
                    points.append(ends[0])
                elif op == "c":
                    points.extend(curve(points[-1], *ends))
                elif op == "v":
                    points.extend(curve(points[-1], points[-1], *ends))
                elif op == "y":
                    points.extend(curve(points[-1], ends[0], ends[1], ends[1]))
                elif op == "h":
                    points.append(start)
            if len(points) > 1:
                self.found.append(points)

    resources = PDFResourceManager()
    with open(path, "rb") as file:
        for number, page in enumerate(PDFPage.get_pages(file), 1):
            device = Lines(resources)
            device.found = []
            PDFPageInterpreter(resources, device).process_page(page)
            for points in device.found:
                yield number, None, points


folder = pathlib.Path(sys.argv[1])
with open(folder / "lines.csv", "w") as out:
    for path in sorted(folder.iterdir()):
        if path.suffix == ".svg":
            found, up = of_svg(path), -1
        elif path.suffix == ".pdf":
            found, up = of_pdf(path), 1
        else:
            continue
        for page, shape, points in found:
            values = shape.values if shape is not None else {}
            names = [values.get("data-piece") or "", values.get("data-edge") or ""]
            chords = " ".join(f"{p[0]:.6f} {up * p[1]:.6f}" for p in points)
            out.write("|".join([path.name, str(page), *names, chords]) + "\n")
