# Poser un motif sur son fond ; préparer son bord avant cela.

chapter-preparing-the-edge = Préparer le bord
    .lead = Rabattre le bord sur une forme de papier et le repasser avant de coudre.

cut-paper-shape-folded = { -whose }Couper du papier de congélation aussi grand que le carré du motif, { $paper }, et
    le plier en { $folds }
    comme le tissu, côté ciré en dedans. L’agrafer près des bords ouverts. Poser le plus petit gabarit de secteur sur
    les plis,
    tracer son contour, et couper sur cette ligne.
    .right = Ouvert, le papier est le motif fini sans rentré.
    .tip = Le motif est sa propre image en miroir : les deux côtés du papier conviennent.
cut-paper-shape-traced = { -whose }Poser le gabarit raccordé face contre une fenêtre claire ou une table lumineuse et
    le papier de
    congélation dessus, côté mat vers soi. Reporter la ligne continue et couper dessus.
    .right = Vu de son côté mat, le papier est l’image en miroir du motif : il se pose sur l’envers du tissu.
iron-paper = Poser le motif envers vers soi et la forme de papier dessus, côté ciré dessous, centres et plis l’un sur
    l’autre. Coller
    le papier au fer, du centre vers l’extérieur.
    .right = Une bande de tissu de { $under } dépasse tout autour du papier{ $holes ->
        [yes] { " " }et dans chaque ouverture
       *[no] { "" }
    }.
clip-edge = Cranter les angles rentrants à un fil du papier, et les courbes rentrantes en quelques endroits. Laisser
    les courbes
    sortantes entières.
press-edge = Passer au pinceau de l’amidon liquide sur une petite longueur du rentré, la rabattre sur le papier avec
    un bâtonnet de
    bois, et la sécher de la pointe du fer. Faire d’abord les angles rentrants, puis les courbes, les pointes en
    dernier : le
    bout tout droit, puis un côté, puis l’autre.
    .right = Le pli suit le papier, lisse dans les courbes.
    .caution = Le fer et l’amidon humide sont brûlants : se servir du bâtonnet, pas des doigts.
peel-paper = Laisser refroidir le motif à plat. Soulever les bords rabattus juste assez pour retirer le papier, et
    repasser encore une
    fois par l’envers.
    .tip = Le papier se recolle plusieurs fois au fer : le garder pour le motif suivant.

chapter-placing = Poser le motif sur le fond
    .lead = Faire coïncider les plis.

block-named = bloc { $name }
crease-ground = Plier { $ground ->
        [whole] le fond { $letter }{ $wholes ->
            [yes] { -of-block }
           *[no] { "" }
        }
       *[pieced] le fond assemblé{ $pieceds ->
            [yes] { -of-block }
           *[no] { "" }
        }
    } { $seams ->
        [both] sur les deux diagonales
        [one] en deux en travers de la couture et sur les deux diagonales
       *[none] en deux dans les deux sens et sur les deux diagonales
    }, en marquant chaque pli à l’ongle avant de l’ouvrir.{ $seams ->
        [both] { " " }Les coutures remplacent les plis en deux.
        [one] { " " }La couture remplace l’autre pli en deux.
       *[none] { "" }
    }
    .right = Toutes les lignes se croisent en un point : le centre du fond.
    .caption = Le fond avec ses repères.
-of-block = { " " }({ $block })
centre-motif = Poser le fond endroit vers soi, et le motif dessus, endroit vers soi. Passer une épingle par les deux
    centres, et abaisser
    le motif.
    .right = L’épingle est bien droite.
align-motif = { -align }
    .right = Le fond est égal tout autour. Dans le bloc fini, les pointes sont à { $clear } en dedans de son bord.
    .caption = { $then ->
        [fused] Le motif centré sur ses repères.
       *[basted] Le motif centré et bâti.
    }
align-motif-named = { "" }**{ CAPITAL($motif) }.** { -align }
    .right = Le fond est égal tout autour. Dans le bloc fini, les pointes sont à { $clear } en dedans de son bord.
    .caption = { $then ->
        [fused] Le motif centré sur ses repères.
       *[basted] Le motif centré et bâti.
    }
-align = { $guides ->
        [both] Amener ses plis droits sur les plis en deux et ses plis en diagonale sur les plis en diagonale.
        [half] Amener ses plis droits sur les plis en deux.
        [diagonal] Amener ses plis sur les diagonales.
        [level] { -one-fold } horizontal.
        [upright] { -one-fold } vertical.
        [fused] Tourner le motif jusqu’à ce qu’il soit à égale distance entre les plis, comme sur le dessin.
       *[none] Tourner le motif jusqu’à ce que ses plis soient à égale distance entre les plis, comme sur le dessin.
    } Le lisser du centre vers l’extérieur et épingler chaque bras en son milieu.
-one-fold = Amener le pli qui passe droit par son centre sur le pli
baste-motif = Bâtir à longs points avec un fil contrasté, du centre vers l’extérieur le long de chaque bras, à
    { $inside } en dedans du { $edge ->
        [pressed] bord rabattu
       *[raw] bord vif
    }. Retirer les épingles au passage.
    .right = Soulever le fond par un angle : le motif ne bouge pas.
baste-arms = Bâtir les bras étroits une seule fois, en leur milieu.
