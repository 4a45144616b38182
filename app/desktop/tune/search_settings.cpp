#include "app/desktop/tune/search_settings.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <cmath>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLeastSpeedKey = 1, kMarginKey = 2;  // of a number while it is typed
constexpr int kMergeKeys = 900000000;              // apart from the gestures of the strip
constexpr double kMostSpeed_mm_per_min = 9999;
constexpr int kMostMargin = 90, kUsualMargin = 20;  // %

}  // namespace

SearchSettings::SearchSettings(TuneSession* session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_keepSpeed(new QCheckBox(tr("Keep the s&peed"), this)),
      m_useLeastSpeed(new QCheckBox(this)),
      m_useMargin(new QCheckBox(tr("&Margin to keep, %"), this)),
      m_leastSpeed(new QDoubleSpinBox(this)),
      m_margin(new QSpinBox(this)),
      m_locked(new QLabel(this)),
      m_suggest(new QPushButton(tr("S&uggest recipes"), this)) {
  m_useMargin->setToolTip(tr("What the fastest and the coolest must keep; else half of the best, at most 20 %"));
  m_margin->setRange(0, kMostMargin);
  m_margin->setAccessibleName(tr("Margin to keep, %"));
  m_locked->setWordWrap(true);
  m_suggest->setAutoDefault(false);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins({});
  grid->setColumnStretch(0, 1);
  grid->addWidget(m_keepSpeed, 0, 0, 1, 2);
  grid->addWidget(m_useLeastSpeed, 1, 0);
  grid->addWidget(m_leastSpeed, 1, 1);
  grid->addWidget(m_useMargin, 2, 0);
  grid->addWidget(m_margin, 2, 1);
  grid->addWidget(m_locked, 3, 0, 1, 2);
  grid->addWidget(m_suggest, 4, 0, 1, 2);
  connect(m_keepSpeed, &QCheckBox::toggled, this, [this](bool on) {
    change(on ? tr("Keep the speed in a search") : tr("Let a search change the speed"),
           [on](TuneEdit& edit) { edit.keepSpeed = on; });
  });
  connect(m_useLeastSpeed, &QCheckBox::toggled, this, [this] { setLeastSpeed(-1); });
  connect(m_leastSpeed, &QDoubleSpinBox::valueChanged, this, [this] { setLeastSpeed(kMergeKeys + kLeastSpeedKey); });
  connect(m_useMargin, &QCheckBox::toggled, this, [this] { setMargin(-1); });
  connect(m_margin, &QSpinBox::valueChanged, this, [this] { setMargin(kMergeKeys + kMarginKey); });
  style();
}

void SearchSettings::change(const QString& text, const std::function<void(TuneEdit&)>& edit, int mergeKey) {
  const auto* bench = m_session->bench();
  if (!bench) return;
  TuneEdit next = bench->edit;
  edit(next);
  m_session->change(text, std::move(next), mergeKey);
}

void SearchSettings::setLeastSpeed(int mergeKey) {
  const auto speed = m_useLeastSpeed->isChecked()
                         ? std::optional<double>(m_format.fromShownSpeed(m_leastSpeed->value()))
                         : std::nullopt;
  change(
      tr("Least speed of a search"), [&](TuneEdit& edit) { edit.leastSpeed_mm_per_min = speed; }, mergeKey);
}

void SearchSettings::setMargin(int mergeKey) {
  const auto margin = m_useMargin->isChecked() ? std::optional<double>(m_margin->value() / 100.0) : std::nullopt;
  change(
      tr("Margin that a search keeps"), [&](TuneEdit& edit) { edit.marginToKeep = margin; }, mergeKey);
}

void SearchSettings::setFormat(const Format& format) {
  m_format = format;
  const bool millimetres = format.shownSpeed(1) == 1;
  const QSignalBlocker quiet(m_leastSpeed);
  m_leastSpeed->setDecimals(millimetres ? 0 : 1);
  m_leastSpeed->setRange(0, format.shownSpeed(kMostSpeed_mm_per_min));
  m_leastSpeed->setSingleStep(millimetres ? 10 : 1);
  m_useLeastSpeed->setText(tr("Lea&st speed, %1").arg(format.speedUnitText()));
  m_leastSpeed->setAccessibleName(tr("Least speed, %1").arg(format.speedUnitText()));
}

void SearchSettings::refresh() {
  const auto* bench = m_session->bench();
  if (!bench) return;
  const TuneEdit& edit = bench->edit;
  const QSignalBlocker quiet[] = {QSignalBlocker(m_keepSpeed), QSignalBlocker(m_useLeastSpeed),
                                  QSignalBlocker(m_leastSpeed), QSignalBlocker(m_useMargin), QSignalBlocker(m_margin)};
  m_keepSpeed->setChecked(edit.keepSpeed);
  m_useLeastSpeed->setChecked(edit.leastSpeed_mm_per_min.has_value());
  m_useLeastSpeed->setEnabled(!edit.keepSpeed);
  m_leastSpeed->setEnabled(!edit.keepSpeed && edit.leastSpeed_mm_per_min);
  m_leastSpeed->setValue(m_format.shownSpeed(edit.leastSpeed_mm_per_min.value_or(bench->measured.speed_mm_per_min)));
  m_useMargin->setChecked(edit.marginToKeep.has_value());
  m_margin->setEnabled(edit.marginToKeep.has_value());
  m_margin->setValue(edit.marginToKeep ? int(std::lround(100 * *edit.marginToKeep)) : kUsualMargin);
  QStringList locked;
  for (const auto& zone : edit.lockedZones) locked << QString::fromStdString(zone);
  const QString names = enumerated(locked);
  m_locked->setText(locked.isEmpty()     ? tr("Every zone may move; press a zone’s name in the strip to keep it.")
                    : locked.size() == 1 ? tr("A search leaves zone %1 as it is.").arg(names)
                                         : tr("A search leaves zones %1 as they are.").arg(names));
}

void SearchSettings::style() { m_locked->setFont(widgets::Theme::fromPalette(palette(), font()).font(12)); }

void SearchSettings::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
