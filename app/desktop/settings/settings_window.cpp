#include "app/desktop/settings/settings_window.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QDir>
#include <QEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QUrl>
#include <QUrlQuery>
#include <QVBoxLayout>

#include "app/archive/archive.h"
#include "app/desktop/archive/archive_link.h"
#include "app/desktop/lots/archive_words.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/notice.h"
#include "app/sheet/logo.h"
#include "app/sheet/record.h"

namespace ovenwright::desktop {
namespace {

constexpr double kWidth_px = 620;

bool isServerUrl(const QString& where) {
  return where.startsWith(QStringLiteral("postgresql://")) || where.startsWith(QStringLiteral("postgres://"));
}

bool holdsPassword(const QString& url) {
  const QUrl parsed(url);
  return !parsed.password().isEmpty() || QUrlQuery(parsed).hasQueryItem(QStringLiteral("password"));
}

}  // namespace

SettingsWindow::SettingsWindow(ArchiveLink* link, Settings* settings, QWidget* parent)
    : QDialog(parent),
      m_link(link),
      m_settings(settings),
      m_places(new QButtonGroup(this)),
      m_file(new QLineEdit),
      m_server(new QLineEdit),
      m_browse(new QPushButton(tr("&Choose…"))),
      m_take(new QPushButton(tr("&Use this archive"))),
      m_archiveState(new QLabel),
      m_passwordNote(new QLabel(tr("No password: it would be shown and kept in plain text here. It belongs into the "
                                   "password file or a service file of the server’s library (.pgpass)."))),
      m_company(new QLineEdit(settings->company())),
      m_operator(new QLineEdit(settings->operatorName())),
      m_logo(new QLineEdit(settings->logo())),
      m_paper(new QComboBox),
      m_logoProblem(new QLabel) {
  setWindowTitle(tr("Settings"));
  setModal(false);
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  auto* close_button = new QPushButton(tr("Close"));
  close_button->setAutoDefault(false);
  connect(close_button, &QPushButton::clicked, this, &SettingsWindow::close);
  auto* foot = new QHBoxLayout;
  foot->addStretch(1);
  foot->addWidget(close_button);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(inset, inset, inset, inset);
  layout->setSpacing(int(theme.px(12)));
  layout->addWidget(buildArchive());
  layout->addWidget(new Hairline);
  layout->addWidget(buildSheets());
  layout->addStretch(1);
  layout->addLayout(foot);
  resize(int(theme.px(kWidth_px)), sizeHint().height());

  // What is in use, which the settings need not name: a program may be started with another archive.
  if (link->isAt({})) {
    setPlace(Place::kThisComputer);
  } else {
    setPlace(link->isServer() ? Place::kServer : Place::kFile, link->where());
  }
  connect(m_places, &QButtonGroup::idToggled, this, &SettingsWindow::refresh);
  connect(m_file, &QLineEdit::textEdited, this, [this] { setPlace(Place::kFile, m_file->text()); });
  connect(m_server, &QLineEdit::textEdited, this, [this] { setPlace(Place::kServer, m_server->text()); });
  connect(m_browse, &QPushButton::clicked, this, &SettingsWindow::askFile);
  connect(m_take, &QPushButton::clicked, this, &SettingsWindow::takeArchive);
  connect(link, &ArchiveLink::statusChanged, this, &SettingsWindow::refresh);
  connect(m_company, &QLineEdit::textEdited, this, [this](const QString& text) {
    m_settings->setCompany(text);
    emit sheetsChanged();
  });
  connect(m_operator, &QLineEdit::textEdited, this, [this](const QString& text) { m_settings->setOperatorName(text); });
  connect(m_logo, &QLineEdit::textEdited, this, [this](const QString& text) { takeLogo(text.trimmed()); });
  connect(m_paper, &QComboBox::activated, this, [this] {
    m_settings->setPaper(sheet::Paper(m_paper->currentData().toInt()));
    emit sheetsChanged();
  });
  style();
  refresh();
}

QWidget* SettingsWindow::buildArchive() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* part = new QWidget;
  auto* title = new QLabel(tr("Archive: where runs are kept"));
  title->setFont(theme.font(15, true));
  const auto choice = [this](const QString& text, Place place) {
    auto* button = new QRadioButton(text);
    m_places->addButton(button, int(place));
    return button;
  };
  m_file->setAccessibleName(tr("File of the archive"));
  m_file->setPlaceholderText(QStringLiteral("archive.sqlite"));
  m_server->setAccessibleName(tr("Address of the server"));
  m_server->setPlaceholderText(QStringLiteral("postgresql://user@host:5432/database"));
  auto* own = new QLabel(QDir::toNativeSeparators(QString::fromStdString(archive::defaultArchive())));
  own->setFont(theme.font(12));
  own->setWordWrap(true);
  own->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_passwordNote->setFont(theme.font(12));
  m_passwordNote->setWordWrap(true);
  m_archiveState->setWordWrap(true);
  m_archiveState->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_notes << own << m_passwordNote;
  for (QPushButton* button : {m_browse, m_take}) button->setAutoDefault(false);
  auto* grid = new QGridLayout(part);
  grid->setContentsMargins({});
  grid->setHorizontalSpacing(int(theme.px(8)));
  grid->setColumnStretch(1, 1);
  grid->addWidget(title, 0, 0, 1, 3);
  grid->addWidget(choice(tr("This c&omputer"), Place::kThisComputer), 1, 0);
  grid->addWidget(own, 1, 1, 1, 2);
  grid->addWidget(choice(tr("A &file"), Place::kFile), 2, 0);
  grid->addWidget(m_file, 2, 1);
  grid->addWidget(m_browse, 2, 2);
  grid->addWidget(choice(tr("A PostgreSQL &server"), Place::kServer), 3, 0);
  grid->addWidget(m_server, 3, 1, 1, 2);
  grid->addWidget(m_passwordNote, 4, 1, 1, 2);
  grid->addWidget(m_archiveState, 5, 0, 1, 2);
  grid->addWidget(m_take, 5, 2);
  return part;
}

