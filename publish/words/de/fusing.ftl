# Ein Motiv aufbügeln und seine offene Kante übernähen.

chapter-fusing = Das Motiv aufbügeln und übernähen
    .lead = Haftvlies und eine Naht halten das Motiv; seine Kante wird nicht eingeschlagen.

squares-of-web = { $count ->
    [one] 1 Quadrat
   *[other] { $count } Quadrate
} von { $side }
letter-of = { $letter } aus { $fabric }

cut-web = Aus dem Haftvlies { $squares } schneiden, ohne es scharf zu knicken.
    .right = Papier und Haftschicht sind noch ein Blatt.
    .tip = Aus Stoff, der aufgebügelt wird, die Appretur auswaschen, und keinen Weichspüler verwenden.
join-web = Wo ein Quadrat breiter ist als die Rolle, Bahnen Kante an Kante legen, ohne Überlappung, und auf der Papierseite
    zusammenkleben.
cut-web-length = Aus dem Haftvlies eine Länge von { $length } schneiden, ohne es scharf zu knicken. { $motifs ->
        [one] Darauf liegt das Motiv wie im Plan: vor dem Durchzeichnen seine Mitte markieren.
       *[other] Darauf liegen die { $motifs } Motive nebeneinander wie im Plan, mindestens { $apart } auseinander: vor dem
            Durchzeichnen die Mitte von jedem markieren.
    }
    .right = Papier und Haftschicht sind noch ein Blatt, mit Platz für jedes Motiv.
    .tip = Aus Stoff, der aufgebügelt wird, die Appretur auswaschen, und keinen Weichspüler verwenden.
    .caption = { $size }: die Papierseite des Haftvlieses.

trace-web-wedges = { -whose }Auf der Papierseite des Haftvlieses die Mitte markieren und von dort eine Bleistiftlinie zur Mitte einer
    Seite ziehen. Die Keilschablone drucken und an ihrer Linie und ihren beiden Bruchkanten ausschneiden{ $open ->
        [yes] , den Durchbruch in der Mitte stehen lassen
       *[no] { "" }
    }. Ihre Spitze auf die Mitte und eine gerade Kante an die Bleistiftlinie legen und die Außenkante umfahren. Um die eben
    gezeichnete Kante umklappen und wieder zeichnen, bis der { ORDINAL($wedges) } Keil den Kreis schließt. Gerade Kanten nicht
    anzeichnen.{ $open ->
        [yes] { " " }Zuletzt den Durchbruch aus dem Papier schneiden und seine Kante in jeden Keil zeichnen.
       *[no] { "" }
    }
    .right = Alle { $wedges } Keile treffen sich in der Mitte und schließen ohne Stufe aneinander an.
    .tip = Oder das Haftvlies zuerst auf das ganze Quadrat bügeln, dann falten, anzeichnen und schneiden; nie nach dem Falten
        aufbügeln. Das Motiv ist sein eigenes Spiegelbild, daher ist jede Seite richtig.
trace-web-whole = { -whose }Die Blätter der ganzen Schablone drucken und verbinden. Mit der bedruckten Seite nach unten an ein helles
    Fenster oder auf einen Leuchttisch legen und den Umriss auf die Papierseite des Haftvlieses durchzeichnen.
    .right = Der Umriss ist das Spiegelbild des Motivs auf den Bildern: er stimmt, sobald das Haftvlies auf der linken Seite des
        Stoffs ist.
rough-cut = Das Haftvlies etwa { $spare } außerhalb der Linie ausschneiden.
    .tip = Für einen weicheren Quilt das Haftvlies auch innen wegschneiden: entlang der Linie einen Streifen von { $spare }
        stehen lassen.

-cool = Flach abkühlen lassen.
-hot = Aufbügeln braucht mehr Hitze als Bügeln. Auf einer geschützten Unterlage in einem gut gelüfteten Raum arbeiten und den
    Stoff abkühlen lassen, bevor er berührt wird.
fuse-fabric = Das Motivquadrat { $squares } mit der linken Seite nach oben legen, das Haftvlies mit der Papierseite nach oben
    darauf, und aufbügeln, wie die Packung des Haftvlieses es sagt. { -cool }
    .caution = { -hot }
fuse-stretch = Das Stoffstück { $squares } mit der linken Seite nach oben legen und das Haftvlies mit der Papierseite nach oben
    darauf, wie der Zuschneideplan es zeigt. Aufbügeln, wie die Packung des Haftvlieses es sagt. { -cool }
    .caution = { -hot }
cut-out = Papier und Stoff genau auf der Linie durchschneiden{ $holes ->
        [yes] , Durchbrüche zuerst
       *[no] { "" }
    }. Den Stoff drehen, nicht das Handgelenk. Das Papier mit einer Nadel anritzen und abziehen.
    .right = Die Kante ist sauber, und die Rückseite des Motivs glänzt leicht vom Haftvlies.
fuse-ground = Das Motiv aufbügeln, wie die Packung des Haftvlieses es sagt, und das Eisen dabei von Stelle zu Stelle heben. Den
    Block abkühlen lassen, dann von hinten noch einmal bügeln.
    .right = Nirgends lässt sich die Kante mit dem Fingernagel anheben.
stitch-raw-edge = Jede Kante übernähen. Zickzackstich: { $long } lang und { $wide } breit. Schlingstich, mit der Maschine oder von
    Hand: etwa { $wide } lang. Der äußere Einstich liegt im Hintergrund, der innere im Motiv. Mit der Nadel im Stoff drehen:
    außerhalb des Motivs an Spitzen und Außenrundungen, innerhalb an Innenecken und Innenrundungen.
    .right = Die Stiche stehen rechtwinklig zur Kante und bedecken sie.
    .tip = { $stabilised ->
        [yes] { "" }
       *[no] Zieht sich der Hintergrund zusammen, Ausreißvlies unterlegen.
    }
