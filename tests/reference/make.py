"""Computes what tests/reference.rs compares the core with, and writes it to the file named.

A section is a list of figures: its inputs and results, by name. One figure takes one line.
"""

import json
import sys
from pathlib import Path

import circuits
import friction
import lines
import units
import viscosity

SECTIONS = {
    "circuits": circuits.figures,
    "circuits_stalled": circuits.stalled,
    "conversions": units.figures,
    "drops": lines.figures,
    "friction": friction.figures,
    "friction_in_transition": friction.bounds_in_transition,
    "viscosity": viscosity.figures,
}


def line(figure):
    return "    " + json.dumps(figure, sort_keys=True, allow_nan=False)


def section(name, figures):
    return f'  "{name}": [\n' + ",\n".join(map(line, figures)) + "\n  ]"


def main(path):
    sections = [section(name, figures()) for name, figures in sorted(SECTIONS.items())]
    Path(path).write_text("{\n" + ",\n".join(sections) + "\n}\n", encoding="utf-8")


if __name__ == "__main__":
    main(*sys.argv[1:])
