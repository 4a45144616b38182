#include "app/desktop/import/plain_lines.h"

#include <QFile>
#include <string_view>

#include "core/log/grid.h"

namespace ovenwright::desktop {

std::vector<log::ShownLine> plainLines(const Source& source, std::size_t around_line) {
  constexpr qint64 kMostBytes = qint64{4} << 20;
  constexpr std::size_t kBefore = 8, kAfter = 8, kHead = 5, kMostLetters = 400;
  QByteArray bytes = source.pasted.left(kMostBytes);
  if (!source.path.isEmpty()) {
    QFile file(source.path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    bytes = file.read(kMostBytes);
  }
  const std::string_view raw(bytes.constData(), std::size_t(bytes.size()));
  const auto decoded = log::decode(raw);
  if (!decoded) return {};
  std::string_view text = decoded->unchanged ? raw.substr(decoded->skip) : std::string_view(decoded->utf8);
  std::vector<log::ShownLine> lines;
  for (std::size_t line = 1; !text.empty(); ++line) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    std::string_view row = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    if (!row.empty() && row.back() == '\r') row.remove_suffix(1);
    if (line > around_line + kAfter && line > kHead) break;
    if (line <= kHead || line + kBefore >= around_line)
      lines.push_back({line, {std::string(row.substr(0, kMostLetters))}});
  }
  return lines;
}

}  // namespace ovenwright::desktop
