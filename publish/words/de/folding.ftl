# Das Quadrat eines Motivs falten, anzeichnen und schneiden: gefaltet oder flach.

the-motif = Motiv
each-motif = jedes Motiv
motif-named = Motiv „{ $name }“
some-motifs = { $count ->
    [one] 1 { $motif }
   *[other] { $count }-mal { $motif }
}
under-of = { $under } für { $motif }
noun-motif = { $count ->
    [one] { $count } Motiv
   *[other] { $count } Motive
}
noun-layer = { $count ->
    [one] { $count } Lage
   *[other] { $count } Lagen
}
noun-wedge = { $count ->
    [one] { $count } Keil
   *[other] { $count } Keile
}
    .dative = { $count ->
        [one] { $count } Keil
       *[other] { $count } Keilen
    }
# Zu welchem Motiv ein Schritt gehört, wo die Anleitung mehrere hat.
-whose = { $several ->
    [yes] **{ CAPITAL($motif) }.**{ " " }
   *[no] { "" }
}

chapter-folding = Den Stoff falten
    .lead = Falten, einen Keil schneiden, öffnen: wie bei einem Stern aus Papier.

prepare-square = { -whose }Das Motivquadrat { $letter } aus { $fabric } nehmen: { $square }. Mit heißem, trockenem Eisen bügeln und
    mit der linken Seite nach oben legen.
    .right = Es ist glatt, und seine Fäden laufen parallel zu den Kanten.
    .tip = Den Stoff vor dem Zuschneiden stärken: Feuchtigkeit und Hitze verziehen ein geschnittenes Quadrat, und Dampf löst
        die Stärke.
    .caption = Das Motivquadrat, linke Seite oben.

fold-half = Das Quadrat zur Hälfte falten, rechte Seite außen, Kanten aufeinander. Zum Bruch hin glatt streichen und bügeln.
    .right = Es liegen { $layers } übereinander, und der Bruch folgt einem Faden. Von hier an müssen alle Brüche genau
        aufeinanderliegen.
    .caption = Zur Hälfte gefaltet: { $layers }.
fold-quarter = In der anderen Richtung zur Hälfte falten, den ersten Bruch auf sich selbst, und bügeln. Die Ecke ohne offene
    Kante ist die Mitte des Motivs.
    .right = Es liegen { $layers } übereinander. Zwei Kanten sind Brüche, zwei sind offen.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Zum Viertel gefaltet: { $layers }.
    }
fold-diagonal = Diagonal falten, von der Mitte zur gegenüberliegenden Ecke, die Brüche aufeinander, und bügeln.
    .right = Es liegen { $layers } zu einem Dreieck übereinander.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Diagonal gefaltet: { $layers }.
    }
fold-third = Die Mitte des Bruchs mit einem Kniff markieren: die Mitte des Motivs. Ein Papier mit seiner Mitte darauf und einer
    Bruchkante an den Bruch legen und entlang der anderen Bruchkante mit dem Stift eine Linie ziehen. Dieses Drittel auf der
    Linie nach oben und herüber falten und bügeln.
    .right = Das gefaltete Drittel bedeckt das mittlere Drittel genau.
    .caption = Ein Drittel auf der Linie herübergefaltet.
fold-last-third = Das letzte Drittel ebenso obenauf falten, Brüche aufeinander, und bügeln.
    .right = Es liegen { $layers } zu einem Keil übereinander. Beide Kanten, die zur Mitte laufen, sind Brüche.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Zum Drittel gefaltet: { $layers }.
    }
fold-again = Den Keil von der Mitte aus noch einmal zur Hälfte falten, Bruch auf Bruch: der Winkel beträgt dort jetzt { $folds ->
        [12] 30
       *[16] 22,5
    } Grad. Kräftig bügeln.
    .right = Es liegen { $layers } zu einem schmalen Keil übereinander.
    .caption = { -folded-up }
-folded-up = Auf { $folds } gefaltet: der einfache Bruch, der mehrfache Bruch, die offenen Kanten und die Mitte.

mark-centre = Die Mitte mit einem Bleistiftpunkt markieren.
    .right = Die neue Kante ist der **einfache Bruch**. Die andere gefaltete Kante{ $grain ->
            [straight] , im geraden Fadenlauf,
            [bias] , im Schrägschnitt,
           *[off-grain] { "" }
        } ist der **mehrfache Bruch**. Beide treffen sich in der **Mitte**.
    .tip = { $thick ->
        [yes] { CAPITAL($layers) } sind so viele, wie eine Schere sauber schneidet: feine, dicht gewebte Baumwolle wählen und
            jeden Bruch kräftig bügeln.
       *[no] { "" }
    }

chapter-marking-and-cutting-the-motif = Das Motiv anzeichnen und schneiden
    .lead = { $folded ->
        [yes] Genau anzeichnen und schneiden: jede Lage wiederholt, was auf die oberste gezeichnet ist.
       *[no] Genau anzeichnen und schneiden: die Kante wird auf der gezeichneten Linie eingeschlagen.
    }

print-templates = { -whose }{ $kinds ->
        [one] Die Keilschablone{ -your-size }
       *[other] Jede Keilschablone{ -your-size }
    } zweimal drucken und beide Papiere an ihren Bruchkanten bis genau in die Mitte schneiden.
