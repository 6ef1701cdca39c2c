#!/usr/bin/env python3
"""Draws all pictures of the sheets. Standard library only.

    draw.py            writes every picture beside this file
    draw.py --check    fails where a picture is missing, left over or not as drawn here
    draw.py --contact  prints one SVG with all of them in cells of 3 cm, each with its name

A picture is 240 units wide and is read at 3 cm, where one unit is 0.35 pt. Outlines and details
have one width each; walls, limbs and signs are thicker. Skin, water and rot are solid black, soil is hatched,
sand is dotted, all else is white. Whatever lies in front has a white edge around it, so that black never runs
into black on a poor copy.
"""

import math
import pathlib
import re
import sys

SIDE = 240
BOLD, FINE = 7, 4
BLACK, WHITE = "#000", "#fff"
EDGE = 8
HATCH = 15
FOLDER = pathlib.Path(__file__).resolve().parent
# Pictures that are drawn elsewhere: a template for charts.
OTHERS = {"bars"}


# ---- Lines and areas ----


def number(value):
    """A length as it is written: in half units and without a fraction, which paper takes its time over."""
    return str(math.floor(2 * value + 0.5))


def parse(d):
    """An SVG path of M, L, C, Q and Z in absolute coordinates, as (letter, points)."""
    out = []
    for letter, rest in re.findall(r"([MLCQZ])([^MLCQZ]*)", d):
        values = [float(v) for v in re.findall(r"-?\d+\.?\d*", rest)]
        points = list(zip(values[::2], values[1::2]))
        step = {"M": 1, "L": 1, "C": 3, "Q": 2, "Z": 1}[letter]
        if letter == "Z":
            out.append(("Z", []))
        for i in range(0, len(points), step):
            out.append(("L" if letter == "M" and i else letter, points[i : i + step]))
    return out


def bezier(points, t):
    """The point at `t` (0 to 1) of a curve with these control points."""
    while len(points) > 1:
        points = [(ax + (bx - ax) * t, ay + (by - ay) * t) for (ax, ay), (bx, by) in zip(points, points[1:])]
    return points[0]


def flatten(commands):
    """A path as one polygon a part, curves cut into short lines."""
    parts, here = [], (0, 0)
    for letter, p in commands:
        if letter == "M":
            parts.append([p[0]])
        elif letter == "L":
            parts[-1].append(p[0])
        elif letter in "CQ":
            parts[-1] += [bezier([here, *p], i / 12) for i in range(1, 13)]
        here = p[-1] if p else parts[-1][0]
    return parts


class Mark:
    """What one path puts on paper."""

    def __init__(self, commands, fill, width, ink):
        self.commands, self.style = commands, (fill, width, ink)
        self.fill, self.reach = fill != "none", width / 2
        self.points = list(dense(flatten(commands), self.fill))
        xs, ys = zip(*self.points)
        self.box = (min(xs) - self.reach, min(ys) - self.reach, max(xs) + self.reach, max(ys) + self.reach)

    def touches(self, other):
        """Whether the paint of both may meet anywhere."""
        (a, b, c, d), (e, f, g, h) = self.box, other.box
        if a > g + 1 or e > c + 1 or b > h + 1 or f > d + 1:
            return False
        most = (self.reach + other.reach + 2) ** 2
        if any((x - u) ** 2 + (y - v) ** 2 < most for x, y in self.points for u, v in other.points):
            return True
        return self.holds(other.points[0]) or other.holds(self.points[0])

    def holds(self, point):
        if not self.fill:
            return False
        (x, y), inside = point, False
        for part in flatten(self.commands):
            for (a, b), (c, d) in zip(part, part[1:] + part[:1]):
                if (b > y) != (d > y) and x < a + (c - a) * (y - b) / (d - b):
                    inside = not inside
        return inside

    def svg(self):
        fill, width, ink = self.style
        d = "".join(letter + " ".join(f"{number(x)} {number(y)}" for x, y in points) for letter, points in self.commands)
        style = f' fill="{fill}"' if fill != "none" else ""
        style += f' stroke="{ink}"' if ink != BLACK else ""
        style += f' stroke-width="{number(width)}"' if number(width) != number(BOLD) else ""
        return f'<path d="{d}"{style}/>'


def dense(parts, closed):
    """Points along polygons, none further from the next than 2."""
    for part in parts:
        for (a, b), (c, d) in zip(part, part[1:] + part[:1] if closed else part[1:] or part):
            steps = max(1, math.ceil(math.hypot(c - a, d - b) / 2))
            yield from ((a + (c - a) * i / steps, b + (d - b) * i / steps) for i in range(steps + 1))


class Run:
    """Marks of one style that are put on paper by one path."""

    def __init__(self, mark):
        self.marks = [mark]

    def touches(self, other):
        return any(one.touches(another) for one in self.marks for another in other.marks)


def fewer(marks):
    """The same picture with fewer paths, which paper takes its time over: what no paint lies under or over in
    between is put on together, and no white where nothing was."""
    runs = []
    for mark in marks:
        run = Run(mark)
        if mark.style[2] == WHITE and mark.style[0] in ("none", WHITE) and not any(run.touches(other) for other in runs):
            continue
        between = []
        for other in reversed(runs):
            alike = other.marks[0].style == mark.style and not (mark.fill and run.touches(other))
            # The later one goes down with the earlier, or the earlier waits for the later.
            if alike and not any(run.touches(one) for one in between):
                other.marks.append(mark)
                break
            if alike and not any(other.touches(one) for one in between):
                runs.remove(other)
                run.marks = [*other.marks, mark]
                runs.append(run)
                break
            between.append(other)
        else:
            runs.append(run)
    return [Mark([c for mark in run.marks for c in mark.commands], *run.marks[0].style) for run in runs]


