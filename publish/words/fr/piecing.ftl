# Assembler les pièces en unités et en blocs.

chapter-piecing = Assembler { $what ->
        [ground] le fond
        [both] les fonds et les blocs
       *[blocks] les blocs
    }
    .lead = Coudre avec une couture de { $seam } et un point d’environ { $stitch }, et repasser chaque couture avant
        qu’une autre ne la
        croise.
piecing-block = Assembler : { $block }
piecing-of = { $title } : { $size }
piecing-units = Les blocs se cousent à partir d’unités. Chaque sorte a un numéro dans sa taille ; faire toutes celles
    d’une sorte avant
    la suivante.
piecing-chain = Coudre et mesurer d’abord une seule unité d’une sorte. Puis coudre les autres à la chaîne : glisser
    la paire suivante
    sous le pied quand la précédente en sort, et les séparer à la fin.
finishes = { CAPITAL($the) } : { $side } fini de côté, à faire : { $count }.
traditional = Nom traditionnel : *{ $name }*.
also-takes = S’y ajoutent { $units }, déjà faits.
units-table = { CAPITAL($the) } : combien, et ce que chacune mesure
unit-cell = { FIGURES($count) } de { $size }
unit-cell-count = { FIGURES($count) }
piecing-sizes = Les tailles se font pareillement ; le tableau a leurs nombres. Une étape qui ne concerne que
    certaines tailles le dit. Les
    dessins montrent { $size }.
block-variants = Ceux du bord du coussin sont plus grands de sa couture plus large le long des bords extérieurs ; il
    y en a donc
    plusieurs, chacun avec son propre numéro.
block-shown = { CAPITAL($the) }, avec les lettres des pièces.

for-unit = Pour **{ $name }**, disposer
for-unit-of = Pour **{ $name }**, { -trade }, disposer
for-the = Pour { $name }, disposer
for-none = Disposer
-trade = { $trade ->
    [half-square-triangle] demi-carré en triangles
    [hourglass] sablier
    [flying-geese-unit] vol d’oies
    [square-in-a-square] carré sur pointe
    [four-patch] bloc de quatre
    [nine-patch] bloc de neuf
   *[unit] unité
}

lay-out-unit = { $opener } { $parts } { $how ->
        [across] côte à côte
        [down] l’un sous l’autre
        [slant] le long de leurs bords obliques
        [curve] le long de la courbe
       *[picture] comme sur le dessin
    }{ $turned ->
        [yes] , tournés comme sur le dessin
       *[no] { "" }
    }.{ $choose ->
        [yes] { " " }Les choisir pour que les marges voisines soient couchées en sens opposés.
       *[no] { "" }
    }
    .caption = { CAPITAL($name) } : { $stage ->
        [pin] la courbe crantée et épinglée.
        [set-in] l’angle monté.
       *[joined] disposé et cousu.
    }
-put = { $first-differs ->
    [yes] { -together }
   *[no] { $first ->
        [yes] { -together }
       *[no] { "" }
    }
}
-together = { $several ->
    [yes] Poser les deux premiers endroit contre endroit, bord à bord.{ " " }
   *[no] Les poser endroit contre endroit, bord à bord.{ " " }
}
pin-unit = { -put }Épingler là où des coutures se rejoignent.
pin-unit-both-sides = { -put }Certaines marges qui se rejoignent ici sont couchées du même côté et ne s’emboîtent
    pas : épingler des deux
    côtés de chaque croisement.
pin-curve = { $over } a le bord qui rentre, { $under } le bord qui ressort. Cranter le bord rentrant environ tous les
    { $interval }, pas plus
    profond que { $depth }. Poser { $over } sur { $under }, endroit contre endroit, crans sur crans. Épingler d’abord
    le milieu de
    la courbe, puis les deux bouts, bords droits bord à bord, puis chaque cran entre eux, et partout où les bords
    bâillent.
    .right = Les bords se suivent tout le long de la courbe. Les pièces ne sont à plat qu’une fois la couture ouverte.
