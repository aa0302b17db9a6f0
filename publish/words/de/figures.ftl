# Bilder: Beschriftungen, und was jedes Bild zeigt, für alle, die es nicht sehen. Beschriftungen stehen auf engem Raum: kurz halten.

figure-5-cm = 5 cm.
figure-5-cm-2 = 5 cm
figure-a-border-in = Rand aus { $name }
figure-a-border-of-in = Rand von { $width } aus { $name }
figure-a-centimetre = einem Zentimeter
figure-a-round-of-of = Runde aus { $blocks } zu { $block-side }
figure-a-section-wide-cut-into = 1 Abschnitt, { $width } breit, geschnitten in { $inner }
figure-a-stretch-deep-holding-nested = ein Stück, { $depth } tief, darin eingepasst { $held }
figure-an-inch = einem Zoll
figure-and = { " " }und{ " " }
figure-and-2 = , und { $mirrored } { $how }
figure-and-turned-over = und { $mirrored } gewendet
figure-apart = Abstand { $width }
figure-apart-2 = Abstand { $distance }
figure-apart-3 = ; dazu { $corners }
figure-as-shown = Wie gezeigt
figure-as-the-booklet-says = { $what }, wie das Heft es sagt
figure-at-the-hems = an den Säumen
figure-at-wider-edges = , { $widest } an breiteren Kanten
figure-back = Rücken
figure-back-of-the-quilt = Rückseite des Quilts
figure-back-on-the-line = auf die Linie
figure-back-stitch = verriegeln
figure-backing = Rückseite
figure-backing-2 = Rückseite
figure-barcode = Strichcode, { $kind }, { $digits }.
figure-baste-from-the = von der Mitte
figure-basting = Heftfaden
figure-batting = Vlies
figure-binding-edge-draw-close = Die Kante des Quilts zwischen dem letzten und dem ersten Stich des Bindings: die beiden Enden liegen an
    ihr und überlappen sich um { $width }, die Breite des Streifens.
figure-binding-edge-draw-corner = 1: die Naht endet { $seam } vor der Ecke. 2: das Binding ist gerade nach oben gefaltet, mit einem Bruch von
    45 Grad über die Ecke. 3: es ist gerade nach unten entlang der nächsten Seite gefaltet, der neue Bruch bündig mit der ersten Kante,
    und an dieser Kante beginnt die Naht neu.
figure-binding-edge-draw-finish = Die Rückseite des Quilts an einer Ecke: das Binding ist über die Kante nach hinten geschlagen und an seinem
    Bruch mit kleinen Blindstichen angenäht; an der Ecke treffen sich beide Seiten zur Briefecke.
figure-binding-edge-draw-start = Das gefaltete Binding liegt auf der Vorderseite an einer Kante, offene Kanten bündig mit der Kante, Bruch
    nach innen. Am Anfang bleibt ein Ende lose; die Naht danach liegt { $seam } von der Kante.
figure-binding-edge-draw-tuck = Der gefaltete Anfang des Bindings liegt an der Kante des Quilts, sein erstes Stück nicht angenäht; das andere
    Ende steckt darin.
figure-binding-strips-draw-bias = 1: ein Quadrat von { $square } ist diagonal durchgeschnitten. 2: die Dreiecke sind an geraden Kanten zu einer
    schrägen Form zusammengenäht, und im Abstand von { $width } sind Linien gezogen, parallel zu den Kanten im Schrägschnitt.
figure-binding-strips-draw-join = 1: zwei Bindingstreifen, { $width } breit, kreuzen sich im rechten Winkel rechts auf rechts, genäht auf der
    Diagonale des Quadrats, in dem sie sich kreuzen; die Ecke dahinter ist auf { $seam } zurückgeschnitten. 2: aufgeklappt, ein gerader
    Streifen mit schräger Naht.
figure-binding-strips-draw-press = Ein Bindingstreifen, { $width } breit, linke Seite oben, an seiner Mittellinie gefaltet; gebügelt ist er
    { $half } breit, beide offenen Kanten bündig.
