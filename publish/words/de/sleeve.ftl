# Der Aufhängetunnel und das Etikett.

chapter-sleeve = Aufhängetunnel
    .lead = Mit einem Tunnel lässt sich der Quilt aufhängen.

join-sleeve = Die Längen { $letter } des Tunnels mit { $seam } Nahtzugabe Ende an Ende verbinden, { $lengths }, und die Nähte
    auseinanderbügeln.
hem-sleeve = Den Tunnelstreifen { $letter } nehmen, { $strip }. Jedes kurze Ende { $seam } und noch einmal { $seam } einschlagen und am
    inneren Umbruch entlang nähen.
    .right = Der Streifen ist { $long } lang, etwas kürzer als der Quilt breit ist.
sew-tube = Den Streifen der Länge nach links auf links zur Hälfte falten und die langen Kanten mit { $seam } Nahtzugabe nähen. Die Naht in
    der Mitte des Schlauchs auseinanderbügeln, dort liegt sie zum Quilt hin.
    .right = Der flache Tunnel ist { $depth } tief.
    .caption = Den Tunnel nähen.
sew-sleeve-top = Den Tunnel mittig auf die Rückseite legen, Naht nach unten, den oberen Umbruch knapp unter das Binding. Den oberen Umbruch
    von Hand annähen, nur durch Rückseite und Vlies.
    .right = Auf der Vorderseite ist kein Stich zu sehen.
sew-sleeve-bottom = In der vorderen Lage des Schlauchs etwas Weite lassen, damit eine Stange Platz hat, und den unteren Umbruch ebenso
    annähen. Auch die hintere Lage an beiden Enden annähen, damit die Stange nicht hinter den Tunnel rutscht.
    .right = Mit einer Stange im Tunnel hängt der Quilt flach, und die Vorderseite wölbt sich nicht.
    .tip = Die Stange muss kürzer sein, als der Quilt breit ist.{ $deep ->
        [shallow] { " " }Ausstellungen verlangen oft { $exhibited }: den Streifen für diese Tiefe zuschneiden.
       *[deep] { "" }
    }
    .caption = Den Tunnel an die Rückseite nähen.

chapter-label-and-care = Etikett und Pflege
    .lead = Die Arbeit signieren und datieren.
sew-label = Ein Etikett beschriften oder besticken, mit Namen, Name der Anleitung, Ort, Datum und wie das Stück zu waschen ist. Seine
    Kanten einschlagen und es von Hand an die Rückseite nähen, nur durch den Rückseitenstoff.
