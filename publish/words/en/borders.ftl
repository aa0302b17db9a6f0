# Adding the borders. A message is named after its operation; its parts are `right`, what is
# seen when it is right, `tip`, `caution`, and `caption` of the figure.

chapter-borders = { $rounds ->
    [yes] Adding the borders and rounds
   *[no] Adding the borders
}
    .lead = Measure the top at its middle and near both edges, and trim the strips to the average:
        it keeps the top square.

border-name = { $place ->
    [only] border
    [inner] inner border
    [middle] middle border
    [outer] outer border
   *[other] { ORDINAL($number) } border
}
border-opening = The { $border } is { $fabric }.
round-opening = The { ORDINAL($round) } round, the { $border }, is { $fabric }.

border-strips = { $border } strips
join-lengths = Join the cut lengths of the { $what } end to end, right sides together, with a
    { $seam } seam: { $joins }. Press the seams open{ $trim ->
        [yes] { " " }and trim each strip to its length
       *[no] { "" }
    }.
    .right = Laid out straight, { $strips }.
join-of = { $lengths } of { $letter } for { $strips ->
    [one] the strip
   *[other] each of the { $strips }
}
strip-cut = { $letter } measures { $strip }
strip-measures = { $letter } measures at least { $strip }

measure-top-down = { $opening } Measure the top from top to bottom at the middle and near both
    edges: it should be { $height } on average.
    .caption = { $size }: the { $border }, sides first.
measure-top-across = Measure from side to side in the same way, side strips included: it should be
    { $width } on average.
measure-top-down-across = { $opening } Its corners are mitred. Measure the top both ways at the
    middle and near both edges: it should be { $top } on average.
    .caption = { $size }: the { $border }, mitred.

cut-border = { $sides ->
    [sides] Trim the two side strips { $letters } to your average.
   *[ends] Trim the top and bottom strips { $letters } to your average.
}
    .tip = { $spare ->
        [none] Strips { $exact } have nothing to spare. If your average is more than { $near }
            longer, check the width of your seams before you sew on.
       *[some] { "" }
    }
pin-border = { $sides ->
    [sides] { $where ->
        [quarters] Pin one to each side at the ends, the middle and the quarter points, and ease
            the rest between the pins.
       *[ends] Pin one to each side at the ends and the middle, and ease the rest between the
            pins.
    }
   *[ends] Pin one to the top and one to the bottom in the same way.
}
sew-border = { $sides ->
    [sides] Sew them on with a { $seam } seam.
   *[ends] Sew them on.
}
press-border = Press toward the border.
    .right = { $sides ->
        [mitred] { "" }
        [sides] The top measures { $top } and lies flat.
       *[ends] The top measures { $top }.
    }

pin-mitred = Fold each of the four strips { $letters } in half to find its middle and pin it to the
    middle of its side.{ $where ->
        [quarters] { " " }Pin the quarters next, then between them
       *[ends] { " " }Pin outward from there
    }; the ends reach past the corners.
    .right = Each strip reaches past both corners by about { $width } or more.
sew-mitred = Sew the strips on, starting and stopping exactly { $seam } from each corner of the
    top. Backstitch at both ends.
    .right = At each corner the two lines of stitching meet in one point.
sew-mitre = Fold the top on the diagonal, right sides together, so that two neighbouring strips lie
    on each other. Lay a ruler along the fold and mark its line across the strips. Pin, and sew on
    the line from the corner of the seams out to the edge. Trim to { $seam }. Do the same at the
    other corners.
press-mitres = Press the mitres open.
    .right = The corners lie flat, and the top measures { $top }.
