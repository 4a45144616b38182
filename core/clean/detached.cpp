#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <numeric>
#include <string>
#include <string_view>
#include <vector>

#include "core/clean/suspects.h"
#include "core/run/median.h"
#include "core/units/phrase.h"

namespace ovenwright::clean {
namespace {

constexpr std::size_t kRippleOver = 3, kJumpOver = 4, kAfterJump = 20, kBeforePeak = 25;  // seconds
constexpr double kCounted = 0.97, kRougher = 2, kFallsBack = 0.45;
constexpr double kWaveStep_C = 25;  // within a second: a wave, no air
constexpr double kShows = 3;        // times what is usual: where the ripple shows

double bend(const std::vector<double>& T, std::size_t k, std::size_t over) {
  return T[k + over] - 2 * T[k] + T[k - over];
}

/// Root mean square of the change of slope over 3 s, without the largest 3 %: a single jump does not make a trace
/// rough.
double roughness(const std::vector<double>& T) {
  std::vector<double> squares;
  for (std::size_t k = kRippleOver; k + kRippleOver < T.size(); ++k)
    squares.push_back(bend(T, k, kRippleOver) * bend(T, k, kRippleOver));
  const auto end = squares.begin() + static_cast<std::ptrdiff_t>(static_cast<double>(squares.size()) * kCounted);
  std::ranges::nth_element(squares, end);
  return std::sqrt(std::accumulate(squares.begin(), end, 0.0) / static_cast<double>(squares.size()));
}

/// After the sharpest growth of the slope on the way up, how much of it is taken back within 20 s: a body keeps rising,
/// air is as warm as it gets.
double falls_back(const std::vector<double>& T) {
  const auto peak = static_cast<std::size_t>(std::ranges::max_element(T) - T.begin());
  if (peak < kBeforePeak + 2 * kJumpOver) return 0;
  const std::size_t end = peak - kBeforePeak;
  std::size_t jump = kJumpOver;
  for (std::size_t k = kJumpOver; k < end; ++k)
    if (bend(T, k, kJumpOver) > bend(T, jump, kJumpOver)) jump = k;
  double back = 0;
  for (std::size_t k = jump; k < std::min(end, jump + kAfterJump); ++k) back = std::max(back, -bend(T, k, kJumpOver));
  const double size = bend(T, jump, kJumpOver);
  return size > 0 ? back / size : 0;
}

bool meets_a_wave(const std::vector<double>& T) {
  for (std::size_t k = 0; k + 1 < T.size(); ++k)
    if (T[k + 1] - T[k] > kWaveStep_C) return true;
  return false;
}

bool explains_jumps(const run::Fault& fault) {
  return fault.kind == run::FaultKind::kStuck || fault.kind == run::FaultKind::kReversedPolarity;
}

/// A channel whose name says that it hangs in the air on purpose.
bool named_air(const std::string& name) {
  constexpr std::array<std::string_view, 5> kWords = {"air", "luft", "aire", "ambient", "umgebung"};
  constexpr std::array<std::string_view, 4> kSigns = {"空气", "空氣", "空気", "雰囲気"};
  std::string word;
  for (std::size_t i = 0; i <= name.size(); ++i) {
    const auto letter = static_cast<unsigned char>(i < name.size() ? name[i] : ' ');
    if (std::isalpha(letter) != 0) {
      word += static_cast<char>(std::tolower(letter));
      continue;
    }
    if (std::ranges::find(kWords, word) != kWords.end()) return true;
    word.clear();
  }
  return std::ranges::any_of(kSigns, [&](std::string_view sign) { return name.find(sign) != std::string::npos; });
}

}  // namespace

void flag_detached(run::Run& run, const PassMeans& means, const board::Board* board) {
  struct Trial {
    run::Channel* channel;
    const std::vector<double>* mean_C;
    double rough = 0;
  };
  std::vector<Trial> trials;
  for (std::size_t k = 0; k < means.mean_C.size(); ++k) {
    auto& channel = run.channels[k];
    const auto* placement = board != nullptr ? board->placement(channel.name, channel.number) : nullptr;
    const bool air = placement != nullptr ? placement->kind == board::Kind::kAir : named_air(channel.name);
    const bool known = std::ranges::any_of(channel.faults, explains_jumps);
    if (means.mean_C[k].size() <= 2 * kAfterJump || air || known || meets_a_wave(means.mean_C[k])) continue;
    trials.push_back({&channel, &means.mean_C[k], roughness(means.mean_C[k])});
  }
  for (const auto& trial : trials) {
    std::vector<double> others;
    for (const auto& other : trials)
      if (&other != &trial) others.push_back(other.rough);
    const double usual = run::median(others);
    if (others.empty() || trial.rough < kRougher * usual || falls_back(*trial.mean_C) < kFallsBack) continue;
    double from_s = 0, to_s = 0;
    bool shown = false;
    for (std::size_t k = kRippleOver; k + kRippleOver < trial.mean_C->size(); ++k) {
      if (std::abs(bend(*trial.mean_C, k, kRippleOver)) < kShows * usual) continue;
      to_s = means.from_s + static_cast<double>(k + kRippleOver);
      if (!shown) from_s = means.from_s + static_cast<double>(k - kRippleOver);
      shown = true;
    }
    trial.channel->faults.push_back(
        {run::FaultKind::kDetached, from_s, to_s, run::FaultAction::kFlagged, say(Phrase::kFollowsAir), {}});
  }
}

}  // namespace ovenwright::clean
