#include "app/desktop/text/compare_words.h"

// The sentences about a comparison in German.
namespace ovenwright::desktop {
namespace {

constexpr CompareWords kWords[] = {
    {"margin.more", "[verdict:{side} hat mehr Reserve:] {more} gegenüber {less}.", nullptr},
    {"margin.more.means", "[verdict:{side} hat mehr Reserve:] {more} gegenüber {less}, im Mittel der Läufe.", nullptr},
    {"margin.same", "[verdict:Die Reserven unterscheiden sich nicht um mehr als ihre Unsicherheit:] A {a}, B {b}.",
     nullptr},
    {"margin.same.means",
     "[verdict:Die Reserven unterscheiden sich nicht um mehr als ihre Unsicherheit:] A {a}, B {b}, im Mittel der "
     "Läufe.",
     nullptr},
    {"margin.few",
     "[verdict:A hat eine Reserve von {a}, B von {b}], im Mittel der Läufe; ein Intervall braucht zwei Läufe auf jeder "
     "Seite.",
     nullptr},
    {"margin.none.both", "[verdict:Weder A noch B hat eine Reserve, die sich vergleichen lässt.]", nullptr},
    {"margin.none.one", "[verdict:{side} hat keine Reserve, die sich vergleichen lässt.]", nullptr},
    {"out.neither", "Bei keinem ist etwas verletzt.", nullptr},
    {"out.none", "Bei {side} ist nichts verletzt.", nullptr},
    {"out.within", "Bei {side} ist nichts verletzt, [more:{k} liegt innerhalb der Unsicherheit an einer Grenze].",
     "Bei {side} ist nichts verletzt, [more:{k} liegen innerhalb ihrer Unsicherheit an einer Grenze]."},
    {"out.open", "Bei {side} ist nichts verletzt, [more:{k} ist unbestimmt].",
     "Bei {side} ist nichts verletzt, [more:{k} sind unbestimmt]."},
    {"out.some", "Bei {side} ist [more:{k} verletzt].", "Bei {side} sind [more:{k} verletzt]."},
    {"runs.neither", "Auf keiner Seite liegt ein Lauf außerhalb der Grenzen.", nullptr},
    {"runs.none", "Bei {side} liegt kein Lauf außerhalb der Grenzen.", nullptr},
    {"runs.one", "Der Lauf von {side} liegt außerhalb der Grenzen.", nullptr},
    {"runs.some", "Bei {side} liegt {k} von {n} Läufen außerhalb der Grenzen.",
     "Bei {side} liegen {k} von {n} Läufen außerhalb der Grenzen."},
    {"speed.more", "{side} schafft {share} mehr Baugruppen je Stunde.", nullptr},
    {"speed.fewer", "{side} schafft {share} weniger Baugruppen je Stunde.", nullptr},
    {"speed.same", "Beide laufen mit {speed}.", nullptr},
    {"differ.nothing", "Kein Ergebnis lässt sich vergleichen.", nullptr},
    {"differ.none", "Keines von {n} Ergebnissen unterscheidet sich um mehr als seine Unsicherheit.", nullptr},
    {"differ.trace",
     "{k} von {n} Ergebnissen unterscheidet sich um mehr als seine Unsicherheit, am deutlichsten "
     "[outcome:{requirement} an {trace}]: {a.number} gegenüber {b} ({difference} ± {uncertainty}).",
     "{k} von {n} Ergebnissen unterscheiden sich um mehr als ihre Unsicherheit, am deutlichsten [outcome:{requirement} "
     "an {trace}]: {a.number} gegenüber {b} ({difference} ± {uncertainty})."},
    {"differ.board",
     "{k} von {n} Ergebnissen unterscheidet sich um mehr als seine Unsicherheit, am deutlichsten "
     "[outcome:{requirement}]: {a.number} gegenüber {b} ({difference} ± {uncertainty}).",
     "{k} von {n} Ergebnissen unterscheiden sich um mehr als ihre Unsicherheit, am deutlichsten "
     "[outcome:{requirement}]: {a.number} gegenüber {b} ({difference} ± {uncertainty})."},
    {"shared",
     "Dieselbe Baugruppe und dieselben Thermoelemente: ihr gemeinsamer Fehler hebt sich in den Unterschieden auf.",
     nullptr},
    {"shared.not", "Andere Thermoelemente oder eine andere Baugruppe: die Fehler beider bleiben in den Unterschieden.",
     nullptr},
    {"shared.groups",
     "Mittel von {n_a} und {n_b} Läufen; ± ist ihr 95-%-Intervall aus der Streuung zwischen den Läufen.", nullptr},
    {"recipes.several.one",
     "Nicht alle Läufe von {side} hatten dasselbe Rezept, daher werden keine Rezepte verglichen.", nullptr},
    {"recipes.several.both", "Bei keinem hatten alle Läufe dasselbe Rezept, daher werden keine Rezepte verglichen.",
     nullptr},
    {"recipes.same", "Die Rezepte sind gleich.", nullptr},
    {"recipes.zones", "[zones:{k} Zone ist anders]", "[zones:{k} Zonen sind anders]"},
    {"recipes.speed", "[zones:Die Geschwindigkeit ist anders]", nullptr},
    {"recipes.zones_speed", "[zones:{k} Zone und die Geschwindigkeit sind anders]",
     "[zones:{k} Zonen und die Geschwindigkeit sind anders]"},
};

}  // namespace

const std::span<const CompareWords> kGermanComparison = kWords;

}  // namespace ovenwright::desktop
