#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QRegularExpression>
#include <filesystem>
#include <set>
#include <sstream>
#include <tuple>

#include "app/desktop/text/language.h"
#include "app/desktop/text/said.h"
#include "app/desktop/window/notice.h"
#include "core/board/board_file.h"
#include "core/check/check.h"
#include "core/files/text_file.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

// What the screens say of good and bad logs and files holds no English in another language.
namespace ovenwright::desktop {
namespace {

namespace fs = std::filesystem;

/// Words that English sentences can hardly do without, and none of these languages has.
bool holdsEnglish(QString text, const std::set<QString>& names) {
  for (const QString& name : names) text.remove(name);
  static const QRegularExpression quoted(QStringLiteral("\"[^\"]*\"|“[^”]*”|„[^“]*“|«[^»]*»|「[^」]*」|`[^`]*`"));
  text.remove(quoted);
  static const QRegularExpression english(
      QStringLiteral("\\b(the|of|is|are|than|found|expected|with|within|without|not|by|which|that|rows?|traces?|"
                     "enter|unknown|cannot)\\b"),
      QRegularExpression::CaseInsensitiveOption);
  return english.match(text).hasMatch();
}

class Untranslated : public testing::TestWithParam<const char*> {
 protected:
  void SetUp() override { useLanguage(QLatin1String(GetParam())); }
  ~Untranslated() override { useLanguage(QStringLiteral("en")); }

  void look(const QString& text, const std::set<QString>& names = {}) {
    if (holdsEnglish(text, names)) m_english.insert(text);
    ++m_looked;
  }
  void lookAt(const Error& error) {
    std::set<QString> names{QString::fromStdString(fs::path(error.where.file).filename().string())};
    look(errorText(error), names);
  }
  void lookAt(const check::CheckedLog& log) {
    const QLocale locale{QString::fromLatin1(GetParam())};
    const Format format({}, {}, locale);
    std::set<QString> names;
    for (const auto& other : log.reading.others) names.insert(QString::fromStdString(other.name));
    for (const auto& run : log.runs)
      for (const auto& channel : run.run.channels) names.insert(QString::fromStdString(channel.name));
    names.insert(QString::fromStdString(log.reading.file.member));
    names.insert(QString::fromStdString(log.reading.file.file));
    names.erase(QString());
    for (const auto& assumption : log.reading.read_as.assumed) look(inWords(assumption.text, locale), names);
    for (const auto& note : log.reading.read_as.notes) look(inWords(note, locale), names);
    for (const auto& warning : log.reading.warnings) look(inWords(warning.message, locale), names);
    for (const auto& run : log.runs) {
      const auto& judgement = run.judgement;
      for (const auto& window : judgement.windows) names.insert(QString::fromStdString(window.identity.name));
      for (const auto& channel : run.run.channels)
        for (const auto& fault : channel.faults) look(inWords(fault.detail, locale), names);
      for (const auto& warning : judgement.warnings) look(inWords(warning, locale), names);
      for (std::size_t i = 0; i < judgement.all_size(); ++i) {
        const auto& outcome = judgement.all(i);
        for (const auto& text : {outcome.value.reason, outcome.value.note, outcome.cause.detail})
          look(inWords(text, format), names);
      }
    }
  }
  void TearDown() override {
    std::string list;
    for (const auto& text : m_english) list += text.toStdString() + "\n";
    EXPECT_EQ(list, "");
    EXPECT_GT(m_looked, 20);
  }

