#!/usr/bin/env python3
"""Compares recall of reference strings and CPU time on scans with those of Debian's `tesseract --psm 11` over whole pages.

Takes scans with their truths, one after the other; with --demo also four styles of the demo in two resolutions and tones
each, drawn and scanned here.
Both sides read the same pages in one run. Tesseract gets every page as an image at 300 dpi (painting it is not counted)
and is given each string that stands anywhere in its page's text, whatever blanks and line ends lie between its signs;
ours counts what the export tells as references, likewise. The limit is for strings as they stand: `3B4` and `3|B4` are
not `3/B4`. Beside it stands what would be found were letters and figures enough.
Exit status: 0 within the limits, 1 beyond them, 2 where it could not be measured.
"""
import argparse
import json
import os
import re
import sys
import tempfile
from collections import defaultdict
from pathlib import Path

from measured import PROJECT, need_file, need_tools, run_or_stop

RECALL, TIMES = 0.9, 3.0
DPI = 300
DEMO = [(style, dpi, tone)
        for style in ("iso", "hops", "asme", "house") for dpi in (200, 300) for tone in ("bitonal", "grey")]


WHOLE, ALNUM = "A-Z0-9./:-", "A-Z0-9"


def plain(text, signs):
    return re.sub(f"[^{signs}]", "", text.upper())


def wanted(truth):
    """Strings by page as printed; those that score.py counts."""
    with open(truth, encoding="utf-8") as f:
        data = json.load(f)
    checked = set(data.get("checked_pages") or [s["page"] for s in data["sheets"]])
    pages = {page: [] for page in checked}
    for r in data["references"]:
        if r["page"] in checked and r.get("kind") != "device-terminal":
            pages[r["page"]].append(r["text"])
    return pages


def found(strings, text, signs):
    """How many of the strings stand in the text, each place used once; long ones first, since short ones may be in them."""
    count = 0
    text = "\n".join(plain(part, signs) for part in text.split("\0"))
    for s in sorted((plain(s, signs) for s in strings), key=len, reverse=True):
        at = text.find(s)
        if at >= 0:
            count += 1
            text = text[:at] + "\n" + text[at + len(s):]
    return count


def by_import(launcher, pdf, folder):
    """(CPU seconds, text by page, each reference apart)"""
    cpu_s = run_or_stop([launcher, "import", pdf, "--into", folder / "set"]).cpu_s
    with open(folder / "export.json", "wb") as out:
        run_or_stop([launcher, "export", folder / "set", "--format", "json"], out=out)
    with open(folder / "export.json", encoding="utf-8") as f:
        references = json.load(f)["references"]
    pages = defaultdict(str)
    for r in references:
        pages[r["page"]] += "\0" + r["text"]
    return cpu_s, pages


def by_tesseract(pdf, pages, folder):
    """(CPU seconds, text by page)"""
    cpu_s, text = 0.0, defaultdict(str)
    for page in sorted(pages):
        run_or_stop(["pdftoppm", "-r", DPI, "-gray", "-singlefile", "-f", page, "-l", page, pdf, folder / "page"])
        with open(folder / "page.txt", "wb") as out:
            cpu_s += run_or_stop(["tesseract", folder / "page.pgm", "-", "--psm", "11", "--dpi", DPI], out=out).cpu_s
        text[page] = (folder / "page.txt").read_text(encoding="utf-8", errors="replace")
    return cpu_s, text


def demo_scans(launcher, jar, folder):
    for style, dpi, tone in DEMO:
        drawn, scan = folder / f"demo-{style}", folder / f"{style}-{dpi}-{tone}"
        if not drawn.exists():
            run_or_stop([launcher, "demo", "--style", style, drawn])
        pdf = next(drawn.glob("*.pdf"))
        run_or_stop(["java", "-cp", jar, "linewalk.samples.scan.ScanSet", pdf, drawn / "truth.json", scan, dpi, tone])
        yield scan / "scan.pdf", scan / "truth.json"


def compare(launcher, scans):
    total = defaultdict(float)
    for pdf, truth in scans:
        with tempfile.TemporaryDirectory(prefix="linewalk-bench-") as name:
            folder = Path(name)
            pages = wanted(truth)
            sides = {"ours": by_import(launcher, pdf, folder), "tesseract": by_tesseract(pdf, pages, folder)}
        strings = sum(len(s) for s in pages.values())
        line = [f"{pdf.parent.name}/{pdf.name}: {strings} strings"]
        total["strings"] += strings
        for side, (cpu_s, text) in sides.items():
            count = sum(found(strings, text[page], WHOLE) for page, strings in pages.items())
            total[side] += count
            total[side + " alnum"] += sum(found(strings, text[page], ALNUM) for page, strings in pages.items())
            total[side + " cpu"] += cpu_s
            line.append(f"{side} recall {count / max(1, strings):.3f}, {cpu_s:.1f} s CPU")
        print("; ".join(line), flush=True)
    return total


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("scans", nargs="*", metavar="PDF TRUTH", help="scans, each followed by its truth")
    parser.add_argument("--demo", action="store_true", help="sixteen scans of the demo too")
    parser.add_argument("--launcher", default=PROJECT / "linewalk")
    parser.add_argument("--jar", default=PROJECT / "app" / "target" / "linewalk.jar", help="scans the demo")
    args = parser.parse_args()
    if len(args.scans) % 2 or not (args.scans or args.demo):
        parser.error("name scans, each followed by its truth, or --demo")
    need_tools(["pdftoppm"], "poppler-utils")
    need_tools(["tesseract"], "tesseract-ocr")
    os.environ["OMP_THREAD_LIMIT"] = "1"   # its threads wait for each other and burn time
    launcher = need_file(args.launcher, "launcher")
    with tempfile.TemporaryDirectory(prefix="linewalk-bench-") as name:
        folder = Path(name)
        run_or_stop([launcher, "demo", folder / "first"])   # not measured: builds if sources are newer
        scans = [(Path(need_file(p, "scan")), need_file(t, "truth")) for p, t in zip(args.scans[::2], args.scans[1::2])]
        if args.demo:
            scans += demo_scans(launcher, need_file(args.jar, "app jar"), folder)
        total = compare(launcher, scans)
    ours, theirs = (total[side] / max(1, total["strings"]) for side in ("ours", "tesseract"))
    alnum = [total[side + " alnum"] / max(1, total["strings"]) for side in ("ours", "tesseract")]
    print("letters and figures alone: recall {:.3f}, tesseract {:.3f}".format(*alnum))
    cpu, limit = total["ours cpu"], total["tesseract cpu"]
    print(f"recall {ours:.3f}, limit {RECALL}; tesseract {theirs:.3f}, {TIMES:.0f} times that {TIMES * theirs:.3f}; "
          f"CPU {cpu:.1f} s, tesseract {limit:.1f} s, {cpu / limit:.2f} of it, limit 1")
    good = ours >= RECALL and ours >= TIMES * theirs and cpu <= limit
    print("kept" if good else "NOT KEPT")
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
