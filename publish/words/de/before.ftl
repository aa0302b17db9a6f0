# Vor dem Anfangen: Drucken, Nähte, Breite, Bügeln, Waschen, Zeichen.

chapter-before-you-start = Vor dem Anfangen
    .lead = Die Schritte{ $your ->
        [yes] { " " }der gewählten Größe
       *[no] { "" }
    } vor dem Zuschneiden lesen.
printing-at-full-size = In Originalgröße drucken

note-seams = Nähte
    .sew = Die Nahtzugabe beträgt { $seam }, wenn ein Schritt nichts anderes sagt. Mit Baumwollgarn Stärke 50, einer Nadel der Stärke
        80/12 und einer Stichlänge von etwa { $stitch } nähen. Knapp nähen, ein, zwei Fäden schmaler: den Rest nimmt der Umbruch
        auf.
    .test = Probe: drei Streifen von { $wide } Breite schneiden, nebeneinander zusammennähen und bügeln. Der mittlere muss { $middle }
        messen.
note-width = Nutzbare Breite
    .text = Die nutzbare Breite ist die Breite zwischen den Webkanten. Ist der Stoff schmaler, als die Materialtabelle annimmt, mehr
        kaufen.
note-pressing = Bügeln
    .text = Das Eisen aufsetzen und abheben, nicht schieben. Jede Naht zuerst flach bügeln, wie sie genäht ist, dann zur genannten Seite.
note-washing = Vorwaschen
    .shrinks = Die Längen zum Kaufen rechnen mit Eingehen beim Waschen: { $shares }. Diese Stoffe vor dem Zuschneiden waschen, trocknen
        und bügeln.
    .keeps = Die Längen zum Kaufen rechnen nicht mit Eingehen. Wer die Stoffe vorwäscht, kauft { $more } mehr je angefangene zwei { $unit ->
            [metres] Meter
           *[yards] Yards
        } und prüft danach die nutzbare Breite.
    .all = Alle Stoffe waschen oder keinen: Gewaschenes und Ungewaschenes nicht mischen.
    .colours = Kräftige Farben prüfen: mit einem feuchten weißen Tuch reiben und auf Farbe achten.
shrinks-by = { $share } bei { $fabrics }
note-sides = Die Seiten des Stoffs
    .text = Die **rechte Seite** ist die, die am fertigen Stück zu sehen ist; die **linke Seite** ist ihre Rückseite. *Rechts auf
        rechts* heißt, dass zwei rechte Seiten aufeinanderliegen.

table-signs = Abkürzungen und Zeichen
    .sign = Zeichen
    .meaning = Bedeutung
sign-inch = Zoll (Inch), 25,4 Millimeter
sign-yard = Yard, 36 Zoll
sign-millimetre = Millimeter
sign-centimetre = Zentimeter, 10 Millimeter
sign-metre = Meter, 100 Zentimeter
sign-by = mal: Breite, dann Länge
sign-per-cent = Prozent
