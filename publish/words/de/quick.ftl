# Mehrere Einheiten auf einmal. Ausführlich, wo $again no ist: das erste Mal, dass eine Größe ein Verfahren nutzt.

some-squares = { $count ->
    [one] { $count } { $shape ->
        [square] Quadrat
       *[piece] Teil
    }
   *[other] { $count } { $shape ->
        [square] Quadrate
       *[piece] Teile
    }
} { $letter } ({ $fabric })
square-called = { $shape ->
    [square] Quadrat
   *[piece] Teil
} aus { $fabric }
-opens = **{ CAPITAL($the) }{ $trade ->
    [none] { "" }
   *[other] { " " }({ -trade })
}**.
-trades = { $trade ->
    [half-square-triangle] Quadrate aus 2 Dreiecken
    [hourglass] Sanduhren
    [flying-geese-unit] Fluggänse
   *[other] Einheiten
}
-often = { $often-differs ->
    [yes] { " " }Insgesamt { TIMES($often) }.
   *[no] { $often ->
        [one] { "" }
       *[other] { " " }Insgesamt { TIMES($often) }.
    }
}
-trim = { $trim-differs ->
    [yes] das Maß in der Tabelle
   *[no] { $trim }
}
-measures-so = { $trim-differs ->
    [yes] so viel, wie die Tabelle sagt
   *[no] { $trim }
}
-have = { $made-differs ->
    [yes] Jede Einheit misst { -measures-so }.
   *[no] { $spare ->
        [0] Fertig: { $made } { -trades }.
       *[other] Fertig: { $made } { -trades }, davon { $spare } übrig.
    } Jede Einheit misst { -measures-so }.
}
-needed = { $needed-differs ->
    [yes] { " " }So viele nähen, wie die Tabelle sagt.
   *[no] { $needed ->
        [one] { "" }
       *[other] { " " }Insgesamt { $needed } nähen.
    }
}
-marked = { CAPITAL($name) }: aufeinandergelegt und genäht.
-cut = { CAPITAL($name) }: auseinandergeschnitten.
-trimmed = { CAPITAL($name) }: gebügelt und auf Maß geschnitten.
-pencil = Mit einem feinen, flach gehaltenen Bleistift zeichnen, damit die Spitze den Stoff nicht mitzieht.
-tip = { $again-differs ->
    [yes] { -pencil }
   *[no] { $again ->
        [no] { -pencil }
       *[yes] { "" }
    }
}
-second = { $seams ->
    [one] { "" }
   *[other] Jede zweite Naht vom anderen Ende her nähen: so bleibt ein Streifenset gerade.
}

triangles-sew = { -opens } Eine diagonale Linie auf die linke Seite zeichnen: { $first }. Rechts auf rechts legen auf: { $second },
    und auf beiden Seiten der Linie im Abstand von { $seam } nähen.{ -often }
    .right = Keine Stiche liegen auf der gezeichneten Linie.
    .tip = { -tip }
    .caption = { -marked }
triangles-trim = Auf den gezeichneten Linien schneiden und die Hälften öffnen. Die Naht { $way } bügeln. Jede Einheit auf { -trim }
    zurückschneiden, die 45-Grad-Linie des Lineals auf der Naht, sodass die Naht in zwei Ecken endet.
    .right = { -have }
    .caption = { -trimmed }

hourglasses-sew = { -opens } Rechts auf rechts legen: { $pairs }. Eine diagonale Linie auf die linke Seite des oberen Quadrats
    zeichnen, auf beiden Seiten im Abstand von { $seam } nähen, auf der Linie schneiden und die Hälften öffnen, die Nahtzugaben
    zur dunkleren Seite gebügelt. Noch nicht zuschneiden.{ -often }
    .right = Jedes Paar Quadrate ergibt zwei Quadrate aus zwei Dreiecken.
    .caption = { -marked }
hourglasses-cut = Zwei dieser Hälften rechts auf rechts legen, verschiedene Stoffe aufeinander, die Nähte ineinandergreifend. Die
    andere Diagonale quer zur Naht zeichnen, auf beiden Seiten im Abstand von { $seam } nähen und auf der Linie schneiden.
    .right = Die beiden Nähte jeder Einheit kreuzen sich in ihrer Mitte.
    .caption = { -cut }
