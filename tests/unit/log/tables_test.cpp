#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/log/layout_file.h"
#include "core/log/reading.h"
#include "tests/unit/log/archive_builder.h"

// Files with several tables, and where in a file an error stands. Sources: the files themselves, made here.

namespace ovenwright::log {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

using Rows = std::vector<std::vector<std::string>>;

/// A run of these channels from `start_C` up by 2 °C a row, under its header.
Rows run_of(const std::vector<std::string>& channels, int rows, int start_C) {
  Rows table{{"Time (s)"}};
  table[0].insert(table[0].end(), channels.begin(), channels.end());
  for (int i = 0; i < rows; ++i) {
    auto& row = table.emplace_back();
    row.push_back(std::to_string(i));
    for (std::size_t k = 0; k < channels.size(); ++k)
      row.push_back(fmt::format("{}.0", start_C + 2 * i + static_cast<int>(k)));
  }
  return table;
}

std::string csv_of(const Rows& table) {
  std::string text;
  for (const auto& row : table) text += fmt::format("{}\n", fmt::join(row, ","));
  return text;
}

std::string html_of(const std::vector<Rows>& tables) {
  std::string text = "<html><body>";
  for (const auto& table : tables) {
    text += "<table>";
    for (const auto& row : table) text += fmt::format("<tr><td>{}</td></tr>\n", fmt::join(row, "</td><td>"));
    text += "</table>";
  }
  return text + "</body></html>";
}

struct NamedTable {
  std::string name;
  Rows rows;
};

/// A workbook in one XML document.
std::string workbook_of(const std::vector<NamedTable>& sheets) {
  std::string text =
      "<?xml version=\"1.0\"?><Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\" "
      "xmlns:ss=\"urn:schemas-microsoft-com:office:spreadsheet\">";
  for (const auto& [name, rows] : sheets) {
    text += fmt::format("<Worksheet ss:Name=\"{}\"><Table>", name);
    for (const auto& row : rows) {
      text += "<Row>";
      for (const auto& cell : row) text += "<Cell><Data ss:Type=\"String\">" + cell + "</Data></Cell>";
      text += "</Row>";
    }
    text += "</Table></Worksheet>";
  }
  return text + "</Workbook>";
}

std::vector<std::string> names_of(const Reading& reading) {
  std::vector<std::string> names;
  for (const auto& table : reading.read_as.tables) names.push_back(table.name() + (table.read ? " read" : ""));
  return names;
}

std::vector<std::string> channels_of(const Reading& reading) {
  std::vector<std::string> names;
  for (const auto& channel : reading.channels) names.push_back(channel.name);
  return names;
}

const std::vector<std::string> kBoard{"U1", "U2", "R118"}, kAir{"Lid", "Rail"};

struct Several {
  const char* what;
  std::string bytes;
  std::vector<std::string> names;  ///< the first is read when nothing is asked for, the second holds kAir
};
void PrintTo(const Several& c, std::ostream* os) { *os << c.what; }
class SeveralTables : public testing::TestWithParam<Several> {};

TEST_P(SeveralTables, AreListedAndPickedByNameAndNumber) {
  const auto& names = GetParam().names;
  const auto found = read_bytes("a", GetParam().bytes);
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_THAT(names_of(*found), ElementsAre(names[0] + " read", names[1]));
  EXPECT_EQ(channels_of(*found), kBoard);
  for (const std::string& wanted : {names[1], std::string{"2"}}) {
    Options options;
    options.table = wanted;
    const auto other = read_bytes("a", GetParam().bytes, options);
    ASSERT_TRUE(other) << other.error().text();
    EXPECT_EQ(channels_of(*other), kAir) << wanted;
    EXPECT_THAT(names_of(*other), ElementsAre(names[0], names[1] + " read")) << wanted;
    // The layout with which it was read gives the same, also out of its file.
    const auto layout = parse_layout("a.toml", layout_text(other->layout));
    ASSERT_TRUE(layout) << layout.error().text();
    Options again;
    again.layout = *layout;
    const auto same = read_bytes("a", GetParam().bytes, again);
    ASSERT_TRUE(same) << same.error().text();
    EXPECT_EQ(channels_of(*same), kAir);
  }
  EXPECT_EQ(tables_of("a", GetParam().bytes).size(), 2u);
}

INSTANTIATE_TEST_SUITE_P(
    Of, SeveralTables,
    testing::Values(
        Several{"archive",
                zip_of({{"notes.txt", "Lot QM-2304\n"},
                        {"a/board.csv", csv_of(run_of(kBoard, 60, 25))},
                        {"a/air.csv", csv_of(run_of(kAir, 40, 30))}}),
                {"a/board.csv", "a/air.csv"}},
        Several{"workbook",
                workbook_of({{"Cover", {{"Lot", "QM-2304"}}},
                             {"Board", run_of(kBoard, 60, 25)},
                             {"Air", run_of(kAir, 40, 30)}}),
                {"Board", "Air"}},
        Several{"workbook_in_archive",
                zip_of({{"run.xls", workbook_of({{"Board", run_of(kBoard, 60, 25)}, {"Air", run_of(kAir, 40, 30)}})}}),
                {"run.xls/Board", "run.xls/Air"}},
        Several{"page", html_of({run_of(kBoard, 60, 25), run_of(kAir, 40, 30)}), {"1", "2"}},
        Several{"text", csv_of(run_of(kBoard, 60, 25)) + "\n" + csv_of(run_of(kAir, 40, 30)), {"line 1", "line 63"}}),
    [](const auto& c) { return std::string{c.param.what}; });

TEST(TablesOfAFile, OneIsNoChoice) {
  for (const auto& bytes : {csv_of(run_of(kBoard, 60, 25)), html_of({run_of(kBoard, 60, 25)}),
                            zip_of({{"readme.txt", "Lot QM-2304\n"}, {"a.csv", csv_of(run_of(kBoard, 60, 25))}})}) {
    Options options;
    for (const auto& wanted : {std::optional<std::string>{}, std::optional<std::string>{"1"}}) {
      options.table = wanted;
      const auto reading = read_bytes("a", bytes, options);
      ASSERT_TRUE(reading) << reading.error().text();
      EXPECT_THAT(reading->read_as.tables, IsEmpty());
    }
  }
}

TEST(TablesOfAFile, AFileOfAnArchiveGoesByItsOwnNameWhereThatIsTheOnlyOne) {
  const auto bytes =
      zip_of({{"a/board.csv", csv_of(run_of(kBoard, 60, 25))}, {"a/air.csv", csv_of(run_of(kAir, 40, 30))}});
  Options options;
  options.table = "air.csv";
  const auto reading = read_bytes("a.zip", bytes, options);
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(channels_of(*reading), kAir);
  EXPECT_EQ(reading->file.member, "a/air.csv");
}

TEST(TablesOfAFile, WhatIsNotThereIsToldWithWhatIs) {
  const auto bytes = workbook_of({{"Board", run_of(kBoard, 60, 25)}, {"Air", run_of(kAir, 40, 30)}});
  for (const std::string wanted : {"Rail", "3", "0", "-1"}) {
    Options options;
    options.table = wanted;
    const auto reading = read_bytes("a.xml", bytes, options);
    ASSERT_FALSE(reading) << wanted;
    EXPECT_EQ(reading.error().code, ErrorCode::kBadArgument);
    EXPECT_EQ(reading.error().text(), "a.xml: found no table \"" + wanted + "\", expected one of: 1 (Board), 2 (Air)");
  }
}

TEST(TablesOfAFile, OneThatCannotBeReadDoesNotHideTheOthers) {
  auto damaged = run_of(kBoard, 60, 25);
  damaged[30][2] = "oops";
  const auto bytes = workbook_of({{"Board", damaged}, {"Air", run_of(kAir, 40, 30)}});
  EXPECT_FALSE(read_bytes("a.xml", bytes));
  EXPECT_EQ(tables_of("a.xml", bytes).size(), 2u);
  Options options;
  options.table = "Air";
  const auto reading = read_bytes("a.xml", bytes, options);
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(channels_of(*reading), kAir);
}

TEST(TablesOfAFile, ALayoutNamesAMemberThatMustBeThere) {
  const auto bytes = zip_of({{"board.csv", csv_of(run_of(kBoard, 60, 25))}});
  Options options;
  options.layout.emplace().member = "air.csv";
  const auto reading = read_bytes("a.zip", bytes, options);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().text(), "a.zip: found no file \"air.csv\" in the archive, expected one of: board.csv");
}

