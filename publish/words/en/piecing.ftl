# Piecing patches into units and blocks.

chapter-piecing = Piecing the { $what ->
        [ground] ground
        [both] grounds and blocks
       *[blocks] blocks
    }
    .lead = Sew with a { $seam } seam and a stitch about { $stitch } long, and press each seam before
        another crosses it.
piecing-block = Piecing the { $block }
piecing-of = { $title }: { $size }
piecing-units = Blocks are sewn from units. Each kind has a number in its size; make all of one kind
    before the next.
piecing-chain = Sew and measure one unit of a kind first. Then sew the others as a chain: feed the next
    pair under the foot as the last one leaves it, and snip them apart at the end.
finishes = { CAPITAL($the) } finishes { $side } square: make { $count }.
traditional = Traditional name: *{ $name }*.
also-takes = It also takes { $units }, which you have made by now.
units-table = { CAPITAL($the) }: how many, and what each measures
unit-cell = { FIGURES($count) } of { $size }
unit-cell-count = { FIGURES($count) }
piecing-sizes = The sizes are made alike; the table has their numbers. A step that is for some sizes
    only says so. The pictures show the { $size }.
block-variants = Those that lie on the outside of the pillow are larger by its wider seam along the
    edges that lie there, so there are several, each with a number of its own.
block-shown = { CAPITAL($the) }, with the letters of its pieces.

for-unit = For **{ $name }**, lay out
for-unit-of = For **{ $name }**, { A(-trade) }, lay out
for-the = For the { $name }, lay out
for-none = Lay out
-trade = { $trade ->
    [half-square-triangle] half-square triangle
    [hourglass] hourglass
    [flying-geese-unit] flying geese unit
    [square-in-a-square] square in a square
    [four-patch] four-patch
    [nine-patch] nine-patch
   *[unit] unit
}

lay-out-unit = { $opener } { $parts } { $how ->
        [across] side by side
        [down] one below the other
        [slant] along their slanting edges
        [curve] along the curve
       *[picture] as in the picture
    }{ $turned ->
        [yes] , turned as in the picture
       *[no] { "" }
    }.{ $choose ->
        [yes] { " " }Choose them so that the allowances of neighbours lie opposite ways.
       *[no] { "" }
    }
    .caption = { CAPITAL($name) }: { $stage ->
        [pin] the curve clipped and pinned.
        [set-in] the corner set in.
       *[joined] laid out and joined.
    }
-put = { $first-differs ->
    [yes] { -together }
   *[no] { $first ->
        [yes] { -together }
       *[no] { "" }
    }
}
-together = { $several ->
    [yes] Put the first two right sides together, edges level.{ " " }
   *[no] Put them right sides together, edges level.{ " " }
}
pin-unit = { -put }Pin where seams meet.
pin-unit-both-sides = { -put }Some of the allowances that meet here lie the same way and cannot lock:
    pin on both sides of each crossing.
pin-curve = { $over } has the edge that curves in, { $under } the edge that curves out. Clip the edge
    that curves in about every { $interval }, no deeper than { $depth }. Lay { $over } on { $under },
    right sides together, and match the notches. Pin the middle of the curve first, then both ends with
    the straight edges level, then every notch between, and wherever the edges gape.
    .right = The edges lie level all along the curve. The pieces lie flat only when the seam is opened.
sew-unit-straight = { $pinned ->
    [yes] { $several ->
        [yes] Sew, then add the next in the same way until the last is on.
       *[no] Sew.
    }
   *[no] { $several ->
        [yes] Put the first two right sides together, edges level, and sew, then add the next in the
            same way until the last is on.
       *[no] Put them right sides together, edges level, and sew.
    }
}
sew-unit-straight-again = { $pinned ->
    [yes] Sew.
   *[no] { $several ->
        [yes] Sew them in this order.
       *[no] Sew them together.
    }
}
sew-unit-half = Put them right sides together, the long edges level, and sew along the long edge. It
    lies on the bias: let the machine feed it, and do not pull.
sew-unit-half-again = Sew along the long edge without pulling, as for { $before }.
sew-unit-slant = Put { $several ->
        [yes] the first two
       *[no] them
    } right sides together, the edges that meet level. Points stick out at the ends of the seam: shift
    the parts until their edges cross exactly { $seam } from the edge, where the seam begins and ends.
    Sew{ $several ->
        [yes] , then add the next in the same way until the last is on
       *[no] { "" }
    }, and cut off the points.
sew-unit-slant-again = Sew with the points shifted as for { $before }, and cut them off.
sew-unit-curve = Sew slowly with { $over } on top, taking out each pin before the needle reaches it.
    Stop with the needle down and lift the presser foot to smooth the fabric before it can pleat.
    .caption = { CAPITAL($name) }: sewn and pressed.
sew-unit-curve-again = Clip, pin and sew the curve as for { $before }.
sew-unit-set-in = Mark the corners of the seams on the wrong side, { $seam } in from both edges. Sew the
    first two parts together from edge to mark and lock the stitches there, so that the last { $seam }
    stays open. Set the next part in: sew one side from the edge to the mark with the needle down, lift
    the presser foot, turn the fabric so that the next edges lie level, and sew on{ $pivots ->
        [0] { "" }
        [one] { "" }
       *[other] , { TIMES($pivots) } in this unit
    }.
sew-unit-set-in-again = Sew from mark to mark and set the corners in as for { $before }.

-press = Press the { $seams ->
    [one] seam
   *[other] seams
} { $way }.
-make = { $count-differs ->
    [yes] { " " }Make the number in the table.
   *[no] { $count ->
        [0] { "" }
        [one] { "" }
       *[other] { " " }Make { $count }.
    }
}{ $shared-differs ->
    [yes] { "" }
   *[no] { $shared }
}
-size = { $size-differs ->
    [yes] its size in the table
   *[no] { $size }
}
-made = { $box ->
    [yes] { CAPITAL($the) } measures { -size }.{ " " }
   *[no] { "" }
}{ $later ->
    [yes] It is trimmed after the appliqué.
   *[no] { "" }
}
shared = { " " }That is { $blocks }.
shared-by = { $count } for the { $block }s
press-unit = { -press }
press-unit-made = { -press }{ -make }
    .right = { -made }
trim-unit-added = Pieces are cut to the next { $rounding }, and here that adds up: trim { $the } to { -size },
    taking the same from each side.{ -make }
    .right = { -made }
trim-unit-half = Trim it to { -size }, with the 45-degree line of the ruler on the seam, so that the seam
    ends in two corners.{ -make }
    .right = { -made }
trim-unit-leg = Trim it to { -size }, with the 45-degree line of the ruler on the seam, so that both
    short sides of { $letter } measure { $by }.{ -make }
    .right = { -made }
trim-unit-offset = Trim it to { -size }, with the 45-degree line of the ruler on the seam, so that the
    seam ends { $by } from a corner on each long side.{ -make }
    .right = { -made }
trim-unit-points = Trim it to { -size }, leaving { $seam } beyond each point at its edge.{ -make }
    .right = { -made }
trim-unit-again = Trim it to { -size }, as you trimmed { $before }.{ -make }
    .right = { -made }
