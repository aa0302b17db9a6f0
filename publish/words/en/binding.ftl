# Binding the quilt.

chapter-binding = Binding
    .lead = A double-fold binding with mitred corners, sewn on by machine and finished by hand.

trim-level = Trim the batting and the backing level with the edge of the top, and square the corners
    with a ruler.
    .right = The quilt measures { $quilt }, and its corners are square.
    .tip = Quilting shrinks the top slightly. Trim to straight edges and square corners even if
        yours has come out a little smaller.

join-on-diagonal = { $count ->
    [one] Take the one binding strip { $letter }, { SHORT($width) } wide. It is long enough without
        a join.
   *[other] Take the binding strips { $letter }, { SHORT($width) } wide: { $strips }. Place two ends
        at a right angle, right sides together. Pin, test that the edges run on straight, and sew
        across the corner on the diagonal. Trim to { $seam } and press the seam open. Join them all
        in this way.
}
    .right = { $count ->
        [one] The strip is at least { $length } long.
       *[other] The edges are straight at each join. The joined strip is at least this long:
            { $length }.
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
    .right = The two raw edges are level.
    .caption = Pressing the strip in half.

-binding-place = { $place ->
    [middle] in the middle of { -binding-side }
   *[corner] on { -binding-side }, { $from } from the corner ahead
}
-binding-side = { $side ->
    [longer] a long side
   *[any] a side
}
start-binding = Keep the walking foot on. Lay the binding on the front, raw edges level with the edge
    of the quilt. Make the first stitch { -binding-place }. Leave { A(SHORT($tail)) } tail loose and
    sew toward the corner with a { $seam } seam.
    .tip = Lay the binding around the quilt first, without sewing, and shift it until no join lies
        at a corner.
    .caption = The first stitches and the loose tail.
start-binding-tucked = The sides are too short for a joined end: the end is tucked into the
    beginning. Open out one end of the strip, fold { $seam } to the wrong side, press, and fold the
    strip in half again. Lay this folded end { -binding-place } of the front, raw edges level. Leave
    { $tail } unsewn, then sew toward the corner.
    .right = The folded end is loose and open like a pocket.
    .caption = The folded end, left open.
turn-corner = Stop { $seam } before the corner, backstitch and cut the threads. Fold the binding
    straight up, away from the quilt, so that the fold slants across the corner. Then fold it
    straight down along the next side, its new fold level with the edge you have just sewn. Start
    again from that edge.
    .right = A small pleat stands up at the corner, and the raw edges are level with the next side.
    .caption = Folding the corner.
meet-tails = Turn the last corner and stop { $gap } before the first stitch. Lay the two tails along
    the edge and trim them so that they overlap by the width of the strip: { SHORT($overlap) }.
    .caption = The tails overlap by the width of the strip.
join-tails = Fold the quilt so that the tails reach each other. Open both out, place them right
    sides together at a right angle, and pin on the diagonal. Check that the loop lies flat, sew,
    trim the seam to { SHORT($seam) } and press it open. Sew the rest of the binding down.
    .right = The binding fits the gap, and the last join looks like the others.
    .caption = The tails joined, the quilt folded.
tuck-tail = After the last corner, stop before the folded end. Trim the tail so that it reaches
    { $inside } past the fold, tuck it inside, and sew over both to the first stitch. These two ends
    are closed by hand in the next step.
    .right = No raw end shows, and the binding lies flat.
sew-down-binding = Turn the folded edge over to the back, so that it just covers the line of
    stitching, and sew it down with small blind stitches that go into the backing and batting but
    not through to the front. At each corner fold one side, then the other, into a mitre, and close
    it with a stitch or two on both sides.
    .right = The binding is filled to its edge and as wide on the back as on the front.
    .caption = Finishing by hand on the back.
