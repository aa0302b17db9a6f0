# Figures : les étiquettes, et ce que montre chaque figure, pour qui ne la voit pas. Les étiquettes ont peu de place : rester bref.

figure-5-cm = 5 cm.
figure-5-cm-2 = 5 cm
figure-a-border-in = bordure en { $name }
figure-a-border-of-in = bordure de { $width } en { $name }
figure-a-centimetre = en centimètres
figure-a-round-of-of = tour de { $blocks } de { $block-side }
figure-a-section-wide-cut-into = une section large de { $width }, coupée en { $inner }
figure-a-stretch-deep-holding-nested = un coupon, hauteur { $depth }, où s’imbriquent { $held }
figure-an-inch = en pouces
figure-and = { " " }et{ " " }
figure-and-2 = , et { $mirrored } { $how }
figure-and-turned-over = et { $mirrored } retournées
figure-apart = tous les { $width }
figure-apart-2 = tous les { $distance }
figure-apart-3 = { " " }; à part : { $corners }
figure-as-shown = Comme montré
figure-as-the-booklet-says = { $what }, voir le livret
figure-at-the-hems = aux ourlets
figure-at-wider-edges = , { $widest } aux bords plus larges
figure-back = dos
figure-back-of-the-quilt = dos du quilt
figure-back-on-the-line = sur la ligne
figure-back-stitch = point arrière
figure-backing = doublure
figure-backing-2 = Doublure
figure-barcode = Code-barres, { $kind }, { $digits }.
figure-baste-from-the = bâtir du centre
figure-basting = bâti
figure-batting = Molleton
figure-binding-edge-draw-close = Le bord du quilt entre le dernier et le premier point du galon : les deux bouts sont
    posés le long et se chevauchent de { $width }, la
    largeur de la bande.
figure-binding-edge-draw-corner = 1 : la couture s’arrête à { $seam } de l’angle. 2 : le galon est plié tout droit
    vers le haut, un pli à 45 degrés dans l’angle. 3 : il
    est rabattu tout droit le long du côté suivant, son nouveau pli au ras du premier bord, et la couture repart de
    ce bord.
figure-binding-edge-draw-finish = Le dos du quilt à un angle : le galon est rabattu par-dessus le bord et cousu le
    long de son pli à petits points cachés ; à l’angle, ses
    deux côtés se rejoignent en onglet.
figure-binding-edge-draw-start = Le galon plié est posé sur l’endroit le long d’un bord, bords vifs au bord et pli
    vers l’intérieur. Un bout reste libre au début ; la
    couture qui suit est à { $seam } du bord.
figure-binding-edge-draw-tuck = Le début plié du galon est posé au bord du quilt, sa première partie non cousue ;
    l’autre bout y est glissé.
figure-binding-strips-draw-bias = 1 : un carré de { $square } est coupé sur une diagonale. 2 : les triangles sont
    cousus par des bords droits en une forme oblique, et des
    lignes sont tracées tous les { $width }, parallèles à ses bords en biais.
figure-binding-strips-draw-join = 1 : deux bandes de finition larges de { $width } se croisent à angle droit, endroit
    contre endroit, cousues sur la diagonale du carré où
    elles se croisent ; l’angle au-delà est recoupé à { $seam }. 2 : ouverte, une bande droite à couture oblique.
figure-binding-strips-draw-press = Une bande de finition large de { $width }, envers vers soi, pliée en son milieu ;
    repassée, elle a { $half } de large, ses deux bords vifs bord
    à bord.
figure-blind-stitches = points cachés
figure-block = bloc { $block-side }
figure-block-alt = Le bloc { $key }, { $side } fini, sur une grille de { $columns } par { $rows } : { $patches },
    { $named }.
figure-block-sections = Le bloc { $key }, { $side } de côté, écarté en { $held } : { $names }.{ $order }
figure-border = bordure { $number } :
figure-borders-alt = les quatre d’abord, puis les coins en onglet
figure-borders-alt-2 = 1 les côtés, 2 le haut et le bas
figure-borders-alt-3 = Le top, { $inner }, avec { $strips } en { $name } autour : { $named }. Ordre de couture :
    { $order }.
