#!/usr/bin/env python3
"""Checks a lay from its layout file alone, by the rules of the cutting room.

    check_lay.py lay LAYOUT.json ...             layouts of cloth (ellwand schema layout says what is in them)
    check_lay.py bench INSTANCE.json LAYOUT.json a layout of open nesting data

It knows nothing of the program: the geometry is shapely's (Debian: python3-shapely). One sentence for each fault, and
exit status 1 when there is any. Lengths are mm.
"""
import json
import math
import sys

from shapely.affinity import affine_transform
from shapely.geometry import Polygon, box
from shapely.ops import unary_union

FINE = 0.01  # what counts as exactly: on a fold, at an end
DRAWN = 0.3  # how far an outline laid may lie from the one asked: under the width of a chalk line
REPEAT = 1.0  # how far points that match may lie apart on the repeat
TOUCH = 1e-6  # share of the smaller piece's area by which two that touch may seem to overlap


def polygon(ring):
    shape = Polygon(ring)
    return shape if shape.is_valid else shape.buffer(0)


def overlap(a, b):
    """The area that two shapes share; 0 when they only touch."""
    p, q = a.bounds, b.bounds
    if p[0] >= q[2] or q[0] >= p[2] or p[1] >= q[3] or q[1] >= p[3]:
        return 0
    shared = a.intersection(b).area
    return shared if shared > TOUCH * min(a.area, b.area) else 0


def overlaps(shapes, names):
    for i, a in enumerate(shapes):
        for j in range(i):
            if overlap(a, shapes[j]):
                yield f"{names[j]} and {names[i]} lie over one another, by {overlap(a, shapes[j]):.6g} mm2."


class Motion:
    """x, y becomes a x + b y + e, c x + d y + f."""

    def __init__(self, a, b, c, d, e, f):
        self.m = (a, b, c, d, e, f)

    def at(self, p):
        a, b, c, d, e, f = self.m
        return (a * p[0] + b * p[1] + e, c * p[0] + d * p[1] + f)

    def shape(self, s):
        return affine_transform(s, self.m)

    def back(self, v):
        """A direction brought back, by a motion that keeps lengths."""
        a, b, c, d, _, _ = self.m
        return (a * v[0] + c * v[1], b * v[0] + d * v[1])


def placed(degrees, mirrored, x, y):
    """Mirrored in x first, then turned counter-clockwise, then moved."""
    cos, sin = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    if degrees % 90 == 0:
        cos, sin = round(cos), round(sin)
    flip = -1 if mirrored else 1
    return Motion(cos * flip, -sin, sin * flip, cos, x, y)


def image_about(p, q):
    """The mirror image about the line through two points."""
    angle = 2 * math.atan2(q[1] - p[1], q[0] - p[0])
    cos, sin = math.cos(angle), math.sin(angle)
    return Motion(cos, sin, sin, -cos, p[0] - cos * p[0] - sin * p[1], p[1] - sin * p[0] + cos * p[1])


def off(a, b, period):
    """How far two places lie apart on a repeat."""
    return abs(math.remainder(a - b, period))


