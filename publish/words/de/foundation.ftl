# Auf gedruckten Nähvorlagen nähen.

chapter-foundation = Nähen auf Papier
    .lead = Stoff in der Reihenfolge der Nummern auf gedrucktes Papier nähen.
foundation-of = { $title }: { $sizes }
foundation-mirror = Die bedruckte Seite ist ein Spiegelbild
    .sides = Die Linien sind auf die Seite gedruckt, auf der genäht wird. Der Stoff liegt auf der anderen, leeren Seite, daher ist der
        fertige Block das Spiegelbild des Drucks: was auf dem Papier links ist, kommt am Block rechts heraus.
    .numbers = A1 auf einer Nähvorlage ist Abschnitt A, Teil 1, der zuerst genäht wird. Fette Buchstaben in der Tabelle sind Teile, die
        zugeschnitten werden.
foundation-counts = Zu nähen: { $counts }.
foundation-count = { $letters ->
    [one] Abschnitt { $named } { TIMES($count) }
   *[other] Abschnitte { $named } je { TIMES($count) }
} für { $count ->
    [one] { $block }
   *[other] { PLURAL($block) }
}{ $whole ->
    [yes] , ganz auf einer Nähvorlage
   *[no] { "" }
}
foundation-letters = { $first } bis { $last }
foundation-sections = { CAPITAL($block) }: seine Abschnitte, und wie sie verbunden werden.
foundation-fabric = Stoff für { $block }: { $sizes }
    .patch = Feld
    .fabric = Stoff
    .piece = Teil
    .size = Zuschnittmaß
    .note = Stoff für eine Nähvorlage wird größer geschnitten als sein Feld und beim Nähen zurückgeschnitten.
foundation-section = Abschnitt { $letter }: { TIMES($count) } nähen

print-foundations = Die Nähvorlagen{ $several-sizes ->
        [yes] { " " }der gewählten Größe
       *[no] { "" }
    } mit **100 %** auf dünnes, leicht reißendes Papier drucken, eine für jeden Abschnitt, der genäht wird, und auf jedem Blatt das
    Prüfquadrat messen. Etwa { $spare } außerhalb der gestrichelten Linie auseinanderschneiden. Wird ein Blatt kopiert, auch auf der
    Kopie das Quadrat messen.
    .right = Beide Prüfquadrate stimmen, und jeder Abschnitt hat seinen Buchstaben.
shorten-stitch = Die Stichlänge auf etwa { $stitch } einstellen, kürzer als für andere Nähte, und eine neue kräftige Nadel einsetzen, etwa
    Stärke 90/14. Enge Stiche und eine kräftige Nadel perforieren das Papier, sodass es sich abreißen lässt, ohne an der Naht zu ziehen.
    .caution = Papier macht Nadeln und Klingen stumpf: beide wechseln, bevor wieder nur Stoff genäht oder geschnitten wird.
lay-first-patch = Eine Nähvorlage mit der leeren Seite zum Körper gegen das Licht halten. Den Stoff von Feld 1 mit der linken Seite auf das
    Papier legen, sodass er Feld 1 bedeckt und auf jeder Seite mindestens { $spare } über dessen Linien hinausreicht. Flach feststecken.
    .right = Gegen das Licht liegt Feld 1 innerhalb seines Stoffs.
    .caption = Abschnitt { $section }: der Stoff von Feld 1 unter dem Papier, von der bedruckten Seite durch das Papier gesehen.
sew-patch = Den Stoff von Feld 2 rechts auf rechts auf Feld 1 legen, seine Kante etwa { $seam } über die Linie zwischen Feld 1 und 2 hinaus. Zur
    Probe auf dieser Linie umklappen: er muss Feld 2 mit einer Zugabe ringsum bedecken. Zurücklegen, alles wenden und auf der gedruckten
    Linie nähen, von einigen Stichen davor bis einige Stiche danach.
    .right = Die Stiche liegen auf der Linie und fassen beide Stoffe.
    .caption = Abschnitt { $section }: auf der Linie genäht, von der bedruckten Seite.
