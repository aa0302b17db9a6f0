# Für Läden: das Angebot, die Seite für das Studio, das Blatt für Stoffpakete, der Bogen zum Probenähen.

# Was ein berechnetes Bild zeigt, für alle, die es nicht sehen.
shop-picture = { $title }, { $size }, { $finished }, { $where }. { $computed }
shop-picture-of-colourway = { $title }, { $size }, { $finished }, in den Farben von { $colourway }, { $where }. { $computed }
shop-fact-studio = Entwurf: { $value }
shop-fact-skill = Schwierigkeit: { $value }
shop-fact-stock-number = Artikelnummer: { $value }
shop-fact-edition = Ausgabe: { $value }
shop-sizes = Größen
shop-included = Was enthalten ist
shop-materials = Material
shop-pictures = Bilder
shop-licence = Lizenz
shop-contact = Kontakt
# Jede Datei des Satzes.
shop-edition-booklet = Heft, { $pages }, für { $paper }
shop-edition-booklet-of-size = Heft { $size }, { $pages }, für { $paper }
shop-edition-templates = Schablonen, { $pages }, für { $paper }
shop-edition-full-size = Originalgröße, { $pages }, für { $paper }
shop-pages = { $count } { $count ->
    [one] Seite
   *[other] Seiten
}
shop-with-sheets = { $edition }, mit { $count } { $count ->
    [one] Schablonenblatt in Originalgröße
   *[other] Schablonenblättern in Originalgröße
}
shop-steps = { $count } { $count ->
    [one] nummerierter Schritt
   *[other] nummerierte Schritte
}, { $drawings }
shop-drawings = { $count } { $count ->
    [one] Zeichnung
   *[other] Zeichnungen
}
shop-cutting-layout = { $count } { $count ->
    [one] Zuschneideplan
   *[other] Zuschneidepläne
}
shop-colouring = { $count } { $count ->
    [one] Seite zum Ausmalen
   *[other] Seiten zum Ausmalen
}

# Die Seite für das Studio.
site-title = { $title }: eine Quiltanleitung
site-title-by = { $title }: eine Quiltanleitung von { $studio }
site-at-a-glance = Auf einen Blick
site-skill = Schwierigkeit
site-edition = Ausgabe
site-stock-number = Artikelnummer
site-barcode = Strichcode
site-price = Preis
site-sizes = Größen
site-what-to-buy = Was zu kaufen ist
site-fabric = Stoff
site-fabric-by-size = Stoff nach Größe
site-none = keiner
site-and = Und:
site-what-you-get = Was enthalten ist
site-what-you-may-make = Was daraus genäht werden darf
site-questions = Fragen und Fehler:
site-front-cover = Die Titelseite des Hefts.
site-page = Seite { $number } des Hefts.

# Das Blatt, nach dem ein Laden Stoffpakete schneidet.
kit-title = { $title }: Stoffpakete zum Zuschneiden
kit-from-bolts = Von den Ballen
kit-lead = Von jedem Ballen zu schneiden für { $wanted }.
kit-of-size = { $kits } { $size }
kit-foot = { $foot } · Stoffpakete
kit-count = { $count } { $count ->
    [one] Stoffpaket
   *[other] Stoffpakete
}
kit-batting = Vlies für jedes Stoffpaket: { $batting }.
kit-no-batting = Kein Vlies.
kit-strips = { $count } Streifen, { $depth } breit, mit je { $cuts }
kit-plan = Der Plan eines Stoffpakets
kit-pieces = Teile, wenn sie fertig zugeschnitten werden
kit-column-fabric = Stoff
kit-column-for-all = Für alle Stoffpakete
kit-column-one = Ein Stoffpaket
kit-column-all = Alle Stoffpakete
kit-column-usable-width = Nutzbare Breite
kit-column-strips = Streifen über die Breite, der Reihe nach
kit-column-piece = Teil
kit-column-name = Name
kit-column-width-length = Breite × Länge

# Der Bogen zum Probenähen. Hinter den Worten stehen leere Zeilen.
tester-title = { $title }: Bogen zum Probenähen
tester-lead = Bitte beim Nähen ausfüllen: jede Bemerkung hilft.
tester-you = Du und dein Material
tester-name = Name
tester-experience = Erfahrung
tester-fabrics = Stoffe
tester-thread = Garn und Nadel
tester-size = Genähte Größe:
tester-paper = Papier und Drucker: { $line }
tester-printing = Drucken
tester-check-squares = Die Prüfquadrate auf den Schablonenblättern maßen:
tester-square = Quadrat
tester-both-ways = Gemessen, in beiden Richtungen
tester-inch-square = das Quadrat von 1 Zoll
tester-centimetre-square = das Zentimeterquadrat
tester-square-of = das Quadrat von { $side }
tester-steps = Die Schritte
tester-one-step = { $section }, Schritt { $first }
tester-some-steps = { $section }, Schritte { $first } bis { $last }
tester-boxes = ☐ klar  ☐ mühsam  ☐ hängen geblieben bei Schritt { $room }  Minuten { $room }
tester-remarks = Bemerkungen
tester-measurements = Maße: { $size }
tester-column-what = Was
tester-column-should = Soll
tester-column-yours = Gemessen
tester-column-fabric = Stoff
tester-column-asked = Die Anleitung verlangt
tester-column-bought = Gekauft
tester-column-left = Übrig
tester-motif-square = Quadrat für das Motiv, zugeschnitten
tester-motif-span = Motiv, genäht, von Spitze zu Spitze
tester-with-border = Mit { $name }, mit Nahtzugaben
tester-unit = { CAPITAL($name) }, mit Nahtzugaben
tester-finished = Fertig
tester-backing = Rückseite, zugeschnitten
tester-batting = Vlies, zugeschnitten
tester-binding = Binding, verbunden
tester-overlap = Überlappung des Kissenrückens
tester-last = Zum Schluss
tester-hours = Stunden vom Zuschneiden bis zum Binding
tester-change = Was sollte als Erstes anders sein?
tester-again = Würdest du es noch einmal nähen, und für wen?
tester-mistake = Ein Fehler, mit seiner Seite
tester-send = Zurück an { $contact }.
