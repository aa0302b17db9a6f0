# Coudre un motif à la main, et recouper son bloc.

chapter-applique = Appliqué à l’aiguille
    .lead = Rentrer le bord peu à peu, juste en avant des points.

thread-needle = Enfiler une aiguille à appliqué avec un seul brin fin assorti à { $fabric }, d’environ { $long } de
    long, et nouer un bout.
    .tip = Prendre du coton 60 wt, ou de la soie ou du polyester fins.
thread-needle-prepared = Enfiler une aiguille fine avec un seul brin assorti à { $fabric }, d’environ { $long } de
    long, et
    nouer un bout. Commencer à l’intérieur d’un pli, sur une courbe douce près du centre.
begin-at-centre = Commencer { $first ->
        [centre] par l’ouverture du centre
        [openings] par les ouvertures les plus proches du centre
       *[edge] par la partie du bord la plus proche du centre
    } et avancer vers l’extérieur. Débuter sur une courbe douce ou une partie droite. Cacher le nœud sous le
    motif et sortir l’aiguille tout au bord de la ligne finie.
sweep-edge = Du côté de l’aiguille, glisser le rentré de { $under } sous le motif, pas plus de { $ahead } en avant
    des points. Le maintenir avec le pouce.
    .right = La ligne finie vient de disparaître.
    .caption = Rentrer le bord et piquer son pli.
stitch-edge = Piquer dans le fond juste à côté de l’endroit où le fil quitte le motif, passer dessous et ressortir à
    travers deux ou trois fils du bord plié. Espacer les points d’environ { $apart }, jamais plus de { $most }, et
    tirer le fil sans le serrer trop.
    .right = Sur l’endroit on ne voit que le bord ; sur l’envers, des points courts, réguliers et obliques.
    .tip = Droitiers : coudre dans le sens inverse des aiguilles d’une montre, le bord vers soi. Gauchers : dans le
        sens des aiguilles d’une montre.
stitch-prepared-edge = Coudre le bord à points cachés : piquer dans le fond juste à côté du pli, passer dessous et
    ressortir à travers deux ou trois fils du pli. Espacer les points d’environ { $apart }, jamais plus de { $most }.
    Coudre d’abord les bords proches du centre.
    .right = Sur l’endroit on ne voit que le bord, et rien ne se soulève sous l’ongle.
    .tip = À la machine, prendre un point invisible ou un zigzag étroit et un fil fin : seule la pointe du zigzag
        attrape le pli.
turn-points = À une pointe, coudre jusqu’au bout de la ligne finie et ajouter un point. Couper l’excédent de la
    pointe, la rentrer bien droit, puis glisser le second côté dessous.
    .right = La pointe est nette, sans bosse ni fil qui dépasse.
    .caption = Former une pointe.
turn-corners = Juste avant un angle rentrant, cranter droit dans l’angle avec de petits ciseaux, à un fil de la ligne
    finie. Rentrer un côté jusqu’au cran, puis l’autre, et faire trois points serrés dans l’angle.
    .right = L’angle est net et aucun fil ne s’échappe.
    .caution = Ne cranter chaque angle qu’en y arrivant, jamais à travers la ligne finie.
    .caption = Cranter et rentrer un angle rentrant.
turn-curves = Les courbes sortantes ne se crantent pas : rentrer de petites longueurs et répartir l’ampleur dessous.
    Cranter les courbes rentrantes en quelques endroits, jusqu’à la moitié du rentré.
    .right = La courbe est régulière.
    .tip = Si une bosse apparaît, l’effacer avec l’aiguille avant le point suivant.
turn-openings = { $bent ->
        [yes] Rentrer chaque ouverture comme le bord extérieur, à points serrés.
       *[no] Traiter chaque ouverture comme une courbe rentrante sur tout son tour, légèrement crantée, à points serrés.
    }
    .right = Le fond apparaît dans une ouverture régulière.
    .caption = Rentrer le bord d’une ouverture.
fasten-off = Pour arrêter un fil, faire deux petits points dans le fond derrière le motif. Glisser l’aiguille entre
    fond et motif sur sa propre longueur et couper le fil.
press-block = Retirer le bâti et toutes les marques, comme le dit le fabricant du marqueur : la chaleur peut les
    fixer. Repasser le bloc face contre une serviette pliée.
    .right = Le bord ne brille pas et ne marque pas.

pin-stabiliser = Dans le stabilisateur, couper { $squares }. En épingler un derrière chaque fond, débordant du motif de
    tous les côtés.{ $wide ->
        [yes] { " " }Si un carré est plus large que le rouleau, poser deux longueurs côte à côte.
       *[no] { "" }
    }
    .right = Le fond est bien à plat.
tear-stabiliser = Déchirer doucement le stabilisateur en tenant les points avec le pouce.

chapter-applique-prepared = Coudre un bord préparé
    .lead = Le bord est déjà rentré : le coudre à points cachés.

cut-ground-away = Tenir le bloc devant la lumière. Si le fond se voit à travers, l’évider derrière le motif, à
    { $inside } à l’intérieur des points.
    .caution = Écarter le fond du motif avant de couper.
trim-blocks = Recouper { $many ->
        [yes] chaque bloc
       *[no] le bloc
    } à { $size } : la moitié, du centre à chaque côté.{ $pieced ->
        [yes] { " " }Sur un fond assemblé, aligner aussi la règle sur les coutures.
       *[no] { "" }
    }
    .right = Les angles sont droits et le fond est égal autour du motif.
    .tip = Poser la diagonale d’une règle carrée sur un pli en diagonale.
    .caption = Recouper le bloc autour de son centre.
trim-at-edge = Disposer les blocs comme ils seront cousus. Sur chacun, tracer le carré fini autour de son centre avec
    un marqueur effaçable, { $side } de chaque côté. Couper à { $seam } hors de la ligne là où un côté rejoint un
    autre bloc, à { $closing } hors de la ligne au bord de la housse.
    .right = Le motif est au milieu de chaque bloc fini, et les bords extérieurs ont la marge plus large qui ferme
        la housse.
    .caption = Recouper le bloc autour de son centre.
leave-large = Ne pas recouper le bloc : il se recoupe après le matelassage, quand il ne peut plus rétrécir.
