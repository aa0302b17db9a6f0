# Teile zu Einheiten und Blöcken nähen.

chapter-piecing = { $what ->
        [ground] Den Hintergrund nähen
        [both] Hintergründe und Blöcke nähen
       *[blocks] Die Blöcke nähen
    }
    .lead = Mit { $seam } Nahtzugabe und einer Stichlänge von etwa { $stitch } nähen, und jede Naht bügeln, bevor eine andere sie
        kreuzt.
piecing-block = { $block } nähen
piecing-of = { $title }: { $size }
piecing-units = Blöcke werden aus Einheiten genäht. Jede Art hat in ihrer Größe eine Nummer; alle einer Art nähen, bevor die nächste
    kommt.
piecing-chain = Von einer Art zuerst eine Einheit nähen und messen. Die übrigen dann als Kette nähen: das nächste Paar unter den Fuß
    schieben, sobald das vorige ihn verlässt, und am Ende auseinanderschneiden.
finishes = { CAPITAL($the) }: fertig { $side } im Quadrat, { TIMES($count) } nähen.
traditional = Überlieferter Name: *{ $name }*.
also-takes = Dazu kommen, schon genäht: { $units }.
units-table = { CAPITAL($the) }: Anzahl und Maß der Einheiten
unit-cell = { FIGURES($count) } zu { $size }
unit-cell-count = { FIGURES($count) }
piecing-sizes = Die Größen werden gleich genäht; ihre Zahlen stehen in der Tabelle. Ein Schritt, der nur für manche Größen gilt, sagt
    es. Die Bilder zeigen { $size }.
block-variants = Wo ein Block am Rand des Kissens liegt, ist er dort um die breitere Naht größer; daher gibt es mehrere Arten, jede
    mit eigener Nummer.
block-shown = { CAPITAL($the) } mit den Buchstaben seiner Teile.

for-unit = Für **{ $name }**
for-unit-of = Für **{ $name }** ({ -trade })
for-the = Für { $name }
for-none = { "" }
-trade = { $trade ->
    [half-square-triangle] Quadrat aus 2 Dreiecken
    [hourglass] Sanduhr
    [flying-geese-unit] Fluggans
    [square-in-a-square] Quadrat im Quadrat
    [four-patch] Vierer
    [nine-patch] Neuner
   *[unit] Einheit
}

lay-out-unit = { $opener } { $parts } { $how ->
        [across] nebeneinander
        [down] untereinander
        [slant] an ihren schrägen Kanten
        [curve] an der Rundung
       *[picture] wie im Bild
    } auslegen{ $turned ->
        [yes] , gedreht wie im Bild
       *[no] { "" }
    }.{ $choose ->
        [yes] { " " }So wählen, dass die Nahtzugaben von Nachbarn entgegengesetzt liegen.
       *[no] { "" }
    }
    .caption = { CAPITAL($name) }: { $stage ->
        [pin] die Rundung eingeschnitten und gesteckt.
        [set-in] die Ecke eingesetzt.
       *[joined] ausgelegt und verbunden.
    }
-put = { $first-differs ->
    [yes] { -together }
   *[no] { $first ->
        [yes] { -together }
       *[no] { "" }
    }
}
-together = { $several ->
    [yes] Die ersten beiden rechts auf rechts legen, Kanten bündig.{ " " }
   *[no] Rechts auf rechts legen, Kanten bündig.{ " " }
}
pin-unit = { -put }Stecken, wo Nähte aufeinandertreffen.
pin-unit-both-sides = { -put }Einige Nahtzugaben, die hier aufeinandertreffen, liegen in dieselbe Richtung und greifen nicht
    ineinander: auf beiden Seiten jeder Kreuzung stecken.
pin-curve = { $over } hat die Kante, die nach innen gebogen ist, { $under } die nach außen gebogene. Die nach innen gebogene Kante
    etwa alle { $interval } einschneiden, nicht tiefer als { $depth }. { $over } rechts auf rechts auf { $under } legen,
    Passzeichen auf Passzeichen. Zuerst die Mitte der Rundung stecken, dann beide Enden mit bündigen geraden Kanten, dann jedes
    Passzeichen dazwischen und überall, wo die Kanten klaffen.
    .right = Die Kanten liegen entlang der ganzen Rundung bündig. Flach liegen die Teile erst, wenn die Naht geöffnet ist.
