#pragma once
#include <QIcon>

#include "app/desktop/widgets/theme.h"
#include "core/judge/judgement.h"

namespace ovenwright::desktop {

/// The verdict's sign as an icon of 14 px at a 13 px font, for menus and lists of stock widgets.
QIcon signIcon(judge::Verdict verdict, const widgets::Theme& theme, double devicePixelRatio);

}  // namespace ovenwright::desktop
