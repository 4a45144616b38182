#include "app/desktop/import/channels_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/desktop/import/fault_words.h"
#include "app/desktop/import/layout_edit.h"
#include "app/desktop/import/sparkline.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
namespace {

const QString kFaultsOf = QStringLiteral("faults of channel ");  // names of cells

constexpr double kTarget_px = 24;

constexpr std::array kKinds{board::Kind::kJoint, board::Kind::kBody, board::Kind::kBoard, board::Kind::kAir};

QString kindText(board::Kind kind) {
  switch (kind) {
    case board::Kind::kJoint:
      return ChannelsPanel::tr("Joint");
    case board::Kind::kBody:
      return ChannelsPanel::tr("Body");
    case board::Kind::kBoard:
      return ChannelsPanel::tr("Board");
    case board::Kind::kAir:
      return ChannelsPanel::tr("Air");
  }
  return {};
}

/// A line under a fault: what was done, and room for links beside or, where that is too long, under it.
QLayout* doneRow(QVBoxLayout* lines, const QString& words) {
  auto* row = new QWidget;
  auto* layout = new FlowRow(row);
  layout->setContentsMargins({});
  layout->setSpacing(QFontMetrics(row->font()).averageCharWidth() * 2);
  layout->setSplit(-1);
  layout->setRowSpacing(0);
  layout->addWidget(new QLabel(words));
  lines->addWidget(row);
  return layout;
}

}  // namespace

ChannelsPanel::ChannelsPanel(Document* document, QWidget* parent)
    : QWidget(parent), m_document(document), m_theme(widgets::Theme::fromPalette(palette(), font())) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setAccessibleName(tr("Channels"));
  scroll->setObjectName(QStringLiteral("scroll"));
  layout->addWidget(scroll);
}

void ChannelsPanel::refresh(const widgets::Theme& theme, const Format& format) {
  m_theme = theme;
  m_format = format;
  m_least = {};
  fill(Room::kAll);
}

void ChannelsPanel::fill(Room room) {
  // What had the focus gets it again: the rows are made anew at every edit.
  const QString focused = m_body && m_body->focusWidget() ? m_body->focusWidget()->accessibleName() : QString();
  const bool had_focus = m_body && m_body->focusWidget() && m_body->focusWidget()->hasFocus();
  build(room);
  for (const Room tried : {Room::kAll, Room::kFaultsUnder}) {
    if (m_room != tried) continue;
    // With the bar that scrolls down, so that its coming and going changes nothing.
    const int least = m_body->minimumSizeHint().width() + style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    m_least[std::size_t(tried)] = least;
    if (width() < least) build(tried == Room::kAll ? Room::kFaultsUnder : Room::kNoCourses);
  }
  if (!had_focus) return;
  for (auto* widget : m_body->findChildren<QWidget*>()) {
    if (widget->accessibleName() != focused || focused.isEmpty()) continue;
    widget->setFocus();
    break;
  }
}

void ChannelsPanel::focusChannel(std::size_t channel) {
  if (!m_body) return;
  const QString cell = kFaultsOf + QString::number(channel);
  auto* faults = m_body->findChild<QWidget*>(cell);
  if (!faults) return;
  QLabel* last = nullptr;  // the cure stands behind "Show"
  for (auto* label : faults->findChildren<QLabel*>())
    if (label->textInteractionFlags() & Qt::LinksAccessibleByKeyboard) last = label;
  if (!last) return;
  findChild<QScrollArea*>(QStringLiteral("scroll"))->ensureWidgetVisible(faults);
  last->setFocus(Qt::OtherFocusReason);
}

ChannelsPanel::Room ChannelsPanel::roomFor(int width) const {
  return width >= m_least[0] ? Room::kAll : width >= m_least[1] ? Room::kFaultsUnder : Room::kNoCourses;
}

void ChannelsPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (!m_body) return;
  // Not from within the layout that gives this size.
  const Room room = roomFor(width());
  if (room != m_room)
    QMetaObject::invokeMethod(
        this, [this, room] { fill(room); }, Qt::QueuedConnection);
}