struct Placed {
  const char* what;
  std::string bytes;
  const char* text;
};
void PrintTo(const Placed& c, std::ostream* os) { *os << c.what; }
class ErrorsInAFile : public testing::TestWithParam<Placed> {};

/// A run with a word in its third cell of row 30 of readings, the 31st of all.
Rows damaged_run() {
  auto rows = run_of(kBoard, 60, 25);
  rows[30][2] = "oops";
  return rows;
}

TEST_P(ErrorsInAFile, SayWhereInIt) {
  const auto reading = read_bytes("a", GetParam().bytes);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().text(), GetParam().text);
}

INSTANTIATE_TEST_SUITE_P(
    In, ErrorsInAFile,
    testing::Values(
        Placed{"text", csv_of(damaged_run()), "a:31:3: found \"oops\", expected a temperature"},
        Placed{"sheet", workbook_of({{"Board", damaged_run()}}),
               "a:31:3: found \"oops\", expected a temperature (cell C31 of sheet \"Board\")"},
        Placed{"member", zip_of({{"x/board.csv", csv_of(damaged_run())}}),
               "a:31:3: found \"oops\", expected a temperature (in \"x/board.csv\")"},
        Placed{"sheet_of_member", zip_of({{"x/board.xls", workbook_of({{"Board", damaged_run()}})}}),
               "a:31:3: found \"oops\", expected a temperature (cell C31 of sheet \"Board\" in \"x/board.xls\")"},
        Placed{"page", html_of({damaged_run()}), "a:31:3: found \"oops\", expected a temperature (row 31 of table 1)"}),
    [](const auto& c) { return std::string{c.param.what}; });

