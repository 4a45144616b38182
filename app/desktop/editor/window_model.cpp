#include "app/desktop/editor/window_model.h"

#include "app/desktop/editor/typed_number.h"
#include "app/desktop/text/language.h"
#include "app/desktop/text/said.h"
#include "app/desktop/widgets/wording.h"
#include "core/window/limit.h"
#include "core/window/window_file.h"

namespace ovenwright::desktop {

QString windowProblem(const window::ProcessWindow& window) {
  // The rules that a file must meet, met by what would be written; the line would be that of a file not saved yet.
  const auto checked =
      window::parse(window.identity.file.empty() ? "window" : window.identity.file, window::window_text(window));
  if (checked) return {};
  QString message = inWords(checked.error().message, QLocale());
  for (const auto& requirement : window.requirements) {
    const auto problem = window::limit_problem(window, requirement);
    if (!problem) continue;
    message = WindowModel::tr("%1: %2").arg(widgets::Wording::requirement(requirement.name),
                                            inWords(problem->message, QLocale()));
    break;
  }
  return message;
}

QString windowProblem(const WindowModel::State& state) {
  if (!state.unread_numbers.empty()) {
    const auto& [number, text] = *state.unread_numbers.begin();
    return WindowModel::tr("%1: %2").arg(WindowModel::title(number), noNumber(text));
  }
  if (state.unread.empty()) return windowProblem(state.draft);
  const auto& [cell, text] = *state.unread.begin();
  window::Requirement copy = state.draft.requirements[std::size_t(cell.first)];
  return setField(copy, RequirementField(cell.second), text);
}

void WindowModel::restore(const State& state) {
  beginResetModel();
  m_state = state;
  endResetModel();
  check();
}

void WindowModel::check() {
  m_problem = windowProblem(m_state);
  emit problemChanged();
}

QString WindowModel::problemWith(const QModelIndex& cell, const QString& text) const {
  State copy = m_state;
  const QString unread =
      setField(copy.draft.requirements[std::size_t(cell.row())], RequirementField(cell.column()), text);
  if (!unread.isEmpty()) return unread;
  copy.unread.erase({cell.row(), cell.column()});
  return windowProblem(copy);
}

void WindowModel::change(const QString& what, const std::function<void(window::ProcessWindow&)>& change, int mergeKey) {
  m_before = m_state;
  change(m_state.draft);
  if (window::window_text(m_state.draft) == window::window_text(m_before.draft)) return;
  check();
  emit edited(what, mergeKey);
}

QString WindowModel::title(WindowNumber number) {
  switch (number) {
    case WindowNumber::kLiquidus:
      return tr("Liquidus");
    case WindowNumber::kSolidus:
      return tr("Solidus");
    case WindowNumber::kInstrument:
      return tr("Instrument");
  }
  return {};
}

void WindowModel::type(WindowNumber number, const QString& text, int mergeKey) {
  if (text == this->text(number)) return;
  m_before = m_state;
  const TypedNumber typed = numberOf(text);
  auto& draft = m_state.draft;
  if (!typed.isSound || (!typed.value && number == WindowNumber::kInstrument)) {
    m_state.unread_numbers[number] = text;
  } else {
    m_state.unread_numbers.erase(number);
    if (number == WindowNumber::kLiquidus) draft.liquidus_C = typed.value;
    if (number == WindowNumber::kSolidus) draft.solidus_C = typed.value;
    if (number == WindowNumber::kInstrument) {
      draft.uncertainty.instrument_C = *typed.value;
      draft.uncertainty.defaulted = false;
    }
  }
  const bool same = m_state.unread_numbers == m_before.unread_numbers &&
                    window::window_text(draft) == window::window_text(m_before.draft);
  if (same) return;
  check();
  emit edited(title(number), mergeKey);
}

QString WindowModel::text(WindowNumber number) const {
  if (const auto typed = m_state.unread_numbers.find(number); typed != m_state.unread_numbers.end())
    return typed->second;
  const auto& draft = m_state.draft;
  return textOf(number == WindowNumber::kLiquidus  ? draft.liquidus_C
                : number == WindowNumber::kSolidus ? draft.solidus_C
                                                   : draft.uncertainty.instrument_C);
}

void WindowModel::addRequirement() {
  m_before = m_state;
  beginResetModel();
  window::Requirement added;
  added.name = "peak";
  added.measure.measure = measure::Measure::kPeak;
  added.source = "common practice, no source";
  for (int number = 2; std::ranges::find(m_state.draft.requirements, added.name, &window::Requirement::name) !=
                       m_state.draft.requirements.end();
       ++number) {
    added.name = "peak " + std::to_string(number);
  }
  m_state.draft.requirements.push_back(added);  // without limits yet: the problem says so
  endResetModel();
  check();
  emit edited(tr("Add a requirement"), -1);
}

void WindowModel::removeRequirement(int row) {
  if (row < 0 || row >= rowCount()) return;
  m_before = m_state;
  beginResetModel();
  m_state.draft.requirements.erase(m_state.draft.requirements.begin() + row);
  m_state.unread.clear();
  endResetModel();
  check();
  emit edited(tr("Remove a requirement"), -1);
}

int WindowModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(m_state.draft.requirements.size());
}
int WindowModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(RequirementField::kCount);
}

