# Ce qu’il faut acheter : tissus, molleton, voile, coussins intérieurs, fil ; ce qui est déjà là ; les prédécoupés.

chapter-materials = Fournitures
    .lead = Métrages à acheter, arrondis à ce qu’un magasin coupe.

fabric-assumes = Les métrages supposent { $differs ->
    [yes] une laize utile de { $widths }
   *[no] { $widths } de laize utile
}, mesurée entre les lisières{ $includes ->
    [none] { "" }
   *[some] , et comprennent { $included }
}.
width-of = { $width } pour { $fabrics }
include-straightening = { SHORT($length) } pour redresser le bout coupé
include-squaring = { SHORT($length) } par bande pour garder son bord droit
include-mis-cut = { SHORT($length) } pour une bande ratée

table-fabric = Tissu
fabric-row = **{ $fabric }** : { $uses }
use = { $use ->
    [ground] fond
    [blocks] blocs
    [foundation] assemblage sur papier
    [motif] motif
    [sashing] bandes intercalaires
    [cornerstone] cabochons
    [side-triangle] triangles de côté
    [corner-triangle] triangles d’angle
    [backing] doublure
    [binding] finition
    [pillow-back] dos de coussin
   *[sleeve] fourreau
}
use-alone = pour { $use ->
    [backing] la doublure
    [binding] la finition
    [pillow-back] le dos de coussin
    [sleeve] le fourreau
   *[top] le top
} seulement
at-hand = { $bought } ; disponible : { $stock }
stock-short = il manque { $length }
stock-left = suffisant, il reste { $length }
stock-little-left = suffisant, il reste moins de { $length }
stock-even = suffisant, au { $unit ->
    [centimetre] centimètre
   *[inch] pouce
} près

table-other-materials = Autres fournitures
material-batting = **Molleton** : { $name }
material-web = **Voile thermocollant**
material-stabilizer = **Stabilisateur à déchirer**
material-form = **Coussin intérieur**
material-zipper = **Fermeture à glissière**, à la mesure du dos
batting-cell = { $size }{ $packed ->
    [yes] { " " }; emballage : { $package }
   *[no] { "" }
}
# Un molleton emballé, par son nom et ses côtés.
package = { $name ->
    [craft] petit format
    [crib] lit de bébé
    [cot] lit d’enfant
    [single] une personne
    [twin] lit jumeau
    [full] deux personnes
    [double] deux personnes
    [queen] grand lit
   *[king] très grand lit
} { SIDES($sides) }
web-cell = { $length } de voile large de { $width }
stabilizer-cell = { $length } de stabilisateur large de { $width }
zipper-cell = Une

table-thread = Fil
thread-piecing = Assemblage{ $pillows ->
    [yes] { " " }et montage
   *[no] { "" }
} : gris ou beige
thread-applique = Appliqué, assorti à { $fabric }
thread-quilting = Matelassage : assorti { $around ->
    [ground] au fond
    [both] aux fonds et aux blocs
   *[blocks] aux blocs
} ou contrasté
thread-binding = Finition, assorti à { $fabric }
thread-cell = { $thread } : { $spools }
thread-bobbins = Canettes pleines pour le matelassage, remplies de son fil
thread-spool = Une bobine fait { $metres } m.
thread-bobbin = Une canette pleine de classe 15 contient environ { $length } de fil 50 wt.

hint-weave = Choisir pour le motif un coton de patchwork au tissage serré : il garde un pli et s’effiloche peu.
hint-package = Les formats de molleton emballé varient ; vérifier l’étiquette.

# En bref, au dos de la couverture.
short-fabric = { $fabric } : { $bought }
short-size = { $size } { $bought }
# `said` vaut yes quand le nom du molleton contient déjà `short-batting-word`.
short-batting = { $said ->
    [yes] { $name }
   *[no] Molleton : { $name }
}
short-batting-word = molleton
short-form = Coussin intérieur { SHORT($form) }
short-web = Voile thermocollant
short-stabilizer = Stabilisateur à déchirer

# Vendu prédécoupé.

sold-piece = { $pieces } de { $size }
sold-square = { $pieces } de { $side }
sold-strip = { $pieces }, largeur { $width }
sold-fat = { $pieces }, { $size }
packets-of = { $packets } de { $each } ; { $used } servent
precut-or-length = { CAPITAL($ready) } ; ou { $length }

chapter-looking-up = À consulter
table-precuts = Avec des prédécoupés
precut-squares = Carrés { SHORT($side) }
precut-strips = Bandes { SHORT($width) }
precut-fat-quarters = Fat quarters
precut-fat-eighths = Fat eighths
precut-no = non : { $piece }
precut-joined = { FIGURES($count) }{ $joins ->
    [some] , { $joined } raccordées
   *[none] { "" }
}
one-fat-quarter = un fat quarter { SHORT($length) } × { SHORT($width) }
one-fat-eighth = un fat eighth { SHORT($length) } × { SHORT($width) }
precut-vary = { CAPITAL($sizes) } : mesurer les vôtres, les tailles varient.
precut-says-no = **Non** nomme la pièce plus grande que ce qui se vend.
precut-not-looked = **{ $sign }** : plus de pièces de tailles différentes que personne n’en coupe là-dedans. Acheter
    au mètre.
precut-says-joined = **Raccordées** : ces bandes se cousent alors de plusieurs longueurs plus courtes.

# Le tissu déjà là.

nothing-at-all = rien
table-at-hand = Ce que donne le tissu disponible
    .uses = On y coupe
    .still = Encore à acheter
    .note = Couper ce qui est là avant d’acheter : les métrages ci-dessus valent pour tout acheter.
table-cutting-at-hand = Couper d’abord le tissu disponible
    .from = Dans
    .cut = Couper
    .note = Les tableaux des pièces donnent la taille de chaque lettre.
some-of = { $count } sur { $all }
then-bought = { CAPITAL($what) }, acheté
each-sheet = { $sheets ->
    [1] { "" }
   *[other] chacun :{ " " }
}{ $strips }
strips-of-sheet = { $strips }, hauteur { $depth }{ $way ->
    [length] { " " }dans la longueur
   *[width] { "" }
}, avec { $holds }{ $strips ->
    [one] { "" }
   *[other] { " " }dans chacune
}
section-of-sheet = une section large de { $width } pour { $strips }