/// Records of XML: values in elements, in attributes, in elements that an attribute names; on one line and on many.
std::string xml_of(const Rows& table, const std::string& form) {
  std::string text = "<?xml version=\"1.0\"?><log><board>Tern</board><samples>";
  for (std::size_t i = 1; i < table.size(); ++i) {
    text += "<sample";
    if (form == "attributes") text += fmt::format(" time_s=\"{}\"", table[i][0]);
    if (form != "attributes") text += fmt::format("><time_s>{}</time_s>\n", table[i][0]);
    for (std::size_t k = 1; k < table[0].size(); ++k) {
      const auto &name = table[0][k], &value = table[i][k];
      if (form == "attributes") text += fmt::format(" {}=\"{}\"", name, value);
      if (form == "elements") text += fmt::format("<{0}>{1}</{0}>\n", name, value);
      if (form == "named") text += fmt::format("<t name=\"{}\">{}</t>", name, value);
    }
    text += form == "attributes" ? "/>" : "</sample>";
  }
  return text + "</samples></log>";
}

TEST(XmlRecords, AreATable) {
  for (const std::string form : {"attributes", "elements", "named"}) {
    const auto reading = read_bytes("a.xml", xml_of(run_of(kBoard, 40, 25), form));
    ASSERT_TRUE(reading) << form << reading.error().text();
    EXPECT_EQ(channels_of(*reading), kBoard) << form;
    EXPECT_EQ(reading->channels[2].temperature_C.size(), 40u);
    EXPECT_EQ(reading->channels[2].temperature_C.back(), 25 + 2 * 39 + 2);
    EXPECT_EQ(reading->read_as.time, "seconds") << form;
  }
}

