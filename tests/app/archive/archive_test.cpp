// The same tests for an archive in a file and on a server.
#include "app/archive/archive.h"

#include <gtest/gtest.h>

#include <QDateTime>
#include <algorithm>
#include <stdexcept>

#include "app/archive/keep.h"
#include "core/files/digest.h"
#include "core/window/window_file.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

class ArchiveIn : public testing::TestWithParam<TestPlace::Kind> {
 protected:
  TestPlace place{GetParam()};
};
INSTANTIATE_TEST_SUITE_P(Both, ArchiveIn, testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
                         [](const auto& at) { return at.param == TestPlace::Kind::kFile ? "File" : "Server"; });

std::vector<std::string> serials(const Page& page) {
  std::vector<std::string> all;
  for (const auto& run : page.runs) all.push_back(run.serial);
  return all;
}

TEST_P(ArchiveIn, KeepsARunWithItsEvidence) {
  Labels labels{"QM-2201", "0007", "R. Quill", std::nullopt};
  const auto runs = demoRuns(labels);
  ASSERT_EQ(runs.size(), 1U);
  std::string id;
  {
    auto archive = place.open();
    const auto added = archive.add(runs);
    ASSERT_TRUE(added) << added.error().text();
    ASSERT_EQ(added->size(), 1U);
    EXPECT_FALSE(added->front().already);
    id = added->front().id;
  }
  auto archive = place.open();
  const auto record = archive.load(id);
  ASSERT_TRUE(record) << record.error().text();
  const auto& run = runs.front();
  EXPECT_EQ(record->summary.lot, "QM-2201");
  EXPECT_EQ(record->summary.serial, "0007");
  EXPECT_EQ(record->summary.operatorName, "R. Quill");
  EXPECT_EQ(record->summary.verdict, run.verdict);
  EXPECT_EQ(record->summary.margin, run.margin);
  EXPECT_EQ(record->summary.runAt, run.fileTime);
  EXPECT_EQ(record->summary.runAtFrom, RunAtFrom::kFileTime);
  EXPECT_EQ(record->program, run.program);
  EXPECT_EQ(record->number, 1U);
  EXPECT_EQ(record->previous, std::string(64, '0'));
  EXPECT_EQ(*archive.rawLog(id), contents(OVENWRIGHT_PROFILES "/demo/tern_run1.csv"));
  EXPECT_EQ(*archive.report(id), run.report);
  EXPECT_EQ(*archive.text(id), run.text);
  EXPECT_EQ(*archive.content(record->windows.at(0).sha256), contents(OVENWRIGHT_PROFILES "/demo/window.toml"));
  EXPECT_EQ(*archive.content(record->oven->sha256), contents(OVENWRIGHT_PROFILES "/demo/oven.toml"));
  EXPECT_EQ(*archive.content(record->recipe->sha256), contents(OVENWRIGHT_PROFILES "/demo/recipe.toml"));
  EXPECT_EQ(*archive.content(record->board->sha256), contents(OVENWRIGHT_PROFILES "/demo/board.toml"));
  EXPECT_EQ(*archive.content(record->attachments.at(0).sha256), contents(OVENWRIGHT_PROFILES "/demo/tern_main.svg"));
  const auto found = archive.verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
  EXPECT_EQ(found->records, 1U);
}

TEST_P(ArchiveIn, KnowsALogItHas) {
  auto archive = place.open();
  const auto runs = madeUpRuns(1, 3);
  const auto first = archive.add(runs);
  ASSERT_TRUE(first) << first.error().text();
  const auto again = archive.add(std::vector{runs[2], madeUpRun(4), madeUpRun(4, "QM-1002")});
  ASSERT_TRUE(again) << again.error().text();
  EXPECT_TRUE(again->at(0).already);
  EXPECT_EQ(again->at(0).id, first->at(2).id);
  EXPECT_FALSE(again->at(1).already);
  EXPECT_TRUE(again->at(2).already);
  EXPECT_EQ(again->at(2).id, again->at(1).id);
  EXPECT_EQ(*archive.count({}), 4U);
}