QVariant WindowModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
  return fieldTitle(RequirementField(section));
}

QVariant WindowModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto field = RequirementField(index.column());
  const auto unread = m_state.unread.find({index.row(), index.column()});
  const auto& requirement = m_state.draft.requirements[std::size_t(index.row())];
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      if (field == RequirementField::kRequired)
        return role == Qt::EditRole ? QVariant(requirement.required) : QVariant();
      return unread != m_state.unread.end() ? unread->second : fieldText(requirement, field);
    case Qt::CheckStateRole:
      if (field != RequirementField::kRequired) return {};
      return int(requirement.required ? Qt::Checked : Qt::Unchecked);
    case Qt::TextAlignmentRole: {
      const bool number =
          field == RequirementField::kLower || field == RequirementField::kTarget || field == RequirementField::kUpper;
      return int((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    case Qt::ToolTipRole: {
      if (unread != m_state.unread.end()) {
        window::Requirement copy = requirement;
        return setField(copy, field, unread->second);
      }
      if (field == RequirementField::kMeasure)
        return QLatin1String(measure::describe(requirement.measure.measure).definition);
      return fieldText(requirement, field);
    }
    case Qt::AccessibleTextRole:
      return fieldTitle(field) + QStringLiteral(": ") + fieldText(requirement, field);
    default:
      return {};
  }
}

bool WindowModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid()) return false;
  const auto field = RequirementField(index.column());
  QString text = value.toString();
  if (role == Qt::CheckStateRole) {
    text = value.toInt() == Qt::Checked ? QStringLiteral("true") : QStringLiteral("false");
  } else if (role != Qt::EditRole) {
    return false;
  }
  auto& requirement = m_state.draft.requirements[std::size_t(index.row())];
  const bool was_unread = m_state.unread.contains({index.row(), index.column()});
  if (text == fieldText(requirement, field) && !was_unread) return false;
  m_before = m_state;
  const QString unread = setField(requirement, field, text);
  if (unread.isEmpty()) {
    m_state.unread.erase({index.row(), index.column()});
  } else {
    m_state.unread[{index.row(), index.column()}] = text;
  }
  emit dataChanged(this->index(index.row(), 0), this->index(index.row(), columnCount() - 1));
  check();
  emit edited(tr("%1: %2 %3").arg(QString::fromStdString(requirement.name), insideSentence(fieldTitle(field)), text),
              -1);
  return true;
}

Qt::ItemFlags WindowModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  if (RequirementField(index.column()) == RequirementField::kRequired) return flags | Qt::ItemIsUserCheckable;
  return flags | Qt::ItemIsEditable;
}

}  // namespace ovenwright::desktop
