#include "app/sheet/program/command.h"

#include <QFile>
#include <QFileInfo>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <set>

#include "app/archive/moment.h"
#include "app/command/archive_open.h"
#include "app/command/inputs.h"
#include "app/command/output.h"
#include "app/desktop/text/language.h"
#include "app/sheet/archived.h"
#include "app/sheet/compare_sheet.h"
#include "app/sheet/files.h"
#include "app/sheet/logo.h"
#include "app/sheet/sheet.h"
#include "core/files/text_file.h"

namespace ovenwright::sheet {
namespace {

using command::ExitStatus;

Error usage(const std::string& message, const std::string& file = {}) {
  return {ErrorCode::kBadArgument, message, {file, 0, 0}, "", ""};
}

class Sheets {
 public:
  explicit Sheets(const SheetOptions& options) : m_options(options) {}

  ExitStatus make() {
    if (!m_options.apart && command::output_is_a_log(m_options.common, m_options.logs)) return ExitStatus::kUsage;
    if (const auto error = prepare()) {
      command::report_error(*error);
      return error->code == ErrorCode::kBadArgument ? ExitStatus::kUsage : ExitStatus::kUnreadable;
    }
    if (m_options.compare) return m_options.groupA.empty() ? comparison() : groups();
    return m_options.apart ? apart() : together();
  }

 private:
  std::optional<Error> prepare() {
    desktop::useLanguage(QString::fromStdString(m_options.language));
    m_style.locale = QLocale();
    m_style.company = QString::fromStdString(m_options.company);
    m_style.paper = QString::fromStdString(m_options.paper).compare(QStringLiteral("Letter"), Qt::CaseInsensitive) == 0
                        ? Paper::kLetter
                        : Paper::kA4;
    // A build that is to be the same twice fixes the time: https://reproducible-builds.org/specs/source-date-epoch/
    bool fixed = false;
    const qint64 epoch_s = qEnvironmentVariable("SOURCE_DATE_EPOCH").toLongLong(&fixed);
    m_style.printedAt = fixed ? QDateTime::fromSecsSinceEpoch(epoch_s, Qt::UTC) : QDateTime::currentDateTime();
    if (!m_options.lots.empty()) m_labels.lot = QString::fromStdString(m_options.lots.front());
    m_labels.serial = QString::fromStdString(m_options.serial);
    m_labels.operatorName = QString::fromStdString(m_options.operatorName);
    if (m_options.runAt) {
      const auto moment = archive::parseMoment(*m_options.runAt);
      if (!moment) return usage("--run-at: " + moment.error().message);
      m_labels.runAt = QDateTime::fromMSecsSinceEpoch(moment->time_since_epoch().count(), Qt::UTC);
    }
    if (!m_options.apart) {
      const QString path = QString::fromStdString(*m_options.common.output);
      const auto kind = fileKindOf(path);
      if (!kind)
        return usage(
            "found the ending \"." + QFileInfo(path).suffix().toStdString() + "\", expected .pdf, .html, .csv or .json",
            path.toStdString());
      m_kind = *kind;
    } else {
      m_kind = *fileKindOf(u'.' + QString::fromStdString(*m_options.apart));
    }
    if (m_options.logo) {
      auto logo = readLogo(*m_options.logo);
      if (!logo) return logo.error();
      m_style.logo = *std::move(logo);
    }
    for (const std::size_t side : {0, 1}) {
      if (auto error = readRequest(side)) return error;
      if (!m_options.compare) break;
    }
    return std::nullopt;
  }

  /// What the logs are judged with; of a comparison what the first (0) and the second are.
  std::optional<Error> readRequest(std::size_t side) {
    command::LogOptions log = m_options.log;
    if (m_options.compare) {
      const auto own = [side](const auto& values, auto& into) {
        if (!values.empty()) into = values[std::min(side, values.size() - 1)];
      };
      own(m_options.recipes, log.recipe);
      own(m_options.entries_s, log.entry_s);
      own(m_options.passes, log.run);
    }
    check::Request request;
    auto error = command::read_windows(m_options.windows, request);
    if (!error) error = command::read_inputs(log, request);
    if (error) {
      if (error->code == ErrorCode::kBadArgument) error->code = ErrorCode::kParse;
      return error;
    }
    m_requests[side] = std::make_shared<const check::Request>(std::move(request));
    return std::nullopt;
  }