TEST_P(ArchiveIn, KeepsANewJudgementBesideTheOld) {
  auto archive = place.open();
  const auto added = archive.add(demoRuns({"QM-2201", "0007", "", std::nullopt}));
  ASSERT_TRUE(added) << added.error().text();
  const std::string old = added->front().id;
  const auto run = judgeAgain(archive, old, {});
  ASSERT_TRUE(run) << run.error().text();
  const auto second = archive.add({&*run, 1});
  ASSERT_TRUE(second) << second.error().text();
  ASSERT_FALSE(second->front().already);
  EXPECT_EQ(*archive.count({}), 2U);
  const auto lot = archive.runsOfLot("QM-2201");
  ASSERT_TRUE(lot) << lot.error().text();
  ASSERT_EQ(lot->size(), 1U);
  EXPECT_EQ(lot->front().id, second->front().id);
  EXPECT_EQ(lot->front().judgedFrom, old);
  EXPECT_EQ(lot->front().origin, old);
  // Judged by the same program from the same bytes: the same results, though the log has no path any more.
  EXPECT_EQ(lot->front().margin, run->margin);
  EXPECT_EQ(archive.load(old)->attachments.size(), archive.load(lot->front().id)->attachments.size());
  EXPECT_TRUE(archive.verify()->holds());
  auto lost = *run;
  lost.judgedFrom = "nowhere-1";
  EXPECT_FALSE(archive.add({&lost, 1}));
}

TEST_P(ArchiveIn, ListsInPagesByTimeOfRun) {
  auto archive = place.open();
  ASSERT_TRUE(archive.add(madeUpRuns(1, 7)));
  auto page = archive.find({}, 3);
  ASSERT_TRUE(page) << page.error().text();
  EXPECT_EQ(serials(*page), (std::vector<std::string>{"S7", "S6", "S5"}));
  page = archive.find({}, 3, page->next);
  EXPECT_EQ(serials(*page), (std::vector<std::string>{"S4", "S3", "S2"}));
  page = archive.find({}, 3, page->next);
  EXPECT_EQ(serials(*page), (std::vector<std::string>{"S1"}));
  EXPECT_FALSE(page->next);
  EXPECT_EQ(serials(*archive.find({}, 2, std::nullopt, Order::kOldestFirst)), (std::vector<std::string>{"S1", "S2"}));
}

/// A list in an order, page by page of two.
std::vector<std::string> listed(Archive& archive, const Filter& filter, Order order) {
  std::vector<std::string> all;
  std::optional<Cursor> after;
  do {
    const auto page = archive.find(filter, 2, after, order);
    if (!page) {
      ADD_FAILURE() << page.error().text();
      break;
    }
    EXPECT_LE(page->runs.size(), 2U);
    for (const auto& serial : serials(*page)) all.push_back(serial);
    after = page->next;
  } while (after);
  return all;
}

