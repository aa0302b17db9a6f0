# Le lavage ; la page à colorier ; la dernière page.

care-wash = Laver comme le disent les étiquettes des tissus et du molleton ; si elles diffèrent, suivre la plus
    douce. Un
    lavage doux à froid et un séchage à plat à l’ombre conviennent à la plupart des ouvrages en coton.
care-colours = Essayer les couleurs vives avant le premier lavage : presser un linge blanc humide sur chaque tissu et
    voir
    s’il déteint.
care-wring = Ne pas tordre, et ne pas écraser au fer la surface matelassée.
care-starch = Retirer chaque marque, puis rincer l’amidon : il jaunit et attire les insectes.
care-form = Retirer le coussin intérieur de la housse avant de laver.
care-store = Ranger roulé ou plié sans serrer, à l’abri du soleil et pas dans du plastique. Changer les plis de temps en
    temps.

chapter-colouring-page = Page à colorier
    .lead = Copier cette page et essayer vos propres couleurs avant d’acheter.
    .caption = { $size } au trait.

chapter-edition = Cette édition
    .mistake = Chaque nombre de ce livret est calculé à partir d’un seul dessin et contrôlé. Si vous trouvez une erreur
        malgré tout, merci de nous le dire : indiquer l’édition, la taille et l’étape.
    .write = Écrire à { $address }.
    .computed = Les images { $pictures } sont calculées et non photographiées : les formes, les coutures et les
        lignes de
        matelassage du modèle, dans les couleurs de ses tissus.
picture-cover = de la couverture
picture-sizes = { $sizes ->
    [1] de l’ensemble
   *[other] de toutes les tailles
}
picture-colours = d’autres couleurs

# Un livret sans ses feuilles de gabarits.

sheets-apart = Les feuilles sont à part
    .file = Les feuilles de gabarits sont en taille réelle et trop grandes pour ce livret. Elles sont dans le fichier
        **{ $file }**, pour papier { $paper }. Les imprimer de là à 100 %.
    .loose = Les feuilles de gabarits sont jointes à ce livret, imprimées en taille réelle. Mesurer le carré de contrôle
        de chacune avant de couper.
