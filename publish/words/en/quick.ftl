# Units made several at once. In full, `again` is no: the first time that a size uses a method.

some-squares = { $count ->
    [one] { A(square-called) }
   *[other] { $count } { square-called }s
} { $letter }
square-called = { $fabric } { $shape ->
    [square] square
   *[piece] piece
}
-opens = **{ CAPITAL($the) }{ $trade ->
    [none] { "" }
   *[other] , { A(-trade) }
}**.
-trades = { $trade ->
    [half-square-triangle] half-square triangles
    [hourglass] hourglasses
    [flying-geese-unit] flying geese units
   *[other] units
}
-often = { $often-differs ->
    [yes] { " " }Do this { TIMES($often) }.
   *[no] { $often ->
        [one] { "" }
       *[other] { " " }Do this { TIMES($often) }.
    }
}
-trim = { $trim-differs ->
    [yes] its size in the table
   *[no] { $trim }
}
-have = { $made-differs ->
    [yes] { $trim-differs ->
        [yes] Each measures its size in the table.
       *[no] Each is { $trim }.
    }
   *[no] { $spare ->
        [0] You have { $made } { -trades }.
       *[other] You have { $made } { -trades }, { $spare } of them to spare.
    } Each is { -trim }.
}
-needed = { $needed-differs ->
    [yes] { " " }Make the number in the table.
   *[no] { $needed ->
        [one] { "" }
       *[other] { " " }Make { $needed }.
    }
}
-marked = { CAPITAL($name) }: laid together and sewn.
-cut = { CAPITAL($name) }: cut apart.
-trimmed = { CAPITAL($name) }: pressed and trimmed to size.
-pencil = Draw with a fine pencil, held flat, so that the point does not drag the fabric.
-tip = { $again-differs ->
    [yes] { -pencil }
   *[no] { $again ->
        [no] { -pencil }
       *[yes] { "" }
    }
}
-second = { $seams ->
    [one] { "" }
   *[other] Sew every second seam from the other end: a strip set then stays straight.
}

triangles-sew = { -opens } Draw a diagonal line on the wrong side of { $first }. Lay it on { $second },
    right sides together, and sew { $seam } from the line on both sides of it.{ -often }
    .right = No stitching lies on the drawn line.
    .tip = { -tip }
    .caption = { -marked }
triangles-trim = Cut on the drawn lines and open the halves. Press the seam { $way }. Trim each unit to
    { -trim }, with the 45-degree line of the ruler on the seam, so that the seam ends in two corners.
    .right = { -have }
    .caption = { -trimmed }

hourglasses-sew = { -opens } Lay { $pairs }, right sides together. Draw a diagonal line on the wrong side
    of the upper square, sew { $seam } from the line on both sides of it, cut on the line, and press the
    halves open, the allowances to the darker side. Do not trim them yet.{ -often }
    .right = Each pair of squares gives two squares of two triangles.
    .caption = { -marked }
hourglasses-cut = Lay two of these halves on each other, right sides together, different fabrics facing,
    the seams locked against each other. Draw the other diagonal, across the seam, sew { $seam } from it
    on both sides, and cut on the line.
    .right = The two seams of each unit cross in its middle.
    .caption = { -cut }
hourglasses-trim = Open the units and press the last seam { $way }. Trim each to { -trim }: put the middle
    of that size on the crossing of the seams and the 45-degree line of the ruler on one seam.
    .right = { -have }
    .caption = { -trimmed }

geese-sew = { -opens } Draw a diagonal line on the wrong side of { $small }. Lay two of them in opposite
    corners of { $large }, right sides together, so that their lines make one line and their tips overlap
    in the middle. Sew { $seam } from the line on both sides.{ -often }
    .right = The line runs from corner to corner of the large square.
    .caption = { -marked }
geese-cut = Cut on the line and press the small triangles out. On each half lay one more { $letter } on the
    corner of { $mark } that is still bare, its line running between the two small triangles. Sew { $seam }
    from the line on both sides, and cut on the line.
    .right = Each large square has given four units.
    .caption = { -cut }
geese-trim = Press the last triangles out as well. Trim each unit to { -trim }. Leave { $seam } of { $letter }
    beyond the point of { $mark } in the middle of the long side, and let the seams run into the two
    corners opposite.
    .right = { -have }
    .caption = { -trimmed }

corners-sew = { -opens } Draw a diagonal line on the wrong side of { $squares }. Lay { $flipped ->
        [1] it on the corner of { $base } that the picture shows, right sides together, edges level, the
            line
        [4] two of them on opposite corners of { $base }, right sides together, edges level, the lines
       *[other] one on each corner of { $base } that the picture shows, right sides together, edges level,
            the lines
    } running across the corner. Sew a thread outside the { $flipped ->
        [1] line
       *[other] lines
    }, toward the corner.
    .caption = { -marked }
corners-trim = Fold the triangle over as a trial: it must reach the corner. Then cut away both layers of
    the corner { $seam } outside the seam, and press the triangle out over the seam.{ $flipped ->
        [4] { " " }Do the same on the other two corners.
       *[other] { "" }
    }{ -needed }
    .right = { $needed-differs ->
        [yes] Each unit
       *[no] { $needed ->
            [one] The unit
           *[other] Each unit
        }
    } measures { -trim }.
    .caption = { -trimmed }

strips-sew = { -opens } Sew strips { $order } together along their long edges in this order, right
    sides together. Press the { $seams ->
        [one] seam
       *[other] seams
    } { $way }. Make { $sets }.
    .right = The strip set lies straight. If it bows, press it again from the right side.
    .tip = { $again-differs ->
        [yes] { -second }
       *[no] { $again ->
            [no] { -second }
           *[yes] { "" }
        }
    }
    .caption = { -marked }
strips-cut = Square off one end of each strip set, the ruler's line on a seam, and cut the set across, every
    { $segment }, into { $needed-differs ->
        [yes] the number of segments in the table
       *[no] { $needed } segments
    }{ $each-differs ->
        [yes] { "" }
       *[no] { $often ->
            [one] { "" }
           *[other] ; each set gives up to { $each }
        }
    }. Square it off again whenever the cut is no longer square to the seams.
    .right = Each segment measures { -trim }.
    .caption = { -cut }
on = { $one } on { $other }
