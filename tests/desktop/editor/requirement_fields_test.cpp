#include "app/desktop/editor/requirement_fields.h"

#include <gtest/gtest.h>

#include "app/desktop/editor/window_model.h"
#include "core/window/window_file.h"

namespace ovenwright::desktop {
namespace {

window::ProcessWindow demoWindow() {
  auto window = window::load(OVENWRIGHT_PROFILES "/demo/window.toml");
  EXPECT_TRUE(window) << window.error().text();
  return *window;
}

TEST(RequirementFields, WhatAFieldShowsItTakesBack) {
  const auto window = demoWindow();
  for (const auto& requirement : window.requirements) {
    for (int field = 0; field < int(RequirementField::kCount); ++field) {
      auto copy = requirement;
      const QString text = fieldText(requirement, RequirementField(field));
      EXPECT_EQ(setField(copy, RequirementField(field), text), QString()) << requirement.name << ' ' << field;
      EXPECT_EQ(fieldText(copy, RequirementField(field)), text) << requirement.name << ' ' << field;
    }
  }
}

TEST(RequirementFields, LimitsTakeADecimalCommaAndTc) {
  window::Requirement requirement;
  EXPECT_EQ(setField(requirement, RequirementField::kUpper, QStringLiteral("2,5")), QString());
  EXPECT_DOUBLE_EQ(std::get<double>(*requirement.upper), 2.5);
  EXPECT_EQ(setField(requirement, RequirementField::kUpper, QStringLiteral("Tc-5")), QString());
  EXPECT_DOUBLE_EQ(std::get<window::TcOffset>(*requirement.upper).offset_C, -5);
  EXPECT_NE(setField(requirement, RequirementField::kUpper, QStringLiteral("warm")), QString());
  EXPECT_DOUBLE_EQ(std::get<window::TcOffset>(*requirement.upper).offset_C, -5);
}

TEST(RequirementFields, TheNextRevisionCountsOn) {
  EXPECT_EQ(nextRevision("1"), QStringLiteral("2"));
  EXPECT_EQ(nextRevision("rev9"), QStringLiteral("rev10"));
  EXPECT_EQ(nextRevision("C"), QStringLiteral("D"));
  EXPECT_EQ(nextRevision(std::nullopt), QStringLiteral("2"));
}

TEST(WindowModel, SaysWhatIsWrongWhileItIsTypedAndTellsEveryChange) {
  WindowModel model;
  model.setWindow(demoWindow());
  EXPECT_EQ(model.problem(), QString());
  int told = 0;
  QObject::connect(&model, &WindowModel::edited, &model, [&] { ++told; });
  int peak = 0;
  while (model.draft().requirements[std::size_t(peak)].name != "peak") ++peak;
  const auto lower = model.index(peak, int(RequirementField::kLower));
  EXPECT_NE(model.problemWith(lower, QStringLiteral("260")), QString());  // above the upper limit of 250
  EXPECT_EQ(model.problemWith(lower, QStringLiteral("236")), QString());
  model.setData(lower, QStringLiteral("260"), Qt::EditRole);
  EXPECT_NE(model.problem(), QString());
  EXPECT_EQ(told, 1);  // sound or not: each is a step of undo
  model.setData(lower, QStringLiteral("abc"), Qt::EditRole);
  EXPECT_TRUE(model.problem().contains(QStringLiteral("abc")));
  EXPECT_EQ(told, 2);
  model.setData(lower, QStringLiteral("236"), Qt::EditRole);
  EXPECT_EQ(model.problem(), QString());
  EXPECT_EQ(told, 3);
  EXPECT_NE(windowProblem(model.before()), QString());
  // Bad in two cells: the one that stands there is told while the other is typed.
  model.setData(lower, QStringLiteral("abc"), Qt::EditRole);
  const auto upper = model.index(peak, int(RequirementField::kUpper));
  EXPECT_TRUE(model.problemWith(upper, QStringLiteral("251")).contains(QStringLiteral("abc")));
}

TEST(WindowModel, ANumberOfTheWindowThatIsNoneStaysAsItIsTypedAndIsTold) {
  WindowModel model;
  model.setWindow(demoWindow());
  const auto solidus_C = model.draft().solidus_C;
  model.type(WindowNumber::kSolidus, QStringLiteral("21x"), 1);
  EXPECT_EQ(model.problem(), QStringLiteral("Solidus: “21x” is no number"));
  EXPECT_EQ(model.text(WindowNumber::kSolidus), QStringLiteral("21x"));
  EXPECT_EQ(model.draft().solidus_C, solidus_C);
  EXPECT_EQ(windowProblem(model.before()), QString());  // what an undo goes back to
  model.type(WindowNumber::kInstrument, {}, 2);         // a window has one
  model.type(WindowNumber::kSolidus, {}, 1);            // and may have no solidus
  EXPECT_EQ(model.problem(), QStringLiteral("Instrument: “” is no number"));
  model.type(WindowNumber::kInstrument, QStringLiteral("0,5"), 2);
  EXPECT_EQ(model.problem(), QString());
  EXPECT_EQ(model.draft().solidus_C, std::nullopt);
  EXPECT_EQ(model.draft().uncertainty.instrument_C, 0.5);
}

}  // namespace
}  // namespace ovenwright::desktop
