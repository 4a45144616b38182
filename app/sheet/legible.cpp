#include "app/sheet/legible.h"

#include <QTextBoundaryFinder>

namespace ovenwright::sheet {
namespace {

constexpr qsizetype kMostName = 48, kMostText = 400;

void shorten(std::string& name) { name = legible(QString::fromStdString(name), kMostName).toStdString(); }

void shorten(std::optional<std::string>& name) {
  if (name) shorten(*name);
}

void shorten(files::Identity& identity) {
  shorten(identity.name);
  shorten(identity.revision);
}

void shorten(judge::Outcome& outcome) {
  for (auto* name : {&outcome.requirement_name, &outcome.trace, &outcome.placement, &outcome.cause.placement})
    shorten(*name);
  for (auto& name : outcome.not_reached_by) shorten(name);
  for (auto& zone : outcome.zones) shorten(zone);
  for (auto& share : outcome.zone_shares) shorten(share.zone);
  outcome.source = legible(QString::fromStdString(outcome.source), kMostText).toStdString();
  outcome.cause.detail = legible(QString::fromStdString(outcome.cause.detail), kMostText).toStdString();
}

check::CheckedRun shortened(check::CheckedRun run) {
  for (auto& channel : run.run.channels) shorten(channel.name);
  auto& judgement = run.judgement;
  for (auto& window : judgement.windows) {
    shorten(window.identity);
    for (auto& requirement : window.requirements) shorten(requirement.name);
  }
  for (auto& outcome : judgement.results) shorten(outcome);
  for (auto& outcome : judgement.board_results) shorten(outcome);
  for (auto& suspicion : judgement.suspicions) shorten(suspicion.placement);
  return run;
}

check::Request shortened(check::Request request) {
  if (request.oven) {
    shorten(request.oven->identity);
    for (auto& zone : request.oven->zones) shorten(zone.name);
  }
  if (request.recipe) shorten(request.recipe->identity);
  if (request.board) {
    shorten(request.board->identity);
    for (auto& placement : request.board->placements) {
      shorten(placement.channel);
      shorten(placement.label);
    }
  }
  return request;
}

}  // namespace

QString legible(const QString& name, qsizetype most) {
  QString clean;
  clean.reserve(name.size());
  for (qsizetype i = 0; i < name.size(); ++i) {
    const QChar unit = name[i];
    const auto category = unit.category();
    const bool pair = unit.isHighSurrogate() && i + 1 < name.size() && name[i + 1].isLowSurrogate();
    if (pair) {
      clean += unit;
      clean += name[++i];
    } else if (unit.isSurrogate()) {
      clean += QChar::ReplacementCharacter;
    } else if (category == QChar::Other_Control || category == QChar::Separator_Line ||
               category == QChar::Separator_Paragraph) {
      clean += u' ';
    } else if (category != QChar::Other_Format || unit == QChar(0x200D)) {  // the joiner makes one picture of two
      clean += unit;
    }
  }
  clean = clean.simplified();
  if (clean.size() <= most) return clean;
  std::vector<qsizetype> ends{0};
  QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, clean);
  while (finder.toNextBoundary() >= 0) ends.push_back(finder.position());
  const auto count = qsizetype(ends.size()) - 1;
  if (count <= most) return clean;
  const qsizetype head = most / 2, tail = most - head - 1;
  return clean.left(ends[std::size_t(head)]) + QChar(0x2026) + clean.mid(ends[std::size_t(count - tail)]);
}

RunRecord legible(const RunRecord& record) {
  RunRecord result = record;
  auto log = std::make_shared<check::CheckedLog>();
  log->reading.file = record.reading().file;
  log->reading.read_as = record.reading().read_as;
  log->reading.warnings = record.reading().warnings;
  shorten(log->reading.file.file);
  shorten(log->reading.file.member);
  log->runs.push_back(shortened(record.checked()));
  result.log = std::move(log);
  result.run = 0;
  result.request = std::make_shared<check::Request>(shortened(*record.request));
  for (QString* label : {&result.labels.lot, &result.labels.serial, &result.labels.operatorName})
    *label = legible(*label);
  return result;
}

}  // namespace ovenwright::sheet
