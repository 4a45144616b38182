#pragma once
// What `--help` says of the program and of its commands, below their options.

namespace ovenwright::command {

inline constexpr const char* kAboutStatus = R"(
Exit status
  0  done and in the window (or nothing to judge)      3  an input could not be read
  1  done, out of the window                           4  an output could not be written
  2  the command line is wrong                         5  undetermined: the log does not show enough
Windows shipped with the program are general: the data sheet of the paste, and the ratings of parts, board and oven,
stand above anything shown here.)";

inline constexpr const char* kMeasureStatus = R"(
Exit status
  0  done, whatever was found                           3  an input could not be read
  2  the command line is wrong                          4  an output could not be written)";

inline constexpr const char* kExamples = R"(
Examples
  ovenwright check run7.csv
  ovenwright check lot/*.csv --window sac305 --window jstd020_body_pb_free --board tern.toml
  ovenwright check run7.csv --window tern_rev3.toml --oven line2.toml --recipe rev7.toml --format json -o run7.json
  ovenwright measure run7.csv --measure peak --measure 'time above, level=217'
  ovenwright archive add lot/*.csv --lot QM-2201 --window tern_rev3.toml
  ovenwright windows sac305 > my_window.toml

`ovenwright COMMAND --help` tells more of each.
)";

inline constexpr const char* kCheckHelp = R"(
A LOG is any export of a logger or spreadsheet: text in any encoding, .xlsx, .ods, .html, also in .zip or .gz. Nothing
has to be set up; what was assumed about it stands in the result. WINDOW, OVEN, RECIPE, BOARD and LAYOUT are files, or
names that `ovenwright windows` (ovens, recipes, boards) lists: yours first, then what is shipped.

Without a window, `sac305` is assumed and the sentence says so. Several windows are judged together, such as the joints'
and the bodies'. With oven and recipe, each result outside names the zones in which it arose. With a board, thermocouples
have kinds, sides and positions, and bodies are judged. Many logs are judged on all cores, results in the order given.

Of a file with several tables (sheets of a workbook, files in an archive, tables of a page or under each other) the one
that looks most like a log is read, and the result lists them all; --table picks another by its name or number there.

Examples
  ovenwright check run7.csv
  ovenwright check run7.csv --window sac305 --oven ten_zone --recipe ten_zone_lead_free
  ovenwright check lot/*.csv --window tern_rev3.toml --board tern.toml --format json -o lot.json
  ovenwright check both_passes.csv --run 2
  ovenwright check lot.zip --table run8.csv)";

inline constexpr const char* kMeasureHelp = R"(
Any measure on any log, without a window. A measure is its name and its parameters; `--measure` may be repeated, and
without it all measures that need no parameter are taken. `ovenwright measure --list` tells what there is.

Examples
  ovenwright measure run7.csv
  ovenwright measure run7.csv --measure peak --measure 'time above, level=217'
  ovenwright measure run7.csv --measure 'time between on rise, T1=150, T2=200' --measure 'steepest rise, over=5'
  ovenwright measure run7.csv --measure 'temperature at, zone=8' --oven ten_zone --recipe ten_zone_lead_free)";

inline constexpr const char* kPredictHelp = R"(
From measured runs of a board in an oven, what its thermocouples would read with another recipe, with a band that holds
95 %. LOG and --recipe are given in pairs, one or several; or --runs names a list of them. The prediction is the last
run given plus the model's change. With a window it is judged by the same code as a measured run.

A prediction is no measurement: a qualified person confirms it with an instrumented run before production.

Examples
  ovenwright predict run7.csv --oven line2.toml --recipe rev7.toml --new-recipe rev8.toml --window sac305
  ovenwright predict run7.csv run8.csv --recipe rev7.toml --recipe rev8.toml --oven line2.toml --new-recipe rev9.toml
  ovenwright predict run7.csv --oven line2.toml --recipe rev7.toml --new-recipe rev8.toml --traces rev8.csv)";

inline constexpr const char* kTuneHelp = R"(
Learns from measured runs how the board heats in this oven, and suggests up to four recipes that are predicted to hold
the window: least change, most margin, fastest and coolest; or says what stands against it. Setpoints stay inside the
oven's limits, top and bottom move together unless --split-sides.

Suggested setpoints are predictions: a qualified person confirms them with an instrumented run before production, inside
the ratings of the paste, the parts, the board and the oven.

Exit status: 0 where a suggestion passes, 1 where no recipe does, 5 where the logs do not carry a model, where a pass is
not ruled out though none is predicted, and where the search was cut short.

Examples
  ovenwright tune run7.csv --window tern_rev3.toml --oven line2.toml --recipe rev7.toml --board tern.toml
  ovenwright tune run7.csv --window sac305 --oven line2.toml --recipe rev7.toml --keep-speed --lock 1 --lock 2
  ovenwright tune --runs runs.toml --min-speed 750 --write-recipes suggested
  ovenwright tune run7.csv --window sac305 --oven line2.toml --recipe rev7.toml --note change.txt)";

inline constexpr const char* kLotHelp = R"(
Over the archived runs of a lot in order of time, for each requirement and thermocouple: mean, standard deviation, Pp and
Ppk with their limits, Cp and Cpk, the interval in which 95 % of runs lie, and control charts with their signals. Below
five runs, and where a run has no value, there is no index; few runs are said to be few.

Exit status: by the lot's verdict, the worst of its runs: 0 in the window, 1 out of it, 5 undetermined.

Examples
  ovenwright lot QM-2201
  ovenwright lot QM-2201 --chart xbar-r --subgroup 4 --rules nelson
  ovenwright lot QM-2201 --archive postgresql://line2@records/ovenwright --format json)";

inline constexpr const char* kCompareHelp = R"(
Two logs, judged by the same windows and held against each other: each result's difference with its uncertainty, what
differs in the recipes, which has more margin, which is faster. Channels and board of the same names are taken to be the
same thermocouples on the same instrument, whose errors cancel in a difference; --different-thermocouples says that they
are not. --recipe, --table, --run and --entry hold for both logs, or are given twice, for A and
for B.

With --a and --b two groups of archived runs: their means, and the interval of the two samples for each difference. ID
is the number of a record, or a digest of its log or of itself, whole or its beginning.

Exit status: 0 whatever the verdicts are.

Examples
  ovenwright compare run7.csv run8.csv --window tern_rev3.toml
  ovenwright compare run7.csv run8.csv --oven line2.toml --recipe rev7.toml --recipe rev8.toml --board tern.toml
  ovenwright compare run7.csv other_board.csv --different-thermocouples --align 217 --format json
  ovenwright compare --a 7kq2mv9x-1 7kq2mv9x-2 7kq2mv9x-3 --b 7kq2mv9x-7 7kq2mv9x-8)";

inline constexpr const char* kStartHelp = R"(
A first recipe for a board that no thermocouple has been on yet: from its thickness, length, width, mass and heavy parts,
and from what earlier runs of other boards tell about the oven. Little is known then, and the stated band says how
little: one instrumented run with this recipe, then `ovenwright tune` on its log, is the way on.

It is a prediction: a qualified person confirms it with an instrumented run before production, inside the ratings of the
paste, the parts, the board and the oven.

Exit status: by the predicted verdict; 5 where the board's file does not say what it weighs, or the runs carry no model.

Examples
  ovenwright start --board new_board.toml --oven line2.toml --window sac305
  ovenwright start --board new_board.toml --oven line2.toml --window sac305 --runs runs.toml --write-recipe first.toml)";

}  // namespace ovenwright::command
