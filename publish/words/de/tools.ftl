# Das Werkzeug, als Liste zum Abhaken.

chapter-tools = Werkzeug
    .lead = Vor dem Anfangen bereitlegen.
    .piecing = Zum Zuschneiden und Nähen
    .motif = Für das Motiv
    .paper = Für Schablonen und Nähvorlagen
    .finishing = Zum Quilten und Fertigstellen

tool-cutter = Rollschneider mit frischer Klinge, selbstheilende Schneidematte und langes Patchworklineal
tool-square = Großes quadratisches Lineal{ $angled ->
    [yes] { " " }mit 45-Grad-Linie
   *[no] { "" }
} zum Zuschneiden auf Maß
tool-machine = Nähmaschine in gutem Zustand, neue Nadeln der Stärke 80/12 zum Nähen und 90/14 zum Quilten, Baumwollgarn Stärke 50
    und ein Fuß oder Anschlag für { SHORT($seam) } Nahtzugabe
tool-iron = Bügeleisen, feste Bügelunterlage und ein dickes Handtuch
tool-pins = Stecknadeln, Nahttrenner und Fadenschere
tool-marker = Feiner Bleistift oder entfernbarer Stift für Linien auf der linken Seite
tool-starch = Sprühstärke oder flüssige Stärke

tool-paper-printer = Drucker und einfaches Papier
tool-paper-card = Dünner Karton und Klebestift, oder Schablonenfolie, und eine Papierschere
tool-paper-pins = Viele feine Stecknadeln für gebogene Nähte
tool-paper-foundations = Dünnes Papier für Nähvorlagen, das leicht reißt und durch den Drucker darf
tool-paper-needle = Kräftige Maschinennadel, etwa Stärke 90/14, und eine Pinzette

tool-motif-printer = Drucker, leichtes einfaches Papier und eine Papierschere
tool-motif-tape = Durchsichtiges Klebeband und ein Leuchttisch oder helles Fenster
tool-motif-scissors = Kleine, bis zur Spitze scharfe Schere und eine größere für viele Lagen
tool-motif-marker = Feiner Stoffstift, etwa Kreide oder weißer Stift, der auf dem Motiv zu sehen ist, das Bügeln übersteht und sich
    auswaschen lässt
tool-motif-basting = Handnähnadel und Heftgarn in Kontrastfarbe
tool-motif-needles = Feine Applikationsnadeln, lang und dünn, etwa Stärke 10 oder 11
tool-motif-freezer = Gefrierpapier, Tacker, kleiner Pinsel und ein spitzes Holzstäbchen
tool-motif-hand-needle = Feine Handnähnadel
tool-motif-pencil = Bleistift
tool-motif-cloth = Schutztuch für die Bügelunterlage
tool-motif-pins = Kurze, feine Stecknadeln, an denen der Faden nicht hängen bleibt

tool-quilting = Obertransportfuß, oder eine kurze Quiltnadel, Stärke 9 oder 10, und ein Fingerhut zum Quilten von Hand
tool-basting = Sicherheitsnadeln oder Heftgarn zum Heften der Lagen und Klebeband für die Rückseite
tool-free-motion = Freihandfuß für enge Rundungen
tool-lines = Kreide oder auswaschbarer Stift für die ersten Quiltlinien, und Führungslineal für den Fuß oder Klebeband für die übrigen
tool-binding = Klammern für das Binding und eine Handnähnadel zum Beenden
tool-zipper-foot = Reißverschlussfuß
tool-point = Stumpfe Spitze zum Ausformen der Ecken, etwa eine Stricknadel
tool-label = Permanenter Stoffstift oder Stickgarn für das Etikett