TEST(JsonRows, TakeTheNamesOfTheirChannelsFromBesideThem) {
  std::string rows;
  for (int i = 0; i < 40; ++i) rows += fmt::format("{}[{},{}.0,{}.5]", i > 0 ? "," : "", i, 25 + 2 * i, 26 + 2 * i);
  const auto reading = read_bytes("a.json", R"({"board":"Tern","channels":["U1","U2"],"data":[)" + rows + "]}");
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_THAT(channels_of(*reading), ElementsAre("U1", "U2"));
}

TEST(Page, ThatEndsInARowLosesThatRow) {
  const std::string whole = html_of({run_of(kBoard, 40, 25)});
  const auto reading = read_bytes("a.html", whole.substr(0, whole.rfind("</td><td>") + 10));
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->channels[2].temperature_C.size(), 39u);
  EXPECT_THAT(reading->read_as.notes, ElementsAre("The last row is cut off and was left out."));
}

// Source: RFC 2045, 6.7 and 6.8: "=3C" is "<", a line that ends with "=" goes on.
TEST(Page, SavedInOneFileIsRead) {
  const std::string html = html_of({run_of(kBoard, 40, 25)});
  const std::string head = "MIME-Version: 1.0\nContent-Type: multipart/related; boundary=\"x-1\"\n\n--x-1\n";
  std::string quoted;
  for (const char c : html) quoted += c == '<' ? "=3C" : c == '\n' ? "=\n" : std::string{c};
  const std::string tail = "\n--x-1\nContent-Type: image/png\nContent-Transfer-Encoding: base64\n\nMA==\n--x-1--\n";
  for (const auto& part : {"Content-Type: text/html\nContent-Transfer-Encoding: quoted-printable\n\n" + quoted,
                           "Content-Type: text/html; charset=utf-8\n\n" + html}) {
    const auto reading = read_bytes("a.mht", head + part + tail);
    ASSERT_TRUE(reading) << reading.error().text();
    EXPECT_EQ(channels_of(*reading), kBoard);
    EXPECT_EQ(reading->channels[0].temperature_C.size(), 40u);
  }
}

// A boundary that stands everywhere, and no line end behind any: no page, and no search of the rest for each of them.
TEST(Page, OfNothingButBoundariesIsNone) {
  std::string page = "MIME-Version: 1.0\nContent-Type: multipart/related; boundary=a\n\n";
  for (int i = 0; i < 1'000'000; ++i) page += "--a";
  EXPECT_FALSE(read_bytes("a.mht", page));
}

// A page that parts its table: the same header above each part, or a header that is a table.
TEST(Page, ThatPartsATableIsReadWhole) {
  const auto whole = run_of(kBoard, 60, 25);
  const auto part = [&](int from, int to) { return Rows(whole.begin() + from, whole.begin() + to); };
  const auto with_header = [&](int from, int to) {
    auto rows = part(from, to);
    rows.insert(rows.begin(), whole.front());
    return rows;
  };
  for (const auto& html : {html_of({part(0, 31), with_header(31, 61)}), html_of({part(0, 1), part(1, 61)})}) {
    const auto reading = read_bytes("a.html", html);
    ASSERT_TRUE(reading) << reading.error().text();
    EXPECT_EQ(channels_of(*reading), kBoard);
    EXPECT_EQ(reading->channels[0].temperature_C.size(), 60u);
    EXPECT_THAT(reading->read_as.tables, IsEmpty());
  }
}

