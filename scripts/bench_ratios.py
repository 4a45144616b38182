"""Prints the ratios that a table names, from Google Benchmark's JSON. Usage: bench_ratios.py [--some] RATIOS JSON...
--some: lines of the table that did not run are left out."""

import json
import re
import sys

SECONDS = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1.0}


def seconds_by_name(files):
    """Real seconds of an iteration of every benchmark, the best of its repetitions, by its name without the run's settings;
    and the most of each counter."""
    times, counters = {}, {}
    for file in files:
        with open(file, encoding="utf-8") as results:
            for run in json.load(results)["benchmarks"]:
                if run.get("error_occurred") or run.get("run_type") == "aggregate":
                    continue
                name = re.sub(r"/(real_time|(iterations|repeats):\d+|min_time:[\d.]+)", "", run["name"])
                times[name] = min(times.get(name, float("inf")), run["real_time"] * SECONDS[run["time_unit"]])
                if "memory" in run:  # a counter: no time, but read by its name likewise
                    counters[name + "/memory"] = max(counters.get(name + "/memory", 0), run["memory"])
    return times, counters


def main():
    some = sys.argv[1] == "--some"
    table, *files = sys.argv[2:] if some else sys.argv[1:]
    times, counters = seconds_by_name(files)
    with open(table, encoding="utf-8") as ratios:
        lines = [line.strip() for line in ratios if line.strip() and not line.startswith("#")]
    for line in lines:
        name, other, target, what = (cell.strip() for cell in line.split("|"))
        if name in counters:
            value = counters[name]
        elif name in times and (other == "s" or other in times):
            value = times[name] if other == "s" else times[name] / times[other]
        else:
            if not some:
                print(f"{'':8}  target {target:>5}  not run {what}")
            continue
        print(f"{value:8.3g}  target {target:>5}  {'met   ' if value <= float(target) else 'MISSED'}  {what}")
    print()
    for name, value in sorted(times.items()):
        print(f"{value * 1e3:12.4g} ms  {name}")


main()
