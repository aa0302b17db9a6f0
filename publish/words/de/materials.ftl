# Was zu kaufen ist: Stoffe, Vlies, Haftvlies, Inlett, Garn; was schon da ist; fertig Zugeschnittenes.

chapter-materials = Material
    .lead = Längen zum Kaufen, aufgerundet auf das, was im Laden geschnitten wird.

fabric-assumes = Der Stoffbedarf rechnet mit { $differs ->
    [yes] einer nutzbaren Breite von { $widths }
   *[no] { $widths } nutzbarer Breite
}, zwischen den Webkanten gemessen{ $includes ->
    [none] { "" }
   *[some] , und enthält { $included }
}.
width-of = { $width } für { $fabrics }
include-straightening = { SHORT($length) } zum Begradigen des Anschnitts
include-squaring = { SHORT($length) } je Streifen, um seine Kante gerade zu halten
include-mis-cut = { SHORT($length) } für einen misslungenen Streifen

table-fabric = Stoff
fabric-row = **{ $fabric }**: { $uses }
use = { $use ->
    [ground] Hintergrund
    [blocks] Blöcke
    [foundation] Nähen auf Papier
    [motif] Motiv
    [sashing] Zwischenstreifen
    [cornerstone] Eckquadrate
    [side-triangle] Seitendreiecke
    [corner-triangle] Eckdreiecke
    [backing] Rückseite
    [binding] Binding
    [pillow-back] Kissenrücken
   *[sleeve] Aufhängetunnel
}
use-alone = nur für { $use ->
    [backing] die Rückseite
    [binding] das Binding
    [pillow-back] den Kissenrücken
    [sleeve] den Aufhängetunnel
   *[top] das Top
}
at-hand = { $bought }; vorhanden: { $stock }
stock-short = es fehlen { $length }
stock-left = genug, { $length } bleiben übrig
stock-little-left = genug, weniger als { $length } bleiben übrig
stock-even = genug, auf { $unit ->
    [centimetre] den Zentimeter
   *[inch] das Zoll
}

table-other-materials = Weiteres Material
material-batting = **Vlies**: { $name }
material-web = **Haftvlies**
material-stabilizer = **Ausreißvlies**
material-form = **Inlett**
material-zipper = **Reißverschluss**, passend zum Rücken
batting-cell = { $size }{ $packed ->
    [yes] ; Packung: { $package }
   *[no] { "" }
}
# Eine Packung Vlies mit ihrem Namen im Handel und ihren Seiten.
package = { $name ->
    [craft] Bastelgröße
    [crib] Krabbeldecke
    [cot] Kinderbett
    [single] Einzelbett
    [twin] Einzelbett
    [full] französisches Bett
    [double] Doppelbett
    [queen] Doppelbett
   *[king] großes Doppelbett
} { SIDES($sides) }
web-cell = { $length } Haftvlies, { $width } breit
stabilizer-cell = { $length } Ausreißvlies, { $width } breit
zipper-cell = 1

table-thread = Garn
thread-piecing = Nähen{ $pillows ->
    [yes] { " " }und Fertigstellen
   *[no] { "" }
}: grau oder beige
thread-applique = Applizieren, passend zu { $fabric }
thread-quilting = Quilten: passend { $around ->
    [ground] zum Hintergrund
    [both] zu Hintergründen und Blöcken
   *[blocks] zu den Blöcken
} oder im Kontrast
thread-binding = Binding, passend zu { $fabric }
thread-cell = { $thread }: { $spools }
thread-bobbins = Volle Unterfadenspulen zum Quilten, aus dessen Garn
thread-spool = Eine Rolle hat { $metres } m.
thread-bobbin = Auf eine volle Spule der Klasse 15 passen etwa { $length } Garn der Stärke 50.

hint-weave = Für das Motiv dicht gewebte Patchworkbaumwolle wählen: sie hält einen Bruch und franst wenig.
hint-package = Packungsgrößen von Vlies sind verschieden; auf das Etikett achten.

# In Kürze, auf der Rückseite des Hefts.
short-fabric = { $fabric }: { $bought }
short-size = { $size } { $bought }
# $said ist yes, wo der Name des Vlieses short-batting-word schon enthält.
short-batting = { $said ->
    [yes] { $name }
   *[no] Vlies: { $name }
}
short-batting-word = vlies
short-form = Inlett { SHORT($form) }
short-web = Haftvlies
short-stabilizer = Ausreißvlies

# Fertig zugeschnitten verkauft.

sold-piece = { $pieces } von { $size }
sold-square = { $pieces } von { $side }
sold-strip = { $pieces }, { $width } breit
sold-fat = { $pieces }, { $size }
packets-of = { $packets } zu { $each }; { $used } werden gebraucht
precut-or-length = { CAPITAL($ready) }; oder { $length }

chapter-looking-up = Zum Nachschlagen
table-precuts = Fertig Zugeschnittenes verwenden
precut-squares = Quadrate { SHORT($side) }
precut-strips = Streifen { SHORT($width) }
precut-fat-quarters = Fat Quarters
precut-fat-eighths = Fat Eighths
precut-no = nein: { $piece }
precut-joined = { FIGURES($count) }{ $joins ->
    [some] , { $joined } verbunden
   *[none] { "" }
}
one-fat-quarter = ein Fat Quarter { SHORT($length) } × { SHORT($width) }
one-fat-eighth = ein Fat Eighth { SHORT($length) } × { SHORT($width) }
precut-vary = { CAPITAL($sizes) }: nachmessen, die Größen schwanken.
precut-says-no = **Nein** nennt das Teil, das größer ist als das, was verkauft wird.
precut-not-looked = **{ $sign }**: mehr Teile verschiedener Größe, als jemand daraus schneidet. Als Meterware kaufen.
precut-says-joined = **Verbunden**: diese Streifen werden dann aus mehr und kürzeren Längen zusammengenäht.

# Stoff, der schon da ist.

nothing-at-all = nichts
table-at-hand = Wofür der vorhandene Stoff reicht
    .uses = Daraus geschnitten
    .still = Noch zu kaufen
    .note = Erst schneiden, was da ist, dann kaufen: die Längen oben gelten, wenn alles gekauft wird.
table-cutting-at-hand = Den vorhandenen Stoff zuerst zuschneiden
    .from = Aus
    .cut = Schneiden
    .note = Die Tabellen der Teile geben das Maß jedes Buchstabens an.
some-of = { $count } von { $all }
then-bought = { CAPITAL($what) }, gekauft
each-sheet = { $sheets ->
    [1] { "" }
   *[other] je:{ " " }
}{ $strips }
strips-of-sheet = { $strips }, { $depth } breit{ $way ->
    [length] , der Länge nach
   *[width] { "" }
}, mit { $strips ->
    [one] { "" }
   *[other] je{ " " }
}{ $holds }
section-of-sheet = 1 Abschnitt, { $width } breit, für { $strips }
