# Ce que les mises en page écrivent d’elles-mêmes.

page-contents = Sommaire
page-sizes = Tailles
page-you-will-need = Il vous faut
page-note = Note
page-tip = Conseil
page-caution = Attention
page-sheet-on-page = Feuille page
page-sheets-on-pages = Feuilles pages
page-edition-templates = gabarits
page-edition-full-size = taille réelle
page-edition-kits = kits
page-photograph = Photographie : { $title }.
page-logo = { $studio }, logo
