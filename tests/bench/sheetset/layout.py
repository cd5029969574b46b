"""Lays one sheet out: three rows of components, four channels of horizontal tracks between them, flags at line ends.

Nothing overlaps by construction: vertical lines stay inside one channel and keep apart from each other; the first
PLAIN millimetres from a flag along its line hold the line's number; texts stand in the rows, lines in the channels.
"""
from dataclasses import dataclass, field

from .frame import COLUMN_EDGES, clear_of_edges, zone_of
from .symbols import KINDS, REST

ROW_Y = [101, 178, 266]
TRACKS = [[54, 68, 76, 84], [122, 130, 138, 146, 154], [196, 204, 218, 226, 234, 242], [284, 292, 300, 318, 326]]
SLOT_X = [117, 211, 305, 399, 489]
LEFT_BASE, RIGHT_BASE, TOP_BASE, BOTTOM_BASE = 45.5, 558.5, 38, 372
BOTTOM_SLOTS = [285, 310, 334, 358, 381]
PLAIN = 14
APART = 4.5
FLAGS = 20
ALWAYS = ["cylinder", "pump", "relief", "check", "filter"]
VALVES = list(REST)
OFTEN = ["check", "shut-off", "throttle", "gauge", "accumulator", "motor", "cooler", "reducing", "relief", "filter", "cylinder"]


@dataclass
class Part:
    variant: str
    tag: str
    x: float
    y: float
    setting: str = ""

    @property
    def kind(self):
        return KINDS[self.variant]

    def ports(self):
        return {name: (self.x + dx, self.y + dy) for name, (dx, dy) in self.kind.ports.items()}


@dataclass
class Flag:
    """direction: where the flag points from its base, (1, 0) is right, (0, -1) up."""
    x: float
    y: float
    direction: tuple
    flow: str = ""
    number: int = 0
    label: str = ""
    text: str = ""
    target: tuple = ()

    def along(self, distance):
        return self.x + self.direction[0] * distance, self.y + self.direction[1] * distance

    def zone(self, flag_length):
        return zone_of(*self.along(flag_length / 2))


@dataclass
class Drop:
    """A vertical line from a port or flag (at y) to its net's track."""
    x: float
    y: float
    part: Part = None
    port: str = ""
    flag: Flag = None


@dataclass
class Net:
    y: float
    drops: list = field(default_factory=list)
    left: Flag = None
    right: Flag = None
    style: str = "main"

    def flags(self):
        return [f for f in [self.left, self.right] + [d.flag for d in self.drops] if f]

    def span(self):
        xs = [d.x for d in self.drops] + [f.x for f in (self.left, self.right) if f]
        return min(xs), max(xs)


@dataclass
class Layout:
    number: int
    parts: list
    channels: list   # lists of nets

    def nets(self):
        return [net for channel in self.channels for net in channel]

    def flags(self):
        return [flag for net in self.nets() for flag in net.flags()]