 private:
  std::set<QString> m_english;
  int m_looked = 0;
};

check::Request request(const char* window) {
  check::Request request;
  auto loaded = window::load(std::string(OVENWRIGHT_PROFILES "/windows/") + window + ".toml");
  if (loaded) request.windows.push_back(*std::move(loaded));
  request.window_assumed = true;
  request.log.threads = 1;
  return request;
}

TEST_P(Untranslated, NothingIsOfTheKeptLogs) {
  const auto setup = request("sac305");
  for (const auto& entry : fs::directory_iterator(OVENWRIGHT_TEST_DATA "/layouts")) {
    const auto log = check::check(entry.path().string(), setup);
    if (log)
      lookAt(*log);
    else
      lookAt(log.error());
  }
}

/// The demo logs with their boards, cut short at many places and begun late, by each kind of window.
TEST_P(Untranslated, NothingIsOfDemoLogsThatAreCut) {
  const std::string demo = OVENWRIGHT_PROFILES "/demo/";
  const auto oven = oven::load_oven(demo + "oven.toml");
  const auto recipe = oven::load_recipe(demo + "recipe.toml");
  ASSERT_TRUE(oven && recipe);
  for (const auto& [name, board, window] :
       {std::tuple{"tern_run1.csv", "board.toml", "sac305"},
        std::tuple{"tern_run1.csv", "board_with_air.toml", "jstd020_body_pb_free"},
        std::tuple{"tern_faults.txt", "", "bi58sn42"}, std::tuple{"tern_wave.tsv", "board_wave.toml", "wave_sac305"}}) {
    auto setup = request(window);
    if (*board) {
      auto loaded = board::load(demo + board);
      ASSERT_TRUE(loaded) << loaded.error().text();
      setup.board = *std::move(loaded);
    }
    const auto text = files::read_text(demo + name);
    ASSERT_TRUE(text);
    for (const double share : {0.02, 0.1, 0.3, 0.45, 0.6, 0.75, 1.0}) {
      const std::string cut = text->substr(0, std::size_t(share * double(text->size())));
      auto reading = log::read_bytes(name, cut, setup.log);
      if (!reading) {
        lookAt(reading.error());
        continue;
      }
      auto with_oven = setup;
      if (share == 0.6) {
        with_oven.oven = *oven;
        with_oven.recipe = *recipe;
        with_oven.recipe->top_C[2] = 400;  // beyond the oven's limits, and steps too far
        with_oven.recipe->oven = "another";
      }
      const auto log = check::check(*std::move(reading), with_oven);
      if (log)
        lookAt(*log);
      else
        lookAt(log.error());
    }
  }
}

/// Files that people edit, each line in turn left out, misspelt or given a value of another kind.
TEST_P(Untranslated, NothingIsOfDamagedFiles) {
  const std::string demo = OVENWRIGHT_PROFILES "/demo/";
  const auto read = [](const std::string& path) {
    const auto text = files::read_text(path);
    return text ? *text : std::string();
  };
  const auto each = [&](const std::string& text, const auto& parse) {
    std::vector<std::string> lines;
    std::istringstream rest(text);
    for (std::string line; std::getline(rest, line);) lines.push_back(line);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const auto equals = lines[i].find('=');
      if (equals == std::string::npos || lines[i].front() == '#') continue;
      const std::string key = lines[i].substr(0, equals);
      for (const std::string& changed : {std::string(), "x" + lines[i], key + "= -7", key + "= \"Tc\"",
                                         key + "= [3, 2]", key + "= [\"a\"]", key + "= true", key + "= [[1]]"}) {
        std::string damaged;
        for (std::size_t k = 0; k < lines.size(); ++k) damaged += (k == i ? changed : lines[k]) + "\n";
        if (const auto error = parse(damaged)) lookAt(*error);
      }
    }
  };
  const auto error_of = [](const auto& result) { return result ? std::nullopt : std::optional(result.error()); };
  for (const char* name : {"sac305", "jstd020_body_pb_free", "wave_sac305"})
    each(read(std::string(OVENWRIGHT_PROFILES "/windows/") + name + ".toml"),
         [&](const std::string& text) { return error_of(window::parse("w.toml", text)); });
  each(read(demo + "board.toml"), [&](const std::string& text) { return error_of(board::parse("b.toml", text)); });
  each(read(demo + "oven.toml"), [&](const std::string& text) { return error_of(oven::parse_oven("o.toml", text)); });
  each(read(demo + "recipe.toml"),
       [&](const std::string& text) { return error_of(oven::parse_recipe("r.toml", text)); });
}

INSTANTIATE_TEST_SUITE_P(All, Untranslated, testing::Values("de", "es", "zh_TW", "zh_CN"),
                         [](const auto& language) { return std::string(language.param); });

}  // namespace
}  // namespace ovenwright::desktop