figure-blind-stitches = Blindstiche
figure-block = Block { $block-side }
figure-block-alt = Der Block { $key }, fertig { $side }, auf einem Raster von { $columns } mal { $rows }: { $patches }, { $named }.
figure-block-sections = Der Block { $key }, { $side } im Quadrat, in { $held } auseinandergezogen: { $names }.{ $order }
figure-border = Rand { $number }:
figure-borders-alt = erst alle vier, dann die Gehrungen an den Ecken
figure-borders-alt-2 = 1 die Seiten, 2 oben und unten
figure-borders-alt-3 = Das Top, { $inner }, ringsum { $strips } aus { $name }: { $named }. Reihenfolge beim Nähen: { $order }.
figure-both-of-its-ends = an beiden Enden
figure-bound-in = , eingefasst mit { $name }
figure-buy = kaufen: { $bought }
figure-centre = Mitte
figure-centre-line = Mittellinie
figure-centre-out = aus heften
figure-clip = einschneiden
figure-clip-not-across-the-line = nur bis zur Linie schneiden
figure-clip-turn-outward = einschneiden, umlegen
figure-close-in-lightness = Ähnlich hell: { $close }.
figure-colouring = { $title }, { $width }, im Umriss zum Ausmalen: { $patches } Teile und { $placements } Motive, { $regions } Umrisse.
figure-colours-pairs = Ein Raster aus { $order } Stoffen, der hellste zuerst: jeder neben und auf jedem anderen.{ " " }
figure-colours-pairs-2 = Keine zwei sind ähnlich hell.
figure-colours-visions = { $title } { $looks }, um zu sehen, ob das Motiv noch zu erkennen ist.
figure-cover-form-square = Hülle { $width }, Inlett { $form }
figure-crease-in-half = Mittelkniff
figure-crease-on-the = Kniff in der
figure-creases = { " " }Nähte stehen für die übrigen Bruchlinien.
figure-creases-2 = Der Hintergrund, { $wide }, mit Bruchlinien { $folds }; jede läuft durch die Mitte.{ $seams }
figure-creases-together = Kniff auf Kniff
figure-curves-pin = Zwei Teile, { $names }, die an einer Rundung verbunden werden. Gepunktete Linien verbinden die Stellen, an denen gesteckt
    wird: 1 die Mitten, 2 die Enden, 3 dazwischen. Die Nahtlinie ist gestrichelt, { $seam } innerhalb der offenen Kanten.
figure-curves-pivot-words = { $seam } vor den Kanten anhalten und hier drehen
figure-curves-press = { $name } mit genähter Rundung, { $labels }.
figure-curves-set-in = { $parts }, { $letters }; das letzte, { $letters-2 }, wird an { $seams } eingesetzt, nummeriert in der Reihenfolge des
    Nähens. Ein Ring markiert jede der Stellen ({ $pivots }), an denen die Naht { $seam } vor den offenen Kanten anhält und das Teil
    gedreht wird.
figure-cut = Schnitt { $number }: { $labels }
figure-cut-2 = { $count } schneiden
figure-cut-from = { $count } aus { $name } schneiden
figure-cut-from-2 = { $count } aus { $fabric } schneiden{ $labels }
figure-cut-from-3 = Aus { $fabric } schneiden
figure-cut-line = Schnittlinie
figure-cut-on-the-line = auf Linie schneiden
figure-cut-out = Ausschnitt
figure-deep-giving = { $count }, { $depth } breit, { $more }ergibt { $gives }
figure-diagonal = Diagonale
figure-diagonal-rows = Diagonalreihen
figure-drawn-line = Linie
figure-each = jeder{ " " }
figure-each-2 = { " " }je Stück
figure-exploded-rounds-alt = { $title } so weit, { $inner }, und rings darum auseinandergezogen: { $named }.
figure-exploded-rounds-alt-2 = { $title } auseinandergezogen: die Mitte, { $inner }, und rings darum { $named }.
figure-fabric = Stoff { $value }
figure-fabric-alt = Zuschneideplan von { $name } für { $title }, aus { $context } mit einer nutzbaren Breite von { $usable-width }: { $parts }.
figure-finished-line = Fertiglinie
figure-finished-line-solid = Fertiglinie durchgezogen
figure-finished-motif-across = Fertiges Motiv: { $span } Durchmesser
figure-finished-side = fertige Seite
figure-first-back = 1. Rückenteil,
figure-first-side = erste Seite
figure-first-stitch = erster Stich
figure-fold = Bruch
figure-fold-down = umfalten
figure-fold-then-again = 2-mal { $hem } einschlagen
figure-fold-up = hochfalten
figure-folded-beginning = gefalteter Anfang
figure-folding-alt = Das Stoffquadrat flach ausgelegt, { $up }, mit der Linie des ersten Bruchs.
figure-folding-alt-2 = Der Stoff nach { $made } von { $creases } Brüchen, { $side }, { $count } Lagen, mit der Linie des nächsten Bruchs und
    einem Pfeil von der Seite, die herübergefaltet wird.
