# Several patterns as one book: what it says once for all of them.

book-foreword = Foreword
book-tools-lead = All that the patterns of this book ask for; each line says which, unless it is all.
book-read-as-well = Read *{ $title }* on page { $page } as well.
book-glossary-lead = The words and the measurements of this book.
chapter-index = Index
    .lead = Where the terms of the trade are used.
    .terms = Terms
    .term = Term
    .pages = Pages
chapter-techniques = Techniques
    .lead = What several of the patterns ask for. Each of them says where it is needed.
    .printing = Printing the templates
work-steps = Work steps { $first } { $many ->
    [two] and
   *[more] to
} { $last } of *{ $title }* on page { $page }.
book-sheets = Copy them, or print them
    .text = Do not cut the book: copy the sheets at 100 %, and measure the check square on each copy.
book-patterns = The patterns: { $patterns }.
