#!/usr/bin/env python3
"""Compares the CPU time of an import with that of pdftotext -bbox plus pdftocairo -svg over the same sheets.

Both sides are measured in one run at two sizes of a drawn set; what counts is the slope between the sizes, CPU seconds
a sheet. Then 1,000 sheets are imported under a 512 MiB heap, and the smaller set's export is scored.
Exit status: 0 within the limits, 1 beyond them, 2 where it could not be measured.
"""
import argparse
import json
import sys
import tempfile
from pathlib import Path

from draw_sheets import draw_set
from measured import PROJECT, need_file, need_tools, run, run_or_stop, stop
from sheetset.frame import HEIGHT, WIDTH
from sheetset.pdf_file import PdfFile
from sheetset.pen import PT

LIMIT = 6.0
MEMORY_SHEETS, HEAP = 1000, "-Xmx512m"
SAMPLE = 10   # every so many pages, the cost of starting pdftocairo is measured


def poppler_cpu_s(pdf, count, folder):
    """CPU seconds of (pdftotext, pdftocairo, pdftocairo's starts alone). pdftocairo writes one page an SVG, so a page a start."""
    text = run_or_stop(["pdftotext", "-bbox", pdf, folder / "words.html"]).cpu_s
    cairo = sum(_cairo(pdf, page, folder) for page in range(1, count + 1))
    blank = folder / "blank.pdf"
    _write_blank(blank, count)
    pages = range(1, count + 1, SAMPLE)
    starts = sum(_cairo(blank, page, folder) for page in pages) * count / len(pages)
    return text, cairo, starts


def _cairo(pdf, page, folder):
    return run_or_stop(["pdftocairo", "-svg", "-f", page, "-l", page, pdf, folder / "page.svg"]).cpu_s


def _write_blank(path, count):
    """As many pages with one letter each: opens and loads the font, draws nothing."""
    with open(path, "wb") as out:
        pdf = PdfFile(out, count, WIDTH * PT, HEIGHT * PT)
        for _ in range(count):
            pdf.add_page(b"BT /F1 8 Tf 100 100 Td (A) Tj ET")
        pdf.close()


def import_cpu_s(launcher, pdf, into):
    result = run_or_stop([launcher, "import", pdf, "--into", into])
    print(f"  import: {result.cpu_s:.2f} s CPU, {result.wall_s:.2f} s wall, peak {result.peak_mib:.0f} MiB", flush=True)
    return result.cpu_s


def export(launcher, set_folder, path, count, java_options=None):
    """Writes the export; stops unless it has all the sheets, since a set half read is quickly read."""
    with open(path, "wb") as out:
        run_or_stop([launcher, "export", set_folder, "--format", "json"], out=out, java_options=java_options)
    with open(path, encoding="utf-8") as f:
        got = json.load(f)
    if len(got.get("sheets", [])) != count:
        stop(f"the export of {count} sheets holds {len(got.get('sheets', []))}")
    return got


def measure_size(args, count, folder):
    """CPU seconds by side at one size."""
    pdf, truth, into = folder / f"bench-{count}.pdf", folder / f"truth-{count}.json", folder / f"set-{count}"
    draw_set(count, pdf, truth, args.seed)
    print(f"{count} sheets", flush=True)
    text, cairo, starts = poppler_cpu_s(pdf, count, folder)
    print(f"  pdftotext -bbox: {text:.2f} s CPU\n  pdftocairo -svg: {cairo:.2f} s CPU, of which starting and opening {starts:.2f} s", flush=True)
    cpu = {"poppler": text + cairo, "starts": starts}
    if not args.poppler_only:
        cpu["import"] = import_cpu_s(args.launcher, pdf, into)
        export(args.launcher, into, folder / f"export-{count}.json", count)
    return cpu


def compare(sizes, cpu):
    """Prints the slopes; returns whether the ratio keeps the limit."""
    slope = {side: (cpu[1][side] - cpu[0][side]) / (sizes[1] - sizes[0]) for side in cpu[0]}
    if min(slope[side] for side in slope if side != "starts") <= 0:
        stop("no more CPU time at the larger size: take sizes further apart")
    bare = slope["poppler"] - slope["starts"]
    print(f"slope poppler: {slope['poppler']:.4f} CPU s a sheet ({bare:.4f} without pdftocairo's starts)")
    if "import" not in slope:
        return True
    ratio = slope["import"] / slope["poppler"]
    print(f"slope import:  {slope['import']:.4f} CPU s a sheet")
    print(f"ratio {ratio:.2f}, limit {LIMIT:.0f}: {'kept' if ratio <= LIMIT else 'NOT KEPT'}"
          f" (without pdftocairo's starts, for information: {slope['import'] / bare:.2f})", flush=True)
    return ratio <= LIMIT


def check_memory(args, folder):
    pdf, into = folder / "memory.pdf", folder / "set-memory"
    draw_set(MEMORY_SHEETS, pdf, None, args.seed)
    result = run([args.launcher, "import", pdf, "--into", into], java_options=HEAP)
    figures = f"{result.wall_s:.1f} s wall, {result.cpu_s:.1f} s CPU, peak {result.peak_mib:.0f} MiB resident"
    if result.status != 0:
        print(f"{MEMORY_SHEETS} sheets under {HEAP}: DID NOT GO THROUGH (status {result.status}: {result.error}), {figures}")
        return False
    got = export(args.launcher, into, folder / "export-memory.json", MEMORY_SHEETS, HEAP)
    print(f"{MEMORY_SHEETS} sheets under {HEAP}: went through, {figures}; {len(got.get('references', []))} of "
          f"{20 * MEMORY_SHEETS} references exported", flush=True)
    return True


def print_score(args, count, folder):
    if not Path(args.score).is_file():
        print(f"score skipped: no {args.score}")
        return
    print(f"score of the {count} sheets", flush=True)
    with tempfile.TemporaryFile() as out:
        run_or_stop([sys.executable, args.score, folder / f"truth-{count}.json", folder / f"export-{count}.json"], out=out)
        out.seek(0)
        print("".join("  " + line for line in out.read().decode().splitlines(keepends=True)), end="")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--sheets", type=int, nargs=2, default=[200, 600], metavar=("FEW", "MANY"))
    parser.add_argument("--launcher", default=PROJECT / "linewalk")
    parser.add_argument("--score", default=PROJECT.parent / "shared" / "score" / "score.py", metavar="SCORE.py")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--poppler-only", action="store_true", help="measure poppler's side alone")
    args = parser.parse_args()
    if not 2 <= args.sheets[0] < args.sheets[1]:
        parser.error("--sheets wants two rising sizes, at least 2")
    need_tools(["pdftotext", "pdftocairo"], "poppler-utils")
    if not args.poppler_only:
        args.launcher = need_file(args.launcher, "launcher")
    with tempfile.TemporaryDirectory(prefix="linewalk-bench-") as name:
        folder = Path(name)
        if not args.poppler_only:   # not measured: builds if sources are newer, fills the font cache
            draw_set(2, folder / "first.pdf", None, args.seed)
            run_or_stop([args.launcher, "import", folder / "first.pdf", "--into", folder / "set-first"])
        good = compare(args.sheets, [measure_size(args, count, folder) for count in args.sheets])
        if not args.poppler_only:
            good &= check_memory(args, folder)
            print_score(args, args.sheets[0], folder)
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