  /// The runs of a log; nothing, after saying why, where it cannot be read.
  std::vector<RunRecord> judged(const std::string& log, std::size_t side = 0) {
    auto checked = check::check(log, *m_requests[side]);
    if (!checked) {
      Error error = checked.error();
      if (error.where.file.empty()) error.where.file = log;
      command::report_error(error);
      m_unread = true;
      return {};
    }
    std::vector<RunRecord> runs;
    const auto kept = std::make_shared<const check::CheckedLog>(*std::move(checked));
    for (std::size_t run = 0; run < kept->runs.size(); ++run) {
      runs.push_back({kept, run, m_requests[side], m_labels, {}});
      m_worst = std::max(m_worst, kept->runs[run].judgement.verdict);
    }
    return runs;
  }

  ExitStatus status() const { return m_unread ? ExitStatus::kUnreadable : command::exit_status(m_worst); }

  /// Runs of the archive; nothing, after saying why, where they cannot be had.
  std::vector<RunRecord> kept(const std::vector<std::string>& ids,
                              const std::vector<window::ProcessWindow>& windows = {}) {
    auto archive = command::open_archive(m_options.archive, archive::Access::kReadOnly);
    std::vector<std::string> known;
    for (std::size_t i = 0; archive && i < ids.size(); ++i) {
      const auto id = command::one_id(*archive, ids[i]);
      if (!id) return unread(id.error());
      known.push_back(*id);
    }
    auto runs = archive ? archivedRuns(*archive, known, {}, windows) : Result<std::vector<RunRecord>>{archive.error()};
    if (!runs) return unread(runs.error());
    for (const RunRecord& run : *runs) m_worst = std::max(m_worst, run.checked().judgement.verdict);
    return *std::move(runs);
  }

  std::vector<RunRecord> unread(const Error& error) {
    command::report_error(error);
    m_unread = true;
    return {};
  }

  std::vector<RunRecord> lot(const std::string& name) {
    auto archive = command::open_archive(m_options.archive, archive::Access::kReadOnly);
    const auto ids = archive ? idsOfLot(*archive, name) : Result<std::vector<std::string>>{archive.error()};
    return ids ? kept(*ids) : unread(ids.error());
  }

  /// What sheets are made of, one after the other: each log, or each run and each lot of the archive.
  struct Part {
    std::string name;  ///< of a file of its own
    std::function<std::vector<RunRecord>()> runs;
  };
  std::vector<Part> parts() {
    std::vector<Part> all;
    for (const auto& log : m_options.logs)
      all.push_back({QFileInfo(QString::fromStdString(log)).completeBaseName().toStdString(),
                     [this, log] { return judged(log); }});
    if (!all.empty()) return all;
    for (const auto& id : m_options.ids) all.push_back({id, [this, id] { return kept({id}); }});
    for (const auto& name : m_options.lots) all.push_back({name, [this, name] { return lot(name); }});
    return all;
  }

  ExitStatus comparison() {
    std::vector<RunRecord> both;
    for (const std::size_t side : {0, 1}) {
      auto runs = judged(m_options.logs[side], side);
      if (runs.empty()) return ExitStatus::kUnreadable;
      if (runs.size() != 1) {
        command::report_error(usage("holds " + std::to_string(runs.size()) + " runs, expected one: --run picks it",
                                    m_options.logs[side]));
        return ExitStatus::kUnreadable;
      }
      both.push_back(std::move(runs.front()));
    }
    const ComparisonRecord record{
        {both[0]}, {both[1]}, {m_options.differentThermocouples, m_options.align_C}, m_options.overlaid};
    return command::write_output(m_options.common, fileOf(record, m_style, m_kind), ExitStatus::kDone);
  }