figure-folding-alt-3 = Der gefaltete Keil, { $count } Lagen, { $side }: die Mitte unten links, der mehrfache Bruch senkrecht links, der
    einfache Bruch rechts, die offenen Kanten gegenüber der Mitte.
figure-for = { $name } für { $context }
figure-for-the = Für { $sizes }
figure-foundation = { $block }, Nähvorlage { $letter }
figure-foundation-2 = { $block }, Nähvorlage { $letter }, { $context }
figure-foundation-done = Nähvorlage { $letter } fertig und { $allowance } außerhalb ihrer äußeren Linie zugeschnitten: die bedruckte Seite, und
    gewendet die fertige Seite, ihr Spiegelbild, mit { $fabrics }.
figure-foundation-place = Nähvorlage { $letter } von der bedruckten Seite, nummeriert { $value } bis { $shapes }. Der Stoff für { $value },
    { $value-2 }, liegt darunter, linke Seite zum Papier, und reicht ringsum über die Linien hinaus.
figure-foundation-sew = Unter dem Papier liegt der Stoff für { $value }, { $value-2 }, rechts auf rechts auf dem für { $value-3 }. Die Naht läuft
    auf der Linie zwischen { $value-3 } und { $value }, auf der bedruckten Seite, an beiden Enden { $allowance } darüber hinaus.
figure-foundation-trim = Das Papier auf der genähten Linie zurückgefaltet, und beide Stoffe { $allowance } dahinter abgeschnitten; was wegfällt, ist
    schraffiert. Der Stoff für { $value } wird dann geöffnet und gebügelt.
figure-front = Vorderseite
figure-giving = { $number }: { $count }, ergibt { $cuts }{ $more }
figure-half = { " " }(Hälfte)
figure-heading-allowance = Nahtzugabe { $narrow }, von Linie zu Linie{ $wide }
figure-heading-foundation = Auf den Linien nähen in der Reihenfolge { $letter }1, { $letter }2
figure-heading-foundation-2 = Auf der gestrichelten Linie schneiden, { $seam } außerhalb der Nahtlinie
figure-heading-several = Auf der gestrichelten Linie schneiden, { $seam } außerhalb der Nahtlinie
figure-hem = Saum
figure-how-the-sheets-join = So liegen die Blätter
figure-in = { $n } { $more }aus { $name }
figure-in-2 = { $letter } aus { $name }
figure-in-3 = { " " }aus { $value }
figure-in-4 = { $named } aus { $name }
figure-in-colourways = { $shown }, in { $looks } Farbstellungen: { $looks-2 }.
figure-in-colourways-2 = { $shown }, in { $names } Farbstellungen: { $value }. { $computed }
figure-in-grey = in Grau
figure-in-half = zur Hälfte { $name }
figure-in-half-2 = den Bruchlinien der Hälften
figure-inward-corner = Eine Innenecke in zwei Bildern: 1 der Einschlag gerade in die Ecke eingeschnitten, bis auf einen Faden an die Fertiglinie;
    2 beide Seiten eingeschlagen und genäht, mit drei dichten Stichen in der Ecke.
figure-inward-hole = Ein Durchbruch in zwei Bildern: 1 seine offene Kante halb bis zur Fertiglinie eingeschnitten und nach außen unter das Motiv
    geschlagen; 2 die eingeschlagene Kante ringsum genäht, der Hintergrund ist zu sehen.
