# Des unités faites à plusieurs à la fois. En entier, `again` vaut no : la première fois qu’une taille emploie une méthode.

some-squares = { $count ->
    [one] { $count } carré
   *[other] { $count } carrés
} { $letter } ({ $fabric })
square-called = { $shape ->
    [square] carré
   *[piece] pièce
} en { $fabric }
-opens = **{ CAPITAL($the) }{ $trade ->
    [none] { "" }
   *[other] , { -trade }
}**.
-trades = { $trade ->
    [half-square-triangle] demi-carrés en triangles
    [hourglass] sabliers
    [flying-geese-unit] vols d’oies
   *[other] unités
}
-often = { $often-differs ->
    [yes] { " " }À faire { TIMES($often) }.
   *[no] { $often ->
        [one] { "" }
       *[other] { " " }À faire { TIMES($often) }.
    }
}
-trim = { $trim-differs ->
    [yes] sa taille du tableau
   *[no] { $trim }
}
-have = { $made-differs ->
    [yes] { $trim-differs ->
        [yes] Chaque unité mesure sa taille du tableau.
       *[no] Chaque unité mesure { $trim }.
    }
   *[no] { $spare ->
        [0] Vous avez { $made } { -trades }.
       *[other] Vous avez { $made } { -trades }, dont { $spare } en plus.
    } Taille : { -trim }.
}
-needed = { $needed-differs ->
    [yes] { " " }En faire le nombre du tableau.
   *[no] { $needed ->
        [one] { "" }
       *[other] { " " }En faire { $needed }.
    }
}
-marked = { CAPITAL($name) } : superposé et cousu.
-cut = { CAPITAL($name) } : coupé.
-trimmed = { CAPITAL($name) } : repassé et recoupé à sa taille.
-pencil = Tracer avec un crayon fin tenu couché, pour que la mine n’entraîne pas le tissu.
-tip = { $again-differs ->
    [yes] { -pencil }
   *[no] { $again ->
        [no] { -pencil }
       *[yes] { "" }
    }
}
-second = { $seams ->
    [one] { "" }
   *[other] Coudre une couture sur deux depuis l’autre bout : l’ensemble de bandes reste droit.
}

triangles-sew = { -opens } Tracer une diagonale sur l’envers de { $first }. Poser sur { $second }, endroit contre
    endroit, et coudre à
    { $seam } de la ligne de part et d’autre.{ -often }
    .right = Aucun point ne tombe sur la ligne tracée.
    .tip = { -tip }
    .caption = { -marked }
triangles-trim = Couper sur les lignes tracées et ouvrir les moitiés. Coucher la couture { $way }. Recouper chaque
    unité à { -trim }, la ligne à
    45 degrés de la règle sur la couture, pour que la couture finisse dans deux angles.
    .right = { -have }
    .caption = { -trimmed }

hourglasses-sew = { -opens } Poser { $pairs }, endroit contre endroit. Tracer une diagonale sur l’envers du carré du
    dessus, coudre à { $seam } de
    la ligne de part et d’autre, couper sur la ligne, et ouvrir les moitiés, marges vers le tissu foncé. Ne pas
    encore les
    recouper.{ -often }
    .right = Chaque paire de carrés donne deux carrés de deux triangles.
    .caption = { -marked }
hourglasses-cut = Poser deux de ces moitiés l’une sur l’autre, endroit contre endroit, tissus différents face à face,
    coutures emboîtées. Tracer
    l’autre diagonale, en travers de la couture, coudre à { $seam } de part et d’autre, et couper sur la ligne.
    .right = Les deux coutures de chaque unité se croisent en son milieu.
    .caption = { -cut }
hourglasses-trim = Ouvrir les unités et coucher la dernière couture { $way }. Recouper chacune à { -trim } : le
    milieu de cette taille sur le
    croisement des coutures et la ligne à 45 degrés de la règle sur une couture.
    .right = { -have }
    .caption = { -trimmed }

geese-sew = { -opens } Tracer une diagonale sur l’envers de { $small }. En poser deux dans des angles opposés de
    { $large }, endroit contre endroit,
    pour que leurs lignes n’en fassent qu’une et que leurs pointes se chevauchent au milieu. Coudre à { $seam } de la
    ligne de part
    et d’autre.{ -often }
    .right = La ligne va d’un angle à l’autre du grand carré.
    .caption = { -marked }
geese-cut = Couper sur la ligne et rabattre au fer les petits triangles. Sur chaque moitié, poser encore un
    { $letter } sur l’angle de { $mark } resté
    nu, sa ligne entre les deux petits triangles. Coudre à { $seam } de la ligne de part et d’autre, et couper sur la
    ligne.
    .right = Chaque grand carré a donné quatre unités.
    .caption = { -cut }
geese-trim = Rabattre aussi les derniers triangles au fer. Recouper chaque unité à { -trim }. Laisser { $seam } de
    { $letter } au-delà de la pointe de
    { $mark } au milieu du long côté, et faire finir les coutures dans les deux angles opposés.
    .right = { -have }
    .caption = { -trimmed }

corners-sew = { -opens } Tracer une diagonale sur l’envers de { $squares }. { $flipped ->
        [1] Poser ce carré sur l’angle de { $base } que montre le dessin, endroit contre endroit, bord à bord, la ligne
        [4] En poser deux sur des angles opposés de { $base }, endroit contre endroit, bord à bord, les lignes
       *[other] En poser un sur chaque angle de { $base } que montre le dessin, endroit contre endroit, bord à bord,
           les lignes
    } en travers de l’angle. Coudre à un fil de { $flipped ->
        [1] la ligne
       *[other] chaque ligne
    }, du côté de l’angle.
    .caption = { -marked }
corners-trim = Rabattre le triangle pour essai : il doit atteindre l’angle. Puis couper les deux épaisseurs de
    l’angle à { $seam } hors de la couture,
    et rabattre le triangle au fer par-dessus la couture.{ $flipped ->
        [4] { " " }Faire de même aux deux autres angles.
       *[other] { "" }
    }{ -needed }
    .right = { $needed-differs ->
        [yes] Chaque unité
       *[no] { $needed ->
            [one] L’unité
           *[other] Chaque unité
        }
    } mesure { -trim }.
    .caption = { -trimmed }

strips-sew = { -opens } Coudre les bandes { $order } ensemble par leurs longs bords dans cet ordre, endroit contre
    endroit. Coucher { $seams ->
        [one] la couture
       *[other] les coutures
    } { $way }. En faire : { $sets }.
    .right = L’ensemble de bandes est droit. S’il se courbe, le repasser par l’endroit.
    .tip = { $again-differs ->
        [yes] { -second }
       *[no] { $again ->
            [no] { -second }
           *[yes] { "" }
        }
    }
    .caption = { -marked }
strips-cut = Mettre d’équerre un bout de chaque ensemble, la ligne de la règle sur une couture, et couper en travers,
    tous les { $segment }, { $needed-differs ->
        [yes] le nombre de segments du tableau
       *[no] { $needed } segments
    }{ $each-differs ->
        [yes] { "" }
       *[no] { $often ->
            [one] { "" }
           *[other] { " " }; chaque ensemble en donne jusqu’à { $each }
        }
    }. Remettre d’équerre chaque fois que la coupe ne l’est plus avec les coutures.
    .right = Chaque segment mesure { -trim }.
    .caption = { -cut }
on = { $one } sur { $other }
