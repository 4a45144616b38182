#pragma once
#include <span>
#include <vector>

#include "core/clean/track.h"

namespace ovenwright::clean {

/// Takes out spikes: one or two samples off the line between their neighbours by more than
/// max(5 °C, 8σ, 6 °C/s · h) and by more than those neighbours differ, while no other trace moves likewise. The
/// farthest off goes first, so a good sample between two spikes is not taken for one.
///
/// 'Likewise' is the same way, by more than that trace's own limit without σ and a quarter as far, between the same
/// neighbours; with samples 1 s or more apart also another trace that jumps up within 3 s and keeps half of it for 3 s.
/// A wave reaches joints one after the other, so a trace that itself makes such a jump, of 30 °C or more, is left alone
/// for 15 s before and behind. Where the neighbours of a sample differ by more than 6 °C/s and 5 °C it belongs to a
/// step of the curve and stays. A sample with no neighbour within 3 h is given 6 °C/s up to the nearest.
/// @param keep  numbers of the channels whose spikes are wanted: flagged, left in
/// Cost: nothing for a track without a suspicious step, else O(n + m log m) for m samples beside one.
void find_spikes(std::span<Track> tracks, std::span<const int> keep);

}  // namespace ovenwright::clean
