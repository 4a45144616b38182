#include "app/desktop/compare/group_picker.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/widgets/wording.h"
#include "app/desktop/window/sign_icon.h"

namespace ovenwright::desktop {
namespace {

enum Column { kName, kRecipe, kLot, kOven, kBoard, kVerdict, kA, kB, kColumns };

constexpr QString GroupMember::*kProperties[] = {&GroupMember::recipe, &GroupMember::lot, &GroupMember::oven,
                                                 &GroupMember::board};

/// What the runs have, in order of time, each once.
QStringList valuesOf(const std::vector<GroupMember>& members, QString GroupMember::*property) {
  QStringList values;
  for (const GroupMember& member : members)
    if (!values.contains(member.*property)) values << member.*property;
  return values;
}

}  // namespace

GroupPicker::GroupPicker(QWidget* parent)
    : QDialog(parent),
      m_by(new QComboBox),
      m_values{new QComboBox, new QComboBox},
      m_table(new QTableWidget),
      m_state(new QLabel),
      m_take(new QPushButton(tr("&Compare"))) {
  setWindowTitle(tr("Two groups of runs"));
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* divide_row = new QHBoxLayout;
  const auto add = [&](const QString& text, QComboBox* box, int stretch) {
    auto* label = new QLabel(text);
    label->setBuddy(box);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(8);
    divide_row->addWidget(label);
    divide_row->addWidget(box, stretch);
  };
  add(tr("&Divide by"), m_by, 1);
  add(tr("&A"), m_values[0], 2);
  add(tr("&B"), m_values[1], 2);
  m_values[0]->setAccessibleName(tr("Into A go the runs of"));
  m_values[1]->setAccessibleName(tr("Into B go the runs of"));
  m_table->setColumnCount(kColumns);
  m_table->setHorizontalHeaderLabels(
      {tr("Run"), tr("Recipe"), tr("Lot"), tr("Oven"), tr("Board"), tr("Verdict"), tr("A"), tr("B")});
  m_table->setAccessibleName(tr("Runs and the group of each"));
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->verticalHeader()->hide();
  m_table->setShowGrid(false);
  m_table->setWordWrap(false);
  m_state->setWordWrap(true);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  buttons->addButton(m_take, QDialogButtonBox::AcceptRole);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(divide_row);
  layout->addWidget(m_table, 1);
  layout->addWidget(m_state);
  layout->addWidget(buttons);
  resize(int(theme.px(860)), int(theme.px(460)));
  connect(m_by, &QComboBox::activated, this, [this] {
    fillValues();
    divide();
  });
  for (QComboBox* box : m_values) connect(box, &QComboBox::activated, this, &GroupPicker::divide);
  connect(m_table, &QTableWidget::itemChanged, this, &GroupPicker::itemChanged);
  connect(m_take, &QPushButton::clicked, this, &GroupPicker::take);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
}

int GroupPicker::markColumn(std::size_t side) const { return side == 0 ? kA : kB; }

void GroupPicker::ask(std::vector<GroupMember> members, const std::vector<std::optional<std::size_t>>& sides) {
  m_members = std::move(members);
  m_quiet = true;
  fillTable();
  fillProperties();
  m_quiet = false;
  const bool said = std::ranges::any_of(sides, [](const auto& side) { return side.has_value(); });
  if (said) m_by->setCurrentIndex(m_by->count() - 1);
  fillValues();
  const std::size_t half = (m_members.size() + 1) / 2;
  for (std::size_t row = 0; row < m_members.size(); ++row) {
    std::optional<std::size_t> side = row < half ? 0 : 1;
    if (said) side = row < sides.size() ? sides[row] : std::nullopt;
    setSide(int(row), side);
  }
  if (!said) divide();
  refresh();
  open();
}

void GroupPicker::fillTable() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_table->setRowCount(int(m_members.size()));
  for (int row = 0; row < int(m_members.size()); ++row) {
    const GroupMember& member = m_members[std::size_t(row)];
    const QString texts[] = {member.name, member.recipe, member.lot,
                             member.oven, member.board,  widgets::Wording::verdictTitle(member.verdict)};
    for (int column = kName; column <= kVerdict; ++column) {
      auto* item = new QTableWidgetItem(texts[column]);
      item->setToolTip(texts[column]);
      item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
      m_table->setItem(row, column, item);
    }
    m_table->item(row, kVerdict)->setIcon(signIcon(member.verdict, theme, devicePixelRatioF()));
    for (const int column : {kA, kB}) {
      auto* item = new QTableWidgetItem;
      item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
      item->setCheckState(Qt::Unchecked);
      item->setData(Qt::AccessibleTextRole,
                    column == kA ? tr("%1 in A").arg(member.name) : tr("%1 in B").arg(member.name));
      m_table->setItem(row, column, item);
    }
  }
  // What none of them has says nothing.
  for (std::size_t i = 0; i < std::size(kProperties); ++i)
    m_table->setColumnHidden(kRecipe + int(i), valuesOf(m_members, kProperties[i]) == QStringList{QString()});
  m_table->resizeColumnsToContents();
  m_table->horizontalHeader()->setSectionResizeMode(kName, QHeaderView::Stretch);
}

