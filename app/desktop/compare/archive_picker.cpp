#include "app/desktop/compare/archive_picker.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/compare/compare_model.h"
#include "app/desktop/lots/runs_model.h"
#include "app/desktop/lots/runs_table.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {
namespace {

constexpr int kTyping_ms = 250;
constexpr std::size_t kMost = kMostCompared;

}  // namespace

ArchivePicker::ArchivePicker(ArchiveLink* archive, QWidget* parent)
    : QDialog(parent),
      m_model(new RunsModel(archive, this)),
      m_table(new RunsTable(m_model)),
      m_words(new QLineEdit),
      m_state(new QLabel),
      m_take(new QPushButton(tr("&Compare"))) {
  setWindowTitle(tr("Runs of the archive"));
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_words->setPlaceholderText(tr("Lot, board or words"));
  m_words->setAccessibleName(tr("Find runs by lot, board or words"));
  m_words->setClearButtonEnabled(true);
  m_table->setAccessibleName(tr("Runs of the archive"));
  m_table->setTheme(theme);
  m_table->setColumnHidden(RunsModel::kSheet, true);  // it speaks of printing
  m_state->setWordWrap(true);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  buttons->addButton(m_take, QDialogButtonBox::AcceptRole);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(m_words);
  layout->addWidget(m_table, 1);
  layout->addWidget(m_state);
  layout->addWidget(buttons);
  resize(int(theme.px(860)), int(theme.px(460)));
  m_typing.setSingleShot(true);
  m_typing.setInterval(kTyping_ms);
  connect(m_words, &QLineEdit::textChanged, &m_typing, qOverload<>(&QTimer::start));
  connect(&m_typing, &QTimer::timeout, this, &ArchivePicker::find);
  connect(m_model, &RunsModel::listed, this, [this] {
    m_table->fitColumns();
    refresh();
  });
  connect(m_model, &RunsModel::marksChanged, this, &ArchivePicker::refresh);
  connect(m_model, &RunsModel::failed, this, [this](const Error& error) {
    m_trouble = errorText(error);
    refresh();
  });
  connect(m_table, &RunsTable::currentRunChanged, this, &ArchivePicker::refresh);
  connect(m_table, &RunsTable::openWanted, this, &ArchivePicker::take);
  connect(m_take, &QPushButton::clicked, this, &ArchivePicker::take);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
}

void ArchivePicker::setFormat(const Format& format) { m_model->setFormat(format); }

void ArchivePicker::showAnew() {
  m_model->clearMarks();
  find();
  show();
  raise();
  activateWindow();
  m_words->setFocus();
}

void ArchivePicker::find() {
  m_trouble.clear();
  archive::Filter filter;
  filter.latestOnly = true;
  filter.text = m_words->text().trimmed().toStdString();
  m_model->setFilter(filter, archive::Order::kNewestFirst);
}

std::vector<std::string> ArchivePicker::chosen() const {
  auto ids = m_model->marked();
  if (ids.empty())
    if (const auto current = m_table->currentRun()) ids.push_back(*current);
  return ids;
}

void ArchivePicker::refresh() {
  const auto ids = chosen();
  m_take->setEnabled(!ids.empty() && ids.size() <= kMost);
  if (!m_trouble.isEmpty())
    m_state->setText(m_trouble);
  else if (m_model->rowCount() == 0)
    m_state->setText(tr("No run of the archive has these words."));
  else if (ids.size() > kMost)
    m_state->setText(tr("%n runs are marked: %1 at most.", nullptr, int(ids.size())).arg(kMost));
  else
    m_state->setText(
        tr("The chosen run becomes B. Space marks: of two marked runs the older becomes A; more are put into two "
           "groups."));
}

void ArchivePicker::take() {
  const auto ids = chosen();
  if (ids.empty() || ids.size() > kMost) return;
  close();
  emit picked(ids);
}

}  // namespace ovenwright::desktop
