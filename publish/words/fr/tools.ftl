# Le matériel, en liste à cocher.

chapter-tools = Matériel
    .lead = Tout préparer avant de commencer.
    .piecing = Pour couper et assembler
    .motif = Pour le motif
    .paper = Pour les gabarits et les supports
    .finishing = Pour matelasser et finir

tool-cutter = Cutter rotatif à lame neuve, tapis de coupe et longue règle de patchwork
tool-square = Une grande règle carrée{ $angled ->
    [yes] { " " }avec une ligne à 45 degrés
   *[no] { "" }
} pour recouper
tool-machine = Machine à coudre en bon état, aiguilles neuves 80/12 pour l’assemblage et 90/14 pour le matelassage,
    fil de coton 50 wt, et un pied
    ou un guide pour une couture de { SHORT($seam) }
tool-iron = Fer, table à repasser ferme et serviette épaisse
tool-pins = Épingles, découseur et ciseaux à fil
tool-marker = Un crayon fin ou un marqueur effaçable pour les lignes sur l’envers
tool-starch = Amidon en aérosol ou liquide

tool-paper-printer = Une imprimante et du papier ordinaire
tool-paper-card = Carton fin et bâton de colle, ou plastique à gabarits, et ciseaux à papier
tool-paper-pins = Beaucoup d’épingles fines pour les coutures courbes
tool-paper-foundations = Papier fin pour les supports, qui se déchire bien et passe dans l’imprimante
tool-paper-needle = Une aiguille machine solide, comme 90/14, et une pince à épiler

tool-motif-printer = Une imprimante, du papier ordinaire léger, et des ciseaux à papier
tool-motif-tape = Ruban adhésif transparent, et table lumineuse ou fenêtre claire
tool-motif-scissors = De petits ciseaux pointus, et de plus grands pour beaucoup d’épaisseurs
tool-motif-marker = Un marqueur fin à tissu, comme une craie ou un crayon blanc, qui se voit sur le motif, résiste au
    fer et part au lavage
tool-motif-basting = Aiguille à main et fil contrasté pour bâtir
tool-motif-needles = Aiguilles fines à appliqué, longues et minces, comme des aiguilles de modiste n° 10 ou 11
tool-motif-freezer = Papier de congélation, agrafeuse, petit pinceau et bâtonnet de bois pointu
tool-motif-hand-needle = Une aiguille fine à main
tool-motif-pencil = Un crayon
tool-motif-cloth = Une pattemouille pour protéger la table à repasser
tool-motif-pins = Épingles courtes et fines qui n’accrochent pas le fil

tool-quilting = Pied double entraînement, ou aiguille courte à matelasser n° 9 ou 10 et dé pour matelasser à la main
tool-basting = Épingles de sûreté, ou fil, pour bâtir les épaisseurs, et ruban adhésif pour la doublure
tool-free-motion = Un pied de piqué libre pour les courbes serrées
tool-lines = Craie, ou marqueur lavable, pour les premières lignes de matelassage, et un guide de pied ou du ruban
    pour les autres
tool-binding = Pinces pour le galon et une aiguille à main pour le terminer
tool-zipper-foot = Un pied ganseur
tool-point = Une pointe mousse pour retourner les angles, comme une aiguille à tricoter
tool-label = Un stylo permanent à tissu ou du fil à broder pour l’étiquette
