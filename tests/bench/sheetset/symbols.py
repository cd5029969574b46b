"""Component symbols about their own middle, and where their ports lie.

A kind says its letter in designations, its ports as {name: (dx, dy)} (dy < 0: the port faces up), the side and
distance of its designation, and how it is drawn.
"""
from collections import namedtuple

Kind = namedtuple("Kind", "name letter ports tag_side tag_dx draw")
UP_DOWN = {"A": -2.5, "B": 2.5, "P": -2.5, "T": 2.5}


def zigzag(pen, x0, x1, y, half=1.4):
    step = (x1 - x0) / 6
    pen.path([(x0, y)] + [(x0 + step * (k + 0.5), y + (half if k % 2 else -half)) for k in range(6)] + [(x1, y)])


def solenoid(pen, x, y, side):
    """Box with a diagonal at the valve's upper half; side -1: to the left of x."""
    pen.box(x, y - 5, x + 7 * side, y)
    pen.line(x + 2 * side, y, x + 5 * side, y - 5)


def square(pen, x, y, half=5.0):
    pen.box(x - half, y - half, x + half, y + half)


def parallel(pen, x, y):
    pen.arrow(x - 2.5, y + 5, x - 2.5, y - 5)
    pen.arrow(x + 2.5, y - 5, x + 2.5, y + 5)


def crossed(pen, x, y):
    pen.arrow(x - 2.5, y + 5, x + 2.5, y - 5)
    pen.arrow(x - 2.5, y - 5, x + 2.5, y + 5)


def blocked(pen, x, y, way):
    pen.line(x, y, x, y - 2 * way)
    pen.line(x - 1.2, y - 2 * way, x + 1.2, y - 2 * way)


def closed_centre(pen, x, y):
    tandem_top(pen, x, y)
    blocked(pen, x - 2.5, y + 5, 1)
    blocked(pen, x + 2.5, y + 5, 1)


def tandem_top(pen, x, y):
    blocked(pen, x - 2.5, y - 5, -1)
    blocked(pen, x + 2.5, y - 5, -1)


def tandem_centre(pen, x, y):
    tandem_top(pen, x, y)
    pen.path([(x - 2.5, y + 5), (x - 2.5, y + 2), (x + 2.5, y + 2), (x + 2.5, y + 5)])


def port_letters(pen, x, y):
    for name, dx in UP_DOWN.items():
        base = y - 6 if name in "AB" else y + 7.7
        pen.text(x + dx * 1.36, base, name, 2.2, "right" if dx < 0 else "left")


def three_positions(centre):
    def draw(pen, x, y):
        for middle in (x - 10, x, x + 10):
            square(pen, middle, y)
        parallel(pen, x - 10, y)
        centre(pen, x, y)
        crossed(pen, x + 10, y)
        for side in (-1, 1):
            solenoid(pen, x + 15 * side, y, side)
            zigzag(pen, x + 15 * side, x + 21.5 * side, y + 2.6)
        port_letters(pen, x, y)
    return draw


def two_positions(shifted, rest):
    def draw(pen, x, y):
        square(pen, x - 10, y)
        square(pen, x, y)
        shifted(pen, x - 10, y)
        rest(pen, x, y)
        solenoid(pen, x - 15, y, -1)
        zigzag(pen, x + 5, x + 12, y)
        port_letters(pen, x, y)
    return draw


def relief(pen, x, y):
    square(pen, x, y, 4.5)
    pen.arrow(x - 1.6, y - 4.5, x - 1.6, y + 4.5)
    _adjustable_spring(pen, x, y)
    pen.path([(x, y - 7), (x - 7, y - 7), (x - 7, y), (x - 4.5, y)], 0.25, "drain")


def reducing(pen, x, y):
    square(pen, x, y, 4.5)
    pen.arrow(x, y - 4.5, x, y + 4.5)
    _adjustable_spring(pen, x, y)
    pen.path([(x, y + 7), (x - 7, y + 7), (x - 7, y), (x - 4.5, y)], 0.25, "drain")


def _adjustable_spring(pen, x, y):
    zigzag(pen, x + 4.5, x + 11, y)
    pen.arrow(x + 5.2, y + 3, x + 10.3, y - 3, 0.25, 1.5)


def check(pen, x, y):
    pen.circle(x, y, 2)
    pen.path([(x - 3, y - 0.17), (x, y + 2.83), (x + 3, y - 0.17)])


def pump(pen, x, y):
    pen.circle(x, y, 7)
    pen.path([(x, y - 7), (x - 2.4, y - 3), (x + 2.4, y - 3)], fill=True)
    for shift in (-0.8, 0.8):
        pen.line(x + 6.95, y + shift, x + 12.05, y + shift)


def electric_motor(pen, x, y):
    pen.circle(x, y, 6)
    pen.text(x, y + 1.5, "M", 4, "middle")


def hydraulic_motor(pen, x, y):
    pen.circle(x, y, 7)
    pen.path([(x, y - 2.6), (x - 2.4, y - 6.5), (x + 2.4, y - 6.5)], fill=True)
    pen.path([(x, y + 2.6), (x - 2.4, y + 6.5), (x + 2.4, y + 6.5)], fill=True)


def diamond(pen, x, y):
    pen.path([(x, y - 6), (x + 6, y), (x, y + 6), (x - 6, y)], close=True)


