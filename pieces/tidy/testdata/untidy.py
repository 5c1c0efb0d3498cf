#!/usr/bin/python3
"""Writes two patterns as people sell them, of shapes that tidy_test.go knows.

untidy.pdf: a page of instructions, then six sheets with frames and no numbers. The
outlines are cut at every frame. Front skirt in three sizes: the largest is one line, of
the others only side and waist are drawn, since they share hem and centre front with it;
their dashes are strokes of their own. A pocket lies over the skirt. Words are outlines.

layered.pdf: four sheets with trim marks at their corners, 10 mm over each other, each
with a label; the whole pattern is drawn on each and clipped. The sizes are layers.

The files were written once and are kept; run it in this folder to write them anew."""
import math

POINT = 72 / 25.4


def bezier(p, steps=400):
    out = []
    for i in range(steps + 1):
        t, s = i / steps, 1 - i / steps
        out.append(tuple(s**3 * a + 3 * s * s * t * b + 3 * s * t * t * c + t**3 * d for a, b, c, d in zip(*p)))
    return out


def side_and_waist(size):
    """From the hem up the side and along the waist to the centre front."""
    k = (size - 10) / 2
    w, h = 200 + 15 * k, 430 + 6 * k
    return [((w, 20), (w, 200), (w + 5, 330), (w - 25, h)), ((w - 25, h), (w - 90, h - 8), (70, h - 10), (20, h - 10))]


def skirt(size):
    a, b = side_and_waist(size)
    return bezier(a) + bezier(b)[1:] + [(20, 20), a[0]]


POCKET = [(150, 300), (270, 300), (270, 440), (150, 440), (150, 300)]
SLEEVE = [((330, 120), (380, 60), (480, 60), (540, 120)), ((540, 120), (500, 250), (470, 400), (435, 400)),
          ((435, 400), (400, 400), (370, 250), (330, 120))]


def sleeve():
    return bezier(SLEEVE[0]) + bezier(SLEEVE[1])[1:] + bezier(SLEEVE[2])[1:]


def strokes(line, pattern):
    """Cuts a line into the strokes of a pattern."""
    out, current, index, left = [], [line[0]], 0, pattern[0]
    for a, b in zip(line, line[1:]):
        length = math.dist(a, b)
        at = 0.0
        while length - at > left:
            at += left
            p = (a[0] + (b[0] - a[0]) * at / length, a[1] + (b[1] - a[1]) * at / length)
            if index % 2 == 0:
                out.append(current + [p])
            index += 1
            left, current = pattern[index % len(pattern)], [p]
        left -= length - at
        current.append(b)
    if index % 2 == 0 and len(current) > 1:
        out.append(current)
    return out


def clipped(line, box):
    """The parts of a line in a box."""
    out, current = [], []
    for a, b in zip(line, line[1:]):
        t0, t1 = 0.0, 1.0
        for i in (0, 1):
            d = b[i] - a[i]
            if d == 0:
                if not box[i] <= a[i] <= box[i + 2]:
                    t0, t1 = 1.0, 0.0
                continue
            u, v = (box[i] - a[i]) / d, (box[i + 2] - a[i]) / d
            t0, t1 = max(t0, min(u, v)), min(t1, max(u, v))
        if t0 >= t1:
            if len(current) > 1:
                out.append(current)
            current = []
            continue
        p, q = (tuple(a[i] + (b[i] - a[i]) * t for i in (0, 1)) for t in (t0, t1))
        if not current:
            current = [p]
        elif math.dist(current[-1], p) > 1e-9:
            out.append(current)
            current = [p]
        current.append(q)
    if len(current) > 1:
        out.append(current)
    return out


def thinned(line):
    """As many points as keep within 0.002 mm."""
    (ax, ay), (bx, by) = line[0], line[-1]
    length = math.hypot(bx - ax, by - ay)
    far, at = 0.0, 0
    for i, (x, y) in enumerate(line[1:-1], 1):
        d = abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / length if length else math.hypot(x - ax, y - ay)
        if d > far:
            far, at = d, i
    if far <= 0.002:
        return [line[0], line[-1]]
    return thinned(line[:at + 1])[:-1] + thinned(line[at:])


def path(line, dx=0.0, dy=0.0, paint="S"):
    text = " ".join(f"{(x + dx) * POINT:.3f} {(y + dy) * POINT:.3f} {'l' if i else 'm'}" for i, (x, y) in enumerate(line))
    return f"{text} {paint}\n"


def letter(x, y):
    """An L of 6 mm, drawn as an outline and filled."""
    return path([(x, y), (x + 4, y), (x + 4, y + 1), (x + 1, y + 1), (x + 1, y + 6), (x, y + 6)], paint="h f")


def words(text, x, y, size):
    return f"BT /F {size} Tf {x * POINT:.3f} {y * POINT:.3f} Td ({text}) Tj ET\n"


