# Ein Kissen fertigstellen.

chapter-pillow = Das Kissen fertigstellen
    .lead = Die Hülle schließen.

trim-front = { $centred ->
    [none] Vlies und Futter bündig mit dem Top abschneiden, auf { $front } oder etwas weniger, wo das Quilten es
        zusammengezogen hat
    [motif] Alle Lagen des Vorderteils auf { $front } zuschneiden, die Mitte des Motivs in der Mitte
   *[all] Alle Lagen des Vorderteils auf { $front } zuschneiden, auf jeder Seite gleich breit
}.
    .right = Alle Lagen enden in einer sauberen Kante.
    .caption = Das gequiltete Vorderteil zuschneiden.
sew-round-front = Ringsum nahe der Kante nähen.

hem-backs = Die { $backs } { $letter } nehmen, { $back }. An je einer langen Kante { $fold } auf die linke Seite schlagen, und noch
    einmal, bügeln und am inneren Umbruch entlang nähen.
    .caption = Die Rückenteile säumen.
finish-backs = Die { $backs } { $letter } nehmen, { $back }. Je eine lange Kante darf nicht fransen: eine Webkante verwenden oder die
    Schnittkante mit Zickzackstich versäubern.
-edge = { $edge ->
    [hem] den Saum
   *[finished] die versäuberte Kante
}
-edges = { $edge ->
    [hem] die Säume
   *[finished] die versäuberten Kanten
}
lay-backs = Das Vorderteil mit der rechten Seite nach oben legen. Ein Rückenteil mit der rechten Seite nach unten darauf, offene
    Kanten bündig mit einer Seite, { -edge } quer über der Mitte. Das andere an die gegenüberliegende Seite legen und ringsum stecken.
    .right = { $edge ->
        [hem] Die Säume
       *[finished] Die versäuberten Kanten
    } überlappen sich in der Mitte um { $overlap }.
    .caption = Die Rückenteile auf dem Vorderteil, überlappend.
sew-cover = Ringsum mit { $seam } Nahtzugabe nähen. Verriegeln, wo { -edges } die Naht kreuzen.
    .caption = Ringsum nähen.

sew-zip-seam = Das Rückenteil { $letter } nehmen, { $back }. So zur Hälfte falten, dass seine beiden Seiten von { $side }
    aufeinanderliegen, und am Bruch durchschneiden. Die Hälften rechts auf rechts legen und die Schnittkanten mit { $seam }
    Nahtzugabe nähen: an beiden Enden mit kurzem Stich und dazwischen, so lang wie der Reißverschluss, mit einem Heftstich von
    etwa { $stitch }. Die Naht auseinanderbügeln.
    .caption = Der Reißverschluss im Rücken.
sew-zipper = Den Reißverschluss mit der Vorderseite nach unten mittig über die geheftete Strecke legen. Mit dem Reißverschlussfuß an
    die Nahtzugaben nähen.
open-zip-seam = Die Heftstiche der Naht entfernen und prüfen, ob der Reißverschluss läuft.
    .right = Die beiden Umbrüche treffen sich über dem Reißverschluss und verdecken seine Zähne.
    .caution = Den Reißverschluss halb offen lassen, bevor der Rücken an das Vorderteil genäht wird.
lay-zipped-back = Den Rücken rechts auf rechts auf das Vorderteil legen, auf dessen Größe zuschneiden und stecken.
sew-zipped-cover = Ringsum mit { $seam } Nahtzugabe nähen.

finish-allowances = Die Ecken schräg abschneiden, nicht näher als { $spare } an der Naht, und die offenen Kanten mit Zickzackstich
    versäubern.
turn-cover = Die Hülle auf die rechte Seite wenden und die Ecken mit einer stumpfen Spitze ausformen.
    .right = Die Hülle misst { $cover }.
    .tip = Stehen die Ecken ab wie Ohren, die Naht auf den letzten { $over } vor jeder Ecke um { $in } nach innen auslaufen
        lassen.
    .caption = Die Hülle wenden.
fill-cover = Das Inlett einziehen, { $form }.
