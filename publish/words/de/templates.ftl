# Die Schablonen in Originalgröße: Blätter drucken, lesen und verbinden.

chapter-templates = Schablonen
    .lead = Originalgröße. Mit 100 % drucken und auf jedem Blatt das Quadrat prüfen, bevor das Papier geschnitten wird.
templates-of = Schablonen: { $size }

print-sheets = Die { $sheets ->
        [both] Schablonenblätter und Nähvorlagen
        [foundation] Nähvorlagen
       *[template] Schablonenblätter
    }{ $your ->
        [yes] { " " }der gewählten Größe
       *[no] { "" }
    } einseitig mit **100 %** oder *tatsächlicher Größe* drucken. *An Seite anpassen*, *Verkleinern* und jede andere Skalierung
    ausschalten.
    .tip = Zuerst ein Blatt drucken und prüfen, dann die übrigen.
check-sheets = Auf jedem Blatt das Prüfquadrat mit dem Lineal messen, mit dem geschnitten wird. Ein Quadrat hat { SHORT($small) } Seitenlänge,
    das andere { $large }.
    .right = Beide Quadrate stimmen in beiden Richtungen. Wenn nicht, die Einstellungen des Druckers ändern und neu drucken.
    .caption = Das Prüfquadrat, in beiden Richtungen gemessen.

template-lines = Die durchgezogene Linie ist die fertige Kante, die gestrichelte Linie die Schnittkante.
template-raw-edge = Ein Motiv mit offener Kante hat nur eine Linie, seine Kante.
template-pieces = Eine Schablone für Teile enthält die Nahtzugabe: an der äußeren Linie ausschneiden; die innere Linie ist die Naht. Kurze
    Striche über eine Kante sind Passzeichen, der Pfeil ist der Fadenlauf.
template-mirrored-foundations = Eine Nähvorlage ist als Spiegelbild des fertigen Blocks gedruckt: durchgezogene Linien sind Nahtlinien, die
    gestrichelte ist die Schnittlinie. Der Kopf eines Blatts sagt, wie oft es gedruckt wird, wenn nicht einmal; ein Blatt kann mehrere
    Exemplare enthalten.
template-sheets-joined = Schablonen einer Größe teilen sich Blätter, wo sie passen; jede ist benannt. Wo der Kopf eines Blatts einen kleinen Plan
    zeigt, werden seine Blätter verbunden: ein Blatt an der zum Schneiden markierten Linie schneiden, seine nummerierten Rauten an die des
    Nachbarn anlegen und beide in der Reihenfolge des Plans zusammenkleben.

template-motif = { $part ->
    [wedge] Keilschablone
   *[whole] Ganze Schablone
} ({ $motif }) für **{ $size }**: das fertige Motiv hat { $span } Durchmesser.{ $twice ->
    [yes] { " " }Zweimal drucken.
   *[no] { "" }
}
template-piece = Schablone **{ $letter }** für **{ $size }**: { $count }-mal{ $over ->
    [0] { "" }
   *[other] { " " }und { $over }-mal gewendet
} aus { $fabric } schneiden.{ $half ->
    [yes] { " " }Sie ist als Hälfte gedruckt: ein Blatt Papier falten, die strichpunktierte Linie an den Bruch legen, den Rest
        durchzeichnen, beide Lagen auf der Schnittlinie schneiden und das Papier öffnen.
   *[no] { "" }
}{ $again ->
    [yes] { " " }Sie ist dieselbe wie bei { $first }: deren Blätter verwenden.
   *[no] { "" }
}
template-foundation = Nähvorlage für Abschnitt { $letter } ({ $block }) für **{ $size }**: gebraucht werden { $copies }.
template-foundations-again = Die Nähvorlagen für **{ $size }** sind dieselben wie bei { $first }: gebraucht werden { $each }, von deren
    Blättern.
copies-of-sections = { $copies } von { $sections ->
    [1] Abschnitt
   *[other] Abschnitt
} { $letters } ({ $block })