class Pen:
    """Draws in coordinates of its own: moved, scaled, turned, mirrored; lines keep their width."""

    def __init__(self, out, matrix=(1, 0, 0, 1, 0, 0)):
        self.out, self.matrix = out, matrix

    def at(self, x=0, y=0, size=1.0, turn=0.0, flip=False):
        a, b, c, d, e, f = self.matrix
        cos, sin = math.cos(math.radians(turn)) * size, math.sin(math.radians(turn)) * size
        k, l, m, n = (-cos if flip else cos), (-sin if flip else sin), -sin, cos
        turned = (a * k + c * l, b * k + d * l, a * m + c * n, b * m + d * n)
        return Pen(self.out, (*turned, *self.place((x, y))))

    def place(self, point):
        a, b, c, d, e, f = self.matrix
        x, y = point
        return (a * x + c * y + e, b * x + d * y + f)

    def scaled(self, length):
        """A length of this pen's coordinates in those of the picture."""
        return length * math.hypot(self.matrix[0], self.matrix[1])

    def path(self, d):
        return [(letter, [self.place(p) for p in points]) for letter, points in parse(d)]

    def put(self, commands, fill="none", width=BOLD, ink=BLACK):
        self.out.append(Mark(commands, fill, width, ink))

    def line(self, d, width=BOLD, ink=BLACK):
        self.put(self.path(d), "none", width, ink)

    def area(self, d, fill=WHITE, width=BOLD, edge=False):
        commands = self.path(d)
        if edge:
            self.put(commands, "none", width + EDGE, WHITE)
        self.put(commands, fill, width)

    def dot(self, x, y, r=4, ink=BLACK):
        """A round spot whose size does not scale. Its line has a length, since paper leaves out those that have none."""
        cx, cy = self.place((x, y))
        self.put([("M", [(cx, cy)]), ("L", [(cx + 0.5, cy)])], "none", 2 * r, ink)

    def limb(self, d, width, edge=True):
        """A thick black line: an arm, a leg, a finger."""
        if edge:
            self.line(d, self.scaled(width) + EDGE, WHITE)
        self.line(d, self.scaled(width))

    def rod(self, d, width=13):
        """A stick: white with a line on each side."""
        self.line(d, width + EDGE, WHITE)
        self.line(d, width)
        self.line(d, width - 2 * FINE, WHITE)

    def hatch(self, d):
        """Slanting lines within an area: soil."""
        parts = flatten(self.path(d))
        low = min(x + y for part in parts for x, y in part)
        high = max(x + y for part in parts for x, y in part)
        commands, level = [], math.ceil(low / HATCH) * HATCH + HATCH / 2
        while level < high:
            cuts = []
            for part in parts:
                for (ax, ay), (bx, by) in zip(part, part[1:] + part[:1]):
                    p, q = ax + ay - level, bx + by - level
                    if (p < 0) != (q < 0):
                        cuts.append(ax + (bx - ax) * p / (p - q))
            cuts.sort()
            for left, right in zip(cuts[::2], cuts[1::2]):
                if right - left > 5:
                    commands += [("M", [(left + 1, level - left - 1)]), ("L", [(right - 1, level - right + 1)])]
            level += HATCH
        if commands:
            self.put(commands, "none", FINE)

    def soil(self, d, edge=False):
        self.area(d, WHITE, edge=edge)
        self.hatch(d)


# ---- Hands ----


def fist(pen, arm=((30, 0), (110, 0)), thumb=True):
    """A hand closed around a rod along the y axis at x = 0; the arm goes along the points of `arm`."""
    (x, y), (u, v) = arm
    pen.limb(f"M{x} {y}L{u} {v}", 27)
    pen.limb("M16 -16L22 -15L26 0L22 15L16 16", 24)
    pen.limb("M16 -14L22 0L16 14", 24, edge=False)
    for k in (-21, -7, 7, 21):
        pen.line(f"M-9 {k}L14 {k}", pen.scaled(17), WHITE)
    for k in (-21, -7, 7, 21):
        pen.line(f"M-9 {k}L16 {k}", pen.scaled(10.5))
    if thumb:
        pen.line("M20 -26L4 -37L-8 -38", pen.scaled(19), WHITE)
        pen.line("M22 -20L18 -28L4 -37L-8 -38", pen.scaled(13))


FINGERS = ["M-24 -52L-33 -98", "M-8 -58L-10 -118", "M9 -57L14 -112", "M25 -50L37 -90"]
THUMB = "M30 -14L50 -26L62 -50"
PALM = "M-30 -50C-34 -30 -30 -14 -20 0L20 0C32 -12 36 -30 32 -50Z"


def open_hand(pen, black=("palm", 0, 1, 2, 3, "thumb"), arm=26):
    """An open hand from the wrist at the origin up to the longest fingertip at -126; the thumb to the right."""
    solid = "palm" in black
    fingers = [*enumerate(FINGERS), ("thumb", THUMB)]
    width = pen.scaled(14.5)
    if arm:
        pen.area(f"M-18 -4L-16 {arm}L16 {arm}L18 -4Z", BLACK if solid else WHITE, FINE)
    for _, d in fingers:
        pen.line(d, width + EDGE, WHITE)
    for _, d in fingers:
        pen.line(d, width)
    pen.area(PALM, BLACK if solid else WHITE, FINE)
    for name, d in fingers:
        if name not in black:
            pen.line(d, width - 2 * FINE, WHITE)


def reaching(pen, arm=((0, -40), (0, -110))):
    """A hand that comes from above and closes its fingers over something below the origin."""
    (x, y), (u, v) = arm
    pen.limb(f"M{x} {y}L{u} {v}", 27)
    pen.limb("M-14 -28L14 -28L0 -40Z", 24)
    fingers = ("M-22 -22L-32 12", "M-8 -20L-11 20", "M7 -20L9 20", "M21 -24L29 13")
    for d in fingers:
        pen.line(d, pen.scaled(19), WHITE)
    for d in fingers:
        pen.limb(d, 12, edge=False)
    pen.limb("M-14 -28L14 -28L0 -40Z", 24, edge=False)


def flat_hand(pen, arm=((34, -12), (110, -50))):
    """A hand seen from the side, laid flat; the fingers point to the left, the palm is at y = 0."""
    (x, y), (u, v) = arm
    pen.limb(f"M{x} {y}L{u} {v}", 26)
    d = "M40 -26C20 -34 0 -28 -18 -18L-50 -6C-60 -2 -56 8 -46 6L-10 2C0 6 -8 14 -4 20C2 28 14 20 20 10L44 0Z"
    pen.area(d, BLACK, FINE, edge=True)


# ---- People ----


def head(pen, wear):
    """A head at the origin, looking to the right, with a scarf, a hat or none."""
    pen.area("M-17 0C-17 -24 17 -24 17 0C17 24 -17 24 -17 0Z", BLACK, FINE, edge=True)
    if wear == "scarf":
        pen.area("M-18 8C-26 -22 -4 -34 14 -20C20 -14 18 -8 16 -8C4 -8 -8 -2 -18 8Z", WHITE, FINE)
        pen.area("M-18 4C-30 -2 -34 10 -28 18C-22 16 -18 12 -18 4Z", WHITE, FINE)
    elif wear == "hat":
        pen.area("M-17 -8C-16 -32 16 -32 17 -8Z", WHITE, FINE)
        pen.line("M-26 -7L28 -7", BOLD)


