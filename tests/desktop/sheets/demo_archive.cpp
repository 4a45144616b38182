#include "tests/desktop/sheets/demo_archive.h"

#include <gtest/gtest.h>

#include <QFile>

#include "app/archive/archive.h"
#include "app/archive/keep.h"
#include "core/board/board_file.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

namespace ovenwright::desktop {

std::vector<std::string> keepDemo(const QString& archive, const std::string& lot, const std::vector<std::string>& logs,
                                  const QString& folder) {
  const std::string demo = OVENWRIGHT_PROFILES "/demo/";
  check::Request request;
  request.windows.push_back(*window::load(demo + "window.toml"));
  request.board = *board::load(demo + "board.toml");
  request.oven = *oven::load_oven(demo + "oven.toml");
  request.recipe = *oven::load_recipe(demo + "recipe.toml");
  auto opened = archive::Archive::open(archive.toStdString());
  EXPECT_TRUE(opened) << opened.error().text();
  std::vector<std::string> ids;
  for (const auto& name : logs) {
    static int made = 0;
    QFile from(QString::fromStdString(demo + name));
    EXPECT_TRUE(from.open(QIODevice::ReadOnly)) << name;
    const QString path = folder + QStringLiteral("/kept_%1_").arg(++made) + QString::fromStdString(name);
    QFile to(path);
    EXPECT_TRUE(to.open(QIODevice::WriteOnly));
    to.write("# made " + QByteArray::number(made) + "\n" + from.readAll());
    to.close();
    const auto checked = check::check(path.toStdString(), request);
    EXPECT_TRUE(checked) << checked.error().text();
    archive::Labels labels{lot, "T-0417", "M. Kade", {}};
    labels.runAt = *archive::parseMoment("2026-03-11T13:" + std::to_string(10 + made % 50) + ":00Z");
    const auto runs = archive::keep(path.toStdString(), request, *checked, labels);
    EXPECT_TRUE(runs) << runs.error().text();
    const auto added = opened->add(*runs);
    EXPECT_TRUE(added) << added.error().text();
    for (const auto& one : *added) ids.push_back(one.id);
  }
  return ids;
}

}  // namespace ovenwright::desktop
