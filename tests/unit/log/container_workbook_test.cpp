#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/log/grid.h"
#include "tests/unit/log/archive_builder.h"

namespace ovenwright::log {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

using Row = std::vector<std::string>;

Result<Content> opened(const std::string& bytes, std::vector<std::string>& notes) {
  return open_container("book", bytes, std::size_t{1} << 30, notes);
}
Result<Content> opened(const std::string& bytes) {
  std::vector<std::string> notes;
  return opened(bytes, notes);
}
std::string fixture(const char* name) { return file_bytes(std::string{OVENWRIGHT_TEST_DATA "/workbooks/"} + name); }

// Expected: what scripts/make_workbook_fixtures.py put into the cells.
TEST(WorkbookXlsx, HoldsItsSheetsInOrder) {
  const auto content = opened(fixture("log.xlsx"));
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->kind, "xlsx");
  ASSERT_THAT(content->grids, SizeIs(3));
  EXPECT_EQ(content->grids[0].name, "Notes");
  EXPECT_EQ(content->grids[1].name, "Log");
  EXPECT_EQ(content->grids[2].name, "Nothing");
  const auto& rows = content->grids[1].rows;
  ASSERT_THAT(rows, SizeIs(14));
  EXPECT_EQ(rows[0], (Row{"Tern, main side"}));
  EXPECT_EQ(rows[1], (Row{"Time [s]", "U1 corner [°C]", "Socket [°C]"}));
  EXPECT_EQ(rows[2], (Row{"0", "25", "25"}));
  EXPECT_EQ(rows[5], (Row{"1.5", "25.3", "26.11"}));
  EXPECT_THAT(content->grids[2].rows, IsEmpty());
}

TEST(WorkbookXlsx, TurnsNumbersShownAsDatesAndTimesIntoText) {
  std::vector<std::string> notes;
  const auto content = opened(fixture("types.xlsx"), notes);
  ASSERT_TRUE(content) << content.error().message;
  const auto& rows = content->grids.at(0).rows;
  ASSERT_THAT(rows, SizeIs(20));
  const auto shown = [&](std::size_t row) { return rows[row].at(1); };
  EXPECT_EQ(shown(0), "2031-03-12T23:59:59.5");
  EXPECT_EQ(shown(1), "2031-03-13T00:00:00.5");
  EXPECT_EQ(shown(2), "2031-03-12");
  EXPECT_EQ(shown(3), "9:14:22.5");
  EXPECT_EQ(shown(4), "0:01:02.25");
  EXPECT_EQ(shown(5), "25:01:02");
  EXPECT_EQ(shown(6), "2031-03-12T23:59:59") << "a moment shown as a time of day keeps its day";
  EXPECT_EQ(shown(7), "217.25");
  EXPECT_EQ(shown(8), "217.25");
  EXPECT_EQ(shown(9), "0.125");
  EXPECT_EQ(rows[0].at(3), "TRUE");
  EXPECT_EQ(rows[1].at(3), "FALSE");
  EXPECT_THAT(rows[2], SizeIs(2)) << "a formula without a stored result";
  EXPECT_EQ(rows[3].at(3), "#N/A");
  EXPECT_THAT(rows[12], IsEmpty());
  EXPECT_EQ(rows[19], (Row{"", "", "", "", "", "far"}));
  EXPECT_THAT(notes, ElementsAre(HasSubstr("sheet \"Types\": 1 formulas have no stored result")));
}

TEST(WorkbookXlsx, CountsDaysFrom1904WhereTheWorkbookDoes) {
  const auto content = opened(fixture("from_1904.xlsx"));
  ASSERT_TRUE(content) << content.error().message;
  const auto& rows = content->grids.at(0).rows;
  ASSERT_THAT(rows, SizeIs(4));
  EXPECT_EQ(rows[1], (Row{"2031-03-12T23:59:59", "25"}));
  EXPECT_EQ(rows[2], (Row{"2031-03-13T00:00:00", "26"}));
}

TEST(WorkbookOds, HoldsStoredValuesNotShownOnes) {
  const auto content = opened(fixture("log.ods"));
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->kind, "ods");
  ASSERT_THAT(content->grids, SizeIs(2));
  EXPECT_EQ(content->grids[0].rows, (std::vector<Row>{{"lot QM-1042"}}));
  EXPECT_EQ(content->grids[1].name, "Log");
  EXPECT_EQ(content->grids[1].rows, (std::vector<Row>{
                                        {"Tern, main side"},
                                        {},
                                        {},
                                        {"when", "for", "U1 corner [°C]", "good"},
                                        {"2031-03-12T23:59:59", "0:00:00", "25", "TRUE"},
                                        {"2031-03-12T23:59:59.5", "0:00:00.5", "25.125", "TRUE"},
                                        {"2031-03-13T00:00:00", "0:00:01", "25.25", "TRUE"},
                                        {"", "", "25", "25"},
                                        {"", "", "25", "25"},
                                    }));
}

