# Les tours d’un médaillon qui sont faits de blocs.

order-rounds = Le quilt grandit du centre vers l’extérieur : { $rounds }. Repasser et mesurer après chaque tour.
    .caption = { $size } : les tours écartés, numérotés à partir du centre.
nth-round = tour { FIGURES($number) } : { $what }
round-of-fabric = une bordure en { $fabric }, large de { $width }
round-of-blocks = { $count } de { $side } ({ $blocks })

lay-round = Le tour { FIGURES($round) } est fait de blocs. Les disposer autour du top, tournés comme sur le dessin,
    et les coudre en quatre
    bandes.{ $alternate ->
        [yes] { " " }Alterner les blocs d’une même sorte couchés en sens opposés.
       *[no] { "" }
    }
    .caption = { $size } : tour { FIGURES($round) }, bande par bande.
sew-round-strip = **{ $which ->
    [left] Gauche
    [right] Droite
    [sides] Gauche et droite
    [top] Haut
    [bottom] Bas
   *[ends] Haut et bas
}** : { $parts }{ $seams ->
    [0] { "" }
   *[other] , coutures couchées { $press }
}.{ $corners ->
    [yes] { " " }Coucher les coutures voisines des blocs d’angle vers le milieu de la bande : elles s’emboîtent avec
        les coutures des
        côtés.
   *[no] { "" }
}
    .right = { $which ->
        [left] Les bandes de côté mesurent { $strip }.
        [sides] Les bandes de côté mesurent { $strip }.
        [top] Celles du haut et du bas mesurent { $strip }.
        [ends] Celles du haut et du bas mesurent { $strip }.
       *[other] { "" }
    }
pin-round = { $sides ->
    [sides] Épingler la bande de gauche au côté gauche du top et celle de droite au côté droit, d’abord aux bouts et
        aux milieux, puis entre
        eux.
   *[ends] Épingler de même les bandes du haut et du bas, la couture voisine de chaque bloc d’angle emboîtée avec
       celle du côté.
}
sew-round = { $sides ->
    [sides] Répartir les petites différences et coudre.
   *[ends] Coudre.
}
press-round = Coucher les coutures vers l’extérieur.
    .right = { $sides ->
        [sides] { "" }
       *[ends] Le top mesure { $top }.
    }
