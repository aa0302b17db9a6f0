# Plusieurs modèles en un livre : ce qu’il dit une fois pour tous.

book-foreword = Avant-propos
book-tools-lead = Tout ce que demandent les modèles de ce livre ; chaque ligne dit lesquels, sauf si c’est tous.
book-read-as-well = Lire aussi *{ $title }*, page { $page }.
book-glossary-lead = Les mots et les mesures de ce livre.
chapter-index = Index
    .lead = Où s’emploient les termes du métier.
    .terms = Termes
    .term = Terme
    .pages = Pages
chapter-techniques = Techniques
    .lead = Ce que demandent plusieurs des modèles. Chacun dit où il en a besoin.
    .printing = Imprimer les gabarits
work-steps = Suivre les étapes { $first } { $many ->
    [two] et
   *[more] à
} { $last } de *{ $title }*, page { $page }.
book-sheets = Les copier, ou les imprimer
    .text = Ne pas découper le livre : copier les feuilles à 100 %, et mesurer le carré de contrôle de chaque copie.
book-patterns = Les modèles : { $patterns }.
