# Den Quilt einfassen.

chapter-binding = Binding
    .lead = Ein doppelt gelegtes Binding mit Briefecken, mit der Maschine angenäht und von Hand beendet.

trim-level = Vlies und Rückseite bündig mit der Kante des Tops abschneiden und die Ecken mit einem Lineal rechtwinklig
    machen.
    .right = Der Quilt misst { $quilt }, und seine Ecken sind rechtwinklig.
    .tip = Durch das Quilten wird das Top etwas kleiner. Gerade Kanten und rechtwinklige Ecken schneiden, auch wenn das Maß
        etwas darunter bleibt.

join-on-diagonal = { $count ->
    [one] Den einen Bindingstreifen { $letter } nehmen, { SHORT($width) } breit. Er ist ohne Ansatz lang genug.
   *[other] Die Bindingstreifen { $letter } nehmen, { SHORT($width) } breit: { $strips }. Zwei Enden im rechten Winkel rechts
        auf rechts legen. Stecken, prüfen, ob die Kanten gerade weiterlaufen, und diagonal über die Ecke nähen. Auf { $seam }
        zurückschneiden und die Naht auseinanderbügeln. So alle Streifen verbinden.
}
    .right = { $count ->
        [one] Der Streifen ist mindestens { $length } lang.
       *[other] An jedem Ansatz sind die Kanten gerade. Der verbundene Streifen ist mindestens so lang: { $length }.
    }
    .caption = Streifen diagonal verbinden.

cut-bias-square = Das Quadrat für Schrägstreifen { $letter } nehmen, { $square }, und einmal diagonal durchschneiden. Die beiden
    Dreiecke an einem Paar gerader Kanten rechts auf rechts mit { $seam } Nahtzugabe zusammennähen, sodass eine schräge
    Form mit zwei langen Kanten im Schrägschnitt entsteht. Die Naht auseinanderbügeln.
    .caption = Schrägstreifen aus einem Quadrat.
rule-bias = Linien im Abstand von { $width } ziehen, parallel zu den Kanten im Schrägschnitt; abschneiden, was nach der
    letzten Linie übrig ist.
sew-bias-tube = Die beiden geraden Enden rechts auf rechts zusammenbringen, um eine Linie versetzt, sodass die erste Linie die
    zweite trifft. Mit { $seam } Nahtzugabe nähen und auseinanderbügeln.
cut-bias-tube = In einer langen Spirale auf der Linie schneiden.
    .right = Ein Schrägstreifen ist entstanden, mindestens so lang: { $length }.

press-in-half = Den Streifen der ganzen Länge nach links auf links zur Hälfte bügeln, ohne ihn zu dehnen.
    .right = Die beiden offenen Kanten liegen bündig.
    .caption = Den Streifen zur Hälfte bügeln.

-binding-place = { $place ->
    [middle] in der Mitte { -binding-side }
   *[corner] an { -binding-side-at }, { $from } vor der nächsten Ecke
}
-binding-side = { $side ->
    [longer] einer langen Seite
   *[any] einer Seite
}
-binding-side-at = { $side ->
    [longer] einer langen Seite
   *[any] einer Seite
}
start-binding = Den Obertransportfuß weiter benutzen. Das Binding auf die Vorderseite legen, offene Kanten bündig mit der Kante
    des Quilts. Den ersten Stich { -binding-place } setzen. Ein Ende von { SHORT($tail) } lose lassen und mit { $seam }
    Nahtzugabe bis zur Ecke nähen.
    .tip = Das Binding zuerst ohne Nähen um den Quilt legen und so verschieben, dass kein Ansatz auf eine Ecke trifft.
    .caption = Die ersten Stiche und das lose Ende.
start-binding-tucked = Die Seiten sind zu kurz, um die Enden zu verbinden: das Ende wird in den Anfang gesteckt. Ein Ende des
    Streifens aufklappen, { $seam } auf die linke Seite schlagen, bügeln und den Streifen wieder zur Hälfte legen. Dieses
    gefaltete Ende { -binding-place } auf die Vorderseite legen, offene Kanten bündig. { $tail } offen lassen, dann zur Ecke
    nähen.
    .right = Das gefaltete Ende ist lose und offen wie eine Tasche.
    .caption = Das gefaltete Ende, offen gelassen.
turn-corner = { $seam } vor der Ecke anhalten, verriegeln und die Fäden abschneiden. Das Binding gerade nach oben falten, vom
    Quilt weg, sodass der Bruch schräg über die Ecke läuft. Dann gerade nach unten entlang der nächsten Seite falten, der
    neue Bruch bündig mit der eben genähten Kante. An dieser Kante wieder beginnen.
    .right = An der Ecke steht ein Fältchen hoch, und die offenen Kanten liegen bündig an der nächsten Seite.
    .caption = Die Ecke falten.
meet-tails = Die letzte Ecke legen und { $gap } vor dem ersten Stich anhalten. Die beiden Enden an die Kante legen und so
    kürzen, dass sie sich um die Breite des Streifens überlappen: { SHORT($overlap) }.
    .caption = Die Enden überlappen sich um die Breite des Streifens.
join-tails = Den Quilt so falten, dass die Enden zusammenreichen. Beide aufklappen, im rechten Winkel rechts auf rechts legen und
    diagonal stecken. Prüfen, ob der Ring flach liegt, nähen, die Naht auf { SHORT($seam) } zurückschneiden und
    auseinanderbügeln. Den Rest des Bindings annähen.
    .right = Das Binding passt in die Lücke, und der letzte Ansatz sieht aus wie die anderen.
tuck-tail = Nach der letzten Ecke vor dem gefalteten Ende anhalten. Das Ende so kürzen, dass es { $inside } über den Bruch
    hinausreicht, hineinstecken und über beide hinweg bis zum ersten Stich nähen. Diese beiden Enden werden im nächsten
    Schritt von Hand geschlossen.
    .right = Kein offenes Ende ist zu sehen, und das Binding liegt flach.
sew-down-binding = Die gefaltete Kante nach hinten schlagen, sodass sie die Naht gerade bedeckt, und mit kleinen Blindstichen
    annähen, die Rückseite und Vlies fassen, aber nicht bis zur Vorderseite gehen. An jeder Ecke erst die eine, dann die
    andere Seite zur Briefecke falten und sie auf beiden Seiten mit ein, zwei Stichen schließen.
    .right = Das Binding ist bis zur Kante gefüllt und hinten so breit wie vorn.
    .caption = Auf der Rückseite von Hand beenden.
