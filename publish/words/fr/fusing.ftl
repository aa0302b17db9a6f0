# Thermocoller un motif, et piquer son bord vif.

chapter-fusing = Thermocoller et piquer le motif
    .lead = Le voile et une ligne de points tiennent le motif ; son bord n’est pas rentré.

squares-of-web = { $count ->
    [one] un carré
   *[other] { $count } carrés
} de { $side }
letter-of = { $letter } en { $fabric }

cut-web = Dans le voile thermocollant, couper { $squares }, sans le plier à angle vif.
    .right = Papier et voile forment encore une seule feuille.
    .tip = Laver l’apprêt du tissu à thermocoller, sans adoucissant.
join-web = Si un carré est plus large que le rouleau, poser des longueurs bord à bord sans les chevaucher, et les
    coller avec du
    ruban du côté papier.
cut-web-length = Dans le voile thermocollant, couper une longueur de { $length }, sans le plier à angle vif. Elle
    contient { $motifs ->
        [one] le motif comme le montre le plan : marquer son centre avant de tracer.
       *[other] les { $motifs } motifs côte à côte comme le montre le plan, à au moins { $apart } l’un de l’autre :
           marquer le
            centre de chacun avant de tracer.
    }
    .right = Papier et voile forment encore une seule feuille, avec la place de chaque motif.
    .tip = Laver l’apprêt du tissu à thermocoller, sans adoucissant.
    .caption = { $size } : le côté papier du voile.

trace-web-wedges = { -whose }Marquer le centre du côté papier du voile, et une ligne au crayon de là au milieu d’un
    côté. Imprimer
    le gabarit de secteur et le couper sur sa ligne et ses deux bords de pli{ $open ->
        [yes] , l’ouverture du centre laissée dedans
       *[no] { "" }
    }. Poser sa pointe sur le centre et un bord droit le long de la ligne, et tracer son bord extérieur. Le retourner autour du
    bord que l’on vient de longer et tracer de nouveau, jusqu’à ce que le { ORDINAL($wedges) } secteur ferme le
    cercle. Ne pas
    tracer les bords droits.{ $open ->
        [yes] { " " }Pour finir, découper l’ouverture dans le papier et tracer aussi son bord dans chaque secteur.
       *[no] { "" }
    }
    .right = Les { $wedges } secteurs se rejoignent au centre et se suivent sans décalage.
    .tip = Ou thermocoller d’abord le voile sur tout le carré, puis plier, marquer et couper ; ne jamais thermocoller
        après le
        pliage. Le motif est sa propre image en miroir : les deux faces peuvent se tracer.
trace-web-whole = { -whose }Imprimer et raccorder les feuilles du gabarit entier. Le poser face contre une fenêtre
    claire ou une
    table lumineuse, et reporter son contour sur le côté papier du voile.
    .right = Le contour est l’image en miroir du motif des dessins : il sera dans le bon sens une fois le voile sur
        l’envers du
        tissu.
rough-cut = Couper le voile à environ { $spare } hors de la ligne.
    .tip = Pour un quilt plus souple, évider aussi le voile à l’intérieur de la ligne : garder une bande de
        { $spare } le long.

-cool = Laisser refroidir à plat.
-hot = Thermocoller demande plus de chaleur que repasser. Travailler sur une table protégée dans une pièce bien aérée
    et laisser
    refroidir le tissu avant de le toucher.
fuse-fabric = Poser le carré du motif { $squares } envers vers soi, le voile dessus, papier vers soi, et thermocoller
    comme le dit
    l’emballage du voile. { -cool }
    .caution = { -hot }
fuse-stretch = Poser le coupon { $squares } envers vers soi et le voile dessus, papier vers soi, comme le montre son
    plan de coupe.
    Thermocoller comme le dit l’emballage du voile. { -cool }
    .caution = { -hot }
cut-out = Couper papier et tissu exactement sur la ligne{ $holes ->
        [yes] , les ouvertures d’abord
       *[no] { "" }
    }. Tourner le tissu, pas le poignet. Entailler le papier avec une épingle et le décoller.
    .right = Le bord est net, et l’envers du motif a le léger brillant du voile.
fuse-ground = Thermocoller le motif comme le dit l’emballage du voile, en levant le fer d’une place à l’autre.
    Laisser refroidir le
    bloc, puis thermocoller encore une fois par l’envers.
    .right = Aucune partie du bord ne se soulève sous l’ongle.
stitch-raw-edge = Piquer le long de chaque bord. Zigzag : longueur { $long }, largeur { $wide }. Point de feston, à
    la machine ou à
    la main : environ { $wide } de long. Le point extérieur tombe dans le fond, l’intérieur dans le motif. Tourner
    aiguille
    piquée : hors du motif aux pointes et aux courbes sortantes, dedans aux angles rentrants et aux courbes rentrantes.
    .right = Les points sont d’équerre avec le bord et le couvrent.
    .tip = { $stabilised ->
        [yes] { "" }
       *[no] Mettre un stabilisateur à déchirer sous le fond si les points le froncent.
    }
