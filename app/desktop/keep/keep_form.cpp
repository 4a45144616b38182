#include "app/desktop/keep/keep_form.h"

#include <QComboBox>
#include <QCompleter>
#include <QDateTimeEdit>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/archive/log_labels.h"
#include "app/desktop/archive/archive_link.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {
namespace {

constexpr double kLotWidth_px = 130, kSerialWidth_px = 120, kOperatorWidth_px = 140;

KeepJob::Log logOf(const OpenLog& log, std::optional<std::size_t> run) {
  return {log.source, log.checked, log.setup, run};
}

bool isKnown(const OpenLog& log) { return log.settled && !log.error && log.checked; }

}  // namespace

KeepForm::KeepForm(Document* document, Settings* settings, ArchiveLink* link, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_settings(settings),
      m_link(link),
      m_job(new KeepJob(link, this)),
      m_lot(new QLineEdit),
      m_serial(new QLineEdit),
      m_operator(new QLineEdit),
      m_time(new QDateTimeEdit),
      m_timeFrom(new QLabel),
      m_message(new QLabel),
      m_what(new QComboBox),
      m_keep(new QPushButton(tr("Keep"))),
      m_close(new QPushButton(tr("Close"))) {
  setAccessibleName(tr("Keep in the record"));
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Window);
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* fields = new QWidget;
  auto* flow = new FlowRow(fields);
  flow->setContentsMargins({});
  flow->setSpacing(int(theme.px(8)));
  const auto add = [&](const QString& label, QWidget* field, double width_px) {
    auto* pair = new QWidget;
    auto* row = new QHBoxLayout(pair);
    row->setContentsMargins({});
    row->setSpacing(int(theme.px(6)));
    auto* text = new QLabel(label);
    text->setFont(theme.font(12));
    text->setBuddy(field);
    field->setAccessibleName(QString(label).remove(u'&'));
    if (width_px > 0) field->setFixedWidth(int(theme.px(width_px)));
    row->addWidget(text);
    row->addWidget(field);
    flow->addWidget(pair);
    return pair;
  };
  add(tr("Lot"), m_lot, kLotWidth_px);
  add(tr("Board serial"), m_serial, kSerialWidth_px);
  add(tr("O&perator"), m_operator, kOperatorWidth_px);
  m_time->setDisplayFormat(QStringLiteral("yyyy-MM-dd HH:mm:ss"));
  m_time->setCalendarPopup(true);
  m_timeFrom->setFont(theme.font(12));
  add(tr("Time of run"), m_time, 0)->layout()->addWidget(m_timeFrom);
  m_what->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  m_whatPair = add(tr("Wh&at"), m_what, 0);
  auto* buttons = new QWidget;
  auto* buttons_row = new QHBoxLayout(buttons);
  buttons_row->setContentsMargins({});
  buttons_row->setSpacing(int(theme.px(8)));
  for (QPushButton* button : {m_keep, m_close}) {
    button->setAutoDefault(false);
    buttons_row->addWidget(button);
  }
  flow->setSplit(flow->count());
  flow->addWidget(buttons);
  m_message->setWordWrap(true);
  m_message->setFont(theme.font(12));
  auto* body = new QVBoxLayout;
  body->setContentsMargins(int(theme.px(16)), int(theme.px(8)), int(theme.px(12)), int(theme.px(8)));
  body->setSpacing(int(theme.px(4)));
  body->addWidget(fields);
  body->addWidget(m_message);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addLayout(body);
  layout->addWidget(new Hairline);
  QSizePolicy low(QSizePolicy::Preferred, QSizePolicy::Maximum);
  low.setHeightForWidth(true);
  setSizePolicy(low);

  connect(m_keep, &QPushButton::clicked, this, &KeepForm::keep);
  connect(m_close, &QPushButton::clicked, this, &KeepForm::close);
  connect(m_lot, &QLineEdit::textChanged, this, &KeepForm::refresh);
  connect(m_what, &QComboBox::activated, this, &KeepForm::refreshTime);
  connect(m_time, &QDateTimeEdit::dateTimeChanged, this, [this] {
    m_timeTyped = true;
    refreshTime();
  });
  connect(m_job, &KeepJob::kept, this, &KeepForm::tell);
  connect(m_job, &KeepJob::failed, this, &KeepForm::tellTrouble);
  for (const auto changed : {&Document::currentChanged, &Document::logsChanged, &Document::setupChanged})
    connect(document, changed, this, [this] {
      if (!isHidden()) fill();
    });
  connect(link, &ArchiveLink::statusChanged, this, &KeepForm::refresh);
  style();
  hide();
}

