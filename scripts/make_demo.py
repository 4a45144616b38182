#!/usr/bin/env python3
"""Makes the demo's logs in profiles/demo, from a stated model. Everything in them is invented.

Needs Python 3.11 and numpy. The same call always gives the same bytes:

    /usr/bin/python3 scripts/make_demo.py [FOLDER]        (default: profiles/demo beside this script)

The scene: Quillmarsh Assembly runs the fictional controller board 'Tern' on 'Line 2', a ten-zone oven with two
cooling zones, and afterwards over a wave machine with three preheaters and two waves. Oven, recipes and the places of
the thermocouples are read from the TOML files of the folder.

Model of the oven
  x is the distance from the mouth along the conveyor. The air A(x) obeys a steady balance of mixing, cross flow and
  exchange with the air that is blown in,
      lu·ld·A″ − (ld − lu)·A′ + β(x)·(S(x) − A) = 0,      A = ambient far outside,
  S being the setpoint inside a zone, the mean of both neighbours in a gap and ambient in the tunnels; β is 1 in zones,
  0.15 in gaps, 0.1 in tunnels and 2 outside. lu and ld, 30 and 45 mm, are how far a zone is felt against and along the
  cross flow. Top and bottom setpoints are equal. Panels radiate with the zone's setpoint, seen through
      dF/dx = d²/(2·(d² + x²)^1.5),      d = 45 mm.
Model of a placement, x_mm behind the leading edge
  An outer mass is heated by convection and radiation; an inner mass hangs on it, where the part is heavy:
      dTo/dt = [(1 − r)·g(x)·(A − To) + r·k(x)·(R⁴ − To⁴)/(4·473³)]/τ + (m/τi)·(Ti − To)
      dTi/dt = (To − Ti)/τi
  with temperatures in kelvin in the radiation term. τ is the time constant at full exchange, r the share of radiation
  at 473 K, m the inner mass over the outer, g and k the exchange relative to that of a heated zone (g: cooling zones
  0.7, gaps 0.45, tunnels 0.3, outside 0.2; k: 1 inside, 0 in tunnels and outside). The thermocouple reads the inner
  mass, where there is one, through a bead of time constant τb.
Model of the wave
  The same masses over three preheaters and in the air, by a prescribed air temperature; a bottom-side joint in a wave
  is coupled to solder of 258 °C with a time constant of 0.8 s while it is inside the wave's length.
Instrument
  Normal noise of 0.08 °C, then rounding to a tenth of a degree. The faults of the last log are written over the
  finished samples.
"""
from __future__ import annotations

import sys
import tomllib
from dataclasses import dataclass
from pathlib import Path

import numpy as np

KELVIN = 273.15
AMBIENT_C = 25.0       # of the room and the boards
GRID_MM = 5.0
OUTSIDE_MM = 600.0
STEP_S = 0.05



def load(path: Path) -> dict:
    return tomllib.loads(path.read_text(encoding="utf-8"))


def places(board: Path, placements: list) -> np.ndarray:
    """How far behind the leading edge each placement sits, mm."""
    x_mm = {p["channel"]: p["x_mm"] for p in load(board)["placement"]}
    return np.array([x_mm[p.channel] for p in placements], float)


# ---------------------------------------------------------------------------------------------------- the reflow oven
@dataclass(frozen=True)
class Placement:
    channel: str
    tau_s: float
    radiation: float = 0.25    # r
    inner_mass: float = 0.0    # m; 0: no inner mass
    inner_s: float = 10.0      # τi
    bead_s: float = 0.4        # τb


