# Dreiecke, Formen und Teile von Schablonen: was die Zuschneidetabelle sagt, und wie man sie schneidet.

noun-triangle = { $count ->
    [one] { FIGURES($count) } Dreieck
   *[other] { FIGURES($count) } Dreiecke
}
noun-diamond = { $count ->
    [one] { FIGURES($count) } Raute
   *[other] { FIGURES($count) } Rauten
}
noun-hexagon = { $count ->
    [one] { FIGURES($count) } Sechseck
   *[other] { FIGURES($count) } Sechsecke
}
noun-parallelogram = { $count ->
    [one] { FIGURES($count) } Parallelogramm
   *[other] { FIGURES($count) } Parallelogramme
}
noun-equilateral-triangle = { $count ->
    [one] { FIGURES($count) } gleichseitiges Dreieck
   *[other] { FIGURES($count) } gleichseitige Dreiecke
}
noun-piece-in-figures = { $count ->
    [one] { FIGURES($count) } Teil
   *[other] { FIGURES($count) } Teile
}
becomes-once = einmal diagonal geschnitten: { $made }{ -to-spare }
becomes-twice = zweimal diagonal geschnitten, über Kreuz: { $made }{ -to-spare }
-to-spare = { $spare ->
    [0] { "" }
   *[other] , { FIGURES($spare) } übrig
}
becomes-template = { $made } mit Schablone { $template } schneiden{ $over ->
    [0] { "" }
   *[other] , davon { FIGURES($over) } mit gewendeter Schablone
}
becomes-whole = bleibt ganz
becomes-strip = { $made }{ $leans ->
    [left] , nach links geneigt
    [right] , nach rechts geneigt
   *[no] { "" }
}

cut-triangles = Ein Quadrat mit einem Schnitt von Ecke zu Ecke in zwei Dreiecke schneiden{ $twice ->
        [yes] ; für vier Dreiecke ein zweites Mal quer über den ersten Schnitt schneiden, bevor die Teile bewegt werden
       *[no] { "" }
    }.
    .right = Der Schnitt läuft durch beide Ecken.
    .tip = Die lange Seite eines einmal geschnittenen Dreiecks und die kurzen Seiten eines zweimal
        geschnittenen liegen im schrägen Fadenlauf und dehnen sich. Das Quadrat vor dem Schneiden mit
        Sprühstärke bügeln und die Dreiecke so wenig wie möglich anfassen.
make-templates = Die gedruckten Schablonen der Teile auf dünnen Karton kleben oder auf Schablonenfolie
    übertragen, mit Fadenlauf, Buchstaben und Passzeichen, und auf der äußeren Linie ausschneiden.
    .right = Auf ihren Bogen gelegt, deckt jede Schablone ihre äußere Linie und nicht mehr.
use-templates = Eine Schablone auf die linke Stoffseite legen, den Fadenlauf entlang der Fäden, umfahren
    und auf der Linie schneiden. Jedes Passzeichen in der Nahtzugabe mit einem kurzen Bleistiftstrich
    markieren.{ $over ->
        [yes] { " " }Wo die Tabelle es sagt, die Schablone wenden: Diese Teile sind Spiegelbilder.
       *[no] { "" }
    }
    .right = Die Teile liegen Kante auf Kante.