/// Texts that languages order otherwise than their bytes, ties, and runs without a margin. By hand, for both databases:
/// bytes in UTF-8 (RFC 3629) have the order of code points.
TEST_P(ArchiveIn, ListsByOtherKeysInOneOrderForBothDatabases) {
  struct Kept {
    const char *serial, *lot, *board, *revision;
    judge::Verdict verdict;
    std::optional<double> margin;
  };
  using judge::Verdict;
  const Kept kept[] = {{"1", "qm-9", "b", "2", Verdict::kPass, 0.25},
                       {"2", "QM-10", "B", "10", Verdict::kUndetermined, std::nullopt},
                       {"3", "QM-9", "b", "", Verdict::kFail, -1.5},
                       {"4", "Äpfel", "a b", "C", Verdict::kConditionalPass, 0.25},
                       {"5", "", "a-b", "c", Verdict::kUndetermined, std::nullopt},
                       {"6", "QM-10", "ab", "2", Verdict::kConditionalFail, -0.0},
                       {"7", "\U0001F525", "ä", "é", Verdict::kPass, 0.5},
                       {"8", "\uFF01", "Z", "z", Verdict::kFail, 0.25}};
  auto archive = place.open();
  int number = 0;
  for (const auto& one : kept) {
    auto run = madeUpRun(++number, one.lot);
    run.labels.serial = one.serial;
    run.board->name = one.board;
    run.windows[0].revision = one.revision;
    run.verdict = one.verdict;
    run.margin = one.margin;
    // The first four at one time: then chain and number decide, the last first.
    run.labels.runAt = archive::Moment{std::chrono::milliseconds{1'772'323'200'000 + (number > 4 ? number : 0)}};
    ASSERT_TRUE(archive.add({&run, 1}));
  }
  struct Case {
    Order::Key key;
    std::string ascending, descending;
  };
  for (const auto& [key, ascending, descending] :
       {Case{Order::Key::kLot, "56231487", "78413625"},    // "" < Q..10 < Q..9 < q < Ä < U+FF01 < U+1F525
        Case{Order::Key::kBoard, "28456317", "73165482"},  // B < Z < "a b" < a-b < ab < b < ä
        Case{Order::Key::kWindowRevision, "32614587", "78546123"}, Case{Order::Key::kVerdict, "71452683", "83652471"},
        Case{Order::Key::kMargin, "52368417", "78416352"}}) {
    SCOPED_TRACE(int(key));
    const auto joined = [&](bool down) {
      std::string all;
      for (const auto& serial : listed(archive, {}, {key, down})) all += serial;
      return all;
    };
    EXPECT_EQ(joined(false), ascending);
    EXPECT_EQ(joined(true), descending);
  }
  Filter filter;
  filter.text = "quill";
  filter.verdicts = {Verdict::kFail, Verdict::kUndetermined, Verdict::kPass};
  filter.latestOnly = true;
  EXPECT_EQ(listed(archive, filter, {Order::Key::kMargin, false}),
            (std::vector<std::string>{"5", "2", "3", "8", "1", "7"}));
}

