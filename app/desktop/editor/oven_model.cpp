#include "app/desktop/editor/oven_model.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "app/desktop/editor/typed_number.h"
#include "app/desktop/text/said.h"
#include "core/oven/oven_file.h"

namespace ovenwright::desktop {
namespace {

constexpr int kFirstMergeKey = 40;  // of the fields, apart from those of the document's other forms

bool isLong(OvenField field) {
  return field == OvenField::kEntrance || field == OvenField::kExit || field == OvenField::kLeastSpeed ||
         field == OvenField::kMostSpeed;
}

/// Millimetres run into the thousands: what may be "1,000" or 1.000 is asked for again.
TypedNumber longNumberOf(const QString& text) {
  return mayPartThousands(text) ? TypedNumber{{}, false} : numberOf(text);
}

TypedNumber numberIn(OvenField field, const QString& text) {
  return isLong(field) ? longNumberOf(text) : numberOf(text);
}

QString noNumber(const QString& text) { return OvenModel::tr("“%1” is no number").arg(text); }

QString noLongNumber(const QString& text) {
  return mayPartThousands(text) ? OvenModel::tr(
                                      "“%1” can mean thousands or decimals: type thousands without a sign, "
                                      "decimals with one or two digits")
                                      .arg(text)
                                : noNumber(text);
}

/// The ends of a limit that has two.
using Range = std::optional<std::array<double, 2>>;

struct Ends {
  OvenField least, most;
  Range oven::Limits::*limit;
};

constexpr Ends kRanges[] = {{OvenField::kLeastSetpoint, OvenField::kMostSetpoint, &oven::Limits::setpoint_C},
                            {OvenField::kLeastSpeed, OvenField::kMostSpeed, &oven::Limits::speed_mm_per_min}};

const Ends* rangeOf(OvenField field) {
  const auto* found =
      std::ranges::find_if(kRanges, [field](const Ends& ends) { return ends.least == field || ends.most == field; });
  return found == std::end(kRanges) ? nullptr : found;
}

}  // namespace

QString ovenProblem(const oven::Oven& oven) {
  // The rules that a file must meet, met by what would be written; the line would be that of a file not saved yet.
  const auto checked = oven::parse_oven("oven", oven::oven_text(oven));
  return checked ? QString() : inWords(checked.error().message, QLocale());
}

QString OvenModel::title(OvenField field) {
  switch (field) {
    case OvenField::kName:
      return tr("Name");
    case OvenField::kAmbient:
      return tr("Ambient, °C");
    case OvenField::kEntrance:
      return tr("Mouth to first zone, mm");
    case OvenField::kExit:
      return tr("Last zone to end, mm");
    case OvenField::kLeastSetpoint:
      return tr("Setpoints from, °C");
    case OvenField::kMostSetpoint:
      return tr("Setpoints to, °C");
    case OvenField::kLeastSpeed:
      return tr("Speed from, mm/min");
    case OvenField::kMostSpeed:
      return tr("Speed to, mm/min");
    case OvenField::kStep:
      return tr("Step to next zone, °C");
    case OvenField::kSides:
      return tr("Top to bottom, °C");
    case OvenField::kCount:
      break;
  }
  return {};
}

void OvenModel::setOven(const oven::Oven& oven) {
  beginResetModel();
  m_draft = oven;
  m_handedOn = oven::oven_text(oven);
  m_typed.clear();
  m_unread.clear();
  endResetModel();
  check();
}

void OvenModel::setTimes(QStringList times) {
  m_times.assign(times.begin(), times.end());
  if (rowCount() > 0) emit dataChanged(index(0, kTimes), index(rowCount() - 1, kTimes));
}

void OvenModel::check() {
  m_problem.clear();
  // A text that is no number stands before an end that waits: the other end may be that text.
  const auto unsound = std::ranges::find_if(
      m_typed, [](const auto& typed) { return !rangeOf(typed.first) || !numberIn(typed.first, typed.second).isSound; });
  if (unsound != m_typed.end()) {
    const auto& [field, text] = *unsound;
    m_problem = tr("%1: %2").arg(title(field), isLong(field) ? noLongNumber(text) : noNumber(text));
  } else if (!m_typed.empty()) {
    m_problem = tr("%1: its other end is missing").arg(title(m_typed.begin()->first));
  } else {
    m_problem = m_unread.empty() ? ovenProblem(m_draft) : noLongNumber(m_unread.begin()->second);
  }
  emit problemChanged();
}

void OvenModel::handOn(const QString& what, int mergeKey) {
  check();
  if (!m_problem.isEmpty()) return;
  const std::string text = oven::oven_text(m_draft);
  if (text != std::exchange(m_handedOn, text)) emit edited(what, mergeKey);
}

QString OvenModel::text(OvenField field) const {
  if (const auto typed = m_typed.find(field); typed != m_typed.end()) return typed->second;
  if (const Ends* ends = rangeOf(field)) {
    const Range& range = m_draft.limits.*ends->limit;
    return range ? textOf((*range)[field == ends->most ? 1 : 0]) : QString();
  }
  switch (field) {
    case OvenField::kName:
      return QString::fromStdString(m_draft.identity.name);
    case OvenField::kAmbient:
      return textOf(m_draft.ambient_C);
    case OvenField::kEntrance:
      return textOf(m_draft.entrance_mm);
    case OvenField::kExit:
      return textOf(m_draft.exit_mm);
    case OvenField::kStep:
      return textOf(m_draft.limits.step_between_zones_C);
    case OvenField::kSides:
      return textOf(m_draft.limits.top_bottom_difference_C);
    default:
      return {};
  }
}

bool OvenModel::says(OvenField field, const QString& typed) const {
  const QString shown = text(field);
  if (typed == shown || field == OvenField::kName) return typed == shown;
  const TypedNumber number = numberIn(field, typed), has = numberOf(shown);
  if (!number.isSound || !has.isSound) return false;
  const bool none_is_zero = field == OvenField::kEntrance || field == OvenField::kExit;
  return none_is_zero ? number.value.value_or(0) == has.value.value_or(0) : number.value == has.value;
}

void OvenModel::type(OvenField field, const QString& typed) {
  if (text(field) == typed) return;
  const TypedNumber number = numberIn(field, typed);
  m_typed.erase(field);
  if (const Ends* ends = rangeOf(field)) {
    // Both ends make a limit, none makes it absent; one of them waits for the other.
    const OvenField other = field == ends->least ? ends->most : ends->least;
    QString other_text = text(other);
    if (!m_typed.contains(other) && mayPartThousands(other_text)) other_text += u'0';  // the file's, and no thousands
    const TypedNumber other_number = numberIn(other, other_text);
    Range& range = m_draft.limits.*ends->limit;
    m_typed.erase(other);
    if (number.isSound && other_number.isSound && number.value.has_value() == other_number.value.has_value()) {
      range.reset();
      if (number.value)
        range = field == ends->least ? std::array{*number.value, *other_number.value}
                                     : std::array{*other_number.value, *number.value};
    } else {
      m_typed[field] = typed;
      m_typed[other] = other_text;
      std::erase_if(m_typed, [&](const auto& one) { return rangeOf(one.first) == ends && one.second.isEmpty(); });
      range.reset();
    }
  } else if (field == OvenField::kName) {
    m_draft.identity.name = typed.toStdString();
  } else if (!number.isSound || (!number.value && field == OvenField::kAmbient)) {
    m_typed[field] = typed;
  } else {
    const double value = number.value.value_or(0);
    if (field == OvenField::kAmbient) m_draft.ambient_C = value;
    if (field == OvenField::kEntrance) m_draft.entrance_mm = value;
    if (field == OvenField::kExit) m_draft.exit_mm = value;
    if (field == OvenField::kStep) m_draft.limits.step_between_zones_C = number.value;
    if (field == OvenField::kSides) m_draft.limits.top_bottom_difference_C = number.value;
  }
  if (rowCount() > 0) emit dataChanged(index(0, kBegins), index(rowCount() - 1, kBegins));
  handOn(title(field), kFirstMergeKey + int(field));
}

QString OvenModel::problemWith(const QModelIndex& cell, const QString& text) const {
  OvenModel copy;
  copy.m_draft = m_draft;
  copy.m_typed = m_typed;
  copy.m_unread = m_unread;
  copy.setData(copy.index(cell.row(), cell.column()), text, Qt::EditRole);
  copy.check();
  return copy.problem();
}

int OvenModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_draft.zones.size()); }
int OvenModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(kColumns); }

