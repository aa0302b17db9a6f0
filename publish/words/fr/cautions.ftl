# Les précautions d’usage. Rien ici ne remplace la notice d’un fabricant ni un règlement.

chapter-cautions = Travailler en sécurité
    .lead = Lire cette page avant de couper, et de nouveau avant d’offrir l’ouvrage.

caution-rotary = Cutter rotatif
    .lock = Fermer et verrouiller la lame chaque fois que le cutter est posé. Porter des chaussures fermées.
    .away = Couper vers l’avant, loin du corps, debout, les doigts à l’écart du bord de la règle.
    .blades = Envelopper les lames usées avant de les jeter, et tenir le cutter hors de portée des enfants.
caution-iron = Fer à repasser
    .stand = Poser le fer sur une surface stable, sur son talon ou son support, le cordon à l’écart.
    .steam = La vapeur brûle : garder les doigts loin des plis que l’on repasse.
    .unplug = Débrancher le fer en quittant la pièce.
caution-machine = Machine à coudre
    .fingers = Garder les doigts loin de l’aiguille et du pied-de-biche quand la machine tourne.
    .off = Éteindre la machine pour changer l’aiguille ou le pied.
caution-sprays = { $what ->
    [both] Amidon, voile thermocollant et colles
    [web] Voile thermocollant et colles
   *[starch] Amidon et colles
}
    .fumes = { $what ->
        [both] Amidon, voile thermocollant et colles en aérosol
        [web] Voile thermocollant et colles en aérosol
       *[starch] Amidon et colles en aérosol
    } dégagent des vapeurs ou des gouttelettes. Les employer dans une pièce bien aérée et ne pas les respirer.
    .flames = Tenir les aérosols loin des flammes, des radiateurs et d’un fer chaud. Poser la bombe et laisser
        retomber le
        nuage avant de reprendre le fer.
caution-glue = Colle
    .text = Tenir la colle loin des yeux et hors de portée des enfants, et suivre ce que dit son emballage.
caution-pins = Épingles, aiguilles et ciseaux
    .count = Compter épingles et aiguilles avant et après chaque séance, et passer un aimant sur l’ouvrage fini avant de
        s’en servir.
    .close = Fermer les ciseaux dès qu’on les pose. Faire des pauses quand on coupe beaucoup d’épaisseurs.
caution-babies = Bébés
    .text = Ne laisser ni quilt, ni coussin, ni aucune autre literie molle là où dort un bébé de moins d’un an.
        Jusque-là,
        accrocher au mur le quilt d’un bébé.
caution-small-parts = Petites pièces
    .text = Ce modèle n’a ni boutons ni perles. N’en ajouter à aucun ouvrage qu’un enfant de moins de trois ans peut
        manier : les petites pièces peuvent étouffer.
caution-fire = Feu
    .burns = Le tissu et le molleton brûlent. Tenir l’ouvrage fini loin des flammes, des bougies et des radiateurs.
    .rules = Si vous vendez vos ouvrages, renseignez-vous sur les règles d’inflammabilité, d’étiquetage des fibres et
        d’articles pour enfants là où vous vivez.
caution-makers = Avant tout cela
    .text = Les notices de vos outils, de votre machine, de vos tissus, du molleton et des aérosols passent d’abord,
        ainsi
        que les lois et règlements de votre pays. Si ce livret dit autre chose, suivez-les. En cas de doute sur un
        outil ou
        un cordon, demandez à une personne qualifiée.
