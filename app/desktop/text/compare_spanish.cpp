#include "app/desktop/text/compare_words.h"

// The sentences about a comparison in Spanish.
namespace ovenwright::desktop {
namespace {

constexpr CompareWords kWords[] = {
    {"margin.more", "[verdict:{side} tiene más margen:] {more} frente a {less}.", nullptr},
    {"margin.more.means", "[verdict:{side} tiene más margen:] {more} frente a {less}, medias de sus pasadas.", nullptr},
    {"margin.same", "[verdict:Los márgenes no difieren en más que su incertidumbre:] A {a}, B {b}.", nullptr},
    {"margin.same.means",
     "[verdict:Los márgenes no difieren en más que su incertidumbre:] A {a}, B {b}, medias de sus pasadas.", nullptr},
    {"margin.few",
     "[verdict:A tiene un margen de {a}, B de {b}], medias de sus pasadas; un intervalo necesita dos pasadas en cada "
     "lado.",
     nullptr},
    {"margin.none.both", "[verdict:Ni A ni B tienen un margen que comparar.]", nullptr},
    {"margin.none.one", "[verdict:{side} no tiene un margen que comparar.]", nullptr},
    {"out.neither", "Ninguno tiene nada fuera de límites.", nullptr},
    {"out.none", "{side} no tiene nada fuera de límites.", nullptr},
    {"out.within", "{side} no tiene nada fuera de límites, [more:{k} dentro de su incertidumbre].",
     "{side} no tiene nada fuera de límites, [more:{k} dentro de su incertidumbre]."},
    {"out.open", "{side} no tiene nada fuera de límites, [more:{k} indeterminado].",
     "{side} no tiene nada fuera de límites, [more:{k} indeterminados]."},
    {"out.some", "{side} tiene [more:{k} fuera de límites].", nullptr},
    {"runs.neither", "Ninguna pasada de ninguno está fuera de límites.", nullptr},
    {"runs.none", "Ninguna pasada de {side} está fuera de límites.", nullptr},
    {"runs.one", "La pasada de {side} está fuera de límites.", nullptr},
    {"runs.some", "{k} de {n} pasadas de {side} está fuera de límites.",
     "{k} de {n} pasadas de {side} están fuera de límites."},
    {"speed.more", "{side} hace {share} más placas por hora.", nullptr},
    {"speed.fewer", "{side} hace {share} menos placas por hora.", nullptr},
    {"speed.same", "Ambos van a {speed}.", nullptr},
    {"differ.nothing", "Ningún resultado se puede comparar.", nullptr},
    {"differ.none", "Ninguno de {n} resultados difiere en más que su incertidumbre.", nullptr},
    {"differ.trace",
     "{k} de {n} resultados difiere en más que su incertidumbre, el más claro [outcome:{requirement} en {trace}]: de "
     "{a.number} a {b} ({difference} ± {uncertainty}).",
     "{k} de {n} resultados difieren en más que su incertidumbre, el más claro [outcome:{requirement} en {trace}]: de "
     "{a.number} a {b} ({difference} ± {uncertainty})."},
    {"differ.board",
     "{k} de {n} resultados difiere en más que su incertidumbre, el más claro [outcome:{requirement}]: de {a.number} a "
     "{b} ({difference} ± {uncertainty}).",
     "{k} de {n} resultados difieren en más que su incertidumbre, el más claro [outcome:{requirement}]: de {a.number} "
     "a {b} ({difference} ± {uncertainty})."},
    {"shared", "La misma placa y los mismos termopares: su error común se anula en las diferencias.", nullptr},
    {"shared.not", "Otros termopares u otra placa: los errores de ambos quedan en las diferencias.", nullptr},
    {"shared.groups", "Medias de {n_a} y {n_b} pasadas; ± es su intervalo del 95 %, por la dispersión entre pasadas.",
     nullptr},
    {"recipes.several.one", "No todas las pasadas de {side} tuvieron la misma receta, así que no se comparan recetas.",
     nullptr},
    {"recipes.several.both", "Ninguno tuvo una sola receta en todas sus pasadas, así que no se comparan recetas.",
     nullptr},
    {"recipes.same", "Las recetas son iguales.", nullptr},
    {"recipes.zones", "[zones:{k} zona es distinta]", "[zones:{k} zonas son distintas]"},
    {"recipes.speed", "[zones:La velocidad es distinta]", nullptr},
    {"recipes.zones_speed", "[zones:{k} zona y la velocidad son distintas]",
     "[zones:{k} zonas y la velocidad son distintas]"},
};

}  // namespace

const std::span<const CompareWords> kSpanishComparison = kWords;

}  // namespace ovenwright::desktop
