#include "app/desktop/tune/learned_from.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/themed_label.h"
#include "app/desktop/tune/tune_session.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
namespace {

constexpr const char* kNumber = "number";  // of a box's log
constexpr double kNameWidth_px = 290, kIndent_px = 22;

}  // namespace

LearnedFrom::LearnedFrom(TuneSession* session, QWidget* parent) : QWidget(parent), m_session(session) {}

void LearnedFrom::refresh(const Format& format) {
  const auto* bench = m_session->bench();
  const auto model = bench ? bench->model : nullptr;
  QStringList names;
  QString misfit;
  if (model) {
    for (const auto& run : model->learned().runs) names << QString::fromStdString(run.source.log);
    const auto& placements = model->fit().placements;
    const auto worst = std::ranges::max_element(placements, {}, &heat::PlacementFit::max_error_C);
    if (worst != placements.end())
      misfit = tr("%1, %2").arg(format.valueWithUnit(worst->max_error_C, Format::Quantity::kDifference),
                                QString::fromStdString(worst->name));
  }
  std::vector<Choice> choices;
  QString shown = names.join(u'\n') + misfit;
  for (const auto& log : m_session->companions()) {
    const auto& recipe = log->view()->recipe()->identity;
    QString recipe_name = QString::fromStdString(recipe.name);
    if (recipe.revision) recipe_name = tr("%1, rev %2").arg(recipe_name, QString::fromStdString(*recipe.revision));
    choices.push_back({log->number, log->source.name, tr("run with %1", "name of a recipe").arg(recipe_name),
                       m_session->learnsFrom(*log)});
    shown += u'\n' + choices.back().log + choices.back().recipe + (choices.back().learns ? u'1' : u'0');
  }
  setVisible(model || !choices.empty());
  if (shown == m_shown) return;
  m_shown = shown;
  fill(enumerated(names), misfit, choices);
}

void LearnedFrom::fill(const QString& names, const QString& misfit, const std::vector<Choice>& choices) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  int focused = 0;  // the log whose box has the keyboard keeps it
  for (const auto* box : findChildren<QCheckBox*>())
    if (box->hasFocus()) focused = box->property(kNumber).toInt();
  auto* rows = emptied(this);
  rows->setSpacing(int(theme.px(3)));
  rows->addWidget(new Hairline(this));
  const auto row = [&](const QString& name, const QString& value) {
    if (value.isEmpty()) return;
    auto* line = new QHBoxLayout;
    line->addWidget(themedLabel(theme, name, 12, false, theme.secondary, this), 2, Qt::AlignTop);
    line->addWidget(themedLabel(theme, value, 12, false, theme.text, this), 3);
    rows->addLayout(line);
  };
  row(tr("Model fitted to"), names);
  row(tr("Largest misfit"), misfit);
  if (choices.empty()) return;
  rows->addWidget(themedLabel(theme, tr("Learn from other runs too"), 12, false, theme.secondary, this));
  for (const auto& choice : choices) {
    const QString shown = fontMetrics().elidedText(choice.log, Qt::ElideMiddle, int(theme.px(kNameWidth_px)));
    auto* box = new QCheckBox(shown, this);
    box->setAccessibleName(choice.log + QStringLiteral(", ") + choice.recipe);
    box->setToolTip(choice.log);
    box->setChecked(choice.learns);
    box->setProperty(kNumber, choice.number);
    connect(
        box, &QCheckBox::toggled, m_session,
        [session = m_session, number = choice.number](bool on) {
          for (const auto& log : session->companions())
            if (log->number == number) session->setLearnsFrom(*log, on);
        },
        Qt::QueuedConnection);  // it may be taken away by what follows
    rows->addWidget(box);
    auto* recipe = themedLabel(theme, choice.recipe, 12, false, theme.secondary, this);
    recipe->setContentsMargins(int(theme.px(kIndent_px)), 0, 0, 0);
    rows->addWidget(recipe);
    if (choice.number == focused) box->setFocus();
  }
}

}  // namespace ovenwright::desktop