figure-is-ready = ist fertig
figure-is-ready-2 = { " " }ist fertig
figure-join = { " " }Verbinden: { $value }.
figure-joins = { " " }Schließt an: { $joins }.
figure-laid-joined-and-the = { $parts } { $side } gelegt: { $named }. Verbunden und { $value }: { $name } { $done }.
figure-last-stitch = letzter Stich
figure-layers = Drei Lagen von oben nach unten: { $sizes }.
figure-level = waagerecht
figure-loose-tail = loses Ende
figure-measure-both-squares-before-cutting = Vor dem Schneiden beide Quadrate messen.
figure-measure-exactly = messen: genau
figure-measures = misst { $told }
figure-measures-2 = { " " }misst { $unit }
figure-mirror-image-of-the-block = Spiegelbild des Blocks
figure-mirror-images-of-the-block = Spiegelbilder des Blocks
figure-mitre = Briefecke
figure-multiple-folds = mehrfacher Bruch
figure-nested = { " " }eingepasst
figure-of = { $count } { $letter } zu { $a }{ $becomes }
figure-of-2 = { $count } { $letter } zu { $across }
figure-of-3 = { $letter } mit { $patches }
figure-of-4 = { $name }: { $value }
figure-of-5 = { $each } { $i } zu { $width }
figure-of-6 = { $letter } zu { $w }
figure-of-7 = { $block-count } zu { $block-side }
figure-of-in = { $count } { $letter } zu { $across } × { $along } in
figure-on-both-diagonals = in beiden Diagonalen
figure-on-both-sides = auf beiden Seiten
figure-on-right-sides-together = { $value } auf { $value-2 }, rechts auf rechts
figure-on-the-diagonals = den Diagonalen
figure-one-above-the-other = übereinander
figure-one-more = noch ein { $small }
figure-open-and-press = öffnen und bügeln
figure-open-creases-showing = geöffnet, mit Bruchlinien
figure-open-edges = offene Kanten
figure-outlines-web = { $value }, auf { $length } Haftvlies, { $width } breit, Papierseite oben.
figure-overlap = Überlappung { $width }
figure-own-words-fold-words = Das Papier an dieser Kante umklappen
figure-page-bar = Dieser Balken muss genau 5 cm messen.
figure-paper-folded = Papier gefaltet
figure-past = { $allowance } hinaus
figure-pillow-back-draw-hem = Eines der { $count }, zugeschnitten { $long }, linke Seite oben: eine lange Kante zweimal { $hem } eingeschlagen und am
    inneren Umbruch entlang genäht, danach ist es { $hemmed } tief.
figure-pillow-back-draw-layer = Das Vorderteil, { $front-w }, rechte Seite oben. Das erste Rückenteil liegt mit der linken Seite nach oben darauf,
    offene Kanten bündig mit der Oberkante; das zweite kommt von der Unterkante, sodass sich die Säume um { $overlap } überlappen.
figure-pillow-back-draw-sew = Beide Rückenteile auf dem Vorderteil, ringsum { $seam } von der Kante genäht, verriegelt, wo die Naht die Säume kreuzt.
figure-pillow-cover-draw-turn = Die Hülle auf die rechte Seite gewendet, { $width }: der Rücken mit seiner überlappenden Öffnung, und das
    Vorderteil. Das Inlett darin hat { $form } im Quadrat.
figure-pillow-cover-draw-zip = Die beiden Rückenteile, je { $long }, { $hem } von einer langen Kante verbunden und von der linken Seite gesehen: die Naht
    auseinandergebügelt, ihre Enden mit kurzen Stichen genäht, der Reißverschluss mit der Vorderseite nach unten über der gehefteten Mitte.
figure-pillow-front = Vorderteil
figure-place-lined-up = gleichmäßig zwischen den Bruchlinien des Hintergrunds
figure-place-lined-up-2 = seine Bruchlinien auf { $found } des Hintergrunds
figure-place-place-motif = , und Heftreihen daran entlang, innerhalb der Kanten, die eingeschlagen werden
figure-place-place-motif-2 = Das Motiv mittig auf seinem Hintergrund, { $labels }{ $held }.
figure-place-unfold = Zwei Bilder: das geschnittene Motiv noch zur Hälfte gefaltet, mit einem Pfeil, der es öffnet, und das offene Motiv, alle
    { $folds } Keile gleich, seine Bruchlinien treffen sich in der Mitte.
figure-precut-alt = Zuschneideplan von { $name } für { $title }, aus { $used } zu { $length } × { $width }: { $parts }.
figure-print-at-100 = Mit 100 % drucken.
figure-print-this-sheet = Dieses Blatt drucken: { $each }
figure-printed-side = bedruckte Seite
figure-quick-geese-geese = Ein großes Quadrat, { $large }, { $width }, mit zwei kleinen Quadraten, { $small }, { $width-2 }, auf gegenüberliegenden
    Ecken, rechts auf rechts, eine Linie durch beide gezeichnet
figure-quick-geese-geese-2 = { $base }, und auf beiden Seiten davon Nähte im Abstand von { $seam }.
figure-quick-geese-geese-3 = Eine Hälfte, auf der Linie abgeschnitten, ihre beiden kleinen Dreiecke nach außen gebügelt, mit noch einem kleinen
    Quadrat, { $small }, auf der freien Ecke: von dieser Ecke eine Linie, auf beiden Seiten davon Nähte im Abstand von { $seam }, auf der
    Linie zu schneiden.
