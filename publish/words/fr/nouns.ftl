# Pour relier des énumérations.

list-or = ou

# Ce qui se compte : le message noun-NOM en dit un nombre.

noun-length = { $count ->
    [one] { $count } longueur
   *[other] { $count } longueurs
}
noun-strip = { $count ->
    [one] { $count } bande
   *[other] { $count } bandes
}
noun-block = { $count ->
    [one] { $count } bloc
   *[other] { $count } blocs
}
noun-row = { $count ->
    [one] { $count } rang
   *[other] { $count } rangs
}
noun-diagonal-row = { $count ->
    [one] { $count } rang en diagonale
   *[other] { $count } rangs en diagonale
}
noun-side-triangle = { $count ->
    [one] { $count } triangle de côté
   *[other] { $count } triangles de côté
}
noun-corner-triangle = { $count ->
    [one] { $count } triangle d’angle
   *[other] { $count } triangles d’angle
}
noun-back-piece = { $count ->
    [one] { $count } pièce de dos
   *[other] { $count } pièces de dos
}
noun-strip-set = { $count ->
    [one] { $count } ensemble de bandes
   *[other] { $count } ensembles de bandes
}
noun-fat-quarter = { $count ->
    [one] { $count } fat quarter
   *[other] { $count } fat quarters
}
noun-fat-eighth = { $count ->
    [one] { $count } fat eighth
   *[other] { $count } fat eighths
}
noun-square = { $count ->
    [one] { $count } carré
   *[other] { $count } carrés
}
noun-size = { $count ->
    [one] { $count } taille
   *[other] { $count } tailles
}
noun-fabric = { $count ->
    [one] { $count } tissu
   *[other] { $count } tissus
}
noun-spool = { $count ->
    [one] { $count } bobine
   *[other] { $count } bobines
}
noun-bobbin = { $count ->
    [one] { $count } canette
   *[other] { $count } canettes
}
noun-packet = { $count ->
    [one] { $count } paquet
   *[other] { $count } paquets
}
noun-copy = { $count ->
    [one] { $count } exemplaire
   *[other] { $count } exemplaires
}
noun-piece = { $count ->
    [one] { $count } pièce
   *[other] { $count } pièces
}
