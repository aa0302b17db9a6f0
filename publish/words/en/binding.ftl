# Binding the quilt.

chapter-binding = Binding
    .lead = A double-fold binding with mitred corners, sewn on by machine and finished by hand.

trim-level = Trim the batting and the backing level with the edge of the top, and square the corners
    with a ruler.
    .right = The quilt measures { $quilt }, and its corners are square.
    .tip = Quilting shrinks the top slightly. Trim to straight edges and square corners even if
        yours has come out a little smaller.

join-on-diagonal = { $count ->
    [one] Take the binding strip { $letter }, { SHORT($width) } wide. It is long enough to go
        around without a join.
   *[other] Take the binding strips { $letter }: { $strips } { SHORT($width) } wide. Lay the ends
        of two strips across each other at a right angle, right sides together. Pin, unfold to
        test that the edges run on straight, and sew across the corner on the diagonal. Trim to
        { $seam } and press the seam open. Join them all in this way.
}
    .right = { $count ->
        [one] { "" }
       *[other] The joined strip has straight edges and is at least this long: { $length }.
    }
    .caption = Joining strips on the diagonal.

cut-bias-square = Take the binding square { $letter }, { $square }, and cut it on one diagonal. Sew
    the two triangles together along a pair of straight edges, right sides together, with a
    { $seam } seam, so that they make a slanting shape with two long bias edges. Press the seam
    open.
    .caption = Bias binding from a square.
rule-bias = Rule lines { $width } apart, parallel to the bias edges; cut away what is left beyond
    the last line.
sew-bias-tube = Bring the two straight ends together, right sides together, offset by one line, so
    that the first line meets the second. Sew with a { $seam } seam and press it open.
cut-bias-tube = Cut along the line in one long spiral.
    .right = You have one bias strip, at least this long: { $length }.

press-in-half = Press the strip in half along its whole length, wrong sides together, without
    stretching it.
    .right = The two raw edges lie level.
    .caption = Pressing the strip in half.

start-binding = Keep the walking foot on. Lay the binding along one side on the front, raw edges
    level with the edge of the quilt, starting { $place ->
        [middle] in the middle of the side
       *[corner] { $from } before a corner
    }. Leave a tail of { $tail } loose and sew with a { $seam } seam toward the corner.
    .tip = Lay the binding around the quilt first; keep joins off the corners.
    .caption = Starting on a straight side.
turn-corner = Stop { $seam } before the corner, backstitch and cut the threads. Fold the binding
    straight up, away from the quilt, so that the fold slants across the corner. Then fold it
    straight down along the next side, its new fold level with the edge you have just sewn. Start
    again from that edge.
    .right = A small pleat stands up at the corner, and the raw edges lie level with the next side.
    .caption = Folding the corner.
close-binding-diagonal = When all four corners are turned, stop { $gap } from your start. Fold the
    quilt so that the tails reach each other. Lay them along the edge and trim them so that they
    overlap by the width of the strip: { SHORT($overlap) }. Open both out and pin them on the
    diagonal like the strips; check that they lie flat before you sew. Trim the seam to
    { SHORT($seam) } and sew the rest down.
    .right = The binding fits the gap exactly, and the last join looks like the others.
close-binding-tucked = When all four corners are turned, stop { $gap } from your start. Fold the raw
    end of the first tail under by { SHORT($seam) }. Trim the other tail so that it reaches
    { SHORT($overlap) } into the first, lay it inside and sew the rest down.
    .right = The fold covers the raw end, and the binding lies flat.
sew-down-binding = Turn the folded edge over to the back, so that it just covers the line of
    stitching, and sew it down with small blind stitches that go into the backing and batting but
    not through to the front. At each corner fold one side, then the other, into a mitre, and close
    it with a stitch or two on both sides.
    .right = The binding is filled to its edge and as wide on the back as on the front.
    .caption = Finishing by hand on the back.
