#!/usr/bin/env python3
"""Draws a set of N distinct hydraulic-like sheets (A2, 20 references each) and writes what is on them.

The same N and seed always give the same bytes.
"""
import argparse
import json
import random
import sys

from sheetset.draw import draw_sheet, flag_length_for
from sheetset.frame import HEIGHT, WIDTH
from sheetset.layout import lay_out
from sheetset.pairing import pair_flags
from sheetset.pdf_file import PdfFile
from sheetset.pen import PT
from sheetset.titleblock import title_of
from sheetset.truth import Truth


def draw_set(count, pdf_path, truth_path=None, seed=1):
    """Returns the strokes and the words of each sheet."""
    flag_length = flag_length_for(count)
    layouts = [lay_out(n, random.Random(f"{seed}/layout/{n}"), flag_length) for n in range(1, count + 1)]
    pairs = pair_flags(layouts, random.Random(f"{seed}/pairs"), flag_length)
    truth, sizes = Truth(), []
    with open(pdf_path, "wb") as out:
        pdf = PdfFile(out, count, WIDTH * PT, HEIGHT * PT)
        for layout in layouts:
            rng = random.Random(f"{seed}/text/{layout.number}")
            title, revision = title_of(layout.number, rng), rng.choice("ABCD")
            pen = draw_sheet(layout, count, title, revision, rng, flag_length)
            pdf.add_page(pen.content())
            sizes.append((pen.strokes, pen.words))
            if truth_path:
                truth.add_sheet(pdf.added, layout, title, flag_length)
        pdf.close()
    if truth_path:
        truth.add_pairs(pairs)
        with open(truth_path, "w", encoding="utf-8") as out:
            json.dump(truth.data, out, separators=(",", ":"))
    return sizes


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("count", metavar="N", type=int, help="sheets, at least 2 (a reference leads to another sheet)")
    parser.add_argument("pdf", metavar="OUT.pdf")
    parser.add_argument("--truth", metavar="TRUTH.json")
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    if not 2 <= args.count <= 9999:
        parser.error("N must be 2 to 9999")
    sizes = draw_set(args.count, args.pdf, args.truth, args.seed)
    strokes, words = zip(*sizes)
    print(f"{args.count} sheets, strokes a sheet {min(strokes)} to {max(strokes)}, words a sheet {min(words)} to {max(words)}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