cut-templates = { $start ->
    [here] { "" }
   *[before] { -whose }
}Ein Papier auf der gestrichelten Schnittlinie schneiden, das andere auf der durchgezogenen Linie.
-your-size = { $your ->
    [yes] { " " }der gewählten Größe
   *[no] { "" }
}
align-template = Das größere Papier mit der bedruckten Seite nach oben auf den Keil legen: { $end ->
        [open] sein schmales Ende an
       *[point] seine Spitze auf
    } die Mitte, *einfacher Bruch* an den einfachen Bruch, *mehrfacher Bruch* an den mehrfachen Bruch. Feststecken.
    .right = Seine geraden Kanten liegen genau auf den Brüchen; hinter der offenen Kante ist Stoff zu sehen.
    .tip = { $turns ->
        [yes] Liegen die Brüche andersherum, den Stoff wenden, nicht das Papier.
       *[no] { "" }
    }
    .caption = Die Schablone auf dem Keil, Kante an Bruch.
mark-cut-line = Das Papier mit einem Stoffstift leicht gestrichelt umfahren: die **Schnittlinie**. Die Brüche nicht anzeichnen.
    .right = Die gestrichelte Linie läuft von Bruch zu Bruch, nie an einem entlang.
    .tip = Kreide oder einen weißen Stift nehmen und vorher prüfen: die Linie muss das Bügeln überstehen und sich auswaschen
        lassen.
mark-finished-line = Das kleinere Papier an dieselbe Stelle legen und mit durchgezogener Linie umfahren: die **Fertiglinie**, auf
    der die Kante umgeschlagen wird.
    .right = Die Linien laufen im Abstand von { $under }: dieser Streifen ist der Einschlag.
    .tip = Beide Papiere aufheben.
    .caption = Fertiglinie durchgezogen, Schnittlinie gestrichelt.

baste-wedge = Durch alle { $layers } mit einem Faden in Kontrastfarbe heften, { $inside } innerhalb der Fertiglinie; wo ein Arm
    für zwei Reihen zu schmal ist, einmal in seiner Mitte. Einmal durch den Teil heften, der wegfällt. Lange Enden ohne
    Knoten lassen.
    .right = Die Lagen verrutschen beim Reiben nicht.
    .tip = Oder den längsten Maschinenstich nehmen, von der Spitze nach außen: ein heißes Eisen schließt die Löcher später.
    .caption = Der angezeichnete Keil, durch alle Lagen geheftet.
cut-wedge = Die gestrichelte Linie durch alle { $layers } schneiden: eine größere scharfe Schere für die langen Kanten, eine
    kleine für { $fine ->
        [openings] Ecken und Durchbrüche
       *[corners] Ecken
    }. Den Pfeilen folgen: { $order ->
        [first-last] Durchbrüche zuerst, solange die Lagen ringsum halten, dann { -outer }, zuletzt der Durchbruch in der
            Mitte
        [first] Durchbrüche zuerst, solange die Lagen ringsum halten, dann { -outer }
        [last] { -outer }, zuletzt der Durchbruch in der Mitte
       *[outer] { -outer }
    }. Den Stoff drehen, nicht das Handgelenk.
    .right = Umgedreht sieht der Keil genauso aus.
    .tip = Einen Bruch im gezeichneten Winkel überqueren: rechtwinklig öffnet sich die Kante glatt, in jedem anderen Winkel
        zu einer Spitze.
    .caution = Nicht an einem Bruch entlang schneiden{ $whole ->
        [yes] : die ungeschnittenen Brüche halten das Motiv zusammen.
       *[no] , an dem das Papier lag.
    }
    .caption = Wo der Schnitt beginnt und wohin er läuft.
-outer = die Außenkante vom mehrfachen zum einfachen Bruch

open-motif = Die Heftfäden entfernen. Das Motiv ohne Ziehen Bruch für Bruch öffnen und von der Mitte aus glatt
    streichen.{ $pieces ->
        [one] { "" }
       *[other] { " " }Es löst sich in { $pieces } Stücken: sie an ihren Plätzen lassen.
    } Nicht bügeln: die Bruchlinien werden gebraucht, und Hitze kann die Markierungen fixieren.
    .right = Das Motiv liegt flach, alle { $wedges } sind gleich.
    .tip = Die Reste für Proben aufheben.
    .caption = Das Motiv öffnen.
mark-wedges = Nur der oberste Keil ist angezeichnet. Bei den übrigen { DATIVE($wedges) } überall gleich breit einschlagen oder das
    kleinere Papier auf jedem umfahren, auf jedem zweiten Keil mit der bedruckten Seite nach unten.

make-motifs = { $folded ->
    [yes] Die übrigen nacheinander falten, anzeichnen, heften und schneiden
   *[no] Die übrigen nacheinander durchzeichnen und schneiden
}, insgesamt: { $motifs }.

join-template = { -whose }Die Blätter der ganzen Schablone{ -your-size } drucken, an der Markierung schneiden und nach Buchstaben und
    nummerierten Rauten zusammenkleben.
    .right = Die Linien laufen ohne Stufe über jeden Stoß.
trace-motif = Das Motivquadrat { $letter } aus { $fabric } bügeln und in beiden Richtungen zur Hälfte kniffen. Die Schablone an ein
    helles Fenster oder auf einen Leuchttisch kleben. Das Quadrat mit der rechten Seite nach oben darüberlegen, die Kniffe
    auf ihren Mittellinien, und die Fertiglinie durchgezogen, die Schnittlinie gestrichelt durchzeichnen.
    .right = Die Linien laufen im Abstand von { $under }.
    .tip = { $turning ->
        [yes] Dieses Motiv hat keine Spiegellinie und lässt sich nicht gefaltet schneiden.
       *[no] { "" }
    }
cut-flat = Die gestrichelte Linie mit einer scharfen Schere schneiden{ $holes ->
        [yes] , Durchbrüche zuerst
       *[no] { "" }
    }, und Ecken mit einer kleinen. Den Stoff drehen, nicht das Handgelenk.
    .right = Das Motiv ist in { $pieces ->
            [one] einem Stück
           *[other] { $pieces } Stücken
        }, die durchgezogene Linie ringsum zu sehen.
