#!/usr/bin/env python3
"""Pairing, findings and linked copies of 200 and 1,000 drawn sheets (20 references each), under a 512 MiB heap.

All in CPU seconds, warm. Three limits: pairing and findings of the larger set take at most a quarter of its import; their time grows at most 1.3
times as fast as the sheets; from the smaller to the larger set the time of a linked copy grows at most 1.5 times as
much as that of qpdf copying the same files, in one run.
Exit status: 0 within the limits, 1 beyond them, 2 where it could not be measured.
"""
import argparse
import subprocess
import sys
import tempfile
from pathlib import Path

from draw_sheets import draw_set
from measured import PROJECT, need_file, need_tools, run_or_stop, stop

QUARTER, GROWTH, COPIES = 0.25, 1.3, 1.5
RUNS = 12


def qpdf_s(pdf, folder):
    return min(run_or_stop(["qpdf", pdf, folder / "copy.pdf"]).cpu_s for _ in range(RUNS))


def measure(jar, folder, sizes, seed):
    """[(sheets, references, import, check, copy)] in CPU seconds; the linked copies are checked by qpdf."""
    pairs = []
    for n, count in enumerate([sizes[0], *sizes]):   # the first warms up
        pdf, into = folder / f"{n}-{count}.pdf", folder / f"{n}-{count}"
        draw_set(count, pdf, None, seed)
        into.mkdir()
        pairs += [str(pdf), str(into)]
    command = ["java", "-Xmx512m", "-cp", jar, str(Path(__file__).with_name("CheckSize.java")), *pairs]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if done.returncode != 0:
        stop(f"CheckSize ended with {done.returncode}: {(done.stderr.strip().splitlines() or ['nothing'])[-1]}")
    rows = [tuple(float(x) for x in line.split()) for line in done.stdout.splitlines()]
    for into in pairs[3::2]:
        run_or_stop(["qpdf", "--check", Path(into) / "linked.pdf"])
    return rows, [Path(p) for p in pairs[2::2]]


def told(name, value, limit):
    print(f"{name} {value:.2f}, limit {limit:.2f}: {'kept' if value <= limit else 'NOT KEPT'}", flush=True)
    return value <= limit


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--sheets", type=int, nargs=2, default=[200, 1000], metavar=("FEW", "MANY"))
    parser.add_argument("--jar", default=PROJECT / "app" / "target" / "linewalk.jar")
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    need_tools(["qpdf"], "qpdf")
    need_tools(["java"], "openjdk-17-jdk-headless")
    jar = need_file(args.jar, "program; build it with ./linewalk --help")
    with tempfile.TemporaryDirectory(prefix="linewalk-bench-") as name:
        folder = Path(name)
        rows, pdfs = measure(jar, folder, args.sheets, args.seed)
        qpdf = [qpdf_s(p, folder) for p in pdfs]
    for (sheets, references, imported, checked, copied), q in zip(rows, qpdf):
        print(f"{sheets:.0f} sheets, {references:.0f} references: import {imported:.2f} s, pairing and findings"
              f" {checked:.3f} s, linked copy {copied:.3f} s, qpdf copy {q:.3f} s")
    few, many = rows
    good = told("pairing and findings as a share of the import", many[3] / many[2], QUARTER)
    good &= told("growth of pairing and findings over growth of sheets", many[3] / few[3] / (many[0] / few[0]), GROWTH)
    good &= told("slope of linked copies over slope of qpdf copies", (many[4] - few[4]) / (qpdf[1] - qpdf[0]), COPIES)
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
