# Avant de commencer : imprimer, coutures, laize, repassage, lavage, signes.

chapter-before-you-start = Avant de commencer
    .lead = Lire les étapes{ $your ->
        [yes] { " " }de votre taille
       *[no] { "" }
    } avant de couper.
printing-at-full-size = Imprimer en taille réelle

note-seams = Coutures
    .sew = Les coutures sont de { $seam } sauf indication contraire. Coudre avec du coton 50 wt, une aiguille 80/12
        et un point d’environ { $stitch }. Coudre un ou deux fils en deçà : le pli prend le reste.
    .test = Essai : couper trois bandes larges de { $wide }, les coudre côte à côte et repasser. La bande du milieu
        doit mesurer { $middle }.
note-width = Laize utile
    .text = La laize utile est la largeur entre les lisières. Si la vôtre est plus étroite que ne le suppose le tableau
        des fournitures, acheter davantage.
note-pressing = Repassage
    .text = Poser le fer et le lever ; ne pas le glisser. Repasser chaque couture d’abord à plat comme elle est cousue,
        puis du côté indiqué.
note-washing = Laver d’abord
    .shrinks = Les métrages tiennent compte du retrait au lavage : { $shares }. Laver, sécher et repasser ces tissus
        avant de couper.
    .keeps = Les métrages ne comptent rien pour le retrait. Si vous lavez les tissus d’abord, acheter { $more } de plus
        par tranche de deux { $unit ->
            [metres] mètres
           *[yards] yards
        }, et vérifier de nouveau la laize utile.
    .all = Laver tous les tissus ou aucun : ne pas mêler tissus lavés et non lavés.
    .colours = Essayer les couleurs vives : les frotter avec un linge blanc humide et voir si elles déteignent.
shrinks-by = { $share } pour { $fabrics }
note-sides = Côtés du tissu
    .text = L’**endroit** est le côté visible de l’ouvrage fini ; l’**envers** est son dos. *Endroit contre endroit*
        veut
        dire que deux endroits se touchent.

table-signs = Abréviations et signes
    .sign = Signe
    .meaning = Sens
sign-inch = pouce (inch)
sign-yard = yard, 36 pouces
sign-millimetre = millimètre
sign-centimetre = centimètre, 10 millimètres
sign-metre = mètre, 100 centimètres
sign-by = sur : largeur, puis longueur
sign-per-cent = pour cent
