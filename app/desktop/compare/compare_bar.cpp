#include "app/desktop/compare/compare_bar.h"

#include <QActionGroup>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/wording.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/chooser_button.h"
#include "app/desktop/window/profile_menus.h"
#include "app/desktop/window/sign_icon.h"

namespace ovenwright::desktop {
namespace {

constexpr double kUsualLevel_C = 150, kLowest_C = 0, kHighest_C = 500;
constexpr int kLevelKey = 1;  // levels typed one after the other are one step

QAction* addChoice(QMenu* menu, const QString& text, bool chosen) {
  QAction* action = menu->addAction(text);
  action->setCheckable(true);
  action->setChecked(chosen);
  return action;
}

}  // namespace

CompareBar::CompareBar(CompareSession* session, ProfileMenus* profiles, QWidget* parent)
    : ChooserRow(parent),
      m_session(session),
      m_profiles(profiles),
      m_windows(new QMenu(this)),
      m_alignMenu(new QMenu(this)),
      m_curvesMenu(new QMenu(this)),
      m_addMenu(new QMenu(this)),
      m_printMenu(new QMenu(this)),
      m_level(new QDoubleSpinBox),
      m_swap(new QPushButton(tr("S&wap"))),
      m_add(new QPushButton(tr("&Add a run…"))),
      m_print(new QPushButton(tr("&Print…"))) {
  const auto side = [this](const QString& letter, std::size_t which) {
    auto* menu = new QMenu(this);
    connect(menu, &QMenu::aboutToShow, this, [this, menu, which] { fillRuns(menu, which); });
    return add(letter, menu);
  };
  m_a = side(tr("A", "the first of two runs"), 0);
  m_b = side(tr("B", "the second of two runs"), 1);
  m_window = add(tr("Window"), m_windows);
  m_align = add(tr("Line up at"), m_alignMenu);
  row()->addWidget(m_level);
  m_curves = add(tr("Curves"), m_curvesMenu);
  row()->addStretch(1);
  for (QPushButton* button : {m_swap, m_add, m_print}) {
    button->setAutoDefault(false);
    addButton(button);
  }
  m_level->setAccessibleName(tr("Level to line up at"));
  m_level->setDecimals(1);
  m_level->setKeyboardTracking(false);
  m_swap->setToolTip(tr("A becomes B, and B becomes A"));
  m_print->setToolTip(tr("The sheet of this comparison"));
  m_add->setMenu(m_addMenu);
  m_print->setMenu(m_printMenu);
  connect(m_windows, &QMenu::aboutToShow, this, &CompareBar::fillWindows);
  connect(m_alignMenu, &QMenu::aboutToShow, this, &CompareBar::fillAlign);
  connect(m_curvesMenu, &QMenu::aboutToShow, this, &CompareBar::fillCurves);
  connect(m_level, &QDoubleSpinBox::valueChanged, this, &CompareBar::typeLevel);
  connect(m_swap, &QPushButton::clicked, session, &CompareSession::swap);
  for (const auto changed :
       {&CompareSession::choiceChanged, &CompareSession::comparedChanged, &CompareSession::stateChanged})
    connect(session, changed, this, &CompareBar::refresh);
  refresh();
}

void CompareBar::setFormat(const Format& format) {
  m_format = format;
  refresh();
}

void CompareBar::setPrintActions(const QList<QAction*>& actions) { m_printMenu->addActions(actions); }

void CompareBar::showAdd() { m_add->showMenu(); }

void CompareBar::fillRuns(QMenu* menu, std::size_t side) {
  menu->clear();
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto chosen = m_session->subjects(side);
  const auto all = m_session->runs();
  for (const auto& subject : all) {
    const auto verdict = subject.log->checked->views[subject.run].judgement().verdict;
    QAction* action = addChoice(menu,
                                tr("%1: %2", "a run and its verdict")
                                    .arg(runTitle(*subject.log, subject.run).replace(u'&', QStringLiteral("&&")),
                                         widgets::Wording::verdict(verdict)),
                                std::ranges::find(chosen, subject) != chosen.end());
    action->setIcon(signIcon(verdict, theme, devicePixelRatioF()));
    connect(action, &QAction::triggered, this, [this, side, subject] { m_session->choose(side, subject); });
  }
  menu->addSeparator();
  QAction* several = menu->addAction(tr("&Several runs…"));
  several->setEnabled(all.size() > 2);
  connect(several, &QAction::triggered, this, &CompareBar::groupsWanted);
  for (QAction* action : m_addMenu->actions()) menu->addAction(action);
  // In a narrow bar the buttons are gone.
  QAction* swap = menu->addAction(m_swap->text());
  swap->setEnabled(m_swap->isEnabled());
  connect(swap, &QAction::triggered, m_session, &CompareSession::swap);
}

void CompareBar::fillWindows() {
  m_windows->clear();
  const auto take = [this](std::vector<window::ProcessWindow> windows) {
    CompareChoice choice = m_session->choice();
    const QString title = windows.empty() ? tr("those of A") : titleOf(windows);
    choice.windows = std::move(windows);
    m_session->change(tr("Compare against %1").arg(title), std::move(choice));
  };
  const auto& chosen = m_session->choice().windows;
  const auto a = m_session->subject(0);
  const QString own = a ? titleOf(a->log->setup.windows) : QString();
  connect(addChoice(m_windows, tr("As A was judged: %1").arg(own), chosen.empty()), &QAction::triggered, this,
          [take] { take({}); });
  m_windows->addSeparator();
  m_profiles->addWindows(m_windows, chosen, [take](window::ProcessWindow window) { take({std::move(window)}); });
}

void CompareBar::fillAlign() {
  m_alignMenu->clear();
  const auto take = [this](const QString& text, std::optional<double> level_C) {
    CompareChoice choice = m_session->choice();
    if (choice.align_C.has_value() == level_C.has_value()) return;
    choice.align_C = level_C;
    m_session->change(text, std::move(choice));
  };
  const bool level = m_session->choice().align_C.has_value();
  const QString entry = tr("Line up at the oven entry"), rise = tr("Line up at a level");
  connect(addChoice(m_alignMenu, tr("Oven entry"), !level), &QAction::triggered, this,
          [take, entry] { take(entry, std::nullopt); });
  connect(addChoice(m_alignMenu, tr("A level on the rise"), level), &QAction::triggered, this, [this, take, rise] {
    take(rise, kUsualLevel_C);
    m_level->setFocus(Qt::OtherFocusReason);
    m_level->selectAll();
  });
}

void CompareBar::fillCurves() {
  m_curvesMenu->clear();
  const auto add = [this](const QString& text, const QString& step, CompareCurves curves) {
    connect(addChoice(m_curvesMenu, text, m_session->choice().curves == curves), &QAction::triggered, this,
            [this, step, curves] {
              CompareChoice choice = m_session->choice();
              if (choice.curves == curves) return;
              choice.curves = curves;
              m_session->change(step, std::move(choice));
            });
  };
  add(tr("Side by side"), tr("Curves side by side"), CompareCurves::kSideBySide);
  add(tr("Overlaid"), tr("Curves overlaid"), CompareCurves::kOverlaid);
}

void CompareBar::typeLevel(double shown) {
  CompareChoice choice = m_session->choice();
  choice.align_C = m_format.fromShown(shown, Format::Quantity::kTemperature);
  m_session->change(tr("Line up at a level"), std::move(choice), kLevelKey);
}

void CompareBar::refresh() {
  const auto title = [this](std::size_t side) {
    const auto subjects = m_session->subjects(side);
    if (subjects.empty()) return tr("None", "no run");
    const auto& first = subjects.front();
    QString text = subjects.size() > 1 ? tr("%n runs", nullptr, int(subjects.size())) : runTitle(*first.log, first.run);
    // The recipe's revision, where all ran one, tells more than a name.
    const auto revision = [](const CompareSubject& of) {
      const auto& recipe = of.log->setup.recipe;
      return recipe && recipe->identity.revision ? QString::fromStdString(*recipe->identity.revision) : QString();
    };
    const bool one = std::ranges::all_of(subjects, [&](const auto& each) { return revision(each) == revision(first); });
    if (one && !revision(first).isEmpty()) text = tr("%1, rev %2", "a run and its recipe").arg(text, revision(first));
    return text;
  };
  m_a->setChosen(title(0));
  m_b->setChosen(title(1));
  const auto& choice = m_session->choice();
  const auto a = m_session->subject(0);
  m_window->setChosen(!choice.windows.empty() ? titleOf(choice.windows)
                      : a                     ? titleOf(a->log->setup.windows)
                                              : tr("None", "no window"));
  // Where a log does not show the entry, what stands in its place is said.
  const auto& compared = m_session->compared();
  const auto* at = compared && compared->comparison.alignment ? &*compared->comparison.alignment : nullptr;
  const bool instead = !choice.align_C && at && at->level_C;
  m_align->setChosen(choice.align_C ? tr("Level on the rise")
                     : instead      ? tr("%1 on the rise, no entry").arg(m_format.temperatureWithUnit(*at->level_C))
                                    : tr("Oven entry"));
  const QSignalBlocker quiet(m_level);
  m_level->setVisible(choice.align_C.has_value());
  m_level->setLocale(m_format.locale());
  m_level->setSuffix(u' ' + m_format.unit(Format::Quantity::kTemperature));
  m_level->setRange(m_format.shown(kLowest_C, Format::Quantity::kTemperature),
                    m_format.shown(kHighest_C, Format::Quantity::kTemperature));
  m_level->setValue(m_format.shown(choice.align_C.value_or(kUsualLevel_C), Format::Quantity::kTemperature));
  m_curves->setChosen(choice.curves == CompareCurves::kOverlaid ? tr("Overlaid") : tr("Side by side"));
  const bool two = m_session->subject(1).has_value();
  m_swap->setEnabled(two);
  m_print->setEnabled(m_session->compared() != nullptr && m_session->isSettled());
  fitLabels();
}

}  // namespace ovenwright::desktop
