#!/usr/bin/env python3
"""Compares the time of a trace on an unchanged set with that of a bare JVM that only opens the set's PDFs.

Medians of 7 runs each, taken in turns, wall time. Further options (--via, --step, --out ...) go to the trace.
Exit status: 0 within the limit, 1 beyond it, 2 where it could not be measured.
"""
import argparse
import json
import statistics
import sys
import tempfile
from pathlib import Path

from measured import PROJECT, need_file, need_tools, run_or_stop, stop

LIMIT = 2.5
RUNS = 7


def pdfs_of(set_folder):
    """The PDFs that set.json names, wherever in its sources a path stands; else those in the folder."""
    settings = set_folder / "set.json"
    need_file(settings, "set")
    with open(settings, encoding="utf-8") as f:
        sources = json.load(f).get("sources", [])
    named = [set_folder / text for text in _texts(sources) if text.lower().endswith(".pdf")]
    found = sorted({p.resolve() for p in named if p.is_file()}) or sorted(set_folder.glob("*.pdf"))
    return found or stop(f"no PDF found for {set_folder}; name it with --pdf")


def _texts(value):
    if isinstance(value, str):
        return [value]
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else []
    return [text for part in inner for text in _texts(part)]


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter, allow_abbrev=False)
    parser.add_argument("set", metavar="SET", type=Path)
    parser.add_argument("--from", dest="start", required=True, metavar="X")
    parser.add_argument("--to", dest="end", required=True, metavar="Y")
    parser.add_argument("--launcher", default=PROJECT / "linewalk")
    parser.add_argument("--jar", default=PROJECT / "app" / "target" / "linewalk.jar", help="holds PDFBox for the bare JVM")
    parser.add_argument("--pdf", action="append", help="instead of the set's own sources")
    args, more = parser.parse_known_args()
    need_tools(["java", "javac"], "a JDK")
    launcher = need_file(args.launcher, "launcher")
    pdfs = [need_file(p, "PDF") for p in args.pdf or pdfs_of(args.set)]
    trace = [launcher, "trace", args.set, "--from", args.start, "--to", args.end] + more
    run_or_stop(trace)   # the first trace: builds if sources are newer, reads what is not yet read
    jar = need_file(args.jar, "app jar")
    with tempfile.TemporaryDirectory(prefix="linewalk-bench-") as classes:
        run_or_stop(["javac", "-cp", jar, "-d", classes, Path(__file__).with_name("OpenPdf.java")])
        bare = ["java", "-cp", f"{jar}:{classes}", "OpenPdf"] + pdfs
        run_or_stop(bare)
        times = [(run_or_stop(trace).wall_s, run_or_stop(bare).wall_s) for _ in range(RUNS)]
    trace_s, bare_s = (statistics.median(side) for side in zip(*times))
    ratio = trace_s / bare_s
    print(f"second trace: {trace_s:.3f} s, median of {RUNS} ({min(t for t, _ in times):.3f} to {max(t for t, _ in times):.3f})")
    print(f"bare JVM that opens {len(pdfs)} PDF: {bare_s:.3f} s, median of {RUNS} "
          f"({min(b for _, b in times):.3f} to {max(b for _, b in times):.3f})")
    print(f"ratio {ratio:.2f}, limit {LIMIT}: {'kept' if ratio <= LIMIT else 'NOT KEPT'}")
    return 0 if ratio <= LIMIT else 1


if __name__ == "__main__":
    sys.exit(main())
