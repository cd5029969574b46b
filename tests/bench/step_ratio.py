#!/usr/bin/env python3
"""Compares the state and one trace of a step over a 1,000-sheet set with one breadth-first walk over the same graph.

Warm, in one run of one JVM; see StepRatio.java for the set. Needs the built app jar (or --jar).
Exit status: 0 within the limit, 1 beyond it, 2 where it could not be measured.
"""
import argparse
import sys
import tempfile
from pathlib import Path

from measured import PROJECT, need_file, need_tools, run_or_stop, stop

LIMIT = 20.0


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--sheets", type=int, default=1000)
    parser.add_argument("--jar", default=PROJECT / "app" / "target" / "linewalk.jar")
    args = parser.parse_args()
    need_tools(["java", "javac"], "a JDK")
    jar = need_file(args.jar, "app jar")
    with tempfile.TemporaryDirectory(prefix="linewalk-bench-") as classes:
        run_or_stop(["javac", "-proc:none", "-nowarn", "-cp", jar, "-d", classes, Path(__file__).with_name("StepRatio.java")])
        with open(Path(classes) / "said.txt", "w+b") as out:
            run_or_stop(["java", "-cp", f"{jar}:{classes}", "StepRatio", args.sheets], out=out)
            out.seek(0)
            said = out.read().decode()
    print(said, end="")
    ratios = [float(line.split()[1]) for line in said.splitlines() if line.startswith("ratio ")]
    ratio = ratios[0] if ratios else stop("the benchmark printed no ratio")
    print(f"limit {LIMIT:.0f}: {'kept' if ratio <= LIMIT else 'NOT KEPT'}")
    return 0 if ratio <= LIMIT else 1


if __name__ == "__main__":
    sys.exit(main())
