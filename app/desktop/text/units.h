#pragma once

namespace ovenwright::desktop {

/// Units that temperatures and conveyor speeds are shown in, chosen once for all screens. Files stay in °C and mm/min.
enum class TemperatureUnit { kCelsius, kFahrenheit };
enum class SpeedUnit { kMillimetresPerMinute, kCentimetresPerMinute, kInchesPerMinute };

}  // namespace ovenwright::desktop
