#include "app/desktop/plot/scene.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <map>

#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

using measure::Measure;
constexpr double kNearPeak_C = 5;  // design: a peak is marked over the samples within 5 °C of it
constexpr std::size_t kMostCallOuts = 4;

bool isOut(const judge::Outcome& outcome) {
  return outcome.required &&
         (outcome.verdict == judge::Verdict::kFail || outcome.verdict == judge::Verdict::kConditionalFail);
}

/// Numbers of a requirement's limits that most of its outcomes have: limits may differ by part.
std::pair<std::optional<double>, std::optional<double>> commonLimits(const judge::Judgement& judgement,
                                                                     const std::string& requirement) {
  std::map<std::pair<double, double>, int> count;
  for (const auto& outcome : judgement.results) {
    if (outcome.requirement_name == requirement) ++count[{outcome.lower.value_or(NAN), outcome.upper.value_or(NAN)}];
  }
  if (count.empty()) return {};
  const auto most = std::ranges::max_element(count, {}, [](const auto& entry) { return entry.second; })->first;
  return {std::isnan(most.first) ? std::nullopt : std::optional(most.first),
          std::isnan(most.second) ? std::nullopt : std::optional(most.second)};
}

void addBand(std::vector<Scene::Band>& bands, Scene::Band band) {
  const bool known = std::ranges::any_of(
      bands, [&](const auto& other) { return other.from_C == band.from_C && other.to_C == band.to_C; });
  if (!known) bands.push_back(std::move(band));
}

QString range(double from_C, double to_C, const Format& format) {
  return format.limit(from_C, Format::Quantity::kTemperature) + u'–' +
         format.limit(to_C, Format::Quantity::kTemperature);
}

std::vector<Scene::Band> bandsOf(const judge::Judgement& judgement, const Format& format) {
  std::vector<Scene::Band> bands;
  for (const auto& window : judgement.windows) {
    for (const auto& requirement : window.requirements) {
      const auto& definition = requirement.measure;
      const QString name = widgets::Wording::title(requirement.name);
      // Limits by part stand in the lanes; behind all curves stand those of most.
      if (requirement.applies_to.kind == window::AppliesTo::Kind::kBody) continue;
      if (definition.measure == Measure::kPeak) {
        const auto [lower, upper] = commonLimits(judgement, requirement.name);
        if (lower && upper) {
          addBand(bands, {name + u' ' + range(*lower, *upper, format), *lower, *upper});
        } else if (const auto one = lower ? lower : upper) {
          addBand(bands, {name + u' ' + format.limit(*one, Format::Quantity::kTemperature), *one, *one});
        }
      } else if (definition.measure == Measure::kTimeBetweenOnRise) {
        const auto* from = definition.parameters.T1 ? std::get_if<double>(&*definition.parameters.T1) : nullptr;
        const auto* to = definition.parameters.T2 ? std::get_if<double>(&*definition.parameters.T2) : nullptr;
        if (from && to) addBand(bands, {name + u' ' + range(*from, *to, format), *from, *to});
      }
    }
    if (window.liquidus_C) {
      addBand(bands, {QCoreApplication::translate("Scene", "%1 (TL)", "temperature of the liquidus")
                          .arg(format.temperatureWithUnit(*window.liquidus_C)),
                      *window.liquidus_C, *window.liquidus_C});
    }
  }
  return bands;
}

/// Around the peak, as far as the trace stays within 5 °C of it.
std::pair<double, double> nearPeak(const ShownChannel& channel) {
  const auto time_s = channel.trace->time_s();
  const auto temperature_C = channel.trace->temperature_C();
  const double level = *channel.look.peak_C - kNearPeak_C;
  auto first = std::size_t(std::ranges::lower_bound(time_s, channel.peak_s) - time_s.begin());
  auto last = first;
  while (first > 0 && temperature_C[first - 1] >= level) --first;
  while (last + 1 < time_s.size() && temperature_C[last + 1] >= level) ++last;
  return {time_s[first], time_s[last]};
}