  /// Two groups of kept runs, all against the windows that were named, else against those of A's first.
  ExitStatus groups() {
    auto windows = m_options.windows.empty() ? std::vector<window::ProcessWindow>{} : m_requests[0]->windows;
    if (windows.empty()) {
      const auto first = kept({m_options.groupA.front()});
      if (first.empty()) return ExitStatus::kUnreadable;
      windows = first.front().request->windows;
    }
    ComparisonRecord record{kept(m_options.groupA, windows),
                            kept(m_options.groupB, windows),
                            {false, m_options.align_C},
                            m_options.overlaid};
    if (record.a.empty() || record.b.empty()) return ExitStatus::kUnreadable;
    std::set<std::pair<std::string, int>> seen;  // logs and passes
    for (const auto* side : {&record.a, &record.b})
      for (const RunRecord& run : *side)
        if (!seen.emplace(run.reading().file.sha256, run.checked().run.part).second) {
          command::report_error(usage("is given twice: a run counts once", run.archive->id.toStdString()));
          return ExitStatus::kUsage;
        }
    return command::write_output(m_options.common, fileOf(record, m_style, m_kind), ExitStatus::kDone);
  }

  ExitStatus together() {
    std::vector<RunRecord> runs;
    for (const Part& part : parts()) {
      auto more = part.runs();
      runs.insert(runs.end(), more.begin(), more.end());
    }
    if (runs.empty()) return ExitStatus::kUnreadable;
    return noted(runs,
                 command::write_output(m_options.common, fileOf(runs, m_style, m_kind, m_options.each), status()));
  }

  /// Notes that the sheet of these runs is written, where that was asked for.
  ExitStatus noted(const std::vector<RunRecord>& runs, ExitStatus status) const {
    if (!m_options.markPrinted || status == ExitStatus::kUnwritable) return status;
    std::vector<std::string> ids;
    for (const RunRecord& run : runs) ids.push_back(run.archive->id.toStdString());
    auto archive = command::open_archive(m_options.archive, archive::Access::kReadWrite);
    const auto noted =
        archive ? archive->notePrinted(ids, *m_options.markPrinted) : Result<archive::Moment>(archive.error());
    if (noted) {
      command::report_waiting(*archive);
      return status;
    }
    command::report_error(noted.error());
    return ExitStatus::kUnwritable;
  }

  /// The file of each part, no two the same.
  std::vector<std::string> targetsOf(const std::vector<Part>& all, const std::filesystem::path& folder) const {
    QStringList names;
    for (const Part& part : all) names << QString::fromStdString(part.name);
    std::vector<std::string> targets;
    for (const QString& name : fileNames(names, m_kind)) targets.push_back((folder / name.toStdString()).string());
    return targets;
  }

  ExitStatus apart() {
    std::error_code failed;
    const std::filesystem::path folder = *m_options.common.output;
    std::filesystem::create_directories(folder, failed);
    if (failed) {
      command::report_error({ErrorCode::kIo, "cannot be made: " + failed.message(), {folder.string(), 0, 0}, "", ""});
      return ExitStatus::kUnwritable;
    }
    bool unwritten = false;
    const auto all = parts();
    command::Common common = m_options.common;
    const auto targets = targetsOf(all, folder);
    for (const auto& target : targets) {
      common.output = target;
      if (command::output_is_a_log(common, m_options.logs)) return ExitStatus::kUsage;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
      const auto runs = all[i].runs();
      if (runs.empty()) continue;
      common.output = targets[i];
      const auto done =
          noted(runs, command::write_output(common, fileOf(runs, m_style, m_kind, true), ExitStatus::kDone));
      unwritten |= done != ExitStatus::kDone;
      if (!common.quiet) std::fprintf(stderr, "%zu of %zu: %s\n", i + 1, all.size(), common.output->c_str());
    }
    return unwritten ? ExitStatus::kUnwritable : status();
  }

  const SheetOptions& m_options;
  Style m_style;
  Labels m_labels;
  FileKind m_kind = FileKind::kPdf;
  std::shared_ptr<const check::Request> m_requests[2];  // the second of a comparison's B
  judge::Verdict m_worst = judge::Verdict::kPass;
  bool m_unread = false;
};

}  // namespace

ExitStatus run(const SheetOptions& options) { return Sheets(options).make(); }

}  // namespace ovenwright::sheet
