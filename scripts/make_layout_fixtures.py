#!/usr/bin/python3
"""Makes the logs of tests/data/layouts: one run as many loggers and spreadsheets would write it, and damaged files.

    scripts/make_layout_fixtures.py [FOLDER] [--rows N]

Needs openpyxl and odfpy (Debian: python3-openpyxl python3-odf). The truth is a curve of this script's own: what must come out
of each file stands in expected.tsv, the readings themselves in truth.tsv. Board, lot and names are invented.
"""

import argparse
import datetime as dt
import gzip
import io
import json
import math
import pathlib
import zipfile

import openpyxl
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import Table, TableCell, TableRow
from odf.text import P

ROOT = pathlib.Path(__file__).resolve().parent.parent
arguments = argparse.ArgumentParser()
arguments.add_argument("folder", nargs="?", default=str(ROOT / "tests" / "data" / "layouts"))
arguments.add_argument("--rows", type=int, default=41)
options = arguments.parse_args()
FOLDER = pathlib.Path(options.folder)
FOLDER.mkdir(parents=True, exist_ok=True)

ROWS = options.rows
STEP = 200 / (ROWS - 1) if ROWS != 41 else 5
NAMES = ["U1 centre", "U1 corner", "R118"]
START = dt.datetime(2031, 3, 12, 9, 14, 22)


def step(x):
    return 1 / (1 + math.exp(-x))


def curve(k, t):
    late = (0, 4, -3)[k]
    rise = 95 * step((t - 40 - late) / 9) + 45 * step((t - 85 - late) / 12) + (72 + 4 * k) * step((t - 118 - late) / 6)
    return round(24.6 + k / 5 + rise - (150 + 3 * k) * step((t - 165 - late) / 9), 1)


T = [i * STEP for i in range(ROWS)]
C = [[curve(k, t) for t in T] for k in range(3)]
expected = []


def ok(name, data, encoding="utf-8", names=None, channels=(0, 1, 2), rows=(0, ROWS), first=None, tolerance=1e-9,
       holes="", step_s=None, time_tolerance=1e-6):
    """holes: "channel:first-last" of rows without a reading, rows counted within the log."""
    write(name, data, encoding)
    start = T[rows[0]] if first is None else first
    names = NAMES if names is None else names
    expected.append(["ok", name, f"{rows[0]}-{rows[1]}", repr(float(start)), repr(float(step_s or STEP)),
                     repr(time_tolerance), repr(tolerance), "|".join(names), "|".join(str(k) for k in channels), holes])


def bad(name, data, line, column=0, found="", encoding="utf-8"):
    write(name, data, encoding)
    expected.append(["error", name, str(line), str(column), found, "", "", "", "", ""])


def write(name, data, encoding):
    if isinstance(data, str):
        data = data.encode(encoding)
    (FOLDER / name).write_bytes(data)


def fixed(x, digits=1, decimal="."):
    return f"{x:.{digits}f}".replace(".", decimal)


def table(separator=",", decimal=".", header=None, time=None, cells=None, end="\n", before="", behind="", row=None,
          values=None, digits=1, last=True):
    """A table; time(i) gives the first cell, cells(k, i) the reading's, row(i, cells) the whole row."""
    values = values or C
    time = time or (lambda i: fixed(T[i], 1, decimal))
    cells = cells or (lambda k, i: fixed(values[k][i], digits, decimal))
    lines = []
    if header is not None:
        lines += header if isinstance(header[0], list) else [header]
    for i in range(ROWS):
        own = [time(i)] + [cells(k, i) for k in range(len(values))]
        made = row(i, own) if row else own
        lines += made if made and isinstance(made[0], list) else [made]
    text = end.join(separator.join(line) for line in lines)
    return before + text + (end if last else "") + behind


def at(i, start=START):
    return start + dt.timedelta(seconds=T[i])


def hms(i, base=9 * 3600 + 14 * 60 + 22, hours="{:02d}"):
    s = base + round(T[i])
    return f"{hours.format(s // 3600 % 24)}:{s // 60 % 60:02d}:{s % 60:02d}"


HEAD = ["Time (s)"] + [n + " (°C)" for n in NAMES]

# ---- languages and encodings ----
LANGUAGES = [
    ("de", "Messzeit [s]", "Kanal {} [°C]", ";", ",", "cp1252"),
    ("fr", "Durée (s)", "Voie {} (°C)", ";", ",", "cp1252"),
    ("es", "Tiempo transcurrido (s)", "Canal {} (°C)", ";", ",", "utf-8-sig"),
    ("it", "Tempo (s)", "Canale {} (°C)", ";", ",", "cp1252"),
    ("pt", "Tempo decorrido (s)", "Sensor {} (°C)", ";", ",", "utf-8"),
    ("nl", "Tijd (s)", "Kanaal {} (°C)", ";", ",", "utf-8"),
    ("pl", "Czas [s]", "Kanał {} [°C]", ";", ",", "cp1250"),
    ("cs", "Čas [s]", "Kanál {} [°C]", ";", ",", "cp1250"),
    ("sv", "Tid (s)", "Kanal {} (°C)", ";", ",", "cp1252"),
    ("tr", "Zaman (s)", "Kanal {} (°C)", ";", ",", "utf-8"),
    ("ru", "Время (с)", "Канал {} (°C)", ";", ",", "utf-8"),
    ("ko", "시간 (s)", "채널{} (°C)", ",", ".", "utf-8"),
    ("zh_cn", "采样时间(秒)", "通道{}温度(℃)", ",", ".", "gb18030"),
    ("zh_cn_utf16", "采样时间(s)", "通道{}(℃)", "\t", ".", "utf-16"),
    ("zh_tw", "取樣時間(秒)", "通道{}溫度(℃)", ",", ".", "big5"),
    ("ja", "経過時間[秒]", "温度{}[℃]", ",", ".", "shift_jis"),
    ("ja_euc", "経過時間[秒]", "チャンネル{}[℃]", ",", ".", "euc_jp"),
]
for code, time, channel, separator, decimal, encoding in LANGUAGES:
    titles = [channel.format(k + 1) for k in range(3)]
    bare = [t.split("(")[0].split("[")[0].strip() for t in titles]
    ok(f"language_{code}.csv", table(separator, decimal, [time] + titles), encoding, names=bare)

# ---- times ----
ok("time_clock_comma_fraction.csv", table(";", ",", ["Uhrzeit"] + NAMES, time=lambda i: hms(i) + ",0"), first=0)
ok("time_clock_colon_milliseconds.csv", table(header=["Time"] + NAMES, time=lambda i: hms(i) + ":000"), first=0)
ok("time_clock_unpadded.txt", table("\t", header=["Time"] + NAMES, time=lambda i: " " + hms(i, hours="{}")), first=0)
ok("time_clock_letters.csv", table(header=["Elapsed"] + NAMES, time=lambda i: f"0h{int(T[i]) // 60:02d}m{int(T[i]) % 60:02d}s"), first=0)
ok("time_days_and_clock.csv", table(header=["time"] + NAMES, time=lambda i: f"0 days 00:{int(T[i]) // 60:02d}:{int(T[i]) % 60:02d}"),
   first=0)