figure-both-of-its-ends = ses deux bouts
figure-bound-in = , bordé en { $name }
figure-buy = acheter { $bought }
figure-centre = centre
figure-centre-line = ligne médiane
figure-centre-out = vers l’extérieur
figure-clip = cranter
figure-clip-not-across-the-line = cranter, sans couper la ligne
figure-clip-turn-outward = cranter, rabattre dehors
figure-close-in-lightness = Proches en clarté : { $close }.
figure-colouring = { $title }, { $width }, au trait à colorier : { $patches } pièces et { $placements } motifs,
    { $regions } contours.
figure-colours-pairs = Une grille de { $order } tissus, le plus clair d’abord : chacun à côté et par-dessus chaque
    autre.{ " " }
figure-colours-pairs-2 = Aucun n’est proche d’un autre en clarté.
figure-colours-visions = { $title } { $looks }, pour voir si le motif se lit encore.
figure-cover-form-square = housse { $width }, coussin { $form }
figure-crease-in-half = pli en deux
figure-crease-on-the = pli en
figure-creases = { " " }Des coutures tiennent lieu des autres plis.
figure-creases-2 = Le fond, { $wide }, plié { $folds } ; chaque pli passe par le centre.{ $seams }
figure-creases-together = plis superposés
figure-curves-pin = Deux pièces, { $names }, à réunir le long d’une courbe. Des pointillés relient les endroits à
    épingler : 1 les milieux, 2 les bouts, 3 entre eux. La
    ligne de couture est en tirets, à { $seam } des bords vifs.
figure-curves-pivot-words = s’arrêter à { $seam } des bords et pivoter ici
figure-curves-press = { $name }, couture courbe cousue et { $labels }.
figure-curves-set-in = { $parts }, { $letters } ; la dernière à coudre, { $letters-2 }, est montée le long de
    { $seams }, numérotés dans l’ordre de couture. Un anneau
    marque chacun des { $pivots } où la couture s’arrête, à { $seam } des bords vifs, et où l’on pivote.
figure-cut = coupe { $number } : { $labels }
figure-cut-2 = couper { $count }
figure-cut-from = Couper { $count } en { $name }
figure-cut-from-2 = Couper { $count } en { $fabric }{ $labels }
figure-cut-from-3 = Couper en { $fabric }
figure-cut-line = ligne de coupe
figure-cut-on-the-line = couper sur la ligne
figure-cut-out = évider
figure-deep-giving = { $count }, hauteur { $depth }, { $more }donnant { $gives }
figure-diagonal = diagonale
figure-diagonal-rows = rangs en diagonale
figure-drawn-line = ligne tracée
figure-each = chacune{ " " }
figure-each-2 = { " " }chacun
figure-exploded-rounds-alt = { $title } jusqu’ici, { $inner }, et autour, écarté, { $named }.
figure-exploded-rounds-alt-2 = { $title }, écarté : le centre, { $inner }, et autour { $named }.
figure-fabric = tissu { $value }
figure-fabric-alt = Plan de coupe de { $name } pour { $title }, dans { $context } de laize utile { $usable-width } :
    { $parts }.
figure-finished-line = ligne finie
figure-finished-line-solid = Ligne finie en trait continu
figure-finished-motif-across = Motif fini : { $span } d’un bord à l’autre
figure-finished-side = face finie
figure-first-back = premier dos,
figure-first-side = premier côté
figure-first-stitch = premier point
figure-fold = pli
figure-fold-down = rabattre
figure-fold-then-again = plier { $hem }, puis { $hem }
figure-fold-up = plier en haut
figure-folded-beginning = début plié
figure-folding-alt = Le carré de tissu à plat, { $up }, avec la ligne du premier pli.
figure-folding-alt-2 = Le tissu après { $made } plis sur { $creases }, { $side }, { $count } épaisseurs, avec la
    ligne du pli suivant et une flèche depuis le côté à rabattre.
