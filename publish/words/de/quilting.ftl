# Lagen legen und quilten.

chapter-quilting = Lagen legen und quilten
    .lead = Legen, heften und quilten.

noun-backing-panel = { $count ->
    [one] { $count } Rückseitenbahn
   *[other] { $count } Rückseitenbahnen
}
noun-whole-panel = { $count ->
    [one] die ganze Bahn
   *[other] die { $count } ganzen Bahnen
}

sew-backing = { $panels } { $letter } aus { $fabric } nehmen: es dürfen keine Webkanten mehr daran sein.{ $split ->
        [no] { "" }
        [one] { " " }Eine davon der Länge nach in zwei Hälften schneiden, je { $half } breit; je eine Hälfte { -beside }
            { $whole } legen.
       *[last] { " " }Die letzte davon der Länge nach in zwei Hälften schneiden, je { $half } breit; je eine Hälfte { -beside }
            { $whole } legen.
    } An den langen Seiten mit { $seam } Nahtzugabe zusammennähen. { $seams ->
        [one] Die Naht
       *[other] Die Nähte
    } auseinanderbügeln.
    .right = Die Rückseite misst mindestens { $backing }, mit { $seams ->
            [one] einer { -way } Naht
           *[other] { $seams } { -ways } Nähten
        }{ $split ->
            [no] { "" }
           *[other] , keine davon in der Mitte
        }.
-beside = { $way ->
    [vertical] links und rechts neben
   *[horizontal] über und unter
}
-way = { $way ->
    [vertical] senkrechten
   *[horizontal] waagerechten
}
-ways = { $way ->
    [vertical] senkrechten
   *[horizontal] waagerechten
}

remove-paper = Alles Papier der Nähvorlagen entfernen{ $part ->
        [some] { " " }({ $sizes })
       *[all] { "" }
    }: an den Stichen entlang knicken, die Naht mit dem Daumennagel halten und das Papier abreißen, das letzte Teil zuerst. Kleine
    Reste mit einer Pinzette herausziehen.
    .right = Kein Stich ist gezogen.
press-top = Das fertige Top bügeln und auf der Rückseite lose Fäden abschneiden: dunkle Fäden scheinen durch helle Stoffe.

layer-quilt = Die Rückseite { $letter } mit der linken Seite nach oben legen, { $backing }, und flach festkleben, ohne sie zu dehnen.
    Das Vlies darüber glatt streichen, { $batting }, und das Top mit der rechten Seite nach oben mittig darauflegen.
    .right = Vlies und Rückseite sind auf jeder Seite gleichmäßig neben dem Top zu sehen, die Rückseite am weitesten.
    .tip = { $finishes ->
        [quilts] { "" }
        [pillows] Die Rückseite wird zum Futter in der Hülle: jede einfache Baumwolle genügt.
       *[mixed] Die Rückseite wird bei { $pillows } zum Futter in der Hülle: jede einfache Baumwolle genügt.
    }
    .caption = { $size }: Rückseite, Vlies und Top.

baste-quilt = Die Lagen von der Mitte nach außen heften, mit Sicherheitsnadeln oder mit langen Stichen in Reihen, höchstens { $rows }
    auseinander. Nadeln von { $edge ->
        [motif] der Kante des Motivs und von Linien
       *[lines] Linien
    } fernhalten, auf denen gequiltet wird. Lange Stiche dürfen sie kreuzen: abschneiden, sobald die Naht dort ankommt.
    .right = Die Rückseite ist glatt.
    .tip = Das Vlies am Tag davor ausbreiten, wie sein Etikett es sagt.
    .caption = Die Lagen heften, von der Mitte nach außen.

begin-quilting = Obertransportfuß, neue Nadel der Stärke 90/14 und Stichlänge etwa { $stitch }, oder eine kurze Nadel zum Quilten von
    Hand. An einem Probestück aus denselben Stoffen und Vlies ausprobieren. Immer von der Mitte nach außen arbeiten.
    .right = Die Stiche sehen auf beiden Seiten gleich aus, und die Lagen verrutschen nicht.
    .tip = An jedem Anfang beide Fäden nach oben holen, verknoten und die Enden zwischen den Lagen versenken.
anchor-quilt = { $part ->
    [some] Bei { $sizes } im
   *[all] Im
} Nahtschatten quilten, { $seams ->
    [round] zuerst die Nähte rings um die Mitte: sie halten
    [one] zuerst die Naht, die der Mitte am nächsten liegt: sie hält
   *[other] zuerst in jeder Richtung eine Naht, die der Mitte am nächsten liegt: sie halten
} die Lagen zusammen.

