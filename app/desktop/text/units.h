#pragma once

namespace ovenwright::desktop {

/// The units that people read, chosen once.
enum class TemperatureUnit { kCelsius, kFahrenheit };
enum class SpeedUnit { kMillimetresPerMinute, kCentimetresPerMinute, kInchesPerMinute };

}  // namespace ovenwright::desktop
