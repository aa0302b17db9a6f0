# La coupe, tissu par tissu. Tailles et nombres sont dans le tableau, les places dans le plan de coupe.

chapter-cutting = Coupe
    .lead = Les marges de couture sont déjà comprises dans chaque taille de coupe.
    .piece = Pièce
    .size = Taille de coupe
    .count = Combien
cutting-size = Coupe : { $size }
cutting-pieces = Pièces : { $size }
cutting-how = Le tableau donne la taille et le nombre de chaque pièce, dans la laize × dans la longueur ; le plan montre
    l’ordre et la place de chacune. Les longues pièces se coupent d’abord, puis les grandes, pour que ce qui reste
    puisse
    réparer une erreur.{ $sizes ->
        [one] { "" }
       *[other] { " " }Une lettre désigne la même pièce dans toutes les tailles.
    }
cutting-sections = Quand une bande a des sections, couper chacune d’un seul tenant, puis en bandes en travers.

straighten-fabric = Repasser le tissu, le plier lisière contre lisière et mettre un bout d’équerre avec le pli.
    .right = Ouvert, le bord coupé est droit.
set-out-cutting = Couper les bandes dans l’ordre du plan, de lisière à lisière, et enlever les lisières. Couper les
    pièces
    dans chaque bande et étiqueter chaque pile de sa lettre.
    .right = Chaque pièce est juste à { $near } près.
    .tip = Mesurer la première pièce de chaque lettre avant de couper les autres. Remettre le bout du tissu d’équerre
        toutes
        les quelques bandes.{ $deep ->
            [yes] { " " }Ce qui dépasse { $mat } ne tient pas sur un tapis de coupe : le marquer et le couper aux
                ciseaux,
                ou le déchirer en travers.
           *[no] { "" }
        }

-fabric = { $opens ->
    [fabric] **{ $fabric }.**{ " " }
   *[strip] { "\u000A\u000A" }
}{ $marked ->
    [yes] **{ FIGURES($number) }**{ " " }
   *[no] { "" }
}
cut-strips = { -fabric }Couper { $strips }, hauteur { $depth }.
    .caption = { $fabric }, { $size }.
cut-count = { $count } { $letter }
cut-section = une section large de { $width }
cut-sections = { $count } sections, larges de { $widths }
cut-box = { $letter } mesure { $box }
-left = { $left ->
    [yes] { " " }Reste : { $rest }.
   *[no] { "" }
}
cut-pieces-from = { $count ->
    [one] Elle donne
   *[other] Chacune donne
} { $pieces }.{ -left }
cut-pieces-whole = { $count ->
    [one] C’est
   *[other] Chacune est
} { $letter } en entier.{ -left }
cut-pieces-long = { $count ->
    [one] C’est
   *[other] Chacune est
} { $letter } en entier : la laisser longue jusqu’à ce que le top soit mesuré.{ -left }
cut-pieces-nested = La laisser entière : elle contient { $pieces }, { $alone ->
    [yes] posé
   *[no] imbriqués par leurs contours
} comme sur le plan. D’un bord à l’autre, { $boxes }.{ -left }
cut-section-strips = { "\u000A\u000A" }Dans { $sections ->
    [one] { $which ->
        [only] la section
       *[one] la { ORDINAL($place) } section
    }
   *[other] chacune de ces sections ({ $which ->
        [only] { $sections }
       *[one] { ORDINAL($place) }
    })
}, couper { $strips }, hauteur { $depth }.

cut-shape-once = Couper chaque { $letters } une fois en diagonale.
cut-shape-twice = Couper chaque { $letters } deux fois en diagonale, en X.
cut-shape-template = Couper chaque { $letters } à la forme avec son gabarit.
-strip-each = { $count ->
    [one] de la bande
   *[other] de chaque bande
}
cut-shape-hexagon = Marquer le milieu des deux petits côtés de chaque { $letters } et couper des marques vers les
    longs côtés,
    la ligne à 60 degrés de la règle sur le long côté.
cut-shape-equilateral-triangle = Couper un bout { -strip-each } { $letters } à 60 degrés, puis la couper à 60 degrés
    d’un côté
    et de l’autre, tour à tour.
cut-shape-slant = Couper un bout { -strip-each } { $letters } à { FIGURES($angle) } degrés, puis la couper avec la
    même pente
    tous les { $apart }, mesurés d’équerre avec la coupe.{ $leans ->
        [yes] { " " }La poser sur l’endroit en une seule épaisseur, car toutes penchent du même côté.
       *[no] { "" }
    }