std::string workbook_of(const std::string& sheet, Members more = {}) {
  Members members = {{"xl/workbook.xml", R"(<workbook><sheets><sheet name="One" sheetId="1"/></sheets></workbook>)"},
                     {"xl/worksheets/sheet1.xml", sheet}};
  members.insert(members.end(), more.begin(), more.end());
  return zip_of(members);
}

// No relationships, styles or shared strings; strings inline; cells and rows without references; prefixed elements.
TEST(WorkbookXlsx, ReadsSheetsOfTheSimplestWriters) {
  const auto content = opened(workbook_of(
      R"(<?xml version="1.0"?><x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData>)"
      R"(<x:row><x:c t="inlineStr"><x:is><x:t>time &amp; date</x:t></x:is></x:c><x:c t="inlineStr"><x:is><x:r><x:t>T</x:t></x:r>)"
      R"(<x:r><x:t xml:space="preserve">C 1</x:t></x:r><x:rPh><x:t>no</x:t></x:rPh></x:is></x:c></x:row>)"
      R"(<x:row><x:c s="4"><x:v>0.5</x:v></x:c><x:c><x:v>25.100000000000001</x:v></x:c></x:row>)"
      R"(<x:row r="5"><x:c r="C5"><x:v>1E3</x:v></x:c><x:c t="str"><x:f>A1</x:f><x:v>open</x:v></x:c>)"
      R"(<x:c><x:f>1+1</x:f><x:v>2</x:v></x:c><x:c t="b"><x:v>1</x:v></x:c><x:c t="e"><x:v>#DIV/0!</x:v></x:c></x:row>)"
      R"(</x:sheetData></x:worksheet>)"));
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->grids.at(0).rows,
            (std::vector<Row>{
                {"time & date", "TC 1"}, {"0.5", "25.1"}, {}, {}, {"", "", "1000", "open", "2", "TRUE", "#DIV/0!"}}));
}

TEST(WorkbookXlsx, ReadsSharedStringsAndIsoDates) {
  const auto content = opened(workbook_of(
      R"(<worksheet><sheetData><row r="1"><c r="A1" t="s"><v>1</v></c><c r="B1" t="s"><v>0</v></c></row>)"
      R"(<row r="2"><c r="A2" t="d"><v>2031-03-12T09:14:22.500</v></c></row></sheetData></worksheet>)",
      {{"xl/sharedStrings.xml",
        "<sst><si><t>TC1_x000D_\n(°C)</t></si><si><r><t>ti</t></r><r><t>me</t></r></si></sst>"}}));
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->grids.at(0).rows, (std::vector<Row>{{"time", "TC1\r\n(°C)"}, {"2031-03-12T09:14:22.5"}}));
}

TEST(WorkbookXlsx, RefusesEntities) {
  const auto content = opened(workbook_of(
      R"(<!DOCTYPE w [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]><worksheet><sheetData><row><c t="str"><v>&b;</v></c></row></sheetData></worksheet>)"));
  ASSERT_FALSE(content);
  EXPECT_THAT(content.error().message, HasSubstr("document type definition"));
}

TEST(WorkbookXlsx, NamesTheDamagedPartAndLine) {
  const auto content = opened(workbook_of("<worksheet>\n<sheetData>\n<row></sheetData></worksheet>"));
  ASSERT_FALSE(content);
  EXPECT_EQ(content.error().code, ErrorCode::kParse);
  EXPECT_THAT(content.error().message, HasSubstr("xl/worksheets/sheet1.xml:3: found damaged XML"));
}

TEST(WorkbookXlsx, RefusesCellsThatWouldFillMemory) {
  std::string far;
  for (int i = 1; i <= 2000; ++i) far += "<row><c r=\"XFD" + std::to_string(i) + "\"><v>1</v></c></row>";
  for (const auto& cells : {far, std::string{"<row r=\"1048577\"><c><v>1</v></c></row>"},
                            std::string{"<row><c r=\"ZZZZ1\"><v>1</v></c></row>"}}) {
    const auto content = opened(workbook_of("<worksheet><sheetData>" + cells + "</sheetData></worksheet>"));
    if (content) {
      EXPECT_LE(content->grids.at(0).rows.size(), 1u);
    } else {
      EXPECT_EQ(content.error().code, ErrorCode::kParse);
    }
  }
}

