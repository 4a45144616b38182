#include "core/log/gzip.h"

#include <fmt/format.h>
#define ZLIB_CONST  // next_in points to const
#include <zlib.h>

#include <algorithm>
#include <array>
#include <limits>

#include "core/log/size_check.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

/// zlib's stream, set up for gzip and ended with the object.
class Inflater {
 public:
  Inflater() : ready_(inflateInit2(&stream, 16 + MAX_WBITS) == Z_OK) {}
  ~Inflater() {
    if (ready_) inflateEnd(&stream);
  }
  Inflater(const Inflater&) = delete;
  Inflater& operator=(const Inflater&) = delete;
  bool ready() const { return ready_; }
  z_stream stream{};

 private:
  bool ready_;
};

Error damaged(std::string_view found) {
  return {ErrorCode::kParse,
          fmt::format("found a gzip file that is {}, expected a whole one", found),
          {},
          std::string{found},
          "a whole gzip file"};
}

}  // namespace

bool is_gzip(std::string_view bytes) { return bytes.starts_with("\x1F\x8B\x08"); }

Result<std::string> gunzip(std::string_view bytes, UnpackBudget& budget, std::vector<std::string>& notes,
                           const HeadCheck& check) {
  const auto packed = static_cast<double>(bytes.size());
  bool checked = !check;
  Inflater inflater;
  if (!inflater.ready()) return damaged("not readable: out of memory");
  auto& stream = inflater.stream;
  std::string unpacked;
  std::array<char, 64 * 1024> buffer;
  while (true) {
    if (stream.avail_in == 0 && !bytes.empty()) {
      const auto piece = bytes.substr(0, std::numeric_limits<uInt>::max());
      stream.next_in = reinterpret_cast<const Bytef*>(piece.data());
      stream.avail_in = static_cast<uInt>(piece.size());
      bytes.remove_prefix(piece.size());
    }
    stream.next_out = reinterpret_cast<Bytef*>(buffer.data());
    stream.avail_out = static_cast<uInt>(buffer.size());
    const int status = inflate(&stream, Z_NO_FLUSH);
    const std::size_t made = buffer.size() - stream.avail_out;
    if (!budget.take(made)) return budget.exceeded("the gzip file");
    unpacked.append(buffer.data(), made);
    if (!checked && unpacked.size() >= kCheckedHead) {
      checked = true;
      const double whole = packed / static_cast<double>(stream.total_in) * static_cast<double>(unpacked.size());
      if (whole > static_cast<double>(kWorthACheck)) {
        if (auto refused = check(unpacked, whole)) return *refused;
      }
    }
    if (status == Z_STREAM_END) {
      const std::string_view rest{reinterpret_cast<const char*>(stream.next_in), stream.avail_in};
      if (is_gzip(rest)) {
        inflateReset(&stream);
        continue;
      }
      if (!rest.empty() || !bytes.empty()) {
        notes.push_back(say(Phrase::kBehindGzip, {std::to_string(rest.size() + bytes.size())}));
      }
      return unpacked;
    }
    if (status != Z_OK && status != Z_BUF_ERROR) return damaged("damaged");
    if (made == 0 && stream.avail_in == 0 && bytes.empty()) return damaged("cut short");
  }
}

}  // namespace ovenwright::log
