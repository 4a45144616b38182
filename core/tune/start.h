#pragma once
#include <memory>
#include <string>
#include <vector>

#include "core/tune/learn.h"
#include "core/tune/tune.h"

namespace ovenwright::tune {

/// A first recipe for a board that never ran, and how little is known about it.
struct Start {
  board::Board
      board;  ///< with a placement for each part of stated mass, and one for the smallest parts, where it had none
  oven::Recipe recipe;
  Forecast predicted;                     ///< with the band that the priors leave
  std::vector<std::string> learned_from;  ///< the runs of the oven that it rests on; empty: none
  std::vector<std::string> warnings;
  std::string sentence, caution;
};

/// From the board's size, mass and parts, the priors of the model, and what earlier runs of other boards tell about the
/// oven: its air, offsets and exchange with their covariance, and how strongly it heats. The recipe is the one with the
/// most margin as predicted, by the search that tunes measured boards; it begins from the last of the earlier recipes
/// and from a plain rise to the window's peak. Top and bottom alike, whole °C and mm/min, inside the oven's limits.
/// The band propagates the priors' spread; errors of the board as a whole move all its placements together.
/// @param learned  earlier runs of the oven, or null
/// Errors: kUndetermined where the board file states neither thickness nor mass with length and width, where the fit of
/// the earlier runs is not usable, or where the window asks for nothing that can be predicted; kBadArgument where the
/// earlier runs are of an oven with other zones.
Result<Start> start(const oven::Oven& oven, const board::Board& board, std::vector<window::ProcessWindow> windows,
                    const Learned* learned);

}  // namespace ovenwright::tune
