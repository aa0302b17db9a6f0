# Cutting, a fabric at a time. Sizes and numbers of pieces stand in the table; where each lies
# stands in the layout; the words give the order and how many come from a strip.

chapter-cutting = Cutting
    .lead = Seam allowances are already in every cut size.
    .piece = Piece
    .size = Cut size
    .count = How many
cutting-size = Cutting: { $size }
cutting-pieces = Pieces for the { $size }
cutting-how = The table gives the size and number of each piece, across the fabric × along it; the
    layout shows the order and where each piece lies. Long pieces are cut first, then large ones, so
    that what is left can make good a slip.{ $sizes ->
        [one] { "" }
       *[other] { " " }A letter stands for the same part in every size.
    }
cutting-sections = Where a strip has sections, cut each off in one piece, and then into strips across it.

straighten-fabric = Press the fabric, fold it selvage to selvage and square one end to the fold.
    .right = Opened, the cut edge is straight.
set-out-cutting = Cut the strips in the order of the layout, from selvage to selvage, and trim the
    selvages off. Cut the pieces from each strip and label each stack with its letter.
    .right = Each piece is within { $near } of its cut size.
    .tip = Measure the first piece of each letter before you cut the rest. Square the end of the fabric
        again after every few strips.{ $deep ->
            [yes] { " " }What is deeper than { $mat } does not lie on a cutting mat: mark it, and cut it
                with scissors or tear it across the grain.
           *[no] { "" }
        }

-fabric = { $opens ->
    [fabric] **{ $fabric }.**{ " " }
   *[strip] { "\u000A\u000A" }
}{ $marked ->
    [yes] **{ FIGURES($number) }**{ " " }
   *[no] { "" }
}
cut-strips = { -fabric }Cut { $strips } { $depth } wide.
    .caption = { $fabric }, { $size }.
cut-count = { $count } { $letter }
cut-section = a section { $width } wide
cut-sections = { $count } sections, { $widths } wide
cut-box = { $letter } measures { $box }
-left = { $left ->
    [yes] { " " }Left: { $rest }.
   *[no] { "" }
}
cut-pieces-from = { $count ->
    [one] It gives
   *[other] Each gives
} { $pieces }.{ -left }
cut-pieces-whole = { $count ->
    [one] It
   *[other] Each
} is one { $letter }.{ -left }
cut-pieces-long = { $count ->
    [one] It
   *[other] Each
} is one { $letter }: leave it long until the top is measured.{ -left }
cut-pieces-nested = Leave it whole: it holds { $pieces }, { $alone ->
    [yes] laid
   *[no] fitted together by their outlines
} as on the layout. From edge to edge, { $boxes }.{ -left }
cut-section-strips = { "\u000A\u000A" }From { $sections ->
    [one] the { $which ->
        [only] section
       *[one] { ORDINAL($place) } section
    }
   *[other] each of the { $sections } { $which ->
        [only] sections
       *[one] { ORDINAL($place) } sections
    }
} cut { $strips } { $depth } wide.

cut-shape-once = Cut each { $letters } once on the diagonal.
cut-shape-twice = Cut each { $letters } twice on the diagonal, in an X.
cut-shape-template = Cut each { $letters } to shape with its template.
-strip-each = { $count ->
    [one] the strip
   *[other] each strip
}
cut-shape-hexagon = Mark the middle of both short sides of each { $letters } and cut from the marks to the
    long sides, with the 60-degree line of the ruler on the long side.
cut-shape-equilateral-triangle = Trim one end of { -strip-each } { $letters } at 60 degrees, then cut it at
    60 degrees to one side and to the other, in turn.
cut-shape-slant = Trim one end of { -strip-each } { $letters } at { FIGURES($angle) } degrees, then cut it at
    the same slant every { $apart }, measured square to the cut.{ $leans ->
        [yes] { " " }Lay it right side up in a single layer, since they all lean one way.
       *[no] { "" }
    }

