# Couleurs et tissus : échantillons, clair et foncé, autres couleurs.

chapter-colour-and-fabric = Couleurs et tissus
    .lead = { CAPITAL($fabrics) }.
    .swatches = Les tissus et leurs places.
    .pairs = Chaque tissu à côté de chaque autre. Le nombre est la différence de clarté, avec un point d’exclamation
        quand
        elle est faible. Un disque estime ce qui se voit à travers.

light-to-dark = Du clair au foncé : { $fabrics }. Si vous choisissez d’autres tissus, gardez cet ordre : les
    photographier en
    noir et blanc.
fabric-directional = { $fabric } a un sens : garder le haut de l’imprimé vers le haut du quilt.
check-every-ground = Comparer le motif avec chaque tissu du fond.
pair-same = Le motif et son fond sont tous deux en { $motif } : seul le matelassage dessinera le contour.
pair-close = { $motif } et { $ground } sont proches en clarté : le motif sera discret. Choisir pour l’un un tissu
    plus clair
    ou plus foncé s’il doit ressortir.
pair-lighter = { $motif } est plus clair que { $ground } en dessous. Les tenir l’un sur l’autre à la lumière du jour.
    Si le
    fond se voit à travers, choisir un tissage plus serré, doubler le motif d’un coton blanc fin, ou évider le fond
    derrière
    lui à { $inside } à l’intérieur des points.
pair-darker = { $motif } est plus foncé que { $ground } en dessous : rien ne se voit à travers.

table-colourways = Autres couleurs
    .instead = Au lieu de
    .use = Prendre
    .caption = { $size } comme montré et en d’autres couleurs.
