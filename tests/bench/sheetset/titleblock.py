"""What stands below the circuit: title block, revisions, notes, table of settings. All names are invented."""
AREAS = ["PRESS", "SHEAR", "COIL CAR", "TILT TABLE", "CLAMP FRAME", "INFEED LIFT", "TRANSFER BEAM", "BALE CHAMBER",
         "LOADING BRIDGE", "GATE DRIVE", "STACKER", "DUMPING STATION"]
CIRCUITS = ["SUPPLY", "CLAMPING", "LIFTING", "HOLDING", "RETURN AND COOLING", "FAST ADVANCE", "LOCKING", "SWIVEL DRIVE",
            "COUNTERWEIGHT", "TEST PANEL"]
NOTES = [
    "PIPES {a}x{b} SEAMLESS UNLESS STATED OTHERWISE.", "FLUSH ALL LINES FOR {a} MINUTES BEFORE FIRST START.",
    "TEST PRESSURE {c} BAR FOR {b} MINUTES.", "HOSES TO BE RENEWED EVERY {b} YEARS.",
    "TORQUE FLANGE SCREWS TO {a} NM IN {b} STEPS.", "OIL GRADE 46, CLEANLINESS 18/16/13.",
    "VALVES SHOWN WITH SOLENOIDS OFF.", "KEEP {c} MM CLEAR FOR FILTER CHANGE.",
    "ACCUMULATORS TO BE DISCHARGED BEFORE WORK ON THE CIRCUIT.", "MARK LINE ENDS WITH LINE NUMBERS.",
    "PIPE CLAMPS EVERY {c} MM.", "COIL VOLTAGE 24 V DC."]
SUBJECT = {"directional-valve": "DIRECTIONAL VALVE", "relief-valve": "RELIEF VALVE", "reducing-valve": "REDUCING VALVE",
           "check-valve": "CHECK VALVE", "pump": "AXIAL PISTON PUMP", "filter": "FILTER", "cylinder": "CYLINDER",
           "electric-motor": "ELECTRIC MOTOR", "motor": "GEAR MOTOR"}
X0, X1, Y0, Y1 = 404, 584, 360, 410


def title_of(number, rng):
    return f"{rng.choice(AREAS)} {rng.randint(1, 9)} - {rng.choice(CIRCUITS)} CIRCUIT {number}"


def draw_title_block(pen, number, count, title, revision, rng):
    pen.box(X0, Y0, X1, Y1, 0.7)
    for y in (370, 390, 400):
        pen.line(X0, y, X1, y, 0.25)
    _cells(pen, 360, [(404, "RESPONSIBLE DEPT.", "HYDRAULICS"), (464, "TECHNICAL REFERENCE", f"AREA {rng.randint(10, 99)}"),
                      (524, "DOCUMENT TYPE", "CIRCUIT DIAGRAM")])
    _head(pen, 404, 370, "TITLE")
    pen.text(406, 379, "HYDRAULIC INSTALLATION", 3.5)
    pen.text(406, 386.5, title, 3.5)
    day = f"{rng.randint(2019, 2024)}-{rng.randint(1, 12):02d}-{rng.randint(1, 28):02d}"
    _cells(pen, 390, [(404, "DRAWN", rng.choice(["N. O.", "K. R.", "E. T."])), (449, "CHECKED", rng.choice(["A. B.", "S. U."])),
                      (494, "DATE OF ISSUE", day), (539, "SCALE", "NONE")])
    _cells(pen, 400, [(404, "DRAWING NUMBER", f"HB-5000-{number:04d}"), (464, "REVISION", revision), (484, "FORMAT", "A2"),
                      (504, "SHEET", "")])
    pen.text(544, 407.8, f"SHEET {number} OF {count}", 4, "middle")


def draw_revisions(pen, revision, rng, zone):
    edges, y = [404, 416, 430, 556, 584], 358
    rows = [(chr(65 + k), zone() if k else "-", "FIRST ISSUE" if k == 0 else rng.choice(
        ["VALVE ADDED", "LINE MOVED", "SETTING CHANGED", "PORTS RENAMED"]),
        f"{2018 + k}-{rng.randint(1, 12):02d}-{rng.randint(1, 28):02d}") for k in range(ord(revision) - 64)]
    _table(pen, edges, y - 5 * (len(rows) + 1), [("REV", "ZONE", "DESCRIPTION", "DATE")] + rows)


def draw_notes(pen, rng):
    pen.text(27, 345, "NOTES", 3.2)
    for k, note in enumerate(rng.sample(NOTES, rng.randint(4, 6))):
        pen.text(27, 352 + 6.5 * k, f"{k + 1}  " + note.format(a=rng.randint(12, 60), b=rng.randint(2, 9), c=rng.randint(10, 40) * 10), 2.5)


def draw_settings(pen, parts, rng):
    chosen = [p for p in parts if p.kind.name in SUBJECT]
    rows = [(p.tag, SUBJECT[p.kind.name], p.setting or f"SIZE {rng.randint(3, 32)}") for p in
            rng.sample(chosen, min(len(chosen), rng.randint(4, 7)))]
    _table(pen, [146, 168, 222, 262], 345, [("ITEM", "DESCRIPTION", "SETTING")] + rows)


def _table(pen, edges, top, rows):
    bottom = top + 5 * len(rows)
    pen.box(edges[0], top, edges[-1], bottom, 0.35)
    for x in edges[1:-1]:
        pen.line(x, top, x, bottom, 0.25)
    for k, row in enumerate(rows):
        if k:
            pen.line(edges[0], top + 5 * k, edges[-1], top + 5 * k, 0.25)
        for x, text in zip(edges, row):
            pen.text(x + 1.5, top + 5 * k + 3.6, text, 2.5)


def _cells(pen, y, cells):
    for k, (x, head, value) in enumerate(cells):
        if k:
            pen.line(x, y, x, y + 10, 0.25)
        _head(pen, x, y, head)
        if value:
            pen.text(x + 2, y + 8, value, 3.2)


def _head(pen, x, y, text):
    pen.text(x + 1, y + 2.8, text, 1.8)
