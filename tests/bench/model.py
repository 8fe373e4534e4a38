"""Times one circuit of the reference model; prints the median in microseconds as JSON."""

import json
import sys
from pathlib import Path
from statistics import median
from time import perf_counter

REFERENCE = Path(__file__).parent.parent / "reference"
sys.path.insert(0, str(REFERENCE))

from circuits import Circuit

CIRCUITS = 60


def seconds(given):
    started = perf_counter()
    Circuit(given).best()
    return perf_counter() - started


def main():
    figures = json.loads((REFERENCE / "figures.json").read_text(encoding="utf-8"))
    given = [circuit["given"] for circuit in figures["circuits"][:CIRCUITS]]
    print(json.dumps({"circuit": median(map(seconds, given)) * 1e6}))


if __name__ == "__main__":
    main()
