#pragma once
#include <QLayout>
#include <QList>

namespace ovenwright::desktop {

/// Cells of one width side by side, as many in a row as the widest one and `most` allow; the others go into rows below.
/// A form with it fits narrow windows and large text without a bar at its foot.
class FieldGrid : public QLayout {
 public:
  FieldGrid(QWidget* parent, int most) : QLayout(parent), m_most(most) {}
  ~FieldGrid() override;

  /// The title over the field, and its key going to `buddy`, else to the field.
  void addField(const QString& title, QWidget* field, QWidget* buddy = nullptr);
  void setBetween(int across, int down);  ///< px
  void addItem(QLayoutItem* item) override { m_items.append(item); }
  int count() const override { return int(m_items.size()); }
  QLayoutItem* itemAt(int index) const override { return m_items.value(index); }
  QLayoutItem* takeAt(int index) override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override { return place(QRect(0, 0, width, 0), false); }
  QSize sizeHint() const override { return minimumSize(); }
  QSize minimumSize() const override;  ///< of one column's width
  void setGeometry(const QRect& rect) override;

 private:
  /// @return the height that is needed
  int place(const QRect& rect, bool apply) const;

  QList<QLayoutItem*> m_items;
  int m_most, m_across = 0, m_down = 0;
};

}  // namespace ovenwright::desktop
