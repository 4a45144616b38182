#include "app/desktop/window/empty_page.h"

#include <QEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/chooser_button.h"

namespace ovenwright::desktop {
namespace {

constexpr double kSketch_px = 1000;

/// A frame of dashes that says: drop it here.
class DashedBox : public QWidget {
 public:
  using QWidget::QWidget;

 protected:
  void paintEvent(QPaintEvent*) override {
    const auto theme = widgets::Theme::fromPalette(palette(), font());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(theme.window);
    painter.setPen(QPen(theme.quiet, theme.line(1), Qt::DashLine));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), theme.px(3), theme.px(3));
  }
};

QLabel* label(const QString& text, const QFont& font, QWidget* parent) {
  auto* result = new QLabel(text, parent);
  result->setFont(font);
  result->setWordWrap(true);
  return result;
}

}  // namespace

/// A pale sketch of the result, with words beside it.
class EmptyPage::Preview : public QWidget {
 public:
  explicit Preview(QWidget* parent) : QWidget(parent) {
    setAccessibleName(EmptyPage::tr("Sketch of the result"));
    setAccessibleDescription(EmptyPage::tr("Curves, zone strip and limit lanes stand here once a log is read."));
  }
  QSize minimumSizeHint() const override {
    const auto theme = widgets::Theme::fromPalette(palette(), font());
    return {int(theme.px(330)), int(theme.px(300))};
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    const auto theme = widgets::Theme::fromPalette(palette(), font());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double words = std::min(theme.px(240), width() * 0.36), picture = width() - words - theme.px(20);
    const double unit = std::min(height() / 430.0, picture / 440.0);
    const QRectF plot(0, 0, picture, 200 * unit);
    painter.fillRect(plot, theme.window);
    const QRectF axes = plot.adjusted(12 * unit, 12 * unit, -12 * unit, -12 * unit);
    for (const auto& [from, to] : {std::pair(0.08, 0.13), std::pair(0.27, 0.47)}) {
      painter.fillRect(
          QRectF(axes.left(), axes.top() + axes.height() * from, axes.width(), axes.height() * (to - from)),
          theme.outside);
    }
    for (int curve = 0; curve < 3; ++curve) {
      QPainterPath path;
      constexpr int kPlaces = 80;
      for (int i = 0; i <= kPlaces; ++i) {
        const double x = i / double(kPlaces);
        const auto step = [](double at) { return 1 / (1 + std::exp(-at)); };
        const double heat = 0.06 + 0.4 * step((x - 0.12 - 0.025 * curve) * 28) +
                            0.2 * step((x - 0.42 - 0.02 * curve) * 10) +
                            (0.33 - 0.045 * curve) * step((x - 0.67 - 0.005 * curve) * 22) -
                            (0.95 - 0.17 * curve) * step((x - 0.89 - 0.01 * curve) * 17);
        const QPointF at(axes.left() + x * axes.width(), axes.bottom() - heat * axes.height());
        if (i == 0) {
          path.moveTo(at);
        } else {
          path.lineTo(at);
        }
      }
      painter.setPen(QPen(theme.quiet, theme.line(1.3), curve == 1 ? Qt::DashLine : Qt::SolidLine));
      painter.setBrush(Qt::NoBrush);
      painter.drawPath(path);
    }
    painter.setPen(QPen(theme.frame, theme.line(1)));
    painter.setBrush(theme.window);
    const double zones_top = plot.bottom() + 16 * unit, cell = axes.width() / 13;
    for (int zone = 0; zone < 12; ++zone) {
      for (int row = 0; row < 2; ++row) {
        painter.drawRect(
            QRectF(axes.left() + cell * (zone + 0.5), zones_top + row * 15 * unit, cell * 0.88, 14 * unit));
      }
    }
    const double lanes_top = zones_top + 50 * unit, pitch = 26 * unit;
    painter.setPen(Qt::NoPen);
    for (int lane = 0; lane < 7; ++lane) {
      const QRectF body(axes.left(), lanes_top + lane * pitch, axes.width(), pitch - 3);
      painter.fillRect(body, theme.window);
      painter.setPen(QPen(theme.hairline, theme.line(1)));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(body);
      painter.setPen(Qt::NoPen);
      const double lower = body.left() + body.width() * 0.19, upper = body.left() + body.width() * 0.81;
      const bool both = lane >= 1 && lane <= 3;
      painter.fillRect(QRectF(QPointF(both ? lower : body.left(), body.top()), QPointF(upper, body.bottom())),
                       theme.panel);
      painter.fillRect(QRectF(upper, body.top(), 1.6, body.height()), theme.quiet);
      if (both) painter.fillRect(QRectF(lower, body.top(), 1.6, body.height()), theme.quiet);
      painter.setBrush(theme.quiet);
      for (int mark = 0; mark < 5; ++mark) {
        constexpr double kFirst[7] = {0.53, 0.52, 0.44, 0.1, 0.68, 0.36, 0.545};
        constexpr double kApart[7] = {0.045, 0.045, 0.04, 0.13, 0.004, 0.03, 0.001};
        const double s = kFirst[lane] + mark * kApart[lane];
        painter.drawEllipse(QPointF(body.left() + body.width() * s, body.top() + body.height() * (0.85 - 0.17 * mark)),
                            2.2 * unit, 2.2 * unit);
      }
    }
    const auto write = [&](double top, const QString& title, const QString& text) {
      const double left = picture + theme.px(20);
      painter.setPen(theme.secondary);
      painter.setFont(theme.font(13, true));
      const double line = QFontMetricsF(painter.font()).height();
      painter.drawText(QRectF(left, top, words, line), Qt::AlignLeft, title);
      painter.setFont(theme.font(13));
      painter.drawText(QRectF(left, top + line, words, theme.px(90)), Qt::AlignLeft | Qt::TextWordWrap, text);
    };
    write(plot.top() + theme.px(8), EmptyPage::tr("Curves"),
          EmptyPage::tr("The window’s bands stand behind them; stretches that are out are marked."));
    write(zones_top - theme.px(4), EmptyPage::tr("Zone strip"), EmptyPage::tr("Where the board was at each moment."));
    write(lanes_top + theme.px(14), EmptyPage::tr("Limit lanes"),
          EmptyPage::tr("Every requirement, every thermocouple, with both limits always in the same place."));
  }
};

