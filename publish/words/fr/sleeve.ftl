# Le fourreau de suspension, et l’étiquette.

chapter-sleeve = Fourreau de suspension
    .lead = Ajouter un fourreau pour accrocher le quilt.

join-sleeve = Raccorder bout à bout les longueurs coupées { $letter } du fourreau avec une couture de { $seam },
    { $lengths }, et ouvrir les
    coutures au fer.
hem-sleeve = Prendre la bande du fourreau { $letter }, { $strip }. Replier chaque petit bout de { $seam } et encore
    de { $seam }, et coudre le
    long du pli intérieur.
    .right = La bande a { $long } de long, un peu moins que la largeur du quilt.
sew-tube = Plier la bande en deux dans sa longueur, envers contre envers, et coudre les longs bords avec une couture
    de { $seam }. Ouvrir la
    couture au fer au milieu du tube, du côté qui sera contre le quilt.
    .right = À plat, le fourreau a { $depth } de haut.
    .caption = Faire le fourreau.
sew-sleeve-top = Centrer le fourreau sur le dos, couture dessous, son pli supérieur juste sous le galon. Coudre le
    pli supérieur à la main, à
    travers la doublure et le molleton seulement.
    .right = Aucun point ne se voit sur l’endroit.
sew-sleeve-bottom = Laisser du jeu dans l’épaisseur avant du tube pour la place d’une tringle, et coudre de même le
    pli inférieur. Coudre aussi
    l’épaisseur arrière aux deux bouts, pour que la tringle ne glisse pas derrière le fourreau.
    .right = Avec une tringle dans le fourreau, le quilt pend à plat et l’endroit ne bombe pas.
    .tip = La tringle doit être plus courte que la largeur du quilt.{ $deep ->
        [shallow] { " " }Les expositions demandent souvent { $exhibited } : couper la bande pour cette hauteur.
       *[deep] { "" }
    }
    .caption = Coudre le fourreau au dos.

chapter-label-and-care = Étiquette et entretien
    .lead = Signer et dater l’ouvrage.
sew-label = Écrire ou broder une étiquette avec votre nom, le nom du modèle, le lieu, la date et les conseils de
    lavage. Rentrer ses bords et la
    coudre au dos à la main, à travers la doublure seulement.
