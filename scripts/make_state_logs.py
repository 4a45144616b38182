#!/usr/bin/env python3
"""Makes logs and windows that bring out every state of the Check screen, from the demo's logs, by stated rules.

    scripts/make_state_logs.py FOLDER

The base is tern_run2.csv, which passes, and tern_run1.csv, which does not. "Scaled to P" means that every temperature T
of a thermocouple becomes ambient + (T − ambient)·(P − ambient)/(peak − ambient). The files, all invented:

    not_reached.csv        U12 centre scaled to 209.8 °C: it never melts
    conditional_fail.csv   U12 centre scaled to 234.3 °C, below 235 °C by less than its uncertainty
    conditional_pass.csv   U12 centre scaled to 236.0 °C
    off_scale.csv          U12 centre scaled to 180 °C, R118 to 290 °C: both beyond the lane's ends
    none_reached.csv       all six scaled to 180 to 205 °C
    three_low.csv          the three coldest scaled to 231, 232 and 233 °C
    open.csv               U12 centre without readings for 20 s around its peak: no value but a range
    fail_and_open.csv      the same of tern_run1
    at_least.csv           1.5 times slower from where R118 passes 217 °C on, cut where it has been above that for 104 s
    at_least_within.csv    the same cut at 92 s: beyond the limit by less than the uncertainty
    ends_hot.csv           cut 15 s after the hottest peak
    ends_rising.csv        cut 20 s before the hottest peak
    starts_hot.csv         begins 15 s after R118 has passed 217 °C
    fail_many.csv          tern_run1 slowed by 1.35 and scaled to 98.5 %, the array's two to 97.5 %, of the rise
    many_N.csv             N = 1, 2, 7, 12, 13, 32, 37 thermocouples, each a mixture of two neighbours, ± 2 °C at the peak
    cannot_pass.toml       the demo's window with peaks of joints within 3 °C: narrower than twice the uncertainty
    simple.toml            the demo's window by the rule `simple`
    touching.toml          the demo's window with an upper limit for the peak at the very end of R118's whisker
    lower_only.toml        the demo's window with a lower limit and a target for the peak of joints
    informative.toml       the demo's window with the steepest rise and the soak time informative
    spread_required.toml   the demo's window with the spread of peaks required
    no_target.toml         the demo's window with an upper limit for the peak alone: refused
"""
from __future__ import annotations

import random
import re
import sys
from pathlib import Path

DEMO = Path(__file__).resolve().parent.parent / "profiles" / "demo"
NAMES = ["R118", "D7 lead", "U3 body", "J4 pin 1", "U12 corner", "U12 centre"]
INTERVAL_S, AMBIENT_C, LIQUIDUS_C, CENTRE = 0.5, 25.0, 217.0, 5
Rows = list[list[float | None]]


def rows_of(name: str) -> Rows:
    """The temperatures of a log of the demo, a list for each row."""
    rows = []
    for line in (DEMO / name).read_text(encoding="utf-8-sig").splitlines():
        cells = line.split(";" if ";" in line else ",")
        if len(cells) == 1 + len(NAMES) and re.fullmatch(r"-?\d+[.,]\d", cells[1]):
            rows.append([float(cell.replace(",", ".")) for cell in cells[1:]])
    return rows


def scaled(rows: Rows, column: int, peak_C: float) -> Rows:
    factor = (peak_C - AMBIENT_C) / (max(row[column] for row in rows) - AMBIENT_C)
    return [[AMBIENT_C + (t - AMBIENT_C) * factor if i == column else t for i, t in enumerate(row)] for row in rows]


def slowed(rows: Rows, by: float) -> Rows:
    result = []
    for index in range(int((len(rows) - 1) * by)):
        at = index / by
        before = int(at)
        share = at - before
        result.append([a * (1 - share) + b * share for a, b in zip(rows[before], rows[before + 1])])
    return result


def mixed(rows: Rows, count: int) -> Rows:
    chance = random.Random(count)
    parts = [(chance.random(), chance.uniform(-2, 2)) for _ in range(count)]
    result = []
    for row in rows:
        line = []
        for k, (share, more_C) in enumerate(parts):
            t = row[k % 6] * (1 - share) + row[(k + 1) % 6] * share
            line.append(t + (t - AMBIENT_C) / 220 * more_C)
        result.append(line)
    return result