def standing(pen, *arms):
    """A woman who stands with the feet at the origin and the head at -146, looking to the right."""
    pen.limb("M-10 -50L-10 -4L0 -4M10 -50L10 -4L20 -4", 13)
    pen.area("M-16 -122L16 -122C20 -100 24 -70 28 -34L-28 -34C-24 -70 -20 -100 -16 -122Z", edge=True)
    pen.hatch("M-22 -76L22 -76L28 -34L-28 -34Z")
    pen.line("M-22 -76L22 -76", FINE)
    pen.limb("M0 -128L0 -124", 12, edge=False)
    head(pen.at(0, -146), "scarf")
    for d in arms:
        pen.limb(d, 12)


# ---- Plants and roots ----

ROOT = "M-58 5C-46 0 -42 -26 -6 -27C28 -27 40 -10 62 -6C46 6 32 26 -4 27C-34 27 -44 12 -58 5Z"


def root(pen, marks=True, edge=True):
    """A sound root, 120 long and 54 wide, lying along x."""
    pen.area(ROOT, edge=edge)
    if marks:
        pen.line("M-22 -8L-8 -9M6 9L20 7", FINE)


def rotten(pen):
    pen.area(ROOT, edge=True)
    pen.area("M-34 -4C-34 -16 -14 -20 -10 -8C-8 2 -30 8 -34 -4Z", BLACK, FINE)
    pen.area("M2 10C0 0 22 -4 26 4C26 14 6 20 2 10Z", BLACK, FINE)
    pen.dot(12, -15, pen.scaled(6))
    pen.dot(-14, 15, pen.scaled(5))


LEAF = "M0 0C-8 12 -36 10 -34 -16C-32 -36 -10 -42 0 -62C10 -42 32 -36 34 -16C36 10 8 12 0 0Z"


def leaves(*pens, vein=True):
    """Heart-shaped leaves, all in one layer. The stalk joins at a pen's origin, the tip is at -62."""
    for pen in pens:
        pen.line(LEAF, BOLD + EDGE, WHITE)
    for pen in pens:
        pen.area(LEAF)
    if vein:
        for pen in pens:
            pen.line("M0 -6L0 -34", FINE)


SICK_LEAF = "M0 0Q-18 20 -25 4Q-48 2 -30 -13Q-48 -28 -24 -30Q-30 -48 -9 -42Q-8 -56 18 -68Q8 -52 13 -42Q32 -44 23 -29Q48 -26 29 -12Q46 4 24 5Q18 20 0 0Z"


def sick_leaves(*pens):
    """Small leaves, crumpled all around, spotted, their tips bent aside."""
    for pen in pens:
        pen.line(SICK_LEAF, BOLD + EDGE, WHITE)
    for pen in pens:
        pen.area(SICK_LEAF)
    for pen in pens:
        for x, y in ((-13, -14), (13, -10), (1, -30)):
            pen.dot(x, y, 5)


def plant(pen, size=1.0):
    """A strong plant with big leaves, its foot at the origin, 110 high."""
    p = pen.at(size=size)
    p.line("M0 0C0 -20 0 -40 0 -52M0 0C-8 -22 -26 -34 -40 -38M0 0C8 -22 26 -34 40 -38M0 0C-14 -8 -30 -8 -44 -4M0 0C14 -8 30 -8 44 -4")
    leaves(p.at(-20, -6, 0.62, -84), p.at(20, -6, 0.62, 84), vein=False)
    leaves(p.at(-22, -34, 0.78, -48), p.at(22, -34, 0.78, 48))
    leaves(p.at(0, -52, 0.95))


def sick_plant(pen, size=1.0):
    """A stunted plant with three sick leaves, its foot at the origin, 100 high."""
    p = pen.at(size=size)
    p.line("M0 0C2 -16 -4 -30 0 -50M0 0C-4 -18 -14 -26 -26 -28M0 0C4 -14 14 -20 26 -22")
    sick_leaves(p.at(-22, -26, 0.66, -76, flip=True), p.at(22, -21, 0.66, 84))
    sick_leaves(p.at(0, -48, 0.8))


def sprout(pen, size=1.0):
    p = pen.at(size=size)
    p.line("M0 0L0 -26")
    leaves(p.at(-2, -12, 0.55, -58), p.at(2, -12, 0.55, 58), vein=False)
    leaves(p.at(0, -22, 0.62), vein=False)


def cutting(pen, length=90, grown=((0.98, 8), (0.62, -62), (0.48, 62))):
    """A piece of vine from the origin up, with its leaves: (how far up, turned by)."""
    pen.line(f"M0 0L0 {-length}")
    leaves(*(pen.at(0, -length * up, 0.62, turn) for up, turn in grown), vein=False)


def lifted(pen):
    """A plant's foot at the origin with three roots that hang from it."""
    pen.line("M0 0L-36 34M0 0L0 40M0 0L36 34")
    root(pen.at(-44, 72, 0.8, 104))
    root(pen.at(46, 70, 0.8, 76))
    root(pen.at(0, 84, 0.9, 90))


# ---- Things ----


def knife(pen):
    """A broad knife, its grip at the origin, its blade to the left, sharp below."""
    pen.area("M-12 -9L-92 -13C-104 -8 -104 4 -96 12L-12 9Z", edge=True)
    pen.limb("M-12 0L22 0", 14, edge=False)


def hoe(pen, length=150, width=13):
    """A hoe: its handle from the origin upwards, its blade at the foot, to the left."""
    pen.rod(f"M0 0L0 {-length}", width)
    pen.area("M8 -6L-14 -10C-34 -8 -52 4 -62 26L-34 46C-26 24 -12 12 8 8Z", BLACK, FINE, edge=True)


def jerrycan(pen):
    """A jerrycan, 76 wide and 104 high, its foot in the middle at the origin, its mouth up to the left."""
    pen.area("M-46 -78L-24 -102L-10 -90L-32 -64Z", BLACK, FINE, edge=True)
    pen.area("M-38 -8L-38 -62L-16 -86L30 -86C36 -86 38 -82 38 -76L38 -8C38 -2 36 0 30 0L-30 0C-36 0 -38 -2 -38 -8Z", edge=True)
    pen.area("M-6 -74L24 -74L24 -60L-18 -60Z", WHITE, FINE)
    pen.line("M-20 -40L20 -12M20 -40L-20 -12", FINE)


def basin(pen):
    """A basin seen a little from above: 170 wide, its rim around the origin, its foot at 74."""
    pen.area("M-84 0L-60 66C-58 74 -50 76 -42 76L42 76C50 76 58 74 60 66L84 0Z", edge=True)
    pen.area("M-86 0C-86 -28 86 -28 86 0C86 28 -86 28 -86 0Z")