sew-unit-straight = { $pinned ->
    [yes] { $several ->
        [yes] Nähen, dann das nächste ebenso ansetzen, bis alle verbunden sind.
       *[no] Nähen.
    }
   *[no] { $several ->
        [yes] Die ersten beiden rechts auf rechts legen, Kanten bündig, und nähen, dann das nächste ebenso ansetzen, bis alle
            verbunden sind.
       *[no] Rechts auf rechts legen, Kanten bündig, und nähen.
    }
}
sew-unit-straight-again = { $pinned ->
    [yes] Nähen.
   *[no] { $several ->
        [yes] In dieser Reihenfolge nähen.
       *[no] Zusammennähen.
    }
}
sew-unit-half = Rechts auf rechts legen, die langen Kanten bündig, und entlang der langen Kante nähen. Sie läuft im Schrägschnitt:
    die Maschine transportieren lassen, nicht ziehen.
sew-unit-half-again = Entlang der langen Kante nähen, ohne zu ziehen, wie bei { $before }.
sew-unit-slant = { $several ->
        [yes] Die ersten beiden
       *[no] Beide
    } rechts auf rechts legen, die Kanten der Naht bündig. An den Enden der Naht stehen Spitzen über: die Teile so verschieben, dass
    sich ihre Kanten genau { $seam } vom Rand kreuzen, wo die Naht beginnt und endet. Nähen{ $several ->
        [yes] , dann das nächste ebenso ansetzen, bis alle verbunden sind
       *[no] { "" }
    }, und die Spitzen abschneiden.
sew-unit-slant-again = Mit versetzten Spitzen nähen wie bei { $before }, und die Spitzen abschneiden.
sew-unit-curve = Langsam nähen, { $over } oben, und jede Nadel herausziehen, bevor die Maschine sie erreicht. Mit der Nadel im Stoff
    anhalten und den Nähfuß heben, um den Stoff glatt zu streichen, bevor er Falten wirft.
    .caption = { CAPITAL($name) }: genäht und gebügelt.
sew-unit-curve-again = Die Rundung einschneiden, stecken und nähen wie bei { $before }.
sew-unit-set-in = Auf der linken Seite die Ecken der Nähte markieren, { $seam } von beiden Kanten. Die ersten beiden Teile von der
    Kante bis zur Markierung zusammennähen und dort verriegeln, sodass die letzten { $seam } offen bleiben. Das nächste Teil
    einsetzen: eine Seite von der Kante bis zur Markierung nähen, die Nadel im Stoff, den Nähfuß heben, den Stoff so drehen,
    dass die nächsten Kanten bündig liegen, und weiternähen{ $pivots ->
        [0] { "" }
        [one] { "" }
       *[other] , { TIMES($pivots) } in dieser Einheit
    }.
sew-unit-set-in-again = Von Markierung zu Markierung nähen und die Ecken einsetzen wie bei { $before }.

-press = { $seams ->
    [one] Die Naht
   *[other] Die Nähte
} { $way } bügeln.
-make = { $count-differs ->
    [yes] { " " }So viele nähen, wie die Tabelle sagt.
   *[no] { $count ->
        [0] { "" }
        [one] { "" }
       *[other] { " " }Insgesamt { $count } nähen.
    }
}{ $shared-differs ->
    [yes] { "" }
   *[no] { $shared }
}
-size = { $size-differs ->
    [yes] das Maß in der Tabelle
   *[no] { $size }
}
-made = { $box ->
    [yes] { CAPITAL($the) } misst { $size-differs ->
        [yes] so viel, wie die Tabelle sagt
       *[no] { $size }
    }.{ " " }
   *[no] { "" }
}{ $later ->
    [yes] Das Zuschneiden kommt nach dem Applizieren.
   *[no] { "" }
}
shared = { " " }Davon { $blocks }.
shared-by = { $count } für { PLURAL($block) }
press-unit = { -press }
press-unit-made = { -press }{ -make }
    .right = { -made }
trim-unit-added = Teile sind auf { $rounding } aufgerundet, und hier summiert sich das: { $the } auf { -size }
    zurückschneiden, auf jeder Seite gleich viel.{ -make }
    .right = { -made }
trim-unit-half = Auf { -size } zurückschneiden, die 45-Grad-Linie des Lineals auf der Naht, sodass die Naht in zwei Ecken
    endet.{ -make }
    .right = { -made }
trim-unit-points = Auf { -size } zurückschneiden und dabei hinter jeder Spitze am Rand { $seam } stehen lassen.{ -make }
    .right = { -made }
trim-unit-again = Auf { -size } zurückschneiden wie { $before }.{ -make }
    .right = { -made }
