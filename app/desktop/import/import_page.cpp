#include "app/desktop/import/import_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/import/channels_panel.h"
#include "app/desktop/import/file_table.h"
#include "app/desktop/import/layout_edit.h"
#include "app/desktop/import/plain_lines.h"
#include "app/desktop/import/reading_panel.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
namespace {

constexpr double kPanelWidth_px = 352;
constexpr double kNarrow_px = 760;  // here the panel stands under the rest
constexpr double kLeastFile_px = 130, kLeastChannels_px = 150, kLeastPanel_px = 330;

}  // namespace

ImportPage::ImportPage(Document* document, LayoutMemory* memory, Settings* settings, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_settings(settings),
      m_fileNote(new ElidedLabel),
      m_channelsNote(new ElidedLabel),
      m_file(new FileTable),
      m_channels(new ChannelsPanel(document)),
      m_reading(new ReadingPanel(document, memory)),
      m_rows(new HairlineSplitter(Qt::Vertical)),
      m_columns(new HairlineSplitter(Qt::Horizontal)) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto block = [&](const QString& title, ElidedLabel* note, QWidget* content) {
    auto* widget = new QWidget;
    auto* layout = new QVBoxLayout(widget);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(int(theme.px(16)), int(theme.px(7)), int(theme.px(12)), int(theme.px(7)));
    auto* heading = new QLabel(title);
    heading->setFont(theme.font(13, true));
    note->setFont(theme.font(12));
    note->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    note->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    head->addWidget(heading);
    head->addWidget(note, 1);
    layout->addLayout(head);
    layout->addWidget(content, 1);
    return widget;
  };
  m_rows->addWidget(block(tr("What stands in the file"), m_fileNote, m_file));
  m_rows->addWidget(block(tr("Channels"), m_channelsNote, m_channels));
  m_rows->setStretchFactor(0, 2);
  m_rows->setStretchFactor(1, 3);
  m_columns->addWidget(m_rows);
  m_columns->addWidget(m_reading);
  m_columns->setStretchFactor(0, 1);
  m_columns->setSizes({int(theme.px(1000)), int(theme.px(kPanelWidth_px))});
  if (const auto state = settings->importRows(); !state.isEmpty()) m_rows->restoreState(state);
  if (const auto state = settings->importColumns(); !state.isEmpty()) m_columns->restoreState(state);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins({});
  layout->addWidget(m_columns);
  connect(document, &Document::currentChanged, this, [this] {
    m_failure.reset();
    if (isVisible()) refresh();
  });
  connect(m_file, &FileTable::columnPressed, this, &ImportPage::columnMenu);
  connect(m_channels, &ChannelsPanel::boardWanted, this, &ImportPage::boardWanted);
  connect(m_channels, &ChannelsPanel::showWanted, this, &ImportPage::showWanted);
}

void ImportPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const bool narrow = width() < theme.px(kNarrow_px);
  const auto orientation = narrow ? Qt::Vertical : Qt::Horizontal;
  if (m_columns->orientation() == orientation) return;
  m_columns->setOrientation(orientation);
  m_file->setMinimumHeight(narrow ? int(theme.px(kLeastFile_px)) : 0);
  m_channels->setMinimumHeight(narrow ? int(theme.px(kLeastChannels_px)) : 0);
  m_reading->setMinimumHeight(narrow ? int(theme.px(kLeastPanel_px)) : 0);
  if (!narrow) m_columns->setSizes({width() - int(theme.px(kPanelWidth_px)), int(theme.px(kPanelWidth_px))});
}

void ImportPage::saveState() {
  if (!m_wasShown || m_columns->orientation() == Qt::Vertical) return;  // not laid out as it usually is
  m_settings->setImportRows(m_rows->saveState());
  m_settings->setImportColumns(m_columns->saveState());
}

void ImportPage::showFailure(const std::optional<Document::Failure>& failure) {
  m_failure = failure;
  if (isVisible()) refresh();
}

void ImportPage::setFormat(const Format& format) {
  m_format = format;
  if (isVisible()) refresh();
}