EmptyPage::EmptyPage(Document* document, ProfileMenus* menus, QWidget* parent)
    : QWidget(parent), m_document(document), m_preview(new Preview(this)) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Base);
  auto* left = m_left = new QVBoxLayout;
  left->addWidget(m_drop = dropBox());
  left->addWidget(m_against = judgedAgainst(menus));
  QLabel* caution = label(
      tr("The verdict rests on the thermocouples, the window and the placement you give it: a qualified person "
         "confirms "
         "it before production. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the "
         "makers’ data sheets stand above anything shown here."),
      theme.font(12), this);
  m_quiet.push_back(caution);
  left->addWidget(caution);
  left->addStretch(1);
  auto* layout = new QHBoxLayout(this);
  layout->setSpacing(int(theme.px(48)));
  layout->addLayout(left, 10);
  layout->addWidget(m_preview, 15);
  connect(document, &Document::setupChanged, this, &EmptyPage::refresh);
  style();
  refresh();
}

void EmptyPage::setRoom(const QSize& room) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_preview->setVisible(room.width() > theme.px(kSketch_px));
  constexpr int kLevels = 3;
  for (int level = 0; level < kLevels; ++level) {
    leaveOut(level);
    if (layout()->totalMinimumHeightForWidth(room.width()) <= room.height()) return;
  }
}

/// @param level  0: all; 1: little is free around the parts; 2: what stands elsewhere is left out
void EmptyPage::leaveOut(int level) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto px = [&](int roomy, int tight) { return int(theme.px(level == 0 ? roomy : tight)); };
  m_against->setVisible(level < 2);
  m_any->setVisible(level < 2);
  layout()->setContentsMargins(px(40, 16), px(40, 8), px(16, 16), px(16, 2));
  m_left->setSpacing(px(16, 8));
  m_drop->layout()->setContentsMargins(px(26, 10), px(26, 10), px(26, 10), px(26, 10));
  m_drop->updateGeometry();
  m_left->invalidate();
  layout()->invalidate();
}

