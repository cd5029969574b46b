"""Puts a laid out sheet on paper."""
from .frame import HEIGHT, draw_frame, zone_of
from .pen import CAP_HEIGHT, Pen, text_width
from .titleblock import draw_notes, draw_revisions, draw_settings, draw_title_block

REFERENCE_SIZE, LABEL_SIZE, TAG_SIZE = 3.0, 2.5, 3.2
FLAG_HALF, TIP, TEXT_FROM = 2.75, 2.75, 4.2


def flag_length_for(sheet_count):
    return TEXT_FROM + text_width(f"{sheet_count}/H12", REFERENCE_SIZE) + 0.6 + TIP


def text_middle(flag, length):
    """Middle of the printed reference."""
    return flag.along((TEXT_FROM + length - TIP) / 2)


def draw_sheet(layout, count, title, revision, rng, flag_length):
    """Returns the pen with everything drawn."""
    pen = Pen(HEIGHT)
    draw_frame(pen)
    for net in layout.nets():
        _draw_net(pen, net)
        for flag in net.flags():
            _draw_flag(pen, flag, flag_length)
    for part in layout.parts:
        part.kind.draw(pen, part.x, part.y)
        _letter_part(pen, part)
    draw_notes(pen, rng)
    draw_settings(pen, layout.parts, rng)
    draw_revisions(pen, revision, rng, lambda: zone_of(rng.randint(60, 540), rng.randint(60, 320)))
    draw_title_block(pen, layout.number, count, title, revision, rng)
    return pen


def _draw_net(pen, net):
    """Corners at the ends of the track, a dot where a vertical line meets its inside."""
    width = 0.5 if net.style == "main" else 0.3
    low, high = net.span()
    track = [(low, net.y), (high, net.y)]
    for drop in net.drops:
        if drop.x == low:
            track.insert(0, (drop.x, drop.y))
        elif drop.x == high:
            track.append((drop.x, drop.y))
        else:
            pen.line(drop.x, drop.y, drop.x, net.y, width, net.style)
            pen.circle(drop.x, net.y, 0.9, fill=True)
    pen.path(track, width, net.style)


def _draw_flag(pen, flag, length):
    dx, dy = flag.direction

    def at(along, across):
        x, y = flag.along(along)
        return x - dy * across, y + dx * across

    pen.path([at(0, -FLAG_HALF), at(length - TIP, -FLAG_HALF), at(length, 0), at(length - TIP, FLAG_HALF), at(0, FLAG_HALF)],
             0.35, close=True)
    tip, back = (3.5, 1.0) if flag.flow == "out" else (1.0, 3.5)
    pen.path([at(tip, 0), at(back, 1.2), at(back, -1.2)], fill=True)
    x, y = text_middle(flag, length)
    half = REFERENCE_SIZE * CAP_HEIGHT / 2
    if dx:
        pen.text(x, y + half, flag.text, REFERENCE_SIZE, "middle")
        pen.text(flag.x - dx * 1.5, flag.y - 1, flag.label, LABEL_SIZE, "left" if dx < 0 else "right")
    else:
        pen.text(x + half, y, flag.text, REFERENCE_SIZE, "middle", up=True)
        pen.text(flag.x - 1, flag.y - dy * 1.5, flag.label, LABEL_SIZE, "right" if dy < 0 else "left", up=True)


def _letter_part(pen, part):
    side, kind = part.kind.tag_side, part.kind
    x = part.x + (kind.tag_dx if side == "right" else -kind.tag_dx)
    anchor = "left" if side == "right" else "right"
    pen.text(x, part.y + (0 if part.setting else 1), part.tag, TAG_SIZE, anchor)
    if part.setting:
        pen.text(x, part.y + 4, part.setting, LABEL_SIZE, anchor)
    if kind.name == "directional-valve":
        circuit, number = part.tag.split("V")
        two = part.variant in ("closed", "tandem")
        pen.text(part.x - 22, part.y - 6, f"{circuit}Y{number}" + ("A" if two else ""), 2.2)
        if two:
            pen.text(part.x + 22, part.y - 6, f"{circuit}Y{number}B", 2.2, "right")