figure-folding-alt-3 = Le secteur plié, { $count } épaisseurs, { $side } : le centre en bas à gauche, les plis
    multiples à la verticale à gauche, le pli simple à droite, les
    bords ouverts face au centre.
figure-for = { $name } pour { $context }
figure-for-the = Pour { $sizes }
figure-foundation = { $block }, support { $letter }
figure-foundation-2 = { $block }, support { $letter }, { $context }
figure-foundation-done = Support { $letter } terminé et recoupé à { $allowance } hors de sa ligne extérieure : la
    face imprimée et, retournée, la face finie, son image en
    miroir, avec { $fabrics }.
figure-foundation-place = Support { $letter } vu de sa face imprimée, numéroté de { $value } à { $shapes }. Le tissu
    de { $value }, { $value-2 }, est dessous, envers contre le
    papier, et dépasse les lignes tout autour.
figure-foundation-sew = Sous le papier, le tissu de { $value }, { $value-2 }, est sur celui de { $value-3 }, endroit
    contre endroit. La couture suit la ligne entre { $value-3 }
    et { $value }, sur la face imprimée, { $allowance } au-delà des deux bouts.
figure-foundation-trim = Le papier replié sur la ligne cousue, et les deux tissus recoupés à { $allowance } au-delà ;
    ce qui tombe est hachuré. Le tissu de { $value } est
    ensuite ouvert et repassé.
figure-front = devant
figure-giving = { $number } : { $count }, donnant { $cuts }{ $more }
figure-half = { " " }(moitié)
figure-heading-allowance = Marge de couture { $narrow }, de ligne à ligne{ $wide }
figure-heading-foundation = Coudre sur les lignes dans l’ordre { $letter }1, { $letter }2
figure-heading-foundation-2 = Couper sur les tirets, à { $seam } de la couture
figure-heading-several = Couper sur les tirets, à { $seam } de la couture
figure-hem = ourlet
figure-how-the-sheets-join = Raccord des feuilles
figure-in = { $n } { $more }en { $name }
figure-in-2 = { $letter } en { $name }
figure-in-3 = { " " }en { $value }
figure-in-4 = { $named } en { $name }
figure-in-colourways = { $shown }, en { $looks } gammes de couleurs : { $looks-2 }.
figure-in-colourways-2 = { $shown }, en { $names } gammes de couleurs : { $value }. { $computed }
figure-in-grey = en gris
figure-in-half = en deux { $name }
figure-in-half-2 = en deux
figure-inward-corner = Un angle rentrant en deux images : 1 le rentré cranté droit dans l’angle, à un fil de la ligne
    finie ; 2 les deux côtés rentrés et cousus, avec trois
    points serrés dans l’angle.
figure-inward-hole = Une ouverture en deux images : 1 son bord vif cranté à mi-chemin de la ligne finie et rabattu
    dehors sous le motif ; 2 le bord rentré cousu tout autour, le
    fond visible à travers.
figure-is-ready = est prêt
figure-is-ready-2 = { " " }est prêt
figure-join = { " " }Assembler { $value }.
figure-joins = { " " }Se raccorde : { $joins }.
figure-laid-joined-and-the = { $parts } disposées { $side } : { $named }. Assemblées et { $value } : { $name }
    { $done }.