ok("time_iso_offset.csv", table(header=["Timestamp"] + NAMES, time=lambda i: at(i).strftime("%Y-%m-%dT%H:%M:%S+0100")), first=0)
ok("time_iso_comma_z.csv", table(";", ".", ["Timestamp"] + NAMES, time=lambda i: at(i).strftime("%Y-%m-%dT%H:%M:%S,000Z")),
   first=0)
ok("time_iso_utc_word.csv", table(header=["Time (UTC)"] + NAMES, time=lambda i: at(i).strftime("%Y-%m-%d %H:%M:%S UTC")), first=0)
ok("time_month_first_quoted.csv", table(header=["Date/Time"] + NAMES,
                                        time=lambda i: at(i).strftime('"Mar %d, 2031 %I:%M:%S %p"')), first=0)
ok("time_month_name_german.csv", table(";", ",", ["Datum"] + NAMES, time=lambda i: at(i).strftime("%d. März 2031 %H:%M:%S")),
   first=0)
ok("time_compact.csv", table(header=["timestamp"] + NAMES, time=lambda i: at(i).strftime("%Y%m%dT%H%M%S")), first=0)
ok("time_compact_blank.csv", table(header=["timestamp"] + NAMES, time=lambda i: at(i).strftime("%Y%m%d %H%M%S")), first=0)
ok("time_unpadded_date.csv", table(header=["DateTime"] + NAMES, time=lambda i: at(i).strftime("2031/3/12 %H:%M:%S").replace(" 09", " 9")),
   first=0)
ok("time_date_clock_ms.csv", table(header=["Date", "Time", "ms"] + NAMES,
                                   row=lambda i, r: [at(i).strftime("%Y-%m-%d"), hms(i), "0"] + r[1:]), first=0)
ok("time_six_columns.csv", table(header=["Year", "Month", "Day", "Hour", "Minute", "Second"] + NAMES,
                                 row=lambda i, r: [str(x) for x in at(i).timetuple()[:6]] + r[1:]), first=0)
ok("time_full_stops.csv", table(";", ",", ["Zeit"] + NAMES, time=lambda i: hms(i).replace(":", ".")), first=0)
ok("time_minutes_seconds.csv", table(header=["mm:ss"] + NAMES, time=lambda i: f"{int(T[i]) // 60:02d}:{int(T[i]) % 60:02d}"), first=0)
ok("time_epoch_nanoseconds.csv", table(header=["timestamp_ns"] + NAMES, time=lambda i: str((1930000000 + round(T[i])) * 10**9)),
   first=0)
ok("time_epoch_milliseconds.csv", table(header=["ts"] + NAMES, time=lambda i: str((1930000000 + round(T[i])) * 1000)), first=0)
ok("time_epoch_decimal_comma.csv", table(";", ",", ["unix"] + NAMES, time=lambda i: f"{1930000000 + round(T[i])},000"), first=0)
ok("time_serial_comma.csv", table(";", ",", ["Datum"] + NAMES, time=lambda i: fixed(47920.385 + T[i] / 86400, 9, ",")), first=0,
   time_tolerance=2e-3)
ok("time_before_trigger.csv", table(header=["t/s"] + NAMES, time=lambda i: fixed(T[i] - 20)), first=-20)
ok("time_hours.csv", table(header=["Time (h)"] + NAMES, time=lambda i: fixed(T[i] / 3600, 7)), time_tolerance=2e-3)
ok("time_minutes.csv", table(header=["Zeit/min"] + NAMES, time=lambda i: fixed(T[i] / 60, 5)), time_tolerance=2e-3)
ok("time_milliseconds_counter.csv", table(header=["millis"] + NAMES, time=lambda i: str(1234567 + round(T[i] * 1000))), first=1234.567)
ok("time_midnight_with_date.csv", table(header=["Date", "Time"] + NAMES, row=lambda i, r: [
    at(i, dt.datetime(2031, 3, 12, 23, 58)).strftime("%m/%d/%Y"), at(i, dt.datetime(2031, 3, 12, 23, 58)).strftime("%I:%M:%S %p")] + r[1:]),
   first=0)
ok("time_month_end.csv", table(header=["Time"] + NAMES, time=lambda i: at(i, dt.datetime(2031, 2, 28, 23, 59)).strftime("%d.%m.%Y %H:%M:%S")),
   first=0)
ok("time_noon_half_column.csv", table(header=["Time", "AM/PM"] + NAMES, row=lambda i, r: [
    at(i, dt.datetime(2031, 3, 12, 11, 59)).strftime("%I:%M:%S"), at(i, dt.datetime(2031, 3, 12, 11, 59)).strftime("%p")] + r[1:]), first=0)
ok("time_noon_lower_case.csv", table(header=["Time"] + NAMES, time=lambda i: at(i, dt.datetime(2031, 3, 12, 11, 59)).strftime(
    "%I:%M:%S ") + ("am" if T[i] < 60 else "pm")), first=0)
ok("time_half_day_chinese.csv", table(header=["时间"] + NAMES, time=lambda i: at(i).strftime("2031/3/12 上午%I:%M:%S")), first=0)
ok("time_two_digit_year.csv", table(";", ",", ["Datum", "Zeit"] + NAMES, row=lambda i, r: [at(i).strftime("%d.%m.%y"), hms(i)] + r[1:]),
   first=0)
