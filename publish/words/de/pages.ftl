# Was die Gestaltung von sich aus auf die Seiten eines Hefts setzt.

page-contents = Inhalt
page-sizes = Größen
page-you-will-need = Gebraucht wird
# Beschriftung von Kästen und von dem, was neben einem Schritt steht.
page-note = Hinweis
page-tip = Tipp
page-caution = Achtung
# Vor den Nummern von Seiten.
page-sheet-on-page = Blatt auf Seite
page-sheets-on-pages = Blätter auf den Seiten
# Hinter dem Titel der Anleitung, wo eine Datei nicht ihr Heft ist.
page-edition-templates = Schablonen
page-edition-full-size = Originalgröße
page-edition-kits = Stoffpakete
# Was über ein Bild gesagt wird, wo es niemand sieht.
page-photograph = Foto: { $title }.
page-logo = { $studio }, Logo
