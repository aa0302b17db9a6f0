# Ce que chaque chapitre dit des tailles qu’il concerne.

part-only = Cette partie ne concerne que : { $sizes }.

# Avant une phrase qui ne concerne pas toutes les tailles de son étape.
for-sizes = Pour { $sizes } : { "" }

# Avant une étape qui ne concerne que certaines tailles.
only-for = { $sizes } seulement : { "" }