QString callOutText(const RunView& view, const judge::Outcome& outcome, const Format& format) {
  const auto quantity = Format::quantity(outcome.measure.measure);
  const QString name = view.name(outcome);
  const widgets::Wording wording(format);
  const QString value = wording.value(outcome);
  if (quantity == Format::Quantity::kTemperature) {
    return QCoreApplication::translate("Scene", "%1 %2, %3").arg(name, value, wording.distance(outcome));
  }
  const bool low = outcome.lower && *outcome.value.value < *outcome.lower;
  const QString limit = wording.limit(low ? *outcome.lower : *outcome.upper, outcome);
  return QCoreApplication::translate("Scene", "%1 %2 %3, limit %4").arg(name, value, format.unit(quantity), limit);
}

/// A moment counts from the scene's origin, an interval has a length.
void nameChosen(Scene& scene, const Format& format) {
  if (!scene.chosen) return;
  auto& chosen = *scene.chosen;
  const double shown_s = chosen.from_s == chosen.to_s ? chosen.from_s - scene.origin_s() : chosen.to_s - chosen.from_s;
  chosen.label = QCoreApplication::translate("Scene", "%1 s").arg(format.seconds(shown_s));
}

}  // namespace

std::optional<std::pair<double, double>> stretchOf(const RunView& view, const judge::Outcome& outcome) {
  if (!outcome.channel || !view.channels()[*outcome.channel].trace) return std::nullopt;
  if (outcome.measure.measure == Measure::kPeak) return nearPeak(view.channels()[*outcome.channel]);
  if (!outcome.value.from_s || !outcome.value.to_s) return std::nullopt;
  return std::pair(*outcome.value.from_s, *outcome.value.to_s);
}

Scene makeScene(std::shared_ptr<const RunView> view, std::optional<std::size_t> chosen,
                std::optional<std::size_t> channel, std::optional<std::size_t> strong, const Format& format) {
  Scene scene;
  scene.view = view;
  if (!view) return scene;
  const auto& judgement = view->judgement();
  scene.bands = bandsOf(judgement, format);
  scene.channel = channel;
  scene.strong = strong;
  if (view->hasZones()) {
    const double x_mm = view->x_mm(channel);
    double before = 0;
    for (std::size_t zone = 0; zone < view->oven()->zones.size(); ++zone) {
      const auto [from, to] = view->zoneSpan_s(zone, x_mm);
      scene.zoneBorders_s.push_back(zone == 0 ? from : (before + from) / 2);  // the middle of a gap
      before = to;
    }
    scene.zoneBorders_s.push_back(before);
  }
  for (const auto& outcome : judgement.results) {
    if (!isOut(outcome)) continue;
    if (const auto stretch = stretchOf(*view, outcome)) {
      scene.stretches.push_back({*outcome.channel, stretch->first, stretch->second});
    }
  }
  for (const auto& part : judgement.sentence.parts) {
    if (part.disc == 0 || part.outcomes.empty() || scene.callOuts.size() == kMostCallOuts) continue;
    const auto& outcome = judgement.all(part.outcomes.front());
    const auto stretch = stretchOf(*view, outcome);
    if (!stretch || !outcome.value.value) continue;
    const auto& shown = view->channels()[*outcome.channel];
    const bool peak = outcome.measure.measure == Measure::kPeak;
    const double time_s = peak ? shown.peak_s : (stretch->first + stretch->second) / 2;
    scene.callOuts.push_back({part.disc, part.outcomes.front(), *outcome.channel, time_s, shown.trace->at(time_s),
                              callOutText(*view, outcome, format)});
  }
  if (chosen && judgement.all(*chosen).value.from_s) {
    const auto& outcome = judgement.all(*chosen);
    scene.chosen = {outcome.channel, *outcome.value.from_s, outcome.value.to_s.value_or(*outcome.value.from_s), {}};
    nameChosen(scene, format);
  }
  return scene;
}

void useClock(Scene& scene, Scene::CommonClock clock, const Format& format) {
  scene.clock = std::move(clock);
  nameChosen(scene, format);
}

}  // namespace ovenwright::desktop
