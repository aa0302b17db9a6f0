# Coudre les blocs en rangs, et les rangs au milieu du top.

chapter-assembling = Assembler le top
    .lead = { $trimmed ->
        [yes] Des blocs recoupés
       *[no] Des blocs
    } de même taille s’ajustent sans forcer. Les coudre endroit contre endroit.

sashing-strips = longues bandes intercalaires

lay-out = Disposer { $lines ->
        [one] le bloc
        [row] { $blocks } en un rang
        [column] { $blocks } en une colonne
       *[both] { $blocks } en { $rows } de { $columns }
    }{ $between }{ $check ->
        [kinds] , chaque sorte à sa place sur le dessin
        [turned] , tournés comme sur le dessin
       *[none] { "" }
    }.{ $lying }{ $number ->
        [yes] { " " }Numéroter les rangs à partir du haut.
       *[no] { "" }
    }
    .caption = { $size } : les rangs, numérotés à partir du haut.
-where = { $where ->
    [around] autour
    [both] entre eux et autour
   *[between] entre eux
}
with-sashing = , avec des bandes intercalaires en { $fabric } { -where }
with-cornerstones = , avec des bandes intercalaires en { $fabric } { -where } et des cabochons en { $stones } là où les
    bandes se rejoignent
lying = { " " }Disposer { $which } ; les autres sont couchés en sens inverse.
blocks-lie = { PLURAL($name) } couchés { $way } : { $places }
places = { $many ->
    [one] rang
   *[other] rangs
} { $rows }, { $count ->
    [one] place
   *[other] places
} { $columns }

mark-strips = Sur chaque longue bande, marquer où finissent les coutures du rang du dessus, pour que le rang suivant
    reste dans l’alignement.
pin-seams = { $what ->
    [rows] Épingler à chaque croisement, là où les marges sont couchées en sens opposés et s’emboîtent.
   *[parts] Épingler partout où des coutures se rejoignent.
}
sew-parts = Pour { $what } : coudre ensemble { $those } { $way ->
    [down] de haut en bas
   *[across] côte à côte
}.
press-seams = Coucher { $seams ->
        [one] la couture
       *[other] les coutures
    } { $way }.
    .right = { CAPITAL($measures) } mesure { $size }.{ $crossing ->
        [yes] { " " }Les coutures se rejoignent.
       *[no] { "" }
    }

# Sur pointe.

lay-out-on-point = Disposer { $blocks ->
        [one] le bloc
       *[other] { $blocks }
    } sur pointe, angles vers le haut, { $between ->
        [sashing] avec les bandes intercalaires entre eux et avec
       *[none] avec
    } { $sides ->
        [0] { "" }
       *[other] { $sides } le long des bords et
    } { $corners } aux angles.{ $rows ->
        [one] { "" }
       *[other] { " " }Numéroter : { $rows }, à partir de l’angle supérieur droit.
    }
    .right = { $sides ->
        [0] L’angle droit de chaque triangle est tourné vers l’extérieur.
       *[other] Le long côté de chaque triangle de côté est sur le bord extérieur : il est en droit-fil et
            empêche le bord de se détendre.
    }
    .caption = { $size } : les rangs en diagonale, écartés et numérotés.
turn-layout = { $rows ->
        [one] Tourner l’ensemble pour que le bloc soit à l’horizontale, et coudre le rang de gauche à droite.
       *[other] Tourner l’ensemble pour que les rangs soient à l’horizontale, le rang 1 le plus loin de soi, et coudre
            chaque rang de gauche à droite.
    }{ $sides ->
        [some] { " " }Un triangle de côté se coud par un petit côté : placer son angle droit au bord du bloc ; sa
            pointe dépasse de l’autre côté.
       *[none] { "" }
    } Un triangle d’angle se coud par son long côté, milieu sur milieu. Couper ce qui dépasse, à { $seam } de la
    couture.
    .right = { $rows ->
        [one] Bloc et triangles sont bord à bord sur les deux longs côtés.
       *[other] Blocs et triangles sont bord à bord là où se coud le rang suivant.
    }
    .caution = { $sides ->
        [some] Les petits côtés d’un triangle de côté et le long côté d’un triangle d’angle sont en biais et se
            détendent : les manier
       *[none] Le long côté de chaque triangle est en biais et se détend : le manier
    } doucement, et repasser sans déplacer le fer de côté.
sew-diagonal-row = { "\u000A\u000A" }**{ CAPITAL($row) }** : { $parts }.
press-diagonal-row = { "\u000A\u000A" }Coucher les coutures { $way }.
pin-diagonal-rows = Poser les rangs endroit contre endroit dans l’ordre, { $strips ->
    [yes] les bandes entre eux : { $order }. Sur chaque bande, marquer où finissent les coutures du rang précédent,
        épingler, et épingler le rang suivant dans l’alignement.
   *[no] { $first } à { $last }. Épingler à chaque croisement, là où les marges sont couchées en sens opposés et
        s’emboîtent.
}
join-diagonal-rows = Coudre les rangs ensemble.
sew-corners = Ajouter les derniers { $corners } : plier chacun en deux pour trouver le milieu de son long côté,
    l’épingler
    au milieu du rang et coudre.
press-diagonal-rows = Coucher ces coutures { $way }.
    .right = { $rows ->
        [one] Les angles du bloc pointent vers le bord.
       *[other] Les coutures se rejoignent, et les angles des blocs pointent vers le bord.
    }
square-top = { $sashing ->
        [yes] Redresser chaque côté avec une longue règle, au ras des longs bords des triangles : n’enlever que ce
            qui dépasse.
       *[no] Poser la règle, sa ligne { $edge } sur les angles des blocs, et redresser chaque côté : { $edge } doivent
            rester hors des angles, sinon la couture suivante les coupe.
    } Mettre les angles d’équerre.{ $rounded ->
        [yes] { " " }Les triangles { $large } ont été coupés un peu grands : le surplus part ici.
       *[no] { "" }
    }
    .right = { CAPITAL($measures) } mesure { $size }.