def cut_basin(pen):
    """A basin cut open: 200 wide at the rim at -70, its foot at 70."""
    pen.area("M-92 -66L-76 58C-75 66 -70 70 -62 70L62 70C70 70 75 66 76 58L92 -66", WHITE, 11, edge=True)
    pen.line("M-92 -66L-104 -66M92 -66L104 -66", 11)


def sand(pen, points, r=3.2):
    for x, y in points:
        pen.dot(x, y, r)


def bucket(pen, handle=True):
    """A small bucket, 64 wide, its foot at the origin and its rim at -54."""
    if handle:
        pen.line("M-28 -54C-28 -92 28 -92 28 -54", FINE)
    pen.area("M-32 -54L-24 0L24 0L32 -54Z", edge=True)
    pen.line("M-34 -54L34 -54", BOLD)


def pot(pen):
    """A clay pot over a fire between stones, 124 wide and 122 high, the ground at the origin."""
    pen.area("M-24 0C-32 -12 -20 -20 -18 -36L-4 -40L12 -36C16 -22 30 -14 22 0Z", WHITE, FINE)
    pen.line("M-6 -2C-12 -12 -2 -16 -2 -24C8 -16 10 -10 6 -2", FINE)
    for x in (-44, 44):
        pen.area(f"M{x - 18} 0C{x - 24} -36 {x + 24} -36 {x + 18} 0Z", BLACK, FINE, edge=True)
    pen.area("M-28 -108C-62 -96 -70 -36 -24 -34L24 -34C70 -36 62 -96 28 -108Z", edge=True)
    pen.area("M-36 -122L36 -122L28 -108L-28 -108Z")


def steam(pen):
    for x in (-24, 0, 24):
        pen.line(f"M{x} 0C{x - 12} -12 {x + 12} -20 {x} -34", FINE)


def cloud(pen):
    pen.area("M-64 24C-96 22 -92 -20 -60 -18C-58 -50 -16 -56 -4 -32C18 -50 52 -36 48 -8C80 -12 84 24 56 24Z", edge=True)


def drop(pen, size=1.0):
    pen.at(size=size).area("M0 -14C7 -3 10 2 10 8C10 14 5 18 0 18C-5 18 -10 14 -10 8C-10 2 -7 -3 0 -14Z", BLACK, 1.5)


def drops(pen, points, size=0.8):
    for x, y in points:
        drop(pen.at(x, y), size)


def sun(pen, r=22):
    pen.area(circle(0, 0, r))
    for i in range(8):
        pen.at(turn=45 * i + 22.5).line(f"M{r + 12} 0L{r + 27} 0")


def circle(x, y, r):
    k = r * 0.5523
    left, right, up, down = x - r, x + r, y - r, y + r
    above = f"M{left} {y}C{left} {y - k} {x - k} {up} {x} {up}C{x + k} {up} {right} {y - k} {right} {y}"
    return f"{above}C{right} {y + k} {x + k} {down} {x} {down}C{x - k} {down} {left} {y + k} {left} {y}Z"


def fence(pen, left, right, foot, high, step):
    """Stakes with two rails."""
    pen.rod(f"M{left} {foot - high * 0.72}L{right} {foot - high * 0.72}", 12)
    pen.rod(f"M{left} {foot - high * 0.3}L{right} {foot - high * 0.3}", 12)
    x = left
    while x <= right:
        pen.rod(f"M{x} {foot}L{x} {foot - high}", 14)
        x += step


def cross(pen, r=27):
    """Not so."""
    d = f"M{-r} {-r}L{r} {r}M{r} {-r}L{-r} {r}"
    pen.line(d, 26, WHITE)
    pen.line(d, 15)


def tick(pen):
    """So."""
    d = "M-22 2L-6 20L24 -22"
    pen.line(d, 24, WHITE)
    pen.line(d, 13)


def arrow(pen, d, tip, turn):
    """A curve `d` with a head at `tip`; the head points up before it is turned."""
    pen.line(d, BOLD)
    pen.at(*tip, turn=turn).area("M0 -16L13 6L-13 6Z", BLACK, FINE)


def span(pen, x1, y1, x2, y2, bar=13):
    """From here to there: a line with a bar at each end and two heads."""
    length = math.hypot(x2 - x1, y2 - y1)
    p = pen.at(x1, y1, turn=math.degrees(math.atan2(y2 - y1, x2 - x1)))
    p.line(f"M0 {-bar}L0 {bar}M{length} {-bar}L{length} {bar}M6 0L{length - 6} 0")
    p.area("M4 0L18 -8L18 8Z", BLACK, FINE)
    p.area(f"M{length - 4} 0L{length - 18} -8L{length - 18} 8Z", BLACK, FINE)


def ground(pen, top=200, left=-10, right=250):
    pen.soil(f"M{left} {top}L{right} {top}L{right} 250L{left} 250Z")


def ridge(pen, middle, top, half=110, foot=214):
    """A ridge cut across."""
    left, right = middle - half, middle + half
    near, far = middle - half * 0.5, middle + half * 0.5
    up = f"C{near} {foot - 4} {near} {top} {middle} {top}"
    down = f"C{far} {top} {far} {foot - 4} {right} {foot}"
    pen.soil(f"M-10 {foot}L{left} {foot}{up}{down}L250 {foot}L250 250L-10 250Z")


def weevil(pen):
    """A weevil, its long snout to the left."""
    pen.line("M-8 8L-20 26L-28 28M6 10L4 30L-4 36M20 8L32 24L40 24M-8 -8L-20 -24L-28 -26M6 -10L4 -30L-4 -34M20 -8L32 -24L40 -24", FINE)
    pen.area("M0 0C2 -22 46 -20 48 0C46 20 2 22 0 0Z", BLACK, FINE)
    pen.area("M-22 0C-22 -14 0 -14 2 0C0 14 -22 14 -22 0Z", BLACK, FINE)
    pen.dot(-26, 0, 9)
    pen.line("M-26 0C-40 0 -46 6 -52 14", BOLD)


def moon(pen, left, right):
    """Of a moon, the half that shines is white."""
    pen.area(circle(0, 0, 15), WHITE, FINE)
    if not left:
        pen.area("M0 -15C-20 -15 -20 15 0 15C-9 6 -9 -6 0 -15Z", BLACK, FINE)
    if not right:
        pen.area("M0 -15C20 -15 20 15 0 15C9 6 9 -6 0 -15Z", BLACK, FINE)


