#include "app/archive/log_labels.h"

#include <gtest/gtest.h>

namespace ovenwright::archive {
namespace {

/// A log of a run that is one: two channels over four minutes behind `head`, with times as `time(i)` gives them.
template <class Time>
log::Reading logOf(const std::string& head, const Time& time, const std::string& name = "run.csv") {
  std::string text = head;
  for (int i = 0; i < 240; ++i) {
    const double level = i < 200 ? 25 + i : 225 - 3 * (i - 200);
    text += time(i) + ";" + std::to_string(int(level)) + ".1;" + std::to_string(int(level)) + ".4\n";
  }
  auto reading = log::read_bytes(name, text);
  EXPECT_TRUE(reading) << reading.error().text();
  return *std::move(reading);
}

std::string two(int n) { return (n < 10 ? "0" : "") + std::to_string(n); }
std::string clockAt(int i) { return "09:" + two(14 + (22 + i) / 60) + ":" + two((22 + i) % 60); }
std::string plain(int i) { return std::to_string(i); }

QDateTime local(int year, int month, int day, int hour, int minute, int second) {
  return QDateTime(QDate(year, month, day), QTime(hour, minute, second), Qt::LocalTime);
}

TEST(LogLabels, TheFirstRowsDateIsTheStart) {
  const auto reading = logOf("Time;TC1;TC2\n", [](int i) { return "2026-03-11 " + clockAt(i); });
  EXPECT_EQ(labelsOf(reading).startedAt, local(2026, 3, 11, 9, 14, 22));
}

TEST(LogLabels, TheOrderOfADateIsThatTheLogWasReadWith) {
  const auto reading = logOf("Time;TC1;TC2\n", [](int i) { return "23.03.2026 " + clockAt(i); });
  EXPECT_EQ(labelsOf(reading).startedAt, local(2026, 3, 23, 9, 14, 22));
}

TEST(LogLabels, DateAndClockMayStandInTwoColumns) {
  const auto reading = logOf("Date;Time;TC1;TC2\n", [](int i) { return "2026-03-11;" + clockAt(i); });
  EXPECT_EQ(labelsOf(reading).startedAt, local(2026, 3, 11, 9, 14, 22));
}

TEST(LogLabels, AZoneThatIsNamedHolds) {
  const auto reading = logOf("Time;TC1;TC2\n", [](int i) { return "2026-03-11T" + clockAt(i) + "+08:00"; });
  EXPECT_EQ(labelsOf(reading).startedAt.toUTC(), QDateTime(QDate(2026, 3, 11), QTime(1, 14, 22), Qt::UTC));
}

TEST(LogLabels, SecondsSince1970AreAMoment) {
  // 1773220462 s since 1970 is 2026-03-11T09:14:22Z: 20523 days of 86400 s (date -u -d @1773220462).
  const auto reading = logOf("Time;TC1;TC2\n", [](int i) { return std::to_string(1773220462LL + i); });
  EXPECT_EQ(labelsOf(reading).startedAt.toUTC(), QDateTime(QDate(2026, 3, 11), QTime(9, 14, 22), Qt::UTC));
}

TEST(LogLabels, AClockTakesTheDateBeforeTheTable) {
  const auto reading = logOf("Date;2026-03-11\nLine;2\n\nTime;TC1;TC2\n", clockAt);
  EXPECT_EQ(labelsOf(reading).startedAt, local(2026, 3, 11, 9, 14, 22));
}

TEST(LogLabels, ADateThatCanBeReadInTwoWaysIsNone) {
  const auto reading = logOf("Date;03/04/2026\nLine;2\n\nTime;TC1;TC2\n", clockAt);
  EXPECT_FALSE(labelsOf(reading).startedAt.isValid());
}

TEST(LogLabels, SecondsAndClocksWithoutADateAreNone) {
  EXPECT_FALSE(labelsOf(logOf("Time (s);TC1;TC2\n", plain)).startedAt.isValid());
  EXPECT_FALSE(labelsOf(logOf("Time;TC1;TC2\n", clockAt)).startedAt.isValid());
}

struct Guess {
  const char *name, *head, *file, *lot, *serial;
};
void PrintTo(const Guess& guess, std::ostream* os) { *os << guess.name; }
class LabelGuess : public testing::TestWithParam<Guess> {};

TEST_P(LabelGuess, FromTheLinesBeforeTheTableElseTheFilesName) {
  const auto& [name, head, file, lot, serial] = GetParam();
  const auto labels = labelsOf(logOf(std::string(head) + "Time (s);TC1;TC2\n", plain, file));
  EXPECT_EQ(labels.lot.toStdString(), lot);
  EXPECT_EQ(labels.serial.toStdString(), serial);
}

// Invented heads and names.
INSTANTIATE_TEST_SUITE_P(
    Heads, LabelGuess,
    testing::Values(Guess{"Cells", "Lot;QM-2291\nSerial;T-0417\n\n", "run.csv", "QM-2291", "T-0417"},
                    Guess{"German", "Los:;QM-2291\nSeriennummer;T-0417\n\n", "run.csv", "QM-2291", "T-0417"},
                    Guess{"Chinese", "批次;QM-2291\n序列号;T-0417\n\n", "run.csv", "QM-2291", "T-0417"},
                    Guess{"Sentence", "# Quillmarsh Assembly, lot QM-2291, Tern\n", "run.csv", "QM-2291", ""},
                    Guess{"NameOfTheFile", "", "/logs/QM-2298_run1.csv", "QM-2298", ""},
                    Guess{"HeadBeforeName", "Lot;QM-1\n\n", "/logs/QM-2298_run1.csv", "QM-1", ""},
                    Guess{"NoLot", "# a slot of 4 mm, ballot 12\n", "tern_run1.csv", "", ""}),
    [](const auto& c) { return std::string{c.param.name}; });

}  // namespace
}  // namespace ovenwright::archive
