"""The sheet's border after ISO 5457: A2 landscape, fields of 50 mm counted from the centring marks, 12 columns by 8 rows."""
WIDTH, HEIGHT = 594, 420
LEFT, TOP, RIGHT, BOTTOM = 20, 10, 584, 410
STRIP = 5
COLUMNS = [str(n) for n in range(1, 13)]
ROWS = list("ABCDEFGH")
COLUMN_EDGES = [LEFT] + [WIDTH / 2 + 50 * k for k in range(-5, 6)] + [RIGHT]
ROW_EDGES = [TOP] + [HEIGHT / 2 + 50 * k for k in range(-3, 4)] + [BOTTOM]


def zone_of(x, y):
    return ROWS[_field(ROW_EDGES, y)] + COLUMNS[_field(COLUMN_EDGES, x)]


def clear_of_edges(edges, low, high):
    """Whether low to high lies well inside one field, so that no reader has to guess the zone."""
    return all(not (low - 1 < e < high + 1) for e in edges[1:-1])


def draw_frame(pen):
    pen.box(LEFT, TOP, RIGHT, BOTTOM, 0.7)
    pen.box(LEFT - STRIP, TOP - STRIP, RIGHT + STRIP, BOTTOM + STRIP, 0.25)
    for x in COLUMN_EDGES[1:-1]:
        pen.line(x, TOP - STRIP, x, TOP, 0.25)
        pen.line(x, BOTTOM, x, BOTTOM + STRIP, 0.25)
    for y in ROW_EDGES[1:-1]:
        pen.line(LEFT - STRIP, y, LEFT, y, 0.25)
        pen.line(RIGHT, y, RIGHT + STRIP, y, 0.25)
    for x0, y0, x1, y1 in ((WIDTH / 2, 0, WIDTH / 2, TOP + 5), (WIDTH / 2, HEIGHT, WIDTH / 2, BOTTOM - 5),
                           (0, HEIGHT / 2, LEFT + 5, HEIGHT / 2), (WIDTH, HEIGHT / 2, RIGHT - 5, HEIGHT / 2)):
        pen.line(x0, y0, x1, y1, 0.7)
    _label(pen)


def _label(pen):
    for name, low, high in zip(COLUMNS, COLUMN_EDGES, COLUMN_EDGES[1:]):
        pen.text((low + high) / 2, TOP - 1.5, name, 2.8, "middle")
        pen.text((low + high) / 2, BOTTOM + 3.5, name, 2.8, "middle")
    for name, low, high in zip(ROWS, ROW_EDGES, ROW_EDGES[1:]):
        pen.text(LEFT - 2.5, (low + high) / 2 + 1, name, 2.8, "middle")
        pen.text(RIGHT + 2.5, (low + high) / 2 + 1, name, 2.8, "middle")


def _field(edges, value):
    return max(0, min(len(edges) - 2, sum(value >= e for e in edges) - 1))