class Surroundings:
    """Air, panels and exchange along the oven for one recipe, on a grid of 5 mm."""

    def __init__(self, oven: dict, recipe: dict):
        zones = oven["zone"]
        pitch = np.array([z["length_mm"] + z["gap_after_mm"] for z in zones])
        starts = oven["entrance_mm"] + np.cumsum(pitch) - pitch
        length = oven["entrance_mm"] + pitch.sum() + oven["exit_mm"]
        x = np.arange(-OUTSIDE_MM, length + OUTSIDE_MM, GRID_MM)
        setpoints = np.array(recipe["top_C"] + recipe["cooling_C"], float)
        supply = np.full(x.size, AMBIENT_C)
        beta = np.where((x >= 0) & (x <= length), 0.1, 2.0)
        exchange = np.where((x >= 0) & (x <= length), 0.3, 0.2)
        panels = np.zeros(x.size)
        for i, (zone, start) in enumerate(zip(zones, starts)):
            end = start + zone["length_mm"]
            inside = (x >= start) & (x < end)
            supply[inside], beta[inside], panels[inside] = setpoints[i], 1.0, 1.0
            exchange[inside] = 1.0 if zone["kind"] == "heat" else 0.7
            if i + 1 < len(zones):
                gap = (x >= end) & (x < starts[i + 1])
                supply[gap], beta[gap] = setpoints[i:i + 2].mean(), 0.15
                exchange[gap], panels[gap] = 0.45, 1.0
        self.x = x
        self.air = self._air(supply, beta)
        self.exchange = self._smooth(exchange, np.exp(-0.5 * (np.arange(-60, 61, GRID_MM) / 20) ** 2))
        self.view = self._smooth(panels, self._view_factor())
        self.panel4 = self._smooth((supply + KELVIN) ** 4, self._view_factor())

    @staticmethod
    def _view_factor() -> np.ndarray:
        distance, s = 45.0, np.arange(-600, 601, GRID_MM)
        return distance ** 2 / (2 * (distance ** 2 + s ** 2) ** 1.5)

    @staticmethod
    def _smooth(values: np.ndarray, kernel: np.ndarray) -> np.ndarray:
        half = kernel.size // 2
        return np.convolve(np.pad(values, half, mode="edge"), kernel / kernel.sum(), mode="valid")

    @staticmethod
    def _air(supply: np.ndarray, beta: np.ndarray) -> np.ndarray:
        against, along = 30.0, 45.0
        mixing, flow, n = against * along / GRID_MM ** 2, (along - against) / (2 * GRID_MM), supply.size
        a = np.diag(2 * mixing + beta)
        a -= np.diag(np.full(n - 1, mixing + flow), -1) + np.diag(np.full(n - 1, mixing - flow), 1)
        a[0], a[-1] = 0, 0
        a[0, 0] = a[-1, -1] = 1
        right = beta * supply
        right[0] = right[-1] = AMBIENT_C
        return np.linalg.solve(a, right)

    def at(self, x_mm: np.ndarray):
        return tuple(np.interp(x_mm, self.x, field) for field in (self.air, self.exchange, self.view, self.panel4))


def reflow(folder: Path, recipe: str, board: str, placements: list, entry_s: float, duration_s: float):
    """Times every 0.05 s and what each thermocouple would read there without noise, one column each."""
    recipe = load(folder / recipe)
    field = Surroundings(load(folder / "oven.toml"), recipe)
    time = np.arange(0, duration_s + STEP_S, STEP_S)
    x = places(folder / board, placements)
    tau, share, m, inner, bead = (np.array([getattr(p, name) for p in placements])
                                  for name in ("tau_s", "radiation", "inner_mass", "inner_s", "bead_s"))
    air, exchange, view, panel4 = field.at((time[:, None] - entry_s) * recipe["speed_mm_per_min"] / 60 - x)
    outer, core, read = (np.full(x.size, AMBIENT_C) for _ in range(3))
    out = np.empty((time.size, x.size))
    for i in range(time.size):
        out[i] = read
        radiated = share * view[i] * (panel4[i] - (outer + KELVIN) ** 4) / (4 * 473.0 ** 3)
        flow = ((1 - share) * exchange[i] * (air[i] - outer) + radiated) / tau
        into = np.where(m > 0, (outer - core) / inner, 0.0)
        outer = outer + STEP_S * (flow - m * into)
        core = np.where(m > 0, core + STEP_S * into, outer)
        read = read + STEP_S * (core - read) / bead
    return time, out


