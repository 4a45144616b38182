#include <iterator>
#include <string_view>
#include <unordered_set>

#include "core/log/words.h"

namespace ovenwright::log {
namespace {

constexpr std::string_view kOpenWords[] = {"open",
                                           "opn",
                                           "offen",
                                           "ouvert",
                                           "abierto",
                                           "o.c.",
                                           "oc",
                                           "n/a",
                                           "na",
                                           "n.a.",
                                           "#n/a",
                                           "#na",
                                           "nan",
                                           "-nan",
                                           "+nan",
                                           "nan(ind)",
                                           "-nan(ind)",
                                           "1.#qnan",
                                           "-1.#ind",
                                           "1.#ind",
                                           "-1.#qnan",
                                           "null",
                                           "nil",
                                           "none",
                                           "(null)",
                                           "<null>",
                                           "err",
                                           "error",
                                           "err.",
                                           "#err",
                                           "fehler",
                                           "erreur",
                                           "fault",
                                           "fail",
                                           "failed",
                                           "invalid",
                                           "inval",
                                           "ungültig",
                                           "invalide",
                                           "inválido",
                                           "burnout",
                                           "burn-out",
                                           "burn out",
                                           "b.out",
                                           "bout",
                                           "b-out",
                                           "no tc",
                                           "notc",
                                           "no probe",
                                           "no sensor",
                                           "no signal",
                                           "no data",
                                           "nodata",
                                           "no reading",
                                           "disconnected",
                                           "disconnect",
                                           "disc",
                                           "disc.",
                                           "unplugged",
                                           "not connected",
                                           "nc",
                                           "n.c.",
                                           "n/c",
                                           "break",
                                           "broken",
                                           "bruch",
                                           "fühlerbruch",
                                           "drahtbruch",
                                           "leitungsbruch",
                                           "sensorbruch",
                                           "open tc",
                                           "tc open",
                                           "opentc",
                                           "open circuit",
                                           "opencircuit",
                                           "open input",
                                           "tc fault",
                                           "missing",
                                           "miss",
                                           "bad",
                                           "void",
                                           "blank",
                                           "empty",
                                           "leer",
                                           "keine",
                                           "kein wert",
                                           "kein",
                                           "k.a.",
                                           "k. a.",
                                           "fehlt",
                                           "fehlend",
                                           "vide",
                                           "absent",
                                           "manquant",
                                           "coupé",
                                           "rompu",
                                           "rupture",
                                           "déconnecté",
                                           "vacío",
                                           "falla",
                                           "fallo",
                                           "sin dato",
                                           "sin datos",
                                           "roto",
                                           "desconectado",
                                           "#value!",
                                           "#div/0!",
                                           "#ref!",
                                           "#num!",
                                           "#null!",
                                           "#wert!",
                                           "#nv",
                                           "#valeur!",
                                           "#¡valor!",
                                           "x",
                                           "xx",
                                           "xxx",
                                           "xxxx",
                                           "xxxxx",
                                           "开路",
                                           "開路",
                                           "断线",
                                           "斷線",
                                           "断線",
                                           "断偶",
                                           "斷偶",
                                           "断路",
                                           "斷路",
                                           "无",
                                           "無",
                                           "无效",
                                           "無效",
                                           "無効",
                                           "未接",
                                           "未连接",
                                           "未連接",
                                           "未接続",
                                           "欠測",
                                           "なし",
                                           "オープン",
                                           "バーンアウト",
                                           "エラー",
                                           "错误",
                                           "錯誤",
                                           "故障",
                                           "异常",
                                           "異常",
                                           "空",
                                           "缺失",
                                           "悬空",
                                           "interrupted",
                                           "offline",
                                           "off-line",
                                           "tc err",
                                           "aus",
                                           "not available",
                                           "sensor fault",
                                           "sensor error",
                                           "s.br",
                                           "sbr",
                                           "no value",
                                           "aperto",
                                           "interrotto",
                                           "aberto",
                                           "rompido",
                                           "interrumpido",
                                           "abierta",
                                           "otwarty",
                                           "przerwa",
                                           "rozpojeno",
                                           "öppen",
                                           "avbrott",
                                           "brudd",
                                           "brud",
                                           "açık",
                                           "kopuk",
                                           "обрыв",
                                           "개방",
                                           "단선",
                                           "오픈",
                                           "tc-bruch",
                                           "leiterbruch",
                                           "guasto",
                                           "rotto",
                                           "roto",
                                           "onderbroken",
                                           "geen",
                                           "undef",
                                           "undefined",
                                           "unknown",
                                           "?"};

constexpr std::string_view kOverWords[] = {"over",
                                           "+over",
                                           "ol",
                                           "+ol",
                                           "o.l",
                                           "o.l.",
                                           "o/l",
                                           "ovl",
                                           "ovr",
                                           "+ovl",
                                           "ovf",
                                           "ovrng",
                                           "ovrange",
                                           "over range",
                                           "overrange",
                                           "over-range",
                                           "overload",
                                           "overflow",
                                           "or",
                                           "o.r.",
                                           "o/r",
                                           "hi",
                                           "high",
                                           "inf",
                                           "+inf",
                                           "infinity",
                                           "+infinity",
                                           "∞",
                                           "+∞",
                                           "1.#inf",
                                           "1.#infinity",
                                           "überlauf",
                                           "überl",
                                           "über",
                                           "bereichsüberschreitung",
                                           "übersteuert",
                                           "überbereich",
                                           "dépassement",
                                           "hors gamme",
                                           "hors plage",
                                           "hors échelle",
                                           "fuera de rango",
                                           "sobrerango",
                                           "desbordamiento",
                                           "out of range",
                                           "oor",
                                           "超量程",
                                           "超限",
                                           "溢出",
                                           "超出",
                                           "超出量程",
                                           "オーバー",
                                           "レンジオーバー",
                                           "オーバーレンジ",
                                           "オーバーフロー",
                                           ">max",
                                           "max+",
                                           "+full",
                                           "full",
                                           "sat",
                                           "saturated",
                                           "saturation",
                                           "h.h",
                                           "ur+"};

constexpr std::string_view kUnderWords[] = {"under",
                                            "-over",
                                            "-ol",
                                            "undr",
                                            "unr",
                                            "under range",
                                            "underrange",
                                            "under-range",
                                            "underflow",
                                            "udr",
                                            "lo",
                                            "low",
                                            "-inf",
                                            "-infinity",
                                            "-∞",
                                            "-1.#inf",
                                            "unterlauf",
                                            "unterbereich",
                                            "bereichsunterschreitung",
                                            "-ovl",
                                            "欠量程",
                                            "アンダー",
                                            "アンダーレンジ",
                                            "<min",
                                            "低于量程"};

/// Whether a text is one of a list of words; every list becomes a table once.
template <const auto& kWords>
bool among(std::string_view text) {
  static const std::unordered_set<std::string_view> kTable(std::begin(kWords), std::end(kWords));
  return kTable.contains(text);
}

bool only(std::string_view text, std::string_view characters);

/// "> 300", ">1372.0", "≥300": the end of a range behind a sign.
bool beyond_a_number(std::string_view text, std::string_view sign) {
  if (!text.starts_with(sign)) return false;
  text.remove_prefix(sign.size());
  return text.find_first_of("0123456789") != std::string_view::npos && only(text, "0123456789.,-+ =°cfk");
}

bool only(std::string_view text, std::string_view characters) {
  return text.find_first_not_of(characters) == std::string_view::npos;
}

}  // namespace

bool means_open(std::string_view text) {
  if (only(text, "-_.,*?# ~") || text == "…") return true;
  if (text.size() > 1 && only(text, "/\\| ")) return true;
  if (text.starts_with("!") && text.size() > 1) text.remove_prefix(1);
  if (text.size() > 2 && ((text.front() == '[' && text.back() == ']') || (text.front() == '(' && text.back() == ')') ||
                          (text.front() == '<' && text.back() == '>') || (text.front() == '*' && text.back() == '*') ||
                          (text.front() == '-' && text.back() == '-'))) {
    text = text.substr(1, text.size() - 2);
    while (text.size() > 2 && (text.front() == '*' || text.front() == '-') && text.back() == text.front()) {
      text = text.substr(1, text.size() - 2);
    }
  }
  if (among<kOpenWords>(text)) return true;
  // "err1", "error 12", "e-01": the instrument's number of its fault; "nan°c": a unit behind the word.
  const auto letters = text.find_first_of("0123456789");
  if (letters != std::string_view::npos && letters > 0 && only(text.substr(letters), "0123456789")) {
    std::string_view word = text.substr(0, letters);
    while (!word.empty() && std::string_view{" -_#:"}.find(word.back()) != std::string_view::npos)
      word.remove_suffix(1);
    const bool short_code = word == "e" && text.size() - letters >= 2;
    if (short_code || word == "err" || word == "error" || word == "er" || word == "fehler" || word == "fault" ||
        word == "erreur")
      return true;
  }
  for (const std::string_view unit : {"°c", "°f", " c", " f", " k"}) {
    if (text.size() > unit.size() && text.ends_with(unit)) {
      std::string_view word = text.substr(0, text.size() - unit.size());
      while (!word.empty() && word.back() == ' ') word.remove_suffix(1);
      return !word.empty() && (among<kOpenWords>(word) || only(word, "-.*"));
    }
  }
  return false;
}

bool means_over(std::string_view text) {
  if (text.size() > 1 && (only(text, "+") || only(text, ">") || only(text, "^"))) return true;
  if (beyond_a_number(text, ">")) return true;
  if (text.starts_with("+") && text.size() > 4 && among<kOverWords>(text.substr(1))) return true;
  return among<kOverWords>(text);
}

bool means_under(std::string_view text) {
  if (text.size() > 1 && only(text, "<")) return true;
  if (beyond_a_number(text, "<")) return true;
  return among<kUnderWords>(text);
}

}  // namespace ovenwright::log