def person_hoeing(pen):
    """A man who swings a hoe to the left; his feet at the origin."""
    pen.limb("M-2 -84L-22 -46L-18 -4L-30 -4M6 -84L22 -46L26 -4L14 -4", 15)
    pen.area("M-18 -70C-14 -100 -30 -120 -48 -136L-22 -156C0 -140 22 -110 24 -70Z", edge=True)
    head(pen.at(-54, -158, flip=True), "hat")
    pen.rod("M-142 -60L-44 -96", 12)
    pen.area("M-132 -70L-156 -58C-160 -44 -158 -30 -150 -16L-128 -26C-132 -40 -130 -52 -122 -60Z", BLACK, FINE, edge=True)
    pen.limb("M-30 -136L-58 -112L-84 -82", 13)
    pen.limb("M-22 -140L-20 -108L-52 -92", 13)


def digger(pen):
    """A man who digs sand, bent to the left; his feet at the origin."""
    pen.limb("M26 -66L6 -36L16 -4L2 -4M32 -66L46 -36L40 -4L28 -4", 14)
    pen.area("M44 -56C44 -92 14 -104 -14 -106L-26 -82C-6 -76 6 -66 12 -52Z", edge=True)
    head(pen.at(-38, -96, 0.95, flip=True), "none")
    pen.rod("M-8 -56L-62 -22", 12)
    pen.area("M-52 -34L-84 -24L-96 -2L-60 -2L-44 -18Z", BLACK, FINE, edge=True)
    pen.limb("M-14 -92L-8 -72L-24 -46", 12)


def child(pen):
    """A child whose arms reach up to both sides; the feet at the origin."""
    pen.limb("M-10 -50L-10 -4L-22 -4M12 -50L12 -4L0 -4", 17)
    pen.area("M-18 -110L18 -110L32 -34L-32 -34Z", edge=True)
    head(pen.at(0, -136, 1.25, flip=True), "none")
    pen.limb("M-16 -104L-46 -84", 14)
    pen.limb("M16 -104L36 -112L42 -124", 14)


def cow(pen):
    """A cow's head from the front."""
    pen.line("M-30 -38C-50 -44 -52 -62 -44 -70M30 -38C50 -44 52 -62 44 -70", 9)
    pen.area("M-34 -24C-50 -38 -62 -26 -62 -16C-52 -6 -38 -8 -32 -12Z")
    pen.area("M34 -24C50 -38 62 -26 62 -16C52 -6 38 -8 32 -12Z")
    pen.area("M-32 -36C-12 -44 12 -44 32 -36C36 -6 28 14 28 36C28 60 -28 60 -28 36C-28 14 -36 -6 -32 -36Z", edge=True)
    pen.line("M-27 22C-12 12 12 12 27 22", FINE)
    pen.dot(-16, -10, 5.5)
    pen.dot(16, -10, 5.5)
    pen.dot(-10, 36, 4)
    pen.dot(10, 36, 4)


def thumb_up(pen):
    """A fist with its thumb up: the upper joint black, all else white."""
    pen.area("M-26 -30L-25 -62L35 -62L52 -20L52 20L-26 20Z")
    pen.area("M-25 -62C-29 -136 39 -136 35 -62Z", BLACK, FINE)
    pen.area("M-20 -34L30 -34C50 -24 58 10 50 60L-44 60C-56 60 -60 40 -58 20L-58 -16Z")
    for y in (-20, 8, 36):
        pen.area(f"M-44 {y - 14}L12 {y - 14}C28 {y - 14} 28 {y + 14} 12 {y + 14}L-44 {y + 14}C-62 {y + 14} -62 {y - 14} -44 {y - 14}Z")


def cupped(pen):
    """An open hand that holds something up, seen from the side."""
    pen.area("M-78 -14C-92 -20 -96 -2 -84 8C-60 36 -30 46 20 44L70 62L120 96L140 60L92 26C86 0 70 -12 56 -22C46 -30 36 -18 44 -8L52 4C20 14 -40 14 -78 -14Z", BLACK, FINE, edge=True)


PICTURES = {}


def picture(make):
    PICTURES[make.__name__.replace("_", "-")] = make
    return make


def svg(name):
    out = []
    PICTURES[name](Pen(out))
    side = number(SIDE)
    root_tag = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}">'
    lines = f'<g fill="none" stroke="{BLACK}" stroke-width="{number(BOLD)}" stroke-linecap="round" stroke-linejoin="round">'
    return "\n".join([root_tag + lines, *(mark.svg() for mark in fewer(out)), "</g></svg>", ""])


# ---- Steps ----


@picture
def mark_plants(pen):
    ridge(pen, 92, 176, 130)
    plant(pen.at(88, 180), 1.3)
    pen.rod("M190 30L190 222", 15)
    fist(pen.at(190, 84), arm=((30, 0), (110, -34)))


@picture
def gather_sand(pen):
    # The heap dries under a roof; a hand with a bowl fills a small bucket.
    pen.line("M-10 212L250 212")
    pen.rod("M16 212L16 66", 13)
    pen.rod("M228 212L228 66", 13)
    pen.soil("M-8 66L70 14L170 14L248 66Z")
    pen.area("M28 210C54 190 60 130 86 130C112 130 120 190 146 210Z")
    sand(pen, [(84, 150), (70, 172), (98, 168), (60, 196), (84, 192), (110, 196)])
    bucket(pen.at(186, 210, 0.95), handle=False)
    flat_hand(pen.at(196, 112, 0.8), arm=((34, -10), (120, -34)))
    pen.area("M116 106C116 146 164 150 178 112Z", edge=True)
    sand(pen, [(172, 128), (182, 138), (178, 148)])


@picture
def check_plants(pen):
    # The sound plant keeps its stick; from the sick one the stick is pulled out.
    ground(pen, 206)
    plant(pen.at(60, 208), 0.76)
    pen.rod("M118 214L118 96", 13)
    tick(pen.at(58, 70, 0.9))
    sick_plant(pen.at(184, 208), 0.88)
    pen.rod("M152 118L152 34", 13)
    fist(pen.at(152, 76, 0.86), arm=((30, 0), (150, -40)))
    pen.at(152, 22).area("M0 -16L16 8L-16 8Z", BLACK, FINE)


@picture
def cut_vines(pen):
    ridge(pen, 130, 194, 180, 222)
    for x in (106, 136):
        pen.rod(f"M{x} 204L{x} 100", 13)
    open_hand(pen.at(40, 216, 0.9), arm=0)
    pen.rod("M166 202L166 44", 13)
    leaves(pen.at(160, 78, 0.66, -64))
    leaves(pen.at(172, 66, 0.66, 64))
    leaves(pen.at(166, 44, 0.6, -4))
    knife(pen.at(198, 98, 0.52))
    fist(pen.at(208, 98, 0.85, 90), arm=((30, 0), (60, -60)), thumb=False)