trim-patch = Das Papier an der Linie über die Kante einer Karte zurückfalten und beide Nahtzugaben auf { $seam } zurückschneiden, ohne das Papier
    zu schneiden.
    .caution = Beim Schneiden die Finger hinter dem Lineal lassen.
    .caption = Abschnitt { $section }: das Papier zurückgefaltet und die Nahtzugaben zurückgeschnitten.
open-patch = Das Papier auffalten, Stoff 2 über Feld 2 öffnen und von der Stoffseite mit trockenem Eisen flach bügeln.
    .right = Stoff 2 bedeckt Feld 2, und in der Naht ist kein Fältchen.
    .caution = Das Eisen vom Druck fernhalten: heißer Toner oder Tinte kann verschmieren.
sew-further-patches = Mit jedem Feld in der Reihenfolge der Nummern ebenso: über die Linie legen, die es mit dem schon Genähten teilt, nähen,
    zurückschneiden, bügeln.
    .right = Die leere Seite des Papiers ist bedeckt, und ringsum reicht Stoff über die gestrichelte Schnittlinie hinaus.
trim-section = Den Abschnitt mit der bedruckten Seite nach oben legen. Mit Lineal und Rollschneider Papier und Stoff auf der gestrichelten
    Schnittlinie durchschneiden. Sie liegt { $seam } außerhalb der äußeren Nahtlinie.{ $edges ->
        [wider] { " " }An einer Kante, die außen am Kissen liegt, stattdessen { $wider } außerhalb der äußeren Nahtlinie schneiden.
       *[alike] { "" }
    }
    .right = Die Kanten sind gerade, und jede hat ihre Nahtzugabe.
    .caption = Abschnitt { $section }, zugeschnitten und von der rechten Seite.

lengthen-stitch = Die Stichlänge wieder auf { $stitch } einstellen, bevor { $next ->
        [sections] Abschnitte
       *[blocks] Blöcke
    } verbunden werden.
join-for = { CAPITAL($block) }, verbinden:
join-plainly = Verbinden:
sections-named = Abschnitte { $letters }
pin-sections = { $opener } { $parts }. { $several ->
        [yes] Die ersten beiden
       *[no] Beide
    } rechts auf rechts legen. Eine Nadel gerade durch beide Enden der Nahtlinie und überall, wo Nähte aufeinandertreffen, von Papier zu
    Papier stechen; steht sie senkrecht, liegen die Punkte aufeinander. Stecken und die senkrechten Nadeln herausziehen.
pin-sections-again = { $opener } { $parts }{ $several ->
        [yes] { " " }in dieser Reihenfolge
       *[no] { "" }
    }, die Punkte mit Nadeln aufeinander.
sew-sections = Auf der gedruckten Linie nähen.{ $several ->
        [yes] { " " }Die übrigen ebenso ansetzen, einen nach dem anderen.
       *[no] { "" }
    }{ $done ->
        [yes] { " " }Das ist { $whole }.
       *[no] { "" }
    }
sew-sections-again = { $done ->
    [yes] Das ist { $whole }.
   *[no] { "" }
}
tear-allowances = Das Papier nur von den Nahtzugaben { $several ->
        [yes] dieser Nähte
       *[no] dieser Naht
    } abreißen.
press-sections = { $seams ->
        [one] Die Naht
       *[other] Die Nähte
    } { $way } bügeln.{ $count ->
        [one] { "" }
       *[other] { " " }Insgesamt { $count } nähen.
    }
    .right = { $box ->
        [yes] { CAPITAL($the) } misst { $size }.
       *[no] Die Punkte treffen an der Naht aufeinander.
    }
leave-paper = Das übrige Papier { $papers ->
        [one] der Nähvorlage
       *[other] aller { $papers } Nähvorlagen
    } daran lassen, bis alle Seiten eines Blocks an ihre Nachbarn genäht sind: es bewahrt Kanten, die nicht im geraden Fadenlauf liegen, vor
    dem Ausdehnen.
