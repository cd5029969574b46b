"""Runs commands and measures them; ends the benchmark with one clear line where that cannot be done."""
import os
import shutil
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path

PROJECT = Path(__file__).resolve().parents[2]


@dataclass
class Run:
    """cpu_s: user and system time of the process and all it waited for; peak_mib: the largest of them."""
    status: int
    wall_s: float
    cpu_s: float
    peak_mib: float
    error: str


def stop(message):
    print(f"{Path(sys.argv[0]).name}: {message}", file=sys.stderr)
    sys.exit(2)


def need_tools(names, package):
    missing = [n for n in names if shutil.which(n) is None]
    if missing:
        stop(f"{' and '.join(missing)} not found; install {package}")


def need_file(path, what):
    if not Path(path).is_file():
        stop(f"no {what} at {path}")
    return str(Path(path).resolve())


def run(command, java_options=None, out=subprocess.DEVNULL):
    env = {k: v for k, v in os.environ.items() if k != "LINEWALK_JAVA_OPTS"}   # so that figures compare
    if java_options:
        env["LINEWALK_JAVA_OPTS"] = java_options
    with tempfile.TemporaryFile() as errors:
        start = time.perf_counter()
        child = subprocess.Popen([str(c) for c in command], stdin=subprocess.DEVNULL, stdout=out, stderr=errors, env=env)
        _, status, usage = os.wait4(child.pid, 0)
        wall_s = time.perf_counter() - start
        child.returncode = os.waitstatus_to_exitcode(status)
        errors.seek(0)
        lines = errors.read().decode(errors="replace").strip().splitlines()
    return Run(child.returncode, wall_s, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024, lines[-1] if lines else "")


def run_or_stop(command, **options):
    result = run(command, **options)
    if result.status != 0:
        stop(f"{' '.join(str(c) for c in command)} ended with {result.status}: {result.error or 'nothing on standard error'}")
    return result