TEST(Sheet, WithABlockBesideItsTableIsReadWithoutIt) {
  auto rows = run_of(kBoard, 60, 25);
  const Rows lot{{"Lot", "QM-2304"}, {"Speed", "800"}, {"Made by", "M. Okafor"}};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    rows[i].insert(rows[i].begin(), {i < lot.size() ? lot[i][0] : "", i < lot.size() ? lot[i][1] : "", ""});
  }
  const auto reading = read_bytes("a.xml", workbook_of({{"Run", rows}}));
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(channels_of(*reading), kBoard);
  EXPECT_EQ(reading->channels[0].temperature_C.size(), 60u);
  EXPECT_EQ(reading->layout.channels.front().column, 5);
}

/// Up and down again, whatever the number of rows.
Rows long_run(int rows) {
  Rows run = run_of(kBoard, 1, 25);
  const Rows once = run_of(kBoard, 100, 25);
  run.pop_back();
  for (int i = 0; i < rows; ++i) {
    run.push_back(once[1 + static_cast<std::size_t>(i % 100)]);
    run.back().front() = std::to_string(i);
  }
  return run;
}

// Notes stand apart from each other beside a long table.
TEST(Sheet, WithManyBlocksBesideItsTableIsReadWithoutThem) {
  constexpr std::size_t kBlocks = 30;
  auto rows = long_run(200);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    rows[i].insert(rows[i].begin(), 2 * kBlocks, "");
    for (std::size_t k = 0; i < 3 && k < kBlocks; ++k) rows[i][2 * k] = fmt::format("note {}", k);
  }
  const auto reading = read_bytes("a.xml", workbook_of({{"Run", rows}}));
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(channels_of(*reading), kBoard);
  EXPECT_EQ(reading->channels[0].temperature_C.size(), 200u);
  EXPECT_EQ(reading->layout.channels.front().column, static_cast<int>(2 * kBlocks + 2));
}

TEST(XmlRecords, MayHaveManyNamesAndOneOfThemOften) {
  std::string text = "<?xml version=\"1.0\"?>\n<log>\n";
  for (int i = 0; i < 3000; ++i) text += fmt::format("<setting{}>1</setting{}>\n", i, i);
  for (int i = 0; i < 40'000; ++i)
    text += fmt::format("<row><seconds>{}</seconds><U1>{}.5</U1></row>\n", i, 25 + i % 200);
  const auto reading = read_bytes("a.xml", text + "</log>\n");
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_THAT(channels_of(*reading), ElementsAre("U1"));
  EXPECT_EQ(reading->channels[0].temperature_C.size(), 40'000u);
}

// Archives of archives of pages: the first level is looked into, and nothing more within a look.
TEST(Archive, LooksIntoTwentyMembersAtTheMost) {
  const auto twenty_of = [](const std::string& content, const std::string& ending) {
    Members members;
    for (int i = 0; i < 20; ++i) members.emplace_back(fmt::format("m{}.{}", i, ending), content);
    return zip_of(members);
  };
  std::string nested = twenty_of(html_of({long_run(4000)}), "html");
  for (int level = 0; level < 2; ++level) nested = twenty_of(nested, "zip");
  const auto reading = read_bytes("a.zip", nested);
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->file.member, "m0.zip/m0.zip/m0.html");
  EXPECT_EQ(reading->channels[0].temperature_C.size(), 4000u);
}

// Which member is the log is known once it is opened: a page without a table and a document of settings are none.
TEST(Archive, OpensWhatHasToBeOpenedToBeKnown) {
  const auto bytes = zip_of({{"meta.json", "{\"lot\": \"QM-2304\", \"notes\": \"" + std::string(5000, 'x') + "\"}"},
                             {"readme.html", "<html><body><p>" + std::string(9000, 'x') + "</p></body></html>"},
                             {"run.xls", workbook_of({{"Run", run_of(kBoard, 10, 25)}})}});
  const auto reading = read_bytes("a.zip", bytes);
  ASSERT_TRUE(reading) << reading.error().text();
  EXPECT_EQ(reading->file.member, "run.xls");
  EXPECT_THAT(reading->read_as.tables, IsEmpty());
}

struct Refusal {
  const char* what;
  std::string bytes;
  const char* found;
};
void PrintTo(const Refusal& c, std::ostream* os) { *os << c.what; }
class NoLog : public testing::TestWithParam<Refusal> {};

TEST_P(NoLog, IsToldByWhatItIs) {
  const auto reading = read_bytes("a", GetParam().bytes);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().code, ErrorCode::kParse);
  EXPECT_THAT(reading.error().text(), HasSubstr(GetParam().found));
}

