#!/usr/bin/env python3
"""Compares the print of circuits of 60 components with the layout kernel's own layout of the same graphs.

Warm, in one run of one JVM; see print/PrintRatio.java. The limit holds for the median on A0, where most are one page, and
on A3, where they are divided into pages. Needs the built app jar (or --jar).
Exit status: 0 within the limit, 1 beyond it, 2 where it could not be measured.
"""
import argparse
import sys
import tempfile
from pathlib import Path

from measured import PROJECT, need_file, need_tools, run_or_stop, stop

LIMIT = 3.0


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--jar", default=PROJECT / "app" / "target" / "linewalk.jar")
    args = parser.parse_args()
    need_tools(["java", "javac"], "a JDK")
    jar = need_file(args.jar, "app jar")
    plants = PROJECT / "tests" / "src" / "test" / "java" / "linewalk" / "tests" / "plant"
    sources = [*sorted(Path(__file__).with_name("print").glob("*.java")), *sorted(plants.glob("*.java"))]
    with tempfile.TemporaryDirectory(prefix="linewalk-bench-") as classes:
        run_or_stop(["javac", "-proc:none", "-nowarn", "-cp", jar, "-d", classes, *sources])
        with open(Path(classes) / "said.txt", "w+b") as out:
            run_or_stop(["java", "-cp", f"{classes}:{jar}", "linewalk.renderer.PrintRatio"], out=out)
            out.seek(0)
            said = out.read().decode()
    print(said, end="")
    ratios = {line.split()[1]: float(line.split()[2]) for line in said.splitlines() if line.startswith("ratio ")}
    most = max(ratios.values()) if ratios else stop("the benchmark printed no ratio")
    print(f"limit {LIMIT:.0f}: {'kept' if most <= LIMIT else 'NOT KEPT'}")
    return 0 if most <= LIMIT else 1


if __name__ == "__main__":
    sys.exit(main())