void ChannelsPanel::build(Room room) {
  const auto& theme = m_theme;
  const auto& format = m_format;
  m_room = room;
  auto* scroll = findChild<QScrollArea*>(QStringLiteral("scroll"));
  m_body = new QWidget;
  m_body->setAutoFillBackground(true);
  m_body->setBackgroundRole(QPalette::Base);
  auto* outer = new QVBoxLayout(m_body);
  const int inset = int(theme.px(16));
  outer->setContentsMargins(inset, int(theme.px(8)), inset, int(theme.px(8)));
  m_grid = new QGridLayout;
  m_grid->setHorizontalSpacing(int(theme.px(12)));
  m_grid->setVerticalSpacing(int(theme.px(4)));
  outer->addLayout(m_grid);
  outer->addStretch(1);
  const auto view = m_document->view();
  if (view) {
    const QStringList headings{tr("Use"),
                               tr("In the log"),
                               tr("Placement"),
                               tr("Kind"),
                               tr("Course (dotted: oven entry)"),
                               tr("Range, %1").arg(format.unit(Format::Quantity::kTemperature)),
                               tr("Fault found, and what was done")};
    for (int column = 0; column < headings.size(); ++column) {
      if ((column == kFaults && room != Room::kAll) || (column == kCourse && room == Room::kNoCourses)) continue;
      auto* heading = new QLabel(headings[column]);
      heading->setFont(theme.font(12));
      heading->setWordWrap(true);
      Appearance::ink(heading, theme.secondary);
      m_grid->addWidget(heading, 0, column);
    }
    int row = 0;
    std::size_t used = 0;
    const auto nextRow = [&] {
      m_grid->addWidget(new Hairline, row + 1, 0, 1, int(headings.size()));
      return (row += 3) - 1;  // a row and its faults
    };
    for (const auto& column : view->reading().layout.channels) {
      // Channels of the run stand in the order of the columns in use.
      const bool in_run = column.use && used < view->channels().size();
      addRow(nextRow(), &column, in_run ? std::optional(used) : std::nullopt);
      used += in_run;
    }
    while (used < view->channels().size()) addRow(nextRow(), nullptr, used++);
  }
  m_grid->setColumnStretch(room == Room::kNoCourses ? kName : kCourse, 2);
  m_grid->setColumnStretch(kFaults, room == Room::kAll ? 3 : 0);
  scroll->setWidget(m_body);
}

void ChannelsPanel::addRow(int row, const log::Layout::ChannelColumn* column, std::optional<std::size_t> channel) {
  const auto view = m_document->view();
  const QString name =
      channel ? QString::fromStdString(view->run().channels[*channel].name) : QString::fromStdString(column->name);
  if (column && column->column > 0) {
    auto* box = new QCheckBox;
    box->setChecked(column->use);
    box->setAccessibleName(tr("Use %1").arg(name));
    connect(box, &QCheckBox::clicked, this, [this, number = column->column](bool on) { use(number, on); });
    m_grid->addWidget(box, row, kUse);
  }
  auto* label = new QLabel(name);
  if (!channel) Appearance::ink(label, m_theme.secondary);
  m_grid->addWidget(label, row, kName);
  if (!channel) {
    auto* unused = new QLabel(tr("not used"));
    Appearance::ink(unused, m_theme.secondary);
    m_grid->addWidget(unused, row, kPlacement, 1, 2);
    return;
  }
  const auto& board = view->board();
  const auto& cleaned = view->run().channels[*channel];
  const auto* placement = board ? board->placement(cleaned.name, cleaned.number) : nullptr;
  if (board) {
    auto* places = new QComboBox;
    places->setAccessibleName(tr("Placement of %1").arg(name));
    places->addItem(tr("none"));
    for (const auto& other : board->placements)
      places->addItem(QString::fromStdString(other.label.value_or(other.channel)));
    // A long name does not push the faults out of sight: the list that opens is as wide as it needs.
    places->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    places->setMinimumContentsLength(11);
    places->setCurrentIndex(placement ? int(placement - board->placements.data()) + 1 : 0);
    places->setToolTip(places->currentText());
    connect(places, &QComboBox::activated, this, [this, c = *channel](int index) { place(c, index - 1); });
    m_grid->addWidget(places, row, kPlacement);
  } else {
    auto* link = new QLabel(QStringLiteral("<a href=\"#\">%1</a>").arg(tr("Choose a board")));
    link->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    link->setAccessibleName(tr("Choose a board for %1").arg(name));
    link->setMinimumHeight(int(m_theme.px(kTarget_px)));
    connect(link, &QLabel::linkActivated, this, &ChannelsPanel::boardWanted);
    m_grid->addWidget(link, row, kPlacement);
  }
  auto* kinds = new QComboBox;
  kinds->setAccessibleName(tr("Kind of %1").arg(name));
  for (const board::Kind kind : kKinds) kinds->addItem(kindText(kind));
  kinds->setCurrentIndex(
      int(std::ranges::find(kKinds, placement ? placement->kind : board::Kind::kJoint) - kKinds.begin()));
  connect(kinds, &QComboBox::activated, this,
          [this, c = *channel](int index) { setKind(c, kKinds[std::size_t(index)]); });
  m_grid->addWidget(kinds, row, kKind);
  if (m_room != Room::kNoCourses) {
    auto* spark = new Sparkline;
    spark->show(view, *channel, false, m_theme);
    m_grid->addWidget(spark, row, kCourse);
  }
  const auto& shown = view->channels()[*channel];
  QString range = tr("no reading");
  if (shown.trace) {
    const auto extremes = shown.pyramid.extremes(shown.trace->temperature_C(), 0, shown.trace->size());
    range = tr("%1 to %2").arg(m_format.temperature(extremes.lowest), m_format.temperature(extremes.highest));
  }
  m_grid->addWidget(new QLabel(range), row, kRange);
  addFaults(row, *channel, column);
}