QString OvenModel::cellText(const oven::Zone& zone, int row, int column) const {
  switch (column) {
    case kZone:
      return QString::fromStdString(zone.name);
    case kKind:
      return zone.kind == oven::ZoneKind::kHeat ? tr("heats") : tr("cools");
    case kBegins:
      return textOf(m_draft.zone_start_mm(std::size_t(row)));
    case kLength:
      return textOf(zone.length_mm);
    case kGap:
      return textOf(zone.gap_after_mm);
    default:
      return std::size_t(row) < m_times.size() ? m_times[std::size_t(row)] : QString();
  }
}

QVariant OvenModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case kZone:
      return tr("Zone");
    case kKind:
      return tr("Kind");
    case kBegins:
      return tr("Begins at, mm");
    case kLength:
      return tr("Length, mm");
    case kGap:
      return tr("Gap after it, mm");
    default:
      return tr("Board there, s");
  }
}

QVariant OvenModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto& zone = m_draft.zones[std::size_t(index.row())];
  const auto unread = m_unread.find({index.row(), index.column()});
  const QString text = unread == m_unread.end() ? cellText(zone, index.row(), index.column()) : unread->second;
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text;
    case Qt::TextAlignmentRole:
      return int((index.column() >= kBegins ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case Qt::ToolTipRole:
      if (unread != m_unread.end()) return noLongNumber(unread->second);
      if (index.column() == kBegins) return tr("From the oven’s mouth, out of the lengths and gaps before it");
      return index.column() == kTimes ? tr("From the oven entry, at the speed of the recipe") : QString();
    case Qt::AccessibleTextRole:
      return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() + QStringLiteral(": ") + text;
    default:
      return {};
  }
}

