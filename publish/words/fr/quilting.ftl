# Monter les épaisseurs et matelasser.

chapter-quilting = Montage et matelassage
    .lead = Superposer, bâtir et matelasser.

noun-backing-panel = { $count ->
    [one] { $count } panneau de doublure
   *[other] { $count } panneaux de doublure
}
noun-whole-panel = { $count ->
    [one] panneau entier
   *[other] { $count } panneaux entiers
}

sew-backing = Prendre { $panels } { $letter } en { $fabric } : aucune lisière ne doit y rester.{ $split ->
        [no] { "" }
        [one] { " " }En couper un en deux dans sa longueur, chaque moitié large de { $half } ; poser une moitié
            { -beside } ({ $whole }).
       *[last] { " " }Couper le dernier en deux dans sa longueur, chaque moitié large de { $half } ; poser une moitié
           { -beside } ({ $whole }).
    } Les coudre par leurs longs côtés avec une couture de { $seam }. Ouvrir { $seams ->
        [one] la couture
       *[other] les coutures
    } au fer.
    .right = La doublure mesure au moins { $backing }, avec { $seams ->
            [one] une couture { -way }
           *[other] { $seams } coutures { -ways }
        }{ $split ->
            [no] { "" }
           *[other] , aucune en plein milieu
        }.
-beside = { $way ->
    [vertical] de part et d’autre
   *[horizontal] au-dessus et au-dessous
}
-way = { $way ->
    [vertical] verticale
   *[horizontal] horizontale
}
-ways = { $way ->
    [vertical] verticales
   *[horizontal] horizontales
}

remove-paper = Retirer tout le papier des supports{ $part ->
    [some] { " " }({ $sizes })
   *[all] { "" }
} : le plier le long des points, tenir la couture de l’ongle du pouce et déchirer le papier, la dernière pièce d’abord. Retirer
    les petits restes à la pince.
    .right = Aucun point n’est tiré.
press-top = Repasser le top fini et couper les fils qui traînent au dos : des fils foncés se voient à travers un
    tissu clair.

layer-quilt = Poser la doublure { $letter } envers vers soi, { $backing }, et la fixer à plat avec du ruban sans
    l’étirer. Lisser le molleton
    dessus, { $batting }, et centrer le top dessus, endroit vers soi.
    .right = Molleton et doublure dépassent également du top de chaque côté, la doublure davantage.
    .tip = { $finishes ->
        [quilts] { "" }
        [pillows] La doublure se retrouve à l’intérieur de la housse : n’importe quel coton uni convient.
       *[mixed] La doublure se retrouve à l’intérieur de la housse ({ $pillows }) : n’importe quel coton uni convient.
    }
    .caption = { $size } : doublure, molleton et top.

baste-quilt = Bâtir les épaisseurs du centre vers l’extérieur, avec des épingles de sûreté ou à longs points en rangs
    espacés d’au plus { $rows }.
    Tenir les épingles à l’écart { $edge ->
        [motif] du bord du motif et des lignes
       *[lines] des lignes
    } à matelasser. De longs points peuvent les croiser : les couper en y arrivant.
    .right = La doublure est lisse.
    .tip = Déplier le molleton la veille, comme le dit son étiquette.
    .caption = Bâtir les épaisseurs, du centre vers l’extérieur.

begin-quilting = Monter un pied double entraînement, une aiguille neuve 90/14 et un point d’environ { $stitch }, ou
    enfiler une aiguille courte
    pour matelasser à la main. Essayer sur une chute des mêmes épaisseurs. Toujours avancer du centre vers l’extérieur.
    .right = Les points sont pareils des deux côtés et les épaisseurs ne se décalent pas.
    .tip = Ramener les deux fils dessus à chaque départ, les nouer et enfouir les bouts entre les épaisseurs.
anchor-quilt = { $part ->
    [some] { $sizes } : matelasser
   *[all] Matelasser
} dans le sillon { $seams ->
    [round] des coutures autour du milieu d’abord : elles tiennent
    [one] de la couture la plus proche du milieu d’abord : elle tient
   *[other] d’une couture dans chaque sens d’abord, les plus proches du milieu : elles tiennent
} les épaisseurs ensemble.