void ImportPage::focusAbout(const QString& about) {
  const auto view = m_document->view();
  if (about != u"reversed" || !view) return m_reading->focusAbout(QString(about).replace(u' ', u'_'));
  // Channels of the run stand in the order of the columns in use.
  std::size_t channel = 0;
  for (const auto& column : view->reading().layout.channels) {
    if (column.reversed) return m_channels->focusChannel(channel);
    channel += column.use;
  }
}

void ImportPage::focusChannel(std::size_t channel) { m_channels->focusChannel(channel); }

QList<QWidget*> ImportPage::parts() const { return {m_file, m_channels, m_reading}; }

void ImportPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_wasShown = true;
  refresh();
}

void ImportPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if ((event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) && isVisible()) refresh();
}

void ImportPage::refresh() {
  const auto view = m_document->view();
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_channels->setVisible(!m_failure);
  if (m_failure) {
    const auto line = std::size_t(std::max(0, m_failure->error.where.line));
    m_file->fileModel()->setPlainLines(plainLines(m_failure->log->source, line), line);
    m_file->setTheme(theme);
    m_file->fitColumns();
    m_fileNote->setWords(m_failure->log->source.name);
    m_channelsNote->setWords(tr("Known once the log can be read"));
    m_reading->refreshFailure(*m_failure, theme);
    return;
  }
  if (!view || m_linesOf.lock() != view) {  // the log is read again for them: once for each judgement of it
    m_lines = view ? faultLines(m_document->current()->source, *view) : FaultLines{};
    m_linesOf = view;
  }
  m_file->fileModel()->setRun(view, m_lines);
  m_file->setTheme(theme);
  m_file->fitColumns();
  m_channels->refresh(theme, m_format);
  m_reading->refresh(theme, m_format);
  if (!view) return;
  const auto& file = view->reading().file;
  const QString digest = QString::fromStdString(file.sha256);
  m_fileNote->setWords(
      tr("%1, %2 bytes, SHA-256 %3…%4")
          .arg(m_document->current()->source.name, m_format.count(file.bytes), digest.left(4), digest.right(4)));
  m_fileNote->setTip(digest);
  m_channelsNote->setWords(
      view->board() ? tr("Placements come from the board %1").arg(QString::fromStdString(view->board()->identity.name))
                    : QString());
}

void ImportPage::columnMenu(int column, const QPoint& at) {
  if (!m_document->view()) return;
  QMenu menu(this);
  const auto role = m_file->fileModel()->role(column - 1);
  const auto add = [&](const QString& text, FileModel::Role of, const std::function<void(log::Layout&)>& change) {
    QAction* action = menu.addAction(text);
    action->setCheckable(true);
    action->setChecked(role == of);
    connect(action, &QAction::triggered, this, [this, text, change] { editLayout(m_document, text, change); });
  };
  const auto& found = m_document->view()->reading().layout;
  const auto setUse = [column, found](log::Layout& layout, bool use) {
    if (layout.channels.empty()) layout.channels = found.channels;
    const auto channel = std::ranges::find(layout.channels, column, &log::Layout::ChannelColumn::column);
    if (channel != layout.channels.end()) {
      channel->use = use;
    } else if (use) {
      log::Layout::ChannelColumn added;
      added.column = column;
      layout.channels.push_back(added);
      std::ranges::sort(layout.channels, {}, &log::Layout::ChannelColumn::column);
    }
  };
  add(tr("Take column %1 for the time").arg(column), FileModel::Role::kTime, [column, setUse](log::Layout& layout) {
    layout.time = {};
    layout.time.columns = {column};
    setUse(layout, false);
  });
  add(tr("Take column %1 for a thermocouple").arg(column), FileModel::Role::kChannel,
      [setUse](log::Layout& layout) { setUse(layout, true); });
  add(tr("Do not judge column %1").arg(column), FileModel::Role::kOther,
      [setUse](log::Layout& layout) { setUse(layout, false); });
  menu.exec(at);
}

}  // namespace ovenwright::desktop
