# Ce qui est sur les couvertures et sur la page de l’édition.

edition-first = Première édition
