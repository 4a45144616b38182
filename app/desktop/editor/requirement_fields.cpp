#include "app/desktop/editor/requirement_fields.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include "app/desktop/text/said.h"
#include "core/measure/parameter.h"
#include "core/window/limit.h"

namespace ovenwright::desktop {
namespace {

QString withPoint(QString text) { return text.trimmed().replace(u',', u'.').replace(QChar(0x2212), u'-'); }

QString limitText(const std::optional<window::Limit>& limit) {
  if (!limit) return {};
  return QString::fromStdString(window::limit_text(*limit)).remove(u'"');
}

QString setLimit(std::optional<window::Limit>& limit, const QString& typed) {
  const QString text = withPoint(typed);
  if (text.isEmpty()) {
    limit.reset();
    return {};
  }
  bool is_number = false;
  const double number = text.toDouble(&is_number);
  if (is_number) {
    limit = number;
    return {};
  }
  if (auto tc = window::limit_of(text.toStdString())) {
    limit = *tc;
    return {};
  }
  return QCoreApplication::translate("WindowEditor", "“%1” is no limit: expected a number, or Tc, Tc-5").arg(typed);
}

QString parametersText(const measure::Definition& definition) {
  QStringList parts;
  for (const auto& parameter : measure::parameters_of(definition)) {
    const auto* number = std::get_if<double>(&parameter.value);
    const QString value =
        number ? QString::number(*number, 'g', 10) : QString::fromStdString(std::get<std::string>(parameter.value));
    parts << QString::fromStdString(parameter.name) + u'=' + value;
  }
  return parts.join(QStringLiteral(", "));
}

QString setParameters(measure::Definition& definition, const QString& text) {
  measure::Definition changed;
  changed.measure = definition.measure;
  for (const QString& part : text.split(QRegularExpression(QStringLiteral("[,;]")), Qt::SkipEmptyParts)) {
    const qsizetype equals = part.indexOf(u'=');
    if (equals < 0)
      return QCoreApplication::translate("WindowEditor", "“%1” is no parameter: expected a name, = and a value")
          .arg(part.trimmed());
    const QString value = part.mid(equals + 1).trimmed();
    bool is_number = false;
    const double number = value.toDouble(&is_number);
    const auto error = measure::set_parameter(
        changed, part.left(equals).trimmed().toStdString(),
        is_number ? measure::ParameterValue(number) : measure::ParameterValue(value.toStdString()));
    if (error) return inWords(error->message, QLocale());
  }
  definition = changed;
  return {};
}

QString appliesToText(const window::AppliesTo& applies) {
  switch (applies.kind) {
    case window::AppliesTo::Kind::kAll:
      return QStringLiteral("all");
    case window::AppliesTo::Kind::kJoint:
      return QStringLiteral("joint");
    case window::AppliesTo::Kind::kBody:
      return QStringLiteral("body");
    case window::AppliesTo::Kind::kBoard:
      return QStringLiteral("board");
    case window::AppliesTo::Kind::kChannels:
      break;
  }
  QStringList names;
  for (const auto& name : applies.channels) names << QString::fromStdString(name);
  return names.join(QStringLiteral(", "));
}

window::AppliesTo appliesTo(const QString& text) {
  using Kind = window::AppliesTo::Kind;
  const QString word = text.trimmed();
  if (word.isEmpty() || word == u"all") return {Kind::kAll, {}};
  if (word == u"joint") return {Kind::kJoint, {}};
  if (word == u"body") return {Kind::kBody, {}};
  if (word == u"board") return {Kind::kBoard, {}};
  window::AppliesTo applies{Kind::kChannels, {}};
  for (const QString& name : word.split(u',', Qt::SkipEmptyParts))
    applies.channels.push_back(name.trimmed().toStdString());
  return applies;
}

}  // namespace

QString fieldTitle(RequirementField field) {
  switch (field) {
    case RequirementField::kName:
      return QCoreApplication::translate("WindowEditor", "Requirement");
    case RequirementField::kMeasure:
      return QCoreApplication::translate("WindowEditor", "Measure");
    case RequirementField::kParameters:
      return QCoreApplication::translate("WindowEditor", "Parameters");
    case RequirementField::kAppliesTo:
      return QCoreApplication::translate("WindowEditor", "Applies to");
    case RequirementField::kSide:
      return QCoreApplication::translate("WindowEditor", "Side");
    case RequirementField::kLower:
      return QCoreApplication::translate("WindowEditor", "Lower limit");
    case RequirementField::kTarget:
      return QCoreApplication::translate("WindowEditor", "Target");
    case RequirementField::kUpper:
      return QCoreApplication::translate("WindowEditor", "Upper limit");
    case RequirementField::kRequired:
      return QCoreApplication::translate("WindowEditor", "Required");
    case RequirementField::kSource:
      return QCoreApplication::translate("WindowEditor", "Source");
    case RequirementField::kCount:
      break;
  }
  return {};
}

QString fieldText(const window::Requirement& requirement, RequirementField field) {
  switch (field) {
    case RequirementField::kName:
      return QString::fromStdString(requirement.name);
    case RequirementField::kMeasure:
      return QLatin1String(measure::describe(requirement.measure.measure).name);
    case RequirementField::kParameters:
      return parametersText(requirement.measure);
    case RequirementField::kAppliesTo:
      return appliesToText(requirement.applies_to);
    case RequirementField::kSide:
      return !requirement.side                        ? QString()
             : *requirement.side == board::Side::kTop ? QStringLiteral("top")
                                                      : QStringLiteral("bottom");
    case RequirementField::kLower:
      return limitText(requirement.lower);
    case RequirementField::kTarget:
      return limitText(requirement.target);
    case RequirementField::kUpper:
      return limitText(requirement.upper);
    case RequirementField::kRequired:
      return requirement.required ? QStringLiteral("true") : QStringLiteral("false");
    case RequirementField::kSource:
      return QString::fromStdString(requirement.source);
    case RequirementField::kCount:
      break;
  }
  return {};
}

QStringList fieldChoices(RequirementField field) {
  QStringList choices;
  if (field == RequirementField::kMeasure) {
    for (const auto& description : measure::descriptions()) choices << QLatin1String(description.name);
  } else if (field == RequirementField::kSide) {
    choices << QString() << QStringLiteral("top") << QStringLiteral("bottom");
  }
  return choices;
}

QString setField(window::Requirement& requirement, RequirementField field, const QString& text) {
  switch (field) {
    case RequirementField::kName:
      requirement.name = text.trimmed().toStdString();
      return {};
    case RequirementField::kMeasure: {
      const auto* description = measure::find(text.toStdString());
      if (!description) return QCoreApplication::translate("WindowEditor", "“%1” is no measure").arg(text);
      if (description->measure == requirement.measure.measure) return {};
      // Parameters that the new measure knows too stay.
      measure::Definition changed;
      changed.measure = description->measure;
      for (const auto& parameter : measure::parameters_of(requirement.measure)) {
        (void)measure::set_parameter(changed, parameter.name, parameter.value);
      }
      requirement.measure = changed;
      if (description->board) requirement.applies_to = {window::AppliesTo::Kind::kBoard, {}};
      if (!description->board && requirement.applies_to.kind == window::AppliesTo::Kind::kBoard)
        requirement.applies_to = {};
      return {};
    }
    case RequirementField::kParameters:
      return setParameters(requirement.measure, text);
    case RequirementField::kAppliesTo:
      requirement.applies_to = appliesTo(text);
      return {};
    case RequirementField::kSide:
      requirement.side.reset();
      if (text == u"top") requirement.side = board::Side::kTop;
      if (text == u"bottom") requirement.side = board::Side::kBottom;
      return {};
    case RequirementField::kLower:
      return setLimit(requirement.lower, text);
    case RequirementField::kTarget:
      return setLimit(requirement.target, text);
    case RequirementField::kUpper:
      return setLimit(requirement.upper, text);
    case RequirementField::kRequired:
      requirement.required = text == u"true";
      return {};
    case RequirementField::kSource:
      requirement.source = text.trimmed().toStdString();
      return {};
    case RequirementField::kCount:
      break;
  }
  return {};
}

QString nextRevision(const std::optional<std::string>& revision) {
  QString text = QString::fromStdString(revision.value_or("1"));
  static const QRegularExpression kNumber(QStringLiteral("(\\d+)(?!.*\\d)"));
  const auto number = kNumber.match(text);
  if (number.hasMatch()) {
    return text.replace(number.capturedStart(), number.capturedLength(),
                        QString::number(number.captured().toLongLong() + 1));
  }
  if (!text.isEmpty() && text.back().isLetter() && text.back().toUpper() != u'Z') {
    text.back() = QChar(text.back().unicode() + 1);
    return text;
  }
  return text + QStringLiteral(".2");
}

}  // namespace ovenwright::desktop
