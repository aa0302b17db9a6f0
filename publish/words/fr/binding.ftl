# Border le quilt.

chapter-binding = Finition
    .lead = Un galon de finition double à coins en onglet, cousu à la machine et terminé à la main.

trim-level = Couper le molleton et la doublure au ras du top, et mettre les angles d’équerre à la règle.
    .right = Le quilt mesure { $quilt }, et ses angles sont droits.
    .tip = Le matelassage rétrécit un peu le top. Couper à bords droits et angles droits même si le vôtre est un peu
        plus petit.

join-on-diagonal = { $count ->
    [one] Prendre l’unique bande de finition { $letter }, large de { SHORT($width) }. Elle est assez longue sans
        raccord.
   *[other] Prendre les bandes de finition { $letter }, larges de { SHORT($width) } : { $strips }. Poser deux bouts à
        angle droit, endroit contre endroit. Épingler, vérifier que les bords se suivent, et coudre l’angle en
        diagonale. Couper à { $seam } et ouvrir la couture au fer. Les raccorder toutes ainsi.
}
    .right = { $count ->
        [one] La bande a au moins cette longueur : { $length }.
       *[other] Les bords sont droits à chaque raccord. La bande raccordée a au moins cette longueur :
            { $length }.
    }
    .caption = Raccorder les bandes en diagonale.

cut-bias-square = Prendre le carré de finition { $letter }, { $square }, et le couper sur une diagonale. Coudre les
    deux triangles par une paire de bords droits, endroit contre endroit, avec une couture de { $seam }, de façon à
    former un parallélogramme à deux longs bords en biais. Ouvrir la couture au fer.
    .caption = Galon en biais à partir d’un carré.
rule-bias = Tracer des lignes tous les { $width }, parallèles aux bords en biais ; couper ce qui reste après la
    dernière.
sew-bias-tube = Amener les deux bouts droits ensemble, endroit contre endroit, décalés d’une ligne, la première ligne
    face à la deuxième. Coudre avec une couture de { $seam } et l’ouvrir au fer.
cut-bias-tube = Couper le long de la ligne en une seule longue spirale.
    .right = Vous avez une bande en biais d’au moins cette longueur : { $length }.

press-in-half = Plier la bande en deux sur toute sa longueur, envers contre envers, et la repasser sans l’étirer.
    .right = Les deux bords vifs sont bord à bord.
    .caption = Repasser la bande en deux.

-binding-place = { $place ->
    [middle] au milieu { -binding-side }
   *[corner] sur un côté, à { $from } de l’angle suivant
}
-binding-side = { $side ->
    [longer] d’un long côté
   *[any] d’un côté
}
start-binding = Garder le pied double entraînement. Poser le galon sur l’endroit, bords vifs au bord du quilt. Faire le
    premier point { -binding-place }. Laisser libre un bout de { SHORT($tail) } et coudre vers l’angle avec une couture
    de { $seam }.
    .tip = Poser d’abord le galon tout autour sans coudre, et le décaler jusqu’à ce qu’aucun raccord ne tombe sur un
        angle.
    .caption = Les premiers points et le bout libre.
start-binding-tucked = Les côtés sont trop courts pour un raccord cousu : la fin se glisse dans le début. Ouvrir un bout
    de la bande, replier { $seam } sur l’envers, repasser, et replier la bande en deux. Poser ce bout plié
    { -binding-place } sur l’endroit, bords vifs bord à bord. Laisser { $tail } sans coudre, puis coudre vers l’angle.
    .right = Le bout plié est libre et ouvert comme une poche.
    .caption = Le bout plié, laissé ouvert.
turn-corner = S’arrêter à { $seam } de l’angle, faire un point arrière et couper les fils. Plier le galon tout droit
    vers
    le haut, à l’opposé du quilt, le pli en biais dans l’angle. Puis le rabattre tout droit le long du côté suivant, son
    nouveau pli au ras du bord que l’on vient de coudre. Repartir de ce bord.
    .right = Un petit pli se dresse à l’angle, et les bords vifs suivent le côté suivant.
    .caption = Plier l’angle.
meet-tails = Tourner le dernier angle et s’arrêter à { $gap } du premier point. Poser les deux bouts le long du bord et
    les couper pour qu’ils se chevauchent de la largeur de la bande : { SHORT($overlap) }.
    .caption = Les bouts se chevauchent de la largeur de la bande.
join-tails = Plier le quilt pour que les bouts se rejoignent. Les ouvrir tous deux, les poser endroit contre endroit à
    angle droit et épingler en diagonale. Vérifier que la boucle est à plat, coudre, couper la couture à
    { SHORT($seam) } et l’ouvrir au fer. Coudre le reste du galon.
    .right = Le galon remplit l’intervalle, et le dernier raccord ressemble aux autres.
tuck-tail = Après le dernier angle, s’arrêter avant le bout plié. Couper l’autre bout pour qu’il dépasse le pli de
    { $inside }, le glisser dedans, et coudre les deux jusqu’au premier point. Ces deux bouts se ferment à la main à
    l’étape suivante.
    .right = Aucun bord vif ne se voit, et le galon est à plat.
sew-down-binding = Rabattre le bord plié sur le dos, juste par-dessus la ligne de points, et le coudre à petits points
    cachés qui prennent la doublure et le molleton sans traverser jusqu’à l’endroit. À chaque angle, plier un côté, puis
    l’autre, en onglet, et le fermer d’un point ou deux des deux côtés.
    .right = Le galon est plein jusqu’au bord et aussi large au dos que devant.
    .caption = Terminer à la main sur le dos.