def filter_(pen, x, y):
    diamond(pen, x, y)
    pen.line(x - 6, y, x + 6, y, 0.25, "drain")


def cooler(pen, x, y):
    diamond(pen, x, y)
    pen.arrow(x - 2, y, x - 9, y)
    pen.arrow(x + 2, y, x + 9, y)


def shut_off(pen, x, y):
    pen.path([(x - 3, y - 5), (x + 3, y - 5), (x, y)], close=True)
    pen.path([(x - 3, y + 5), (x + 3, y + 5), (x, y)], close=True)


def throttle(pen, x, y):
    pen.line(x, y - 6, x, y + 6)
    for side in (-1, 1):
        near, far = x + 1.1 * side, x + 3.2 * side
        pen.curve((far, y - 4), [((near, y - 2), (near, y + 2), (far, y + 4))])
    pen.arrow(x - 5, y + 5, x + 5, y - 5, 0.25)


def cylinder(pen, x, y):
    pen.box(x - 20, y - 5, x + 20, y + 5)
    pen.box(x - 8, y - 5, x - 5, y + 5)
    pen.line(x - 5, y - 1, x + 30, y - 1)
    pen.line(x - 5, y + 1, x + 30, y + 1)
    pen.line(x + 30, y - 1, x + 30, y + 1)


def gauge(pen, x, y):
    pen.circle(x, y, 5)
    pen.arrow(x - 2.4, y + 2.4, x + 2.8, y - 2.8)


def accumulator(pen, x, y):
    k = 3.5 * 0.5523
    pen.curve((x - 3.5, y + 4.5), [
        ((x - 3.5, y + 4.5), (x - 3.5, y - 4.5), (x - 3.5, y - 4.5)),
        ((x - 3.5, y - 4.5 - k), (x - k, y - 8), (x, y - 8)), ((x + k, y - 8), (x + 3.5, y - 4.5 - k), (x + 3.5, y - 4.5)),
        ((x + 3.5, y - 4.5), (x + 3.5, y + 4.5), (x + 3.5, y + 4.5)),
        ((x + 3.5, y + 4.5 + k), (x + k, y + 8), (x, y + 8)), ((x - k, y + 8), (x - 3.5, y + 4.5 + k), (x - 3.5, y + 4.5)),
    ], close=True)
    pen.line(x - 3.5, y, x + 3.5, y)
    pen.path([(x, y - 2), (x - 1.5, y - 4.6), (x + 1.5, y - 4.6)], close=True)


def tank(pen, x, y):
    pen.path([(x - 8, y - 3), (x - 8, y + 4), (x + 8, y + 4), (x + 8, y - 3)])


VALVE_PORTS = {"A": (-2.5, -5), "B": (2.5, -5), "P": (-2.5, 5), "T": (2.5, 5)}
# variant -> (kind, open passages at rest); the passages are read from what the drawing functions above draw
REST = {"closed": [], "tandem": [["P", "T"]], "crossed": [["P", "B"], ["A", "T"]], "parallel": [["P", "A"], ["B", "T"]]}
KINDS = {
    "closed": Kind("directional-valve", "V", VALVE_PORTS, "left", 24, three_positions(closed_centre)),
    "tandem": Kind("directional-valve", "V", VALVE_PORTS, "left", 24, three_positions(tandem_centre)),
    "crossed": Kind("directional-valve", "V", VALVE_PORTS, "left", 24, two_positions(parallel, crossed)),
    "parallel": Kind("directional-valve", "V", VALVE_PORTS, "left", 24, two_positions(crossed, parallel)),
    "relief": Kind("relief-valve", "V", {"P": (0, -4.5), "T": (0, 4.5)}, "right", 13, relief),
    "reducing": Kind("reducing-valve", "V", {"P": (0, -4.5), "A": (0, 4.5)}, "right", 13, reducing),
    "check": Kind("check-valve", "V", {"A": (0, 2.83), "B": (0, -2)}, "right", 5, check),
    "pump": Kind("pump", "P", {"P": (0, -7), "S": (0, 7)}, "left", 9, pump),
    "electric-motor": Kind("electric-motor", "M", {}, "right", 8, electric_motor),
    "motor": Kind("motor", "A", {"A": (0, -7), "B": (0, 7)}, "left", 9, hydraulic_motor),
    "filter": Kind("filter", "Z", {"A": (0, -6), "B": (0, 6)}, "right", 8, filter_),
    "cooler": Kind("cooler", "Z", {"A": (0, -6), "B": (0, 6)}, "right", 11, cooler),
    "shut-off": Kind("shut-off-valve", "V", {"A": (0, 5), "B": (0, -5)}, "right", 5, shut_off),
    "throttle": Kind("flow-control", "V", {"A": (0, -6), "B": (0, 6)}, "right", 7, throttle),
    "cylinder": Kind("cylinder", "A", {"A": (-17, 5), "B": (17, 5)}, "left", 22, cylinder),
    "gauge": Kind("gauge", "S", {"P": (0, 5)}, "right", 7, gauge),
    "accumulator": Kind("accumulator", "Z", {"P": (0, 8)}, "right", 6, accumulator),
    "tank": Kind("tank", "", {"T": (0, 2)}, "right", 10, tank),
}
