# What to buy: fabrics, batting, web, forms, thread; what is there already; precuts.

chapter-materials = Materials
    .lead = Lengths to buy, rounded up to what a shop cuts.

fabric-assumes = Fabric requirements assume { $differs ->
    [yes] a usable width of { $widths }
   *[no] { $widths } of usable width
}, measured between the selvages{ $includes ->
    [none] { "" }
   *[some] , and include { $included }
}.
width-of = { $width } for { $fabrics }
include-straightening = { SHORT($length) } for straightening the cut end
include-squaring = { SHORT($length) } a strip for keeping its edge straight
include-mis-cut = { SHORT($length) } for a strip that goes wrong

table-fabric = Fabric
fabric-row = **{ $fabric }**: { $uses }
use = { $use ->
    [ground] ground
    [blocks] blocks
    [foundation] foundation piecing
    [motif] motif
    [sashing] sashing
    [cornerstone] cornerstones
    [side-triangle] side triangles
    [corner-triangle] corner triangles
    [backing] backing
    [binding] binding
    [pillow-back] pillow back
   *[sleeve] sleeve
}
use-alone = for the { $use ->
    [backing] backing
    [binding] binding
    [pillow-back] pillow back
    [sleeve] sleeve
   *[top] top
} alone
at-hand = { $bought }; at hand: { $stock }
stock-short = short by { $length }
stock-left = enough, with { $length } left
stock-little-left = enough, with less than { $length } left
stock-even = enough, to the { $unit ->
    [centimetre] centimetre
   *[inch] inch
}

table-other-materials = Other materials
material-batting = **Batting**: { $name }
material-web = **Fusible web**
material-stabilizer = **Tear-away stabilizer**
material-form = **Pillow form**
material-zipper = **Zipper**, to fit the back
batting-cell = { $size }{ $packed ->
    [yes] ; package: { $package }
   *[no] { "" }
}
# A package of batting by its name in the trade and its sides.
package = { $name ->
    [craft] craft
    [crib] crib
    [cot] cot
    [single] single
    [twin] twin
    [full] full
    [double] double
    [queen] queen
   *[king] king
} { SIDES($sides) }
web-cell = { $length } of { $width } wide web
stabilizer-cell = { $length } of { $width } wide stabilizer
zipper-cell = One

table-thread = Thread
thread-piecing = Piecing{ $pillows ->
    [yes] { " " }and making up
   *[no] { "" }
}: grey or beige
thread-applique = Appliqué, to match { $fabric }
thread-quilting = Quilting: matching the { $around ->
    [ground] ground
    [both] grounds and blocks
   *[blocks] blocks
} or contrasting
thread-binding = Binding, to match { $fabric }
thread-cell = { $thread }: { $spools }
thread-bobbins = Full bobbins for quilting, wound from its thread
thread-spool = One spool is { $metres } m.
thread-bobbin = One full class 15 bobbin holds about { $length } of 50 wt thread.

hint-weave = Choose closely woven quilting cotton for the motif: it holds a crease and frays little.
hint-package = Package sizes of batting vary; check the label.

# In brief, on the back cover.
short-fabric = { $fabric }: { $bought }
short-size = { $size } { $bought }
# `said` is yes where the batting's own name holds `short-batting-word`.
short-batting = { $said ->
    [yes] { $name }
   *[no] { $name } batting
}
short-batting-word = batting
short-form = { CAPITAL(SHORT($form)) } pillow form
short-web = Fusible web
short-stabilizer = Tear-away stabilizer

# Sold ready cut.

sold-piece = { $pieces } of { $size }
sold-square = { $pieces } of { $side }
sold-strip = { $pieces } { $width } wide
sold-fat = { $pieces }, { $size }
packets-of = { $packets } of { $each }; { $used } are used
precut-or-length = { CAPITAL($ready) }; or { $length }

chapter-looking-up = For looking up
table-precuts = Using precuts
precut-squares = { CAPITAL(SHORT($side)) } squares
precut-strips = { CAPITAL(SHORT($width)) } strips
precut-fat-quarters = Fat quarters
precut-fat-eighths = Fat eighths
precut-no = no: { $piece }
precut-joined = { FIGURES($count) }{ $joins ->
    [some] , { $joined } joined
   *[none] { "" }
}
one-fat-quarter = a fat quarter { SHORT($length) } × { SHORT($width) }
one-fat-eighth = a fat eighth { SHORT($length) } × { SHORT($width) }
precut-vary = { CAPITAL($sizes) }: measure yours, sizes vary.
precut-says-no = **No** names the piece that is larger than what is sold.
precut-not-looked = **{ $sign }**: more pieces of different sizes than anyone cuts from these. Buy it by
    length.
precut-says-joined = **Joined**: those strips are then sewn together from more, shorter lengths.

# Cloth that is there.

nothing-at-all = nothing
table-at-hand = What the fabric at hand suffices for
    .uses = Cut from it
    .still = Still to buy
    .note = Cut what is there before you buy: the lengths above are for buying all of it.
table-cutting-at-hand = Cutting the fabric at hand first
    .from = From
    .cut = Cut
    .note = The tables of pieces give the size of each letter.
some-of = { $count } of { $all }
then-bought = { CAPITAL($what) }, bought
each-sheet = { $sheets ->
    [1] { "" }
   *[other] each:{ " " }
}{ $strips }
strips-of-sheet = { $strips } { $depth } deep{ $way ->
    [length] { " " }along its length
   *[width] { "" }
}, with { $holds }{ $strips ->
    [one] { "" }
   *[other] { " " }in each
}
section-of-sheet = a section { $width } wide for { $strips }
