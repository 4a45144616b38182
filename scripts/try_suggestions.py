#!/usr/bin/env python3
"""Sends the suggestions of `ovenwright tune` through the invented ovens of make_ovens.py, which the model does not know.

    try_suggestions.py PROGRAM [--kinds slabs plate drafts] [--count 3] [--seed 7] [--start cold] [--confirm] [--split-sides]

Each case starts from a run that is 12 °C too cold, or by --start 10 °C too hot, on a belt 12 % too fast, 12 % too slow and
6 °C too cold, or one after the other (mixed). At the end: how often suggestions pass, by the chance that was stated, and how
many first ones pass where some recipe that was tried has a true margin of 10 % or more. Per case: does each suggestion truly pass, is its true margin within
the stated uncertainty of the predicted one, and is the oven's limit kept; with --confirm a run of the suggestion with the
most margin is added and tuned again; with --split-sides a second run has the top 8 °C lower and the bottom 14 °C higher, and
the search may part them. What passes is judged by `ovenwright check` on the true curves. Needs numpy."""
import argparse
import json
import os
import subprocess
import tempfile

import numpy as np

import make_ovens as made


def call(args):
    done = subprocess.run(args, capture_output=True, text=True)
    try:
        return json.loads(done.stdout)
    except ValueError:
        raise SystemExit(f"{' '.join(args)}: exit {done.returncode}, {done.stderr.strip()[-300:]}")


STARTS = {"cold": (-12, 1.0), "hot": (10, 1.0), "fast": (0, 1.12), "slow": (-6, 0.88)}


class Line:
    """One invented oven with its board, and a folder with the files of the first run."""

    def __init__(self, kind, seed, number, folder, start):
        seeds = [seed, number, list(made.KINDS).index(kind)]
        rng = np.random.default_rng(seeds)
        self.folder, self.name = folder, f"{kind} {number + 1}"
        made.make_case(kind, np.random.default_rng(seeds), folder, self.name)
        self.oven = made.Oven(rng)
        self.board = made.KINDS[kind](rng, self.oven)
        self.recipe = made.peak_adjusted(self.board, made.recipe_for(rng, self.oven))
        by, faster = STARTS[start]
        for side in ("top", "bottom"):
            self.recipe[side] = [v + by for v in self.recipe[side]]
        self.recipe["speed"] = float(round(self.recipe["speed"] * faster))
        made.write_recipe(folder + "/recipe.toml", self.name, self.name, self.recipe)
        self.rng = np.random.default_rng([seed, number, 9])
        self.log(self.recipe, folder + "/log.csv", True)

    def log(self, recipe, path, noisy):
        drift = self.rng.normal(0, 0.35, self.oven.n + self.oven.cool)
        t, T = self.board.run(recipe, drift, 10 + self.rng.uniform(-2, 2))
        t, T = t[::5], T[::5]
        if noisy:
            T = T + self.rng.normal(0, 0.08, T.shape)
        made.write_log(path, self.board.names, t, T, 1 if noisy else 4)

    def truth(self, program, recipe):
        """Verdict and margin of a recipe on the true oven."""
        with tempfile.TemporaryDirectory() as work:
            self.log(recipe, work + "/true.csv", False)
            run = call([program, "check", work + "/true.csv", "--window", self.folder + "/window.toml", "--format", "json"])["runs"][0]
        return run["verdict"], run["margin"], run["results"] + run["board_results"]


def worst(predicted, true):
    """The result that holds the true margin down, predicted and true."""
    low = min((r for r in true if r["margin"] is not None), key=lambda r: r["margin"])
    same = next(r for r in predicted if (r["requirement"], r["trace"]) == (low["requirement"], low["trace"]))
    return f'{low["requirement"]} of {low["trace"] or "the board"} {same["value"]:.2f} ± {same["prediction_half_width"]:.2f} was {low["value"]:.2f}'


def recipe_from(suggested):
    return {"top": suggested["top_C"], "bottom": suggested["bottom_C"], "cooling": suggested["cooling_C"], "speed": suggested["speed_mm_per_min"]}


def tune(program, line, more=(), options=()):
    runs = [(line.folder + "/log.csv", line.folder + "/recipe.toml"), *more]
    args = [program, "tune"] + [log for log, _ in runs]
    for _, recipe in runs:
        args += ["--recipe", recipe]
    return call(args + ["--oven", line.folder + "/oven.toml", "--board", line.folder + "/board.toml", "--window", line.folder + "/window.toml", "--format", "json", *options])