-area = { $area ->
    [motif] Motiv
    [border] Ränder
    [patchwork] Patchwork
   *[ground] Hintergrund
}
-area-on = { $area ->
    [motif] Das Motiv
    [border] Die Ränder
    [patchwork] Das Patchwork
   *[ground] Den Hintergrund
}
-area-full = { $area ->
    [motif] das Motiv gefüllt ist
    [border] die Ränder gefüllt sind
    [patchwork] das Patchwork gefüllt ist
   *[ground] der Hintergrund gefüllt ist
}
-apart = { $apart-differs ->
    [yes] in diesem Abstand: { $apart }
   *[no] im Abstand von { $apart }
}
quilt-area-ditch = { -area-on } im Nahtschatten quilten: an jeder Kante entlang im Hintergrund nähen, so dicht am Motiv, wie die Nadel
    kommt, ohne daraufzunähen. An engen Rundungen und schmalen Schlitzen mit Freihandfuß und versenktem Transporteur oder von
    Hand quilten.
    .right = Die Stiche sind kaum zu sehen.
quilt-area-seams = { -area-on } im Nahtschatten quilten: an jeder Naht entlang, auf der Seite, zu der die Nahtzugaben nicht gebügelt
    sind.
    .right = Die Stiche sind in der Naht kaum zu sehen.
quilt-area-echo = { -area-on } mit Echolinien quilten, { -apart }. Die erste Linie liegt so weit von der { $edge ->
        [motif] Kante des Motivs
       *[edge] Kante, der sie folgt,
    } entfernt, die nächste so weit von der ersten, und so weiter, bis { -area-full }.
    .right = Die Linien haben überall den gleichen Abstand; wo zwei Gruppen aufeinandertreffen, bilden sie eine weiche Spitze.
quilt-area-echo-motif = { -area-on } mit Echolinien quilten, { -apart }. Die erste Linie liegt so weit innerhalb der Kante, die nächste
    so weit innerhalb der ersten, solange Platz ist.
    .right = Die Linien haben überall den gleichen Abstand.
quilt-area-echo-border = { -area-on } mit Echolinien quilten, { -apart }. Die erste Linie liegt so weit außerhalb der Naht des innersten
    Rands, die nächste so weit außerhalb der ersten, ringsum bis zur Kante.
    .right = Die Linien haben ringsum den gleichen Abstand und knicken an den Ecken scharf ab.
quilt-area-parallel = { -area-on } mit { $lines ->
        [along] Linien entlang jeder Seite
        [across] Linien gerade über die Fläche
        [slant] Linien schräg über die Fläche
        [horizontal] waagerechten parallelen Linien
        [vertical] senkrechten parallelen Linien
       *[slanting] schrägen parallelen Linien
    } quilten, { -apart }. Die erste mit Kreide oder einem auswaschbaren Stift anzeichnen. Die übrigen mit dem Führungslineal des
    Nähfußes oder mit Klebeband danach ausrichten.
    .right = Die Linien sind von Kante zu Kante gerade und gleichmäßig verteilt.
quilt-area-grid = { -area-on } mit { $lines ->
        [diagonal] einem diagonalen Gitter
        [upright] einem geraden Gitter
       *[slanting] einem schrägen Gitter
    } quilten, die Linien { -apart }. In jeder Richtung die erste Linie mit Kreide oder einem auswaschbaren Stift anzeichnen. Alle
    Linien der einen Richtung nähen, dann die der anderen.
    .right = Die Quadrate schließen aneinander an, und die Rückseite hat an den Kreuzungen keine Fältchen.
quilt-area-as-desired = { -area-on } nach Wunsch quilten, die Linien so dicht, wie das Etikett des Vlieses es verlangt.
    .right = Hier ist etwa so dicht gequiltet wie anderswo, damit das Top flach liegt.

remove-basting = Die Heftfäden entfernen und die Rückseite auf Fältchen prüfen.

# Der Quiltplan.

table-quilting = Der Quiltplan
    .where = Wo
    .how = Wie
    .apart = Abstand
    .length = Länge der Linien
    .together = Zusammen
    .note = Die Längen sind die der Linien selbst, jede auf { $unit ->
        [metric] 10 cm
       *[yards] ein Viertelyard
    } gerundet.
    .caption = { $size }: die Quiltlinien.
quilted-area = { -area }
quilted-style = { $style ->
    [ditch] im Nahtschatten, neben der Kante
    [echo] Echolinien
    [parallel] parallele Linien
    [grid] Gitter
   *[as-desired] nach Wunsch
}
note-apart = Wie weit auseinander
    .label = Das Etikett des Vlieses sagt, wie weit Quiltlinien auseinander sein dürfen. Zuerst lesen.
    .made-for = Dieser Plan ist für **{ $batting }** gemacht, mit höchstens { $gap } zwischen den Linien.
    .closer = Verlangt das Vlies dichtere Linien, zwischen den gezeichneten weitere quilten.
