# Waschen; die Seite zum Ausmalen; die letzte Seite.

care-wash = Waschen, wie die Etiketten von Stoffen und Vlies es sagen; wo sie sich unterscheiden, gilt das schonendere. Kühle, sanfte
    Wäsche und liegend im Schatten trocknen passt für die meisten Stücke aus Baumwolle.
care-colours = Vor der ersten Wäsche kräftige Farben prüfen: ein feuchtes weißes Tuch auf jeden Stoff drücken und auf Farbe achten.
care-wring = Nicht wringen, und die gequiltete Fläche nicht platt bügeln.
care-starch = Alle Markierungen entfernen, dann die Stärke auswaschen: sie vergilbt und zieht beim Lagern Insekten an.
care-form = Vor dem Waschen das Inlett aus der Hülle nehmen.
care-store = Gerollt oder locker gefaltet aufbewahren, nicht in der Sonne und nicht in Plastik. Ab und zu neu falten.

chapter-colouring-page = Seite zum Ausmalen
    .lead = Diese Seite kopieren und vor dem Kaufen eigene Farben ausprobieren.
    .caption = { $size } im Umriss.

chapter-edition = Diese Ausgabe
    .mistake = Jede Zahl in diesem Heft ist aus einer einzigen Zeichnung berechnet und geprüft. Falls doch ein Fehler auffällt, bitten wir
        um Nachricht, mit Ausgabe, Größe und Schritt.
    .write = Adresse: { $address }.
    .computed = Die Bilder { $pictures } sind berechnet, nicht fotografiert: die Formen, Nähte und Quiltlinien der Anleitung selbst, in den
        Farben ihrer Stoffe.
picture-cover = auf der Titelseite
picture-sizes = { $sizes ->
    [1] vom ganzen Stück
   *[other] von allen Größen
}
picture-colours = in anderen Farben

# Ein Heft ohne seine Schablonenblätter.

sheets-apart = Die Blätter liegen gesondert vor
    .file = Die Schablonenblätter sind in Originalgröße und zu groß für dieses Heft. Sie sind in der Datei **{ $file }**, für Papier der
        Größe { $paper }. Von dort mit 100 % drucken.
    .loose = Die Schablonenblätter liegen lose bei, in Originalgröße gedruckt. Auf jedem vor dem Schneiden das Prüfquadrat messen.
