# Ajouter les bordures.

chapter-borders = { $rounds ->
    [yes] Ajouter les bordures et les tours
   *[no] Ajouter les bordures
}
    .lead = Mesurer le top en son milieu et près des deux bords, et couper les bandes à la moyenne : le top reste
        d’équerre.

border-name = { $place ->
    [only] bordure
    [inner] bordure intérieure
    [middle] bordure du milieu
    [outer] bordure extérieure
   *[other] { ORDINAL($number) } bordure
}
border-opening = { CAPITAL($border) } : en { $fabric }.
round-opening = Tour { FIGURES($round) }, { $border } : en { $fabric }.

border-strips = bandes : { $border }
join-lengths = Raccorder bout à bout les longueurs coupées ({ $what }), endroit contre endroit, avec une couture de
    { $seam } : { $joins }. Ouvrir les coutures au fer{ $trim ->
        [yes] { " " }et couper chaque bande à sa longueur
       *[no] { "" }
    }.
    .right = Étendues bien droit : { $strips }.
join-of = { $lengths } de { $letter } pour { $strips ->
    [one] la bande
   *[other] chacune : { $strips }
}
strip-cut = { $letter } mesure { $strip }
strip-measures = { $letter } mesure au moins { $strip }

measure-top-down = { $opening } Mesurer le top de haut en bas au milieu et près des deux bords : il devrait avoir
    { $height } en moyenne.
    .caption = { $size } : { $border }, côtés d’abord.
measure-top-across = Mesurer d’un côté à l’autre de la même façon, bandes de côté comprises : il devrait y avoir
    { $width } en moyenne.
measure-top-down-across = { $opening } Ses coins sont en onglet. Mesurer le top dans les deux sens au milieu et près des
    deux bords : il devrait avoir { $top } en moyenne.
    .caption = { $size } : { $border }, en onglet.

cut-border = { $sides ->
    [sides] Couper les deux bandes de côté { $letters } à votre moyenne.
   *[ends] Couper les bandes du haut et du bas { $letters } à votre moyenne.
}
    .tip = { $spare ->
        [none] Les bandes { $exact } n’ont pas de réserve. Si votre moyenne les dépasse de plus de { $near },
            vérifier la largeur de vos coutures avant de continuer.
       *[some] { "" }
    }
pin-border = { $sides ->
    [sides] { $where ->
        [quarters] En épingler une de chaque côté aux bouts, au milieu et aux quarts, et répartir le reste entre les
            épingles.
       *[ends] En épingler une de chaque côté aux bouts et au milieu, et répartir le reste entre les épingles.
    }
   *[ends] En épingler une en haut et une en bas de la même façon.
}
sew-border = { $sides ->
    [sides] Les coudre avec une couture de { $seam }.
   *[ends] Les coudre.
}
press-border = Coucher les coutures vers la bordure.
    .right = { $sides ->
        [mitred] { "" }
        [sides] Le top mesure { $top } et reste à plat.
       *[ends] Le top mesure { $top }.
    }

pin-mitred = Plier en deux chacune des quatre bandes { $letters } pour trouver son milieu et l’épingler au milieu de son
    côté.{ $where ->
        [quarters] { " " }Épingler ensuite les quarts, puis entre eux
       *[ends] { " " }Épingler de là vers l’extérieur
    } ; les bouts dépassent les angles.
    .right = Chaque bande dépasse les deux angles d’au moins { $width } environ.
sew-mitred = Coudre les bandes en commençant et en s’arrêtant exactement à { $seam } de chaque angle du top. Faire un
    point arrière aux deux bouts.
    .right = À chaque angle, les deux lignes de points se rejoignent en un point.
sew-mitre = Plier le top en diagonale, endroit contre endroit, deux bandes voisines l’une sur l’autre. Poser une
    règle le
    long du pli et prolonger sa ligne sur les bandes. Épingler, et coudre sur la ligne de l’angle des coutures jusqu’au
    bord. Couper à { $seam }. Faire de même aux autres angles.
press-mitres = Ouvrir les onglets au fer.
    .right = Les angles sont à plat, et le top mesure { $top }.
