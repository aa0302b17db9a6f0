# Was entsteht: der erste Abschnitt mit der Tabelle der Größen.

chapter-what-you-will-make = Was entsteht
    .lead = { $sizes ->
        [1] Das entsteht nach dieser Anleitung.
       *[other] Zur Wahl stehen { $sizes }.
    }
    .caption = { $sizes ->
        [1] Das fertige Stück mit seinen Maßen.
       *[other] Fertige Größen, im selben Maßstab gezeichnet.
    }

name-motif = Motiv
name-motif-of = Motiv „{ $motif }“
-method = { $method ->
    [needle-turn] in Nadelwende-Technik appliziert
    [fusible] mit Haftvlies und übernähter Kante gehalten
   *[prepared-edge] von Hand mit vorbereiteter Kante appliziert
}
# $motif ist der Name ohne Artikel, wie in name-motif.
motif-folded = Das { $motif } wird aus { $pieces ->
    [1] einem Stück Stoff
   *[other] Stoff
} geschnitten, auf { $folds ->
    [4] ein Viertel
    [6] ein Sechstel
    [8] ein Achtel
    [12] ein Zwölftel
   *[16] ein Sechzehntel
} gefaltet wie ein Stern aus Papier, und auf seinem Hintergrund { -method }.
motif-turned = Das { $motif } dreht sich in { $folds } gleichen Teilen um seine Mitte, wird flach nach einer Schablone in Originalgröße
    geschnitten und auf seinem Hintergrund { -method }.
motif-drawn = Das { $motif } wird aus { $counted ->
    [yes] { $folds } Keilen
   *[no] Keilen
} um seine Mitte gezeichnet und auf seinem Hintergrund { -method }.

grounds-pieced = { $some ->
    [yes] Bei { $sizes } wird der Hintergrund mit der Maschine genäht, bevor das Motiv daraufkommt; sonst ist er aus einem Stück.
   *[no] Die Hintergründe werden mit der Maschine genäht, bevor das Motiv daraufkommt.
}
blocks-on-foundations = Auf gedruckten Nähvorlagen { $count ->
    [1] wird genäht: { $blocks }.
   *[other] werden genäht: { $blocks }.
}
blocks-pieced = Die { $others ->
    [yes] anderen Blöcke
   *[no] Blöcke
} werden mit der Maschine genäht.
blocks-set-on-point = Bei { $sizes } stehen die Blöcke auf der Spitze.
quilts-finished = { $which ->
    [only] Der Quilt wird
    [several] Die Quilts werden
   *[one] { $sizes } wird
} in Lagen gelegt, gequiltet und eingefasst.
pillows-finished = { $count ->
    [1] Das Kissen hat
   *[other] Die Kissen haben
} ein gequiltetes Vorderteil und einen einfachen Rücken, der sich öffnen lässt, damit die Hülle gewaschen werden kann.

# Die Tabelle der Größen.

table-sizes = { $sizes ->
    [1] Die Größe
   *[other] Die Größen
}
size-finished = Fertiges Maß
size-blocks = Blöcke
size-motif = Motiv, Durchmesser
size-skill = Schwierigkeit
size-edge = Kante zu applizieren
size-points = Spitzen je Motiv
size-inside-corners = Innenecken je Motiv
blocks-of-side = { $count ->
    [one] { $count } { $name }
   *[other] { $count } { PLURAL($name) }
}, { $side }
blocks-one = 1, { $side }
blocks-on-point = { CAPITAL($count) } auf der Spitze, je { $side }
blocks-grid = { CAPITAL($count) }, { $columns } mal { $rows }, je { $side }
edge-to-sew = Etwa { $length }
