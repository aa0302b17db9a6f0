# Die üblichen Warnungen. Nichts hier ersetzt die Anweisungen der Hersteller oder geltende Vorschriften.

chapter-cautions = Sicher arbeiten
    .lead = Diese Seite bitte vor dem Zuschneiden lesen, und noch einmal, bevor das Stück verschenkt wird.

caution-rotary = Rollschneider
    .lock = Die Klinge jedes Mal schließen und sichern, wenn der Schneider abgelegt wird. Geschlossene Schuhe tragen.
    .away = Im Stehen vom Körper weg schneiden, die Finger weg von der Kante des Lineals.
    .blades = Alte Klingen vor dem Wegwerfen einwickeln, und den Schneider von Kindern fernhalten.
caution-iron = Bügeleisen
    .stand = Das Eisen auf einer festen Fläche abstellen, aufrecht oder auf seiner Ablage, das Kabel aus dem Weg.
    .steam = Dampf verbrennt: Finger weg von Brüchen, die gebügelt werden.
    .unplug = Beim Verlassen des Raums den Stecker des Eisens ziehen.
caution-machine = Nähmaschine
    .fingers = Finger weg von Nadel und Nähfuß, solange die Maschine läuft.
    .off = Zum Wechseln von Nadel oder Fuß die Maschine ausschalten.
caution-sprays = { $what ->
    [both] Stärke, Haftvlies und Kleber
    [web] Haftvlies und Kleber
   *[starch] Stärke und Kleber
}
    .fumes = { $what ->
        [both] Stärke, Haftvlies und Sprühkleber
        [web] Haftvlies und Sprühkleber
       *[starch] Stärke und Sprühkleber
    } geben Dämpfe oder Sprühnebel ab. In einem gut gelüfteten Raum verwenden und nicht einatmen.
    .flames = Sprays von Flammen, Heizgeräten und heißem Eisen fernhalten. Die Dose abstellen und den Nebel absinken lassen, bevor das
        Eisen in die Hand genommen wird.
caution-glue = Kleber
    .text = Kleber von Augen und Kindern fernhalten und beachten, was auf der Packung steht.
caution-pins = Nadeln und Scheren
    .count = Nadeln vor und nach jedem Arbeiten zählen, und das fertige Stück vor dem Gebrauch mit einem Magneten absuchen.
    .close = Scheren schließen, wenn sie aus der Hand gelegt werden. Pausen machen, wenn viele Lagen zu schneiden sind.
caution-babies = Babys
    .text = Quilts, Kissen und alles andere lose oder weiche Bettzeug gehört nicht an den Schlafplatz eines Babys unter einem Jahr. Einen
        Babyquilt bis dahin an die Wand hängen.
caution-small-parts = Kleine Teile
    .text = Diese Anleitung hat keine Knöpfe oder Perlen. Keine anbringen, wenn ein Kind unter drei Jahren das Stück in die Hand bekommen
        kann: an kleinen Teilen kann es ersticken.
caution-fire = Feuer
    .burns = Stoff und Vlies brennen. Das fertige Stück von Flammen, Kerzen und Heizgeräten fernhalten.
    .rules = Wer verkauft, was entsteht, fragt nach den Regeln am Ort für Entflammbarkeit, Textilkennzeichnung und Kinderartikel.
caution-makers = Vor alledem
    .text = Die Anweisungen, die zu Werkzeug, Maschine, Stoffen, Vlies und Sprays gehören, gehen vor, ebenso die Gesetze und Vorschriften am
        Ort. Wo dieses Heft etwas anderes sagt, gelten sie. Bei Zweifeln an einem Gerät oder Kabel jemanden fragen, der sich
        auskennt.
