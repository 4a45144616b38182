#include "app/desktop/text/model_text.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace ovenwright::desktop {
namespace {

/// The sentences of core/heat/weigh.cpp, core/tune/learn.cpp and core/tune/words.cpp, with a place for each thing
/// found.
constexpr const char* kPatterns[] = {
    QT_TRANSLATE_NOOP("Model", "no model fits this log"),
    QT_TRANSLATE_NOOP("Model",
                      "the log does not follow this oven and recipe (misfit %1 °C): check that recipe, speed, oven and "
                      "entry belong to this log"),
    QT_TRANSLATE_NOOP("Model",
                      "zone %1 seems %2 °C hotter than its setpoint: check the recipe, the zone and its thermocouple"),
    QT_TRANSLATE_NOOP("Model",
                      "zone %1 seems %2 °C colder than its setpoint: check the recipe, the zone and its thermocouple"),
    QT_TRANSLATE_NOOP("Model",
                      "the log does not follow this recipe in zone %1: check that recipe and oven belong to this log, "
                      "and that no setpoints are swapped"),
    QT_TRANSLATE_NOOP("Model",
                      "the log does not follow this recipe in zones %1: check that recipe and oven belong to this log, "
                      "and that no setpoints are swapped"),
    QT_TRANSLATE_NOOP(
        "Model",
        "the curves fit an entry %1 s ± %2 s later than the one given: check the entry, the speed and the "
        "oven's entrance"),
    QT_TRANSLATE_NOOP("Model",
                      "the curves fit an entry %1 s ± %2 s earlier than the one given: check the entry, the speed and "
                      "the oven's entrance"),
    QT_TRANSLATE_NOOP("Model",
                      "no thermocouple rises above %1 °C: the log does not show a board going through an oven"),
    QT_TRANSLATE_NOOP(
        "Model",
        "the log ends %1 s before the board has left zone %2 by this recipe's speed: check the speed, the "
        "entry and the oven, or log until the board has cooled"),
    QT_TRANSLATE_NOOP("Model", "the log ends at %1 °C: how the board cools is little known; log until it has cooled"),
    QT_TRANSLATE_NOOP("Model", "%1 follows the air: its bead may be detached, or it belongs to kind \"air\""),
    QT_TRANSLATE_NOOP("Model", "%1 stayed below %2 °C: how melting slows it down is not known from this log"),
    QT_TRANSLATE_NOOP("Model", "%1 stayed below %2 °C: how melting slows them down is not known from this log"),
    QT_TRANSLATE_NOOP("Model",
                      "every thermocouple follows the air, so nothing is known of a board: check that the beads are "
                      "attached"),
    QT_TRANSLATE_NOOP(
        "Model",
        "one thermocouple only: what is predicted holds for its place, not for the hottest and coldest of "
        "the board"),
    QT_TRANSLATE_NOOP(
        "Model",
        "%1 is %2 mm long, so it lies in several zones at once (zone %3 has %4 mm): each of its places is "
        "predicted by itself, and the confirming run has to show them all"),
    QT_TRANSLATE_NOOP("Model",
                      "the curves fit a belt %1 % ± %2 % faster than the recipe's %3 mm/min, or zones so much shorter: "
                      "check the speed, the belt and the zone lengths in the oven's file"),
    QT_TRANSLATE_NOOP("Model",
                      "the curves fit a belt %1 % ± %2 % slower than the recipe's %3 mm/min, or zones so much longer: "
                      "check the speed, the belt and the zone lengths in the oven's file"),
    QT_TRANSLATE_NOOP("Model", "No suggestion: the window requires nothing that can be predicted for this board."),
    QT_TRANSLATE_NOOP("Model",
                      "No recipe was found that passes by the guarded rule of the window: what is suggested is inside "
                      "the limits, and within its uncertainty of one."),
    QT_TRANSLATE_NOOP("Model",
                      "No next run is named: of the changes of recipe that were tried none is known to keep every body "
                      "inside its limits and every peak below its upper limit."),
    QT_TRANSLATE_NOOP("Model", "Fastest: no recipe near the present one was found that keeps a margin of %1 %."),
    QT_TRANSLATE_NOOP("Model", "Coolest: no recipe near the present one was found that keeps a margin of %1 %."),
    QT_TRANSLATE_NOOP("Model", "Fastest: no recipe was found that keeps a margin of %1 %; the most is %2 %."),
    QT_TRANSLATE_NOOP("Model", "Coolest: no recipe was found that keeps a margin of %1 %; the most is %2 %."),
    QT_TRANSLATE_NOOP("Model", "Least change: no recipe closer to the present one was found that passes."),
    QT_TRANSLATE_NOOP("Model", "Fastest: none was found that passes about as likely as the other suggestions."),
    QT_TRANSLATE_NOOP("Model", "Coolest: none was found that passes about as likely as the other suggestions."),
    QT_TRANSLATE_NOOP("Model", "Fastest: the present recipe is that already."),
    QT_TRANSLATE_NOOP("Model", "Coolest: the present recipe is that already."),
};

}  // namespace

QString modelInWords(const std::string& english) {
  const QString said = QString::fromStdString(english);
  for (const char* pattern : kPatterns) {
    QString expression = QRegularExpression::escape(QString::fromUtf8(pattern));
    static const QRegularExpression place(QStringLiteral("\\\\%[1-9]"));
    expression.replace(place, QStringLiteral("(.+)"));
    const auto found = QRegularExpression(QRegularExpression::anchoredPattern(expression)).match(said);
    if (!found.hasMatch()) continue;
    QString text = QCoreApplication::translate("Model", pattern);
    for (int i = 1; i <= found.lastCapturedIndex(); ++i) text.replace(QStringLiteral("%%1").arg(i), found.captured(i));
    return text;
  }
  return said;
}

}  // namespace ovenwright::desktop
