# Monter un coussin.

chapter-pillow = Monter le coussin
    .lead = Terminer la housse.

trim-front = { $centred ->
    [none] Couper molleton et doublure au ras du top, { $front } ou un peu moins là où le matelassage l’a resserré
    [motif] Couper toutes les épaisseurs du devant à { $front }, le centre du motif au milieu
   *[all] Couper toutes les épaisseurs du devant à { $front }, avec la même largeur de tissu de chaque côté
}.
    .right = Toutes les épaisseurs finissent en un bord net.
    .caption = Recouper le devant matelassé.
sew-round-front = Coudre tout autour près du bord.

hem-backs = Prendre { $backs } { $letter }, { $back }. Sur un long bord de chacune, replier { $fold } sur l’envers,
    et encore une fois,
    repasser, et coudre le long du pli intérieur.
    .caption = Ourler les pièces de dos.
finish-backs = Prendre { $backs } { $letter }, { $back }. Un long bord de chacune ne doit pas s’effilocher : employer
    une lisière, ou
    surfiler le bord coupé au zigzag.
-edge = { $edge ->
    [hem] ourlet
   *[finished] bord surfilé
}
-edges = { $edge ->
    [hem] ourlets
   *[finished] bords surfilés
}
lay-backs = Poser le devant endroit vers soi. Poser dessus une pièce de dos, endroit contre endroit, bords vifs sur
    un côté, son
    { -edge } en travers du milieu. Poser l’autre sur le côté opposé, et épingler tout autour.
    .right = Les { -edges } se chevauchent de { $overlap } en travers du milieu.
    .caption = Les pièces de dos sur le devant, se chevauchant.
sew-cover = Coudre tout autour avec une couture de { $seam }. Faire un point arrière là où les { -edges } la croisent.
    .caption = Coudre tout autour.

sew-zip-seam = Prendre la pièce de dos { $letter }, { $back }. La plier en deux, ses deux côtés de { $side } l’un sur
    l’autre, et couper
    le long du pli. Poser les moitiés endroit contre endroit et coudre les bords coupés avec une couture de
    { $seam } : un point
    court aux deux bouts et, sur la longueur de la fermeture, un point de bâti d’environ { $stitch } entre les deux.
    Ouvrir la
    couture au fer.
    .caption = La fermeture à glissière dans le dos.
sew-zipper = Centrer la fermeture, face contre la partie bâtie. La coudre aux marges avec un pied ganseur.
open-zip-seam = Retirer le bâti de la couture et vérifier que la fermeture coulisse.
    .right = Les deux bords pliés se rejoignent sur la fermeture et cachent ses dents.
    .caution = Laisser la fermeture à demi ouverte avant de coudre le dos au devant.
lay-zipped-back = Poser le dos sur le devant, endroit contre endroit, le recouper à la taille du devant et épingler.
sew-zipped-cover = Coudre tout autour avec une couture de { $seam }.

finish-allowances = Couper les angles en travers, pas plus près que { $spare } de la couture, et surfiler les bords
    vifs au zigzag.
turn-cover = Retourner la housse sur l’endroit et pousser les angles avec une pointe mousse.
    .right = La housse mesure { $cover }.
    .tip = Si les angles pointent comme des oreilles, rentrer la couture de { $in } sur les derniers { $over } vers
        chaque angle.
    .caption = Retourner la housse.
fill-cover = Mettre le coussin intérieur, { $form }.
