#include "app/desktop/text/spreadsheet_text.h"

#include <gtest/gtest.h>

#include "app/desktop/text/format.h"

namespace ovenwright::desktop {
namespace {

TEST(SpreadsheetText, NumbersStayNumbers) {
  // A minus and the thin spaces of the screen as a keyboard has them: what a spreadsheet reads as a number.
  EXPECT_EQ(spreadsheetCell(QString::fromUtf8("\u221239\u202f%")).toStdString(), "-39 %");
  EXPECT_EQ(spreadsheetCell(QString::fromUtf8("\u22122,71")).toStdString(), "-2,71");
  EXPECT_EQ(spreadsheetCell(QString::fromUtf8("55\u2009%")).toStdString(), "55 %");
}

TEST(SpreadsheetText, AFormulaIsText) {
  EXPECT_EQ(spreadsheetRow({QStringLiteral("=1+1"), QStringLiteral("a\tb"), QStringLiteral("-x")}).toStdString(),
            "'=1+1\ta b\t'-x");
}

}  // namespace
}  // namespace ovenwright::desktop