@picture
def harvest(pen):
    pen.soil("M-10 186L66 186L88 202L112 188L140 206L170 186L196 200L216 186L250 186L250 250L-10 250Z")
    hoe(pen.at(52, 160, 0.95, 14), 190)
    lifted(pen.at(154, 84, 0.92))
    cutting(pen.at(154, 70, turn=-62), 40, ((1, 0),))
    cutting(pen.at(154, 70, turn=70), 44, ((1, 0),))
    reaching(pen.at(156, 68, 0.9), arm=((0, -36), (40, -110)))


@picture
def fill_container(pen):
    # Little sand below, much on top.
    cut_basin(pen.at(120, 158))
    pen.line("M30 102C80 92 160 92 210 102")
    top = [(48, 118), (78, 112), (108, 116), (138, 110), (170, 116), (192, 122), (64, 136), (96, 132), (124, 136), (154, 132), (180, 140)]
    sand(pen, [*top, (120, 158), (52, 181), (120, 181), (188, 181), (120, 212)])
    for x, y in ((84, 164), (156, 164), (86, 199), (154, 199)):
        root(pen.at(x, y, 0.46), edge=False, marks=False)
    flat_hand(pen.at(126, 54, 0.95), arm=((34, -12), (130, -46)))
    sand(pen, [(84, 66), (94, 78), (80, 84), (104, 70)])


@picture
def monthly_check(pen):
    # Moons: a month goes by. One root is good, one goes out.
    for x, left, right in ((22, 1, 0), (58, 1, 1), (94, 0, 1)):
        moon(pen.at(x, 26), left, right)
    basin(pen.at(88, 158, 0.94))
    root(pen.at(58, 160, 0.42, -4), marks=False, edge=False)
    sand(pen, [(96, 170), (118, 156), (138, 162), (94, 150), (114, 172)])
    root(pen.at(100, 98, 0.95))
    fist(pen.at(156, 96, 0.85), arm=((30, 0), (120, -56)), thumb=False)
    rotten(pen.at(196, 214, 0.66))
    cross(pen.at(206, 164), 17)


@picture
def last_check(pen):
    # The root keeps its sprouts and goes from the basin to the bed.
    basin(pen.at(68, 158, 0.72))
    sand(pen, [(34, 160), (54, 152), (84, 154), (102, 162), (66, 166)])
    for x, turn in ((46, -18), (84, 0), (120, 18)):
        cutting(pen.at(x, 84, 1, turn), 22, ((1, 0),))
    root(pen.at(86, 102, 1.05))
    fist(pen.at(148, 100, 0.85), arm=((30, 0), (120, -56)), thumb=False)
    arrow(pen, "M140 142C160 146 178 156 188 172", (190, 180), 160)
    pen.soil("M130 224C136 202 148 202 156 218C164 202 180 202 188 218C196 202 212 202 220 218C228 202 236 202 250 224L250 250L130 250Z")


@picture
def prepare_bed(pen):
    fence(pen, 14, 226, 152, 72, 35)
    pen.soil("M-10 190C14 170 30 170 46 188C62 170 82 170 98 188C114 170 134 170 150 190L250 190L250 250L-10 250Z")
    person_hoeing(pen.at(186, 222))


@picture
def plant_bed(pen):
    pen.soil("M6 22L234 22L234 108L6 108Z")
    pen.soil("M6 130L234 130L234 216L6 216Z")
    for x in (46, 120, 194):
        root(pen.at(x, 66, 0.52))
    root(pen.at(46, 172, 0.52))
    root(pen.at(112, 172, 0.52))
    # Loose soil drawn over the rest of the row.
    pen.area("M104 190C100 166 112 148 142 142C178 132 250 126 250 172C250 222 134 220 104 190Z", edge=True)
    sand(pen, [(120, 162), (116, 178), (124, 192), (140, 152)])
    open_hand(pen.at(240, 176, 0.8, -84, flip=True), arm=60)


@picture
def water_bed(pen):
    pen.soil("M-10 212C6 192 34 192 48 210C64 192 98 192 112 210C128 192 160 192 174 210C190 192 222 192 250 212L250 250L-10 250Z")
    for x in (28, 86, 146, 206):
        sprout(pen.at(x, 208), 0.84)
    jerrycan(pen.at(196, 84, 0.95, -62))
    fist(pen.at(160, 34, 0.8, 28), arm=((30, 0), (110, -30)), thumb=False)
    drops(pen, [(84, 80), (58, 92), (80, 108), (104, 104), (40, 114), (58, 130), (112, 130)], 0.8)


@picture
def cut_for_planting(pen):
    pen.soil("M-10 196L250 196L250 250L-10 250Z")
    root(pen.at(108, 221, 0.66))
    for x in (76, 104):
        pen.rod(f"M{x} 206L{x} 168", 13)
    pen.rod("M134 206L134 44", 13)
    leaves(pen.at(134, 48, 0.68, 2))
    leaves(pen.at(142, 128, 0.68, 62))
    fist(pen.at(134, 88, 0.85, flip=True), arm=((30, 0), (170, -20)), thumb=False)
    knife(pen.at(186, 168, 0.84))
    fist(pen.at(200, 168, 0.85, 90), arm=((30, 0), (60, -60)), thumb=False)


@picture
def plant_field(pen):
    cloud(pen.at(80, 46, 0.82))
    drops(pen, [(28, 84), (60, 84), (84, 84), (116, 84)], 0.75)
    pen.soil("M-10 176L250 176L250 250L-10 250Z")
    for x in (38, 112, 192):
        # The joints that are buried stand out from the soil.
        pen.line(f"M{x} 178L{x - 12} 226", 19, WHITE)
        pen.line(f"M{x} 178L{x - 12} 226")
        pen.dot(x - 4, 196, 8)
        pen.dot(x - 11, 222, 8)
    for x in (38, 112):
        cutting(pen.at(x, 180), 40, ((1, 0), (0.25, -66), (0.2, 66)))
    pen.line("M192 180L192 80")
    leaves(pen.at(192, 154, 0.6, -76), vein=False)
    leaves(pen.at(192, 76, 0.6, -8), vein=False)
    fist(pen.at(192, 112, 0.85), arm=((30, 0), (110, -50)), thumb=False)


@picture
def first_harvest(pen):
    # A hand feels beneath a plant for a root; a pot waits on the fire.
    pen.soil("M-10 222C14 216 40 132 84 132C128 132 146 216 162 222L250 222L250 250L-10 250Z")
    plant(pen.at(84, 138), 0.92)
    root(pen.at(94, 188, 0.74, -14))
    flat_hand(pen.at(54, 198, 0.92, -22, flip=True), arm=((34, -12), (110, -40)))
    pot(pen.at(192, 222, 0.7))
    steam(pen.at(192, 128, 0.86))


# ---- Cautions ----