KeepForm::~KeepForm() = default;

void KeepForm::open() {
  m_filledFrom.reset();
  m_operator->setText(m_settings->operatorName());
  fill();
  show();
  QLineEdit* first = m_lot->text().isEmpty() ? m_lot : m_serial;
  first->setFocus(Qt::ShortcutFocusReason);
  first->selectAll();
  // Lots that are there already are offered while one is typed.
  m_link->lots(this, {}, [this](Result<std::vector<archive::LotSummary>> lots) {
    if (!lots) return;
    QStringList names;
    for (const auto& lot : *lots) names << QString::fromStdString(lot.lot);
    auto* completer = new QCompleter(names, m_lot);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    delete m_lot->completer();
    m_lot->setCompleter(completer);
  });
}

void KeepForm::close() {
  if (isHidden()) return;
  hide();
  emit closed();
}

KeepForm::What KeepForm::what() const { return What(m_what->currentData().toInt()); }

std::vector<KeepJob::Log> KeepForm::logs() const {
  std::vector<KeepJob::Log> all;
  const OpenLog* current = m_document->current();
  if (!current) return all;
  if (what() != What::kAll) {
    if (isKnown(*current))
      all.push_back(logOf(*current, what() == What::kRun ? std::optional(current->run) : std::nullopt));
    return all;
  }
  for (const auto& log : m_document->logs()) {
    if (!isKnown(*log)) return {};
    all.push_back(logOf(*log, std::nullopt));
  }
  return all;
}

void KeepForm::fill() {
  const OpenLog* log = m_document->current();
  const int before = m_what->currentData().toInt();
  m_what->clear();
  if (log && log->checked) {
    m_what->addItem(tr("this run"), int(What::kRun));
    const int runs = int(log->checked->views.size()), open = int(m_document->logs().size());
    if (runs > 1) m_what->addItem(tr("all %n runs of this log", nullptr, runs), int(What::kLog));
    if (open > 1) m_what->addItem(tr("all %n open logs", nullptr, open), int(What::kAll));
    m_what->setCurrentIndex(std::max(0, m_what->findData(before)));
  }
  m_whatPair->setVisible(m_what->count() > 1);  // nothing to choose from is no control
  const bool same = m_filledFrom == m_document->currentPointer() && log && m_filledRun == log->run;
  if (!same && log && log->checked) {
    const bool other = m_filledFrom != m_document->currentPointer();
    m_filledFrom = m_document->currentPointer();
    m_filledRun = log->run;
    m_timeTyped = false;
    const auto labels = archive::labelsOf(log->checked->log.reading);
    if (other) {
      if (!labels.lot.isEmpty() || m_lot->text().isEmpty()) m_lot->setText(labels.lot);
      m_serial->setText(labels.serial);
    }
    say({});
  }
  refreshTime();
  refresh();
}

void KeepForm::refreshTime() {
  const OpenLog* log = m_document->current();
  if (!log || !log->checked) return;
  m_time->setEnabled(what() == What::kRun);
  if (what() != What::kRun) {
    m_timeFrom->setText(tr("each log’s own"));
    return;
  }
  if (m_timeTyped) {
    m_timeFrom->setText(tr("as typed"));
    return;
  }
  const auto& checked = log->checked->log;
  const auto started = archive::startOf(archive::labelsOf(checked.reading), checked.runs[log->run].run.from_s);
  QDateTime shown;
  if (started) {
    shown = QDateTime::fromMSecsSinceEpoch(started->time_since_epoch().count());
    m_timeFrom->setText(tr("from the log’s clock"));
  } else if (!log->source.path.isEmpty()) {
    shown = QFileInfo(log->source.path).lastModified();
    m_timeFrom->setText(tr("from its file: no date stands in the log"));
  } else {
    shown = QDateTime::currentDateTime();
    m_timeFrom->setText(tr("now: no date stands in the text"));
  }
  const QSignalBlocker blocker(m_time);
  m_time->setDateTime(shown);
}

