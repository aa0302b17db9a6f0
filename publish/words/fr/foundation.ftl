# Coudre sur des supports imprimés.

chapter-foundation = Assemblage sur papier
    .lead = Coudre le tissu sur un papier imprimé dans l’ordre des numéros.
foundation-of = { $title } : { $sizes }
foundation-mirror = La face imprimée est une image en miroir
    .sides = Les lignes sont imprimées sur la face où l’on coud. Le tissu est sur l’autre face, blanche ; le bloc
        fini est donc l’image en
        miroir de l’impression : ce qui est à gauche du papier se retrouve à droite du bloc.
    .numbers = A1 sur un support est la section A, pièce 1, cousue la première. Les lettres en gras du tableau sont
        les pièces à couper.
foundation-counts = Coudre { $counts }.
foundation-count = { $letters ->
    [one] la section { $named } { TIMES($count) }
   *[other] les sections { $named } { TIMES($count) } chacune
} ({ $block }){ $whole ->
    [yes] , entier sur un seul support
   *[no] { "" }
}
foundation-letters = { $first } à { $last }
foundation-sections = { CAPITAL($block) } : ses sections, et comment elles s’assemblent.
foundation-fabric = Tissu, { $block } : { $sizes }
    .patch = Champ
    .fabric = Tissu
    .piece = Pièce
    .size = Taille de coupe
    .note = Le tissu d’un support se coupe plus grand que son champ et se recoupe au fil de la couture.
foundation-section = Section { $letter } : à faire { $count }

print-foundations = Imprimer les supports{ $several-sizes ->
        [yes] { " " }de votre taille
       *[no] { "" }
    } à **100 %** sur un papier fin qui se déchire bien, un pour chaque section à coudre, et mesurer le carré de contrôle de chaque
    feuille. Les séparer à environ { $spare } hors de la ligne en tirets. Si vous copiez une feuille, mesurer aussi
    le carré de la copie.
    .right = Les deux carrés de contrôle sont justes, et chaque section a sa lettre.
shorten-stitch = Régler le point à environ { $stitch }, plus court que pour les autres coutures, et mettre une
    aiguille neuve et solide, comme
    90/14. Des points serrés et une grosse aiguille perforent le papier, qui se déchire alors sans tirer sur la couture.
    .caution = Le papier émousse aiguilles et lames : changer les deux avant de coudre ou de couper du tissu seul.
lay-first-patch = Tenir un support devant la lumière, face blanche vers soi. Y poser le tissu du champ 1, envers
    contre le papier, pour qu’il
    couvre le champ 1 et dépasse ses lignes d’au moins { $spare } de tous les côtés. L’épingler à plat.
    .right = À la lumière, le champ 1 est entièrement dans son tissu.
    .caption = Section { $section } : le tissu du champ 1 sous le papier, vu à travers depuis la face imprimée.
sew-patch = Poser le tissu du champ 2 sur le premier, endroit contre endroit, son bord à environ { $seam } au-delà de
    la ligne entre les champs 1
    et 2. Le rabattre pour essai le long de cette ligne : il doit couvrir le champ 2 avec une marge tout autour. Le
    remettre, retourner
    le tout, et coudre sur la ligne imprimée, de quelques points avant à quelques points après.
    .right = Les points sont sur la ligne et tiennent les deux tissus.
    .caption = Section { $section } : cousu sur la ligne, depuis la face imprimée.
trim-patch = Replier le papier le long de la ligne sur le bord d’une carte, et recouper les deux marges à { $seam }
    au-delà, sans couper le papier.
    .caution = Garder les doigts derrière la règle en coupant.
    .caption = Section { $section } : le papier replié et les marges recoupées.
open-patch = Déplier le papier, ouvrir le tissu 2 sur le champ 2 et le repasser à plat du côté tissu avec un fer sec.
    .right = Le tissu 2 couvre le champ 2, et il n’y a pas de pli dans la couture.
    .caution = Tenir le fer loin de l’impression : l’encre ou le toner chauds peuvent baver.
sew-further-patches = Faire de même avec chaque champ dans l’ordre des numéros : le poser sur la ligne qu’il partage
    avec ce qui est cousu, coudre,
    recouper, repasser.
    .right = La face blanche du papier est couverte, et du tissu dépasse la ligne de coupe en tirets tout autour.
trim-section = Poser la section face imprimée vers soi. À la règle et au cutter rotatif, couper papier et tissu sur
    la ligne de coupe en tirets. Elle est à
    { $seam } hors de la ligne de couture extérieure.{ $edges ->
        [wider] { " " }Le long d’un bord qui sera au bord du coussin, couper à { $wider } hors de la ligne de couture
            extérieure.
       *[alike] { "" }
    }
    .right = Les bords sont droits et chacun a sa marge.
    .caption = Section { $section }, recoupée et vue de l’endroit.

lengthen-stitch = Remettre le point à { $stitch } avant d’assembler { $next ->
        [sections] les sections
       *[blocks] les blocs
    }.
join-for = Pour { $block }, assembler
join-plainly = Assembler
sections-named = sections { $letters }
pin-sections = { $opener } { $parts } : poser { $several ->
        [yes] les deux premières
       *[no] les deux
    } endroit contre endroit. Piquer une épingle droit à travers les deux bouts de la ligne de couture et partout où des coutures se rejoignent, de
    papier à papier ; quand elle est bien droite, les points coïncident. Épingler, et retirer les épingles droites.
pin-sections-again = { $opener } { $parts }{ $several ->
        [yes] { " " }dans cet ordre
       *[no] { "" }
    }, en faisant coïncider les points avec des épingles.
sew-sections = Coudre sur la ligne imprimée.{ $several ->
        [yes] { " " }Coudre les autres de la même façon, l’une après l’autre.
       *[no] { "" }
    }{ $done ->
        [yes] { " " }C’est { $whole }.
       *[no] { "" }
    }
sew-sections-again = { $done ->
    [yes] C’est { $whole }.
   *[no] { "" }
}
tear-allowances = N’arracher le papier que des marges de { $several ->
        [yes] ces coutures
       *[no] cette couture
    }.
press-sections = Coucher { $seams ->
        [one] la couture
       *[other] les coutures
    } { $way }.{ $count ->
        [one] { "" }
       *[other] { " " }En faire { $count }.
    }
    .right = { $box ->
        [yes] { CAPITAL($the) } mesure { $size }.
       *[no] Les points se rejoignent à la couture.
    }
leave-paper = Laisser le reste du papier { $papers ->
        [one] du support
       *[other] des { $papers } supports
    } jusqu’à ce que tous les côtés d’un bloc soient cousus à leurs voisins : il empêche les bords coupés hors droit-fil de se détendre.
