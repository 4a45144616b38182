#pragma once
#include <QString>
#include <array>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/document/run_view.h"
#include "app/desktop/text/format.h"

namespace ovenwright::desktop {

/// What stands on the curve plot besides the curves, derived from the judgement alone: the views only draw it.
struct Scene {
  /// A temperature range of the window, drawn behind the curves, or a single level.
  struct Band {
    QString label;
    double from_C = 0, to_C = 0;  ///< equal: a level
  };
  /// A stretch of a curve on which a required result went out.
  struct Stretch {
    std::size_t channel = 0;
    double from_s = 0, to_s = 0;
  };
  struct CallOut {
    int disc = 0;
    std::size_t outcome = 0;
    std::size_t channel = 0;
    double time_s = 0, temperature_C = 0;  ///< what it points at
    QString text;
  };
  /// The result that is looked at: a moment, or an interval.
  struct Chosen {
    std::optional<std::size_t> channel;
    double from_s = 0, to_s = 0;
    QString label;
  };

  /// Another run of the same board behind the curves, to be compared: as it was measured, or predicted for another
  /// recipe.
  struct Behind {
    std::shared_ptr<const RunView> view;
    QString name;        ///< in the key
    QString tag;         ///< at its peaks: a letter; empty: the measured run, dotted
    double later_s = 0;  ///< what is added to its times to lie over those of the scene's view
    /// Of a group: as thin as the other runs of it, of the other group dashed.
    enum class Group { kNone, kSame, kOther } group = Group::kNone;
    bool operator==(const Behind&) const = default;
  };
  /// The clock that two runs have in common, in place of the view's own.
  struct CommonClock {
    double zero_s = 0;               ///< the moment it counts from, on the view's log
    QString name;                    ///< at the axis
    std::array<double, 2> seen_s{};  ///< first and last moment that both show when they show whole
    double highest_C = 0;            ///< that both must have room for
    bool operator==(const CommonClock&) const = default;
  };

  std::shared_ptr<const RunView> view;
  std::vector<Behind> behind;
  bool thin = false;  ///< `view` is one of a group of runs: its curves are thin, its own peaks unmarked
  /// Where a group's peaks are marked: the means of its runs, by channel of `view`, on its clock.
  std::vector<std::optional<std::array<double, 2>>> peaks = {};
  std::vector<std::vector<double>> errorBand_C;  ///< by channel and sample of `view`, half width; empty where none
  std::shared_ptr<const RunView> subject;        ///< of a prediction: the run that it is for; plots keep what is zoomed
                                                 ///< to and hidden for one subject
  std::vector<Band> bands;
  std::vector<double> zoneBorders_s;
  std::vector<Stretch> stretches;
  std::vector<CallOut> callOuts;  ///< at most 4, in the order of the sentence
  std::optional<Chosen> chosen;
  std::optional<std::size_t> channel;  ///< the chosen one
  std::optional<std::size_t> strong;   ///< the channel drawn at full strength, the others pale; none: all
  std::optional<CommonClock> clock;    ///< where the run is held against another
  QString title;                       ///< in the top left corner; may be empty
  bool bandNames = true;               ///< right of the axes
  /// What stands inside the axes: the curves with their peaks, or their names alone where the ground is free.
  enum class Key { kPeaks, kNames, kNone } key = Key::kPeaks;

  /// Where times are shown from, on the view's log.
  double origin_s() const { return clock ? clock->zero_s : view->origin_s(); }
};

/// @param view     null gives an empty scene
/// @param chosen   an index into Judgement::all()
/// @param channel  the chosen channel: the zones are where it meets them
/// @param strong   see Scene::strong
Scene makeScene(std::shared_ptr<const RunView> view, std::optional<std::size_t> chosen,
                std::optional<std::size_t> channel, std::optional<std::size_t> strong, const Format& format);

/// Puts a scene on a clock that it shares with another run.
void useClock(Scene& scene, Scene::CommonClock clock, const Format& format);

/// Where on the log's clock an outcome shows: for a peak the samples within 5 °C of it, else the interval that counted.
std::optional<std::pair<double, double>> stretchOf(const RunView& view, const judge::Outcome& outcome);

}  // namespace ovenwright::desktop
