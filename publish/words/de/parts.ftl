# Wie Einheiten, Blöcke, Reihen und Teile heißen, und wohin Nähte gebügelt werden.
# Namen stehen ohne Artikel; .plural ist die Mehrzahl.

nothing = { "" }
figure = { FIGURES($number) }
the = { $name }
    .plural = { PLURAL($name) }
each = Jedes Stück
many = { PLURAL($name) }

name-block = Block
    .plural = Blöcke
name-block-of = Block „{ $block }“
    .plural = Blöcke „{ $block }“
name-sized = { $name } ({ $place ->
    [small] klein
    [medium] mittel
    [large] groß
   *[smallest] { ORDINAL($number) } von klein nach groß
})
    .plural = { PLURAL($name) } ({ $place ->
        [small] klein
        [medium] mittel
        [large] groß
       *[smallest] { ORDINAL($number) } von klein nach groß
    })
name-numbered = { $name } Nr. { FIGURES($number) }
    .plural = { PLURAL($name) } Nr. { FIGURES($number) }
name-unit = Einheit { FIGURES($number) }
name-sections = { $count ->
    [one] Abschnitt { $letters }
   *[other] Abschnitte { $letters }
}
joined = verbundene Abschnitte { $letters }
-row = { $series ->
    [sashing-row] Zwischenreihe
   *[row] Reihe
}
name-row = { -row } { FIGURES($number) }
rows-of = { -row } { $numbers }
rows-to = { -row } 1 bis { FIGURES($count) }
name-part = { $part ->
    [ground] Hintergrund
    [block] Block
    [half-ground] Hintergrundhälfte
    [half-block] Blockhälfte
    [ground-row] Hintergrundreihe
    [block-row] Blockreihe
    [ground-column] Hintergrundspalte
    [block-column] Blockspalte
    [unit] Einheit
    [row] Reihe
    [sashing-row] Zwischenreihe
    [centre] Mitte
   *[top] Top
}
    .plural = { $part ->
        [ground] Hintergründe
        [block] Blöcke
        [half-ground] Hintergrundhälften
        [half-block] Blockhälften
        [ground-row] Hintergrundreihen
        [block-row] Blockreihen
        [ground-column] Hintergrundspalten
        [block-column] Blockspalten
        [unit] Einheiten
        [row] Reihen
        [sashing-row] Zwischenreihen
        [centre] Mitten
       *[top] Tops
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
   *[other] { $count }-mal { $name }
}
-shape = { $shape ->
    [strip] Zwischenstreifen
    [cornerstone] Eckquadrat
    [side-triangle] Seitendreieck
    [corner-triangle] Eckdreieck
    [setting-triangle] Randdreieck
    [triangle] Dreieck
    [diamond] Raute
    [hexagon] Sechseck
    [parallelogram] Parallelogramm
   *[piece] Teil
}
-shapes = { $shape ->
    [strip] Zwischenstreifen
    [cornerstone] Eckquadrate
    [side-triangle] Seitendreiecke
    [corner-triangle] Eckdreiecke
    [setting-triangle] Randdreiecke
    [triangle] Dreiecke
    [diamond] Rauten
    [hexagon] Sechsecke
    [parallelogram] Parallelogramme
   *[piece] Teile
}
piece-called = { -shape } aus { $fabric }
some-pieces = { $count ->
    [one] { $count } { -shape }
   *[other] { $count } { -shapes }
} { $letter } ({ $fabric })
by-turns = { $parts } im Wechsel, { $ends ->
    [both] am Anfang und am Ende
   *[first] am Anfang
} { $first },

way = { $way ->
    [left] nach links
    [right] nach rechts
    [up] nach oben
    [down] nach unten
    [open] auseinander
    [out] nach außen, von der Mitte weg
    [sashing] Richtung Zwischenstreifen
   *[one-side] zu einer Seite
}
toward = Richtung { $what }
way-in = { $way } bei { $which }
way-halves = bei der einen Hälfte { $one }, bei der anderen { $other }
