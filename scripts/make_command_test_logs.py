#!/usr/bin/env python3
"""Makes the small logs of tests/data/command from one curve, without noise; the same call gives the same bytes.

T(t) = 25 + k·(125·S((t−70)/16) + 45·S((t−150)/22) + 66·S((t−213)/10) − 218·S((t−280)/15)), S(x) = 1/(1 + e^−x), once a
second, k for each channel; two decimals.
"""
import math
from pathlib import Path

FOLDER = Path(__file__).resolve().parent.parent / "tests" / "data" / "command"


def sigmoid(x):
    return 1 / (1 + math.exp(-x))


def temperature_C(t, k):
    return 25 + k * (125 * sigmoid((t - 70) / 16) + 45 * sigmoid((t - 150) / 22) + 66 * sigmoid((t - 213) / 10)
                     - 218 * sigmoid((t - 280) / 15))


def rows(factors, last):
    return ["%d,%s" % (t, ",".join("%.2f" % temperature_C(t, k) for k in factors)) for t in range(last + 1)]


def write(name, header, lines):
    (FOLDER / name).write_text("\n".join([header] + lines) + "\n", encoding="utf-8", newline="\n")


HEADER = "Time (s),U1 (°C),R2 (°C)"
write("passes.csv", HEADER, rows((1.0, 1.005), 440))
write("too_cold.csv", HEADER, rows((0.94, 1.0), 440))
write("tin_lead.csv", HEADER, rows((0.86, 0.87), 440))
write("ends_rising.csv", HEADER, rows((1.0, 1.005), 225))
write("header_only.csv", HEADER, [])
write("bad_cell.csv", HEADER, rows((1.0, 1.005), 30) + ["31,27.0,28.0,29.0,30.0,31.0"] + ["thirty-two,1,2"])