QWidget* SettingsWindow::buildSheets() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* part = new QWidget;
  auto* title = new QLabel(tr("Sheets and records"));
  title->setFont(theme.font(15, true));
  m_paper->addItem(QStringLiteral("A4"), int(sheet::Paper::kA4));
  m_paper->addItem(QStringLiteral("Letter"), int(sheet::Paper::kLetter));
  m_paper->setCurrentIndex(m_paper->findData(int(m_settings->paper())));
  m_logo->setPlaceholderText(tr("none"));
  m_logoProblem->setWordWrap(true);
  m_logoProblem->hide();
  auto* browse = new QPushButton(tr("C&hoose…"));
  browse->setAutoDefault(false);
  browse->setAccessibleName(tr("Choose a logo"));
  connect(browse, &QPushButton::clicked, this, &SettingsWindow::askLogo);
  m_browse->setAccessibleName(tr("Choose the archive’s file"));
  auto* logo = new QHBoxLayout;
  logo->addWidget(m_logo, 1);
  logo->addWidget(browse);
  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  const auto row = [form](const QString& text, QWidget* field, QLayout* row_layout = nullptr) {
    auto* label = new QLabel(text);
    label->setBuddy(field);
    field->setAccessibleName(QString(text).remove(u'&'));
    if (row_layout) {
      form->addRow(label, row_layout);
    } else {
      form->addRow(label, field);
    }
  };
  row(tr("Com&pany, at the head of each sheet"), m_company);
  row(tr("&Logo beside it"), m_logo, logo);
  form->addRow(m_logoProblem);
  row(tr("P&aper"), m_paper);
  row(tr("Op&erator, who keeps and prints here"), m_operator);
  auto* layout = new QVBoxLayout(part);
  layout->setContentsMargins({});
  layout->addWidget(title);
  layout->addLayout(form);
  return part;
}

void SettingsWindow::showArchive() {
  show();
  raise();
  activateWindow();
  if (auto* chosen = m_places->checkedButton()) chosen->setFocus(Qt::ShortcutFocusReason);
}

void SettingsWindow::setPlace(Place place, const QString& where) {
  QLineEdit* field = place == Place::kFile ? m_file : place == Place::kServer ? m_server : nullptr;
  if (field && field->text() != where) field->setText(where);
  m_places->button(int(place))->setChecked(true);
  refresh();
}

SettingsWindow::Place SettingsWindow::place() const { return Place(m_places->checkedId()); }

QString SettingsWindow::chosenWhere() const {
  switch (place()) {
    case Place::kFile:
      return m_file->text().trimmed();
    case Place::kServer:
      return m_server->text().trimmed();
    case Place::kThisComputer:
      break;
  }
  return {};
}