def lay_out(number, rng, flag_length):
    """rng: the sheet's own random numbers; flag_length: room that the longest reference of the set needs."""
    while True:
        parts = _place_parts(number, rng)
        layout = Layout(number, parts, [])
        drops = _drops(parts, rng)
        if not all(_apart([d.x for d in channel]) for channel in drops):
            continue
        layout.channels = [_make_nets(channel, tracks, rng) for channel, tracks in zip(drops, TRACKS)]
        if _place_flags(layout, rng, flag_length):
            flows = ["out", "in"] * (FLAGS // 2)
            rng.shuffle(flows)
            _style_lines(layout.nets(), rng)
            for flag, flow in zip(layout.flags(), flows):
                flag.flow = flow
            return layout


def _style_lines(nets, rng):
    """Drains run far, pilots anywhere."""
    far = [n for n in nets if n.span()[1] - n.span()[0] > 260]
    for net in rng.sample(far, min(len(far), rng.randint(2, 3))):
        net.style = "drain"
    for net in rng.sample([n for n in nets if n.style == "main"], rng.randint(1, 2)):
        net.style = "pilot"


def _place_parts(number, rng):
    count = rng.randint(12, 15)
    variants = ALWAYS + rng.choices(VALVES, k=2)
    variants += rng.choices(OFTEN, k=count - len(variants))
    rng.shuffle(variants)
    slots = sorted(rng.sample(range(len(ROW_Y) * len(SLOT_X)), count))
    used, parts = {}, []

    def tag(letter):
        used[letter] = used.get(letter, 0) + 1
        return f"{number}{letter}{used[letter]}"

    for slot, variant in zip(slots, variants):
        x = SLOT_X[slot % len(SLOT_X)] + rng.randint(-24, 24) / 2
        y = ROW_Y[slot // len(SLOT_X)]
        setting = f"{rng.randint(8, 64) * 5} bar" if variant in ("relief", "reducing") else ""
        parts.append(Part(variant, tag(KINDS[variant].letter), x, y, setting))
        if variant == "pump":
            parts.append(Part("electric-motor", tag("M"), x + 18, y))
    return parts


def _drops(parts, rng):
    """Per channel, what comes into it from above and from below."""
    channels = [[] for _ in TRACKS]
    for part in parts:
        row = ROW_Y.index(part.y)
        for name, (_, dy) in part.kind.ports.items():
            x, y = part.ports()[name]
            channels[row if dy < 0 else row + 1].append(Drop(x, y, part, name))
    for edge in rng.sample(COLUMN_EDGES[1:-2], rng.randint(2, 4)):
        x = edge + 25 + rng.randint(-16, 16)
        channels[0].append(Drop(x, TOP_BASE, flag=Flag(x, TOP_BASE, (0, -1))))
    slots = rng.sample(BOTTOM_SLOTS, rng.randint(2, 3))
    for x in slots[1:]:
        channels[3].append(Drop(x, BOTTOM_BASE, flag=Flag(x, BOTTOM_BASE, (0, 1))))
    reservoir = Part("tank", "TANK", slots[0], 348)
    parts.append(reservoir)
    channels[3].append(Drop(slots[0], 350, reservoir, "T"))
    return channels


def _apart(xs):
    xs = sorted(xs)
    return all(b - a >= APART for a, b in zip(xs, xs[1:]))


def _make_nets(drops, tracks, rng):
    count = max(1, min(len(tracks), round(len(drops) / 2.2)))
    nets = [Net(y) for y in sorted(rng.sample(tracks, count))]
    for drop in drops:
        # two ports of one part on one line would short it
        free = [n for n in nets if drop.part is None or all(d.part is not drop.part for d in n.drops)]
        empty = [n for n in free if not n.drops]
        rng.choice(empty or free).drops.append(drop)
    for net in nets:
        net.drops.sort(key=lambda d: d.x)
    return [n for n in nets if n.drops]


def _place_flags(layout, rng, flag_length):
    """Adds side and inner flags until there are FLAGS; False where this layout has no room for them."""
    for net in layout.nets():
        if len(net.drops) == 1:
            _side(net, rng.choice(["left", "right"]))
    for channel in layout.channels:
        for net in rng.sample(channel, min(2, len(channel))):
            side = rng.choice(["left", "right"])
            if len(layout.flags()) < FLAGS and getattr(net, side) is None:
                setattr(net, side, _inner_flag(net, channel, side, flag_length))
    while len(layout.flags()) < FLAGS:
        free = [(n, s) for n in layout.nets() for s in ("left", "right") if getattr(n, s) is None]
        if free:
            _side(*rng.choice(free))
        elif not _add_through_line(layout, rng):
            return False
    return len(layout.flags()) == FLAGS


def _side(net, side):
    flag = Flag(LEFT_BASE, net.y, (-1, 0)) if side == "left" else Flag(RIGHT_BASE, net.y, (1, 0))
    setattr(net, side, flag)


def _add_through_line(layout, rng):
    if len(layout.flags()) > FLAGS - 2:
        return False
    free = [(c, y) for c, tracks in zip(layout.channels, TRACKS) for y in tracks if all(n.y != y for n in c)]
    if not free:
        return False
    channel, y = rng.choice(free)
    channel.append(Net(y))
    _side(channel[-1], "left")
    _side(channel[-1], "right")
    return True


def _inner_flag(net, channel, side, flag_length):
    """A flag within the drawing beyond the net's last vertical line, or None where others cross there."""
    way = 1 if side == "right" else -1
    start = net.drops[-1].x if way > 0 else net.drops[0].x
    crossing = [d.x for other in channel if other is not net for d in other.drops
                if min(d.y, other.y) - 4 < net.y < max(d.y, other.y) + 4]
    for step in range(12):
        base = start + way * (PLAIN + 4 + 3 * step)
        low, high = sorted((base, base + way * flag_length))
        whole = sorted((start, base + way * (flag_length + 3)))
        if low < 70 or high > 530 or any(whole[0] < x < whole[1] for x in crossing):
            return None
        if clear_of_edges(COLUMN_EDGES, low, high):
            return Flag(base, net.y, (way, 0))
    return None