figure-quick-geese-geese-4 = Eine Fluggans, geöffnet, gebügelt und auf { $wide } zurückgeschnitten; jedes große Quadrat ergibt { $each-batch }.
figure-quick-geese-second = beidseits nähen, auf der Linie schneiden
figure-quick-hourglasses = Zwei Quadrate aus zwei Dreiecken, rechts auf rechts, verschiedene Stoffe aufeinander, mit einer Linie von Ecke zu Ecke
    quer zur Naht und auf beiden Seiten davon Nähten im Abstand von { $seam }, auf der Linie zu schneiden.
figure-quick-open-and-trim = Eine Hälfte, auf der Linie abgeschnitten, und { $called }, das daraus aufgeklappt wird, gebügelt und auf { $wide }
    zurückgeschnitten; jedes Paar Quadrate ergibt { $made }.
figure-quick-patch-corners = Die Ecken nach außen gebügelt: die Einheit misst { $wide }.
figure-quick-patch-corners-2 = auf jedem eine diagonale Linie gezeichnet
figure-quick-patch-corners-3 = genäht knapp außerhalb der diagonalen Linie auf jedem, zur Ecke hin
figure-quick-patch-corners-4 = genäht knapp außerhalb der Linie, die Ecke { $seam } außerhalb davon abgeschnitten
figure-quick-patch-corners-5 = { $base }, { $width }, mit { $names } auf seinen Ecken, rechts auf rechts, { $does }.
figure-quick-patch-segments = dieses Ende begradigen, dann quer schneiden
figure-quick-patch-strips = Ein Segment, { $trim }, aus dem Streifenset geschnitten.
figure-quick-patch-strips-2 = Streifen in der Reihenfolge des Nähens: { $named }.
figure-quick-patch-strips-3 = Ein Streifenset: Streifen { $named }, an den langen Kanten verbunden und gebügelt.
figure-quick-patch-strips-4 = Ein Streifenset aus { $named }, begradigt und alle { $segment } quer durchgeschnitten: { $each-batch } Segmente aus jedem Set.
figure-quick-triangles = je, rechts auf rechts, auf dem oberen eine diagonale Linie gezeichnet
figure-quick-triangles-2 = { $both }, auf beiden Seiten im Abstand von { $seam } genäht und auf der Linie auseinandergeschnitten.
figure-quick-triangles-3 = { $both } und auf beiden Seiten davon Nähte im Abstand von { $seam }.
figure-raw-edge = offene Kante
figure-raw-edges = offene Kanten
figure-raw-edges-level = Kanten bündig
figure-right-side = rechte Seite
figure-right-side-out = re. Seite außen
figure-right-side-up = re. Seite oben
figure-right-sides-together = rechts auf rechts
figure-row-of = Reihe { $n } aus { $parts }
figure-sandwich = Die Lagen von oben: Rückseite { $width }, linke Seite oben, Vlies { $width-2 }, Top { $top }, rechte Seite oben, auf jeder Seite
    { $overhang } kürzer als die Rückseite; Heftreihen in beiden Richtungen, Pfeile von der Mitte nach außen.
figure-sashing-of-in = Zwischenstreifen von { $width } aus { $name }
figure-scale = Das Prüfquadrat in Originalgröße: ein Quadrat von { $words } in einem Quadrat von 5 cm, an der Oberkante ein Lineal mit { $more }, seine
    Null auf der Ecke.
figure-seam = Naht { $seam }
figure-seam-2 = Naht
figure-seam-pressed-open = Naht offen gebügelt
figure-seams-pressed = , Nähte { $press } gebügelt
figure-second-back = 2. Rückenteil
figure-second-side = zweite Seite
figure-set-on-point = { " " }auf der Spitze
figure-setting-triangles-in = Randdreiecke aus { $name }
figure-sew-all-round = ringsum nähen
figure-sew-both-folds-by-hand = von Hand annähen
figure-sew-in-the-order = In der Reihenfolge { $first }, { $second } nähen
figure-sew-on-the-line = auf Linie nähen,
figure-sheet = { $name }, Blatt { $label }
figure-sheet-of = Blatt { $label } von { $count }
figure-sheets-alt = Fertiglinie durchgezogen, Schnittlinie gestrichelt
figure-sheets-alt-2 = Schablonenblatt{ $number } von { $name } in Originalgröße. { $lines }. { $value }{ $joined } Prüfquadrate von { $labels } und
    5 cm zeigen, ob es in der richtigen Größe gedruckt ist.
