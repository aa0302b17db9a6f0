# Farbe und Stoff: Stoffproben, Hell und Dunkel, andere Farben.

chapter-colour-and-fabric = Farbe und Stoff
    .lead = { CAPITAL($fabrics) }.
    .swatches = Die Stoffe und ihre Plätze.
    .pairs = Jeder Stoff neben jedem anderen. Die Zahl ist der Unterschied in der Helligkeit, mit einem Ausrufezeichen, wo er klein ist. Ein
        Kreis schätzt, was durchscheint.

light-to-dark = Von hell nach dunkel: { $fabrics }. Bei anderen Stoffen diese Reihenfolge einhalten: sie in Schwarzweiß fotografieren.
fabric-directional = { $fabric } hat eine Richtung: oben im Muster bleibt oben im Quilt.
check-every-ground = Das Motiv neben jedem Stoff des Hintergrunds prüfen.
pair-same = Motiv und Hintergrund sind beide { $motif }: den Umriss zeichnet allein das Quilten.
pair-close = { $motif } und { $ground } sind ähnlich hell: das Motiv bleibt dezent. Soll es hervortreten, für eines einen helleren oder
    dunkleren Stoff wählen.
pair-lighter = { $motif } ist heller als { $ground } darunter. Bei Tageslicht übereinanderhalten. Scheint der Hintergrund durch, einen dichter
    gewebten Stoff wählen, das Motiv mit dünner weißer Baumwolle unterlegen oder den Hintergrund dahinter { $inside } innerhalb der Stiche
    wegschneiden.
pair-darker = { $motif } ist dunkler als { $ground } darunter: nichts scheint durch.

table-colourways = Andere Farben
    .instead = Statt
    .use = Verwenden
    .caption = { $size } wie gezeigt und in anderen Farben.