figure-last-stitch = dernier point
figure-layers = Trois épaisseurs de haut en bas : { $sizes }.
figure-level = à l’horizontale
figure-loose-tail = bout libre
figure-measure-both-squares-before-cutting = Mesurer les deux carrés avant de couper.
figure-measure-exactly = mesurer exactement
figure-measures = mesure { $told }
figure-measures-2 = { " " }mesure { $unit }
figure-mirror-image-of-the-block = Image en miroir du bloc
figure-mirror-images-of-the-block = Images en miroir du bloc
figure-mitre = onglet
figure-multiple-folds = plis multiples
figure-nested = { " " }imbriqués
figure-of = { $count } { $letter } de { $a }{ $becomes }
figure-of-2 = { $count } { $letter } de { $across }
figure-of-3 = { $letter } de { $patches }
figure-of-4 = { $name } de { $value }
figure-of-5 = { $each } { $i } de { $width }
figure-of-6 = { $letter } de { $w }
figure-of-7 = { $block-count } de { $block-side }
figure-of-in = { $count } { $letter } de { $across } × { $along } in
figure-on-both-diagonals = sur les deux diagonales
figure-on-both-sides = de part et d’autre
figure-on-right-sides-together = { $value } sur { $value-2 }, endroit contre endroit
figure-on-the-diagonals = sur les diagonales
figure-one-above-the-other = l’une au-dessus de l’autre
figure-one-more = encore un { $small }
figure-open-and-press = ouvrir et repasser
figure-open-creases-showing = ouvert, plis visibles
figure-open-edges = bords ouverts
figure-outlines-web = { $value }, sur { $length } de voile large de { $width }, côté papier vers soi.
figure-overlap = chevauchement { $width }
figure-own-words-fold-words = Retourner le papier le long de ce bord
figure-page-bar = Cette barre doit mesurer exactement 5 cm.
figure-paper-folded = papier replié
figure-past = { $allowance } au-delà de
figure-pillow-back-draw-hem = Une des { $count }, coupée { $long }, envers vers soi : un long bord replié deux fois
    de { $hem } et cousu le long du pli intérieur, ce qui lui laisse
    { $hemmed } de haut.
figure-pillow-back-draw-layer = Le devant, { $front-w }, endroit vers soi. La première pièce de dos est posée dessus
    envers vers soi, bords vifs en haut ; la seconde monte du bord du
    bas, et les ourlets se chevauchent de { $overlap }.
figure-pillow-back-draw-sew = Les deux pièces de dos sur le devant, cousues tout autour à { $seam } du bord, avec des
    points arrière là où la couture croise les ourlets.
figure-pillow-cover-draw-turn = La housse retournée sur l’endroit, { $width } : le dos avec son ouverture en
    portefeuille, et le devant. Le coussin intérieur a { $form } de côté.
figure-pillow-cover-draw-zip = Les deux pièces de dos, chacune { $long }, réunies à { $hem } d’un long bord et vues
    de l’envers : la couture ouverte au fer, ses bouts cousus à points
    courts, la fermeture face contre la partie bâtie du milieu.
figure-pillow-front = devant de coussin
figure-place-lined-up = à égale distance entre les plis du fond
figure-place-lined-up-2 = ses plis sur ceux du fond { $found }
figure-place-place-motif = , et des rangs de bâti le long, en dedans des bords à rentrer
figure-place-place-motif-2 = Le motif centré sur son fond, { $labels }{ $held }.
figure-place-unfold = Deux images : le motif coupé encore plié en deux, avec une flèche qui l’ouvre, et le motif
    ouvert, ses { $folds } secteurs pareils, ses plis se rejoignant au
    centre.
figure-precut-alt = Plan de coupe de { $name } pour { $title }, dans { $used } de { $length } × { $width } : { $parts }.
figure-print-at-100 = Imprimer à 100 %.
figure-print-this-sheet = Imprimer cette feuille : { $each }
figure-printed-side = face imprimée
figure-quick-geese-geese = Un grand carré, { $large }, { $width }, avec deux petits carrés, { $small }, { $width-2 },
    sur des angles opposés, endroit contre endroit, une ligne tracée à
    travers les deux
figure-quick-geese-geese-2 = { $base }, et une couture à { $seam } de part et d’autre.
figure-quick-geese-geese-3 = Une moitié coupée le long de la ligne, ses deux petits triangles rabattus, avec encore
    un petit carré, { $small }, sur l’angle qui reste : une ligne tracée
    depuis cet angle, et une couture à { $seam } de part et d’autre, à couper sur la ligne.
