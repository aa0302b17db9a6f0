# What the maker will make: the first section, its table of sizes.

chapter-what-you-will-make = What you will make
    .lead = { $sizes ->
        [1] This is what the pattern makes.
       *[other] Choose one of { $sizes }.
    }
    .caption = { $sizes ->
        [1] The finished piece with its measurements.
       *[other] Finished sizes, drawn to one scale.
    }

name-motif = motif
name-motif-of = { $motif } motif
-method = { $method ->
    [needle-turn] by needle-turn appliqué
    [fusible] with fusible web and a stitched edge
   *[prepared-edge] by hand with a prepared edge
}
# `motif` is its name without an article, as in `name-motif`.
motif-folded = The { $motif } is cut from { $pieces ->
    [1] one piece of cloth
   *[other] cloth
} folded into { $folds ->
    [4] quarters
    [6] sixths
    [8] eighths
    [12] twelfths
   *[16] sixteenths
}, like a paper snowflake, and sewn to its ground { -method }.
motif-turned = The { $motif } turns round its centre in { $folds } like parts, is cut flat from a
    full-size template, and is held to its ground { -method }.
motif-drawn = The { $motif } is drawn from { $counted ->
    [yes] { $folds } wedges
   *[no] wedges
} round its centre and held to its ground { -method }.

grounds-pieced = { $some ->
    [yes] The ground of the { $sizes } is pieced by machine before the motif goes on; the other grounds
        are one piece.
   *[no] The grounds are pieced by machine before the motif goes on.
}
blocks-on-foundations = { CAPITAL($blocks) } { $count ->
    [1] is
   *[other] are
} sewn on printed foundations.
blocks-pieced = The { $others ->
    [yes] other blocks
   *[no] blocks
} are pieced by machine.
blocks-set-on-point = The blocks of the { $sizes } are set on point.
quilts-finished = { $which ->
    [only] The quilt is
    [several] The quilts are
   *[one] The { $sizes } is
} layered, quilted and bound.
pillows-finished = { $count ->
    [1] The pillow has
   *[other] The pillows have
} a quilted front and a plain back that opens, so that the cover comes off for washing.

# The table of sizes.

table-sizes = { $sizes ->
    [1] The size
   *[other] The sizes
}
size-finished = Finished size
size-blocks = Blocks
size-motif = Motif, across
size-skill = Skill
size-edge = Appliqué edge to sew
size-points = Points on each motif
size-inside-corners = Inside corners on each motif
blocks-of-side = { $count ->
    [one] { $count } { $name }
   *[other] { $count } { $name }s
}, { $side }
blocks-one = One, { $side }
blocks-on-point = { CAPITAL($count) } on point, each { $side }
blocks-grid = { CAPITAL($count) }, { $columns } by { $rows }, each { $side }
edge-to-sew = About { $length }
