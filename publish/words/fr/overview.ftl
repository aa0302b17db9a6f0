# Ce que l’on va coudre : la première partie, son tableau des tailles.

chapter-what-you-will-make = Ce que vous allez coudre
    .lead = { $sizes ->
        [1] Voici ce que donne le modèle.
       *[other] Choisir parmi { $sizes }.
    }
    .caption = { $sizes ->
        [1] L’ouvrage fini avec ses mesures.
       *[other] Les tailles finies, dessinées à une même échelle.
    }

name-motif = motif
    .plural = motifs
name-motif-of = motif { $motif }
    .plural = motifs { $motif }
-method = { $method ->
    [needle-turn] en appliqué à l’aiguille
    [fusible] avec un voile thermocollant et un bord piqué
   *[prepared-edge] à la main avec un bord préparé
}
# `motif` est son nom sans article, comme dans `name-motif`.
motif-folded = { CAPITAL($motif) } : se coupe dans { $pieces ->
    [1] un seul morceau de tissu plié
   *[other] un tissu plié
} en { $folds ->
    [4] quatre
    [6] six
    [8] huit
    [12] douze
   *[16] seize
}, comme un flocon de papier, et se coud sur son fond { -method }.
motif-turned = { CAPITAL($motif) } : tourne autour de son centre en { $folds } parties pareilles, se coupe à plat
    d’après un gabarit en
    taille réelle, et se pose sur son fond { -method }.
motif-drawn = { CAPITAL($motif) } : se trace { $counted ->
    [yes] par { $folds } secteurs
   *[no] par secteurs
} autour de son centre et se pose sur son fond { -method }.

grounds-pieced = { $some ->
    [yes] Le fond ({ $sizes }) s’assemble à la machine avant de recevoir le motif ; les autres fonds sont d’une pièce.
   *[no] Les fonds s’assemblent à la machine avant de recevoir le motif.
}
blocks-on-foundations = { CAPITAL($blocks) } : { $count ->
    [1] se coud sur un support imprimé.
   *[other] se cousent sur des supports imprimés.
}
blocks-pieced = { $others ->
    [yes] Les autres blocs
   *[no] Les blocs
} s’assemblent à la machine.
blocks-set-on-point = Les blocs sont posés sur pointe ({ $sizes }).
quilts-finished = { $which ->
    [only] Le quilt se monte, se matelasse et se borde.
    [several] Les quilts se montent, se matelassent et se bordent.
   *[one] { $sizes } : se monte, se matelasse et se borde.
}
pillows-finished = { $count ->
    [1] Le coussin a
   *[other] Les coussins ont
} un devant matelassé et un dos uni qui s’ouvre, pour retirer la housse et la laver.

# Le tableau des tailles.

table-sizes = { $sizes ->
    [1] La taille
   *[other] Les tailles
}
size-finished = Taille finie
size-blocks = Blocs
size-motif = Motif, d’un bord à l’autre
size-skill = Niveau
size-edge = Bord d’appliqué à coudre
size-points = Pointes de chaque motif
size-inside-corners = Angles rentrants de chaque motif
blocks-of-side = { $count ->
    [one] { $count } { $name }
   *[other] { $count } { PLURAL($name) }
}, { $side }
blocks-one = Un, { $side }
blocks-on-point = { CAPITAL($count) } sur pointe, chacun { $side }
blocks-grid = { CAPITAL($count) }, { $columns } sur { $rows }, chacun { $side }
edge-to-sew = Environ { $length }