figure-quick-geese-geese-4 = Un vol d’oies ouvert, repassé et recoupé à { $wide } ; chaque grand carré en donne
    { $each-batch }.
figure-quick-geese-second = coudre de part et d’autre, puis couper sur la ligne
figure-quick-hourglasses = Deux carrés de deux triangles, endroit contre endroit, tissus différents face à face, une
    ligne tracée d’un angle à l’autre en travers de la couture et une
    couture à { $seam } de part et d’autre, à couper sur la ligne.
figure-quick-open-and-trim = Une moitié coupée le long de la ligne, et ce qu’elle donne une fois ouverte
    ({ $called }), repassé et recoupé à { $wide } ; chaque paire de carrés donne
    { $made }.
figure-quick-patch-corners = Les angles rabattus : l’unité mesure { $wide }.
figure-quick-patch-corners-2 = une diagonale tracée sur chacun
figure-quick-patch-corners-3 = cousus juste hors de la diagonale tracée sur chacun, du côté de l’angle
figure-quick-patch-corners-4 = cousus juste hors de la ligne, l’angle coupé à { $seam } au-delà
figure-quick-patch-corners-5 = { $base }, { $width }, avec { $names } posés sur ses angles, endroit contre endroit,
    { $does }.
figure-quick-patch-segments = mettre ce bout d’équerre, puis couper en travers
figure-quick-patch-strips = Un segment, { $trim }, coupé dans l’ensemble de bandes.
figure-quick-patch-strips-2 = Les bandes dans l’ordre où elles se cousent : { $named }.
figure-quick-patch-strips-3 = Un ensemble de bandes : { $named }, cousues par leurs longs bords et repassées.
figure-quick-patch-strips-4 = Un ensemble de bandes, { $named }, mis d’équerre et coupé en travers tous les
    { $segment } : { $each-batch } segments par ensemble.
figure-quick-triangles = chacun, endroit contre endroit, avec une diagonale tracée sur celui du dessus
figure-quick-triangles-2 = { $both }, cousus à { $seam } de part et d’autre et coupés dessus.
figure-quick-triangles-3 = { $both } et une couture à { $seam } de part et d’autre.
figure-raw-edge = bord vif
figure-raw-edges = bords vifs
figure-raw-edges-level = bords vifs bord à bord
figure-right-side = endroit
figure-right-side-out = endroit à l’extérieur
figure-right-side-up = endroit vers soi
figure-right-sides-together = endroit contre endroit
figure-row-of = rang { $n } de { $parts }
figure-sandwich = Les épaisseurs vues du dessus : doublure { $width } envers vers soi, molleton { $width-2 }, top
    { $top } endroit vers soi, plus court que la doublure de { $overhang } de
    chaque côté ; des rangs de bâti dans les deux sens, des flèches du centre vers l’extérieur.
figure-sashing-of-in = bandes intercalaires de { $width } en { $name }
figure-scale = Le carré de contrôle en taille réelle : un carré de { $words } dans un carré de 5 cm, une règle
    { $more } posée le long du haut, son zéro sur l’angle.
figure-seam = couture { $seam }
figure-seam-2 = couture
figure-seam-pressed-open = couture ouverte au fer
figure-seams-pressed = , coutures couchées { $press }
figure-second-back = second dos
figure-second-side = second côté
figure-set-on-point = { " " }sur pointe
figure-setting-triangles-in = triangles de bord en { $name }
figure-sew-all-round = coudre tout autour
figure-sew-both-folds-by-hand = coudre les deux plis à la main
figure-sew-in-the-order = Coudre dans l’ordre { $first }, { $second }
figure-sew-on-the-line = coudre sur la ligne,
figure-sheet = { $name }, feuille { $label }
figure-sheet-of = Feuille { $label } sur { $count }
figure-sheets-alt = Ligne finie en trait continu, ligne de coupe en tirets
figure-sheets-alt-2 = Feuille de gabarit{ $number }, { $name }, en taille réelle. { $lines }. { $value }{ $joined }
    Des carrés de contrôle de { $labels } et 5 cm montrent si elle est
    imprimée juste.