void GroupPicker::fillProperties() {
  m_by->clear();
  const QString names[] = {tr("Recipe"), tr("Lot"), tr("Oven"), tr("Board")};
  for (std::size_t i = 0; i < std::size(kProperties); ++i)
    if (valuesOf(m_members, kProperties[i]).size() > 1) m_by->addItem(names[i], int(i));
  m_by->addItem(tr("The marks below"), -1);
}

void GroupPicker::fillValues() {
  const int at = m_by->currentData().toInt();
  QStringList values;
  if (at >= 0) values = valuesOf(m_members, kProperties[at]);
  for (QComboBox* box : m_values) {
    box->clear();
    for (const QString& value : values) {
      const auto n = std::ranges::count(m_members, value, kProperties[at]);
      box->addItem(
          tr("%1: %n runs", "a recipe, lot, oven or board", int(n)).arg(value.isEmpty() ? tr("not said") : value),
          value);
    }
    box->setEnabled(at >= 0);
  }
  if (at < 0) return;
  m_values[0]->setCurrentIndex(int(values.indexOf(m_members.front().*kProperties[at])));
  const QString newest = m_members.back().*kProperties[at];
  m_values[1]->setCurrentIndex(newest == m_members.front().*kProperties[at] ? int(values.size()) - 1
                                                                            : int(values.indexOf(newest)));
}

void GroupPicker::divide() {
  const int at = m_by->currentData().toInt();
  if (at < 0) return;  // the marks stay as they are
  for (std::size_t row = 0; row < m_members.size(); ++row) {
    std::optional<std::size_t> side;
    for (const std::size_t which : {1, 0})
      if (m_values[which]->currentData().toString() == m_members[row].*kProperties[at]) side = which;
    setSide(int(row), side);
  }
  refresh();
}

void GroupPicker::setSide(int row, std::optional<std::size_t> side) {
  const bool quiet = std::exchange(m_quiet, true);
  for (const std::size_t which : {0, 1})
    m_table->item(row, markColumn(which))->setCheckState(side == which ? Qt::Checked : Qt::Unchecked);
  m_quiet = quiet;
}

void GroupPicker::itemChanged(QTableWidgetItem* item) {
  if (m_quiet || (item->column() != kA && item->column() != kB)) return;
  if (item->checkState() == Qt::Checked) setSide(item->row(), item->column() == kA ? 0 : 1);
  m_by->setCurrentIndex(m_by->count() - 1);
  for (QComboBox* box : m_values) box->setEnabled(false);
  refresh();
}

QStringList GroupPicker::group(std::size_t side) const {
  QStringList keys;
  for (int row = 0; row < m_table->rowCount(); ++row)
    if (m_table->item(row, markColumn(side))->checkState() == Qt::Checked) keys << m_members[std::size_t(row)].key;
  return keys;
}

void GroupPicker::refresh() {
  const auto a = group(0).size(), b = group(1).size();
  QString text = tr("%1, %2", "what A has, what B has")
                     .arg(tr("A has %n runs", nullptr, int(a)), tr("B has %n runs.", nullptr, int(b)));
  if (a == 0 || b == 0)
    text = paragraph({text, tr("Each needs one at least.")});
  else if (a == 1 || b == 1)
    text = paragraph({text, tr("An interval for the differences needs two on each side.")});
  m_state->setText(text);
  m_take->setEnabled(a > 0 && b > 0);
}

void GroupPicker::take() {
  if (!m_take->isEnabled()) return;
  close();
  emit picked(group(0), group(1));
}

}  // namespace ovenwright::desktop
