# Plier le carré d’un motif, le marquer, le couper : sur les plis, ou à plat.

the-motif = motif
    .plural = motifs
each-motif = chaque motif
motif-named = motif { $name }
    .plural = motifs { $name }
some-motifs = { $count ->
    [one] un { $motif }
   *[other] { $count } { PLURAL($motif) }
}
under-of = { $under } ({ $motif })
noun-motif = { $count ->
    [one] { $count } motif
   *[other] { $count } motifs
}
noun-layer = { $count ->
    [one] { $count } épaisseur
   *[other] { $count } épaisseurs
}
noun-wedge = { $count ->
    [one] { $count } secteur
   *[other] { $count } secteurs
}
# À quel motif est l’étape, quand le modèle en a plusieurs.
-whose = { $several ->
    [yes] **{ CAPITAL($motif) }.**{ " " }
   *[no] { "" }
}

chapter-folding = Plier le tissu
    .lead = Plier, couper un secteur, ouvrir : comme un flocon de papier.

prepare-square = { -whose }Prendre le carré du motif { $letter } en { $fabric } : { $square }. Le repasser au fer
    chaud et sec et
    le poser envers vers soi.
    .right = Il est à plat, et ses fils sont parallèles à ses bords.
    .tip = Amidonner le coupon avant de couper : l’humidité et la chaleur déforment un carré coupé, et la vapeur emporte
        l’amidon.
    .caption = Le carré du motif, envers vers soi.

fold-half = Plier le carré en deux, endroit à l’extérieur, bord à bord. Lisser vers le pli et repasser.
    .right = Vous avez { $layers }, et le pli suit un fil. À partir d’ici, les plis doivent se superposer exactement.
    .caption = Plié en deux : { $layers }.
fold-quarter = Plier en deux dans l’autre sens, le premier pli sur lui-même, et repasser. L’angle sans bord vif est
    le centre
    du motif.
    .right = Vous avez { $layers }. Deux bords sont pliés, deux sont vifs.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Plié en quatre : { $layers }.
    }
fold-diagonal = Plier en diagonale, du centre à l’angle opposé, les bords pliés l’un sur l’autre, et repasser.
    .right = Vous avez { $layers } en triangle.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Plié en diagonale : { $layers }.
    }
fold-third = Pincer le milieu du pli : le centre du motif. Y poser un papier par son centre, un bord de pli le long
    du pli, et
    tracer une ligne le long de son autre bord de pli avec un marqueur. Replier ce tiers vers le haut et en travers
    sur la
    ligne, et repasser.
    .right = Le tiers replié couvre exactement le tiers du milieu.
    .caption = Un tiers replié sur la ligne.
fold-last-third = Replier le dernier tiers par-dessus de la même façon, bords pliés ensemble, et repasser.
    .right = Vous avez { $layers } en un secteur. Les deux bords qui vont au centre sont pliés.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Plié en trois : { $layers }.
    }
fold-again = Plier encore une fois le secteur en deux, depuis le centre, un bord plié sur l’autre : l’angle y est
    maintenant de
    { $folds ->
        [12] 30
       *[16] 22,5
    } degrés. Repasser fort.
    .right = Vous avez { $layers } en un secteur étroit.
    .caption = { -folded-up }
-folded-up = Plié en { $folds } : le pli simple, les plis multiples, les bords ouverts et le centre.

mark-centre = Marquer le centre d’un point au crayon.
    .right = Le nouveau bord est le **pli simple**. L’autre bord plié{ $grain ->
            [straight] , en droit-fil,
            [bias] , en biais,
           *[off-grain] { "" }
        } porte les **plis multiples**. Ils se rejoignent au **centre**.
    .tip = { $thick ->
        [yes] { CAPITAL($layers) }, c’est tout ce que des ciseaux coupent net : choisir un coton fin au tissage serré et
            repasser fort chaque pli.
       *[no] { "" }
    }

chapter-marking-and-cutting-the-motif = Marquer et couper le motif
    .lead = { $folded ->
        [yes] Marquer et couper avec soin : chaque épaisseur répète ce que l’on trace sur la première.
       *[no] Marquer et couper avec soin : le bord se rentre sur la ligne tracée.
    }

print-templates = { -whose }Imprimer deux fois le gabarit de secteur{ $kinds ->
        [one] { -your-size }
       *[other] { " " }de chaque sorte{ -your-size }
    } et couper les deux papiers le long de leurs bords de pli, jusqu’au centre.
cut-templates = { $start ->
    [here] { "" }
   *[before] { -whose }
}Couper un papier sur sa ligne de coupe en tirets, l’autre sur sa ligne continue.
-your-size = { $your ->
    [yes] { " " }de votre taille
   *[no] { "" }
}
align-template = Poser le plus grand sur le secteur, face imprimée vers soi : { $end ->
        [open] son bout étroit au
       *[point] sa pointe sur le
    } centre, *pli simple* sur le pli simple, *plis multiples* sur les plis multiples. L’épingler.
    .right = Ses bords droits sont exactement sur les plis ; du tissu dépasse du bord ouvert.
    .tip = { $turns ->
        [yes] Si vos plis sont de l’autre côté, retourner le tissu, pas le papier.
       *[no] { "" }
    }
    .caption = Le gabarit sur le secteur, bord sur pli.