figure-sheets-held = { " " }Imprimé par moitié ; le pli du papier est en point-tiret.
figure-sheets-held-2 = Bords de secteur en point-tiret, le long desquels le papier se retourne.
figure-short-stitches = points courts
figure-side-by-side = côte à côte
figure-single-fold = pli simple
figure-sizes-alt = Les tailles côte à côte à une même échelle : { $each }.
figure-sleeve-attach = Le dos du quilt : le fourreau, haut de { $depth }, est centré juste sous le galon du haut,
    couture dessous, ses plis supérieur et inférieur cousus à la doublure
    à la main ; une tringle le traverse.
figure-sleeve-make = La bande du fourreau, ourlée aux deux petits bouts à { $long }, pliée en deux dans sa longueur,
    envers contre envers. Les longs bords sont cousus avec une couture
    de { $seam }, et le tube repassé à { $depth } de haut, sa couture ouverte au milieu.
figure-stitch-edge = L’appliqué à l’aiguille de près. À gauche, le bord vif du motif est encore à { $under } hors de
    la ligne finie ; au milieu, l’aiguille glisse ce rentré dessous ; à
    droite, le bord plié est cousu à petits points espacés d’environ { $apart }.
figure-stitch-tip = Former une pointe en trois images : 1 le premier côté cousu jusqu’au bout de la ligne finie, 2 la
    pointe rentrée bien droit, 3 le second côté rentré et cousu.
figure-stitches-about-apart = points espacés d’environ { $apart }
figure-stitching = couture, { $seam }
figure-stop = arrêt { $seam }
figure-straight-grain = droit-fil
figure-template = Gabarit { $letter }
figure-template-2 = Gabarit { $letter }{ $half }, { $context }
figure-templates = { $count } gabarits
figure-the-fabrics = Les { $keys } tissus : { $each }.
figure-the-finished = { $title } : { $what } fini, { $width } : { $context }{ $bound }.
figure-the-laid-out-in = { $title }, disposé en { $rows } : { $each }.
figure-the-last-fold-opens = le dernier pli s’ouvre
figure-the-paper = le papier
figure-the-pulled-apart = { $title }, écarté : { $labels }.
figure-the-pulled-apart-into = { $title }, écarté en { $how } : { $rows }{ $more }.
figure-the-quilting-lines-of-the = Les lignes de matelassage, { $title }, { $width } : { $each }.
figure-then = { " " }; puis{ " " }
figure-this-square-must = Ce carré doit
figure-tip-across = pointe droite
figure-to = { $number } { $what }, jusqu’à { $width }
figure-top = Top
figure-triangles = { $words }, { $yields } triangles
figure-trim = Un bloc de { $wide } avec une ligne de coupe tout autour, centrée sur le motif : recouper à { $kept }.
figure-trim-away = à couper
figure-trim-to = recouper à { $seam }
figure-trim-to-2 = recouper à { $allowance }
figure-turn-and-sew = rentrer et coudre
figure-turn-over-here = retourner ici
figure-turn-under = Rentré { $turn-under }
figure-turned-over = retournées
figure-two-squares-upon = Deux carrés, { $value } sur { $value-2 }, { $width }{ " " }
figure-units-apart-alt = { $parts } disposées à part : { $named }. Assemblées par { $seams } et { $press } :
    { $name }{ $size }.
figure-upright = à la verticale
figure-usable-width = laize utile { $width }
figure-wedge-edge = bord de secteur
figure-with = { $name } avec { $name-2 }
figure-with-the-template-turned-over = avec le gabarit retourné
figure-work-wedge-align = Le gabarit de papier épinglé sur le secteur plié : sa pointe vers le centre en bas à
    gauche, son bord de plis multiples le long des plis multiples à gauche, son
    bord de pli simple le long du pli simple à droite.
figure-work-wedge-baste = { " " }et un rang dans la partie à évider
figure-work-wedge-baste-2 = Le secteur plié de { $folds } épaisseurs, marqué et bâti : des rangs de longs points en
    dedans de la ligne finie{ $waste }.
