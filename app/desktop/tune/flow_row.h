#pragma once
#include <QLayout>
#include <optional>

namespace ovenwright::desktop {

/// Widgets side by side, in as many rows as they need. Those from `split` on stand at the right where all fit one row;
/// a hint is left out where it alone would need another row.
class FlowRow : public QLayout {
 public:
  explicit FlowRow(QWidget* parent) : QLayout(parent) {}
  ~FlowRow() override;

  void setSplit(int split) { m_split = split; }
  void setHint(std::optional<int> index);
  void setRowSpacing(int px) { m_between = px; }  ///< else as between the widgets
  void addItem(QLayoutItem* item) override { m_items.append(item); }
  int count() const override { return int(m_items.size()); }
  QLayoutItem* itemAt(int index) const override { return m_items.value(index); }
  QLayoutItem* takeAt(int index) override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override { return place(QRect(0, 0, width, 0), false); }
  QSize sizeHint() const override { return minimumSize(); }
  QSize minimumSize() const override;  ///< of the widest alone
  void setGeometry(const QRect& rect) override;

 private:
  /// @return the height that is needed
  int place(const QRect& rect, bool apply) const;

  QList<QLayoutItem*> m_items;
  int m_split = 0, m_between = -1;
  std::optional<int> m_hint;
};

}  // namespace ovenwright::desktop