void KeepForm::refresh() {
  const bool known = !logs().empty();
  m_keep->setEnabled(known && !m_job->isRunning());
  if (m_job->isRunning())
    say(m_link->status().slow ? tr("Keeping… The archive’s server is slow to answer.") : tr("Keeping…"));
  m_keep->setToolTip(known ? tr("Into %1").arg(place()) : tr("There is no result for the present setup"));
}

QString KeepForm::place() const {
  return m_link->isServer() ? m_link->where() : QFileInfo(m_link->where()).absoluteFilePath();
}

void KeepForm::keep() {
  if (m_job->isRunning()) return;
  const QString lot = m_lot->text().trimmed();
  if (lot.isEmpty()) {
    say(tr("Which lot is it? A record stands in a lot."), true);
    m_lot->setFocus();
    return;
  }
  KeepJob::Wish wish;
  wish.logs = logs();
  if (wish.logs.empty()) {
    say(tr("There is no result for the present setup"), true);
    return;
  }
  wish.labels.lot = lot.toStdString();
  wish.labels.serial = m_serial->text().trimmed().toStdString();
  wish.labels.operatorName = m_operator->text().trimmed().toStdString();
  if (what() == What::kRun && m_timeTyped)
    wish.labels.runAt = archive::Moment{std::chrono::milliseconds{m_time->dateTime().toMSecsSinceEpoch()}};
  m_settings->setOperatorName(m_operator->text().trimmed());
  m_job->start(std::move(wish));
  refresh();
}

void KeepForm::tell(const std::vector<KeepJob::Kept>& runs) {
  QStringList added, already;
  QString lot;
  for (const auto& run : runs) {
    if (run.already) {
      already << (run.lot.isEmpty()
                      ? tr("This pass of %1 is kept already, as %2.").arg(run.run, run.id)
                      : tr("This pass of %1 is kept already, in lot %2, as %3.").arg(run.run, run.lot, run.id));
    } else {
      added << run.id;
      lot = run.lot;
    }
  }
  QStringList said;
  if (added.size() == 1) {
    said << tr("Kept as %1 in lot %2.").arg(added.first(), lot);
  } else if (!added.isEmpty()) {
    said << tr("%n runs are kept in lot %1, as %2 to %3.", nullptr, int(added.size()))
                .arg(lot, added.first(), added.last());
  }
  if (!added.isEmpty() && m_link->status().state.waiting > 0)
    said << tr("The server does not have it yet: it waits on this computer.");
  constexpr qsizetype kMost = 3;
  said << already.mid(0, kMost);
  if (already.size() > kMost) said << tr("%n more are kept already.", nullptr, int(already.size() - kMost));
  const QString text = paragraph(said);
  if (already.isEmpty()) {
    close();
  } else {
    say(text);
  }
  emit noted(text);
  refresh();
}

void KeepForm::tellTrouble(const Error& error) {
  say(tr("Nothing was kept: %1").arg(errorWithFile(error)), true);
  refresh();
}

void KeepForm::say(const QString& text, bool trouble) {
  m_message->setText(text);
  m_message->setVisible(!text.isEmpty());
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  Appearance::ink(m_message, trouble ? theme.signal : theme.secondary);
}

void KeepForm::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  Appearance::fillWithAccent(m_keep, theme);
  Appearance::ink(m_timeFrom, theme.quiet);
}

bool KeepForm::event(QEvent* event) {
  // Escape closes the form before it means anything to the window.
  if (event->type() == QEvent::ShortcutOverride && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
    event->accept();
  return QWidget::event(event);
}

void KeepForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return close();
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return m_close->hasFocus() ? close() : keep();
  QWidget::keyPressEvent(event);
}

void KeepForm::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
