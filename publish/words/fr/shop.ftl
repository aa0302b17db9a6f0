# Pour les boutiques : l’annonce, la page du site, la feuille des kits, le questionnaire d’essai.

shop-picture = { $title }, { $size }, { $finished }, { $where }. { $computed }
shop-picture-of-colourway = { $title }, { $size }, { $finished }, dans les couleurs de { $colourway }, { $where }.
    { $computed }
shop-fact-studio = Créateur : { $value }
shop-fact-skill = Niveau : { $value }
shop-fact-stock-number = Référence : { $value }
shop-fact-edition = Édition : { $value }
shop-sizes = Tailles
shop-included = Contenu
shop-materials = Fournitures
shop-pictures = Images
shop-licence = Licence
shop-contact = Contact
shop-edition-booklet = Livret, { $pages }, pour { $paper }
shop-edition-booklet-of-size = Livret { $size }, { $pages }, pour { $paper }
shop-edition-templates = Gabarits, { $pages }, pour { $paper }
shop-edition-full-size = Taille réelle, { $pages }, pour { $paper }
shop-pages = { $count } { $count ->
    [one] page
   *[other] pages
}
shop-with-sheets = { $edition }, dont { $count } { $count ->
    [one] feuille de gabarits en taille réelle
   *[other] feuilles de gabarits en taille réelle
}
shop-steps = { $count } { $count ->
    [one] étape numérotée
   *[other] étapes numérotées
}, { $drawings }
shop-drawings = { $count } { $count ->
    [one] dessin
   *[other] dessins
}
shop-cutting-layout = { $count } { $count ->
    [one] plan de coupe
   *[other] plans de coupe
}
shop-colouring = { $count } { $count ->
    [one] page à colorier
   *[other] pages à colorier
}

# La page du site.
site-title = { $title } : un modèle de quilt
site-title-by = { $title } : un modèle de quilt de { $studio }
site-at-a-glance = En bref
site-skill = Niveau
site-edition = Édition
site-stock-number = Référence
site-barcode = Code-barres
site-price = Prix
site-sizes = Tailles
site-what-to-buy = À acheter
site-fabric = Tissu
site-fabric-by-size = Tissu par taille
site-none = aucun
site-and = Et :
site-what-you-get = Ce que vous recevez
site-what-you-may-make = Ce que vous pouvez en faire
site-questions = Questions et erreurs :
site-front-cover = La couverture du livret.
site-page = Page { $number } du livret.

# La feuille d’après laquelle une boutique coupe des kits.
kit-title = { $title } : kits à couper
kit-from-bolts = Au rouleau
kit-lead = À couper sur chaque rouleau pour { $wanted }.
kit-of-size = { $kits } { $size }
kit-foot = { $foot } · kits
kit-count = { $count } { $count ->
    [one] kit
   *[other] kits
}
kit-batting = Molleton de chaque kit : { $batting }.
kit-no-batting = Pas de molleton.
kit-strips = { $count } { $count ->
    [one] bande
   *[other] bandes
}, hauteur { $depth }, chacune { $cuts }
kit-plan = Le plan d’un kit
kit-pieces = Pièces, quand elles sont coupées pour la cliente
kit-column-fabric = Tissu
kit-column-for-all = Pour tous les kits
kit-column-one = Un kit
kit-column-all = Tous les kits
kit-column-usable-width = Laize utile
kit-column-strips = Bandes dans la laize, dans l’ordre
kit-column-piece = Pièce
kit-column-name = Nom
kit-column-width-length = Largeur × longueur

# Le questionnaire que remplissent les personnes qui essaient. Des blancs suivent les mots.
tester-title = { $title } : questionnaire d’essai
tester-lead = Merci d’y écrire en cousant : chaque remarque aide.
tester-you = Vous et vos fournitures
tester-name = Nom
tester-experience = Expérience
tester-fabrics = Tissus
tester-thread = Fil et aiguille
tester-size = Taille cousue :
tester-paper = Papier et imprimante : { $line }
tester-printing = Impression
tester-check-squares = Les carrés de contrôle des feuilles de gabarits mesuraient :
tester-square = Carré
tester-both-ways = Le vôtre, dans les deux sens
tester-inch-square = le carré d’un pouce
tester-centimetre-square = le carré en centimètres
tester-square-of = le carré de { $side }
tester-steps = Les étapes
tester-one-step = { $section }, étape { $first }
tester-some-steps = { $section }, étapes { $first } à { $last }
tester-boxes = ☐ clair  ☐ lent  ☐ bloqué à l’étape { $room }  minutes { $room }
tester-remarks = Remarques
tester-measurements = Mesures : { $size }
tester-column-what = Quoi
tester-column-should = Devrait avoir
tester-column-yours = Le vôtre
tester-column-fabric = Tissu
tester-column-asked = Le modèle demande
tester-column-bought = Vous avez acheté
tester-column-left = Il reste
tester-motif-square = Carré du motif, coupé
tester-motif-span = Motif, cousu, de pointe à pointe
tester-with-border = Avec { $name }, marges de couture comprises
tester-unit = { CAPITAL($name) }, marges de couture comprises
tester-finished = Fini
tester-backing = Doublure, coupée
tester-batting = Molleton, coupé
tester-binding = Galon, raccordé
tester-overlap = Chevauchement du dos de coussin
tester-last = Pour finir
tester-hours = Heures, de la coupe à la finition
tester-change = Que changeriez-vous d’abord ?
tester-again = Le recoudriez-vous, et pour qui ?
tester-mistake = Une erreur, avec sa page
tester-send = À envoyer à { $contact }.
