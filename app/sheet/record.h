#pragma once
#include <QByteArray>
#include <QDateTime>
#include <QLocale>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "core/check/check.h"

namespace ovenwright::sheet {

enum class Paper { kA4, kLetter };

/// What stands on every sheet of a site, and how it is printed.
struct Style {
  QString company;
  QByteArray logo;  ///< the bytes of an SVG, PNG or JPEG file; empty: none
  Paper paper = Paper::kA4;
  QLocale locale = QLocale::c();  ///< of numbers and dates; words follow the translators that are installed
  QDateTime printedAt;            ///< invalid: the sheet does not say when
};

/// What was said about a run when it was made; what is empty is left out.
struct Labels {
  QString lot, serial, operatorName;
  QDateTime runAt;
  enum class From { kGiven, kLogClock, kFileTime } runAtFrom = From::kGiven;
};

/// "given", "log clock", "file time"; empty where no time is known.
const char* runAtFromName(const Labels& labels);

/// Where a run's record stands in the archive: what is printed here shows a lost tail or a rewritten chain.
struct ArchivePlace {
  QString id;
  qint64 number = 0;                                       ///< of the record in its chain, from 1
  QString station;                                         ///< the chain's place of origin
  QString headDigest;                                      ///< of the chain when the sheet was made
  qint64 records = 0;                                      ///< in the chain then
  QString program;                                         ///< the version that judged it
  judge::Verdict verdict = judge::Verdict::kUndetermined;  ///< as it was recorded
};

/// One judged run with everything a sheet says about it.
struct RunRecord {
  std::shared_ptr<const check::CheckedLog> log;
  std::size_t run = 0;                            ///< index into log->runs
  std::shared_ptr<const check::Request> request;  ///< what it was judged with
  Labels labels;
  std::optional<ArchivePlace> archive;

  const check::CheckedRun& checked() const { return log->runs[run]; }
  const log::Reading& reading() const { return log->reading; }
};

}  // namespace ovenwright::sheet