def run_apart(line):
    """A run with top and bottom apart: its log and recipe."""
    recipe = {**line.recipe, "top": [v - 8 for v in line.recipe["top"]], "bottom": [v + 14 for v in line.recipe["bottom"]]}
    log, path = line.folder + "/apart.csv", line.folder + "/apart.toml"
    made.write_recipe(path, "apart", line.name, recipe)
    line.log(recipe, log, True)
    return log, path


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("program")
    parser.add_argument("--kinds", nargs="*", default=list(made.KINDS))
    parser.add_argument("--count", type=int, default=3)
    parser.add_argument("--seed", type=int, default=7)
    parser.add_argument("--start", choices=[*STARTS, "mixed"], default="cold")
    parser.add_argument("--confirm", action="store_true")
    parser.add_argument("--split-sides", action="store_true")
    a = parser.parse_args()
    first, tried, held, off, gain, stated, feasible = [], 0, [], [], [], [], []
    for kind in a.kinds:
        for number in range(a.count):
            with tempfile.TemporaryDirectory() as folder:
                start = list(STARTS)[(number + a.seed) % 4] if a.start == "mixed" else a.start
                line, reached = Line(kind, a.seed, number, folder, start), []
                runs, options = ([run_apart(line)], ["--split-sides"]) if a.split_sides else ([], [])
                report = tune(a.program, line, runs, options)
                words = []
                for s in report["suggestions"]:
                    verdict, margin, results = line.truth(a.program, recipe_from(s["recipe"]))
                    predicted, uncertainty = s["predicted"]["margin"], s["predicted"]["margin_uncertainty"]
                    chance = s["predicted"]["pass_probability"]
                    words.append(f'{s["aim"]} {verdict} {margin:+.2f} (predicted {predicted:+.2f} ± {uncertainty:.2f}, P {"unknown" if chance is None else format(chance, ".2f")})')
                    reached.append(margin)
                    if chance is not None:
                        stated.append((chance, verdict == "pass"))
                    tried += verdict == "pass"
                    off.append(abs(margin - predicted))
                    held.append(off[-1] <= uncertainty)
                    if not held[-1] or verdict != "pass":
                        words[-1] += ": " + worst(s["predicted"]["results"], results)
                    if s is report["suggestions"][0]:
                        first.append(verdict == "pass")
                    if s["aim"] == "most margin" or "most margin" in s["also"]:
                        before, chosen = margin, recipe_from(s["recipe"])
                if not report["suggestions"]:
                    words.append("infeasible" if report["infeasible"] else "no suggestion")
                elif a.confirm:
                    made.write_recipe(folder + "/second.toml", "second", line.name, chosen)
                    line.log(chosen, folder + "/second.csv", True)
                    again = tune(a.program, line, [*runs, (folder + "/second.csv", folder + "/second.toml")], options)
                    best = next((s for s in again["suggestions"] if s["aim"] == "most margin"), None)
                    after = line.truth(a.program, recipe_from(best["recipe"]))[1] if best else before
                    gain.append(after - before)
                    reached.append(after)
                    words.append(f"after its confirming run {after:+.2f}")
                if max(reached, default=-1) >= 0.1:
                    feasible.append(first[-1])
                if report["next_run"]:
                    words.append(report["next_run"]["sentence"])
                print(f'  {line.name}: now {report["now"]["verdict"]} {report["now"]["margin"] or 0:+.2f}; ' + "; ".join(words), flush=True)
    print(f"first suggestion truly passes on {sum(first)} of {len(first)}; all suggestions {tried} of {len(held)}; |predicted - true| {np.median(off):.3f}; "
          f"within its uncertainty {100 * np.mean(held):.0f} %" + (f"; the confirming run adds {np.median(gain):+.3f}" if gain else ""))
    print(f"first suggestion truly passes on {sum(feasible)} of {len(feasible)} lines with a recipe of 10 % or more")
    edges = [0, 0.2, 0.4, 0.6, 0.8, 0.9, 0.95, 0.99, 1.01]
    for low, high in zip(edges, edges[1:]):
        inside = [(p, passed) for p, passed in stated if low <= p < high]
        if inside:
            print(f"  stated {low:.2f} to {min(high, 1):.2f}, mean {np.mean([p for p, _ in inside]):.2f}: {sum(passed for _, passed in inside)} of {len(inside)} pass")


main()
