# For shops: the listing, the page for the studio's own site, the kit sheet, the tester's form.

# What a computed picture shows, for who cannot see it.
shop-picture = { $title }, { $size }, { $finished }, { $where }. { $computed }
shop-picture-of-colourway =
    { $title }, { $size }, { $finished }, in the colours of { $colourway }, { $where }. {
    $computed }
shop-fact-studio = Designer: { $value }
shop-fact-skill = Skill: { $value }
shop-fact-stock-number = Stock number: { $value }
shop-fact-edition = Edition: { $value }
shop-sizes = Sizes
shop-included = What is included
shop-materials = Materials
shop-pictures = Pictures
shop-licence = Licence
shop-contact = Contact
# Each file of the set.
shop-edition-booklet = Booklet, { $pages }, for { $paper }
shop-edition-booklet-of-size = Booklet { $size }, { $pages }, for { $paper }
shop-edition-templates = Templates, { $pages }, for { $paper }
shop-edition-full-size = Full size, { $pages }, for { $paper }
shop-pages = { $count } { $count ->
    [one] page
   *[other] pages
}
shop-with-sheets = { $edition }, with { $count } { $count ->
    [one] full-size template sheet
   *[other] full-size template sheets
}
shop-steps = { $count } { $count ->
    [one] numbered step
   *[other] numbered steps
}, { $drawings }
shop-drawings = { $count } { $count ->
    [one] drawing
   *[other] drawings
}
shop-cutting-layout = { $count } { $count ->
    [one] cutting layout
   *[other] cutting layouts
}
shop-colouring = { $count } { $count ->
    [one] colouring page
   *[other] colouring pages
}

# The page for the studio's own site.
site-title = { $title }: a quilt pattern
site-title-by = { $title }: a quilt pattern by { $studio }
site-at-a-glance = At a glance
site-skill = Skill
site-edition = Edition
site-stock-number = Stock number
site-barcode = Barcode
site-price = Price
site-sizes = Sizes
site-what-to-buy = What to buy
site-fabric = Fabric
site-fabric-by-size = Fabric by size
site-none = none
site-and = And:
site-what-you-get = What you get
site-what-you-may-make = What you may make
site-questions = Questions and mistakes:
site-front-cover = The front cover of the booklet.
site-page = Page { $number } of the booklet.

# The sheet by which a shop cuts kits.
kit-title = { $title }: kits to cut
kit-from-bolts = From the bolts
kit-lead = To cut from each bolt for { $wanted }.
kit-of-size = { $kits } of { $size }
kit-foot = { $foot } · kits
kit-count = { $count } { $count ->
    [one] kit
   *[other] kits
}
kit-batting = Batting for each kit: { $batting }.
kit-no-batting = No batting.
kit-strips = { $count } { $count ->
    [one] strip
   *[other] strips
} { $depth } deep, each { $cuts }
kit-plan = The plan of one kit
kit-pieces = Pieces, where they are cut for the maker
kit-column-fabric = Fabric
kit-column-for-all = For all kits
kit-column-one = One kit
kit-column-all = All kits
kit-column-usable-width = Usable width
kit-column-strips = Strips across the width, in order
kit-column-piece = Piece
kit-column-name = Name
kit-column-width-length = Width × length

# The form that testers write on. Blanks follow the words.
tester-title = { $title }: tester's form
tester-lead = Please write on it as you sew: every remark helps.
tester-you = You and your materials
tester-name = Name
tester-experience = Experience
tester-fabrics = Fabrics
tester-thread = Thread and needle
tester-size = Size sewn:
tester-paper = Paper and printer: { $line }
tester-printing = Printing
tester-check-squares = The check squares on the template sheets measured:
tester-square = Square
tester-both-ways = Yours, both ways
tester-inch-square = the inch square
tester-centimetre-square = the centimetre square
tester-square-of = the square of { $side }
tester-steps = The steps
tester-one-step = { $section }, step { $first }
tester-some-steps = { $section }, steps { $first } to { $last }
tester-boxes = ☐ clear  ☐ slow  ☐ stuck at step { $room }  minutes { $room }
tester-remarks = Remarks
tester-measurements = Measurements: { $size }
tester-column-what = What
tester-column-should = Should be
tester-column-yours = Yours
tester-column-fabric = Fabric
tester-column-asked = The pattern asks for
tester-column-bought = You bought
tester-column-left = Left over
tester-motif-square = Square for the motif, cut
tester-motif-span = Motif, sewn, from tip to tip
tester-with-border = With { $name }, seam allowances included
tester-unit = { CAPITAL($name) }, seam allowances included
tester-finished = Finished
tester-backing = Backing, cut
tester-batting = Batting, cut
tester-binding = Binding, joined
tester-overlap = Overlap of the pillow's back
tester-last = Last
tester-hours = Hours from cutting to binding
tester-change = What would you change first?
tester-again = Would you sew it again, and for whom?
tester-mistake = A mistake, with its page
tester-send = Send it to { $contact }.
