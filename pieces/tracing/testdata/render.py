"""Renders pictures of paper pieces whose outlines are known, for the tests of tracing.

The camera, its lens and the pixels are those of OpenCV (Debian: python3-opencv), so that
the tracer is not checked against itself. A scene is one line of JSON on the standard
input; for each the picture is written, and beside it the true outlines.

    python3 render.py FOLDER < scenes.jsonl
"""
import json
import sys

import cv2
import numpy as np

FINE = 6  # subpixels a pixel, each way

# Albedos, 0 to 255, blue, green and red.
COLOURS = {
    "table": (60, 72, 84), "mat": (74, 84, 40), "line": (150, 168, 130), "paper": (222, 232, 236),
    "kraft": (110, 150, 186), "squared": (236, 238, 238), "squares": (190, 160, 140), "dark": (70, 60, 62),
    "cloth": (58, 50, 46),
}


def bezier(p0, p1, p2, p3, n=80):
    t = np.linspace(0, 1, n + 1)[:, None]
    p0, p1, p2, p3 = (np.array(p, float) for p in (p0, p1, p2, p3))
    return (1 - t) ** 3 * p0 + 3 * (1 - t) ** 2 * t * p1 + 3 * (1 - t) * t ** 2 * p2 + t ** 3 * p3


def outline(parts):
    """Dense points of a chain of lines (2 points) and curves (4), counter-clockwise, and its corners."""
    points = []
    for part in parts:
        part = np.array(part, float)
        points.append(bezier(*part)[:-1] if len(part) == 4 else part[:1])
    return np.concatenate(points), np.array([p[0] for p in parts], float)


PIECES = {
    # A skirt front, 600 mm long.
    "skirt": outline([
        [(0, 0), (60, 0), (160, 4), (230, 14)], [(230, 14), (232, 160), (228, 300), (216, 420)],
        [(216, 420), (206, 500), (190, 560), (168, 604)],
        [(168, 604), (110, 594), (50, 590), (0, 590)], [(0, 590), (0, 0)]]),
    # A bodice front with neck and armhole.
    "bodice": outline([
        [(0, 0), (210, 0)], [(210, 0), (222, 190)], [(222, 190), (170, 195), (150, 250), (165, 370)],
        [(165, 370), (68, 405)], [(68, 405), (68, 350), (40, 320), (0, 315)], [(0, 315), (0, 0)]]),
    # A sleeve, smooth over its head.
    "sleeve": outline([
        [(0, 0), (260, 0)], [(260, 0), (310, 330)],
        [(310, 330), (240, 360), (215, 470), (150, 470)], [(150, 470), (85, 470), (60, 360), (-20, 330)],
        [(-20, 330), (0, 0)]]),
    "pocket": outline([
        [(0, 40), (0, 20), (20, 0), (70, 0)], [(70, 0), (120, 0), (140, 20), (140, 40)],
        [(140, 40), (140, 160)], [(140, 160), (0, 160)], [(0, 160), (0, 40)]]),
    "gore": outline([[(0, 0), (150, 0)], [(150, 0), (75, 420)], [(75, 420), (0, 0)]]),
}
# Where the direction does not turn at the end of a part.
SMOOTH = {"skirt": [2], "sleeve": [3], "pocket": [0, 1, 2]}


def turned(points, degrees, by):
    a = np.radians(degrees)
    return points @ np.array([[np.cos(a), np.sin(a)], [-np.sin(a), np.cos(a)]]) + np.array(by, float)


def rectangle(w, h):
    corners = np.array([(0, 0), (w, 0), (w, h), (0, h)], float)
    return np.concatenate([np.linspace(corners[i], corners[(i + 1) % 4], 60)[:-1] for i in range(4)])


class Camera:
    def __init__(self, scene):
        self.w, self.h = scene["size"]
        f = scene.get("focal", 0.85) * self.w
        cx, cy = scene.get("centre", (0, 0))
        self.k = np.array([[f, 0, self.w / 2 - 0.5 + cx], [0, f, self.h / 2 - 0.5 + cy], [0, 0, 1]])
        self.lens = np.array(scene.get("lens", [0, 0, 0, 0, 0]), float)
        tilt, way, roll = np.radians([scene.get(x, 0) for x in ("tilt", "way", "roll")])
        lean = cv2.Rodrigues(np.array([np.cos(way), np.sin(way), 0]) * tilt)[0]
        spin = cv2.Rodrigues(np.array([0, 0, roll]))[0]
        self.r = spin @ lean @ np.diag([1.0, -1.0, -1.0])
        mw, mh = scene["ground"]
        self.middle = np.array([mw / 2, mh / 2, 0])
        corners = np.array([(0, 0), (mw, 0), (mw, mh), (0, mh)], float)
        near, far = 200.0, 20000.0
        for _ in range(40):
            self.away = (near + far) / 2
            p = self.project(corners)
            fits = (p.min() > 0 and p[:, 0].max() < self.w and p[:, 1].max() < self.h)
            near, far = (near, self.away) if fits else (self.away, far)
        self.away = far * scene.get("away", 1.03)

    def project(self, plane):
        world = np.column_stack([plane, np.zeros(len(plane))]) - self.middle
        t = np.array([0, 0, self.away])
        out, _ = cv2.projectPoints(world, cv2.Rodrigues(self.r)[0], t, self.k, self.lens)
        return out[:, 0, :]