// Where very many runs have the words, they are looked for in another way. Source of the order: the list by time,
// sorted here.
TEST_P(ArchiveIn, WordsThatVeryManyRunsHaveKeepTheOrder) {
  auto archive = place.open();
  ASSERT_TRUE(archive.add(madeUpRuns(1, 1)));
  const std::string series = "with recursive n(i) as (select 1 union all select i + 1 from n where i < 21000) ";
  place.execute("insert into record(chain, number, digest, packed) " + series +
                "select chain, number + i, 'made ' || i, packed from record, n where number = 1");
  place.execute(
      "insert into run(chain, number, run_at, added_at, lot, serial, board, oven, recipe, window_name, "
      "window_revision, "
      "verdict, margin, log, log_name, part, parts, operator, judged_from, origin, run_at_given) " +
      series +
      "select chain, number + i, run_at + (i % 5000) * 1000, added_at, 'QM-' || (i % 7), serial, board, oven, recipe, "
      "window_name, window_revision, verdict, margin, log, log_name, part, parts, operator, judged_from, chain || '-' "
      "|| "
      "(number + i), run_at_given from run, n where number = 1");
  place.execute(
      "insert into search(run_at, chain, number, words) select run_at, chain, number, 'quill ' || lot from run where "
      "number > 1");
  Filter filter;
  filter.text = "quill";
  auto runs = archive.find(filter, 30'000)->runs;
  ASSERT_EQ(runs.size(), 21'001U);
  std::ranges::stable_sort(runs, {}, &Summary::lot);
  std::optional<Cursor> after;
  for (std::size_t from = 0; from < 1200; from += 400) {
    const auto page = archive.find(filter, 400, after, {Order::Key::kLot, false});
    ASSERT_TRUE(page) << page.error().text();
    ASSERT_EQ(page->runs.size(), 400U);
    for (std::size_t i = 0; i < 400; ++i) ASSERT_EQ(page->runs[i].id, runs[from + i].id) << from + i;
    after = page->next;
  }
}

TEST_P(ArchiveIn, FindsByEveryField) {
  auto archive = place.open();
  ASSERT_TRUE(archive.add(madeUpRuns(1, 12)));
  ASSERT_TRUE(archive.add(madeUpRuns(13, 2, "QM-1002")));
  const auto count = [&](auto set) {
    Filter filter;
    set(filter);
    const auto found = archive.count(filter);
    EXPECT_TRUE(found) << found.error().text();
    const auto page = archive.find(filter, 100);
    EXPECT_TRUE(page) << page.error().text();
    EXPECT_EQ(page->runs.size(), *found);
    return *found;
  };
  EXPECT_EQ(count([](Filter& f) { f.lot = "QM-1002"; }), 2U);
  EXPECT_EQ(count([](Filter& f) { f.lot = "QM-100"; }), 0U);
  EXPECT_EQ(count([](Filter& f) { f.board = "Dunlin"; }), 4U);
  EXPECT_EQ(count([](Filter& f) { f.recipe = "rev 1"; }), 7U);
  EXPECT_EQ(count([](Filter& f) { f.oven = "line 2"; }), 14U);
  EXPECT_EQ(count([](Filter& f) { f.serial = "S9"; }), 1U);
  EXPECT_EQ(count([](Filter& f) { f.window = "Tern window"; }), 14U);
  EXPECT_EQ(count([](Filter& f) { f.verdicts = {judge::Verdict::kFail, judge::Verdict::kUndetermined}; }), 3U);
  EXPECT_EQ(count([](Filter& f) { f.from = *parseMoment("2026-03-01T00:10:00Z"); }), 5U);
  EXPECT_EQ(count([](Filter& f) { f.to = *parseMoment("2026-03-01T00:10:00Z"); }), 9U);
  EXPECT_EQ(count([](Filter& f) {
              f.board = "Tern";
              f.recipe = "rev 1";
              f.verdicts = {judge::Verdict::kPass};
            }),
            5U);  // 1, 5, 7, 11, 13
}

TEST_P(ArchiveIn, FindsWordsAnywhere) {
  auto archive = place.open();
  auto runs = madeUpRuns(1, 6);
  runs[1].board->name = "STRASSE Öl 100%_ off";
  runs[2].labels.serial = "焊接爐 三號";
  runs[3].labels.lot = std::string(9'000, 'x') + " needle";
  ASSERT_TRUE(archive.add(runs));
  const auto found = [&](const std::string& text) {
    Filter filter;
    filter.text = text;
    const auto page = archive.find(filter, 10, std::nullopt, Order::kOldestFirst);
    EXPECT_TRUE(page) << page.error().text();
    EXPECT_EQ(page->runs.size(), *archive.count(filter));
    std::string numbers;
    for (const auto& run : page->runs) numbers += run.logName.at(3);
    return numbers;
  };
  EXPECT_EQ(found("qm-100"), "12356");
  EXPECT_EQ(found("  QM-1001 Dunlin "), "36");
  EXPECT_EQ(found("strasse öl"), "2");
  EXPECT_EQ(found("100%_"), "2");
  EXPECT_EQ(found("%"), "2");
  EXPECT_EQ(found("接爐"), "3");
  EXPECT_EQ(found("needle"), "4");
  EXPECT_EQ(found("run5.csv quill"), "5");
  EXPECT_EQ(found("run5.csv nobody"), "");
  EXPECT_EQ(found("' or 1=1 --"), "");
  Filter filter;
  filter.text = "qm dunlin";
  filter.verdicts = {judge::Verdict::kPass};
  EXPECT_EQ(serials(*archive.find(filter, 1)), (std::vector<std::string>{"S6"}));
  EXPECT_EQ(serials(*archive.find(filter, 9, archive.find(filter, 1)->next)),
            (std::vector<std::string>{"焊接爐 三號"}));
}

TEST_P(ArchiveIn, ListsLots) {
  auto archive = place.open();
  ASSERT_TRUE(archive.add(madeUpRuns(1, 12)));
  ASSERT_TRUE(archive.add(madeUpRuns(13, 4, "QM-1002")));
  const auto lots = archive.lots();
  ASSERT_TRUE(lots) << lots.error().text();
  ASSERT_EQ(lots->size(), 2U);
  EXPECT_EQ(lots->at(0).lot, "QM-1002");
  EXPECT_EQ(lots->at(0).records, 4U);
  EXPECT_EQ(lots->at(0).pass, 3U);
  EXPECT_EQ(lots->at(0).fail, 1U);
  EXPECT_EQ(lots->at(1).records, 12U);
  EXPECT_EQ(momentText(lots->at(1).firstRunAt), "2026-03-01T00:01:00.000Z");
}

TEST_P(ArchiveIn, ListsBoardsAndOvensOnce) {
  auto archive = place.open();
  EXPECT_TRUE(archive.names(Archive::Name::kBoard)->empty());
  ASSERT_TRUE(archive.add(madeUpRuns(1, 12)));
  auto run = madeUpRun(13);
  run.board->name = std::string(300, 'z');
  run.oven.reset();
  ASSERT_TRUE(archive.add({&run, 1}));
  EXPECT_EQ(*archive.names(Archive::Name::kBoard), (std::vector<std::string>{"Dunlin", "Tern", std::string(300, 'z')}));
  EXPECT_EQ(*archive.names(Archive::Name::kOven), std::vector<std::string>{"line 2"});
}

TEST_P(ArchiveIn, TakesNamesAsData) {
  std::string nul("a\0b", 3);
  const std::string names[] = {"\"; drop table run; --",
                               "'; delete from record; --",
                               "=cmd()|' /C calc'!A0",
                               "<script>alert(1)</script>",
                               std::string(10'000, 'x'),
                               std::string(10'000, 'x') + "y",
                               "\u202Etxet desrever\u202C \u05E2\u05D1\u05E8\u05D9\u05EA",
                               "\U0001F525 lot \U0001F525",
                               "?1 :lot $1 %s \\ \\' \\x00",
                               "\xff\xfe",
                               nul,
                               "line\nfeed\ttab",
                               "../../etc/passwd"};
  auto archive = place.open();
  int number = 0;
  for (const auto& name : names) {
    auto run = madeUpRun(++number, name);
    run.labels.serial = run.labels.operatorName = name;
    run.log.name = run.board->name = run.windows[0].name = name;
    run.windows[0].revision = name;
    const auto added = archive.add({&run, 1});
    ASSERT_TRUE(added) << added.error().text();
  }
  for (std::size_t i = 0; i < std::size(names); ++i) {
    Filter filter;
    filter.lot = filter.board = filter.serial = filter.window = names[i];
    const auto page = archive.find(filter, 10);
    ASSERT_TRUE(page) << page.error().text();
    ASSERT_EQ(page->runs.size(), 1U) << names[i].substr(0, 30);
    const std::string kept = page->runs[0].lot;
    if (names[i] == "\xff\xfe") {
      EXPECT_EQ(kept, "\uFFFD\uFFFD");
    } else if (names[i] == nul) {
      EXPECT_EQ(kept, "a\uFFFDb");
    } else {
      EXPECT_EQ(kept, names[i]);
      EXPECT_EQ(page->runs[0].operatorName, names[i]);
      EXPECT_EQ(archive.load(page->runs[0].id)->windows[0].revision, names[i]);
    }
  }
  EXPECT_EQ(archive.lots()->size(), std::size(names));
  EXPECT_TRUE(archive.verify()->holds());
}

/// A log of the demo's with the date that stands before its table, or without, judged against the demo's window.
Result<std::vector<NewRun>> logWithDate(const std::string& date, const Labels& labels) {
  std::string text = contents(OVENWRIGHT_PROFILES "/demo/tern_run1.csv");  // its rows have times of a day: 09:14:22,0
  if (!date.empty()) text.insert(text.find("Lot;"), "Datum;" + date + "\n");
  check::Request request;
  request.windows = {*window::load(OVENWRIGHT_PROFILES "/demo/window.toml")};
  auto reading = log::read_bytes("run.csv", text, request.log);
  if (!reading) return reading.error();
  const auto checked = check::check(*std::move(reading), request);
  if (!checked) return checked.error();
  NewFile log{"run.csv", std::nullopt, std::make_shared<const std::string>(text), files::sha256_hex(text)};
  return keep(std::move(log), *parseMoment("2026-05-01T12:00:00Z"), request, *checked, labels);
}

TEST_P(ArchiveIn, KeepsTheTimeByTheLogsOwnClockElseThatOfItsFile) {
  auto archive = place.open();
  const auto taken = [&](const std::string& date, const Labels& labels) {
    const auto runs = logWithDate(date, labels);
    if (!runs) throw std::runtime_error(runs.error().text());
    const auto added = archive.add(*runs);
    if (!added) throw std::runtime_error(added.error().text());
    EXPECT_FALSE(added->front().already);
    const auto summary = archive.load(added->front().id)->summary;
    EXPECT_EQ(runTime(runs->front()).at, summary.runAt);
    EXPECT_EQ(runTime(runs->front()).from, summary.runAtFrom);
    const auto listed = archive.find({}, 100)->runs;
    EXPECT_TRUE(std::ranges::any_of(
        listed, [&](const auto& one) { return one.id == summary.id && one.runAtFrom == summary.runAtFrom; }));
    return summary;
  };
  const auto byClock = taken("2026-03-11", {"QM-1", "", "", std::nullopt});
  EXPECT_EQ(byClock.runAtFrom, RunAtFrom::kLogClock);
  // A clock without a zone is that of this computer.
  const QDateTime local(QDate(2026, 3, 11), QTime(9, 14, 22), Qt::LocalTime);
  EXPECT_EQ(byClock.runAt.time_since_epoch().count(), local.toMSecsSinceEpoch());
  const auto byFile = taken("", {"QM-1", "", "", std::nullopt});
  EXPECT_EQ(byFile.runAtFrom, RunAtFrom::kFileTime);
  EXPECT_EQ(momentText(byFile.runAt), "2026-05-01T12:00:00.000Z");
  const auto given = taken("2026-03-12", {"QM-1", "", "", *parseMoment("2026-03-20T10:00:00Z")});
  EXPECT_EQ(given.runAtFrom, RunAtFrom::kGiven);
  EXPECT_EQ(momentText(given.runAt), "2026-03-20T10:00:00.000Z");
  // A new judgement is of the same run: it has the time that the run had.
  for (const auto& before : {byClock, byFile, given}) {
    const auto again = judgeAgain(archive, before.id, {});
    ASSERT_TRUE(again) << again.error().text();
    EXPECT_EQ(runTime(*again).at, before.runAt);
    EXPECT_EQ(runTime(*again).from, before.runAtFrom);
    ASSERT_TRUE(archive.add({&*again, 1}));
  }
  EXPECT_TRUE(archive.verify()->holds());
}

TEST_P(ArchiveIn, AKeptRunHasTheBoardsPictureThatWasKept) {
  auto archive = place.open();
  const auto added = archive.add(demoRuns({"QM-2201", "", "", std::nullopt}));
  ASSERT_TRUE(added) << added.error().text();
  const auto with = judgedWith(archive, *archive.load(added->front().id), {});
  ASSERT_TRUE(with) << with.error().text();
  ASSERT_TRUE(with->request.board && with->request.board->picture);
  const auto picture = pictureInside(*with->request.board->picture);
  ASSERT_TRUE(picture) << "no path: the file of that name may be another one today";
  EXPECT_EQ(picture->name, "tern_main.svg");
  EXPECT_EQ(*picture->bytes, contents(OVENWRIGHT_PROFILES "/demo/tern_main.svg"));
  EXPECT_FALSE(pictureInside("/boards/tern_main.svg"));
}

TEST_P(ArchiveIn, SaysWhereARecordIsNot) {
  auto archive = place.open();
  for (const char* id : {"", "7kq2mv9x-1", "x", "'; drop table run"}) {
    const auto record = archive.load(id);
    ASSERT_FALSE(record);
    EXPECT_EQ(record.error().code, ErrorCode::kBadArgument);
  }
  EXPECT_EQ(archive.content(std::string(64, 'a')).error().code, ErrorCode::kBadArgument);
}

}  // namespace
}  // namespace ovenwright::archive
