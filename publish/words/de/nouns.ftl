# Verbinden von Aufzählungen.

list-or = oder

# Gezähltes: die Nachricht noun-NAME sagt eine Anzahl davon.

noun-length = { $count ->
    [one] { $count } Länge
   *[other] { $count } Längen
}
noun-strip = { $count } Streifen
noun-block = { $count ->
    [one] { $count } Block
   *[other] { $count } Blöcke
}
    .dative = { $count ->
        [one] { $count } Block
       *[other] { $count } Blöcken
    }
noun-row = { $count ->
    [one] { $count } Reihe
   *[other] { $count } Reihen
}
noun-diagonal-row = { $count ->
    [one] { $count } Diagonalreihe
   *[other] { $count } Diagonalreihen
}
noun-side-triangle = { $count ->
    [one] { $count } Seitendreieck
   *[other] { $count } Seitendreiecke
}
noun-corner-triangle = { $count ->
    [one] { $count } Eckdreieck
   *[other] { $count } Eckdreiecke
}
noun-back-piece = { $count ->
    [one] { $count } Rückenteil
   *[other] { $count } Rückenteile
}
noun-strip-set = { $count ->
    [one] { $count } Streifenset
   *[other] { $count } Streifensets
}
noun-fat-quarter = { $count ->
    [one] { $count } Fat Quarter
   *[other] { $count } Fat Quarters
}
noun-fat-eighth = { $count ->
    [one] { $count } Fat Eighth
   *[other] { $count } Fat Eighths
}
noun-square = { $count ->
    [one] { $count } Quadrat
   *[other] { $count } Quadrate
}
noun-size = { $count ->
    [one] { $count } Größe
   *[other] { $count } Größen
}
noun-fabric = { $count ->
    [one] { $count } Stoff
   *[other] { $count } Stoffe
}
noun-spool = { $count ->
    [one] { $count } Rolle
   *[other] { $count } Rollen
}
noun-bobbin = { $count ->
    [one] { $count } Spule
   *[other] { $count } Spulen
}
noun-packet = { $count ->
    [one] { $count } Päckchen
   *[other] { $count } Päckchen
}
noun-copy = { $count ->
    [one] { $count } Exemplar
   *[other] { $count } Exemplare
}
noun-piece = { $count ->
    [one] { $count } Stück
   *[other] { $count } Stücke
}