TEST(WorkbookXlsx, NamesDocumentsOfOtherKinds) {
  const auto content = opened(zip_of({{"[Content_Types].xml", "<Types/>"}, {"word/document.xml", "<w/>"}}));
  ASSERT_FALSE(content);
  EXPECT_EQ(content.error().found, "a word processor's document");
}

std::string ods_of(const std::string& tables, const std::string& manifest = "<manifest/>") {
  return zip_of(
      {{"META-INF/manifest.xml", manifest},
       {"content.xml",
        R"(<o:document-content xmlns:o="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:t="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:x="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><o:body><o:spreadsheet>)" +
            tables + "</o:spreadsheet></o:body></o:document-content>"}});
}

TEST(WorkbookOds, LeavesOutNotesChangesAndCopiesOfOtherFiles) {
  const auto content = opened(ods_of(
      R"(<t:tracked-changes><t:table><t:table-row><t:table-cell><x:p>gone</x:p></t:table-cell></t:table-row></t:table></t:tracked-changes>)"
      R"(<t:table t:name="A"><t:table-row><t:table-cell o:value-type="string"><o:annotation><x:p>note</x:p></o:annotation>)"
      R"(<x:p>time<x:s x:c="2"/><x:span>s</x:span></x:p><x:p>two</x:p></t:table-cell></t:table-row></t:table>)"
      R"(<t:table t:name="'file:///b.ods'#$B"><t:table-row><t:table-cell o:value-type="float" o:value="1"/></t:table-row></t:table>)"));
  ASSERT_TRUE(content) << content.error().message;
  ASSERT_THAT(content->grids, SizeIs(1));
  EXPECT_EQ(content->grids[0].rows, (std::vector<Row>{{"time  s\ntwo"}}));
}

TEST(WorkbookOds, CapsRepeats) {
  const auto cell = [](const std::string& row, const std::string& column) {
    return ods_of("<t:table t:name=\"A\"><t:table-row t:number-rows-repeated=\"" + row +
                  "\"><t:table-cell o:value-type=\"float\" o:value=\"1\" t:number-columns-repeated=\"" + column +
                  "\"/></t:table-row></t:table>");
  };
  EXPECT_TRUE(opened(cell("1000", "12")));
  for (const auto& bytes :
       {cell("1048576", "16384"), cell("99999999999999999999", "8"), cell("1", "4000000000"), cell("1000000", "100")}) {
    const auto content = opened(bytes);
    ASSERT_FALSE(content);
    EXPECT_EQ(content.error().code, ErrorCode::kParse);
  }
}

TEST(WorkbookOds, NamesAPassword) {
  const auto content = opened(ods_of("", "<manifest><file-entry><encryption-data/></file-entry></manifest>"));
  ASSERT_FALSE(content);
  EXPECT_EQ(content.error().found, "a workbook with a password");
}

TEST(WorkbookOds, ReadsTheFlatForm) {
  const auto content = opened(
      R"(<?xml version="1.0"?><o:document xmlns:o="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:t="urn:oasis:names:tc:opendocument:xmlns:table:1.0">)"
      R"(<t:table t:name="A"><t:table-row><t:table-cell o:value-type="float" o:value="25.10"/></t:table-row></t:table></o:document>)");
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->kind, "ods");
  EXPECT_EQ(content->grids.at(0).rows, (std::vector<Row>{{"25.1"}}));
}

TEST(WorkbookXml, ReadsSpreadsheetsInOneDocument) {
  const std::string document =
      R"(<?xml version="1.0"?><?application?><Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet" xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet">)"
      R"(<Worksheet ss:Name="Log"><Table><Row><Cell ss:MergeAcross="1"><Data ss:Type="String">Time</Data></Cell><Cell><Data ss:Type="String">TC1</Data></Cell></Row>)"
      R"(<Row ss:Index="3"><Cell><Data ss:Type="DateTime">2031-03-12T09:14:22.500</Data></Cell><Cell><Data ss:Type="DateTime">1899-12-31T09:14:22.500</Data></Cell>)"
      R"(<Cell ss:Index="5"><Data ss:Type="Number">25.10</Data></Cell><Cell><Data ss:Type="Boolean">1</Data></Cell></Row></Table></Worksheet>)"
      R"(<Worksheet ss:Name="Two"/></Workbook>)";
  const auto content = opened(document);
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->kind, "xml");
  ASSERT_THAT(content->grids, SizeIs(2));
  EXPECT_EQ(content->grids[0].name, "Log");
  EXPECT_EQ(
      content->grids[0].rows,
      (std::vector<Row>{{"Time", "", "TC1"}, {}, {"2031-03-12T09:14:22.5", "9:14:22.5", "", "", "25.1", "TRUE"}}));
  const auto cut = opened(document.substr(0, 400));
  ASSERT_FALSE(cut);
  EXPECT_THAT(cut.error().message, HasSubstr("damaged XML"));
}

