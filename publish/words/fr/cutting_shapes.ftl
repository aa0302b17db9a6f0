# Ce qui se coupe autrement qu'en rectangles.

noun-triangle = { $count ->
    [one] { FIGURES($count) } triangle
   *[other] { FIGURES($count) } triangles
}
noun-diamond = { $count ->
    [one] { FIGURES($count) } losange
   *[other] { FIGURES($count) } losanges
}
noun-hexagon = { $count ->
    [one] { FIGURES($count) } hexagone
   *[other] { FIGURES($count) } hexagones
}
noun-parallelogram = { $count ->
    [one] { FIGURES($count) } parallélogramme
   *[other] { FIGURES($count) } parallélogrammes
}
noun-equilateral-triangle = { $count ->
    [one] { FIGURES($count) } triangle équilatéral
   *[other] { FIGURES($count) } triangles équilatéraux
}
noun-piece-in-figures = { $count ->
    [one] { FIGURES($count) } pièce
   *[other] { FIGURES($count) } pièces
}
-to-spare = { $spare ->
    [0] { "" }
   *[other] , dont { FIGURES($spare) } en trop
}
becomes-once = coupé une fois en diagonale : { $made }{ -to-spare }
becomes-twice = coupé deux fois en diagonale, en croix : { $made }{ -to-spare }
becomes-template = { $made } à couper avec le gabarit { $template }{ $over ->
    [0] { "" }
   *[other] , dont { FIGURES($over) } avec le gabarit retourné
}
becomes-whole = laissé entier
becomes-strip = { $made }{ $leans ->
    [left] { " " }penchés à gauche
    [right] { " " }penchés à droite
   *[no] { "" }
}

cut-triangles = Couper un carré en deux triangles d’un trait d’angle à angle{ $twice ->
        [yes]  ; pour quatre triangles, couper une seconde fois en travers de la première, avant de bouger les parties
       *[no] { "" }
    }.
    .right = La coupe passe par les deux angles.
    .tip = Le grand côté d’un triangle coupé une fois et les petits côtés d’un triangle coupé deux fois sont dans le biais et se
        déforment. Repasser le carré à l’amidon avant de le couper, et toucher les triangles le moins possible.
make-templates = Coller les gabarits imprimés sur du carton fin ou les tracer sur du plastique à gabarit, avec le droit-fil, la lettre et
    les crans, et les découper sur la ligne extérieure.
    .right = Posé sur sa feuille, chaque gabarit couvre sa ligne extérieure et rien de plus.
use-templates = Poser un gabarit sur l’envers du tissu, son droit-fil le long des fils, tracer le contour et couper sur la ligne. Marquer
    chaque cran dans la marge d’un court trait de crayon.{ $over ->
        [yes] { " " }Là où le tableau le dit, retourner le gabarit : ces pièces sont en miroir.
       *[no] { "" }
    }
    .right = Les pièces se posent bord à bord.