QString SettingsWindow::problem() const {
  const QString where = chosenWhere();
  if (place() == Place::kFile) {
    if (where.isEmpty()) return tr("Which file? It is made when the first run is kept.");
    if (isServerUrl(where)) return tr("This is the address of a server.");
    if (QFileInfo(where).isRelative())
      return tr("Say the whole path, so that it is the same file wherever the program starts.");
    if (QFileInfo(where).isDir()) return tr("%1 is a folder: an archive is a file.").arg(where);
    if (!QFileInfo(QFileInfo(where).absolutePath()).isDir())
      return tr("There is no folder %1.").arg(QFileInfo(where).absolutePath());
  }
  if (place() == Place::kServer) {
    if (where.isEmpty()) return tr("Which server? As in postgresql://user@host:5432/database.");
    if (!isServerUrl(where) || QUrl(where).host().isEmpty() || QUrl(where).path().size() < 2)
      return tr("Found %1, expected an address such as postgresql://user@host:5432/database.").arg(where);
    if (holdsPassword(where))
      return tr(
          "The address holds a password, which would be shown and kept in plain text: it belongs into the password "
          "file or a service file of the server’s library.");
  }
  return {};
}

void SettingsWindow::takeArchive() {
  if (!problem().isEmpty()) return refresh();
  m_settings->setArchive(chosenWhere());
  m_link->setWhere(chosenWhere());
  m_link->look();
  refresh();
}

QString SettingsWindow::archiveMessage() const { return m_archiveState->text(); }

void SettingsWindow::refresh() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const QString wrong = problem();
  const QString where = chosenWhere();
  const bool inUse = m_link->isAt(where);
  const bool stored = m_link->isAt(m_settings->archive());  // what is in use is what the settings name
  m_take->setEnabled(wrong.isEmpty() && !(inUse && stored));
  m_passwordNote->setVisible(place() == Place::kServer);
  bool trouble = !wrong.isEmpty();
  QString text = wrong;
  if (wrong.isEmpty() && inUse) {
    const auto& status = m_link->status();
    text = tr("In use. %1").arg(archiveText(status, Format::inDefaultLocale()));
    if (status.reach == ArchiveStatus::Reach::kNone) text = tr("In use. It is made when the first run is kept.");
    if (!stored) {
      const QString named =
          m_settings->archive().isEmpty() ? QString::fromStdString(archive::defaultArchive()) : m_settings->archive();
      text = paragraph(
          {sentenceCase(text),
           tr("The program was started with it: next time it is %1 again, unless you use this one.").arg(named)});
    }
    if (status.error) {
      trouble = true;
      text = tr("In use, but: %1").arg(errorText(*status.error));
    }
  } else if (wrong.isEmpty()) {
    text = tr("Not in use yet.");
  }
  m_archiveState->setText(text);
  Appearance::ink(m_archiveState, trouble ? theme.signal : theme.secondary);
}

void SettingsWindow::askFile() {
  const QString now = m_file->text().isEmpty() ? QDir::homePath() : QFileInfo(m_file->text()).absolutePath();
  auto* dialog = new QFileDialog(this, tr("File of the archive"), now, tr("Archives (*.sqlite);;All files (*)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);  // one that is there, or one to be made
  dialog->setOption(QFileDialog::DontConfirmOverwrite);
  dialog->setLabelText(QFileDialog::Accept, tr("Choose"));
  dialog->setDefaultSuffix(QStringLiteral("sqlite"));
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) { setPlace(Place::kFile, path); });
  dialog->open();
}

void SettingsWindow::askLogo() {
  auto* dialog = new QFileDialog(this, tr("Logo at the head of each sheet"),
                                 m_logo->text().isEmpty() ? QDir::homePath() : QFileInfo(m_logo->text()).absolutePath(),
                                 tr("Pictures (*.svg *.png *.jpg *.jpeg)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
    m_logo->setText(path);
    takeLogo(path);
  });
  dialog->open();
}

void SettingsWindow::takeLogo(const QString& path) {
  m_logoProblem->clear();
  if (!path.isEmpty()) {
    if (const auto logo = sheet::readLogo(QFile::encodeName(path).toStdString()); !logo)
      m_logoProblem->setText(tr("Not on the sheets: %1").arg(errorText(logo.error())));
  }
  m_logoProblem->setVisible(!m_logoProblem->text().isEmpty());
  if (!m_logoProblem->text().isEmpty()) return;
  m_settings->setLogo(path);
  emit sheetsChanged();
}

void SettingsWindow::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  for (QLabel* note : m_notes) Appearance::ink(note, theme.secondary);
  Appearance::ink(m_logoProblem, theme.signal);
}

void SettingsWindow::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