sew-unit-straight = { $pinned ->
    [yes] { $several ->
        [yes] Coudre, puis ajouter le suivant de la même façon jusqu’au dernier.
       *[no] Coudre.
    }
   *[no] { $several ->
        [yes] Poser les deux premiers endroit contre endroit, bord à bord, et coudre, puis ajouter le suivant de la
            même façon
            jusqu’au dernier.
       *[no] Les poser endroit contre endroit, bord à bord, et coudre.
    }
}
sew-unit-straight-again = { $pinned ->
    [yes] Coudre.
   *[no] { $several ->
        [yes] Les coudre dans cet ordre.
       *[no] Les coudre ensemble.
    }
}
sew-unit-half = Les poser endroit contre endroit, longs bords l’un sur l’autre, et coudre le long bord. Il est en
    biais : laisser la machine
    entraîner, sans tirer.
sew-unit-half-again = Coudre le long bord sans tirer, comme pour { $before }.
sew-unit-slant = Poser { $several ->
        [yes] les deux premiers
       *[no] les deux
    } endroit contre endroit, les bords qui se rejoignent l’un sur l’autre. Des pointes dépassent aux bouts de la couture : décaler
    les pièces jusqu’à ce que leurs bords se croisent exactement à { $seam } du bord, où la couture commence et finit.
    Coudre{ $several ->
        [yes] , puis ajouter le suivant de la même façon jusqu’au dernier
       *[no] { "" }
    }, et couper les pointes.
sew-unit-slant-again = Coudre, les pointes décalées comme pour { $before }, et les couper.
sew-unit-curve = Coudre lentement, { $over } dessus, en retirant chaque épingle avant que l’aiguille ne l’atteigne.
    S’arrêter aiguille piquée
    et lever le pied pour lisser le tissu avant qu’il ne fasse un pli.
    .caption = { CAPITAL($name) } : cousu et repassé.
sew-unit-curve-again = Cranter, épingler et coudre la courbe comme pour { $before }.
sew-unit-set-in = Marquer sur l’envers les angles des coutures, à { $seam } des deux bords. Coudre les deux premières
    pièces du bord à la
    marque et y arrêter les points, pour que les derniers { $seam } restent ouverts. Monter la pièce suivante :
    coudre un côté du
    bord à la marque, aiguille piquée, lever le pied, tourner le tissu pour que les bords suivants se rejoignent, et
    coudre{ $pivots ->
        [0] { "" }
        [one] { "" }
       *[other] , { TIMES($pivots) } dans cette unité
    }.
sew-unit-set-in-again = Coudre de marque en marque et monter les angles comme pour { $before }.

-press = Coucher { $seams ->
    [one] la couture
   *[other] les coutures
} { $way }.
-make = { $count-differs ->
    [yes] { " " }En faire le nombre du tableau.
   *[no] { $count ->
        [0] { "" }
        [one] { "" }
       *[other] { " " }En faire { $count }.
    }
}{ $shared-differs ->
    [yes] { "" }
   *[no] { $shared }
}
-size = { $size-differs ->
    [yes] sa taille du tableau
   *[no] { $size }
}
-made = { $box ->
    [yes] { CAPITAL($the) } mesure { -size }.{ " " }
   *[no] { "" }
}{ $later ->
    [yes] À recouper après l’appliqué.
   *[no] { "" }
}
shared = { " " }C’est-à-dire { $blocks }.
shared-by = { $count } pour { $block }
press-unit = { -press }
press-unit-made = { -press }{ -make }
    .right = { -made }
trim-unit-added = Les pièces sont coupées au { $rounding } supérieur, et ici cela s’ajoute : recouper { $the } à
    { -size }, en ôtant autant de
    chaque côté.{ -make }
    .right = { -made }
trim-unit-half = Recouper à { -size }, la ligne à 45 degrés de la règle sur la couture, pour que la couture finisse
    dans deux angles.{ -make }
    .right = { -made }
trim-unit-points = Recouper à { -size }, en laissant { $seam } au-delà de chaque pointe à son bord.{ -make }
    .right = { -made }
trim-unit-again = Recouper à { -size }, comme { $before }.{ -make }
    .right = { -made }