QWidget* EmptyPage::dropBox() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* box = new DashedBox(this);
  auto* layout = new QVBoxLayout(box);
  layout->addWidget(label(tr("Drop a thermocouple log here"), theme.font(21, true), box));
  QLabel* any = label(tr("Any text log, workbook or HTML table: comma, semicolon, tab or fixed columns; °C or °F; "
                         "decimal point or comma. "
                         "The file is read as it is and never changed."),
                      theme.font(13), box);
  m_any = any;
  m_quiet.push_back(any);
  layout->addWidget(any);
  layout->addSpacing(int(theme.px(10)));
  auto* row = new QWidget(box);
  auto* buttons = new FlowRow(row);
  buttons->setContentsMargins({});
  buttons->setSpacing(int(theme.px(8)));
  buttons->setSplit(-1);
  m_open = new QPushButton(tr("Open a log…"), box);
  auto* paste = new QPushButton(tr("Paste a log"), box);
  auto* demo = new QPushButton(tr("Look at the demo run"), box);
  for (QPushButton* button : {m_open, paste, demo}) {
    button->setAutoDefault(false);
    buttons->addWidget(button);
  }
  layout->addWidget(row);
  connect(m_open, &QPushButton::clicked, this, &EmptyPage::openWanted);
  connect(paste, &QPushButton::clicked, this, &EmptyPage::pasteWanted);
  connect(demo, &QPushButton::clicked, this, &EmptyPage::demoWanted);
  return box;
}

QWidget* EmptyPage::judgedAgainst(ProfileMenus* menus) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* block = new QWidget(this);
  auto* layout = new QVBoxLayout(block);
  layout->setContentsMargins({});
  layout->addWidget(label(tr("It will be judged against"), theme.font(13, true), block));
  auto* form = new QFormLayout;
  form->setHorizontalSpacing(int(theme.px(28)));
  form->setVerticalSpacing(int(theme.px(12)));
  form->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
  const auto add = [&](const QString& what, QMenu* menu, const QString& remark) {
    auto* button = new ChooserButton(what, block);
    button->setMenu(menu);
    auto* name = new QLabel(what, block);
    name->setBuddy(button);
    name->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    // Its text stands beside that of the button.
    name->setContentsMargins(0, (button->sizeHint().height() - name->sizeHint().height()) / 2, 0, 0);
    QLabel* text = label(remark, theme.font(12), block);
    m_quiet.push_back(text);
    auto* field = new QVBoxLayout;
    field->setSpacing(int(theme.px(4)));
    field->addWidget(button, 0, Qt::AlignLeft);
    field->addWidget(text);
    form->addRow(name, field);
    return button;
  };
  m_window = add(tr("Window"), menus->windows(),
                 tr("Windows shipped with the program are general. The paste’s own data sheet is the authority."));
  m_oven = add(tr("Oven and recipe"), menus->ovens(),
               tr("Optional. Needed for the zone strip and for the zones behind a result."));
  m_board = add(tr("Board"), menus->boards(), tr("Optional. Says what each thermocouple sits on."));
  layout->addLayout(form);
  return block;
}

void EmptyPage::refresh() {
  const auto& setup = m_document->setup();
  m_window->setChosen(titleOf(setup.windows));
  m_oven->setChosen(setup.oven && setup.recipe ? titleOf(setup.recipe->identity) : tr("None chosen"));
  m_board->setChosen(setup.board ? titleOf(setup.board->identity) : tr("None chosen"));
}

void EmptyPage::style() {
  if (!m_open) return;  // events come before everything is built
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  Appearance::fillWithAccent(m_open, theme);
  for (QLabel* text : m_quiet) Appearance::ink(text, theme.secondary);
}

void EmptyPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
