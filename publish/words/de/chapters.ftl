# Was jedes Kapitel über die Größen sagt, für die es gilt.

part-only = Dieser Teil gilt nur für { $sizes }.

# Vor einem Satz, der nicht für alle Größen seines Schritts gilt.
for-sizes = Für { $sizes }: { "" }

# Vor einem Schritt, der nur für manche Größen gilt, in eigenen oder fremden Worten.
only-for = Nur { $sizes }: { "" }
