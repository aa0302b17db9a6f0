# Ein Motiv auf seinen Hintergrund legen; davor seine Kante vorbereiten.

chapter-preparing-the-edge = Die Kante vorbereiten
    .lead = Die Kante vor dem Nähen über eine Papierform schlagen und bügeln.

cut-paper-shape-folded = { -whose }Gefrierpapier so groß wie das Motivquadrat schneiden, { $paper }, und wie den Stoff auf { $folds }
    falten, beschichtete Seite innen. Nahe den offenen Kanten heften. Die kleinere Keilschablone auf die Brüche legen, umfahren
    und auf dieser Linie schneiden.
    .right = Geöffnet ist das Papier das fertige Motiv ohne Einschlag.
    .tip = Das Motiv ist sein eigenes Spiegelbild: jede Seite des Papiers darf oben liegen.
cut-paper-shape-traced = { -whose }Die verbundene Schablone mit der bedruckten Seite nach unten an ein helles Fenster oder auf einen
    Leuchttisch legen und das Gefrierpapier darüber, matte Seite oben. Die durchgezogene Linie durchzeichnen und auf ihr
    schneiden.
    .right = Von der matten Seite gesehen ist das Papier das Spiegelbild des Motivs: es liegt auf der linken Seite des Stoffs.
iron-paper = Das Motiv mit der linken Seite nach oben legen und die Papierform darauf, beschichtete Seite unten, Mitten und
    Bruchlinien aufeinander. Das Papier von der Mitte nach außen aufbügeln.
    .right = Rings um das Papier{ $holes ->
        [yes] { " " }und in jedem Durchbruch
       *[no] { "" }
    } ist ein Streifen Stoff von { $under } zu sehen.
clip-edge = Innenecken bis auf einen Faden an das Papier einschneiden und Innenrundungen einige Male. Außenrundungen nicht
    einschneiden.
press-edge = Ein kurzes Stück des Einschlags mit flüssiger Stärke bestreichen, mit einem Holzstäbchen über das Papier schlagen und mit
    der Spitze des Eisens trocken bügeln. Zuerst Innenecken, dann Rundungen, zuletzt Spitzen: die Spitze gerade herunter, dann
    die eine, dann die andere Seite.
    .right = Der Umbruch folgt dem Papier, an Rundungen glatt.
    .caution = Eisen und feuchte Stärke sind heiß: das Stäbchen nehmen, nicht die Finger.
peel-paper = Das Motiv flach abkühlen lassen. Die umgeschlagenen Kanten gerade so weit anheben, dass sich das Papier herausziehen
    lässt, und von hinten noch einmal bügeln.
    .tip = Das Papier lässt sich mehrmals aufbügeln: für das nächste Motiv aufheben.

chapter-placing = Das Motiv auf den Hintergrund legen
    .lead = Bruchlinien aufeinander ausrichten.

block-named = Block „{ $name }“
crease-ground = { $ground ->
        [whole] Hintergrund { $letter }{ $wholes ->
            [yes] { -of-block }
           *[no] { "" }
        }
       *[pieced] Den genähten Hintergrund{ $pieceds ->
            [yes] { -of-block }
           *[no] { "" }
        }
    } { $seams ->
        [both] in beiden Diagonalen
        [one] quer zur Naht zur Hälfte und in beiden Diagonalen
       *[none] in beiden Richtungen zur Hälfte und in beiden Diagonalen
    } falten und jeden Bruch mit dem Fingernagel kniffen, bevor er geöffnet wird.{ $seams ->
        [both] { " " }Die Nähte ersetzen die Bruchlinien der Hälften.
        [one] { " " }Die Naht ersetzt die andere Bruchlinie der Hälfte.
       *[none] { "" }
    }
    .right = Alle Linien kreuzen sich in einem Punkt: der Mitte des Hintergrunds.
    .caption = Der Hintergrund mit seinen Hilfslinien.
-of-block = { " " }({ $block })
centre-motif = Den Hintergrund mit der rechten Seite nach oben legen und das Motiv mit der rechten Seite nach oben darauf. Eine Nadel
    durch beide Mitten stecken und das Motiv absenken.
    .right = Die Nadel steht senkrecht.
align-motif = { -align }
    .right = Der Hintergrund ist gleichmäßig zu sehen. Im fertigen Block liegen die Spitzen innerhalb der Kante, Abstand
        { $clear }.
    .caption = { $then ->
        [fused] Das Motiv, auf seinen Hilfslinien zentriert.
       *[basted] Das Motiv, zentriert und geheftet.
    }
align-motif-named = { "" }**{ CAPITAL($motif) }.** { -align }
    .right = Der Hintergrund ist gleichmäßig zu sehen. Im fertigen Block liegen die Spitzen innerhalb der Kante, Abstand
        { $clear }.
    .caption = { $then ->
        [fused] Das Motiv, auf seinen Hilfslinien zentriert.
       *[basted] Das Motiv, zentriert und geheftet.
    }
-align = { $guides ->
        [both] Die geraden { -creases } auf die Bruchlinien der Hälften und die diagonalen { -creases } auf die diagonalen
            Bruchlinien bringen.
        [half] Die geraden { -creases } auf die Bruchlinien der Hälften bringen.
        [diagonal] Die { -creases } auf die Diagonalen bringen.
        [level] { -one-fold } waagerechte Bruchlinie bringen.
        [upright] { -one-fold } senkrechte Bruchlinie bringen.
        [fused] Das Motiv drehen, bis es gleichmäßig zwischen den Bruchlinien liegt, wie im Bild.
       *[none] Das Motiv drehen, bis seine { -creases } gleichmäßig zwischen den Bruchlinien liegen, wie im Bild.
    } Von der Mitte nach außen glatt streichen und jeden Arm in seiner Mitte feststecken.
-creases = { $creases ->
    [folds] Brüche
   *[creases] Kniffe
}
-one-fold = Den Bruch, der gerade durch die Mitte läuft, auf die
baste-motif = Mit langen Stichen in Kontrastfarbe heften, von der Mitte nach außen durch jeden Arm, { $inside } innerhalb der { $edge ->
        [pressed] gebügelten Kante
       *[raw] offenen Kante
    }. Die Nadeln dabei entfernen.
    .right = Den Hintergrund an einer Ecke anheben: das Motiv verrutscht nicht.
baste-arms = Schmale Arme einmal in ihrer Mitte heften.
