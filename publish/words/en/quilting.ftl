# Layering and quilting.

chapter-quilting = Layering and quilting
    .lead = Layer, baste and quilt.

noun-backing-panel = { $count ->
    [one] { $count } backing panel
   *[other] { $count } backing panels
}
noun-whole-panel = { $count ->
    [one] the whole panel
   *[other] the { $count } whole panels
}

sew-backing = Take the { $panels } { $letter } of { $fabric }: no selvage may be left on them.{ $split ->
        [no] { "" }
        [one] { " " }Cut one of them in two along its length, { $half } wide each; lay a half { -beside } { $whole }.
       *[last] { " " }Cut the last of them in two along its length, { $half } wide each; lay a half { -beside } { $whole }.
    } Sew them together along their long sides with a { $seam } seam. Press the { $seams ->
        [one] seam
       *[other] seams
    } open.
    .right = The backing measures at least { $backing }, with { $seams ->
            [one] one { -way } seam
           *[other] { $seams } { -way } seams
        }{ $split ->
            [no] { "" }
           *[other] , none of them down the middle
        }.
-beside = { $way ->
    [vertical] on either side of
   *[horizontal] above and below
}
-way = { $way ->
    [vertical] vertical
   *[horizontal] horizontal
}

remove-paper = Remove all paper from the foundations{ $part ->
        [some] { " " }of the { $sizes }
       *[all] { "" }
    }: crease it along the stitches, hold the seam with a thumbnail and tear the paper away, the last
    patch first. Pick small bits out with tweezers.
    .right = No stitch is pulled.
press-top = Press the finished top and clip loose threads from the back: dark threads show through
    light fabric.

layer-quilt = Lay the backing { $letter } wrong side up, { $backing }, and tape it down flat without
    stretching it. Smooth the batting over it, { $batting }, and centre the top on it right side up.
    .right = Batting and backing show evenly beyond the top on every side, the backing furthest.
    .tip = { $finishes ->
        [quilts] { "" }
        [pillows] The backing becomes a lining inside the cover: any plain cotton will do.
       *[mixed] The backing of the { $pillows } becomes a lining inside the cover: any plain cotton
            will do.
    }
    .caption = { $size }: backing, batting and top.

baste-quilt = Baste the layers together from the centre out, with safety pins or with long stitches
    in rows no more than { $rows } apart. Keep pins clear of { $edge ->
        [motif] the edge of the motif and of lines
       *[lines] lines
    } you mean to quilt. Long stitches may cross them: clip them as you come to them.
    .right = The backing is smooth.
    .tip = Unfold the batting the day before, as its label says.
    .caption = Basting the layers, from the centre out.

begin-quilting = Fit a walking foot, a new needle of size 90/14 and a stitch about { $stitch } long,
    or thread a short needle for quilting by hand. Try it on a scrap sandwich of the same fabric and
    batting. Always work from the centre out.
    .right = The stitches look the same from both sides and the layers do not shift.
    .tip = Bring both threads to the top at each start, knot them and bury the ends between the
        layers.
anchor-quilt = { $part ->
    [some] On the { $sizes }, quilt
   *[all] Quilt
} in the ditch of { $seams ->
    [round] the seams around the middle first: they hold
    [one] the seam nearest the middle first: it holds
   *[other] one seam each way first, those nearest the middle: they hold
} the layers together.

-area = { $area ->
    [motif] the motif
    [border] the borders
    [patchwork] the patchwork
   *[ground] the ground
}
-apart = { $apart-differs ->
    [yes] this far apart: { $apart }
   *[no] { $apart } apart
}
quilt-area-ditch = Quilt { -area } in the ditch: stitch around every edge, in the ground, as close to
    the motif as the needle goes without stitching on it. Around tight curves and narrow slits use a
    free-motion foot with the feed dogs lowered, or quilt by hand.
    .right = The stitching hardly shows.
quilt-area-seams = Quilt { -area } in the ditch: stitch along every seam, on the side that the
    allowances were not pressed to.
    .right = The stitching hardly shows in the seam.
quilt-area-echo = Quilt echo lines in { -area }, { -apart }. The first line lies that far from { $edge ->
        [motif] the edge of the motif
       *[edge] the edge they follow
    }, the next as far from the first, and so on until { -area } is filled.
    .right = The lines are the same distance apart everywhere; where two sets meet they form a soft
        point.
quilt-area-echo-motif = Quilt echo lines in { -area }, { -apart }. The first line lies that far inside
    its edge, the next as far inside the first, as long as there is room.
    .right = The lines are the same distance apart everywhere.
quilt-area-echo-border = Quilt echo lines in { -area }, { -apart }. The first line lies that far
    outside the seam of the innermost border, the next as far outside the first, all around to the
    edge.
    .right = The lines are the same distance apart all around and turn sharply at the corners.
quilt-area-parallel = Quilt { -area } with { $lines ->
        [along] lines that run along each side
        [across] lines that run straight across
        [slant] lines that slant across
        [horizontal] horizontal parallel lines
        [vertical] vertical parallel lines
       *[slanting] slanting parallel lines
    }, { -apart }. Mark the first with chalk or a marker that washes out. Keep the others to it with
    the guide bar of the foot or strips of tape.
    .right = The lines are straight and evenly spaced from edge to edge.
quilt-area-grid = Quilt { -area } with { $lines ->
        [diagonal] a diagonal grid
        [upright] an upright grid
       *[slanting] a slanting grid
    }, its lines { -apart }. Mark the first line each way with chalk or a marker that washes out. Sew
    all the lines of one direction, then those of the other.
    .right = Squares match, and the backing has no tucks at the crossings.
quilt-area-as-desired = Quilt { -area } as you like, with lines as close together as the label of the
    batting asks.
    .right = The quilting is about as dense here as elsewhere, so that the top lies flat.

remove-basting = Take out the basting, and look the back over for tucks.

# The quilting plan.

table-quilting = The quilting plan
    .where = Where
    .how = How
    .apart = Apart
    .length = Length of the lines
    .together = Together
    .note = Lengths are of the lines themselves, each to the nearest { $unit ->
        [metric] 10 cm
       *[yards] quarter yard
    }.
    .caption = { $size }: the quilting lines.
quilted-area = { -area }
quilted-style = { $style ->
    [ditch] in the ditch, beside the edge
    [echo] echo lines
    [parallel] parallel lines
    [grid] a grid
   *[as-desired] as you like
}
note-apart = How far apart
    .label = The label of your batting says how far apart lines of quilting may be. Read it first.
    .made-for = This plan was made for **{ $batting }**, with lines no more than { $gap } apart.
    .closer = If your batting asks for closer lines, add lines between those drawn.
