#pragma once
#include <QWidget>
#include <optional>

#include "app/desktop/widgets/board_painter.h"
#include "app/desktop/widgets/board_table.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::widgets {

/// The board with a call-out for each thermocouple: where it sits, its value and its margin in one requirement. A line,
/// a link, where no board is chosen.
class BoardPicture : public QWidget {
  Q_OBJECT
 public:
  explicit BoardPicture(QWidget* parent = nullptr);
  ~BoardPicture() override;

  /// Empty: no board.
  void setTable(std::optional<BoardTable> table);
  const BoardTable& table() const { return m_table; }
  /// "Choose a board …" where there is none; else empty.
  QString line() const;
  const BoardState& state() const { return m_state; }
  BoardLayout layoutNow() const { return BoardLayout(m_table, m_theme, rect()); }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 public slots:
  void setChosenOutcome(std::optional<std::size_t> outcome);
  void setHighlightedChannel(std::optional<std::size_t> channel);
  /// As a click on a call-out does.
  void choose(std::size_t mark);

 signals:
  void chosen(std::size_t outcome);
  void activated(std::size_t outcome);
  void channelHovered(std::optional<std::size_t> channel);
  void boardWanted();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void hover(std::optional<std::size_t> mark);
  void step(int by);
  QRectF lineRect() const;

  bool m_hasBoard = false;
  BoardTable m_table;
  BoardState m_state;
  Theme m_theme;
};

}  // namespace ovenwright::widgets
