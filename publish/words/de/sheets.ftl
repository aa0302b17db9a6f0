# Schablonenblätter: was im Kopf eines Blatts, an Linien und in der Legende steht.

sheet-wedge = { $motif }, Keil
sheet-whole = { $motif }, ganzes Motiv
sheet-templates = { $count ->
    [one] Schablone { $letters }
   *[other] Schablonen { $letters }
}
sheet-templates-first = { $count ->
    [one] Schablone { $letters }
   *[other] Schablonen { $letters }
}
sheet-foundations = { $count ->
    [one] { $block }, Nähvorlage { $letters }
   *[other] { $block }, Nähvorlagen { $letters }
}
sheet-print = { $count ->
    [1] Dieses Blatt einmal drucken
    [2] Dieses Blatt zweimal drucken
   *[other] Dieses Blatt { $count }-mal drucken
}
sheet-print-of-size = { $count ->
    [1] { $size } einmal
    [2] { $size } zweimal
   *[other] { $size } { $count }-mal
}
sheet-notches = Kurze Striche über die Nahtlinie sind Passzeichen
# An der Bruchkante einer Schablone; die kürzere, wo für die andere kein Platz ist.
sheet-half = Diese Linie an den Bruch eines gefalteten Papiers legen
sheet-half-short = am Bruch eines Papiers
sheet-place-on-single = An den einfachen Bruch legen ({ $grain })
sheet-place-on-multiple = An den mehrfachen Bruch legen ({ $grain })
# Für alle, die das Blatt nicht sehen.
sheet-fold-single = einfacher Bruch ({ $grain })
sheet-fold-multiple = mehrfacher Bruch ({ $grain })
sheet-folds = Bruchkanten strichpunktiert: { $folds }.
sheet-joins-left = links an Blatt { $label }
sheet-joins-right = rechts an Blatt { $label }
sheet-joins-above = oben an Blatt { $label }
sheet-joins-below = unten an Blatt { $label }

sheet-fold-of-the-paper = Bruch des Papiers
sheet-sewing-line = Nahtlinie
sheet-trim-line = Schnittlinie
sheet-names-of-piece = Teil { $names }.
sheet-names-of-foundation = Gespiegelt, mit den Teilen { $names }.
sheet-cut-here = Hier schneiden und an Blatt { $label } kleben
sheet-cut-here-brief = Blatt { $label }
sheet-join-here = Hier an Blatt { $label } kleben
sheet-join-here-brief = Blatt { $label } hier
