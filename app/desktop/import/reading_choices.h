#pragma once
#include <QString>
#include <utility>
#include <vector>

#include "app/desktop/text/format.h"
#include "core/log/reading.h"

namespace ovenwright::desktop {

/// For each thing the reader finds or assumes (a key of layout.toml): what it can be, as (value, text for people).
using Choices = std::vector<std::pair<QString, QString>>;
/// The tables of the file, by their numbers.
Choices tableChoices(const std::vector<log::ListedTable>& tables, const QLocale& locale);
Choices encodingChoices();
Choices delimiterChoices();
Choices decimalChoices();
Choices headerChoices(const log::Reading& reading);
Choices timeChoices(const log::Reading& reading);
Choices unitChoices();
Choices dateOrderChoices();
Choices scaleChoices();
Choices thermocoupleChoices();
Choices coldJunctionChoices(const Format& format, const log::Layout& layout);  ///< values in °C

QString tableValue(const std::vector<log::ListedTable>& tables);  ///< of the one that is read
QString headerValue(const log::Layout& layout);
QString timeValue(const log::Layout& layout);
QString scaleValue(const log::Layout& layout);
/// Another table is another layout: what was fixed for the one before does not hold for it.
void applyTable(log::Layout& layout, const log::ListedTable& table);
/// Puts a chosen value into a layout; `about` is the layout's key, an empty value leaves it to the reader.
void applyChoice(log::Layout& layout, const QString& about, const QString& value);

}  // namespace ovenwright::desktop
