#include "app/desktop/tune/overlay_list.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/desktop/tune/themed_label.h"
#include "app/desktop/tune/tune_session.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {

OverlayList::OverlayList(TuneSession* session, QWidget* parent) : QWidget(parent), m_session(session) {}

void OverlayList::forget() { m_bench = nullptr; }

void OverlayList::refresh(const Format& format) {
  const auto* bench = m_session->bench();
  setVisible(bench && m_session->state() == TuneSession::State::kReady);
  std::vector<int> numbers;
  for (std::size_t i = 0; bench && i < bench->edit.kept.size(); ++i) numbers.push_back(bench->edit.kept[i].number);
  if (bench == m_bench && numbers == m_numbers) return;
  m_bench = bench;
  m_numbers = std::move(numbers);
  auto* rows = emptied(this);
  if (!bench) return;
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  rows->setSpacing(int(theme.px(3)));
  rows->addWidget(new Hairline(this));
  rows->addWidget(themedLabel(theme, tr("Laid over the prediction"), 12, false, theme.secondary, this));
  add(0, tr("The run as it was measured"), {});
  for (const auto& kept : bench->edit.kept) {
    const QString margin = marginText(kept.prediction->judgement(), kept.prediction->forecast, format);
    const QString changes = changesInShort(bench->oven, bench->measured, kept.prediction->recipe, format);
    add(kept.number, kept.tag(), margin.isEmpty() ? changes : tr("%1; margin %2").arg(changes, margin));
  }
}

void OverlayList::add(int number, const QString& tag, const QString& text) {
  auto* row = new QHBoxLayout;
  auto* shown = new QCheckBox(tag, this);
  shown->setChecked(m_session->isShown(number));
  connect(shown, &QCheckBox::toggled, this, [this, number](bool on) { m_session->setShown(number, on); });
  row->addWidget(shown, text.isEmpty() ? 1 : 0);
  if (!text.isEmpty()) {
    shown->setAccessibleName(tag + QStringLiteral(", ") + text);
    const auto theme = widgets::Theme::fromPalette(palette(), font());
    row->addWidget(themedLabel(theme, text, 12, false, theme.text, this), 1);
    auto* drop = new QToolButton(this);
    drop->setText(QStringLiteral("×"));
    drop->setAutoRaise(true);
    drop->setAccessibleName(tr("Drop the prediction %1").arg(tag));
    drop->setToolTip(drop->accessibleName());
    connect(
        drop, &QToolButton::clicked, m_session, [this, number] { m_session->dropKept(number); }, Qt::QueuedConnection);
    row->addWidget(drop);
  }
  static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

}  // namespace ovenwright::desktop