void ChannelsPanel::addFaults(int row, std::size_t channel, const log::Layout::ChannelColumn* column) {
  const auto view = m_document->view();
  const auto& cleaned = view->run().channels[channel];
  auto* cell = new QWidget;
  cell->setObjectName(kFaultsOf + QString::number(channel));
  auto* lines = new QVBoxLayout(cell);
  lines->setContentsMargins({});
  lines->setSpacing(0);
  const auto link = [&](const QString& words, const QString& about) {
    auto* label = new QLabel(QStringLiteral("<a href=\"#\">%1</a>").arg(words.toHtmlEscaped()));
    label->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    label->setAccessibleName(QStringLiteral("%1: %2").arg(words, about));
    label->setMinimumHeight(int(m_theme.px(kTarget_px)));
    return label;
  };
  constexpr std::size_t kMostShown = 3;
  for (std::size_t i = 0; i < std::min(cleaned.faults.size(), kMostShown); ++i) {
    const auto& fault = cleaned.faults[i];
    const QString text = faultLine(fault, view->run(), view->origin_s(), m_format);
    auto* what = new QLabel(text);
    what->setWordWrap(true);
    Appearance::ink(what, m_theme.signal);
    lines->addWidget(what);
    auto* done = doneRow(
        lines, fault.action == run::FaultAction::kRemoved ? tr("Removed") : tr("Flagged, values as in the file"));
    auto* show = link(tr("Show"), text);
    connect(show, &QLabel::linkActivated, this,
            [this, channel, fault] { emit showWanted(channel, fault.from_s, fault.to_s); });
    done->addWidget(show);
    if (fault.kind == run::FaultKind::kSpike && fault.action == run::FaultAction::kRemoved) {
      auto* keep = link(tr("Keep it"), text);
      connect(keep, &QLabel::linkActivated, this, [this, number = cleaned.number] { keepSpikes(number, true); });
      done->addWidget(keep);
    }
    if (fault.kind == run::FaultKind::kReversedPolarity && column && !column->reversed) {
      auto* turned = link(tr("Turn its sign"), text);
      connect(turned, &QLabel::linkActivated, this, [this, column = *column] { turn(column, true); });
      done->addWidget(turned);
    }
  }
  if (cleaned.faults.size() > kMostShown) {
    lines->addWidget(new QLabel(tr("%n more", nullptr, int(cleaned.faults.size() - kMostShown))));
  }
  const bool reversed = column && column->reversed;
  if (reversed) {
    auto* done = doneRow(lines, tr("Its sign is turned"));
    auto* back = link(tr("As in the file"), QString::fromStdString(cleaned.name));
    connect(back, &QLabel::linkActivated, this, [this, column = *column] { turn(column, false); });
    done->addWidget(back);
  }
  const auto& kept = m_document->setup().keep_spikes;
  if (std::ranges::find(kept, cleaned.number) != kept.end()) {
    auto* again = link(tr("Remove spikes again"), QString::fromStdString(cleaned.name));
    connect(again, &QLabel::linkActivated, this, [this, number = cleaned.number] { keepSpikes(number, false); });
    lines->addWidget(again);
  } else if (cleaned.faults.empty() && !reversed) {
    if (m_room != Room::kAll) {
      delete cell;
      return;
    }
    auto* none = new QLabel(tr("none"));
    Appearance::ink(none, m_theme.secondary);
    lines->addWidget(none);
  }
  if (m_room == Room::kAll)
    m_grid->addWidget(cell, row, kFaults);
  else
    m_grid->addWidget(cell, row + 1, kName, 1, kRange - kName + 1);
}

