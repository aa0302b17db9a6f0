# Ein Motiv von Hand aufnähen und seinen Block zuschneiden.

chapter-applique = Applizieren mit Nadelwende-Technik
    .lead = Die Kante immer nur ein kurzes Stück vor den Stichen einschlagen.

thread-needle = Eine Applikationsnadel mit einem einzelnen feinen Faden passend zu { $fabric } einfädeln, etwa { $long }
    lang, und ein Ende verknoten.
    .tip = Baumwollgarn Stärke 60 nehmen, oder feine Seide oder Polyester.
thread-needle-prepared = Eine feine Nadel mit einem einzelnen Faden passend zu { $fabric } einfädeln, etwa { $long } lang,
    und ein Ende verknoten. Innen in einem Umschlag beginnen, an einer sanften Rundung nahe der Mitte.
begin-at-centre = { $first ->
        [centre] Mit dem Durchbruch in der Mitte beginnen
        [openings] Mit den Durchbrüchen nahe der Mitte beginnen
       *[edge] An dem Teil der Kante beginnen, der der Mitte am nächsten liegt,
    } und nach außen arbeiten. An einer sanften Rundung oder einem geraden Stück anfangen. Den Knoten unter dem Motiv
    verstecken und die Nadel genau in der Fertiglinie ausstechen.
sweep-edge = Mit der Nadel den Einschlag von { $under } unter das Motiv streichen, höchstens { $ahead } vor den
    Stichen. Mit dem Daumen festhalten.
    .right = Die Fertiglinie ist gerade nicht mehr zu sehen.
    .caption = Die Kante einschlagen und den Umbruch fassen.
stitch-edge = Direkt neben der Stelle, an der der Faden aus dem Motiv kommt, in den Hintergrund einstechen, darunter
    weiterführen und durch zwei oder drei Fäden der umgeschlagenen Kante ausstechen. Die Stiche liegen etwa
    { $apart } auseinander, nie mehr als { $most }. Jeden Stich anziehen, ohne zu kräuseln.
    .right = Von oben ist nur die Kante zu sehen, von hinten kurze, gleichmäßige, schräge Stiche.
    .tip = Rechtshändig: gegen den Uhrzeigersinn nähen, die Kante zum Körper. Linkshändig: im Uhrzeigersinn.
stitch-prepared-edge = Die Kante mit Blindstichen annähen: direkt neben dem Umbruch in den Hintergrund einstechen, darunter
    weiterführen und durch zwei oder drei Fäden des Umbruchs ausstechen. Die Stiche liegen etwa { $apart }
    auseinander, nie mehr als { $most }. Kanten nahe der Mitte zuerst nähen.
    .right = Von oben ist nur die Kante zu sehen, und nirgends lässt sie sich mit dem Fingernagel anheben.
    .tip = Mit der Maschine: ein schmaler Blindsaum- oder Zickzackstich und feines Garn; nur der Ausschlag der
        Nadel fasst den Umbruch.
turn-points = An einer Spitze bis genau ans Ende der Fertiglinie nähen und einen Stich zusätzlich machen. Die überstehende
    Spitze kürzen, sie gerade nach innen schlagen, dann die zweite Seite einstreichen.
    .right = Die Spitze ist scharf, ohne Knubbel und ohne losen Faden.
    .caption = Eine Spitze einschlagen.
turn-corners = Kurz vor einer Innenecke mit einer kleinen Schere gerade hineinschneiden, bis auf einen Faden an die
    Fertiglinie. Eine Seite bis zum Einschnitt einschlagen, dann die andere, und in der Ecke drei dichte Stiche
    machen.
    .right = Die Ecke ist klar, und keine Fäden stehen heraus.
    .caution = Jede Ecke erst einschneiden, wenn sie an der Reihe ist, nie über die Fertiglinie hinaus.
    .caption = Eine Innenecke einschneiden und einschlagen.
turn-curves = Außenrundungen brauchen keine Einschnitte: kurze Stücke einschlagen und die Weite darunter verteilen.
    Innenrundungen einige Male einschneiden, halb durch den Einschlag.
    .right = Die Rundung ist glatt.
    .tip = Zeigt sich ein Buckel, ihn vor dem nächsten Stich mit der Nadel herausstreichen.
turn-openings = { $bent ->
        [yes] Jeden Durchbruch wie die Außenkante einschlagen, mit dichten Stichen.
       *[no] Jeden Durchbruch ringsum wie eine Innenrundung behandeln, leicht eingeschnitten, mit dichten Stichen.
    }
    .right = Der Hintergrund zeigt sich in einer gleichmäßigen Öffnung.
    .caption = Die Kante eines Durchbruchs einschlagen.
fasten-off = Zum Beenden eines Fadens hinter dem Motiv zwei winzige Stiche in den Hintergrund machen. Die Nadel um ihre
    eigene Länge zwischen Hintergrund und Motiv führen und den Faden abschneiden.
press-block = Heftfäden und alle Markierungen entfernen, wie der Hersteller des Stifts es sagt: Hitze kann sie fixieren.
    Den Block mit der rechten Seite nach unten auf einem gefalteten Handtuch bügeln.
    .right = Die Kante glänzt nicht und drückt sich nicht durch.

pin-stabiliser = Aus dem Ausreißvlies { $squares } zuschneiden. Je ein Quadrat hinter jeden Hintergrund stecken, sodass es
    auf allen Seiten über das Motiv hinausreicht.{ $wide ->
        [yes] { " " }Wo ein Quadrat breiter ist als die Rolle, zwei Bahnen nebeneinanderlegen.
       *[no] { "" }
    }
    .right = Der Hintergrund liegt flach.
tear-stabiliser = Das Ausreißvlies vorsichtig abreißen und dabei die Stiche mit dem Daumen halten.

chapter-applique-prepared = Eine vorbereitete Kante annähen
    .lead = Die Kante ist schon eingeschlagen: sie wird mit Blindstichen angenäht.

cut-ground-away = Den Block gegen das Licht halten. Scheint der Hintergrund durch, ihn hinter dem Motiv wegschneiden,
    { $inside } innerhalb der Stiche.
    .caution = Den Hintergrund vom Motiv abheben, bevor die Schere ihn fasst.
trim-blocks = { $many ->
        [yes] Jeden Block
       *[no] Den Block
    } auf { $size } zuschneiden: die Hälfte davon von der Mitte zu jeder Seite.{ $pieced ->
        [yes] { " " }Bei einem genähten Hintergrund das Lineal auch an den Nähten ausrichten.
       *[no] { "" }
    }
    .right = Die Ecken sind rechtwinklig, und außerhalb des Motivs ist der Hintergrund gleichmäßig breit.
    .tip = Die Diagonale eines quadratischen Lineals auf eine diagonale Bruchlinie legen.
    .caption = Den Block um seine Mitte zuschneiden.
trim-at-edge = Die Blöcke so auslegen, wie sie genäht werden. Auf jeden mit einem entfernbaren Stift das fertige Quadrat um
    die Mitte zeichnen, { $side } auf jeder Seite. { $seam } außerhalb der Linie schneiden, wo eine Seite an einen
    anderen Block stößt, und { $closing } außerhalb davon am Rand der Hülle.
    .right = Das Motiv ist in der Mitte jedes fertigen Blocks, und die Außenkanten haben die breitere Zugabe, mit der
        die Hülle geschlossen wird.
    .caption = Den Block um seine Mitte zuschneiden.
leave-large = Den Block nicht zuschneiden: das geschieht nach dem Quilten, wenn er nicht mehr eingehen kann.