@picture
def caution_rot(pen):
    # Neither into the cow nor into the pot.
    rotten(pen.at(120, 42, 1.25))
    cow(pen.at(62, 184, 0.86))
    cross(pen.at(62, 104), 17)
    pot(pen.at(182, 234, 0.8))
    cross(pen.at(180, 104), 17)


@picture
def caution_virus(pen):
    ground(pen, 204)
    sick_plant(pen.at(92, 206), 1.5)
    knife(pen.at(206, 180, 0.72))
    fist(pen.at(212, 180, 0.8, 90), arm=((30, 0), (60, -60)), thumb=False)
    cross(pen.at(198, 50), 30)


@picture
def caution_cracks(pen):
    pen.soil("M-10 204C30 194 50 100 112 100C160 100 176 194 250 204L250 250L-10 250Z")
    pen.area("M86 100L98 122L90 134L104 154L114 134L108 120L118 100Z", BLACK, FINE, edge=True)
    root(pen.at(104, 190, 1.05), marks=False)
    for x, y in ((86, 186), (104, 202), (120, 184), (132, 197), (70, 194)):
        pen.dot(x, y, 5.5)
    weevil(pen.at(106, 54, 1.1, -26))


@picture
def caution_heavy_sand(pen):
    pen.line("M-10 222L250 222")
    # Bent under a great sack.
    pen.limb("M56 158L42 188L50 218L64 218M62 158L84 188L76 218L90 218", 14)
    pen.area("M46 164C42 140 60 116 92 108L114 126C102 138 90 152 84 174Z", edge=True)
    head(pen.at(126, 138, 0.9), "none")
    pen.area("M60 108C10 116 2 98 4 62C6 20 24 12 66 14C92 15 106 18 130 6C120 30 120 84 134 112C108 102 90 106 60 108Z", edge=True)
    pen.line("M112 34L110 44M108 56L108 66M110 78L112 88", FINE)
    pen.limb("M98 126L110 98", 12)
    cross(pen.at(60, 60), 26)
    # Upright with a small bucket.
    standing(pen.at(186, 222, 0.92), "M-16 -114L-28 -92L-24 -64", "M16 -114L34 -88L38 -62")
    bucket(pen.at(220, 214, 0.54))
    tick(pen.at(186, 36, 0.8))


@picture
def caution_riverbed(pen):
    pen.soil("M-10 20L92 20C116 20 122 34 112 46C88 66 70 110 70 206L250 206L250 250L-10 250Z")
    pen.line("M60 22L72 52L60 74L68 100")
    for x, y, turn in ((116, 84, 20), (92, 118, 50), (140, 66, 5)):
        pen.at(x, y, 1, turn).area("M-12 -10L10 -12L14 8L-8 12Z", BLACK, FINE)
    digger(pen.at(186, 206))
    cross(pen.at(200, 46), 30)


@picture
def caution_water_children(pen):
    pen.line("M-10 222L250 222")
    # A drum with its lid on, behind a fence; a woman holds a child back.
    pen.area("M20 66L20 218L98 218L98 66Z")
    pen.area("M10 48L108 48L108 68L10 68Z")
    pen.line("M44 46C44 28 74 28 74 46")
    drop(pen.at(59, 104, 1), 1.3)
    fence(pen, 14, 122, 222, 76, 27)
    child(pen.at(160, 222, 0.62))
    standing(pen.at(208, 222, 1.05), "M-14 -114L-28 -88L-32 -66", "M14 -114L26 -84L20 -62")


@picture
def caution_store_dry(pen):
    cut_basin(pen.at(112, 168, 0.9))
    pen.line("M32 124C70 114 154 114 192 124")
    sand(pen, [(54, 138), (84, 132), (112, 136), (142, 132), (170, 138), (112, 166), (60, 186), (112, 190), (166, 186), (112, 214)])
    for x, y in ((78, 162), (146, 162), (80, 204), (144, 204)):
        root(pen.at(x, y, 0.42), marks=False, edge=False)
    jerrycan(pen.at(212, 64, 0.84, -62))
    drops(pen, [(108, 74), (98, 94), (118, 98)], 0.8)
    cross(pen.at(44, 54), 30)


@picture
def caution_forecast(pen):
    # With cuttings in the hand, she first looks at the sky.
    sun(pen.at(184, 50), 18)
    cloud(pen.at(164, 74, 0.6))
    drops(pen, [(140, 108), (164, 110), (188, 108)], 0.8)
    ground(pen, 222)
    for turn in (86, 108, 130):
        cutting(pen.at(92, 164, 1, turn), 54, ((1, 0),))
    standing(pen.at(60, 222, 1.1), "M-14 -114L-28 -84L-2 -56L30 -54", "M16 -114L46 -124L22 -156")


@picture
def caution_try_first(pen):
    pen.line("M-10 222L250 222")
    # A small pot cut open with a few roots; the old vines are kept as well.
    pen.area("M8 140C-2 182 10 218 28 218L66 218C84 218 96 182 86 140", WHITE, 9, edge=True)
    pen.line("M6 156C30 148 64 148 88 156", FINE)
    root(pen.at(47, 174, 0.46), marks=False)
    root(pen.at(47, 201, 0.4), marks=False)
    standing(pen.at(128, 222, 1.05), "M-14 -114L-30 -96L-50 -84", "M14 -114L32 -98L50 -86")
    pen.soil("M164 220C172 198 186 192 204 192C222 192 238 198 246 220Z")
    plant(pen.at(204, 196), 0.62)


# ---- Measures: what is measured is black ----


@picture
def measure_hand(pen):
    open_hand(pen.at(90, 206, 1.4), arm=30)
    span(pen, 204, 206, 204, 20)


@picture
def measure_finger(pen):
    open_hand(pen.at(90, 214, 1.4), black=(1,), arm=30)
    span(pen, 204, 138, 204, 36)


@picture
def measure_thumb(pen):
    thumb_up(pen.at(96, 150))
    span(pen, 206, 96, 206, 24)


@picture
def measure_jerrycan(pen):
    jerrycan(pen.at(122, 222, 2.05))


@picture
def measure_basin(pen):
    basin(pen.at(120, 92, 1.28))
    sand(pen, [(60, 92), (86, 84), (112, 82), (140, 84), (168, 86), (186, 94), (76, 100), (102, 98), (128, 100), (154, 100), (100, 110), (138, 110)])


@picture
def measure_bundle(pen):
    for turn in (-24, -12, 0, 12, 24):
        p = pen.at(120, 160, turn=turn)
        p.line("M0 70L0 -60", 15, WHITE)
        p.line("M0 70L0 -60")
    for turn in (-34, 34, -17, 17, 0):
        leaves(pen.at(120, 168, turn=turn).at(0, -78, 0.95))
    pen.area("M98 150L142 150L142 172L98 172Z", BLACK, FINE, edge=True)


