#!/usr/bin/env python3
"""Adds up the reports that the last test run left in the modules and prints one line."""
import glob
import os
import sys
import xml.etree.ElementTree as ElementTree

root = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
total = failed = skipped = 0
for report in glob.glob(os.path.join(root, "*", "target", "surefire-reports", "TEST-*.xml")):
    suite = ElementTree.parse(report).getroot()
    total += int(suite.get("tests"))
    failed += int(suite.get("failures")) + int(suite.get("errors"))
    skipped += int(suite.get("skipped"))
print(f"{total - failed - skipped} passed, {failed} failed, {skipped} skipped")
sys.exit(1 if failed or not total else 0)