/// The head of a compound file and one entry of its directory. Source: MS-CFB 2.2 and 2.6.1.
std::string compound_of(const std::string& stream) {
  std::string bytes = "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1" + std::string(504, '\0');
  for (const char c : stream) bytes += {c, '\0'};
  return bytes + std::string(128, '\0');
}

/// The header of one member. Source: POSIX.1-2017, pax, ustar interchange format.
std::string tar_of(const std::string& name) {
  std::string bytes(512, '\0');
  bytes.replace(0, name.size(), name);
  return bytes.replace(257, 5, "ustar") + std::string(512, '1');
}

/// A workbook of one sheet with these cells in its second row.
std::string xlsx_of(const std::string& cells) {
  std::string rows = "<row><c t=\"str\"><v>Time (s)</v></c><c t=\"str\"><v>U1</v></c></row>";
  for (int i = 0; i < 30; ++i) rows += fmt::format("<row><c><v>{}</v></c>{}</row>", i, cells);
  return zip_of({{"xl/workbook.xml", R"(<workbook><sheets><sheet name="One" sheetId="1"/></sheets></workbook>)"},
                 {"xl/worksheets/sheet1.xml", "<worksheet><sheetData>" + rows + "</sheetData></worksheet>"}});
}

INSTANTIATE_TEST_SUITE_P(
    Of, NoLog,
    testing::Values(
        Refusal{"password", compound_of("EncryptedPackage"), "found a workbook with a password, expected"},
        Refusal{"old_workbook", compound_of("Workbook"), "found a workbook of the old binary kind (.xls), expected"},
        Refusal{"old_document", compound_of("WordDocument"),
                "found a word processor's document of the old binary kind"},
        Refusal{"tar", tar_of("run7.csv"), "found a tar archive, which is not unpacked here"},
        Refusal{"pictures", zip_of({{"a.png", "\x89PNG\r\n\x1A\n"}, {"b/", ""}}),
                "found a zip archive of other files (a.png), expected a zip archive with a log in it"},
        Refusal{"nothing", zip_of({{"b/", ""}}), "found an empty zip archive"},
        Refusal{"content_lost",
                zip_of({{"mimetype", "application/vnd.oasis.opendocument.spreadsheet"},
                        {"META-INF/manifest.xml", "<manifest/>"},
                        {"meta.xml", "<meta><rows>12</rows><rows>13</rows></meta>"}}),
                "found an OpenDocument file without a table, expected a spreadsheet"},
        Refusal{"half_a_zip", zip_of({{"a.csv", csv_of(run_of(kBoard, 90, 25))}}).substr(0, 200),
                "it is cut short or damaged, the list of its files is missing"},
        Refusal{
            "texts_lost", xlsx_of(R"(<c t="s"><v>0</v></c>)"),
            "a:2:2: found a workbook without its texts (sharedStrings.xml), expected a whole .xlsx workbook (cell B2 "
            "of sheet \"One\")"},
        Refusal{"results_lost", xlsx_of("<c><f>1+1</f></c>"),
                "found 30 formulas without a stored result, expected readings, which a spreadsheet program stores when "
                "it saves the workbook"}),
    [](const auto& c) { return std::string{c.param.what}; });

}  // namespace
}  // namespace ovenwright::log