ok("time_whole_seconds_repeat.csv", table(header=["Time"] + NAMES, time=lambda i: f"09:14:{20 + i // 4:02d}"), first=0, step_s=0.25)
ok("time_epoch_repeats.csv", table(header=["epoch"] + NAMES, time=lambda i: str(1930000000 + i // 2)), first=0, step_s=0.5)
ok("time_scan_beside_time.csv", table(header=["Scan", "Time"] + NAMES, row=lambda i, r: [str(i + 1)] + r))
ok("time_leading_point.csv", table(header=["Time (min)"] + NAMES, time=lambda i: fixed(T[i] / 60, 6).removeprefix("0")),
   time_tolerance=2e-4)
ok("time_seconds_only_in_units.csv", table(header=[["Elapsed"] + NAMES, ["sec", "deg C", "deg C", "deg C"]]))
ok("time_named_s.csv", table(header=["s", "TC1", "TC2", "TC3"]), names=["TC1", "TC2", "TC3"])
ok("time_interval_line.csv", table(";", ",", ["Nr"] + NAMES, time=lambda i: str(i), before=f"Messintervall: {fixed(STEP * 1000, 0)} ms\n"),
   first=0)
ok("time_rate_line.csv", table(header=NAMES, row=lambda i, r: r[1:], before=f"Sampling rate (Hz): {fixed(1 / STEP, 4)}\n"), first=0,
   time_tolerance=1e-2)
ok("time_in_index_header.csv", table(header=[f"Sample ({fixed(STEP, 0)} s)"] + NAMES, time=lambda i: str(i + 1)), first=0)

# ---- tables ----
ok("table_blank_column.csv", table(header=["Time (s)", ""] + NAMES, row=lambda i, r: [r[0], ""] + r[1:]))
ok("table_line_end_in_header.csv", table(header=['"Time\n(s)"'] + [f'"{n}\n(°C)"' for n in NAMES]))
ok("table_units_below.csv", table(header=[["Time"] + NAMES, ["[s]"] + ["[°C]"] * 3]))
ok("table_units_above.csv", table(header=[["s"] + ["°C"] * 3, ["Time"] + NAMES]))
ok("table_three_header_rows.csv", table(";", ",", [["Kanal", "1", "2", "3"], ["Name"] + NAMES, ["Zeit [s]"] + ["°C"] * 3]))
ok("table_spanning_unit.csv", table(header=[["", "Temperature (°C)", "", ""], ["Time (s)"] + NAMES]))
ok("table_header_trailing_commas.csv", table(header=HEAD + ["", ""]))
ok("table_rows_trailing_semicolon.csv", table(";", ",", HEAD, row=lambda i, r: r + [""]))
ok("table_leading_delimiter.csv", table(";", ",", [""] + HEAD, row=lambda i, r: [""] + r))
ok("table_keys_and_values.csv", table(before="Operator=mk\nLot=QM-2304\nBoard=Tern, main side\nSerial=000123\n\n", header=HEAD))
ok("table_sections.csv", table(before="[Info]\nLot=QM-2304\nChannels=3\n\n[Data]\n", header=HEAD))
ok("table_header_as_comment.csv", table(before="# ", header=HEAD))
ok("table_wide_metadata.csv", table(before="Lot,QM-2304,Board,Tern,Side,main\nCh,1,2,3\nMax,300,300,300\nMin,0,0,0\n", header=HEAD))
ok("table_statistics_before.csv", table(header=[["", *NAMES], ["Max"] + [fixed(max(c)) for c in C], ["Min"] + [fixed(min(c)) for c in C],
                                               ["Time (s)"] + NAMES]))
ok("table_statistics_behind.csv", table(header=HEAD, behind="\n\nStatistics\nMaximum," + ",".join(fixed(max(c)) for c in C) +
                                        "\nMinimum," + ",".join(fixed(min(c)) for c in C) + "\nStd dev,60.1,60.2,60.3\n"))
ok("table_signature_behind.csv", table(header=HEAD, behind="Checked by:,mk\nSignature:,\nPage 1 of 1\n"))
ok("table_page_breaks.txt", table("\t", header=HEAD, row=lambda i, r: [["\fPage 2"], HEAD, r] if i == 20 else r))
RULED = "%12s%14s%14s%14s"
ok("table_ruled.txt", table("", header=[[RULED % ("Time", *NAMES)], [RULED % ("s", "°C", "°C", "°C")], ["-" * 54]],
                            row=lambda i, r: [RULED % tuple(r)]))
ok("table_fixed_width_holes.txt", table("", header=[[RULED % ("Time_s", "A_centre", "A_corner", "R118")]],
                                        row=lambda i, r: [RULED % (r[0], r[1], "" if 10 <= i < 14 else r[2], r[3])]),
   names=["A_centre", "A_corner", "R118"], holes="1:10-13")
ok("table_markdown.md", table(" | ", header=[["| Time (s)"] + NAMES + [""], ["|---|---|---|---|"]],
                              row=lambda i, r: ["| " + r[0]] + r[1:] + [""]))
ok("table_bars_outside.txt", table("|", header=[""] + HEAD + [""], row=lambda i, r: [""] + r + [""]))
ok("table_box.txt", table("", header=[["+--------+--------+--------+--------+"], ["| %-6s | %-6s | %-6s | %-6s |" % ("t [s]", "TC1", "TC2", "TC3")],
                                      ["+--------+--------+--------+--------+"]],
                          row=lambda i, r: ["| %6s | %6s | %6s | %6s |" % tuple(r)], behind="+--------+--------+--------+--------+\n"),
   names=["TC1", "TC2", "TC3"])
ok("table_blanks_comma.txt", table("  ", ",", ["t", "TC1", "TC2", "TC3"]), names=["TC1", "TC2", "TC3"])
ok("table_blanks_quoted_names.txt", table(" ", header=['"Time (s)"'] + [f'"{n}"' for n in NAMES]))
ok("table_thousands.csv", table(";", ",", ["Zeit [ms]"] + NAMES, time=lambda i: f"{round(T[i] * 1000):,}".replace(",", ".")))
ok("table_apostrophes.csv", table(";", ".", ["Zeit [ms]"] + NAMES, time=lambda i: f"{round(T[i] * 1000):,}".replace(",", "'")))
ok("table_quoted_thousands.csv", table(header=["Time (ms)"] + NAMES, time=lambda i: f'"{round(T[i] * 1000):,}"'))
ok("table_rows_of_channels.csv", "\n".join([",".join(["Time (s)"] + [fixed(t) for t in T])] +
                                           [",".join([n, *map(fixed, c)]) for n, c in zip(NAMES, C)]) + "\n")
ok("table_rows_with_units.txt", "\n".join(["\t".join(["Zeit", "s"] + [fixed(t, 1, ",") for t in T])] +
                                          ["\t".join([n, "°C"] + [fixed(x, 1, ",") for x in c]) for n, c in zip(NAMES, C)]) + "\n")
ok("table_long_iso.csv", "timestamp,channel,value\n" + "".join(
    f"{at(i).isoformat()},{NAMES[k]},{fixed(C[k][i])}\n" for i in range(ROWS) for k in range(3)), first=0)
ok("table_long_numbers.csv", "Time (s);Channel;Temperature (°C)\n" + "".join(
    f"{fixed(T[i])};{k + 1};{fixed(C[k][i])}\n" for i in range(ROWS) for k in range(3)), names=["1", "2", "3"])
ok("table_long_sorted_units.txt", "Kanal\tZeit [s]\tWert\tEinheit\n" + "".join(
    f"{NAMES[k]}\t{fixed(T[i], 1, ',')}\t{fixed(C[k][i], 1, ',')}\t°C\n" for k in range(3) for i in range(ROWS)))
ok("table_long_value_first.csv", "value_degC,sensor,t_s\n" + "".join(
    f"{fixed(C[k][i])},{NAMES[k]},{fixed(T[i])}\n" for i in range(ROWS) for k in range(3)))
ok("table_long_with_others.csv", "Time,Channel,Value,Unit\n" + "".join(
    f"{fixed(T[i])},{n},{v},{u}\n" for i in range(ROWS) for n, v, u in [(NAMES[k], fixed(C[k][i]), "°C") for k in range(3)] +
    [("O2", str(300 + i % 5), "ppm")]))
ok("table_time_per_channel.csv", table(header=sum([[f"t{k + 1} (s)", NAMES[k] + " (°C)"] for k in range(3)], []),
                                       row=lambda i, r: sum([[r[0], r[k + 1]] for k in range(3)], [])))
ok("table_time_per_channel_groups.csv", table(";", ",", [[NAMES[0], "", NAMES[1], "", NAMES[2], ""], ["s", "°C"] * 3],
                                              row=lambda i, r: sum([[r[0], r[k + 1]] for k in range(3)], [])))
OTHERS = ["O2 (ppm)", "RH (%)", "Zone 1 SP (°C)", "Zone 1 PV (°C)", "Conveyor (mm/min)", "Battery (V)"]
ok("table_other_columns.csv", table(header=HEAD + OTHERS, row=lambda i, r: r + [str(310 + i % 7), "41", "150", fixed(150 + i % 2), "800", "3.9"]))
ok("table_other_columns_first.csv", table(header=["Time (s)"] + OTHERS + HEAD[1:],
                                          row=lambda i, r: [r[0], str(310 + i % 7), "41", "150", fixed(150 + i % 2), "800", "3.9"] + r[1:]))
ok("table_cold_junction_beside.csv", table(header=HEAD + ["CJC (°C)"], row=lambda i, r: r + [fixed(25 + i / 100, 2)]))
ok("table_room_beside.csv", table(header=HEAD + ["Ambient (°C)"], row=lambda i, r: r + [fixed(24 + i / 100, 2)]))
ok("table_spread_beside.csv", table(header=HEAD + ["Max", "Min", "Delta"], row=lambda i, r: r + [
    fixed(max(C[k][i] for k in range(3))), fixed(min(C[k][i] for k in range(3))), "1.5"]))
ok("table_alarms_between.csv", table(header=["Time (s)"] + sum([[n + " (°C)", f"Alarm {k + 1}"] for k, n in enumerate(NAMES)], []),
                                     row=lambda i, r: [r[0], r[1], "OFF", r[2], "OFF" if i < 20 else "HI", r[3], "OFF"]))
ok("table_state_column.csv", table(header=["State"] + HEAD, row=lambda i, r: ["run"] + r))
ok("table_units_in_cells.csv", table(";", ",", ["Zeit"] + NAMES, row=lambda i, r: [r[0] + " s"] + [x + " °C" for x in r[1:]]))
ok("table_units_in_columns.csv", table(header=["Time (s)", "TC1", "Unit", "TC2", "Unit", "TC3", "Unit"],
                                       row=lambda i, r: [r[0], r[1], "°C", r[2], "°C", r[3], "°C"]), names=["TC1", "TC2", "TC3"])
ok("table_repeated_names.csv", table(header=["Time (s)", "TC", "TC", "TC"]), names=["TC", "TC (2)", "TC (3)"])
ok("table_numbers_as_names.csv", table(header=["Time (s)", "1", "2", "3"]), names=["1", "2", "3"])
ok("table_names_with_commas.csv", table(header=["Time (s)", '"U1, centre"', '"U1, corner"', '"R118, pad 1"']),
   names=["U1, centre", "U1, corner", "R118, pad 1"])
ok("table_names_with_quotes.csv", table(header=["Time (s)", '"U1 ""centre"""', '"U1 corner"', '"R118"']),
   names=['U1 "centre"', "U1 corner", "R118"])
ok("table_many_channels.csv", table(header=["Time (s)"] + [f"TC{k + 1}" for k in range(48)], values=[C[k % 3] for k in range(48)]),
   names=[f"TC{k + 1}" for k in range(48)], channels=[k % 3 for k in range(48)])
ok("table_no_header_tabs.txt", table("\t"), names=["channel 1", "channel 2", "channel 3"])
ok("table_no_header_index_clock.csv", table(row=lambda i, r: [str(i + 1), hms(i)] + r[1:]), names=["channel 1", "channel 2", "channel 3"],
   first=0)
ok("table_mixed_line_ends.csv", table(header=HEAD).replace("\n", "\r\n", 20))
ok("table_carriage_returns.csv", table(header=HEAD, end="\r"))
ok("table_twice_carriage_return.csv", table(header=HEAD, end="\r\r\n"))
ok("table_file_end_mark.csv", table(header=HEAD, behind="\x1a"))
ok("table_padded_with_zeros.csv", table(header=HEAD).encode() + bytes(512))
ok("table_last_line_open.csv", table(header=HEAD, last=False))
ok("table_point_and_comma.csv", table(";", ",", ["Time"] + NAMES, time=lambda i: fixed(T[i])))
ok("table_other_decimals_in_metadata.csv", table(header=HEAD, before="Calibration;1,0025\nOffset;0,12\n"))
ok("table_two_tables.csv", table(header=HEAD, before="Zone,Top (°C),Bottom (°C),Fan\n1,150,150,60\n2,180,180,60\n3,240,240,60\n\n"))
ok("table_levels_behind.csv", table(header=HEAD, behind="\nLevel (°C),Time above (s)\n150,80.0\n217,32.0\n"))
ok("table_notes_between.csv", table(header=HEAD, row=lambda i, r: [["; door opened"], r] if i == 15 else r))
ok("table_names_in_one_cell.csv", table(";", ",", ["Zeit"] + ["Temperatur " + n for n in NAMES]), names=["Temperatur " + n for n in NAMES])

# ---- readings ----
for name, word in [("ol", "OL"), ("nan", "NaN"), ("dashes", "----"), ("blank", ""), ("open", "OPEN"), ("burnout", "バーンアウト"),
                   ("broken_wire", "断线"), ("na", "#N/A"), ("offen", "offen"), ("error_code", "Err 3"), ("stars", "*****"), ("null", "null")]:
    ok(f"reading_{name}.csv", table(header=HEAD, row=lambda i, r, w=word: [r[0], r[1], w if 10 <= i < 14 else r[2], r[3]]), holes="1:10-13")
ok("reading_channel_open.csv", table(header=HEAD, row=lambda i, r: [r[0], r[1], "OPEN", r[3]]), holes=f"1:0-{ROWS - 1}")
F = [[x * 1.8 + 32 for x in c] for c in C]
ok("reading_fahrenheit_row.csv", table(header=[["Time"] + NAMES, ["s"] + ["°F"] * 3], values=F, digits=2), tolerance=6e-3)
ok("reading_fahrenheit_metadata.csv", table(header=["Time (s)"] + NAMES, before="Temperature unit: Fahrenheit\n", values=F, digits=2),
   tolerance=6e-3)
ok("reading_kelvin_metadata.csv", table(header=["Time (s)"] + NAMES, before="Einheit: K\n", values=[[x + 273.15 for x in c] for c in C], digits=2),
   tolerance=1e-9)
ok("reading_unit_per_channel.csv", table(header=["Time (s)", NAMES[0] + " (°C)", NAMES[1] + " (°F)", NAMES[2] + " (°C)"],
                                         values=[C[0], F[1], C[2]], digits=2), tolerance=6e-3)
tenths = lambda k, i: str(round(C[k][i] * 10))
ok("reading_tenths_unit.csv", table(header=["Time (s)"] + [n + " (0.1 °C)" for n in NAMES], cells=tenths))
ok("reading_tenths_factor.csv", table(header=["Time (s)"] + [n + " [°C*10]" for n in NAMES], cells=tenths))
ok("reading_tenths_row.csv", table(header=[["Time"] + NAMES, ["s"] + ["1/10 °C"] * 3], cells=tenths))
ok("reading_hundredths.csv", table(header=["Time (s)"] + [n + " (0.01 °C)" for n in NAMES], cells=lambda k, i: str(round(C[k][i] * 100))))
ok("reading_whole_degrees.csv", table(header=HEAD, digits=0), tolerance=0.51)
ok("reading_plus_signs.csv", table(header=HEAD, cells=lambda k, i: "+" + fixed(C[k][i])))
ok("reading_plus_padded.csv", table(header=HEAD, cells=lambda k, i: f"+{C[k][i]:07.1f}"))
ok("reading_full_width.csv", table(header=HEAD, cells=lambda k, i: fixed(C[k][i]).translate({ord(c): 0xFF10 + int(c) for c in "0123456789"})))
ok("reading_ring_behind.csv", table(header=["Time (s)"] + NAMES, cells=lambda k, i: fixed(C[k][i]) + "°"))
ok("reading_letter_behind.csv", table(header=["Time (s)"] + NAMES, cells=lambda k, i: fixed(C[k][i]) + "C"))
ok("reading_apostrophe_before.csv", table(header=HEAD, cells=lambda k, i: "'" + fixed(C[k][i])))
ok("reading_as_formula.csv", table(header=HEAD, cells=lambda k, i: f'="{fixed(C[k][i])}"'))
ok("reading_exponent_comma.csv", table(";", ",", HEAD, cells=lambda k, i: f"{C[k][i]:.4E}".replace(".", ",")))
ok("reading_all_quoted.csv", table(";", ",", ['"Zeit"'] + [f'"{n}"' for n in NAMES], row=lambda i, r: [f'"{x}"' for x in r]))
ok("reading_inner_blanks.csv", table(header=HEAD, cells=lambda k, i: f"  {fixed(C[k][i])}  "))
ok("reading_many_digits.csv", table(header=HEAD, digits=6))


def emf_k(t):
    """Type K above 0 °C, ITS-90 reference function (NIST Monograph 175), mV."""
    c = [-0.176004136860e-1, 0.389212049750e-1, 0.185587700320e-4, -0.994575928740e-7, 0.318409457190e-9, -0.560728448890e-12,
         0.560750590590e-15, -0.320207200030e-18, 0.971511471520e-22, -0.121047212750e-25]
    return sum(x * t**n for n, x in enumerate(c)) + 0.118597600000 * math.exp(-0.118343200000e-3 * (t - 126.9686)**2)


V = [[emf_k(x) - emf_k(23.5) for x in c] for c in C]
ok("reading_millivolts.csv", table(header=["Time (s)"] + [n + " (mV)" for n in NAMES], before="Thermocouple: type K\nReference junction: 23.5 °C\n",
                                   values=V, digits=5), tolerance=1e-3)
ok("reading_millivolts_column.csv", table(header=["Time (s)"] + [n + " K (mV)" for n in NAMES] + ["Cold junction (°C)"], before="Type K\n",
                                          values=V, digits=5, row=lambda i, r: r + ["23.5"]), tolerance=1e-3,
   names=[n + " K" for n in NAMES])
ok("reading_microvolts.csv", table(header=["Time (s)"] + [n + " [µV]" for n in NAMES], before="TC type: K; CJC: 23.5 °C\n",
                                   values=[[1000 * x for x in c] for c in V], digits=2), tolerance=1e-3)

# ---- containers ----
MOMENT = dt.datetime(2031, 3, 12)


def fixed_zip(members):
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in members:
            info = zipfile.ZipInfo(name, MOMENT.timetuple()[:6])
            info.compress_type = zipfile.ZIP_DEFLATED
            archive.writestr(info, data)
    return made.getvalue()


def packed_again(data):
    with zipfile.ZipFile(io.BytesIO(data)) as old:
        return fixed_zip([(m.filename, old.read(m)) for m in old.infolist()])


def xlsx(rows, number_format=None, first_sheet=None, merge=None):
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Data"
    if first_sheet:
        sheet.title = "Summary"
        for line in first_sheet:
            sheet.append(line)
        sheet = book.create_sheet("Data")
    for line in rows:
        sheet.append(line)
    if number_format:
        for cell in sheet["A"]:
            cell.number_format = number_format
    if merge:
        sheet.merge_cells(merge)
    book.properties.created = book.properties.modified = MOMENT
    data = io.BytesIO()
    book.save(data)
    return packed_again(data.getvalue())


def rows_of(first, header=None):
    return [header or ["Time (s)"] + NAMES] + [[first(i)] + [C[k][i] for k in range(3)] for i in range(ROWS)]


ok("workbook_plain.xlsx", xlsx(rows_of(lambda i: T[i])))
ok("workbook_summary_first.xlsx", xlsx(rows_of(lambda i: T[i]), first_sheet=[["Lot", "QM-2304"], ["Peak", 240.1, 239.8], ["Soak", 80, 81]]))
ok("workbook_dates.xlsx", xlsx(rows_of(at, ["Time"] + NAMES), "yyyy-mm-dd hh:mm:ss"), first=0)
ok("workbook_clock.xlsx", xlsx(rows_of(lambda i: at(i).time(), ["Clock"] + NAMES), "hh:mm:ss"), first=0)
ok("workbook_text_numbers.xlsx", xlsx([["Time (s)"] + NAMES] + [[fixed(T[i])] + [fixed(c[i]) for c in C] for i in range(ROWS)]))
ok("workbook_text_commas.xlsx", xlsx([["Zeit [s]"] + NAMES] + [[fixed(T[i], 1, ",")] + [fixed(c[i], 1, ",") for c in C] for i in range(ROWS)]))
ok("workbook_title.xlsx", xlsx([["Reflow log of Tern"], [], ["Interval", 5, "s"], []] + rows_of(lambda i: T[i]) + [[], ["Max"] + [max(c) for c in C]],
                               merge="A1:D1"))
document = OpenDocumentSpreadsheet()
sheet = Table(name="Log")
for line in [["Time"] + NAMES, ["s"] + ["°C"] * 3] + [[T[i]] + [C[k][i] for k in range(3)] for i in range(ROWS)]:
    made = TableRow()
    for value in line:
        cell = TableCell(valuetype="string") if isinstance(value, str) else TableCell(valuetype="float", value=value)
        cell.addElement(P(text=str(value)))
        made.addElement(cell)
    sheet.addElement(made)
document.spreadsheet.addElement(sheet)
data = io.BytesIO()
document.save(data)
ok("workbook_units.ods", packed_again(data.getvalue()))


def html(decimal=".", header="th", before=""):
    text = f"<!DOCTYPE html><html><head><meta charset='utf-8'></head><body>{before}<table><thead><tr>"
    text += "".join(f"<{header}>{h}</{header}>" for h in ["Time (s)"] + [n + " (&deg;C)" for n in NAMES]) + "</tr></thead><tbody>\n"
    for i in range(ROWS):
        text += "<tr>" + "".join(f"<td>{x}</td>" for x in [fixed(T[i], 1, decimal)] + [fixed(c[i], 1, decimal) for c in C]) + "</tr>\n"
    return text + "</tbody></table></body></html>\n"


ok("page_plain.html", html())
ok("page_comma_second_table.html", html(",", "td", "<h1>Tern</h1><table><tr><td>Lot</td><td>QM-2304</td></tr></table>"))
ok("page_called_xls.xls", html(header="td"))
ok("page_preformatted.html", "<html><body><pre>\n" + table("  ", header=["Time_s", "TC1", "TC2", "TC3"]) + "</pre></body></html>",
   names=["TC1", "TC2", "TC3"])
ok("sheet_2003.xml", '<?xml version="1.0"?>\n<?mso-application progid="Excel.Sheet"?>\n<Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet" '
   'xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet"><Worksheet ss:Name="Log"><Table>\n' + "".join(
       "<Row>" + "".join(f'<Cell><Data ss:Type="{"String" if isinstance(v, str) else "Number"}">{v}</Data></Cell>' for v in line) + "</Row>\n"
       for line in rows_of(lambda i: T[i])) + "</Table></Worksheet></Workbook>\n")
ok("packed.csv.gz", gzip.compress(table(header=HEAD).encode(), mtime=0))
ok("packed_two.zip", fixed_zip([("readme.txt", "Lot QM-2304, one run."), ("tern/log.csv", table(header=HEAD))]))
ok("packed_workbook.zip", fixed_zip([("log.xlsx", xlsx(rows_of(lambda i: T[i])))]))
ok("packed_gz.zip", fixed_zip([("log.csv.gz", gzip.compress(table(";", ",", HEAD).encode("cp1252"), mtime=0))]))

# ---- what seldom loggers and longer habits make ----
def fahrenheit(x):
    return f"{x * 1.8 + 32:.4f}"


def sheets(visible, hidden):
    """A workbook of two sheets, written by hand: the first one is hidden."""
    def part(name, text):
        return (name, '<?xml version="1.0" encoding="UTF-8"?>' + text)

    def sheet(lines):
        def cell(v):
            return f'<c t="inlineStr"><is><t>{v}</t></is></c>' if isinstance(v, str) else f"<c><v>{v}</v></c>"
        rows = "".join("<row>" + "".join(map(cell, line)) + "</row>" for line in lines)
        return f'<worksheet xmlns="{MAIN}"><sheetData>{rows}</sheetData></worksheet>'
    SCHEMAS = "http://schemas.openxmlformats.org/"
    MAIN, LINKS = SCHEMAS + "spreadsheetml/2006/main", SCHEMAS + "officeDocument/2006/relationships"
    relations = f'<Relationships xmlns="{SCHEMAS}package/2006/relationships">'
    return fixed_zip([
        part("[Content_Types].xml", f'<Types xmlns="{SCHEMAS}package/2006/content-types"/>'),
        part("_rels/.rels", f'{relations}<Relationship Id="r1" Type="{LINKS}/officeDocument" Target="xl/workbook.xml"/></Relationships>'),
        part("xl/workbook.xml", f'<workbook xmlns="{MAIN}" xmlns:r="{LINKS}"><sheets>'
             '<sheet name="Old" sheetId="1" state="hidden" r:id="r1"/><sheet name="Log" sheetId="2" r:id="r2"/></sheets></workbook>'),
        part("xl/_rels/workbook.xml.rels", relations + "".join(
            f'<Relationship Id="r{k}" Type="{LINKS}/worksheet" Target="worksheets/sheet{k}.xml"/>' for k in (1, 2)) + "</Relationships>"),
        part("xl/worksheets/sheet1.xml", sheet(hidden)),
        part("xl/worksheets/sheet2.xml", sheet(visible))])


def open_from(word, channel=1, first=10, last=14):
    return lambda k, i: word if k == channel and first <= i < last else fixed(C[k][i])


ok("more_hidden_sheet.xlsx", sheets(rows_of(lambda i: T[i]), [[a] + [x + 50 for x in b] if not isinstance(a, str) else [a] + b
                                                           for a, *b in rows_of(lambda i: T[i])]))
ok("more_newest_first.csv", "\n".join((lambda lines: lines[:1] + lines[:0:-1])(table(header=HEAD, last=False).split("\n"))) + "\n")
ok("more_long_any_order.csv", "channel,time_s,value_C\n" + "".join(
    f"{NAMES[k]},{fixed(T[j])},{fixed(C[k][j])}\n" for i in range(ROWS) for j in [i * 17 % ROWS] for k in range(3)))
ok("more_minute_stamps.csv", table(header=["Time"] + NAMES, time=lambda i: f"2031-03-12 09:{14 + i // 10:02d}"), first=0, step_s=6)
ok("more_summer_time.csv", table(header=["Local time"] + NAMES, time=lambda i: at(i, dt.datetime(
    2031, 3, 30, 1, 58, 20) if T[i] < 100 else dt.datetime(2031, 3, 30, 2, 58, 20)).strftime("%Y-%m-%d %H:%M:%S")), first=0)
ok("more_winter_time.csv", table(";", ",", ["Ortszeit"] + NAMES, time=lambda i: at(i, dt.datetime(
    2031, 10, 26, 2, 58, 20) if T[i] < 100 else dt.datetime(2031, 10, 26, 1, 58, 20)).strftime("%d.%m.%Y %H:%M:%S")), first=0)
ok("more_year_of_the_republic.csv", table(header=["日期時間"] + NAMES, time=lambda i: at(i).strftime("120/%m/%d %H:%M:%S")), "big5", first=0)
ok("more_half_day_korean.csv", table(header=["시간"] + NAMES, time=lambda i: at(i).strftime("%Y-%m-%d 오전 %I:%M:%S")), first=0)
ok("more_carriage_returns_euc.txt", table("|", header=["時間"] + [f"チャンネル{k}" for k in range(1, 4)], time=lambda i: hms(i), end="\r",
                                      cells=lambda k, i: fixed(C[k][i]) + " ℃"), "euc_jp", names=[f"チャンネル{k}" for k in range(1, 4)], first=0)
ok("more_half_day_in_every_row.csv", table(header=["时间"] + NAMES, time=lambda i: at(i).strftime("2031/3/12 上午 %I:%M:%S")), "gb18030",
   first=0)
for code, title, first_column, channel, encoding in [
        ("it", "Tempo", "N.", "Canale", "cp1252"), ("sv", "Tid", "Nr", "Kanal", "utf-8"), ("ru", "Время", "№", "Канал", "utf-8"),
        ("cs", "Čas", "Č.", "Kanál", "cp1250"), ("ko", "시간", "번호", "채널", "euc_kr"), ("pl", "Czas", "Próbka", "Kanał", "utf-8")]:
    ok(f"more_epoch_{code}.csv", table(";", ",", [first_column, title] + [f"{channel} {k + 1}" for k in range(3)],
                                       row=lambda i, r: [str(i + 1), str((1930000000 + round(T[i])) * 1000)] + [x + " °C" for x in r[1:]]),
       encoding if encoding != "euc_kr" else "utf-8", names=[f"{channel} {k + 1}" for k in range(3)], first=0)
for name, line in [("rate_alone", "Rate: 10 Hz"), ("fraction", "Sampling period: 1/10 s"), ("korean", "샘플링 간격: 0.1초"),
                   ("per_scan", "100 msec per scan"), ("delta_t", "Δt = 0.1 s"), ("chinese_rate", "取样频率：10Hz"),
                   ("decimals_of_rate", "Frequency;10,000;Hz"), ("behind_a_fan", "Blower frequency: 45 Hz\nSampling: every 0.1 s")]:
    ok(f"more_interval_{name}.csv", table(";", ".", ["No"] + NAMES, time=lambda i: str(i + 1), before=line + "\n\n"), first=0, step_s=0.1)
ok("more_degrees_spelt.csv", table(header=["Time (s)"] + [n + " deg. C" for n in NAMES]))
ok("more_single_quotes.csv", table(header=["'Time (s)'"] + [f"'{n}'" for n in NAMES]))
ok("more_time_alone_below.csv", table(header=[["Channel"] + NAMES, ["Type", "K", "K", "K"], ["Unit", "°C", "°C", "°C"], ["Time (s)"]]))
ok("more_table_beside.csv", table(header=HEAD + ["", "Statistic"] + NAMES, row=lambda i, r: r + (
    ["", ["Max", "Min"][i]] + [fixed([max, min][i](c)) for c in C] if i < 2 else [""] * 5)))
ok("more_units_change.csv", table(header=["Time (s)"] + NAMES, cells=lambda k, i: fixed(C[k][i]) + "°C" if i < 20 else fahrenheit(C[k][i]) + "°F"),
   tolerance=1e-4)
ok("more_blank_before.csv", table(header=["Time (s)"] + NAMES, cells=open_from("", first=0, last=2)), holes="1:0-1")
ok("more_checksum.txt", table(header=None, row=lambda i, r: r[:-1] + [r[-1] + "*5A"]), names=["channel 1", "channel 2", "channel 3"])
for name, word in [("beyond", "> 300"), ("infinity", "+1.#INF"), ("own_code", "E1")]:
    ok(f"more_open_{name}.csv", table(header=HEAD, cells=open_from(word, first=10, last=16)), holes="1:10-15")

# ---- odd ----
readings = lambda i, mark, unit="": [f"{n.replace(' ', '_')}{mark}{fixed(C[k][i])}{unit}" for k, n in enumerate(NAMES)]
bare_names = [n.replace(" ", "_") for n in NAMES]
ok("odd_names_in_every_line.log", "".join(" ".join([f"t={fixed(T[i])}"] + readings(i, "=")) + "\n" for i in range(ROWS)), names=bare_names)
ok("odd_names_and_stamp_in_every_line.log", "Logger 4, lot QM-2304\n" + "".join(
    f"[{hms(i)}] " + "; ".join(f"{n}: {fixed(C[k][i], 1, ',')} °C" for k, n in enumerate(NAMES)) + "\r\n" for i in range(ROWS)), first=0)
ok("odd_names_one_channel_a_line.log", "".join(
    f"{at(i).strftime('%Y-%m-%d %H:%M:%S')} {r}\n" for i in range(ROWS) for r in readings(i, "=", "C")), names=bare_names, first=0)
ok("odd_names_before_readings.log", "".join(
    f"{fixed(T[i])} s; " + "; ".join(f"{n} {fixed(C[k][i])} °C" for k, n in enumerate(NAMES)) + "\n" for i in range(ROWS)))
ok("odd_names_as_attributes.xml", "<?xml version=\"1.0\"?>\n<log lot=\"QM-2304\">\n" + "".join(
    f"  <row t=\"{fixed(T[i])}\" " + " ".join(f"{n.replace(' ', '_')}=\"{fixed(C[k][i])}\"" for k, n in enumerate(NAMES)) + "/>\n"
    for i in range(ROWS)) + "</log>\n", names=bare_names)
ok("odd_tolerance.csv", table(header=HEAD, cells=lambda k, i: fixed(C[k][i]) + [" +/- 0.5", "±0.5", " (± 0.5)"][k]))
ok("odd_tolerance_and_unit.csv", table(";", ",", ["Zeit"] + NAMES, time=lambda i: fixed(T[i], 1, ",") + " s",
                                       cells=lambda k, i: fixed(C[k][i], 1, ",") + [" ± 0,5 °C", " °C ± 0,5 °C", " °C +/- 0,5"][k]))
ok("odd_iso_duration.csv", table(header=["Elapsed"] + NAMES, time=lambda i: f"PT{int(T[i]) // 60}M{T[i] % 60:.1f}S"), first=0)
ok("odd_days_before_clock.csv", table(header=["Elapsed"] + NAMES, time=lambda i: f"0 00:{int(T[i]) // 60:02d}:{T[i] % 60:04.1f}"), first=0)
FULL_WIDTH = str.maketrans("0123456789.", "０１２３４５６７８９．")
ARABIC = str.maketrans("0123456789.", "٠١٢٣٤٥٦٧٨٩٫")
ok("odd_full_width_figures.txt", table("\t", header=["時間（秒）"] + NAMES, time=lambda i: fixed(T[i]).translate(FULL_WIDTH),
                                       cells=lambda k, i: fixed(C[k][i]).translate(FULL_WIDTH)))
ok("odd_arabic_figures.csv", table(header=HEAD, cells=lambda k, i: fixed(C[k][i]).translate(ARABIC)))
ok("odd_right_to_left.csv", table(header=HEAD, cells=lambda k, i: "\u200f" + fixed(C[k][i]) + "\u200e"))
ok("odd_quoted_readings.csv", table(header=HEAD, time=lambda i: f"'{T[i]}'", cells=lambda k, i: f"'{fixed(C[k][i])}'"))
ok("odd_counter_of_16_bits.csv", table(header=["Time (ms)"] + NAMES, time=lambda i: str((round(1000 * T[i]) + 40000) % 65536)), first=40)
ok("odd_seconds_of_the_day.csv", table(header=["Seconds"] + NAMES, time=lambda i: fixed((86300 + T[i]) % 86400)), first=86300)
ok("odd_shuffled_rows.csv", "\n".join([",".join(HEAD)] + [",".join([fixed(T[i])] + [fixed(c[i]) for c in C])
                                                          for i in sorted(range(ROWS), key=lambda i: i * 17 % 41)]) + "\n")

ok("odd_touching_columns.txt", "    s   TC1   TC2   TC3\n" + "".join(
    f"{T[i]:6.1f}" + "".join(f"{C[k][i]:5.1f}" for k in range(3)) + "\n" for i in range(ROWS)), names=["TC1", "TC2", "TC3"])
ok("odd_count_of_channels.csv", table(header=["Channels"] + HEAD, row=lambda i, r: ["3"] + r))
ok("odd_number_of_the_run.csv", table(";", header=["Run", "Time (s)"] + NAMES, row=lambda i, r: ["7"] + r))
ok("odd_segments.csv", table(header=HEAD + ["Ramp segment no"], row=lambda i, r: r + [str(1 + i // 6)]))
ok("odd_named_like_a_gas.csv", table(header=["Time (s)", "N1", "N2", "N3"]), names=["N1", "N2", "N3"])
ok("odd_long_named_like_a_gas.csv", "time_s,sensor,value_C\n" + "".join(f"{fixed(T[i])},N{k + 1},{fixed(C[k][i])}\n" for i in range(ROWS) for k in range(3)),
   names=["N1", "N2", "N3"])
ok("odd_tolerance_at_blanks.txt", table(" ", header=["Time", "U1", "U2", "U3"], cells=lambda k, i: fixed(C[k][i]) + " +/- 0.5"), names=["U1", "U2", "U3"])
ok("odd_tolerance_columns.csv", table(";", ",", ["Zeit (s)"] + [x for n in NAMES for x in (n + " (°C)", "± (°C)")],
                                      row=lambda i, r: [r[0]] + [x for c in r[1:] for x in (c, "0,5")]))
ok("odd_checksum_behind_names.txt", table(header=["Time (s)"] + NAMES[:2] + [NAMES[2] + "*1F"], row=lambda i, r: r[:-1] + [r[-1] + "*5A"]))
ok("odd_quote_never_closed.csv", table(header=["Time (s)", '"' + NAMES[0]] + NAMES[1:]))
ok("odd_blocks_of_channels.csv", "Lot,QM-2304\n\n" + "".join(
    f"Time (s),{n} (°C)\n" + "".join(f"{fixed(T[i])},{fixed(c[i])}\n" for i in range(ROWS)) + "\n" for n, c in zip(NAMES, C)))
for name, behind in [("first", False), ("behind", True)]:
    for more, count in [("fewer", 2), ("as_many", 3), ("more", 5)]:
        short = ",".join(["Time (s)"] + [f"Other {c + 1} (°C)" for c in range(count)]) + "\n" + "".join(
            ",".join([fixed(T[i])] + [fixed(C[k % 3][i] / 2) for k in range(count)]) + "\n" for i in range(14))
        ok(f"odd_other_log_{name}_{more}.csv", table(header=HEAD, before="" if behind else short, behind=short if behind else ""))

ok("odd_open_with_another_sign.csv", table(";", ",", HEAD, cells=lambda k, i: "-999.9" if k == 1 and 10 <= i < 14 else fixed(C[k][i], 1, ",")),
   holes="1:10-13")

# ---- JSON ----
RECORDS = [{"t_s": T[i], **{NAMES[k]: C[k][i] for k in range(3)}} for i in range(ROWS)]
ok("json_lines.jsonl", "".join(json.dumps(r) + "\n" for r in RECORDS))
ok("json_records.json", json.dumps({"lot": "QM-2304", "unit": "degC", "samples": RECORDS}, indent=1))
ok("json_columns.json", json.dumps({"time_s": T, **{NAMES[k]: C[k] for k in range(3)}}))
ok("json_channels.json", json.dumps({"interval_s": STEP, "channels": [{"name": NAMES[k], "unit": "°C", "values": C[k]} for k in range(3)]}),
   first=0)
ok("json_rows.json", json.dumps({"columns": ["time (s)"] + NAMES, "data": [[T[i]] + [C[k][i] for k in range(3)] for i in range(ROWS)]}))
ok("json_nested.json", json.dumps([{"at": at(i).isoformat(), "temperatures": {NAMES[k]: C[k][i] for k in range(3)}} for i in range(ROWS)]),
   first=0)

# ---- damaged ----
bad("damaged_json.json", json.dumps(RECORDS, indent=1)[:900], 71)
bad("damaged_json_prose.json", '{"title": "nothing was logged"}', 1)
good = table(header=HEAD)
ok("damaged_cut_in_last_row.csv", good[:-9], rows=(0, ROWS - 1))
ok("damaged_cut_in_last_number.csv", table(header=HEAD, digits=3)[:-3], rows=(0, ROWS - 1))
bad("damaged_empty.csv", "", 0, 0, "an empty file")
bad("damaged_blanks.csv", "  \n\n \n", 1)
bad("damaged_one_sample.csv", ",".join(HEAD) + "\n0,25,25,25\n", 2, 0, "one sample")
bad("damaged_header_only.csv", "Lot,QM-2304\n" + ",".join(HEAD) + "\n", 2, 0, "a header")
bad("damaged_prose.txt", "The board ran at 09:14, and the oven was warm. Zone 3 stood at 180 degrees.\nNobody logged it.\n" * 8, 1)
bad("damaged_binary.bin", bytes((i * 7919 + (i * i) % 251) % 256 for i in range(3000)), 1)
bad("damaged_bad_cell.csv", table(header=HEAD, row=lambda i, r: [r[0], r[1], "12x7", r[3]] if i == 30 else r), 32, 3, "12x7")
bad("damaged_bad_time.csv", table(header=HEAD, row=lambda i, r: ["12x7"] + r[1:] if i == 30 else r), 32, 1, "12x7")
bad("damaged_short_row.csv", table(header=HEAD, row=lambda i, r: r[:2] if i == 30 else r), 32, 0, "2 cells")
bad("damaged_long_row.csv", table(header=HEAD, row=lambda i, r: r + ["1.0", "2.0"] if i == 30 else r), 32, 5, "6 cells")
bad("damaged_unit.csv", table(header=["Time (s)"] + [n + " (furlong)" for n in NAMES]), 1, 2, "furlong")
bad("damaged_unit_row.csv", table(header=[["Time"] + NAMES, ["s"] + ["furlong"] * 3]), 2, 2, "furlong")
bad("damaged_time_stands.csv", table(header=HEAD, time=lambda i: "5.0"), 2, 0, "the same time")
bad("damaged_gzip.csv.gz", gzip.compress(good.encode(), mtime=0)[:200], 0, 0, "cut short")
bad("damaged_zip.zip", fixed_zip([("log.csv", good)])[:300], 0)
bad("damaged_empty_zip.zip", fixed_zip([]), 0)
bad("damaged_header_in_another_order.csv", table(header=HEAD, row=lambda i, r: [[HEAD[0], HEAD[2], HEAD[1], HEAD[3]], r] if i == 20 else r), 22, 2,
    HEAD[2])
bad("damaged_decimal_sign_changes.csv", table(";", ",", HEAD, row=lambda i, r: r if i < 20 else [x.replace(",", ".") for x in r]), 22, 1,
    fixed(T[20]))
bad("damaged_counter_without_end.csv", table(header=HEAD, time=lambda i: fixed(T[i] % 35)), 9, 1, "times that start anew in 5 places")
bad("damaged_no_interval.csv", table(header=["Sample"] + NAMES, time=lambda i: str(i + 1)), 2)
bad("damaged_no_table.html", "<html><body><p>Nothing here.</p></body></html>", 0)

with open(FOLDER / "truth.tsv", "w") as truth:
    for i in range(ROWS):
        truth.write("\t".join([repr(float(T[i]))] + [fixed(c[i]) for c in C]) + "\n")
with open(FOLDER / "expected.tsv", "w") as file:
    for line in expected:
        file.write("\t".join(line) + "\n")
print(len(expected), "files in", FOLDER)