TEST(WorkbookHtml, ReadsTablesWhoseCellsAreNotClosed) {
  const auto content = opened(
      "<html><head><style>td {a:b}</style><body><p>Run 7<table "
      "border=1><tr><th>Time<th>TC1&nbsp;(&deg;C)<tr><td>0<td>25,0"
      "<tr><td> 1 <br>s<td><b>25</b>,1</table><table><tr><td></table>");
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->kind, "html");
  ASSERT_THAT(content->grids, SizeIs(1));
  EXPECT_EQ(content->grids[0].rows, (std::vector<Row>{{"Time", "TC1 (°C)"}, {"0", "25,0"}, {"1 s", "25,1"}}));
}

TEST(WorkbookHtml, LeavesTheRestOfASpanEmpty) {
  const auto content = opened(
      "<table><tr><th rowspan=2>t</th><th colspan=2>TC</th><th>x</th></tr><tr><th>1</th><th>2</th></tr>"
      "<tr><td>0</td><td>25</td><td>26</td><td>27</td></tr></table>");
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->grids.at(0).rows,
            (std::vector<Row>{{"t", "TC", "", "x"}, {"", "1", "2"}, {"0", "25", "26", "27"}}));
}

TEST(WorkbookHtml, TakesTheDeclaredEncoding) {
  const auto content = opened(
      "<!DOCTYPE html><meta "
      "charset=\"gb2312\"><table><tr><td>\xCA\xB1\xBC\xE4</td><td>\xCE\xC2\xB6\xC8</td></tr></table>");
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->grids.at(0).rows, (std::vector<Row>{{"时间", "温度"}}));
}

TEST(WorkbookHtml, TakesTablesInCellsAsTheirOwn) {
  const auto content = opened("<table><tr><td>out<table><tr><td>in</td></tr></table>side</td><td>b</td></tr></table>");
  ASSERT_TRUE(content) << content.error().message;
  ASSERT_THAT(content->grids, SizeIs(2));
  EXPECT_EQ(content->grids[0].rows, (std::vector<Row>{{"outside", "b"}}));
  EXPECT_EQ(content->grids[1].rows, (std::vector<Row>{{"in"}}));
}

TEST(WorkbookHtml, TakesPreformattedTextWhereThereIsNoTable) {
  const auto content = opened("<html><body><pre>time;a\n0;1\n</pre></body></html>");
  ASSERT_TRUE(content) << content.error().message;
  EXPECT_EQ(content->kind, "text");
  EXPECT_FALSE(content->plain);
  EXPECT_EQ(content->bytes, "time;a\n0;1\n\n");
}

TEST(WorkbookHtml, RefusesADocumentWithoutTable) {
  const auto content = opened("<html><body><p>Hello</p></body></html>");
  ASSERT_FALSE(content);
  EXPECT_THAT(content.error().message, HasSubstr("without a table"));
}

TEST(Workbook, OpensInsideGzipAndZip) {
  for (const auto& bytes :
       {gzip_of(fixture("log.xlsx")), zip_of({{"log.xlsx", fixture("log.xlsx")}, {"readme.txt", "see 1 2 3\n"}})}) {
    const auto content = opened(bytes);
    ASSERT_TRUE(content) << content.error().message;
    EXPECT_EQ(content->kind, "xlsx");
    EXPECT_THAT(content->grids, SizeIs(3));
  }
}

TEST(Workbook, LoadsOrGivesAnErrorForEveryTruncation) {
  for (const char* name : {"log.xlsx", "log.ods"}) {
    const auto whole = fixture(name);
    for (std::size_t size = 4; size < whole.size(); size += 7) {
      const auto content = opened(whole.substr(0, size));
      ASSERT_FALSE(content) << size;
      EXPECT_EQ(content.error().code, ErrorCode::kParse);
    }
  }
}

}  // namespace
}  // namespace ovenwright::log
