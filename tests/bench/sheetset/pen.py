"""Draws on one page in millimetres from its top left corner; gives the page's content operators in points."""
import math

PT = 72 / 25.4
CURVE = 0.5523   # control distance of a quarter circle
PATTERNS = {"pilot": (6, 2)}   # dash and gap by the page's dash pattern
SINGLES = {"drain": (2.4, 1.6)}    # every dash a stroke of its own, as some CAD programs write them

# Advance widths of Helvetica for codes 32 to 126, in thousandths of the size (Adobe's metrics of the standard font).
WIDTHS = [278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278] + [556] * 10 + [
    278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556,
    278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
    260, 334, 584]
CAP_HEIGHT = 0.718


def text_width(text, size):
    return sum(WIDTHS[ord(c) - 32] for c in text) * size / 1000


class Pen:
    """Every piece of an open polyline is a stroke of its own, closed outlines stay whole."""

    def __init__(self, height):
        self.height = height
        self.out = ["1 J 1 j"]
        self.width, self.style = None, None
        self.strokes = self.words = 0

    def content(self):
        return "\n".join(self.out).encode("ascii")

    def path(self, points, width=0.35, style="main", close=False, fill=False):
        if not fill and not close:
            self._set(width, style)
            for start, end in zip(points, points[1:]):
                self._pieces(start, end, style)
            return
        if not fill:
            self._set(width, style)
            self.strokes += 1
        ops = [f"{self._at(*p)} {'l' if i else 'm'}" for i, p in enumerate(points)]
        self.out.append(" ".join(ops) + (" f" if fill else " s" if close else " S"))

    def _pieces(self, start, end, style):
        """One straight piece, or its dashes; the last dash reaches the end, so that corners and joins are closed."""
        (x0, y0), (x1, y1) = start, end
        length = math.hypot(x1 - x0, y1 - y0)
        dash, gap = SINGLES.get(style, (length, 0))
        count = max(1, round((length + gap) / (dash + gap)))
        pitch = (length + gap) / count
        for k in range(count):
            a, b = pitch * k / length, (pitch * (k + 1) - gap) / length
            self.out.append(f"{self._at(x0 + (x1 - x0) * a, y0 + (y1 - y0) * a)} m "
                            f"{self._at(x0 + (x1 - x0) * b, y0 + (y1 - y0) * b)} l S")
        self.strokes += count

    def line(self, x0, y0, x1, y1, width=0.35, style="main"):
        self.path([(x0, y0), (x1, y1)], width, style)

    def box(self, x0, y0, x1, y1, width=0.35):
        corners = [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
        self.path(corners + corners[:1], width)

    def curve(self, start, pieces, width=0.35, close=False):
        """pieces: Bezier pieces, three points each."""
        self._set(width, "main")
        self.strokes += 1
        ops = [f"{self._at(*start)} m"] + [" ".join(self._at(*p) for p in piece) + " c" for piece in pieces]
        self.out.append(" ".join(ops) + (" s" if close else " S"))

    def circle(self, x, y, r, width=0.35, fill=False):
        k = r * CURVE
        pieces = [((x + r, y + k), (x + k, y + r), (x, y + r)), ((x - k, y + r), (x - r, y + k), (x - r, y)),
                  ((x - r, y - k), (x - k, y - r), (x, y - r)), ((x + k, y - r), (x + r, y - k), (x + r, y))]
        if not fill:
            self.curve((x + r, y), pieces, width, close=True)
            return
        ops = [f"{self._at(x + r, y)} m"] + [" ".join(self._at(*p) for p in piece) + " c" for piece in pieces]
        self.out.append(" ".join(ops) + " f")

    def arrow(self, x0, y0, x1, y1, width=0.35, head=1.8):
        """A line with a filled head at its second end."""
        self.line(x0, y0, x1, y1, width)
        length = math.hypot(x1 - x0, y1 - y0)
        ux, uy = (x1 - x0) / length, (y1 - y0) / length
        bx, by, half = x1 - ux * head, y1 - uy * head, head * 0.32
        self.path([(x1, y1), (bx - uy * half, by + ux * half), (bx + uy * half, by - ux * half)], fill=True)

    def text(self, x, y, text, size, anchor="left", up=False):
        """x, y: the left end, middle or right end of the baseline; up: turned to read upwards."""
        shift = {"left": 0, "middle": 0.5, "right": 1}[anchor] * text_width(text, size)
        at = self._at(x, y + shift) if up else self._at(x - shift, y)
        turn = "0 1 -1 0" if up else "1 0 0 1"
        escaped = text.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)")
        self.out.append(f"BT /F1 {size * PT:.2f} Tf {turn} {at} Tm ({escaped}) Tj ET")
        self.words += len(text.split())

    def _at(self, x, y):
        return f"{x * PT:.2f} {(self.height - y) * PT:.2f}"

    def _set(self, width, style):
        if width != self.width:
            self.out.append(f"{width * PT:.2f} w")
            self.width = width
        if style != self.style:
            pattern = " ".join(f"{mm * PT:.2f}" for mm in PATTERNS.get(style, ()))
            self.out.append(f"[{pattern}] 0 d")
            self.style = style
