#include <QLabel>

#include "app/desktop/import/import_page.h"
#include "tests/desktop/window/window_fixture.h"

// A thermocouple wired the wrong way round, put right beside its fault.
namespace ovenwright::desktop {
namespace {

QLabel* linkWith(QWidget* window, const QString& words) {
  for (auto* label : window->findChildren<QLabel*>())
    if (label->isVisible() && label->text().contains(u'>' + words + u'<')) return label;
  return nullptr;
}

bool hasFault(const RunView& view, run::FaultKind kind) {
  return std::ranges::any_of(view.run().channels, [kind](const run::Channel& channel) {
    return std::ranges::any_of(channel.faults, [kind](const run::Fault& fault) { return fault.kind == kind; });
  });
}

TEST_F(WindowTest, ReversedChannelIsTurnedByItsLinkAndBackByUndo) {
  // Source: profiles/demo/README.md: in this log the wires of U12 corner are exchanged.
  drop({demo("tern_faults.txt")});
  settle();
  const auto before = m_document->view();
  ASSERT_NE(before, nullptr);
  ASSERT_TRUE(hasFault(*before, run::FaultKind::kReversedPolarity));
  m_window->showImport();
  QApplication::processEvents();
  auto* link = linkWith(m_window.get(), QStringLiteral("Turn its sign"));
  ASSERT_NE(link, nullptr);
  emit link->linkActivated(QStringLiteral("#"));
  settle();
  const auto turned = m_document->view();
  EXPECT_FALSE(hasFault(*turned, run::FaultKind::kReversedPolarity));
  const auto& columns = turned->reading().layout.channels;
  EXPECT_EQ(std::ranges::count(columns, true, &log::Layout::ChannelColumn::reversed), 1);
  const auto corner = std::ranges::find(columns, true, &log::Layout::ChannelColumn::reversed);
  EXPECT_EQ(corner->name, "U12 corner");
  const auto at = std::size_t(corner - columns.begin());
  // Algebra of the mirror: the coldest reading becomes as far above the start as it was below.
  EXPECT_GT(*turned->channels()[at].look.peak_C, 180);
  EXPECT_TRUE(std::ranges::any_of(turned->reading().read_as.assumed,
                                  [](const log::Assumption& assumed) { return assumed.about == "reversed"; }));
  QApplication::processEvents();
  EXPECT_NE(linkWith(m_window.get(), QStringLiteral("As in the file")), nullptr);
  m_document->undoStack()->undo();
  EXPECT_EQ(m_document->view(), before);
}

}  // namespace
}  // namespace ovenwright::desktop