figure-sheets-held = { " " }Als Hälfte gedruckt; der Bruch des Papiers ist strichpunktiert.
figure-sheets-held-2 = Keilkanten strichpunktiert, an denen das Papier umgeklappt wird.
figure-short-stitches = kurze Stiche
figure-side-by-side = nebeneinander
figure-single-fold = einfacher Bruch
figure-sizes-alt = Die Größen nebeneinander im selben Maßstab: { $each }.
figure-sleeve-attach = Die Rückseite des Quilts: der Tunnel, { $depth } tief, liegt mittig knapp unter dem Binding an der Oberkante, Naht nach unten, sein
    oberer und unterer Umbruch von Hand an die Rückseite genäht; eine Stange läuft hindurch.
figure-sleeve-make = Der Tunnelstreifen, an beiden kurzen Enden auf { $long } gesäumt, der Länge nach links auf links zur Hälfte gefaltet. Die langen
    Kanten sind mit { $seam } Nahtzugabe genäht, und der Schlauch ist { $depth } tief gebügelt, die offene Naht in der Mitte.
figure-stitch-edge = Nadelwende-Technik von Nahem. Links liegt die offene Kante des Motivs noch { $under } außerhalb der Fertiglinie; in der Mitte
    streicht die Nadel diesen Einschlag darunter; rechts ist die umgeschlagene Kante mit kleinen Stichen genäht, etwa { $apart } auseinander.
figure-stitch-tip = Eine Spitze einschlagen, in drei Bildern: 1 die erste Seite bis ans Ende der Fertiglinie genäht, 2 die Spitze gerade
    umgeschlagen, 3 die zweite Seite eingeschlagen und genäht.
figure-stitches-about-apart = Stiche etwa { $apart } auseinander
figure-stitching = Naht, { $seam }
figure-stop = Halt { $seam }
figure-straight-grain = gerader Fadenlauf
figure-template = Schablone { $letter }
figure-template-2 = Schablone { $letter }{ $half }, { $context }
figure-templates = { $count } Schablonen
figure-the-fabrics = Die { $keys } Stoffe: { $each }.
figure-the-finished = { $title }: { $what }, fertig, { $width }: { $context }{ $bound }.
figure-the-laid-out-in = { $title }, ausgelegt in { $rows }: { $each }.
figure-the-last-fold-opens = letzten Bruch öffnen
figure-the-paper = Papier
figure-the-pulled-apart = { $title } auseinandergezogen: { $labels }.
figure-the-pulled-apart-into = { $title } auseinandergezogen in { $how }: { $rows }{ $more }.
figure-the-quilting-lines-of-the = Die Quiltlinien von { $title }, { $width }: { $each }.
figure-then = ; dann{ " " }
figure-this-square-must = Dieses Quadrat muss
figure-tip-across = Spitze quer
figure-to = { $number } { $what }, bis { $width }
figure-top = Top
figure-triangles = { $words }, { $yields } Dreiecke
figure-trim = Ein Block von { $wide } mit einer Schnittlinie ringsum, mittig zum Motiv: auf { $kept } zurückschneiden.
figure-trim-away = Rest
figure-trim-to = auf { $seam }
figure-trim-to-2 = auf { $allowance }
figure-turn-and-sew = umlegen, nähen
figure-turn-over-here = hier umklappen
figure-turn-under = Einschlag { $turn-under }
figure-turned-over = gewendet
figure-two-squares-upon = Zwei Quadrate, { $value } auf { $value-2 }, { $width }{ " " }
figure-units-apart-alt = { $parts } auseinandergelegt: { $named }. Verbunden mit { $seams } und { $press }: { $name }{ $size }.
figure-upright = senkrecht
figure-usable-width = { $width } nutzbare Breite
figure-wedge-edge = Keilkante
figure-with = { $name } mit { $name-2 }
figure-with-the-template-turned-over = mit gewendeter Schablone
figure-work-wedge-align = Die Papierschablone auf dem gefalteten Keil festgesteckt: ihre Spitze zur Mitte unten links, ihre Kante für den mehrfachen
    Bruch am mehrfachen Bruch links, ihre Kante für den einfachen Bruch am einfachen Bruch rechts.
