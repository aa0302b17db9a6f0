# Zuschneiden, ein Stoff nach dem anderen. Größen und Anzahl stehen in der Tabelle, die Lage im Plan;
# die Worte geben die Reihenfolge und wie viele aus einem Streifen kommen.

chapter-cutting = Zuschneiden
    .lead = Nahtzugaben sind in allen Zuschnittmaßen enthalten.
    .piece = Teil
    .size = Zuschnittmaß
    .count = Anzahl
cutting-size = Zuschneiden: { $size }
cutting-pieces = Teile für { $size }
cutting-how = Die Tabelle gibt Maß und Anzahl jedes Teils an, quer zum Stoff × längs; der Zuschneideplan zeigt die Reihenfolge und
    wo jedes Teil liegt. Lange Teile kommen zuerst, dann große, sodass der Rest einen Fehler ausgleichen kann.{ $sizes ->
        [one] { "" }
       *[other] { " " }Ein Buchstabe steht in jeder Größe für dasselbe Teil.
    }
cutting-sections = Wo ein Streifen Abschnitte hat, jeden in einem Stück abschneiden und dann quer dazu in Streifen.

straighten-fabric = Den Stoff bügeln, Webkante auf Webkante falten und ein Ende rechtwinklig zum Bruch begradigen.
    .right = Aufgefaltet ist die Schnittkante gerade.
set-out-cutting = Die Streifen in der Reihenfolge des Plans von Webkante zu Webkante schneiden und die Webkanten abschneiden. Aus
    jedem Streifen die Teile schneiden und jeden Stapel mit seinem Buchstaben beschriften.
    .right = Jedes Teil weicht höchstens { $near } von seinem Zuschnittmaß ab.
    .tip = Von jedem Buchstaben erst ein Teil messen, dann die übrigen schneiden. Nach einigen Streifen das Stoffende neu
        begradigen.{ $deep ->
            [yes] { " " }Was tiefer ist als { $mat }, passt nicht auf eine Schneidematte: anzeichnen und mit der Schere
                schneiden oder quer zum Fadenlauf reißen.
           *[no] { "" }
        }

-fabric = { $opens ->
    [fabric] **{ $fabric }.**{ " " }
   *[strip] { "\u000A\u000A" }
}{ $marked ->
    [yes] **{ FIGURES($number) }**{ " " }
   *[no] { "" }
}
cut-strips = { -fabric }{ $strips } schneiden, { $depth } breit.
    .caption = { $fabric }, { $size }.
cut-count = { $count } { $letter }
cut-section = 1 Abschnitt, { $width } breit
cut-sections = { $count } Abschnitte, { $widths } breit
cut-box = { $letter } misst { $box }
-left = { $left ->
    [yes] { " " }Rest: { $rest }.
   *[no] { "" }
}
cut-pieces-from = { $count ->
    [one] Er ergibt
   *[other] Jeder ergibt
} { $pieces }.{ -left }
cut-pieces-whole = { $count ->
    [one] Er
   *[other] Jeder
} ist ein { $letter }.{ -left }
cut-pieces-long = { $count ->
    [one] Er
   *[other] Jeder
} ist ein { $letter }: lang lassen, bis das Top gemessen ist.{ -left }
cut-pieces-nested = Im Ganzen lassen: darin liegen { $pieces }, { $alone ->
    [yes] gelegt
   *[no] nach ihren Umrissen ineinandergelegt
} wie im Plan. Von Kante zu Kante: { $boxes }.{ -left }
cut-section-strips = { "\u000A\u000A" }Aus { $sections ->
    [one] { $which ->
        [only] dem Abschnitt
       *[one] dem { ORDINAL($place) } Abschnitt
    }
   *[other] jedem der { $sections } { $which ->
        [only] Abschnitte
       *[one] { ORDINAL($place) } Abschnitte
    }
} { $strips } schneiden, { $depth } breit.

cut-shape-once = Jedes { $letters } einmal diagonal durchschneiden.
cut-shape-twice = Jedes { $letters } zweimal diagonal durchschneiden, über Kreuz.
cut-shape-template = Jedes { $letters } mit seiner Schablone in Form schneiden.
-strip-each = { $count ->
    [one] des Streifens
   *[other] jedes Streifens
}
cut-shape-hexagon = Bei jedem { $letters } die Mitte beider kurzen Seiten markieren und von dort zu den langen Seiten schneiden, die
    60-Grad-Linie des Lineals auf der langen Seite.
cut-shape-equilateral-triangle = Ein Ende { -strip-each } { $letters } mit 60 Grad abschneiden, dann abwechselnd mit 60 Grad zur
    einen und zur anderen Seite schneiden.
cut-shape-slant = Ein Ende { -strip-each } { $letters } mit { FIGURES($angle) } Grad abschneiden, dann in derselben Schräge alle
    { $apart } schneiden, rechtwinklig zum Schnitt gemessen.{ $leans ->
        [yes] { " " }Einlagig mit der rechten Seite nach oben legen, denn alle neigen sich zur selben Seite.
       *[no] { "" }
    }

