# Blöcke zu Reihen nähen, und Reihen zur Mitte des Tops.

chapter-assembling = Das Top zusammensetzen
    .lead = { $trimmed ->
        [yes] Zugeschnittene Blöcke
       *[no] Blöcke
    } gleicher Größe passen ohne Einhalten aneinander. Rechts auf rechts nähen.

sashing-strips = lange Zwischenstreifen

lay-out = { $lines ->
        [one] Den Block
        [row] { $blocks } in einer Reihe
        [column] { $blocks } in einer Spalte
       *[both] { $blocks } in { $rows } zu je { DATIVE($columns) }
    }{ $between } auslegen{ $check ->
        [kinds] , jede Art dort, wo das Bild sie zeigt
        [turned] , gedreht wie im Bild
       *[none] { "" }
    }.{ $lying }{ $number ->
        [yes] { " " }Die Reihen von oben nummerieren.
       *[no] { "" }
    }
    .caption = { $size }: die Reihen, von oben nummeriert.
-where = { $where ->
    [around] ringsum
    [both] dazwischen und ringsum
   *[between] dazwischen
}
with-sashing = , mit Zwischenstreifen aus { $fabric } { -where },
with-cornerstones = , mit Zwischenstreifen aus { $fabric } { -where } und Eckquadraten aus { $stones }, wo die Streifen
    zusammentreffen,
lying = { " " }{ CAPITAL($which) }; die übrigen sind andersherum gebügelt.
blocks-lie = { PLURAL($name) }, die { $way } gebügelt sind, liegen an { $places }
places = { $many ->
    [one] Reihe
   *[other] Reihe
} { $rows }, { $count ->
    [one] Platz
   *[other] Platz
} { $columns }

mark-strips = Auf jedem langen Streifen markieren, wo die Nähte der Reihe darüber enden, damit die Reihe darunter in
    gleicher Linie weiterläuft.
pin-seams = { $what ->
    [rows] An jeder Kreuzung stecken: dort liegen die Nahtzugaben entgegengesetzt und greifen ineinander.
   *[parts] Überall stecken, wo Nähte aufeinandertreffen.
}
sew-parts = { CAPITAL($what) }: { $those } { $way ->
    [down] von oben nach unten
   *[across] nebeneinander
} zusammennähen.
press-seams = Die { $seams ->
        [one] Naht
       *[other] Nähte
    } { $way } bügeln.
    .right = { CAPITAL($measures) } misst { $size }.{ $crossing ->
        [yes] { " " }Die Nähte treffen aufeinander.
       *[no] { "" }
    }

# Auf der Spitze.

lay-out-on-point = { $blocks ->
        [one] Den Block
       *[other] Die { $blocks }
    } auf die Spitze gestellt auslegen, { $between ->
        [sashing] mit Zwischenstreifen dazwischen,
       *[none] dazu
    } { $sides ->
        [0] { "" }
       *[other] { $sides } entlang der Kanten und
    } { $corners } an den Ecken.{ $rows ->
        [one] { "" }
       *[other] { " " }Die { $rows } von der rechten oberen Ecke an nummerieren.
    }
    .right = { $sides ->
        [0] Der rechte Winkel jedes Dreiecks zeigt nach außen.
       *[other] Die lange Seite jedes Seitendreiecks liegt an der Außenkante: sie läuft im geraden Fadenlauf und
            bewahrt die Kante vor dem Ausdehnen.
    }
    .caption = { $size }: die Diagonalreihen, auseinandergezogen und nummeriert.
turn-layout = { $rows ->
        [one] Die Auslage so drehen, dass der Block gerade liegt, und die Reihe von links nach rechts nähen.
       *[other] Die Auslage so drehen, dass die Reihen waagerecht liegen, Reihe 1 am weitesten entfernt, und jede Reihe von
            links nach rechts nähen.
    }{ $sides ->
        [some] { " " }Ein Seitendreieck wird mit einer kurzen Seite angenäht: sein rechter Winkel liegt an der Kante des
            Blocks, seine Spitze steht über die andere Kante hinaus.
       *[none] { "" }
    } Ein Eckdreieck wird mit der langen Seite angenäht, Mitte auf Mitte. Abschneiden, was übersteht, { $seam }
    außerhalb der Naht.
    .right = { $rows ->
        [one] Block und Dreiecke sind an beiden langen Kanten bündig.
       *[other] Blöcke und Dreiecke sind an den Kanten bündig, an die die nächste Reihe kommt.
    }
    .caution = { $sides ->
        [some] Die kurzen Seiten eines Seitendreiecks und die lange Seite eines Eckdreiecks laufen im Schrägschnitt und
            dehnen sich: sie
       *[none] Die lange Seite jedes Dreiecks läuft im Schrägschnitt und dehnt sich: sie
    } behutsam behandeln und beim Bügeln das Eisen nicht schieben.
sew-diagonal-row = { "\u000A\u000A" }**{ CAPITAL($row) }**: { $parts }.
press-diagonal-row = { "\u000A\u000A" }Die Nähte { $way } bügeln.
pin-diagonal-rows = Die Reihen der Ordnung nach rechts auf rechts legen, { $strips ->
    [yes] Streifen dazwischen: { $order }. Auf jedem Streifen markieren, wo die Nähte der Reihe davor enden, stecken, und
        die nächste Reihe so stecken, dass sie in gleicher Linie weiterläuft.
   *[no] { $first } bis { $last }. An jeder Kreuzung stecken: dort liegen die Nahtzugaben entgegengesetzt und greifen
        ineinander.
}
join-diagonal-rows = Die Reihen zusammennähen.
sew-corners = Die letzten { $corners } ansetzen: jedes zur Hälfte falten, um die Mitte seiner langen Seite zu finden, sie auf
    die Mitte der Reihe stecken und nähen.
press-diagonal-rows = Diese Nähte { $way } bügeln.
    .right = { $rows ->
        [one] Die Ecken des Blocks zeigen zur Kante.
       *[other] Die Nähte treffen aufeinander, und die Ecken der Blöcke zeigen zur Kante.
    }
square-top = { $sashing ->
        [yes] Jede Seite mit einem langen Lineal begradigen, bündig mit den langen Kanten der Dreiecke: nur abnehmen, was
            übersteht.
       *[no] Das Lineal mit seiner Linie { $edge } an die Ecken der Blöcke legen und jede Seite begradigen: { $edge }
            müssen außerhalb der Ecken bleiben, sonst schneidet die nächste Naht sie ab.
    } Die Ecken rechtwinklig schneiden.{ $rounded ->
        [yes] { " " }Die Dreiecke { $large } sind etwas zu groß zugeschnitten: hier fällt weg, was zu viel ist.
       *[no] { "" }
    }
    .right = { CAPITAL($measures) } misst { $size }.