figure-work-wedge-baste = { " " }und eine Reihe durch den Teil, der wegfällt
figure-work-wedge-baste-2 = Der gefaltete Keil aus { $folds } Lagen, angezeichnet und geheftet: Reihen langer Stiche innerhalb der
    Fertiglinie{ $waste }.
figure-work-wedge-cut = Die Reihenfolge der Schnitte am Keil: { $order }.
figure-work-wedge-mark = Der gefaltete Keil, das Motiv auf seine oberste Lage gezeichnet: die Fertiglinie durchgezogen
figure-work-wedge-mark-2 = , die Schnittlinie gestrichelt { $under } außerhalb davon.
figure-work-wedge-mark-3 = { " " }An den Brüchen ist nichts angezeichnet.
figure-wrong-side = linke Seite
figure-wrong-side-2 = { $name } von links nach rechts gewendet, linke Seite oben: { $count } mit Nahtzugaben von { $seam }; die letzten ({ $unit })
    { $labels }, von der rechten Seite gesehen.
figure-wrong-side-allowances-wide = linke Seite, Nahtzugaben { $seam } breit
figure-wrong-side-to = linke Seite zum
figure-layer-wrong-side-up = { $name }, li. Seite oben
figure-wrong-side-up = li. Seite oben
figure-zip-face-down = Reißverschluss

figure-or = { " oder " }

# Was gezählt wird, in Ziffern.
figure-count-block = { $count } { $count ->
    [one] Block
   *[other] Blöcke
}
figure-count-row = { $count } { $count ->
    [one] Reihe
   *[other] Reihen
}
figure-count-part = { $count } { $count ->
    [one] Teil
   *[other] Teile
}
figure-count-seam = { $count } { $count ->
    [one] Naht
   *[other] Nähte
}
figure-count-curved-seam = { $count } { $count ->
    [one] Naht an der Rundung
   *[other] Nähte an der Rundung
}
figure-count-set-in-seam = { $count } { $count ->
    [one] Naht zum Einsetzen
   *[other] Nähte zum Einsetzen
}
figure-count-mitred-seam = { $count } { $count ->
    [one] Naht mit Gehrungen
   *[other] Nähte mit Gehrungen
}
figure-count-slanting-seam = { $count } { $count ->
    [one] schräge Naht
   *[other] schräge Nähte
}
figure-count-upright-seam = { $count } { $count ->
    [one] senkrechte Naht
   *[other] senkrechte Nähte
}
figure-count-level-seam = { $count } { $count ->
    [one] waagerechte Naht
   *[other] waagerechte Nähte
}
figure-count-strip = { $count } Streifen
figure-count-square = { $count } { $count ->
    [one] Quadrat
   *[other] Quadrate
}
figure-count-fat-quarter = { $count } { $count ->
    [one] Fat Quarter
   *[other] Fat Quarters
}
figure-count-fat-eighth = { $count } { $count ->
    [one] Fat Eighth
   *[other] Fat Eighths
}
figure-count-motif = { $count } { $count ->
    [one] Motiv
   *[other] Motive
}
figure-count-back-piece = { $count } { $count ->
    [one] Rückenteil
   *[other] Rückenteile
}
figure-count-corner-triangle = { $count } { $count ->
    [one] Eckdreieck
   *[other] Eckdreiecke
}
figure-count-sashing = { $count } Zwischenstreifen
figure-count-cornerstone = { $count } { $count ->
    [one] Eckquadrat
   *[other] Eckquadrate
}
figure-count-setting = { $count } { $count ->
    [one] Randdreieck
   *[other] Randdreiecke
}
figure-count-patch = { $count } { $count ->
    [one] Teil
   *[other] Teile
}
figure-count-section = { $count } { $count ->
    [one] Abschnitt
   *[other] Abschnitte
}
figure-count-side = { $count } { $count ->
    [one] Seite
   *[other] Seiten
}
figure-count-point = { $count } { $count ->
    [one] Spitze
   *[other] Spitzen
}
figure-count-motif-of-folds = { $count } { $count ->
    [one] Motiv
   *[other] Motive
} mit { $folds } Keilen

# Schnitte am Keil, der Reihe nach.
figure-cut-opening = den Durchbruch im Keil ausschneiden
figure-cut-notch-multiple = den Durchbruch am mehrfachen Bruch schneiden
figure-cut-notch-single = den Durchbruch am einfachen Bruch schneiden
figure-cut-centre = den Durchbruch in der Mitte zuletzt schneiden
figure-cut-outer = die Außenkante vom mehrfachen zum einfachen Bruch schneiden
figure-multiple-fold = mehrfacher Bruch

