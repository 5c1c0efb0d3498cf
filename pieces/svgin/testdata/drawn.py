#!/usr/bin/python3
"""Draws a sleeve, a pocket, a patch and a grainline, whose sizes drawn_test.go
knows, with cairo and with inkscape, as SVG and as PDF. The files were written once
and are kept; run it in this folder to write them anew."""
import subprocess

import cairo

MM = 72 / 25.4  # points


def sleeve(c):
    """300 mm wide, 400 high; its head is one Bezier curve, its sides are straight."""
    c.move_to(60, 20)
    c.line_to(260, 20)
    c.line_to(310, 320)
    c.curve_to(250, 320, 230, 440, 160, 440)
    c.curve_to(90, 440, 70, 320, 10, 320)
    c.close_path()


def draw(c):
    c.scale(MM, MM)
    c.translate(0, 500)  # y up
    c.scale(1, -1)
    c.set_line_width(0.5)
    sleeve(c)
    c.stroke()
    c.save()  # a pocket of 120 by 140 mm, turned by 30 degrees
    c.translate(450, 100)
    c.rotate(0.5235987755982988)
    c.rectangle(0, 0, 120, 140)
    c.restore()
    c.stroke()
    c.arc(450, 380, 60, 0, 6.283185307179586)  # a patch, 120 mm across
    c.close_path()
    c.stroke()
    c.set_dash([6, 2])
    c.move_to(160, 60)
    c.line_to(160, 260)
    c.stroke()


for surface in (cairo.SVGSurface("cairo.svg", 600 * MM, 500 * MM), cairo.PDFSurface(
        "../../pdfin/testdata/cairo.pdf", 600 * MM, 500 * MM)):
    if isinstance(surface, cairo.SVGSurface):
        surface.set_document_unit(cairo.SVGUnit.PT)
    draw(cairo.Context(surface))
    surface.finish()

PLAIN = """<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="500mm" viewBox="0 0 600 500">
<g id="pieces" fill="none" stroke="black" stroke-width="0.5" transform="matrix(1 0 0 -1 0 500)">
<path id="sleeve" d="M60 20 260 20 310 320C250 320 230 440 160 440S70 320 10 320Z"/>
<rect id="pocket" width="120" height="140" transform="translate(450 100) rotate(30)"/>
<circle id="patch" cx="450" cy="380" r="60"/>
<line id="grain" x1="160" y1="60" x2="160" y2="260"/>
</g></svg>
"""
with open("/tmp/plain.svg", "w", encoding="utf-8") as out:
    out.write(PLAIN)
ACTIONS = "select-all:all;object-to-path;select-clear;"
subprocess.run(["inkscape", "/tmp/plain.svg", "--actions=" + ACTIONS + "export-filename:inkscape.svg;export-do"], check=True)
subprocess.run(["inkscape", "/tmp/plain.svg", "--export-filename=../../pdfin/testdata/inkscape.pdf"], check=True)
