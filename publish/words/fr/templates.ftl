# Les gabarits en taille réelle : imprimer, lire et raccorder les feuilles.

chapter-templates = Gabarits
    .lead = En taille réelle. Imprimer à 100 % et contrôler le carré de chaque feuille avant de couper le papier.
templates-of = Gabarits : { $size }

print-sheets = Imprimer { $sheets ->
        [both] les feuilles de gabarits et de supports
        [foundation] les feuilles de supports
       *[template] les feuilles de gabarits
    }{ $your ->
        [yes] { " " }de votre taille
       *[no] { "" }
    } sur une seule face à **100 %**, ou en *taille réelle*. Désactiver *ajuster à la page*, *réduire* et toute autre mise à l’échelle.
    .tip = Imprimer d’abord une feuille et la contrôler avant d’imprimer les autres.
check-sheets = Mesurer le carré de contrôle de chaque feuille avec la règle qui sert à couper. Un carré a
    { SHORT($small) } de côté, l’autre { $large }.
    .right = Les deux carrés sont justes dans les deux sens. Sinon, changer les réglages de l’imprimante et recommencer.
    .caption = Le carré de contrôle, mesuré dans les deux sens.

template-lines = La ligne continue est le bord fini et la ligne en tirets est le bord de coupe.
template-raw-edge = Un motif à bord vif n’a qu’une ligne, son bord.
template-pieces = Un gabarit de pièce comprend sa marge de couture : le découper sur la ligne extérieure ; la ligne
    intérieure est la couture. De courts
    traits en travers d’un bord sont des crans, et la flèche est le droit-fil.
template-mirrored-foundations = Un support est imprimé en miroir du bloc fini : les lignes continues sont les lignes
    de couture, la ligne en tirets est la
    ligne de coupe. L’en-tête d’une feuille dit combien de fois l’imprimer, si ce n’est pas une seule ; une feuille
    peut en porter
    plusieurs exemplaires.
template-sheets-joined = Les gabarits d’une taille partagent des feuilles quand ils y tiennent ; chacun est nommé. Si
    l’en-tête d’une feuille montre un
    petit plan, ses feuilles se raccordent : couper une feuille sur la ligne marquée, faire coïncider ses losanges
    numérotés avec ceux
    de la voisine, et les coller dans l’ordre du plan.

template-motif = { $part ->
    [wedge] Gabarit de secteur
   *[whole] Gabarit entier
} ({ $motif }), **{ $size }** : le motif fini a { $span } d’un bord à l’autre.{ $twice ->
    [yes] { " " }L’imprimer deux fois.
   *[no] { "" }
}
template-piece = Gabarit **{ $letter }**, **{ $size }** : couper { $count }{ $over ->
    [0] { "" }
   *[other] { " " }et { $over } retournées
} en { $fabric }.{ $half ->
    [yes] { " " }Il est imprimé par moitié : plier une feuille de papier, poser la ligne point-tiret sur le pli,
        tracer le reste, couper les deux
        épaisseurs sur la ligne de coupe et ouvrir le papier.
   *[no] { "" }
}{ $again ->
    [yes] { " " }C’est le même que pour { $first } : employer ses feuilles.
   *[no] { "" }
}
template-foundation = Support de la section { $letter } ({ $block }), **{ $size }** : il en faut { $copies }.
template-foundations-again = Les supports, **{ $size }**, sont les mêmes que pour { $first } : il en faut { $each },
    de ses feuilles.
copies-of-sections = { $copies } de { $sections ->
    [1] la section
   *[other] chaque section
} { $letters } ({ $block })
