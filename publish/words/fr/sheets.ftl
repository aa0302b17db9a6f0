# Feuilles de gabarits : l’en-tête, les mots le long des lignes, la légende.

sheet-wedge = { $motif }, secteur
sheet-whole = { $motif }, motif entier
sheet-templates = { $count ->
    [one] gabarit { $letters }
   *[other] gabarits { $letters }
}
sheet-templates-first = { $count ->
    [one] Gabarit { $letters }
   *[other] Gabarits { $letters }
}
sheet-foundations = { $count ->
    [one] { $block }, support { $letters }
   *[other] { $block }, supports { $letters }
}
sheet-print = { $count ->
    [1] Imprimer cette feuille une fois
   *[other] Imprimer cette feuille { $count } fois
}
sheet-print-of-size = { $size } { $count ->
    [1] une fois
   *[other] { $count } fois
}
sheet-notches = De courts traits en travers de la couture sont des crans
sheet-half = Poser cette ligne sur le pli d’un papier plié
sheet-half-short = sur le pli d’un papier
sheet-place-on-single = Poser sur le pli simple ({ $grain })
sheet-place-on-multiple = Poser sur les plis multiples ({ $grain })
sheet-fold-single = pli simple ({ $grain })
sheet-fold-multiple = plis multiples ({ $grain })
sheet-folds = Bords de pli en point-tiret : { $folds }.
sheet-joins-left = à gauche, la feuille { $label }
sheet-joins-right = à droite, la feuille { $label }
sheet-joins-above = au-dessus, la feuille { $label }
sheet-joins-below = au-dessous, la feuille { $label }
sheet-names-of-piece = Pièce { $names }.
sheet-names-of-foundation = En miroir, avec les pièces { $names }.
sheet-fold-of-the-paper = pli du papier
sheet-sewing-line = ligne de couture
sheet-trim-line = ligne de coupe
sheet-cut-here = Couper ici et raccorder à la feuille { $label }
sheet-cut-here-brief = feuille { $label }
sheet-join-here = Raccorder ici à la feuille { $label }
sheet-join-here-brief = feuille { $label } ici
