#include "app/desktop/editor/oven_model.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

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
  m_handedOn = oven::oven_text(oven);
  restore({oven});
}

void OvenModel::restore(const State& state) {
  beginResetModel();
  m_state = state;
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
      m_state.typed, [](const auto& typed) { return !rangeOf(typed.first) || !typed.second.number.isSound; });
  if (unsound != m_state.typed.end()) {
    const auto& [field, typed] = *unsound;
    m_problem = tr("%1: %2").arg(title(field), isLong(field) ? noLongNumber(typed.text) : noNumber(typed.text));
  } else if (!m_state.typed.empty()) {
    m_problem = tr("%1: its other end is missing").arg(title(m_state.typed.begin()->first));
  } else {
    m_problem = m_state.unread.empty() ? ovenProblem(draft()) : noLongNumber(m_state.unread.begin()->second);
  }
  emit problemChanged();
}

void OvenModel::handOn(const QString& what, int mergeKey) {
  check();
  if (!m_problem.isEmpty()) return;
  const std::string text = oven::oven_text(draft());
  if (text != std::exchange(m_handedOn, text)) emit edited(what, mergeKey);
}

std::optional<double> OvenModel::endOf(OvenField field) const {
  const Ends* ends = rangeOf(field);
  const Range& range = draft().limits.*ends->limit;
  return range ? std::optional((*range)[field == ends->most ? 1 : 0]) : std::nullopt;
}

QString OvenModel::text(OvenField field) const {
  if (const auto typed = m_state.typed.find(field); typed != m_state.typed.end()) return typed->second.text;
  if (rangeOf(field)) return textOf(endOf(field));
  switch (field) {
    case OvenField::kName:
      return QString::fromStdString(draft().identity.name);
    case OvenField::kAmbient:
      return textOf(draft().ambient_C);
    case OvenField::kEntrance:
      return textOf(draft().entrance_mm);
    case OvenField::kExit:
      return textOf(draft().exit_mm);
    case OvenField::kStep:
      return textOf(draft().limits.step_between_zones_C);
    case OvenField::kSides:
      return textOf(draft().limits.top_bottom_difference_C);
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
  auto& waiting = m_state.typed;
  oven::Oven& oven = m_state.draft;
  waiting.erase(field);
  if (const Ends* ends = rangeOf(field)) {
    // Both ends make a limit, none makes it absent; one of them waits for the other.
    const OvenField other = field == ends->least ? ends->most : ends->least;
    // An end that nobody typed is a number already, whatever its text could mean.
    const auto typed_before = waiting.find(other);
    const Typed end = typed_before != waiting.end() ? typed_before->second : Typed{text(other), {endOf(other)}};
    Range& range = oven.limits.*ends->limit;
    waiting.erase(other);
    range.reset();
    if (number.isSound && end.number.isSound && number.value.has_value() == end.number.value.has_value()) {
      if (number.value)
        range = field == ends->least ? std::array{*number.value, *end.number.value}
                                     : std::array{*end.number.value, *number.value};
    } else {
      waiting[field] = {typed, number};
      waiting[other] = end;
      std::erase_if(waiting, [&](const auto& one) { return rangeOf(one.first) == ends && one.second.text.isEmpty(); });
    }
  } else if (field == OvenField::kName) {
    oven.identity.name = typed.toStdString();
  } else if (!number.isSound || (!number.value && field == OvenField::kAmbient)) {
    waiting[field] = {typed, number};
  } else {
    const double value = number.value.value_or(0);
    if (field == OvenField::kAmbient) oven.ambient_C = value;
    if (field == OvenField::kEntrance) oven.entrance_mm = value;
    if (field == OvenField::kExit) oven.exit_mm = value;
    if (field == OvenField::kStep) oven.limits.step_between_zones_C = number.value;
    if (field == OvenField::kSides) oven.limits.top_bottom_difference_C = number.value;
  }
  if (rowCount() > 0) emit dataChanged(index(0, kBegins), index(rowCount() - 1, kBegins));
  handOn(title(field), kFirstMergeKey + int(field));
}

QString OvenModel::problemWith(const QModelIndex& cell, const QString& text) const {
  OvenModel copy;
  copy.m_state = m_state;
  copy.setData(copy.index(cell.row(), cell.column()), text, Qt::EditRole);
  copy.check();
  return copy.problem();
}

int OvenModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(draft().zones.size()); }
int OvenModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(kColumns); }

QString OvenModel::cellText(const oven::Zone& zone, int row, int column) const {
  switch (column) {
    case kZone:
      return QString::fromStdString(zone.name);
    case kKind:
      return zone.kind == oven::ZoneKind::kHeat ? tr("heats") : tr("cools");
    case kBegins:
      return textOf(draft().zone_start_mm(std::size_t(row)));
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
  const auto& zone = draft().zones[std::size_t(index.row())];
  const auto unread = m_state.unread.find({index.row(), index.column()});
  const QString text = unread == m_state.unread.end() ? cellText(zone, index.row(), index.column()) : unread->second;
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text;
    case Qt::TextAlignmentRole:
      return int((index.column() >= kBegins ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case Qt::ToolTipRole:
      if (unread != m_state.unread.end()) return noLongNumber(unread->second);
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
  auto& zone = m_state.draft.zones[std::size_t(index.row())];
  const QString typed = value.toString();
  const std::pair cell{index.row(), index.column()};
  if (typed == cellText(zone, index.row(), index.column()) && m_state.unread.erase(cell) == 0) return false;
  m_state.unread.erase(cell);
  const QString name = QString::fromStdString(zone.name);  // as it was
  if (index.column() == kZone) {
    zone.name = typed.trimmed().toStdString();
  } else if (const TypedNumber number = longNumberOf(typed);
             number.isSound && (number.value || index.column() == kGap)) {
    (index.column() == kLength ? zone.length_mm : zone.gap_after_mm) = number.value.value_or(0);
  } else {
    m_state.unread[cell] = typed;
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