# Wofür der Stoff einer Probe ist.
figure-use-ground = Hintergrund
figure-use-blocks = Blöcke
figure-use-motif = Motiv
figure-use-borders = Ränder
figure-use-binding = Binding
figure-use-backing = Rückseite
figure-use-pillow-back = Kissenrücken
figure-use-sleeve = Tunnel

# Die Lagen eines Quilts, je eine Linie dazu.
figure-layer-backing = Rückseite,
figure-layer-batting = Vlies
figure-layer-top = Top,

# Flächen zum Quilten: in der Legende des Bilds und in einem Satz.
figure-key-motif = Motiv
figure-key-ground = Hintergrund
figure-key-border = Rand
figure-key-patchwork = Patchwork
figure-within-motif = Motiv
figure-within-ground = Hintergrund
figure-within-border = Rand
figure-within-patchwork = Patchwork
figure-style-ditch = im Nahtschatten, neben der Kante
figure-style-echo = Echolinien
figure-style-parallel = parallele Linien
figure-style-grid = Gitter
figure-style-as-desired = nach Wunsch
figure-style-apart = { $style }, Abstand { $spacing }

# Wie Nähte gebügelt sind.
figure-pressed-open = auseinandergebügelt
figure-pressed-out = nach außen gebügelt
figure-pressed-not = genäht
figure-pressed-first = Richtung erstes Teil gebügelt
figure-pressed-last = Richtung letztes Teil gebügelt
figure-pressed-sashing = Richtung Zwischenstreifen gebügelt
figure-pressed-left = nach links gebügelt
figure-pressed-right = nach rechts gebügelt
figure-pressed-up = nach oben gebügelt
figure-pressed-down = nach unten gebügelt

# Worin ein Rechteck zerschnitten wird.
figure-cut-into-once-cut-triangle = , einmal geschnitten in { $count } { $count ->
    [one] Dreieck
   *[other] Dreiecke
}
figure-cut-into-twice-cut-triangle = , zweimal geschnitten in { $count } { $count ->
    [one] Dreieck
   *[other] Dreiecke
}
figure-cut-into-equilateral-triangle = , geschnitten in { $count } { $count ->
    [one] Dreieck
   *[other] Dreiecke
}
figure-cut-into-parallelogram = , geschnitten in { $count } { $count ->
    [one] Parallelogramm
   *[other] Parallelogramme
}
figure-cut-into-diamond = , geschnitten in { $count } { $count ->
    [one] Raute
   *[other] Rauten
}
figure-round-the-template = { " " }um die Schablone herum

# Wie die Fäden liegen.
figure-grain-straight = gerader Fadenlauf
figure-grain-bias = Schrägschnitt

# Berechnete Bilder, und wo sie den Quilt zeigen.
figure-computed = Aus der Anleitung berechnet, nicht fotografiert.
figure-pictured = { $what }, { $where }. { $computed }
figure-on-a-wall = an einer hellen Wand
figure-lying-flat = flach liegend
figure-on-a-bench = auf einer Bank an einer Wand

figure-corner-mark = gezogene Linie
figure-corner-sew = knapp daneben nähen
figure-corner-cut = abschneiden
figure-use-sashing = Zwischenstreifen
figure-use-cornerstone = Eckquadrate
figure-use-side-triangle = Seitendreiecke
figure-use-corner-triangle = Eckdreiecke
figure-grain-off-grain = schräg zum Fadenlauf

figure-way-left = links
figure-way-right = rechts
figure-way-top = oben
figure-way-bottom = unten
figure-way-up = nach oben
figure-way-down = nach unten
figure-way-open = auseinander
figure-way-out = nach außen
figure-way-sashing = Richtung Zwischenstreifen
figure-way-first = zum ersten Teil
figure-way-last = zum letzten Teil
figure-quilt-folded = Quilt, gefaltet
figure-binding-tails =
    Die beiden letzten Enden, aufgeklappt, liegen im rechten Winkel rechts auf rechts, gesteckt und auf der Diagonalen des
    Quadrats genäht, in dem sie sich kreuzen; die Ecke dahinter ist auf { $seam } zurückgeschnitten. Der Quilt ist so gefaltet,
    dass die Enden zusammenreichen.
