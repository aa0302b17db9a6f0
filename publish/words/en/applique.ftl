# Sewing a motif down by hand, and trimming its block.

chapter-applique = Needle-turn appliqué
    .lead = Turn the edge under a little at a time, just ahead of the stitches.

thread-needle = Thread an appliqué needle with a single fine strand that matches { $fabric }, about { $long }
    long, and knot one end.
    .tip = Use 60 wt cotton, or fine silk or polyester.
thread-needle-prepared = Thread a fine needle with a single strand that matches { $fabric }, about { $long } long,
    and knot one end. Start from inside a fold, on a gentle curve near the centre.
begin-at-centre = Begin { $first ->
        [centre] with the opening at the centre
        [openings] with the openings nearest the centre
       *[edge] on the part of the edge nearest the centre
    } and work outward. Start on a gentle curve or a straight stretch. Hide the knot under the motif, and bring
    the needle out through the very edge of the finished line.
sweep-edge = With the side of the needle, sweep the turn-under of { $under } beneath the motif, no more than
    { $ahead } ahead of your stitches. Hold it down with your thumb.
    .right = The finished line has just rolled out of sight.
    .caption = Turning the edge under and catching its fold.
stitch-edge = Take the needle down into the ground right beside where the thread leaves the motif, along
    underneath, and up through two or three threads of the folded edge. Keep stitches about
    { $apart } apart, never more than { $most }, and draw each snug but not tight.
    .right = From above you see only the edge; from behind, short, even, slanting stitches.
    .tip = Right-handed: sew counter-clockwise, the edge toward you. Left-handed: clockwise.
stitch-prepared-edge = Sew the edge down with blind stitches: down into the ground right beside the fold, along
    underneath, and up through two or three threads of the fold. Keep stitches about { $apart }
    apart, never more than { $most }. Sew edges near the centre first.
    .right = From above you see only the edge, and none of it lifts under a fingernail.
    .tip = By machine, use a narrow blind-hem or zigzag stitch and fine thread: only the swing of the
        needle catches the fold.
turn-points = At a point, sew right up to the end of the finished line and take one extra stitch. Trim
    the excess tip, turn the tip under straight across, then sweep the second side under.
    .right = The point is sharp, without a lump or a raw thread.
    .caption = Turning a point.
turn-corners = Just before an inside corner, clip straight into it with small scissors, to within a
    thread of the finished line. Turn one side as far as the clip, then the other, and take three
    close stitches in the corner.
    .right = The corner is crisp and no threads escape.
    .caution = Clip each corner only when you reach it, never across the finished line.
    .caption = Clipping and turning an inside corner.
turn-curves = Outward curves need no clips: turn short stretches and ease the fullness under. Clip inward
    curves a few times, halfway through the turn-under.
    .right = The curve is smooth.
    .tip = If a bump shows, sweep it out with the needle before the next stitch.
turn-openings = { $bent ->
        [yes] Turn each opening as you turn the outer edge, with close stitches.
       *[no] Treat each opening as an inward curve all around, clipped lightly, with close stitches.
    }
    .right = The ground shows through an even opening.
    .caption = Turning the edge of an opening.
fasten-off = To end a thread, make two tiny stitches in the ground behind the motif. Run the needle
    between ground and motif for its own length and cut the thread.
press-block = Remove the basting and all marks, as the maker of the marker says: heat can set them. Press
    the block face down on a folded towel.
    .right = The edge shows no shine and no ridge.

pin-stabiliser = From the stabilizer cut { $squares }. Pin one behind each ground, past the motif on every
    side.{ $wide ->
        [yes] { " " }Where a square is wider than the roll, lay two lengths side by side.
       *[no] { "" }
    }
    .right = The ground lies flat.
tear-stabiliser = Tear the stabilizer away gently, holding the stitches down with a thumb.

chapter-applique-prepared = Sewing a prepared edge
    .lead = The edge is already turned: sew it down with a blind stitch.

cut-ground-away = Hold the block up to the light. If the ground shows through, cut it away behind the
    motif, { $inside } inside the stitches.
    .caution = Lift the ground clear of the motif before you cut into it.
trim-blocks = Trim { $many ->
        [yes] each block
       *[no] the block
    } to { $size }: half of that from the centre to each side.{ $pieced ->
        [yes] { " " }On a pieced ground, line the ruler up with the seams too.
       *[no] { "" }
    }
    .right = The corners are square, and the ground outside the motif is even.
    .tip = Lay the diagonal of a square ruler on a diagonal crease.
    .caption = Trimming the block about its centre.
trim-at-edge = Lay the blocks out as they will be sewn. On each, draw the finished square about its
    centre with a removable marker, { $side } on every side. Cut { $seam } outside the line where a side
    meets another block, { $closing } outside it at the edge of the cover.
    .right = The motif is in the middle of each finished block, and outer edges have the wider
        allowance that closes the cover.
    .caption = Trimming the block about its centre.
leave-large = Do not trim the block: it is trimmed after quilting, once it cannot shrink.
