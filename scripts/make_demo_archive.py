#!/usr/bin/env python3
"""Makes an archive of invented runs for pictures and trials, from the demo's logs, by a stated rule.

    scripts/make_demo_archive.py PROGRAM ARCHIVE [RUNS=60]     PROGRAM: the command `ovenwright`

The runs are those of Quillmarsh Assembly: lots of Tern's main side by recipe revision 8 and the demo's window, and of
its second side by the window shipped for SAC305, on working days from 6 January 2026 on, one to three runs each. A run
is the demo's log of its board, warmed or cooled: a temperature T becomes

    T + (T − ambient)/215 °C · (a + b + d)

a: of the run, normal with 0.45 °C; b: of the thermocouple in the run, normal with 0.15 °C; d: drift, 0 for the first two
thirds of the runs and then −0.12 °C more with each run of a board. Every ninth run of the main side ran recipe revision
7 and is the log that fails; the eighth of the main side is the log with faults, as it is. The same call always makes the same runs; ids and times of adding differ.
"""
from __future__ import annotations

import random
import re
import subprocess
import sys
import tempfile
from datetime import datetime, timedelta, timezone
from pathlib import Path

DEMO = Path(__file__).resolve().parent.parent / "profiles" / "demo"
RUN_C, CHANNEL_C, DRIFT_C, AT_PEAK_C = 0.45, 0.15, -0.12, 215.0
NUMBER = re.compile(r"-?\d+[.,]\d")

# log, board, recipe, window, ambient in the log's unit, degrees of that unit in 1 °C
WINDOW = str(DEMO / "window.toml")
MAIN = ("tern_run2.csv", "board.toml", "recipe_rev8.toml", WINDOW, 25.0, 1.0)
MAIN_OLD = ("tern_run1.csv", "board.toml", "recipe.toml", WINDOW, 25.0, 1.0)
FAULTS = ("tern_faults.txt", "board_with_air.toml", "recipe_rev8.toml", WINDOW, 25.0, 1.0)
SECOND = ("tern_second_side.txt", "board_second_side.toml", "recipe_second_side.toml", "sac305", 77.0, 1.8)


def varied(log: Path, ambient: float, scale: float, run_C: float, channels: random.Random) -> str:
    """The log with its temperatures moved; times and words stay."""
    own: dict[int, float] = {}
    lines = []
    for line in log.read_text(encoding="utf-8").splitlines():
        between = next((mark for mark in ";\t" if mark in line), ",")
        cells = re.split(f"({between})", line)
        if len(cells) > 8 and not re.search(r"[A-Za-z°]", line):
            for column in range(2, len(cells), 2):
                if not NUMBER.fullmatch(cells[column].strip()):
                    continue
                comma = "," in cells[column]
                value = float(cells[column].replace(",", "."))
                offset_C = run_C + own.setdefault(column, channels.gauss(0, CHANNEL_C))
                value += (value - ambient) / (AT_PEAK_C * scale) * offset_C * scale
                text = f"{value:.1f}"
                cells[column] = text.replace(".", ",") if comma else text
        lines.append("".join(cells))
    return "\n".join(lines) + "\n"


def main() -> None:
    if len(sys.argv) not in (3, 4):
        sys.exit(__doc__)
    program, archive = sys.argv[1], sys.argv[2]
    total = int(sys.argv[3]) if len(sys.argv) == 4 else 60
    chance = random.Random(2291)
    when = datetime(2026, 1, 6, 8, 14, tzinfo=timezone.utc)
    lot, run, of_board = 2241, 0, {"main": 0, "second": 0}
    with tempfile.TemporaryDirectory() as folder:
        while run < total:
            side = "second" if chance.random() < 0.4 else "main"
            for number in range(1, chance.choice((1, 1, 2, 3)) + 1):
                if run == total:
                    break
                run += 1
                of_board[side] += 1
                old = side == "main" and of_board[side] % 9 == 5
                faults = side == "main" and of_board[side] == 8
                name, board, recipe, window, ambient, scale = (
                    SECOND if side == "second" else FAULTS if faults else MAIN_OLD if old else MAIN)
                late = max(0, of_board[side] - int(2 / 3 * total * (0.4 if side == "second" else 0.6)))
                run_C = chance.gauss(0, RUN_C) + DRIFT_C * late
                log = Path(folder) / f"qm{lot}_run{number}{Path(name).suffix}"
                log.write_text(varied(DEMO / name, ambient, scale, run_C, chance), encoding="utf-8")
                subprocess.run(
                    [program, "archive", "add", str(log), "--archive", archive, "--lot", f"QM-{lot}", "--serial",
                     f"T-{400 + run:04}", "--operator", chance.choice(("M. Kade", "R. Quill")), "--run-at",
                     when.strftime("%Y-%m-%dT%H:%M:%SZ"), "--window", window, "--board",
                     str(DEMO / board), "--oven", str(DEMO / "oven.toml"), "--recipe", str(DEMO / recipe)],
                    stdout=subprocess.DEVNULL, check=False)
                when += timedelta(minutes=chance.randint(50, 140))
            lot += chance.choice((1, 1, 2, 3))
            when += timedelta(hours=chance.choice((2, 3, 20, 24)))
            if when.hour > 16 or when.hour < 7:
                when = (when + timedelta(hours=12)).replace(hour=chance.randint(7, 9), minute=chance.randint(0, 59))
            while when.weekday() > 4:
                when += timedelta(days=1)


main()