@picture
def measure_step(pen):
    # Two feet, one pace apart.
    pen.limb("M120 10L66 96L62 170L86 176M120 10L176 92L196 168L222 160", 26)
    pen.area("M86 -10L154 -10L176 66L64 66Z", edge=True)
    span(pen, 62, 212, 196, 212)


# ---- The season ----


@picture
def season_dry(pen):
    sun(pen.at(120, 78), 34)
    pen.area("M-10 158L250 158L250 250L-10 250Z")
    pen.line("M-10 200L40 186L64 158M40 186L62 216L50 250M62 216L120 202L136 158M120 202L142 250M136 180L190 196L200 158M190 196L250 212M190 196L176 250")


@picture
def season_rain(pen):
    cloud(pen.at(124, 84, 1.4))
    drops(pen, [(64, 148), (108, 152), (152, 148), (194, 152), (84, 196), (128, 200), (172, 196)], 1.25)


@picture
def season_harvest(pen):
    cutting(pen.at(120, 70, turn=-48), 40, ((1, 0),))
    cutting(pen.at(120, 70, turn=48), 40, ((1, 0),))
    cutting(pen.at(120, 70), 30, ((1, 0),))
    pen.line("M120 66L78 108M120 66L120 110M120 66L162 108")
    root(pen.at(66, 154, 0.9, 108))
    root(pen.at(174, 154, 0.9, 72))
    root(pen.at(120, 168, 1.1, 90))


@picture
def season_food(pen):
    steam(pen.at(120, 70, 1.5))
    for x, turn in ((84, -20), (156, 20), (120, -4)):
        root(pen.at(x, 112, 0.75, turn), marks=False)
    pen.area("M14 122L226 122C222 180 180 206 150 208L90 208C60 206 18 180 14 122Z", edge=True)
    pen.line("M8 122L232 122", 11)


@picture
def season_store(pen):
    cut_basin(pen.at(120, 130, 1.05))
    pen.line("M26 74C80 62 160 62 214 74")
    for x, y in ((80, 116), (160, 116), (82, 164), (158, 164)):
        root(pen.at(x, y, 0.52), marks=False, edge=False)
    sand(pen, [(54, 88), (88, 82), (120, 86), (152, 82), (186, 88), (120, 118), (60, 142), (120, 142), (180, 142), (120, 168)])


@picture
def season_bed(pen):
    fence(pen, 20, 220, 134, 100, 40)
    pen.soil("M-10 210C6 184 54 184 64 208C80 184 160 184 176 208C186 184 234 184 250 210L250 250L-10 250Z")
    for x in (64, 176):
        sprout(pen.at(x, 196), 1.6)


@picture
def soil_moist(pen):
    # A handful of soil, pressed, keeps its shape; the drop says that it is moist.
    pen.soil("M70 112C62 50 106 42 128 44C168 42 182 84 170 116C150 142 90 138 70 112Z")
    pen.at(122, 86).area("M0 -34C16 -8 24 2 24 16C24 32 12 40 0 40C-12 40 -24 32 -24 16C-24 2 -16 -8 0 -34Z", WHITE, 1.5)
    drop(pen.at(122, 90), 1.7)
    cupped(pen.at(120, 138))


@picture
def calendar_day(pen):
    pen.area("M24 46L216 46L216 216L24 216Z")
    pen.area("M24 46L216 46L216 84L24 84Z", BLACK, BOLD)
    for x in (72, 168):
        pen.limb(f"M{x} 24L{x} 60", 12)
    for x in (54, 98, 142, 186):
        for y in (112, 150, 188):
            if (x, y) == (142, 150):
                pen.area("M124 132L160 132L160 168L124 168Z", BLACK, FINE)
            else:
                pen.dot(x, y, 6)


# ---- Marks ----


@picture
def mark_draft(pen):
    # A page whose edge is not yet drawn to the end, and a pencil.
    pen.line("M40 24L64 24M88 24L112 24M136 24L160 24M180 40L180 60M40 48L40 72M40 96L40 120M40 144L40 168M40 192L40 212L60 212M84 212L108 212M132 212L156 212M180 212L180 192", 9)
    p = pen.at(96, 168, 1, 42)
    p.area("M-16 -24L0 10L16 -24L16 -140L-16 -140Z", edge=True)
    p.area("M-7 -6L0 10L7 -6Z", BLACK, FINE)
    p.line("M-16 -24L16 -24M-16 -120L16 -120", BOLD)


@picture
def tick_box(pen):
    pen.area("M40 40L200 40L200 200L40 200Z", WHITE, 14)


@picture
def tick_done(pen):
    pen.area("M40 40L200 40L200 200L40 200Z", WHITE, 14)
    d = "M72 118L110 160L212 26"
    pen.line(d, 38, WHITE)
    pen.line(d, 20)


def main(arguments):
    if arguments == ["--contact"]:
        print(contact())
        return 0
    files = {f"{name}.svg": svg(name) for name in PICTURES}
    if not arguments:
        for name, text in files.items():
            (FOLDER / name).write_text(text)
        return 0
    if arguments != ["--check"]:
        print(__doc__, file=sys.stderr)
        return 2
    here = {path.name for path in FOLDER.glob("*.svg")} - {f"{name}.svg" for name in OTHERS}
    drawn = {name: (FOLDER / name).read_text() for name in here}
    wrong = sorted(name for name in here | set(files) if drawn.get(name) != files.get(name))
    for name in wrong:
        print(f"{name}: not as draw.py draws it; run templates/pictures/draw.py", file=sys.stderr)
    return 1 if wrong else 0


def contact():
    """All pictures as they lie on paper, in millimetres."""
    columns, cell, gap, label = 7, 30, 4, 6
    rows = -(-len(PICTURES) // columns)
    width, height = columns * (cell + gap) + gap, rows * (cell + gap + label) + gap
    size = f'width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}"'
    out = [f'<svg xmlns="http://www.w3.org/2000/svg" {size}><rect width="{width}" height="{height}" fill="{WHITE}"/>']
    for i, name in enumerate(PICTURES):
        x, y = gap + i % columns * (cell + gap), gap + i // columns * (cell + gap + label)
        place = f'x="{x}" y="{y}" width="{cell}" height="{cell}"'
        out.append(svg(name).replace("<svg ", f"<svg {place} ", 1))
        out.append(f'<rect {place} fill="none" stroke="{BLACK}" stroke-width="0.15"/>')
        out.append(f'<text x="{x}" y="{y + cell + 3.6}" font-family="Andika, sans-serif" font-size="2.7">{name}</text>')
    return "\n".join([*out, "</svg>"])


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
