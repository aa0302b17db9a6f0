# Die Runden eines Medaillons, die aus Blöcken bestehen.

order-rounds = Der Quilt wächst von der Mitte nach außen: { $rounds }. Nach jeder Runde bügeln und messen.
    .caption = { $size }: die Runden auseinandergezogen, von der Mitte an nummeriert.
nth-round = { ORDINAL($number) } { $what }
round-of-fabric = Rand aus { $fabric }, { $width } breit
round-of-blocks = { $count } zu { $side } ({ $blocks })

lay-round = Die { ORDINAL($round) } Runde besteht aus Blöcken. Rings um das Top auslegen, gedreht wie im Bild, und zu vier Streifen
    zusammennähen.{ $alternate ->
        [yes] { " " }Blöcke einer Art, die entgegengesetzt gebügelt sind, abwechseln.
       *[no] { "" }
    }
    .caption = { $size }: die { ORDINAL($round) } Runde, Streifen für Streifen.
sew-round-strip = **{ $which ->
    [left] Links
    [right] Rechts
    [sides] Links und rechts
    [top] Oben
    [bottom] Unten
   *[ends] Oben und unten
}**: { $parts }{ $seams ->
    [0] { "" }
   *[other] , Nähte { $press } gebügelt
}.{ $corners ->
    [yes] { " " }Die Nähte neben den Eckblöcken zur Mitte des Streifens bügeln: sie greifen in die Nähte der Seiten.
   *[no] { "" }
}
    .right = { $which ->
        [left] Die Seitenstreifen messen { $strip }.
        [sides] Die Seitenstreifen messen { $strip }.
        [top] Die Streifen für oben und unten messen { $strip }.
        [ends] Die Streifen für oben und unten messen { $strip }.
       *[other] { "" }
    }
pin-round = { $sides ->
    [sides] Den linken Streifen an die linke Seite des Tops stecken und den rechten an die rechte, zuerst Enden und Mitten, dann
        dazwischen.
   *[ends] Die Streifen oben und unten ebenso stecken, die Naht neben jedem Eckblock in die Naht der Seite greifend.
}
sew-round = { $sides ->
    [sides] Kleine Unterschiede einhalten und nähen.
   *[ends] Nähen.
}
press-round = Nach außen bügeln.
    .right = { $sides ->
        [sides] { "" }
       *[ends] Das Top misst { $top }.
    }
