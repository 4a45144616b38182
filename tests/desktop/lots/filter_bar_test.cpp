#include "app/desktop/lots/filter_bar.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDateTime>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/desktop/lots/date_field.h"

namespace ovenwright::desktop {
namespace {

template <class T>
T* named(QWidget& in, const QString& name) {
  for (T* child : in.findChildren<T*>())
    if (child->accessibleName() == name) return child;
  return nullptr;
}

TEST(FilterBar, BecomesAFilter) {
  FilterBar bar;
  bar.setLots({{"QM-2298", 2, 0, 0, 0, 0, 0, {}, {}}, {"QM-2301", 1, 0, 0, 0, 0, 0, {}, {}}});
  bar.setBoards({"Heron, I/O", "Tern, main"});
  bar.setOvens({"Line 2"});
  QSignalSpy changed(&bar, &FilterBar::changed);
  auto* board = named<QComboBox>(bar, QStringLiteral("Board"));
  auto* verdict = named<QComboBox>(bar, QStringLiteral("Verdict"));
  ASSERT_TRUE(board && verdict);
  board->setCurrentIndex(2);
  EXPECT_EQ(bar.filter().board, "Tern, main");
  verdict->setCurrentIndex(verdict->count() - 1);
  EXPECT_EQ(bar.filter().verdicts, (std::vector{judge::Verdict::kConditionalFail, judge::Verdict::kFail}));
  EXPECT_EQ(changed.count(), 2);
  auto* lot = named<QLineEdit>(bar, QStringLiteral("Lot"));
  ASSERT_TRUE(lot);
  lot->setText(QStringLiteral("QM-22"));
  QTest::qWait(300);
  EXPECT_FALSE(bar.filter().lot) << "a lot counts by its whole name";
  lot->setText(QStringLiteral("QM-2298"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return bar.filter().lot.has_value(); }));
  EXPECT_EQ(bar.filter().lot, "QM-2298");
  bar.clear();
  EXPECT_FALSE(bar.filter().lot || bar.filter().board || bar.filter().from);
  EXPECT_TRUE(bar.filter().verdicts.empty());
}

// Source: the calendar: "to" counts whole, so its bound is the start of the next day, here.
TEST(FilterBar, DatesAreWholeDaysOfThisPlace) {
  FilterBar bar;
  auto* from = named<DateField>(bar, QStringLiteral("From"));
  auto* to = named<DateField>(bar, QStringLiteral("To"));
  ASSERT_TRUE(from && to);
  from->setDate(QDate(2026, 1, 5));
  to->setDate(QDate(2026, 3, 12));
  const auto milliseconds = [](const std::optional<archive::Moment>& at) { return at->time_since_epoch().count(); };
  ASSERT_TRUE(bar.filter().from && bar.filter().to);
  EXPECT_EQ(milliseconds(bar.filter().from), QDateTime(QDate(2026, 1, 5), QTime(0, 0)).toMSecsSinceEpoch());
  EXPECT_EQ(milliseconds(bar.filter().to), QDateTime(QDate(2026, 3, 13), QTime(0, 0)).toMSecsSinceEpoch());
  const auto filter = bar.filter();
  bar.clear();
  EXPECT_FALSE(from->date() || to->date());
  bar.setFilter(filter);
  EXPECT_EQ(to->date(), QDate(2026, 3, 12));
  to->clear();
  QTest::keyClicks(to, QStringLiteral("2026-02"));
  EXPECT_FALSE(to->date());
  EXPECT_FALSE(to->isUnderstood());
  QTest::keyClicks(to, QStringLiteral("-03"));
  EXPECT_EQ(to->date(), QDate(2026, 2, 3));
}

}  // namespace
}  // namespace ovenwright::desktop