mark-cut-line = Tracer le contour du papier en tirets légers avec un marqueur à tissu : la **ligne de coupe**. Ne pas
    marquer les
    plis.
    .right = La ligne en tirets va d’un pli à l’autre, jamais le long d’un pli.
    .tip = Prendre une craie ou un crayon blanc, et l’essayer : il doit résister au fer et partir au lavage.
mark-finished-line = Poser le plus petit papier à la même place et tracer son contour d’un trait continu : la **ligne
    finie**, sur
    laquelle le bord se plie.
    .right = Les lignes sont à { $under } l’une de l’autre : cette bande est le rentré.
    .tip = Garder les deux papiers entiers.
    .caption = Ligne finie continue, ligne de coupe en tirets.

baste-wedge = Bâtir à travers { $layers } avec un fil contrasté, à { $inside } à l’intérieur de la ligne finie ; là
    où un bras est
    trop étroit pour deux rangs, une fois en son milieu. Bâtir une fois dans la partie à évider. Laisser de longs
    bouts sans
    nœud.
    .right = Les épaisseurs ne glissent pas quand on les frotte.
    .tip = Ou prendre le plus long point de la machine, de la pointe vers l’extérieur : un fer chaud ferme les trous
        ensuite.
    .caption = Le secteur marqué, bâti à travers toutes les épaisseurs.
cut-wedge = Couper la ligne en tirets à travers { $layers } : de grands ciseaux bien aiguisés pour les longs bords,
    de petits
    ciseaux pour { $fine ->
        [openings] les angles et les ouvertures
       *[corners] les angles
    }. Suivre les flèches : { $order ->
        [first-last] d’abord les ouvertures, tant que les épaisseurs se tiennent tout autour, puis { -outer },
            l’ouverture du
            centre en dernier
        [first] d’abord les ouvertures, tant que les épaisseurs se tiennent tout autour, puis { -outer }
        [last] { -outer }, l’ouverture du centre en dernier
       *[outer] { -outer }
    }. Tourner le tissu, pas le poignet.
    .right = Retourné, le secteur a le même aspect.
    .tip = Traverser un pli à l’angle dessiné : d’équerre, le bord s’ouvre lisse ; à tout autre angle, il s’ouvre en
        pointe.
    .caution = Ne pas couper le long d’un pli{ $whole ->
        [yes] { "\u00A0" }: les plis non coupés tiennent le motif ensemble.
       *[no] { " " }là où le papier le touchait.
    }
    .caption = Où commencer, et dans quel sens couper.
-outer = le bord extérieur, des plis multiples au pli simple

open-motif = Retirer le bâti. Ouvrir le motif un pli à la fois sans tirer, et le lisser depuis le centre.{ $pieces ->
        [one] { "" }
       *[other] { " " }Il vient en { $pieces } morceaux : les garder à leur place.
    } Ne pas le repasser : les plis servent encore, et la chaleur peut fixer les marques.
    .right = Le motif est à plat, tous les secteurs pareils : { $wedges }.
    .tip = Garder les chutes pour des essais.
    .caption = Ouvrir le motif.
mark-wedges = Seul le secteur du dessus est marqué. Sur les autres ({ $wedges }), rentrer partout la même largeur, ou
    tracer le
    contour du petit papier sur chacun, face imprimée en dessous un secteur sur deux.

make-motifs = { $folded ->
    [yes] Plier, marquer, bâtir et couper
   *[no] Tracer et couper
} les autres un par un, jusqu’à avoir { $motifs }.

join-template = { -whose }Imprimer les feuilles du gabarit entier{ -your-size }, les couper là où c’est marqué, et
    les coller
    ensemble d’après leurs lettres et leurs losanges numérotés.
    .right = Les lignes passent chaque raccord sans décalage.
trace-motif = Repasser le carré du motif { $letter } en { $fabric } et le plier en deux dans les deux sens. Coller le
    gabarit sur une
    fenêtre claire ou une table lumineuse. Poser le carré dessus, endroit vers soi, ses plis sur les lignes médianes, et
    reporter la ligne finie en continu et la ligne de coupe en tirets.
    .right = Les lignes sont à { $under } l’une de l’autre.
    .tip = { $turning ->
        [yes] Ce dessin n’a pas d’axe de symétrie : il ne peut pas être coupé plié.
       *[no] { "" }
    }
cut-flat = Couper la ligne en tirets avec des ciseaux bien aiguisés{ $holes ->
        [yes] , les ouvertures d’abord
       *[no] { "" }
    }, et les angles avec de petits ciseaux. Tourner le tissu, pas le poignet.
    .right = Le motif est en { $pieces ->
            [one] un seul morceau
           *[other] { $pieces } morceaux
        }, la ligne continue tout autour.