class Lay:
    def __init__(self, file):
        self.file, self.faults = file, []
        self.asked = file["asked"]
        self.names = [f"{p['name']} {p['copy']}" for p in file["pieces"]]
        self.shapes = [polygon(p["outline"]) for p in file["pieces"]]
        self.motions = [placed(p["turn_deg"], p["mirrored"], p["x_mm"], p["y_mm"]) for p in file["pieces"]]
        self.flaws = [polygon(ring) for ring in file["flaws"]]
        self.cloth_flaws = [(flaw["name"], polygon(flaw["outline_mm"])) for flaw in file["cloth_flaws"]]
        self.wanted = [polygon(a["outline_mm"]) for a in self.asked]

    def fault(self, sentence):
        self.faults.append(sentence)

    def check(self):
        if self.file["format_version"] != 1:
            return [f"The layout has the format version {self.file['format_version']}, and this reads 1."]
        self.check_amount()
        self.check_parts()
        self.check_places()
        self.check_gap()
        for number, laid in enumerate(self.file["pieces"]):
            self.check_outline(number, laid)
            self.check_turn(number, laid)
        opened = [o for number, laid in enumerate(self.file["pieces"]) for o in self.opened(number, laid)]
        for one in opened:
            self.check_on_cloth(one)
            self.check_face(one)
            self.check_grain(one)
        self.check_counts(opened)
        self.check_nap(opened)
        if self.file["repeat"]:
            self.check_repeat(opened)
        self.check_fixed(opened)
        return self.faults

    # The lay: what is bought for it, its parts, their plies, their folds.

    def check_amount(self):
        """What is bought is what the lay takes and what is added to it."""
        amount = self.file.get("amount")
        if amount is None:
            return
        parts = [self.file["taken_mm"]] + [amount[key] for key in amount if key != "buy_mm"]
        if min(parts) < -FINE or abs(sum(parts) - amount["buy_mm"]) > FINE:
            self.fault(f"The parts of {amount['buy_mm']:.1f} to buy come to {sum(parts):.1f}.")

    def check_parts(self):
        f = self.file
        for number, part in enumerate(f["parts"]):
            name = f"Part {number + 1}"
            if part["x_mm"] < -FINE or part["end_mm"] > f["length_mm"] + FINE or part["end_mm"] < part["x_mm"]:
                ends = f"{part['x_mm']:.1f} to {part['end_mm']:.1f}"
                self.fault(f"{name} runs from {ends}, and the lay from 0 to {f['length_mm']:.1f}.")
            if part["y_mm"] < -FINE or part["y_mm"] + part["width_mm"] > f["width_mm"] + FINE:
                self.fault(f"{name} is not within the width of the lay.")
            for across in (part["y_mm"] + share * part["width_mm"] for share in (0.01, 0.26, 0.49, 0.51, 0.74, 0.99)):
                faces = [p["right_side"] for p in part["plies"] if p["from_y_mm"] <= across <= p["to_y_mm"]]
                if faces not in (["up"], ["up", "down"]) or len(faces) > f["plies"]:
                    sides = " ".join(faces) or "nowhere"
                    self.fault(f"{name} has {len(faces)} plies, right sides {sides}, at {across:.1f} across.")
            for ply in part["plies"]:
                turned_over = ply["on_cloth"]["x_sign"] * ply["on_cloth"]["y_sign"] < 0
                if turned_over != (ply["right_side"] == "down"):
                    self.fault(f"{name} has a ply whose right side cannot be {ply['right_side']} where it lies.")
            self.check_folds(name, part)
        self.check_plies()

    def check_folds(self, name, part):
        """At a fold two plies are the same place of the cloth."""
        for fold in part["folds"]:
            along = fold["runs"] == "along"
            for share in (0.1, 0.9):
                at = (part["x_mm"] + share * 100, fold["at_mm"])
                if not along:
                    at = (fold["at_mm"], part["y_mm"] + share * part["width_mm"])
                here = [p for p in part["plies"] if p["from_y_mm"] - FINE <= at[1] <= p["to_y_mm"] + FINE]
                spots = [self.on_cloth(ply).at(at) for ply in here]
                if len(spots) != 2 or math.dist(*spots) > FINE:
                    where = f"{fold['runs']} at {fold['at_mm']:.1f}"
                    self.fault(f"{name} has no fold {where}: its plies do not meet there.")

    def check_plies(self):
        """No place of the cloth lies in two plies, and all lie on the cloth."""
        f, spread = self.file, []
        for part in f["parts"]:
            for ply in part["plies"]:
                area = self.on_cloth(ply).shape(box(part["x_mm"], ply["from_y_mm"], part["end_mm"], ply["to_y_mm"]))
                if any(overlap(area, other) > 1 for other in spread):
                    self.fault("Two plies are cut from the same place of the cloth.")
                spread.append(area)
                if area.bounds[1] < -FINE or area.bounds[3] > f["cloth_width_mm"] + FINE:
                    self.fault("A ply reaches over the edge of the cloth.")
                if area.bounds[0] < -FINE or area.bounds[2] > f["taken_mm"] + FINE:
                    self.fault(f"The plies take more than the {f['taken_mm']:.1f} of cloth that the lay says.")

    def on_cloth(self, ply):
        o = ply["on_cloth"]
        return Motion(o["x_sign"], 0, 0, o["y_sign"], o["x_mm"], o["y_mm"])

    # The templates on the lay.

    def check_places(self):
        f = self.file
        for number, (shape, name) in enumerate(zip(self.shapes, self.names)):
            laid = f["pieces"][number]
            if not Polygon(laid["outline"]).is_valid:
                self.fault(f"{name}: its outline crosses itself.")
            part = f["parts"][laid["part"]]
            room = box(part["x_mm"], part["y_mm"], part["end_mm"], part["y_mm"] + part["width_mm"])
            if shape.difference(room.buffer(FINE, join_style=2)).area > 0:
                self.fault(f"{name} hangs over the edge or the end of its part of the lay.")
            for flaw in self.flaws:
                if overlap(shape, flaw):
                    self.fault(f"{name} lies on a place of the lay that may not be used.")
            for ply in self.plies_under(number):
                for flaw in ply["flaws"]:
                    if overlap(shape, polygon(flaw["outline_mm"])):
                        flawed = flaw["name"] or "a flaw"
                        self.fault(f"{name} lies on {flawed} in the ply with its right side {ply['right_side']}.")
        for sentence in overlaps(self.shapes, self.names):
            self.fault(sentence)

    def plies_under(self, number):
        x0, y0, x1, y1 = self.shapes[number].bounds
        plies = self.file["parts"][self.file["pieces"][number]["part"]]["plies"]
        return [p for p in plies if p["from_y_mm"] <= (y0 + y1) / 2 <= p["to_y_mm"]]

    def check_gap(self):
        f, gap = self.file, self.file["gap_mm"]
        for i, a in enumerate(self.shapes if gap > 0 else []):
            for j, b in enumerate(self.shapes[:i]):
                p, q = (f["parts"][f["pieces"][k]["part"]] for k in (i, j))
                cut_between = p["end_mm"] <= q["x_mm"] + FINE or q["end_mm"] <= p["x_mm"] + FINE
                if not cut_between and a.distance(b) < gap - FINE:
                    two = f"{self.names[j]} and {self.names[i]}"
                    self.fault(f"{two} lie {a.distance(b):.2f} apart, and the gap is {gap:.2f}.")

    def check_outline(self, number, laid):
        """What is laid is what was asked, and a half lies on a fold or is laid whole."""
        name, asked, motion = self.names[number], self.asked[laid["piece"]], self.motions[number]
        if (laid["name"], laid["garment"], laid["size"]) != (asked["name"], asked["garment"], asked["size"]):
            self.fault(f"{name} is not the piece that it says.")
        wanted = self.wanted[laid["piece"]]
        if asked["fold_mm"] and laid["laid_whole"]:
            wanted = wanted.buffer(FINE, join_style=2)  # so that the halves share more than a line
            wanted = wanted.union(image_about(*asked["fold_mm"]).shape(wanted))
        if motion.shape(wanted).hausdorff_distance(self.shapes[number]) > DRAWN:
            self.fault(f"{name} has not the outline that was asked, as it is turned and mirrored.")
        if bool(asked["fold_mm"]) != (laid["on_fold"] or laid["laid_whole"]) or laid["on_fold"] and laid["laid_whole"]:
            self.fault(f"{name} is a half piece, or a whole one, and is not laid as such.")
        if laid["on_fold"]:
            folds = [g["at_mm"] for g in self.file["parts"][laid["part"]]["folds"] if g["runs"] == "along"]
            ends = [motion.at(p)[1] for p in asked["fold_mm"]]
            if not any(all(abs(y - fold) <= FINE for y in ends) for fold in folds):
                self.fault(f"{name} has its fold edge not on the fold.")

    def check_turn(self, number, laid):
        tilt = math.degrees(math.atan(self.file["tilt_percent"] / 100)) + 1e-3
        ways = [w for w in laid["allowed_turns"] if w["mirrored"] == laid["mirrored"]]
        if not any(off(laid["turn_deg"], w["turn_deg"], 360) <= tilt for w in ways):
            turn = f"{laid['turn_deg']:.2f} degrees"
            self.fault(f"{self.names[number]} is turned by {turn}, which is not among the turns that it may have.")

    # The pieces that come out, each on the open cloth.

    def opened(self, number, laid):
        """One piece from each ply; a half on the fold opens into one."""
        asked, motion = self.asked[laid["piece"]], self.motions[number]
        out = []
        for ply in self.plies_under(number):
            onto = self.on_cloth(ply)
            a, b, c, d, e, f = motion.m
            m = onto.m
            whole = Motion(m[0] * a, m[0] * b, m[3] * c, m[3] * d, m[0] * e + m[4], m[3] * f + m[5])
            down = laid["mirrored"] != (ply["right_side"] == "down")
            out.append({"name": self.names[number], "piece": laid["piece"], "asked": asked, "laid": laid,
                        "motion": whole, "down": down, "shapes": [onto.shape(self.shapes[number])]})
        if laid["lower_ply"]:
            return [o for o in out if o["down"] == laid["mirrored"]]
        if laid["on_fold"] and len(out) == 2:
            drawn, other = sorted(out, key=lambda o: o["down"])
            drawn["shapes"] += other["shapes"]
            return [drawn]
        return out

    def check_on_cloth(self, one):
        f = self.file
        cloth = box(0, f["selvedge_mm"], f["taken_mm"], f["cloth_width_mm"] - f["selvedge_mm"])
        cloth = cloth.buffer(FINE, join_style=2)
        for shape in one["shapes"]:
            if shape.difference(cloth).area > 0:
                self.fault(f"{one['name']} lies over the selvedge or the end of the cloth.")
            for name, flaw in self.cloth_flaws:
                if overlap(shape, flaw):
                    self.fault(f"{one['name']} lies on {name or 'a flaw'} of the cloth.")

    def check_face(self, one):
        """Face down comes out the left of a pair, or what is its own mirror image."""
        asked, laid = one["asked"], one["laid"]
        is_of_pair = asked["pair"] and not asked["fold_mm"]
        if not one["down"] or is_of_pair or laid["on_fold"] or self.file["both_sides_alike"]:
            return
        if not self.is_own_image(self.wanted[one["piece"]], asked, laid):
            self.fault(f"{one['name']} comes out face down, and is neither one of a pair nor its own mirror image.")

    def is_own_image(self, shape, asked, laid):
        """Both plies give the piece as it is where it mirrors about a line that keeps its grain, and the nap on it."""
        if laid["laid_whole"]:
            return True  # a half laid whole mirrors about its fold line
        (x0, y0), (x1, y1) = asked["grain_mm"]
        grain = math.degrees(math.atan2(y1 - y0, x1 - x0))
        lines = {"bias": (0, 45, 90, 135)}.get(asked["grain_lie"], (0, 90) if asked["nap"] == "either way" else (0,))
        middle = shape.centroid
        for line in (math.radians(grain + turn) for turn in lines):
            end = (middle.x + math.cos(line), middle.y + math.sin(line))
            if image_about((middle.x, middle.y), end).shape(shape).hausdorff_distance(shape) <= DRAWN:
                return True
        return False

    def check_grain(self, one):
        lie, (start, end) = one["asked"]["grain_lie"], [one["motion"].at(p) for p in one["asked"]["grain_mm"]]
        along, across = abs(end[0] - start[0]), abs(end[1] - start[1])
        angle = math.degrees(math.atan2(across, along))
        wanted = {"along": 0, "across": 90, "bias": 45, "either": 0 if across < along else 90}[lie]
        tilt = math.degrees(math.atan(self.file["tilt_percent"] / 100)) + 0.1
        if abs(angle - wanted) > tilt:
            self.fault(f"{one['name']} has its grainline {angle:.2f} degrees off the warp, and it should be {wanted}.")

    def check_counts(self, opened):
        for number, asked in enumerate(self.asked):
            mine = [one for one in opened if one["piece"] == number]
            left = sum(one["down"] for one in mine)
            if len(mine) != asked["count"]:
                self.fault(f"{asked['name']}: {len(mine)} come out of the lay, and {asked['count']} are asked.")
            if asked["pair"] and not asked["fold_mm"] and 2 * left != len(mine) and not self.file["both_sides_alike"]:
                self.fault(f"{asked['name']}: {len(mine) - left} right and {left} left come out of the lay.")

    def way(self, one):
        """Whether the warp runs up the piece; on the cross grain, from its one side."""
        asked, nap = one["asked"], one["motion"].back((1, 0))
        grain = [b - a for a, b in zip(*asked["grain_mm"])]
        crosses = abs(nap[0] * grain[0] + nap[1] * grain[1]) < abs(nap[0] * grain[1] - nap[1] * grain[0])
        if asked["grain_lie"] == "across" or asked["grain_lie"] == "either" and crosses:
            grain = [grain[1], -grain[0]]
        return nap[0] * grain[0] + nap[1] * grain[1] > 0

    def check_nap(self, opened):
        """The nap, which runs up the warp, runs the same way over the pieces that it binds."""
        ways = {}
        for one in opened:
            asked = one["asked"]
            groups = {"either way": [], "one way": ["the lay"], "one way per garment": [asked["garment"]]}[asked["nap"]]
            if self.file["nap"] == "one way per garment":
                groups = groups + [asked["garment"]]
            way = self.way(one)
            for group in groups:
                if ways.setdefault(group, way) != way:
                    self.fault(f"{one['name']} lies against the nap of {group or 'its garment'}.")
                    break

    # Stripes and checks.

    def places(self, one, at, axis):
        """Where a point comes to lie on the cloth: as drawn, and its image across a half piece's fold line."""
        spots = {one["down"]: one["motion"].at(at)}
        if one["asked"]["fold_mm"]:
            spots = {False: one["motion"].at(at), True: one["motion"].at(image_about(*one["asked"]["fold_mm"]).at(at))}
        elif not one["asked"]["pair"]:
            spots = {False: one["motion"].at(at)}
        return {side: spot[axis] for side, spot in spots.items()}

    def check_repeat(self, opened):
        repeat = self.file["repeat"]
        for match in repeat["matches"]:
            across = match["way"] == "across"
            period, first = repeat["across_mm" if across else "along_mm"], {}
            apart = across and match["name"] != ""  # the two sides, each among themselves
            ways = {self.way(one) for one in opened for p in match["points"] if p["piece"] == one["piece"]}
            if len(ways) > 1 and not repeat["even"]:
                self.fault(f"Of what matches by {match['name'] or 'right and left'} some lies upside down, and the "
                           "repeat is not even.")
            for one in opened:
                for point in (p["at_mm"] for p in match["points"] if p["piece"] == one["piece"]):
                    places = self.places(one, point, 1 if across else 0)
                    if not apart:
                        places = {False: one["motion"].at(point)[1 if across else 0]}
                    for side, place in places.items():
                        if off(place, first.setdefault(side, place), period) > REPEAT:
                            what = match["name"] or "right and left"
                            wrong = off(place, first[side], period)
                            self.fault(f"{one['name']}: {what} lies {wrong:.1f} off the repeat {match['way']}.")
        for one in opened:
            for point in (p["at_mm"] for p in repeat["centred"] if p["piece"] == one["piece"]):
                wrong = off(one["motion"].at(point)[1], repeat["centre_line_mm"], repeat["across_mm"])
                if wrong > REPEAT:
                    self.fault(f"{one['name']}: its centre lies {wrong:.1f} off its line of the repeat.")

    def check_fixed(self, opened):
        """What a print fixes: hems on the line of a border, the centre of a motif on a piece."""
        for fixed in self.file["fixed"]:
            across = fixed["way"] == "across"
            for one in (o for o in opened if o["piece"] == fixed["piece"]):
                place, period = one["motion"].at(fixed["at_mm"])[1 if across else 0], fixed["period_mm"]
                wrong = max(fixed["from_mm"] - place, place - fixed["to_mm"])
                if period > 0:
                    wrong = off(place, fixed["from_mm"], period)
                if wrong > REPEAT:
                    self.fault(f"{one['name']}: a point lies {wrong:.1f} {fixed['way']} off where the print has its "
                               "place.")