-area = { $area ->
    [motif] le motif
    [border] les bordures
    [patchwork] le patchwork
   *[ground] le fond
}
-in-area = { $area ->
    [motif] dans le motif
    [border] dans les bordures
    [patchwork] dans le patchwork
   *[ground] dans le fond
}
-apart = { $apart-differs ->
    [yes] à cette distance : { $apart }
   *[no] espacées de { $apart }
}
quilt-area-ditch = Matelasser { -area } dans le sillon : piquer autour de chaque bord, dans le fond, aussi près du
    motif que l’aiguille peut aller
    sans le toucher. Dans les courbes serrées et les fentes étroites, prendre un pied de piqué libre, griffes
    abaissées, ou matelasser
    à la main.
    .right = La piqûre se voit à peine.
quilt-area-seams = Matelasser { -area } dans le sillon : piquer le long de chaque couture, du côté où les marges ne
    sont pas couchées.
    .right = La piqûre se voit à peine dans la couture.
quilt-area-echo = Matelasser des lignes en écho { -in-area }, { -apart }. La première est à cette distance { $edge ->
        [motif] du bord du motif
       *[edge] du bord suivi
    }, la suivante à autant de la première, et ainsi de suite jusqu’à remplir la surface.
    .right = Les lignes sont partout à la même distance ; là où deux séries se rejoignent, elles forment une pointe
        douce.
quilt-area-echo-motif = Matelasser des lignes en écho { -in-area }, { -apart }. La première est à cette distance en
    dedans de son bord, la suivante
    à autant en dedans de la première, tant qu’il y a de la place.
    .right = Les lignes sont partout à la même distance.
quilt-area-echo-border = Matelasser des lignes en écho { -in-area }, { -apart }. La première est à cette distance
    hors de la couture de la bordure la
    plus intérieure, la suivante à autant hors de la première, tout autour jusqu’au bord.
    .right = Les lignes sont partout à la même distance et tournent net aux angles.
quilt-area-parallel = Matelasser { -area } avec { $lines ->
        [along] des lignes le long de chaque côté
        [across] des lignes droites en travers
        [slant] des lignes obliques en travers
        [horizontal] des lignes parallèles horizontales
        [vertical] des lignes parallèles verticales
       *[slanting] des lignes parallèles obliques
    }, { -apart }. Marquer la première à la craie ou au marqueur lavable. Régler les autres sur elle avec le guide du pied ou des rubans
    adhésifs.
    .right = Les lignes sont droites et régulièrement espacées d’un bord à l’autre.
quilt-area-grid = Matelasser { -area } avec { $lines ->
        [diagonal] un quadrillage en diagonale
        [upright] un quadrillage droit
       *[slanting] un quadrillage oblique
    }, lignes { -apart }. Marquer la première ligne de chaque sens à la craie ou au marqueur lavable. Coudre toutes les lignes d’un sens,
    puis celles de l’autre.
    .right = Les carrés sont réguliers, et la doublure n’a pas de pli aux croisements.
quilt-area-as-desired = Matelasser { -area } à votre goût, avec des lignes aussi serrées que le demande l’étiquette
    du molleton.
    .right = Le matelassage est à peu près aussi dense ici qu’ailleurs, pour que le top reste à plat.

remove-basting = Retirer le bâti, et chercher des plis au dos.

# Le plan de matelassage.

table-quilting = Le plan de matelassage
    .where = Où
    .how = Comment
    .apart = Écart
    .length = Longueur des lignes
    .together = Ensemble
    .note = Les longueurs sont celles des lignes elles-mêmes, chacune { $unit ->
        [metric] à 10 cm près
       *[yards] au quart de yard près
    }.
    .caption = { $size } : les lignes de matelassage.
quilted-area = { -area }
quilted-style = { $style ->
    [ditch] dans le sillon, contre le bord
    [echo] lignes en écho
    [parallel] lignes parallèles
    [grid] un quadrillage
   *[as-desired] à votre goût
}
note-apart = Quel écart
    .label = L’étiquette du molleton dit l’écart permis entre les lignes de matelassage. La lire d’abord.
    .made-for = Ce plan est fait pour **{ $batting }**, avec des lignes espacées d’au plus { $gap }.
    .closer = Si votre molleton demande des lignes plus serrées, en ajouter entre celles du dessin.
