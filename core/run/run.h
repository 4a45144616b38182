#pragma once
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/run/fault.h"
#include "core/run/trace.h"

namespace ovenwright::run {

/// One temperature channel as the log has it, before cleaning: values in °C, NaN where the channel gave no
/// reading (blank, "open", "----"), +infinity or -infinity where the cell says over or under range.
struct RawChannel {
  std::string name;                                   ///< unique in the log: contracts.md, Names
  int number = 0;                                     ///< among the temperature channels, from 1
  std::shared_ptr<const std::vector<double>> time_s;  ///< as logged; shared by channels of one clock
  std::vector<double> temperature_C;                  ///< same length as time_s
};

/// A stretch that cleaning took out of the middle of a trace and that was longer than 3 s or two samples:
/// measures.md, Faults: the measure is computed on the straight line and on the highest and lowest course.
struct Gap {
  double from_s = 0, to_s = 0;  ///< the good samples on both sides
};

/// One thermocouple of a run after cleaning.
struct Channel {
  std::string name;
  int number = 0;
  std::optional<Trace> trace;  ///< absent where fewer than 3 good samples are left
  std::vector<Fault> faults;
  std::vector<Gap> gaps;
  double removed_start_to_s = 0;  ///< where the trace was shortened at its start: time of the log's first sample, else
                                  ///< equal to the trace's first
  double removed_end_from_s = 0;  ///< likewise at its end: the log's last sample
  std::size_t samples = 0;        ///< rows of the log in this run, before cleaning
};

/// One pass through the oven (or the wave): the traces of one log, or of one part of it, on the log's clock.
struct Run {
  std::vector<Channel> channels;
  std::vector<Fault> faults;  ///< of the whole log
  int part = 1, parts = 1;    ///< which pass of how many the log holds
  double from_s = 0, to_s = 0;
  double sample_interval_s = 0;  ///< median over the log
};

}  // namespace ovenwright::run