def lays(paths):
    bad = 0
    for path in paths:
        with open(path) as file:
            faults = Lay(json.load(file)).check()
        for sentence in faults:
            print(f"{path}: {sentence}")
        bad += bool(faults)
    print(f"{len(paths)} layouts, {bad} at fault")
    return bad


def bench(instance, layout):
    with open(instance) as file:
        items_of = json.load(file)
    with open(layout) as file:
        laid = json.load(file)
    items, height, faults, shapes, names = items_of["Items"], items_of["Strip"]["Height"], [], [], []
    for p in laid["placements"]:
        item, name = items[p["item"]], f"Item {p['item']} copy {p.get('copy', 0)}"
        mirrored = p.get("mirrored", False)
        if mirrored or not any(off(p["rotation"], o, 360) < 1e-9 for o in item["AllowedOrientations"]):
            faults.append(f"{name} is turned in a way that it may not have.")
        shapes.append(placed(p["rotation"], mirrored, p["x"], p["y"]).shape(polygon(item["Shape"]["Data"])))
        names.append(name)
        strip = box(0, 0, laid["length"], height).buffer(1e-9 * height, join_style=2)
        if shapes[-1].difference(strip).area > TOUCH * shapes[-1].area:
            faults.append(f"{name} lies over the edge of the strip.")
    for number, item in enumerate(items):
        placed_of = sum(p["item"] == number for p in laid["placements"])
        if placed_of != item["Demand"]:
            faults.append(f"Item {number}: {placed_of} are laid, and {item['Demand']} are asked.")
    faults += overlaps(shapes, names)
    for sentence in faults:
        print(sentence)
    print(f"length {laid['length']:.6g}, density {100 * sum(s.area for s in shapes) / (laid['length'] * height):.3f} %")
    return len(faults)


if __name__ == "__main__":
    if len(sys.argv) > 2 and sys.argv[1] == "lay":
        sys.exit(1 if lays(sys.argv[2:]) else 0)
    if len(sys.argv) == 4 and sys.argv[1] == "bench":
        sys.exit(1 if bench(*sys.argv[2:]) else 0)
    sys.exit(__doc__)