bool OvenModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable)) return false;
  auto& zone = m_draft.zones[std::size_t(index.row())];
  const QString typed = value.toString();
  const std::pair cell{index.row(), index.column()};
  if (typed == cellText(zone, index.row(), index.column()) && m_unread.erase(cell) == 0) return false;
  m_unread.erase(cell);
  const QString name = QString::fromStdString(zone.name);  // as it was
  if (index.column() == kZone) {
    zone.name = typed.trimmed().toStdString();
  } else if (const TypedNumber number = longNumberOf(typed);
             number.isSound && (number.value || index.column() == kGap)) {
    (index.column() == kLength ? zone.length_mm : zone.gap_after_mm) = number.value.value_or(0);
  } else {
    m_unread[cell] = typed;
  }
  emit dataChanged(this->index(index.row(), 0), this->index(rowCount() - 1, kColumns - 1));
  const QString what = index.column() == kZone     ? tr("Zone %1: name %2")
                       : index.column() == kLength ? tr("Zone %1: length %2 mm")
                                                   : tr("Zone %1: gap after it %2 mm");
  handOn(what.arg(name, typed.trimmed()), -1);
  return true;
}

Qt::ItemFlags OvenModel::flags(const QModelIndex& index) const {
  const bool fixed = index.column() == kKind || index.column() == kBegins || index.column() == kTimes;
  return QAbstractTableModel::flags(index) | (fixed ? Qt::NoItemFlags : Qt::ItemIsEditable);
}

}  // namespace ovenwright::desktop