figure-work-wedge-cut = L’ordre des coupes sur le secteur : { $order }.
figure-work-wedge-mark = Le secteur plié, le motif tracé sur l’épaisseur du dessus : la ligne finie en continu
figure-work-wedge-mark-2 = , la ligne de coupe en tirets à { $under } en dehors.
figure-work-wedge-mark-3 = { " " }Rien n’est tracé le long des plis.
figure-wrong-side = envers
figure-wrong-side-2 = { $name }, retourné de gauche à droite, envers vers soi : { $count } avec des marges de
    { $seam } ; les dernières, { $unit }, { $labels }, vues de l’endroit.
figure-wrong-side-allowances-wide = envers, marges { $seam }
figure-wrong-side-to = envers contre
figure-layer-wrong-side-up = { $name }, envers vers soi
figure-wrong-side-up = envers vers soi
figure-zip-face-down = fermeture, face dessous

figure-or = { " ou " }

# Ce qui se compte, en chiffres.
figure-count-block = { $count } { $count ->
    [one] bloc
   *[other] blocs
}
figure-count-row = { $count } { $count ->
    [one] rang
   *[other] rangs
}
figure-count-part = { $count } { $count ->
    [one] partie
   *[other] parties
}
figure-count-seam = { $count } { $count ->
    [one] couture
   *[other] coutures
}
figure-count-curved-seam = { $count } { $count ->
    [one] couture courbe
   *[other] coutures courbes
}
figure-count-set-in-seam = { $count } { $count ->
    [one] couture montée
   *[other] coutures montées
}
figure-count-mitred-seam = { $count } { $count ->
    [one] couture à coins en onglet
   *[other] coutures à coins en onglet
}
figure-count-slanting-seam = { $count } { $count ->
    [one] couture oblique
   *[other] coutures obliques
}
figure-count-upright-seam = { $count } { $count ->
    [one] couture verticale
   *[other] coutures verticales
}
figure-count-level-seam = { $count } { $count ->
    [one] couture horizontale
   *[other] coutures horizontales
}
figure-count-strip = { $count } { $count ->
    [one] bande
   *[other] bandes
}
figure-count-square = { $count } { $count ->
    [one] carré
   *[other] carrés
}
figure-count-fat-quarter = { $count } { $count ->
    [one] fat quarter
   *[other] fat quarters
}
figure-count-fat-eighth = { $count } { $count ->
    [one] fat eighth
   *[other] fat eighths
}
figure-count-motif = { $count } { $count ->
    [one] motif
   *[other] motifs
}
figure-count-back-piece = { $count } { $count ->
    [one] pièce de dos
   *[other] pièces de dos
}
figure-count-corner-triangle = { $count } { $count ->
    [one] triangle d’angle
   *[other] triangles d’angle
}
figure-count-sashing = { $count } { $count ->
    [one] bande intercalaire
   *[other] bandes intercalaires
}
figure-count-cornerstone = { $count } { $count ->
    [one] cabochon
   *[other] cabochons
}
figure-count-setting = { $count } { $count ->
    [one] triangle de bord
   *[other] triangles de bord
}
figure-count-patch = { $count } { $count ->
    [one] pièce
   *[other] pièces
}
figure-count-section = { $count } { $count ->
    [one] section
   *[other] sections
}
figure-count-side = { $count } { $count ->
    [one] côté
   *[other] côtés
}
figure-count-point = { $count } { $count ->
    [one] point
   *[other] points
}
figure-count-motif-of-folds = { $count } { $count ->
    [one] motif
   *[other] motifs
} à { $folds } plis

# Les coupes d’un secteur, dans l’ordre.
figure-cut-opening = évider l’ouverture à l’intérieur du secteur
figure-cut-notch-multiple = couper l’ouverture sur les plis multiples
figure-cut-notch-single = couper l’ouverture sur le pli simple
figure-cut-centre = couper l’ouverture du centre en dernier
figure-cut-outer = couper le bord extérieur en commençant aux plis multiples et en finissant au pli simple
figure-multiple-fold = plis multiples