cut-ready-strips = { $strips }, hauteur { $depth }, { $count ->
    [one] avec { $pieces }
   *[other] avec { $pieces } dans chacune
}
cut-ready-cut = { -fabric }Dans { $count ->
    [one] { $sheets }
   *[other] chacun des { $sheets }
}, couper{ $way ->
    [length] { " " }dans la longueur
   *[width] { "" }
} { $strips }.
    .caption = { $fabric }, { $size }.
cut-ready-strip = { -fabric }Dans { $count ->
    [one] { $sheets }
   *[other] chacun des { $sheets }
}, couper { $pieces }.
    .caption = { $fabric }, { $size }.
use-ready-cut = { -fabric }Employer { $count ->
    [one] { $sheets }
   *[other] chacun des { $sheets }
} en entier, comme { $pieces }.
    .caption = { $fabric }, { $size }.

# Une ligne du tableau des pièces.
piece-row = { CAPITAL($name) }{ $joined ->
    [1] { "" }
   *[other] , raccordée de { $joined }
}
trim-after-quilting = recouper à { $size } après le matelassage
trim-after-applique = recouper après l’appliqué
trim-square-after-applique = recouper à un carré de { $side } après l’appliqué

# Comment une pièce s’appelle dans le tableau.
cut-piece = { $piece ->
    [backing] doublure
    [backing-panel] panneau de doublure
    [bias-binding-square] carré pour le galon en biais
    [binding-strip] bande de finition
    [corner-triangle] triangle d’angle
    [corner-triangle-from-a-template] triangle d’angle au gabarit
    [cornerstone] cabochon
    [cornerstone-from-a-template] cabochon au gabarit
    [diamond] losange
    [envelope-back] dos portefeuille
    [equilateral-triangle] triangle équilatéral
    [foundation-from-a-template] support au gabarit
    [ground] fond
    [half-cornerstone] demi-cabochon
    [hanging-sleeve] fourreau de suspension
    [hexagon] hexagone
    [large-square-for-geese] grand carré pour vols d’oies
    [motif-square] carré du motif
    [nested-motif] motif imbriqué
    [once-cut-triangle] triangle d’un carré coupé une fois
    [parallelogram] parallélogramme
    [parallelogram-leaning-left] parallélogramme penché à gauche
    [parallelogram-leaning-right] parallélogramme penché à droite
    [patch-from-a-template] pièce au gabarit
    [quarter-cornerstone] quart de cabochon
    [rectangle] rectangle
    [sashing] bande intercalaire
    [sashing-from-a-template] bande intercalaire au gabarit
    [sashing-strip] bande intercalaire
    [side-triangle] triangle de côté
    [side-triangle-from-a-template] triangle de côté au gabarit
    [small-square-for-geese] petit carré pour vols d’oies
    [square] carré
    [square-for-flipped-corners] carré pour angles rabattus
    [square-for-hourglasses] carré pour sabliers
    [square-for-triangles] carré pour triangles
    [strip-for-strip-sets] bande pour ensembles de bandes
    [twice-cut-triangle] triangle d’un carré coupé deux fois
    [zip-back] dos à fermeture à glissière
   *[piece] pièce
}
cut-for = pour { $patches }
piece-border = { $part ->
    [side] bordure de côté
   *[top] bordure du haut et du bas
}{ $place ->
    [only] { "" }
    [inner] , intérieure
    [middle] , du milieu
    [outer] , extérieure
   *[other] , n° { FIGURES($number) }
}
cut-ranked = { $name }, { $rank ->
    [large] grand modèle
    [medium] modèle moyen
   *[small] petit modèle
}
cut-sized = { $name }, { SHORT($size) }
cut-numbered = { $name }, n° { FIGURES($number) }

# Notes du tableau des pièces.
note-for-form = pour un coussin intérieur de { SHORT($form) }
note-print-turns = l’imprimé change de sens dans chaque triangle
note-step-larger = un cran plus grand que la taille exacte, à recouper
note-cut-apart = à couper en { FIGURES($count) } à { FIGURES($angle) }°, tous les { $apart }
note-cut-in-turn = à couper en { FIGURES($count) } à { FIGURES($angle) }° d’un côté et de l’autre
note-nearly = coupé comme une forme régulière, à moins de { $metric ->
    [yes] 0,13 mm
   *[no] 0,005 in
} du dessin