# --------------------------------------------------------------------------------------------------- the wave machine
BELT_MM_PER_S = 20.0
PREHEAT = ((200.0, 800.0, 135.0), (840.0, 1440.0, 165.0), (1480.0, 2080.0, 195.0))  # from mm, to mm, air °C
WAVES_MM = ((2300.0, 2326.0), (2440.0, 2496.0))
WAVE_AIR_C, SOLDER_C, JOINT_S = 70.0, 258.0, 0.8


@dataclass(frozen=True)
class WavePlacement:
    channel: str
    tau_s: float              # of the board under it, to the air of the preheaters
    bottom: bool              # a joint that dips into the solder
    solder_s: float = 60.0    # of the board under it, to the solder
    board_s: float = 13.0     # of a bottom joint, to the board


def wave(folder: Path, board: str, placements: list, entry_s: float, duration_s: float):
    """As reflow(), over the wave machine."""
    time = np.arange(0, duration_s + STEP_S, STEP_S)
    x_mm = places(folder / board, placements)
    under, joint = np.full(len(placements), AMBIENT_C), np.full(len(placements), AMBIENT_C)
    out = np.empty((time.size, len(placements)))
    for i, now in enumerate(time):
        out[i] = joint
        for j, p in enumerate(placements):
            x = (now - entry_s) * BELT_MM_PER_S - x_mm[j]
            air = next((c for a, b, c in PREHEAT if a <= x < b), WAVE_AIR_C if 2080 <= x < 2900 else AMBIENT_C)
            flow = (air - under[j]) / p.tau_s
            dips = any(a <= x < b for a, b in WAVES_MM)
            if dips:
                flow += (SOLDER_C - under[j]) / p.solder_s
            under[j] += STEP_S * flow
            if p.bottom:
                rate = (under[j] - joint[j]) / p.board_s + (SOLDER_C - joint[j]) / JOINT_S * dips
                joint[j] += STEP_S * rate
            else:
                joint[j] = under[j]
    return time, out


# ------------------------------------------------------------------------------------------------------ the instrument
def logged(time, temperature_C, interval_s: float, seed: int, fahrenheit: bool = False):
    """Samples at the logger's interval: noise of 0.08 °C, rounded to 0.1 of the unit."""
    at = np.arange(0, time[-1] - 1e-9, interval_s)
    read = np.column_stack([np.interp(at, time, column) for column in temperature_C.T])
    read += np.random.default_rng(seed).normal(0, 0.08, read.shape)
    return at, np.round(read * 1.8 + 32 if fahrenheit else read, 1) + 0.0