hourglasses-trim = Die Einheiten öffnen und die letzte Naht { $way } bügeln. Jede auf { -trim } zurückschneiden: die Mitte dieses Maßes
    auf die Kreuzung der Nähte legen und die 45-Grad-Linie des Lineals auf eine Naht.
    .right = { -have }
    .caption = { -trimmed }

geese-sew = { -opens } Eine diagonale Linie auf die linke Seite zeichnen: { $small }. Zwei davon rechts auf rechts in
    gegenüberliegende Ecken legen ({ $large }), sodass ihre Linien eine Linie bilden und ihre Spitzen sich in der Mitte überlappen. Auf
    beiden Seiten der Linie im Abstand von { $seam } nähen.{ -often }
    .right = Die Linie läuft von Ecke zu Ecke des großen Quadrats.
    .caption = { -marked }
geese-cut = Auf der Linie schneiden und die kleinen Dreiecke nach außen bügeln. Auf jede Hälfte noch ein { $letter } auf die freie Ecke
    von { $mark } legen, die Linie zwischen den beiden kleinen Dreiecken. Auf beiden Seiten der Linie im Abstand von { $seam } nähen
    und auf der Linie schneiden.
    .right = Jedes große Quadrat hat vier Einheiten ergeben.
    .caption = { -cut }
geese-trim = Auch die letzten Dreiecke nach außen bügeln. Jede Einheit auf { -trim } zurückschneiden. Hinter der Spitze von { $mark } in
    der Mitte der langen Seite { $seam } von { $letter } stehen lassen, und die Nähte in die beiden Ecken gegenüber laufen
    lassen.
    .right = { -have }
    .caption = { -trimmed }

corners-sew = { -opens } Eine diagonale Linie auf die linke Seite zeichnen: { $squares }. { $flipped ->
        [1] Es rechts auf rechts auf die Ecke von { $base } legen, die das Bild zeigt, Kanten bündig, die Linie
        [4] Zwei davon rechts auf rechts auf gegenüberliegende Ecken von { $base } legen, Kanten bündig, die Linien
       *[other] Je eines rechts auf rechts auf jede Ecke von { $base } legen, die das Bild zeigt, Kanten bündig, die Linien
    } quer über der Ecke. Einen Faden breit außerhalb der { $flipped ->
        [1] Linie
       *[other] Linien
    } nähen, zur Ecke hin.
    .caption = { -marked }
corners-trim = Das Dreieck zur Probe umklappen: es muss bis zur Ecke reichen. Dann beide Lagen der Ecke { $seam } außerhalb der Naht
    abschneiden und das Dreieck über die Naht nach außen bügeln.{ $flipped ->
        [4] { " " }An den beiden anderen Ecken ebenso.
       *[other] { "" }
    }{ -needed }
    .right = { $needed-differs ->
        [yes] Jede Einheit
       *[no] { $needed ->
            [one] Die Einheit
           *[other] Jede Einheit
        }
    } misst { -measures-so }.
    .caption = { -trimmed }

strips-sew = { -opens } Die Streifen { $order } an ihren langen Kanten in dieser Reihenfolge rechts auf rechts zusammennähen. { $seams ->
        [one] Die Naht
       *[other] Die Nähte
    } { $way } bügeln. Insgesamt nähen: { $sets }.
    .right = Das Streifenset liegt gerade. Biegt es sich, von der rechten Seite noch einmal bügeln.
    .tip = { $again-differs ->
        [yes] { -second }
       *[no] { $again ->
            [no] { -second }
           *[yes] { "" }
        }
    }
    .caption = { -marked }
strips-cut = Bei jedem Streifenset ein Ende rechtwinklig begradigen, die Linie des Lineals auf einer Naht, und alle { $segment } quer
    durchschneiden, { $needed-differs ->
        [yes] in so viele Segmente, wie die Tabelle sagt
       *[no] insgesamt { $needed } Segmente
    }{ $each-differs ->
        [yes] { "" }
       *[no] { $often ->
            [one] { "" }
           *[other] ; jedes Set ergibt bis zu { $each }
        }
    }. Neu begradigen, sobald der Schnitt nicht mehr rechtwinklig zu den Nähten ist.
    .right = Jedes Segment misst { -measures-so }.
    .caption = { -cut }
on = { $one } auf { $other }
