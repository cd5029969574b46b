"""Draws hydraulic-like sheets for benchmarks. Lengths are millimetres, origin top left, unless a name says pt."""