def paint(canvas, camera, points, grey):
    # The lens bows straight lines, too.
    after = np.roll(points, -1, axis=0)
    steps = [np.linspace(a, b, max(2, int(np.linalg.norm(b - a) / 3)))[:-1] for a, b in zip(points, after)]
    points = np.concatenate(steps)
    p = (camera.project(points) + 0.5) * FINE - 0.5
    cv2.fillPoly(canvas, [np.round(p * 16).astype(np.int32)], int(grey), cv2.LINE_8, 4)


def band(a, b, width):
    a, b = np.array(a, float), np.array(b, float)
    side = np.array([a[1] - b[1], b[0] - a[0]]) / np.linalg.norm(b - a) * width / 2
    t = np.linspace(0, 1, 80)[:, None]
    return np.concatenate([a + side + t * (b - a), b - side + t * (a - b)])


def render(scene, folder):
    rng = np.random.default_rng(scene.get("seed", 1))
    camera = Camera(scene)
    w, h = scene["size"]
    mw, mh = scene["ground"]
    index = np.zeros((h * FINE, w * FINE), np.uint8)
    palette = [COLOURS[scene.get("table", "table")]]

    def layer(colour, *shapes):
        palette.append(COLOURS[colour])
        for s in shapes:
            paint(index, camera, s, len(palette) - 1)

    square = scene.get("square", 0)
    if square:
        layer(scene.get("mat", "mat"), rectangle(mw, mh))
        wide = scene.get("line", 0.8)
        rim = scene.get("rim", 15)
        xs, ys = np.arange(rim, mw - rim + 1e-6, square), np.arange(rim, mh - rim + 1e-6, square)
        lines = []
        for i, x in enumerate(xs):
            lines.append(band((x, ys[0]), (x, ys[-1]), wide * (1.6 if scene.get("heavy") and i % 5 == 0 else 1)))
        for i, y in enumerate(ys):
            lines.append(band((xs[0], y), (xs[-1], y), wide * (1.6 if scene.get("heavy") and i % 5 == 0 else 1)))
        layer(scene.get("lines", "line"), *lines)
    truth = {"pieces": []}
    for size, turn, at in scene.get("sheets", []):
        layer("paper", turned(rectangle(*size), turn, at))
    for name, turn, at in scene["pieces"]:
        points, corners = PIECES[name]
        placed = turned(points, turn, at)
        layer(scene.get("paper", "paper"), placed)
        kept = [c for i, c in enumerate(turned(corners, turn, at)) if i not in SMOOTH.get(name, [])]
        x, y = placed[:, 0], placed[:, 1]
        area = abs(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1))) / 2
        truth["pieces"].append({"name": name, "outline": np.round(placed, 3).tolist(),
                                "corners": np.round(kept, 4).tolist(), "area": round(float(area), 2)})
    truth["points"] = [[np.round(p, 3).tolist() for p in camera.project(np.array(d, float))]
                       for d in scene.get("distances", [])]
    truth["scene"] = {k: scene[k] for k in ("square", "distances", "sheets") if k in scene}

    colours = np.array(palette, np.uint8)
    picture = np.empty((h, w, 3), np.float32)
    for c in range(3):
        picture[:, :, c] = cv2.resize(colours[:, c][index], (w, h), interpolation=cv2.INTER_AREA)
    picture *= light(scene, w, h, rng)[:, :, None]
    picture = cv2.GaussianBlur(picture, (0, 0), scene.get("blur", 0.6))
    picture += rng.normal(0, scene.get("noise", 3), picture.shape).astype(np.float32)
    name = f"{folder}/{scene['name']}"
    quality = [cv2.IMWRITE_JPEG_QUALITY, scene.get("quality", 60)]
    cv2.imwrite(name + ".jpg", np.clip(picture, 0, 255).astype(np.uint8), quality)
    with open(name + ".json", "w", encoding="utf-8") as f:
        json.dump(truth, f, separators=(",", ":"))


def light(scene, w, h, rng):
    """Uneven light, and soft shadows."""
    uneven = scene.get("uneven", 0.35)
    y, x = np.mgrid[0:h, 0:w].astype(np.float32)
    a = rng.uniform(0, 2 * np.pi)
    out = 1 - uneven * (0.5 + ((x / w - 0.5) * np.cos(a) + (y / h - 0.5) * np.sin(a)) * 0.9)
    out -= uneven * 0.3 * ((x / w - 0.5) ** 2 + (y / h - 0.5) ** 2)
    for _ in range(scene.get("shadows", 2)):
        mask = np.zeros((h, w), np.float32)
        middle = rng.uniform((0, 0), (w, h))
        sides = middle + rng.uniform(-0.3, 0.3, (6, 2)) * w
        cv2.fillConvexPoly(mask, cv2.convexHull(sides.astype(np.int32)), 1)
        mask = cv2.GaussianBlur(mask, (0, 0), scene.get("soft", 0.02) * w)
        out *= 1 - scene.get("shade", 0.35) * mask
    return np.clip(out, 0.1, 1.1).astype(np.float32)


if __name__ == "__main__":
    for row in sys.stdin:
        if row.strip():
            render(json.loads(row), sys.argv[1])
