"""Writes bare.pdf: a rectangle of 300 x 380 mm over four sheets that lie 10 mm over each
other and have neither frames nor marks (cairo, Debian: python3-cairo).

    python3 bare.py
"""
import cairo

WIDTH, HEIGHT, OVERLAP, MM = 210, 297, 10, 72 / 25.4

surface = cairo.PDFSurface("bare.pdf", WIDTH * MM, HEIGHT * MM)
for row in range(2):
    for column in range(2):
        c = cairo.Context(surface)
        c.scale(MM, MM)
        c.translate(-column * (WIDTH - OVERLAP), -row * (HEIGHT - OVERLAP))
        c.set_line_width(0.4)
        c.rectangle(30, 30, 300, 380)
        c.stroke()
        surface.show_page()
surface.finish()
