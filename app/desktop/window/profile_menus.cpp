#include "app/desktop/window/profile_menus.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QFileInfo>
#include <QUrl>

#include "app/desktop/text/said.h"
#include "app/desktop/window/notice.h"
#include "core/board/board_file.h"
#include "core/files/profiles.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

namespace ovenwright::desktop {
namespace {

std::vector<files::Listed> listed(files::Kind kind) {
  auto profiles = files::list_profiles(kind);
  return profiles ? *profiles : std::vector<files::Listed>{};
}

/// With what is chosen and stands in none of the folders first: a file that was opened, the demo's own.
std::vector<files::Listed> listedWith(files::Kind kind, const std::vector<files::Identity>& chosen) {
  std::vector<files::Listed> all;
  auto profiles = listed(kind);
  for (const auto& identity : chosen) {
    const bool known = std::ranges::find(profiles, identity.file, &files::Listed::file) != profiles.end();
    if (known || !QFileInfo(QString::fromStdString(identity.file)).isFile()) continue;
    all.push_back({identity.stem, identity.name, identity.revision, identity.source, identity.file, true, {}});
  }
  all.insert(all.end(), std::make_move_iterator(profiles.begin()), std::make_move_iterator(profiles.end()));
  return all;
}

std::vector<files::Listed> listedWith(files::Kind kind, const std::vector<window::ProcessWindow>& chosen) {
  std::vector<files::Identity> identities;
  for (const auto& window : chosen) identities.push_back(window.identity);
  return listedWith(kind, identities);
}

template <class Profile>
std::vector<files::Listed> listedWith(files::Kind kind, const std::optional<Profile>& chosen) {
  return listedWith(kind, chosen ? std::vector{chosen->identity} : std::vector<files::Identity>{});
}

QString titleOf(const files::Listed& profile) {
  const QString title = QString::fromStdString(profile.title);
  return profile.revision ? ProfileMenus::tr("%1, rev %2").arg(title, QString::fromStdString(*profile.revision))
                          : title;
}

QAction* addFile(QMenu* menu, const QString& text, bool chosen) {
  QString label = text;
  QAction* action = menu->addAction(label.replace(u'&', QStringLiteral("&&")));
  action->setCheckable(true);
  action->setChecked(chosen);
  return action;
}

}  // namespace

QString titleOf(const files::Identity& identity) {
  QString title = QString::fromStdString(identity.name);
  if (identity.revision) title = ProfileMenus::tr("%1, rev %2").arg(title, QString::fromStdString(*identity.revision));
  return identity.sha256.empty() ? ProfileMenus::tr("%1, changed").arg(title) : title;
}

QString titleOf(const std::vector<window::ProcessWindow>& windows) {
  QStringList titles;
  for (const auto& window : windows) titles << titleOf(window.identity);
  return titles.isEmpty() ? ProfileMenus::tr("None") : titles.join(QStringLiteral(" + "));
}

ProfileMenus::ProfileMenus(Document* document, QWidget* window)
    : QObject(window),
      m_document(document),
      m_window(window),
      m_windows(new QMenu(tr("&Window"), window)),
      m_boards(new QMenu(tr("&Board"), window)),
      m_ovens(new QMenu(tr("&Oven and recipe"), window)) {
  for (QMenu* menu : {m_windows, m_boards, m_ovens}) menu->setToolTipsVisible(true);
  connect(m_windows, &QMenu::aboutToShow, this, &ProfileMenus::fillWindows);
  connect(m_boards, &QMenu::aboutToShow, this, &ProfileMenus::fillBoards);
  connect(m_ovens, &QMenu::aboutToShow, this, &ProfileMenus::fillOvens);
}

void ProfileMenus::fillWindows() {
  m_windows->clear();
  const auto& chosen = m_document->setup().windows;
  const auto profiles = listedWith(files::Kind::kWindow, chosen);
  QMenu* more = new QMenu(tr("Judge &also against"), m_windows);
  for (const auto& profile : profiles) {
    const auto at = std::ranges::find(chosen, profile.file, [](const auto& window) { return window.identity.file; });
    const QString file = QString::fromStdString(profile.file);
    QAction* action = addFile(m_windows, titleOf(profile), at != chosen.end());
    action->setEnabled(true);
    if (profile.source) action->setToolTip(QString::fromStdString(*profile.source));
    connect(action, &QAction::triggered, this, [this, file] { chooseWindow(file); });
    if (at == chosen.end()) {
      connect(addFile(more, titleOf(profile), false), &QAction::triggered, this,
              [this, file] { chooseWindow(file, true); });
    }
  }
  m_windows->addSeparator();
  m_windows->addMenu(more);
  for (std::size_t i = 0; chosen.size() > 1 && i < chosen.size(); ++i) {
    connect(m_windows->addAction(tr("No longer against %1").arg(desktop::titleOf(chosen[i].identity))),
            &QAction::triggered, this, [this, i] { dropWindow(i); });
  }
  connect(m_windows->addAction(tr("&Edit this window")), &QAction::triggered, this, &ProfileMenus::editWindowWanted);
  connect(m_windows->addAction(tr("Open a window &file…")), &QAction::triggered, this, [this] {
    const QString file = askForFile(tr("Open a window"));
    if (!file.isEmpty()) chooseWindow(file);
  });
}

void ProfileMenus::addWindows(QMenu* menu, const std::vector<window::ProcessWindow>& chosen,
                              const std::function<void(window::ProcessWindow)>& choose) {
  const auto take = [this, choose](const QString& file) {
    auto window = window::load(file.toStdString());
    if (window)
      choose(*std::move(window));
    else
      trouble(tr("Not judged anew: this window cannot be used."), window.error());
  };
  for (const auto& profile : listedWith(files::Kind::kWindow, chosen)) {
    const bool is_chosen = std::ranges::find(chosen, profile.file,
                                             [](const auto& window) { return window.identity.file; }) != chosen.end();
    const QString file = QString::fromStdString(profile.file);
    connect(addFile(menu, titleOf(profile), is_chosen), &QAction::triggered, this, [take, file] { take(file); });
  }
  menu->addSeparator();
  connect(menu->addAction(tr("Open a window &file…")), &QAction::triggered, this, [this, take] {
    const QString file = askForFile(tr("Open a window"));
    if (!file.isEmpty()) take(file);
  });
}

void ProfileMenus::fillBoards() {
  m_boards->clear();
  const auto& chosen = m_document->setup().board;
  connect(addFile(m_boards, tr("None"), !chosen), &QAction::triggered, this, [this] { chooseBoard({}); });
  for (const auto& profile : listedWith(files::Kind::kBoard, chosen)) {
    const QString file = QString::fromStdString(profile.file);
    connect(addFile(m_boards, titleOf(profile), chosen && chosen->identity.file == profile.file), &QAction::triggered,
            this, [this, file] { chooseBoard(file); });
  }
  m_boards->addSeparator();
  connect(m_boards->addAction(tr("Open a board &file…")), &QAction::triggered, this, [this] {
    const QString file = askForFile(tr("Open a board"));
    if (!file.isEmpty()) chooseBoard(file);
  });
}

void ProfileMenus::fillOvens() {
  m_ovens->clear();
  const auto& setup = m_document->setup();
  connect(addFile(m_ovens, tr("None"), !setup.oven), &QAction::triggered, this, [this] { chooseOven({}, {}); });
  const auto recipes = listedWith(files::Kind::kRecipe, setup.recipe);
  for (const auto& profile : listedWith(files::Kind::kOven, setup.oven)) {
    const QString oven = QString::fromStdString(profile.file);
    QMenu* menu = m_ovens->addMenu(titleOf(profile));
    for (const auto& listed_recipe : recipes) {
      const auto recipe = oven::load_recipe(listed_recipe.file);
      if (!recipe || (recipe->oven && *recipe->oven != profile.title && *recipe->oven != profile.stem)) continue;
      const bool chosen = setup.oven && setup.recipe && setup.oven->identity.file == profile.file &&
                          setup.recipe->identity.file == listed_recipe.file;
      const QString file = QString::fromStdString(listed_recipe.file);
      connect(addFile(menu, titleOf(listed_recipe), chosen), &QAction::triggered, this,
              [this, oven, file] { chooseOven(oven, file); });
    }
    if (!menu->isEmpty()) menu->addSeparator();
    connect(menu->addAction(tr("Open a recipe &file…")), &QAction::triggered, this, [this, oven] {
      const QString file = askForFile(tr("Open a recipe"));
      if (!file.isEmpty()) chooseOven(oven, file);
    });
  }
  m_ovens->addSeparator();
  QAction* edit = m_ovens->addAction(tr("&Edit this oven"));
  edit->setEnabled(setup.oven.has_value());
  connect(edit, &QAction::triggered, this, &ProfileMenus::editOvenWanted);
  connect(m_ovens->addAction(tr("Open an oven &file and a recipe…")), &QAction::triggered, this, [this] {
    const QString oven = askForFile(tr("Open an oven"));
    if (oven.isEmpty()) return;
    const QString recipe = askForFile(tr("Open a recipe of this oven"));
    if (!recipe.isEmpty()) chooseOven(oven, recipe);
  });
}

QString ProfileMenus::askForFile(const QString& title) {
  return QFileDialog::getOpenFileName(m_window, title, {}, tr("TOML files (*.toml);;All files (*)"));
}

void ProfileMenus::trouble(const QString& title, const Error& error) {
  Notice notice{title, errorText(error), {}};
  if (!error.where.file.empty()) {
    const QString file = QFileInfo(QString::fromStdString(error.where.file)).absoluteFilePath();
    if (error.where.line > 0) {
      // Whole: what was found alone does not say for which key.
      const QString message = inWords(error.message, QLocale());
      notice.text = tr("%1, line %2: ").arg(QFileInfo(file).fileName()).arg(error.where.line) +
                    sentenceCase(message).replace(0, 1, message.left(1));
    }
    if (QFileInfo(file).isFile()) {
      notice.cures.push_back({tr("Open the file"), [file] { QDesktopServices::openUrl(QUrl::fromLocalFile(file)); }});
    }
  }
  emit troubled(notice);
}

void ProfileMenus::chooseWindow(const QString& nameOrPath, bool add) {
  auto window = window::find(nameOrPath.toStdString());
  if (!window) {
    trouble(tr("Not judged anew: this window cannot be used."), window.error());
    return;
  }
  check::Request setup = m_document->setup();
  if (!add) setup.windows.clear();
  const QString title = titleOf(window->identity);
  setup.windows.push_back(std::move(*window));
  setup.window_assumed = false;
  m_document->edit(add ? tr("Judge also against %1").arg(title) : tr("Choose the window %1").arg(title),
                   std::move(setup));
}

void ProfileMenus::dropWindow(std::size_t index) {
  check::Request setup = m_document->setup();
  const QString title = titleOf(setup.windows[index].identity);
  setup.windows.erase(setup.windows.begin() + std::ptrdiff_t(index));
  m_document->edit(tr("No longer judge against %1").arg(title), std::move(setup));
}

void ProfileMenus::chooseBoard(const QString& nameOrPath) {
  check::Request setup = m_document->setup();
  if (nameOrPath.isEmpty()) {
    setup.board.reset();
    m_document->edit(tr("Choose no board"), std::move(setup));
    return;
  }
  auto board = board::find(nameOrPath.toStdString());
  if (!board) {
    trouble(tr("This board cannot be used."), board.error());
    return;
  }
  const QString title = titleOf(board->identity);
  setup.board = std::move(*board);
  m_document->edit(tr("Choose the board %1").arg(title), std::move(setup));
}

void ProfileMenus::chooseOven(const QString& oven, const QString& recipe) {
  check::Request setup = m_document->setup();
  if (oven.isEmpty()) {
    setup.oven.reset();
    setup.recipe.reset();
    m_document->edit(tr("Choose no oven"), std::move(setup));
    return;
  }
  auto new_oven = oven::find_oven(oven.toStdString());
  if (!new_oven) {
    trouble(tr("This oven cannot be used."), new_oven.error());
    return;
  }
  auto new_recipe = oven::find_recipe(recipe.toStdString());
  if (!new_recipe) {
    trouble(tr("This recipe cannot be used."), new_recipe.error());
    return;
  }
  if (const auto fits = oven::check_recipe(*new_recipe, *new_oven); !fits) {
    trouble(tr("This recipe does not fit the oven."), fits.error());
    return;
  }
  const QString title = titleOf(new_recipe->identity);
  setup.oven = std::move(*new_oven);
  setup.recipe = std::move(*new_recipe);
  m_document->edit(tr("Choose the recipe %1").arg(title), std::move(setup));
}

}  // namespace ovenwright::desktop
