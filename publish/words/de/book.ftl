# Mehrere Anleitungen als ein Buch: was es einmal für alle sagt.

book-foreword = Vorwort
book-tools-lead = Alles, was die Anleitungen dieses Buchs verlangen; jede Zeile sagt, welche, wenn nicht alle.
book-read-as-well = Auch *{ $title }* auf Seite { $page } lesen.
book-glossary-lead = Die Wörter und die Maße dieses Buchs.
chapter-index = Register
    .lead = Wo die Fachwörter vorkommen.
    .terms = Begriffe
    .term = Begriff
    .pages = Seiten
chapter-techniques = Techniken
    .lead = Was mehrere der Anleitungen verlangen. Jede sagt, wo es gebraucht wird.
    .printing = Die Schablonen drucken
work-steps = Die Schritte { $first } { $many ->
    [two] und
   *[more] bis
} { $last } von *{ $title }* auf Seite { $page } arbeiten.
book-sheets = Kopieren oder drucken
    .text = Das Buch nicht zerschneiden: die Blätter mit 100 % kopieren und auf jeder Kopie das Prüfquadrat messen.
book-patterns = Die Anleitungen: { $patterns }.
