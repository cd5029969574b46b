"""What is on the drawn sheets, as scores read it: points, origin at the top left."""
from .draw import text_middle
from .frame import COLUMNS, ROWS
from .pen import PT
from .symbols import REST


class Truth:
    def __init__(self):
        self.data = {"set": "bench", "sheets": [], "references": [], "pairs": [], "defects": [], "components": [], "nets": [],
                     "states": [{"name": "Rest", "energised": [], "passages": {}}]}

    def add_sheet(self, page, layout, title, flag_length):
        self.data["sheets"].append({"page": page, "sheet": str(layout.number), "title": title,
                                    "zone_columns": COLUMNS, "zone_rows": ROWS})
        for flag in layout.flags():
            self.data["references"].append(_reference(page, flag, flag_length))
        for part in layout.parts:
            self.data["components"].append({
                "tag": part.tag, "page": page, "x": _pt(part.x), "y": _pt(part.y), "kind": part.kind.name,
                "ports": {name: [_pt(x), _pt(y)] for name, (x, y) in part.ports().items()}})
            if part.variant in REST:
                self.data["states"][0]["passages"][part.tag] = REST[part.variant]
        for net in layout.nets():
            ends = [f"{d.part.tag}:{d.port}" for d in net.drops if d.part] + [f"r{f.number}" for f in net.flags()]
            self.data["nets"].append({"page": page, "kind": net.style, "ends": ends})

    def add_pairs(self, pairs):
        self.data["pairs"] = [[f"r{a}", f"r{b}"] for a, b in pairs]


def _reference(page, flag, flag_length):
    x, y = text_middle(flag, flag_length)
    return {"id": f"r{flag.number}", "page": page, "x": _pt(x), "y": _pt(y), "zone": flag.zone(flag_length),
            "text": flag.text, "to_sheet": str(flag.target[0]), "to_zone": flag.target[1], "label": flag.label or None,
            "flow": flag.flow, "style": "flag", "line_end": [_pt(flag.x), _pt(flag.y)], "rotated": flag.direction[0] == 0}


def _pt(mm):
    return round(mm * PT, 2)
