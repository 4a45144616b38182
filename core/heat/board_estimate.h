#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/board/board.h"
#include "core/heat/identify.h"

namespace ovenwright::heat {

/// What a place on a board heats like, from the board's size, mass and parts alone.
struct PlaceEstimate {
  double ln_capacity = 0;  ///< ln of the heat capacity over the area that the air reaches on one side, J/(m²·K), 150 °C
  double own_sd = 0;       ///< what is not known of this place, in ln
  double board_sd = 0;     ///< what is not known of the whole board, in ln: common to all its places
};

/// The heat capacity of the bare board, and with a part of stated mass that of board and part over the part's footprint
/// and the board around it that it draws on: half a conduction length √(k·d/h) on each side, with k = 20 W/(m·K) along
/// a board with copper layers, d its thickness and h = 136 W/(m²·K).
///
/// Laminate: 1850 kg/m³ and 1100 J/(kg·K) at room temperature, a quarter more at 150 °C; what the board weighs more
/// than its laminate counts as 500 J/(kg·K) (copper 385, epoxy and ceramics 800 to 1000), a part's body as 850.
/// Sources: Incropera, Fundamentals of Heat and Mass Transfer, Tables A.1 and A.2, from memory; IEEE Trans. Reliability
/// 68 (2019) 248–266, Table VI, for laminates.
/// @param part  the name of a part; one whose mass is not stated counts as the bare board, known less; empty for the
///              bare board
/// Empty where neither the thickness is known nor the mass with length and width.
std::optional<PlaceEstimate> estimate(const board::Board& board, const std::string& part);

/// How strongly an oven exchanges heat with both sides of a board, as ln W/(m²·K), radiation included.
struct ExchangeLevel {
  double ln_W_per_m2K = 0, sd = 0;
  std::size_t placements = 0;  ///< measured placements that it rests on; 0: textbook range
};

/// From the time constants of measured placements, where their boards' files say what they weigh: what the estimates
/// above call C/τ. Without any: 136, 25 % (forced convection of 38 to 75 W/(m²·K) on each side in reflow ovens, common
/// practice, no source; radiation of 15 to 20 on each side at an emissivity of 0.9).
/// @param boards  of the model's placements, by ModelPlacement::board; null where a board is not known
ExchangeLevel exchange_level(const HeatModel& model, const std::vector<const board::Board*>& boards);
ExchangeLevel usual_exchange_level();

}  // namespace ovenwright::heat