cut-ready-strips = { $strips }, { $depth } breit, { $count ->
    [one] mit { $pieces }
   *[other] mit je { $pieces }
}
cut-ready-cut = { -fabric }{ $count ->
    [one] Daraus ({ $sheets })
   *[other] Aus jedem Stück ({ $sheets })
} schneiden{ $way ->
    [length] , der Länge nach
   *[width] { "" }
}: { $strips }.
    .caption = { $fabric }, { $size }.
cut-ready-strip = { -fabric }{ $count ->
    [one] Daraus ({ $sheets })
   *[other] Aus jedem Stück ({ $sheets })
} schneiden: { $pieces }.
    .caption = { $fabric }, { $size }.
use-ready-cut = { -fabric }{ $count ->
    [one] Im Ganzen verwenden ({ $sheets })
   *[other] Jedes Stück im Ganzen verwenden ({ $sheets })
}, als { $pieces }.
    .caption = { $fabric }, { $size }.

# Eine Zeile der Tabelle der Teile.
piece-row = { CAPITAL($name) }{ $joined ->
    [1] { "" }
   *[other] , aus { $joined } verbunden
}
trim-after-quilting = nach dem Quilten auf { $size } zuschneiden
trim-after-applique = nach dem Applizieren zuschneiden
trim-square-after-applique = nach dem Applizieren auf { $side } im Quadrat zuschneiden

# Wie ein Teil in der Tabelle heißt.
cut-piece = { $piece ->
    [backing] Rückseite
    [backing-panel] Rückseitenbahn
    [bias-binding-square] Quadrat für Schrägstreifen
    [binding-strip] Bindingstreifen
    [corner-triangle] Eckdreieck
    [corner-triangle-from-a-template] Eckdreieck nach Schablone
    [cornerstone] Eckquadrat
    [cornerstone-from-a-template] Eckquadrat nach Schablone
    [diamond] Raute
    [envelope-back] Rücken mit Hotelverschluss
    [equilateral-triangle] gleichseitiges Dreieck
    [foundation-from-a-template] Teil für Nähvorlage nach Schablone
    [ground] Hintergrund
    [half-cornerstone] halbes Eckquadrat
    [hanging-sleeve] Aufhängetunnel
    [hexagon] Sechseck
    [large-square-for-geese] großes Quadrat für Fluggänse
    [motif-square] Motivquadrat
    [nested-motif] eingepasstes Motiv
    [once-cut-triangle] Dreieck, einmal geschnitten
    [parallelogram] Parallelogramm
    [parallelogram-leaning-left] Parallelogramm, nach links geneigt
    [parallelogram-leaning-right] Parallelogramm, nach rechts geneigt
    [patch-from-a-template] Teil nach Schablone
    [quarter-cornerstone] Viertel-Eckquadrat
    [rectangle] Rechteck
    [sashing] Zwischenstreifen
    [sashing-from-a-template] Zwischenstreifen nach Schablone
    [sashing-strip] Zwischenstreifen
    [side-triangle] Seitendreieck
    [side-triangle-from-a-template] Seitendreieck nach Schablone
    [small-square-for-geese] kleines Quadrat für Fluggänse
    [square] Quadrat
    [square-for-flipped-corners] Quadrat für umgeklappte Ecken
    [square-for-hourglasses] Quadrat für Sanduhren
    [square-for-triangles] Quadrat für Dreiecke
    [strip-for-strip-sets] Streifen für Streifensets
    [twice-cut-triangle] Dreieck, zweimal geschnitten
    [zip-back] Rücken mit Reißverschluss
   *[piece] Teil
}
cut-for = für { $patches }
piece-border = { $part ->
    [side] Seitenstreifen
   *[top] Streifen oben und unten
}{ $place ->
    [only] { "" }
    [inner] , innerer Rand
    [middle] , mittlerer Rand
    [outer] , äußerer Rand
   *[other] , { FIGURES($number) }. Rand
}
cut-ranked = { $name }, { $rank ->
    [large] groß
    [medium] mittel
   *[small] klein
}
cut-sized = { $name }, { SHORT($size) }
cut-numbered = { $name }, Nr. { FIGURES($number) }

# Bemerkungen in der Tabelle der Teile.
note-for-form = für ein Inlett von { SHORT($form) }
note-print-turns = das Muster läuft in jedem Dreieck anders
note-step-larger = einen Schritt größer als das genaue Maß, wird zurückgeschnitten
note-cut-apart = in { FIGURES($count) } schneiden, mit { FIGURES($angle) }°, alle { $apart }
note-cut-in-turn = in { FIGURES($count) } schneiden, mit { FIGURES($angle) }° abwechselnd zu beiden Seiten
note-nearly = als regelmäßige Form geschnitten, weniger als { $metric ->
    [yes] 0,13 mm
   *[no] 0,005 in
} neben der Zeichnung
