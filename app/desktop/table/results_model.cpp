#include "app/desktop/table/results_model.h"

#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

template <class T>
QVariant variant(const std::optional<T>& value) {
  return value ? QVariant(*value) : QVariant();
}

bool isNumber(int column) {
  return column >= ResultsModel::kValue && column <= ResultsModel::kTo && column != ResultsModel::kUnit;
}

}  // namespace

void ResultsModel::setRun(std::shared_ptr<const RunView> view, const Format& format) {
  beginResetModel();
  m_view = std::move(view);
  m_format = format;
  endResetModel();
}

int ResultsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !m_view ? 0 : int(m_view->judgement().all_size());
}

int ResultsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColumns; }

QVariant ResultsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case kVerdict:
      return tr("Verdict");
    case kRequirement:
      return tr("Requirement");
    case kPlacement:
      return tr("Placement");
    case kValue:
      return tr("Value");
    case kUncertainty:
      return tr("± U");
    case kUnit:
      return tr("Unit");
    case kLower:
      return tr("Lower limit");
    case kUpper:
      return tr("Upper limit");
    case kMargin:
      return tr("Margin");
    case kProbability:
      return tr("Probability inside");
    case kFrom:
      return tr("From, s");
    case kTo:
      return tr("To, s");
    case kZones:
      return tr("Zones");
    case kSource:
      return tr("Source of the limit");
    default:
      return {};
  }
}

QVariant ResultsModel::number(const judge::Outcome& outcome, int column) const {
  switch (column) {
    case kVerdict:
      return int(outcome.verdict);
    case kValue:
      return variant(outcome.value.value);
    case kUncertainty:
      return variant(outcome.value.expanded_uncertainty);
    case kLower:
      return variant(outcome.lower);
    case kUpper:
      return variant(outcome.upper);
    case kMargin:
      return variant(outcome.margin);
    case kProbability:
      return variant(outcome.conformance_probability);
    case kFrom:
      return variant(outcome.value.from_s);
    case kTo:
      return variant(outcome.value.to_s);
    default:
      return text(outcome, column);
  }
}

QVariant ResultsModel::text(const judge::Outcome& outcome, int column) const {
  const widgets::Wording wording(m_format);
  switch (column) {
    case kVerdict:
      return widgets::Wording::verdict(outcome.verdict);
    case kRequirement: {
      const QString title = widgets::Wording::title(outcome.requirement_name), note = wording.parameterNote(outcome);
      return note.isEmpty() ? title : title + u' ' + note;
    }
    case kPlacement:
      return outcome.channel ? m_view->name(outcome) : tr("board");
    case kValue:
      return wording.value(outcome);
    case kUncertainty:
      return wording.uncertainty(outcome);
    case kUnit:
      return wording.unit(outcome);
    case kLower:
      return outcome.lower ? wording.limit(*outcome.lower, outcome) : QString();
    case kUpper:
      return outcome.upper ? wording.limit(*outcome.upper, outcome) : QString();
    case kMargin:
      return wording.margin(outcome);
    case kProbability:
      return outcome.conformance_probability
                 ? m_format.number(100 * *outcome.conformance_probability, 1) + QStringLiteral(" %")
                 : QString();
    case kFrom:
      return outcome.value.from_s ? m_format.seconds(*outcome.value.from_s - m_view->origin_s()) : QString();
    case kTo:
      return outcome.value.to_s ? m_format.seconds(*outcome.value.to_s - m_view->origin_s()) : QString();
    case kZones: {
      QStringList zones;
      for (const auto& zone : outcome.zones) zones << QString::fromStdString(zone);
      return zones.join(QStringLiteral(", "));
    }
    case kSource:
      return QString::fromStdString(outcome.source);
    default:
      return {};
  }
}

QVariant ResultsModel::data(const QModelIndex& index, int role) const {
  if (!m_view || !index.isValid()) return {};
  const auto& outcome = m_view->judgement().all(std::size_t(index.row()));
  switch (role) {
    case Qt::DisplayRole:
      return text(outcome, index.column());
    case kSortRole:
      return number(outcome, index.column());
    case kVerdictRole:
      return int(outcome.verdict);
    case kInformativeRole:
      return !outcome.required;
    case Qt::TextAlignmentRole:
      return int((isNumber(index.column()) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case Qt::ToolTipRole:
      return index.column() == kSource ? text(outcome, kSource) : QVariant();
    case Qt::AccessibleTextRole:
      return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() + QStringLiteral(": ") +
             text(outcome, index.column()).toString();
    default:
      return {};
  }
}

}  // namespace ovenwright::desktop