def hottest(rows: Rows) -> int:
    return max(range(len(rows)), key=lambda i: rows[i][0])


def write(path: Path, rows: Rows, names: list[str] = NAMES) -> None:
    lines = ["Time (s)," + ",".join(f"{name} (°C)" for name in names)]
    for index, row in enumerate(rows):
        lines.append(f"{index * INTERVAL_S:.1f}," + ",".join("" if t is None else f"{t:.1f}" for t in row))
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")


def main() -> None:
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    passes, fails = rows_of("tern_run2.csv"), rows_of("tern_run1.csv")
    write(folder / "not_reached.csv", scaled(passes, CENTRE, 209.8))
    write(folder / "conditional_fail.csv", scaled(passes, CENTRE, 234.3))
    write(folder / "conditional_pass.csv", scaled(passes, CENTRE, 236.0))

    write(folder / "off_scale.csv", scaled(scaled(passes, CENTRE, 180), 0, 290))
    none = passes
    for column, peak_C in enumerate((205, 200, 198, 196, 190, 180)):
        none = scaled(none, column, peak_C)
    write(folder / "none_reached.csv", none)
    low = passes
    for column, peak_C in ((5, 231), (4, 232), (3, 233)):
        low = scaled(low, column, peak_C)
    write(folder / "three_low.csv", low)

    for name, base in (("open", passes), ("fail_and_open", fails)):
        opened = [list(row) for row in base]
        peak = max(range(len(opened)), key=lambda i: opened[i][CENTRE])
        for row in opened[peak - 20 : peak + 20]:
            row[CENTRE] = None
        write(folder / f"{name}.csv", opened)

    melts = next(i for i, row in enumerate(passes) if row[0] > LIQUIDUS_C)
    slow = passes[:melts] + slowed(passes[melts:], 1.5)
    write(folder / "at_least.csv", slow[: melts + int(104 / INTERVAL_S)])
    write(folder / "at_least_within.csv", slow[: melts + int(92 / INTERVAL_S)])
    write(folder / "ends_hot.csv", passes[: hottest(passes) + int(15 / INTERVAL_S)])
    write(folder / "ends_rising.csv", passes[: hottest(passes) - int(20 / INTERVAL_S)])
    write(folder / "starts_hot.csv", passes[melts + int(15 / INTERVAL_S) :])

    many = slowed(fails, 1.35)
    write(folder / "fail_many.csv",
          [[AMBIENT_C + (t - AMBIENT_C) * (0.975 if i >= 4 else 0.985) for i, t in enumerate(row)] for row in many])
    for count in (1, 2, 7, 12, 13, 32, 37):
        write(folder / f"many_{count}.csv", mixed(passes, count), [f"TC{k + 1}" for k in range(count)])

    window = (DEMO / "window.toml").read_text(encoding="utf-8")
    joints = 'lower = 235\nupper = 250\napplies_to = "joint"'
    if joints not in window:
        sys.exit("the demo's window has no longer the limits that this script changes")
    (folder / "cannot_pass.toml").write_text(
        window.replace(joints, 'lower = 240\nupper = 243\napplies_to = "joint"'), encoding="utf-8")
    (folder / "simple.toml").write_text(
        window.replace('decision_rule = "guarded"', 'decision_rule = "simple"'), encoding="utf-8")
    (folder / "no_target.toml").write_text(
        window.replace(joints, 'upper = 250\napplies_to = "joint"'), encoding="utf-8")
    # R118 peaks at 247.2 ± 2.085383 °C in tern_run2.
    (folder / "touching.toml").write_text(
        window.replace(joints, 'lower = 230\nupper = 249.285383\napplies_to = "joint"'), encoding="utf-8")
    (folder / "lower_only.toml").write_text(
        window.replace(joints, 'lower = 235\ntarget = 242\napplies_to = "joint"'), encoding="utf-8")
    informative = window
    for name in ("steepest rise", "soak time"):
        informative = informative.replace(f'name = "{name}"', f'name = "{name}"\nrequired = false')
    (folder / "informative.toml").write_text(informative, encoding="utf-8")
    (folder / "spread_required.toml").write_text(
        window.replace('applies_to = "board"\nrequired = false', 'applies_to = "board"'), encoding="utf-8")


if __name__ == "__main__":
    main()
