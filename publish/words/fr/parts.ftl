# Comment s’appellent les unités, les blocs, les rangs et les pièces, et où se couchent les coutures.
# Les noms sont sans article ; .plural en est le pluriel.

nothing = { "" }
figure = { FIGURES($number) }
the = { $name }
    .plural = { PLURAL($name) }
each = chaque pièce
many = { PLURAL($name) }

name-block = bloc
    .plural = blocs
name-block-of = bloc { $block }
    .plural = blocs { $block }
name-sized = { $name } ({ $place ->
    [small] petit modèle
    [medium] modèle moyen
    [large] grand modèle
   *[smallest] { ORDINAL($number) } par ordre de taille
})
    .plural = { PLURAL($name) } ({ $place ->
        [small] petit modèle
        [medium] modèle moyen
        [large] grand modèle
       *[smallest] { ORDINAL($number) } par ordre de taille
    })
name-numbered = { $name } n° { FIGURES($number) }
    .plural = { PLURAL($name) } n° { FIGURES($number) }
name-unit = unité { FIGURES($number) }
name-sections = { $count ->
    [one] section { $letters }
   *[other] sections { $letters }
}
joined = sections { $letters } assemblées
-row = { $series ->
    [sashing-row] rang de bandes
   *[row] rang
}
-rows = { $series ->
    [sashing-row] rangs de bandes
   *[row] rangs
}
name-row = { -row } { FIGURES($number) }
rows-of = { -rows } { $numbers }
rows-to = { -rows } 1 à { FIGURES($count) }
name-part = { $part ->
    [ground] fond
    [block] bloc
    [half-ground] demi-fond
    [half-block] demi-bloc
    [ground-row] rang de fonds
    [block-row] rang de blocs
    [ground-column] colonne de fonds
    [block-column] colonne de blocs
    [unit] unité
    [row] rang
    [sashing-row] rang de bandes
    [centre] milieu
   *[top] top
}
    .plural = { $part ->
        [ground] fonds
        [block] blocs
        [half-ground] demi-fonds
        [half-block] demi-blocs
        [ground-row] rangs de fonds
        [block-row] rangs de blocs
        [ground-column] colonnes de fonds
        [block-column] colonnes de blocs
        [unit] unités
        [row] rangs
        [sashing-row] rangs de bandes
        [centre] milieux
       *[top] tops
    }

some = { $count ->
    [one] { $count } { $name }
   *[other] { $count } { PLURAL($name) }
}
some-lettered = { $count ->
    [one] { $count } { $name }
   *[other] { $count } { PLURAL($name) }
} { $letter }
some-marked = { $count ->
    [one] { $name }
   *[other] { $count } fois { $name }
}
-shape = { $shape ->
    [strip] bande intercalaire
    [cornerstone] cabochon
    [side-triangle] triangle de côté
    [corner-triangle] triangle d’angle
    [setting-triangle] triangle de bord
    [triangle] triangle
    [diamond] losange
    [hexagon] hexagone
    [parallelogram] parallélogramme
   *[piece] pièce
}
-shapes = { $shape ->
    [strip] bandes intercalaires
    [cornerstone] cabochons
    [side-triangle] triangles de côté
    [corner-triangle] triangles d’angle
    [setting-triangle] triangles de bord
    [triangle] triangles
    [diamond] losanges
    [hexagon] hexagones
    [parallelogram] parallélogrammes
   *[piece] pièces
}
piece-called = { -shape } en { $fabric }
some-pieces = { $count ->
    [one] { $count } { -shape }
   *[other] { $count } { -shapes }
} { $letter } ({ $fabric })
by-turns = { $parts } en alternance, { $ends ->
    [both] au début et à la fin
   *[first] au début
} { $first },

way = { $way ->
    [left] vers la gauche
    [right] vers la droite
    [up] vers le haut
    [down] vers le bas
    [open] ouvertes
    [out] vers l’extérieur, à l’opposé du milieu
    [sashing] vers les bandes intercalaires
   *[one-side] d’un seul côté
}
toward = vers { $what }
way-in = { $way } pour { $which }
way-halves = { $one } pour une moitié et { $other } pour l’autre