def write(name, contents, layers=()):
    objects = []
    n = len(contents)
    first = 3 + 2 * n  # the font, then the layers
    names = [f"{first + 1 + i} 0 R" for i in range(len(layers))]
    optional = f"/OCProperties<</OCGs[{' '.join(names)}]/D<</Order[{' '.join(names)}]>>>>" if layers else ""
    objects.append(f"<</Type/Catalog/Pages 2 0 R{optional}>>")
    objects.append(f"<</Type/Pages/Kids[{' '.join(f'{3 + 2 * i} 0 R' for i in range(n))}]/Count {n}>>")
    properties = "/Properties<<" + "".join(f"/L{i} {r}" for i, r in enumerate(names)) + ">>" if layers else ""
    for i, content in enumerate(contents):
        objects.append(f"<</Type/Page/Parent 2 0 R/MediaBox[0 0 {210 * POINT:.3f} {297 * POINT:.3f}]/Contents {4 + 2 * i} 0 R"
                       f"/Resources<</Font<</F {first} 0 R>>{properties}>>>>")
        objects.append(f"<</Length {len(content)}>>\nstream\n{content}endstream")
    objects.append("<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>")
    objects += [f"<</Type/OCG/Name({layer})>>" for layer in layers]
    out, at = "%PDF-1.5\n", []
    for i, o in enumerate(objects, 1):
        at.append(len(out))
        out += f"{i} 0 obj\n{o}\nendobj\n"
    start = len(out)
    out += f"xref\n0 {len(objects) + 1}\n0000000000 65535 f \n" + "".join(f"{a:010d} 00000 n \n" for a in at)
    out += f"trailer\n<</Size {len(objects) + 1}/Root 1 0 R>>\nstartxref\n{start}\n%%EOF\n"
    with open(name, "w", encoding="latin-1", newline="\n") as file:
        file.write(out)


def untidy():
    solid, fine, heavy = "0.85 w 0 G\n", "0.85 w 0 0 1 RG\n", "2.5 w 0 G\n"
    lines = [(solid, skirt(14)), (solid, sleeve()), (heavy, POCKET)]
    for size, pen, pattern in ((12, solid, (6, 2.5)), (10, fine, (3, 2))):
        a, b = side_and_waist(size)
        lines += [(pen, stroke) for stroke in strokes(bezier(a) + bezier(b)[1:], pattern)]
    width, height, left, bottom = 190, 270, 10, 13
    first = "0.85 w 0 G\n" + path([(20, 150), (120, 150), (120, 250), (20, 250)], paint="s")
    first += words("Test square 10 cm", 40, 200, 11) + words("Skirt and sleeve, sizes 10 to 14", 20, 270, 16)
    contents = [first]
    for row in (1, 0):
        for column in range(3):
            box = (column * width, row * height, (column + 1) * width, (row + 1) * height)
            content = "0.3 w 0.4 G\n" + path([(left, bottom), (left + width, bottom), (left + width, bottom + height),
                                              (left, bottom + height)], paint="s")
            for pen, line in lines:
                for part in clipped(line, box):
                    content += pen + path(thinned(part), left - box[0], bottom - box[1])
            contents.append(content + "0 g\n" + letter(100, 280) + letter(60, 60))
    write("untidy.pdf", contents)


def curves(segments, dx, dy):
    def at(p):
        return f"{(p[0] + dx) * POINT:.3f} {(p[1] + dy) * POINT:.3f}"
    text = at(segments[0][0]) + " m "
    for s in segments:
        text += f"{at(s[1])} {at(s[2])} {at(s[3])} c "
    return text


def layered():
    sizes = (10, 12, 14)
    width, height, overlap, left, bottom = 190, 260, 10, 10, 18
    contents = []
    for row in range(2):
        for column in range(2):
            dx, dy = left - column * (width - overlap), bottom - (1 - row) * (height - overlap)
            content = words(f"{'AB'[row]}{column + 1}", 100, 285, 20) + "0.3 w 0 G\n"
            for x in (left, left + width):
                for y in (bottom, bottom + height):
                    content += path([(x - 4, y), (x + 4, y)]) + path([(x, y - 4), (x, y + 4)])
            content += f"q {left * POINT:.3f} {bottom * POINT:.3f} {width * POINT:.3f} {height * POINT:.3f} re W n\n"
            for i, size in enumerate(sizes):
                k = (size - 10) / 2
                content += f"/OC /L{i} BDC 0.85 w 0 G [] 0 d\n" + curves(side_and_waist(size), dx, dy)
                content += f"{(20 + dx) * POINT:.3f} {(20 + dy) * POINT:.3f} l s EMC\n"
            content += "Q\n"
            contents.append(content)
    write("layered.pdf", contents, [f"Size {s}" for s in sizes])


untidy()
layered()