cut-ready-strips = { $strips } { $depth } wide, { $count ->
    [one] with { $pieces }
   *[other] with { $pieces } in each
}
cut-ready-cut = { -fabric }From { $count ->
    [one] { $sheets }
   *[other] each of { $sheets }
} cut{ $way ->
    [length] { " " }along its length
   *[width] { "" }
} { $strips }.
    .caption = { $fabric }, { $size }.
cut-ready-strip = { -fabric }From { $count ->
    [one] { $sheets }
   *[other] each of { $sheets }
} cut { $pieces }.
    .caption = { $fabric }, { $size }.
use-ready-cut = { -fabric }Use { $count ->
    [one] { $sheets }
   *[other] each of { $sheets }
} whole, as { $pieces }.
    .caption = { $fabric }, { $size }.

# A row of the table of pieces.
piece-row = { CAPITAL($name) }{ $joined ->
    [1] { "" }
   *[other] , joined from { $joined }
}
trim-after-quilting = trim to { $size } after quilting
trim-after-applique = trim after appliqué
trim-square-after-applique = trim to { $side } square after appliqué

# What a piece is called in the table of pieces.
cut-piece = { $piece ->
    [backing] backing
    [backing-panel] backing panel
    [bias-binding-square] bias binding square
    [binding-strip] binding strip
    [corner-triangle] corner triangle
    [corner-triangle-from-a-template] corner triangle from a template
    [cornerstone] cornerstone
    [cornerstone-from-a-template] cornerstone from a template
    [diamond] diamond
    [envelope-back] envelope back
    [equilateral-triangle] equilateral triangle
    [foundation-from-a-template] foundation from a template
    [ground] ground
    [half-cornerstone] half cornerstone
    [hanging-sleeve] hanging sleeve
    [hexagon] hexagon
    [large-square-for-geese] large square for geese
    [motif-square] motif square
    [nested-motif] nested motif
    [once-cut-triangle] once-cut triangle
    [parallelogram] parallelogram
    [parallelogram-leaning-left] parallelogram leaning left
    [parallelogram-leaning-right] parallelogram leaning right
    [patch-from-a-template] patch from a template
    [quarter-cornerstone] quarter cornerstone
    [rectangle] rectangle
    [sashing] sashing
    [sashing-from-a-template] sashing from a template
    [sashing-strip] sashing strip
    [side-triangle] side triangle
    [side-triangle-from-a-template] side triangle from a template
    [small-square-for-geese] small square for geese
    [square] square
    [square-for-flipped-corners] square for flipped corners
    [square-for-hourglasses] square for hourglasses
    [square-for-triangles] square for triangles
    [strip-for-strip-sets] strip for strip sets
    [twice-cut-triangle] twice-cut triangle
    [zip-back] zip back
   *[piece] piece
}
cut-for = for { $patches }
piece-border = { $place ->
    [only] { "" }
    [inner] inner{ " " }
    [middle] middle{ " " }
    [outer] outer{ " " }
   *[other] border { FIGURES($number) }{ " " }
}{ $part ->
    [side] side border
   *[top] top and bottom border
}
cut-ranked = { $rank ->
    [large] large
    [medium] medium
   *[small] small
} { $name }
cut-sized = { $name }, { SHORT($size) }
cut-numbered = { $name }, number { FIGURES($number) }

# Notes in the table of pieces.
note-for-form = for { A(SHORT($form)) } form
note-print-turns = the print runs another way in each triangle
note-step-larger = a step larger than the exact size, to be trimmed
note-cut-apart = cut into { FIGURES($count) } at { FIGURES($angle) }°, { $apart } apart
note-cut-in-turn = cut into { FIGURES($count) } at { FIGURES($angle) }° to both sides in turn
note-nearly = cut as a regular one, less than { $metric ->
    [yes] 0.13 mm
   *[no] 0.005 in
} off the drawing
