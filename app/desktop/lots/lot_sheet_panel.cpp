#include "app/desktop/lots/lot_sheet_panel.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

LotSheetPanel::LotSheetPanel(ArchiveLink* archive, Settings* settings, QWidget* parent)
    : QWidget(parent), m_archive(archive), m_settings(settings), m_count(new QLabel) {
  setAccessibleName(tr("Lot sheet"));
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* title = new QLabel(tr("Lot sheet"));
  title->setFont(theme.font(13, true));
  m_count->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(int(theme.px(16)), int(theme.px(8)), int(theme.px(16)), int(theme.px(8)));
  layout->addWidget(title);
  layout->addWidget(m_count);
  layout->addStretch(1);
  setRecords({});
}

void LotSheetPanel::setRecords(std::vector<std::string> ids) {
  m_ids = std::move(ids);
  m_count->setText(m_ids.empty() ? tr("Mark runs in the list to put them on a sheet.")
                                 : tr("%n run(s)", nullptr, int(m_ids.size())));
}

}  // namespace ovenwright::desktop