# À quoi sert le tissu d’un échantillon.
figure-use-ground = fond
figure-use-blocks = blocs
figure-use-motif = motif
figure-use-borders = bordures
figure-use-binding = finition
figure-use-backing = doublure
figure-use-pillow-back = dos de coussin
figure-use-sleeve = fourreau

# Les épaisseurs d’un quilt, chacune avec une ligne.
figure-layer-backing = doublure,
figure-layer-batting = molleton
figure-layer-top = top,

# Les surfaces du matelassage : dans la légende, et dans une phrase.
figure-key-motif = Motif
figure-key-ground = Fond
figure-key-border = Bordure
figure-key-patchwork = Patchwork
figure-within-motif = motif
figure-within-ground = fond
figure-within-border = bordure
figure-within-patchwork = patchwork
figure-style-ditch = dans le sillon, contre le bord
figure-style-echo = lignes en écho
figure-style-parallel = lignes parallèles
figure-style-grid = un quadrillage
figure-style-as-desired = à votre goût
figure-style-apart = { $style }, tous les { $spacing }

# Comment les coutures sont couchées.
figure-pressed-open = ouvertes au fer
figure-pressed-out = couchées vers l’extérieur
figure-pressed-not = cousues
figure-pressed-first = couchées vers la première partie
figure-pressed-last = couchées vers la dernière partie
figure-pressed-sashing = couchées vers les bandes intercalaires
figure-pressed-left = couchées vers la gauche
figure-pressed-right = couchées vers la droite
figure-pressed-up = couchées vers le haut
figure-pressed-down = couchées vers le bas

# En quoi un rectangle est coupé.
figure-cut-into-once-cut-triangle = , coupé une fois en { $count } { $count ->
    [one] triangle
   *[other] triangles
}
figure-cut-into-twice-cut-triangle = , coupé deux fois en { $count } { $count ->
    [one] triangle
   *[other] triangles
}
figure-cut-into-equilateral-triangle = , coupé en { $count } { $count ->
    [one] triangle
   *[other] triangles
}
figure-cut-into-parallelogram = , coupé en { $count } { $count ->
    [one] parallélogramme
   *[other] parallélogrammes
}
figure-cut-into-diamond = , coupé en { $count } { $count ->
    [one] losange
   *[other] losanges
}
figure-round-the-template = { " " }autour du gabarit

# Le sens des fils.
figure-grain-straight = droit-fil
figure-grain-bias = biais

# Images calculées, et où elles montrent le quilt.
figure-computed = Calculé d’après le modèle, non photographié.
figure-pictured = { $what }, { $where }. { $computed }
figure-on-a-wall = sur un mur clair
figure-lying-flat = à plat
figure-on-a-bench = sur un banc contre un mur

figure-corner-mark = ligne tracée
figure-corner-sew = coudre juste en dehors
figure-corner-cut = à couper

figure-use-sashing = bandes intercalaires
figure-use-cornerstone = cabochons
figure-use-side-triangle = triangles de côté
figure-use-corner-triangle = triangles d’angle
figure-grain-off-grain = hors droit-fil

figure-way-left = à gauche
figure-way-right = à droite
figure-way-top = en haut
figure-way-bottom = en bas
figure-way-up = vers le haut
figure-way-down = vers le bas
figure-way-open = ouvertes
figure-way-out = vers l’extérieur
figure-way-sashing = vers les bandes intercalaires
figure-way-first = vers la première partie
figure-way-last = vers la dernière partie
figure-quilt-folded = quilt, plié
figure-binding-tails =
    Les deux derniers bouts, ouverts, se croisent à angle droit, endroit contre endroit, épinglés et cousus sur la diagonale du
    carré où ils se croisent ; l’angle au-delà est coupé à { $seam }. Le quilt est plié pour que les bouts se rejoignent.
