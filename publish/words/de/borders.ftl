# Die Ränder ansetzen.

chapter-borders = { $rounds ->
    [yes] Ränder und Runden ansetzen
   *[no] Die Ränder ansetzen
}
    .lead = Das Top in der Mitte und nahe beiden Kanten messen und die Streifen auf den Mittelwert zuschneiden: so bleibt das Top
        rechtwinklig.

border-name = { $place ->
    [only] Rand
    [inner] innerer Rand
    [middle] mittlerer Rand
    [outer] äußerer Rand
   *[other] { ORDINAL($number) } Rand
}
border-opening = { CAPITAL($border) }: { $fabric }.
round-opening = Die { ORDINAL($round) } Runde ({ $border }): { $fabric }.

border-strips = Streifen ({ $border })
join-lengths = Zugeschnittene Längen mit { $seam } Nahtzugabe rechts auf rechts Ende an Ende verbinden, für { $what }: { $joins }.
    Die Nähte auseinanderbügeln{ $trim ->
        [yes] { " " }und jeden Streifen auf seine Länge schneiden
       *[no] { "" }
    }.
    .right = Gerade ausgelegt: { $strips }.
join-of = { $lengths } von { $letter } für { $strips ->
    [one] den Streifen
   *[other] jeden der { $strips }
}
strip-cut = { $letter } misst { $strip }
strip-measures = { $letter } misst mindestens { $strip }

measure-top-down = { $opening } Das Top von oben nach unten in der Mitte und nahe beiden Kanten messen: im Mittel sollen es
    { $height } sein.
    .caption = { $size }: { $border }, erst die Seiten.
measure-top-across = Ebenso von Seite zu Seite messen, mit den Seitenstreifen: im Mittel sollen es { $width } sein.
measure-top-down-across = { $opening } Die Ecken sind auf Gehrung genäht. Das Top in beiden Richtungen in der Mitte und nahe
    den Kanten messen: im Mittel sollen es { $top } sein.
    .caption = { $size }: { $border }, auf Gehrung.

cut-border = { $sides ->
    [sides] Die beiden Seitenstreifen { $letters } auf den Mittelwert zuschneiden.
   *[ends] Die Streifen { $letters } für oben und unten auf den Mittelwert zuschneiden.
}
    .tip = { $spare ->
        [none] Streifen { $exact } haben nichts übrig. Ist der Mittelwert mehr als { $near } länger, vor dem Weiternähen die
            Breite der Nähte prüfen.
       *[some] { "" }
    }
pin-border = { $sides ->
    [sides] { $where ->
        [quarters] An jede Seite einen stecken, an den Enden, in der Mitte und an den Viertelpunkten, und den Rest zwischen den
            Nadeln einhalten.
       *[ends] An jede Seite einen stecken, an den Enden und in der Mitte, und den Rest zwischen den Nadeln einhalten.
    }
   *[ends] Ebenso einen oben und einen unten stecken.
}
sew-border = { $sides ->
    [sides] Mit { $seam } Nahtzugabe annähen.
   *[ends] Annähen.
}
press-border = Zum Rand hin bügeln.
    .right = { $sides ->
        [mitred] { "" }
        [sides] Das Top misst { $top } und liegt flach.
       *[ends] Das Top misst { $top }.
    }

pin-mitred = Jeden der vier Streifen { $letters } zur Hälfte falten, um die Mitte zu finden, und sie auf die Mitte seiner Seite
    stecken.{ $where ->
        [quarters] { " " }Dann die Viertelpunkte stecken, dann dazwischen
       *[ends] { " " }Von dort nach außen stecken
    }; die Enden reichen über die Ecken hinaus.
    .right = Jeder Streifen reicht über beide Ecken um { $width } oder mehr hinaus.
sew-mitred = Die Streifen annähen, dabei genau { $seam } vor jeder Ecke des Tops beginnen und aufhören. An beiden Enden
    verriegeln.
    .right = An jeder Ecke treffen sich die beiden Nähte in einem Punkt.
sew-mitre = Das Top diagonal falten, rechts auf rechts, sodass zwei benachbarte Streifen aufeinanderliegen. Ein Lineal an den
    Bruch legen und seine Linie über die Streifen ziehen. Stecken und auf der Linie vom Eckpunkt der Nähte bis zur Kante
    nähen. Auf { $seam } zurückschneiden. An den anderen Ecken ebenso.
press-mitres = Die Gehrungen auseinanderbügeln.
    .right = Die Ecken liegen flach, und das Top misst { $top }.