void ChannelsPanel::use(int column, bool on) {
  editLayout(m_document, on ? tr("Use a channel") : tr("Leave a channel out"), [this, column, on](log::Layout& layout) {
    if (layout.channels.empty()) layout.channels = m_document->view()->reading().layout.channels;
    const auto channel = std::ranges::find(layout.channels, column, &log::Layout::ChannelColumn::column);
    if (channel != layout.channels.end()) channel->use = on;
  });
}

void ChannelsPanel::turn(const log::Layout::ChannelColumn& column, bool on) {
  const QString text = on ? tr("Turn the sign of %1") : tr("%1 as in the file");
  editLayout(m_document, text.arg(QString::fromStdString(column.name)), [this, column, on](log::Layout& layout) {
    if (layout.channels.empty()) layout.channels = m_document->view()->reading().layout.channels;
    for (auto& channel : layout.channels)
      if (column.column > 0 ? channel.column == column.column : channel.name == column.name) channel.reversed = on;
  });
}

void ChannelsPanel::place(std::size_t channel, int placement) {
  const auto view = m_document->view();
  const auto& cleaned = view->run().channels[channel];
  check::Request setup = m_document->setup();
  auto& placements = setup.board->placements;
  const auto* now = setup.board->placement(cleaned.name, cleaned.number);
  const int now_index = now ? int(now - placements.data()) : -1;
  if (now_index == placement) return;
  if (placement < 0) {
    placements.erase(placements.begin() + now_index);
  } else {
    // The thermocouple that was there changes places with this one, or is not placed any more.
    auto& taken = placements[std::size_t(placement)];
    if (now_index >= 0) placements[std::size_t(now_index)].channel = taken.channel;
    taken.channel = cleaned.name;
  }
  setup.board->identity.sha256.clear();
  m_document->edit(tr("Place %1").arg(QString::fromStdString(cleaned.name)), std::move(setup));
}

void ChannelsPanel::setKind(std::size_t channel, board::Kind kind) {
  const auto& cleaned = m_document->view()->run().channels[channel];
  check::Request setup = m_document->setup();
  if (!setup.board) {
    setup.board.emplace();
    setup.board->identity.name = tr("Placements of this log").toStdString();
  }
  auto& placements = setup.board->placements;
  const auto* placement = setup.board->placement(cleaned.name, cleaned.number);
  if (!placement) {
    auto& added = placements.emplace_back();
    added.channel = cleaned.name;
    placement = &added;
  }
  placements[std::size_t(placement - placements.data())].kind = kind;
  setup.board->identity.sha256.clear();
  m_document->edit(tr("Kind of %1").arg(QString::fromStdString(cleaned.name)), std::move(setup));
}

void ChannelsPanel::keepSpikes(int number, bool keep) {
  check::Request setup = m_document->setup();
  std::erase(setup.keep_spikes, number);
  if (keep) setup.keep_spikes.push_back(number);
  m_document->edit(keep ? tr("Keep spikes") : tr("Remove spikes"), std::move(setup));
}

}  // namespace ovenwright::desktop