def clock(seconds: float, start: str, decimals: int, mark: str) -> str:
    h, m, s = (float(part) for part in start.split(":"))
    total = h * 3600 + m * 60 + s + seconds
    text = "%02d:%02d:%0*.*f" % (total // 3600, total % 3600 // 60, 3 + decimals, decimals, total % 60)
    return text.replace(".", mark)


def write(path: Path, lines: list) -> None:
    path.write_text("\n".join(lines) + "\n", encoding="utf-8", newline="\n")
    print(path)


# ---------------------------------------------------------------------------------------------------- Tern and its runs
MAIN = [
    Placement("R118", 35.5, 0.20),
    Placement("D7 lead", 38.5),
    Placement("U3 body", 40.8, 0.30, 0.10, 8),
    Placement("J4 pin 1", 38.2, 0.25, 0.15),
    Placement("U12 corner", 41.5, 0.25, 0.15),
    Placement("U12 centre", 38.8, 0.25, 0.30, 14),
]
AIR = Placement("Air", 1.2, 0.15)
SECOND_SIDE = [
    Placement("R204", 35.9, 0.20),
    Placement("Q6 lead", 37.6),
    Placement("L2", 38.6, 0.25, 0.15),
    Placement("J4 pin 1", 38.4, 0.25, 0.16),
    Placement("U12 corner", 41.6, 0.22, 0.15),
    Placement("U12 centre", 39.2, 0.22, 0.30, 14),
]
WAVE = [
    WavePlacement("J9 pin 1", 62, True),
    WavePlacement("J9 pin 20", 66, True),
    WavePlacement("T2 lead", 78, True, board_s=9.0),
    WavePlacement("U12 corner", 92, False, 75),
    WavePlacement("C7 can", 104, False, 110),
    WavePlacement("Board top", 76, False, 48),
]


def run_1(folder: Path) -> None:
    """Recipe rev 7: U12 centre stays too cold, R118 heats too fast. Semicolons, decimal commas, a clock."""
    t, T = logged(*reflow(folder, "recipe.toml", "board.toml", MAIN, 3.4, 420.5), 0.5, 2291)
    lines = ["Quillmarsh Assembly;Line 2", "Lot;QM-2291", "Board;Tern, main side", "Run;3", "",
             "Zeit;" + ";".join("%s [°C]" % p.channel for p in MAIN)]
    lines += [clock(s, "09:14:22", 1, ",") + ";" + ";".join(("%.1f" % v).replace(".", ",") for v in row)
              for s, row in zip(t, T)]
    write(folder / "tern_run1.csv", lines)


def run_2(folder: Path) -> None:
    """The same board with recipe rev 8: passes. Commas, seconds."""
    t, T = logged(*reflow(folder, "recipe_rev8.toml", "board.toml", MAIN, 8.2, 500), 0.5, 2292)
    lines = ["Time (s)," + ",".join("%s (°C)" % p.channel for p in MAIN)]
    lines += ["%.1f," % s + ",".join("%.1f" % v for v in row) for s, row in zip(t, T)]
    write(folder / "tern_run2.csv", lines)


def second_side(folder: Path) -> None:
    """The second side; U12 and J4 now hang below. Tabs, minutes and seconds, in °F."""
    run = reflow(folder, "recipe_second_side.toml", "board_second_side.toml", SECOND_SIDE, 12.6, 508)
    t, T = logged(*run, 1.0, 2293, fahrenheit=True)
    lines = ["Tern second side\tQM-2291", "mm:ss\t" + "\t".join("%s °F" % p.channel for p in SECOND_SIDE)]
    lines += ["%02d:%02d\t" % (s // 60, s % 60) + "\t".join("%.1f" % v for v in row) for s, row in zip(t, T)]
    write(folder / "tern_second_side.txt", lines)


def wave_run(folder: Path) -> None:
    """The wave, after both reflow passes. Tabs, seconds."""
    t, T = logged(*wave(folder, "board_wave.toml", WAVE, 15, 210), 0.2, 2294)
    lines = ["s\t" + "\t".join(p.channel for p in WAVE), "\t" + "\t".join("°C" for _ in WAVE)]
    lines += ["%.1f\t" % s + "\t".join("%.1f" % v for v in row) for s, row in zip(t, T)]
    write(folder / "tern_wave.tsv", lines)


def faulty_run(folder: Path) -> None:
    """Recipe rev 8 once more with a bad day at the thermocouples: D7 lead has two spikes, J4 pin 1 is open for a while,
    U12 corner is plugged in the wrong way round, and a seventh thermocouple hangs in the air."""
    placements = MAIN + [AIR]
    t, T = logged(*reflow(folder, "recipe_rev8.toml", "board_with_air.toml", placements, 9.0, 500), 0.5, 2295)
    names = [p.channel for p in placements]
    T[t == 141.5, names.index("D7 lead")] += 61.3
    T[(t >= 332) & (t <= 332.5), names.index("D7 lead")] -= 38.0
    corner = names.index("U12 corner")
    T[:, corner] = 2 * (AMBIENT_C + 0.4) - T[:, corner]
    T[(t >= 186) & (t <= 214.5), names.index("J4 pin 1")] = np.nan
    cells = [["" if np.isnan(v) else "%.1f" % v for v in row] for row in T]
    lines = ["# Quillmarsh Assembly, lot QM-2291, Tern, main side", "# 7 thermocouples, type K",
             "elapsed|" + "|".join(names), "s|" + "|".join("degC" for _ in names)]
    lines += ["%.1f|" % s + "|".join(c or "open" for c in row) for s, row in zip(t, cells)]
    write(folder / "tern_faults.txt", lines)


def main() -> None:
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).resolve().parent.parent / "profiles" / "demo"
    folder.mkdir(parents=True, exist_ok=True)
    for make in (run_1, run_2, second_side, wave_run, faulty_run):
        make(folder)


if __name__ == "__main__":
    main()
