# Figures: labels, and what each figure shows, for who cannot see it. Labels stand in narrow
# rooms beside or inside a drawing: keep them short.

figure-5-cm = 5 cm.
figure-5-cm-2 = 5 cm
figure-a-border-in = a border in { $name }
figure-a-border-of-in = a border of { $width } in { $name }
figure-a-centimetre = a centimetre
figure-a-round-of-of = a round of { $blocks } of { $block-side }
figure-a-section-wide-cut-into = a section { $width } wide, cut into { $inner }
figure-a-stretch-deep-holding-nested = a stretch { $depth } deep, holding { $held } nested
figure-an-inch = an inch
figure-and = { " " }and{ " " }
figure-and-2 = , and { $mirrored } { $how }
figure-and-turned-over = and { $mirrored } turned over
figure-apart = { $width } apart
figure-apart-2 = { $distance } apart
figure-apart-3 = ; { $corners } apart
figure-as-shown = As shown
figure-as-the-booklet-says = { $what } as the booklet says
figure-at-the-hems = at the hems
figure-at-wider-edges = , { $widest } at wider edges
figure-back = back
figure-back-of-the-quilt = back of the quilt
figure-back-on-the-line = back on the line
figure-back-stitch = back-stitch
figure-backing = backing
figure-backing-2 = Backing
figure-barcode = Barcode, { $kind }, { $digits }.
figure-baste-from-the = baste from the
figure-basting = basting
figure-batting = Batting
figure-binding-edge-draw-close =
    The edge of the quilt between the last and the first stitch of the binding: the two
    tails lie along it and overlap by { $width }, the width of the strip.
figure-binding-edge-draw-corner =
    1: stitching stops { $seam } before the corner. 2: the binding is folded straight up,
    with a fold at 45 degrees across the corner. 3: it is folded straight down along the
    next side, its new fold level with the first edge, and stitching starts again from that
    edge.
figure-binding-edge-draw-finish =
    The back of the quilt at a corner: the binding is folded over the edge to the back and
    sewn down along its fold with small blind stitches; at the corner its two sides meet in
    a mitre.
figure-binding-edge-draw-start =
    The folded binding lies on the front along one edge, raw edges level with the edge and
    fold inward. A tail at the start is left loose; the stitching beyond it lies { $seam }
    from the edge.
figure-binding-edge-draw-tuck =
    The folded beginning of the binding lies on the edge of the quilt, its first part not
    sewn down; the other end is tucked into it.
figure-binding-strips-draw-bias =
    1: a square of { $square } is cut on one diagonal. 2: the triangles are sewn together
    along straight edges into a slanting shape, and lines are ruled { $width } apart,
    parallel to its bias edges.
figure-binding-strips-draw-join =
    1: two binding strips { $width } wide cross at a right angle, right sides together, sewn
    on the diagonal of the square where they cross; the corner beyond is trimmed to
    { $seam }. 2: opened out, one straight strip with a slanting seam.
figure-binding-strips-draw-press =
    A binding strip { $width } wide, wrong side up, folded along its middle line; pressed,
    it is { $half } wide with both raw edges level.
figure-blind-stitches = blind stitches
figure-block = block { $block-side }
figure-block-alt =
    The block { $key }, { $side } finished, on a grid of { $columns } by { $rows }:
    { $patches }, { $named }.
figure-block-sections =
    The block { $key }, { $side } square, in { $held } pulled apart: { $names }.{ $order }
figure-border = border { $number }:
figure-borders-alt = all four first, then the mitred corners
figure-borders-alt-2 = 1 the sides, 2 the top and bottom
figure-borders-alt-3 =
    The top, { $inner }, with { $strips } of { $name } round it: { $named }. Sewing order:
    { $order }.
figure-both-of-its-ends = both of its ends
figure-bound-in = , bound in { $name }
figure-buy = buy { $bought }
figure-centre = centre
figure-centre-line = centre line
figure-centre-out = centre out
figure-clip = clip
figure-clip-not-across-the-line = clip, not across the line
figure-clip-turn-outward = clip, turn outward
figure-close-in-lightness = Close in lightness: { $close }.
figure-colouring =
    { $title }, { $width }, in outline to colour in: { $patches } patches and
    { $placements } motifs, { $regions } outlines.
figure-colours-pairs =
    A grid of { $order } fabrics, lightest first: each beside and on each other.{ " " }
figure-colours-pairs-2 = No two are close in lightness.
figure-colours-visions = { $title } { $looks }, to see whether the motif still reads.
figure-cover-form-square = cover { $width }, form { $form } square
figure-crease-in-half = crease in half
figure-crease-on-the = crease on the
figure-creases = { " " }Seams stand for the other creases.
figure-creases-2 =
    The ground, { $wide }, creased { $folds }; every crease crosses the centre.{ $seams }
figure-creases-together = creases together
figure-curves-pin =
    Two parts, { $names }, to be joined along a curve. Dotted lines join the places that are
    pinned: 1 the middles, 2 the ends, 3 between them. The seam line is dashed, { $seam }
    inside the raw edges.
figure-curves-pivot-words = stop { $seam } from the edges, and pivot here
figure-curves-press = The { $name } with its curved seam sewn and { $labels }.
figure-curves-set-in =
    { $parts }, { $letters }; the last to be sewn, { $letters-2 }, is set in along
    { $seams }, numbered in sewing order. A ring marks each of { $pivots } where stitching
    stops, { $seam } from the raw edges, and the part is pivoted.
figure-cut = cut { $number }: { $labels }
figure-cut-2 = cut { $count }
figure-cut-from = Cut { $count } from { $name }
figure-cut-from-2 = Cut { $count } from { $fabric }{ $labels }
figure-cut-from-3 = Cut from { $fabric }
figure-cut-line = cut line
figure-cut-on-the-line = cut on the line
figure-cut-out = cut out
figure-deep-giving = { $count } { $depth } deep, { $more }giving { $gives }
figure-diagonal = diagonal
figure-diagonal-rows = diagonal rows
figure-drawn-line = drawn line
figure-each = each{ " " }
figure-each-2 = { " " }each
figure-exploded-rounds-alt =
    The { $title } so far, { $inner }, and round it, pulled apart, { $named }.
figure-exploded-rounds-alt-2 =
    The { $title } pulled apart: the centre, { $inner }, and round it { $named }.
figure-fabric = fabric { $value }
figure-fabric-alt =
    Cutting layout of { $name } for the { $title }, from { $context } with a usable width of
    { $usable-width }: { $parts }.
figure-finished-line = finished line
figure-finished-line-solid = Finished line solid
figure-finished-motif-across = Finished motif { $span } across
figure-finished-side = finished side
figure-first-back = first back,
figure-first-side = first side
figure-first-stitch = first stitch
figure-fold = fold
figure-fold-down = fold down
figure-fold-then-again = fold { $hem }, then { $hem } again
figure-fold-up = fold up
figure-folded-beginning = folded beginning
figure-folding-alt = The square of cloth laid flat, { $up }, with the line of the first fold.
figure-folding-alt-2 =
    The cloth after { $made } of { $creases } folds, { $side }, { $count } layers, with the
    line of the next fold and an arrow from the side that goes over.
figure-folding-alt-3 =
    The folded wedge, { $count } layers, { $side }: the centre at the bottom left, the
    multiple folds upright on the left, the single fold on the right, the open edges
    opposite the centre.
figure-for = { $name } for { $context }
figure-for-the = For the { $sizes }
figure-foundation = { $block }, foundation { $letter }
figure-foundation-2 = { $block }, foundation { $letter }, { $context }
figure-foundation-done =
    Foundation { $letter } finished and trimmed { $allowance } outside its outer line: the
    printed side, and, turned over, the finished side, its mirror image, with { $fabrics }.
figure-foundation-place =
    Foundation { $letter } from its printed side, numbered { $value } to { $shapes }. The
    fabric for { $value }, { $value-2 }, lies under it, wrong side to the paper, and reaches
    past the lines all round.
figure-foundation-sew =
    Under the paper the fabric for { $value }, { $value-2 }, lies on that for { $value-3 },
    right sides together. Stitching runs along the line between { $value-3 } and { $value },
    on the printed side, { $allowance } past both ends.
figure-foundation-trim =
    The paper folded back on the line that has been sewn, and both fabrics trimmed
    { $allowance } beyond it; what is cut away is hatched. The fabric for { $value } is then
    opened and pressed.
figure-front = front
figure-giving = { $number }: { $count }, giving { $cuts }{ $more }
figure-half = { " " }(half)
figure-heading-allowance = Seam allowance { $narrow }, from line to line{ $wide }
figure-heading-foundation = Sew on the lines in the order { $letter }1, { $letter }2
figure-heading-foundation-2 = Trim on the dashed line, { $seam } outside the sewing line
figure-heading-several = Trim on the dashed line, { $seam } outside the sewing line
figure-hem = hem
figure-how-the-sheets-join = How the sheets join
figure-in = { $n } { $more }in { $name }
figure-in-2 = { $letter } in { $name }
figure-in-3 = { " " }in { $value }
figure-in-4 = { $named } in { $name }
figure-in-colourways = { $shown }, in { $looks } colourways: { $looks-2 }.
figure-in-colourways-2 = { $shown }, in { $names } colourways: { $value }. { $computed }
figure-in-grey = in grey
figure-in-half = in half { $name }
figure-in-half-2 = in half
figure-inward-corner =
    An inside corner in two pictures: 1 the turn-under clipped straight into the corner, to
    within a thread of the finished line; 2 both sides turned under and sewn, with three
    close stitches in the corner.
figure-inward-hole =
    An opening in two pictures: 1 its raw edge clipped halfway to the finished line and
    turned outward under the motif; 2 the turned edge sewn all round, the ground showing
    through.
figure-is-ready = is ready
figure-is-ready-2 = { " " }is ready
figure-join = { " " }Join { $value }.
figure-joins = { " " }Joins { $joins }.
figure-laid-joined-and-the =
    { $parts } laid { $side }: { $named }. Joined and { $value }, the { $name } { $done }.
figure-last-stitch = last stitch
figure-layers = Three layers from the top down: { $sizes }.
figure-level = level
figure-loose-tail = loose tail
figure-measure-both-squares-before-cutting = Measure both squares before cutting.
figure-measure-exactly = measure exactly
figure-measures = measures { $told }
figure-measures-2 = { " " }measures { $unit }
figure-mirror-image-of-the-block = Mirror image of the block
figure-mirror-images-of-the-block = Mirror images of the block
figure-mitre = mitre
figure-multiple-folds = multiple folds
figure-nested = { " " }nested
figure-of = { $count } { $letter } of { $a }{ $becomes }
figure-of-2 = { $count } { $letter } of { $across }
figure-of-3 = { $letter } of { $patches }
figure-of-4 = { $name } of { $value }
figure-of-5 = { $each } { $i } of { $width }
figure-of-6 = { $letter } of { $w }
figure-of-7 = { $block-count } of { $block-side }
figure-of-in = { $count } { $letter } of { $across } × { $along } in
figure-on-both-diagonals = on both diagonals
figure-on-both-sides = on both sides
figure-on-right-sides-together = { $value } on { $value-2 }, right sides together
figure-on-the-diagonals = on the diagonals
figure-one-above-the-other = one above the other
figure-one-more = one more { $small }
figure-open-and-press = open and press
figure-open-creases-showing = open, creases showing
figure-open-edges = open edges
figure-outlines-web = { $value }, on { $length } of web { $width } wide, paper side up.
figure-overlap = overlap { $width }
figure-own-words-fold-words = Turn the paper over along this edge
figure-page-bar = This bar must measure exactly 5 cm.
figure-paper-folded = paper folded
figure-past = { $allowance } past
figure-pillow-back-draw-hem =
    One of { $count }, cut { $long }, wrong side up: one long edge folded over { $hem }
    twice and sewn along the inner fold, which leaves it { $hemmed } deep.
figure-pillow-back-draw-layer =
    The front, { $front-w }, right side up. The first back piece lies on it wrong side up,
    raw edges level with the top; the second comes up from the bottom edge so that the hems
    overlap by { $overlap }.
figure-pillow-back-draw-sew =
    Both back pieces on the front, sewn all the way round { $seam } from the edge, with back
    stitches where the seam crosses the hems.
figure-pillow-cover-draw-turn =
    The cover turned right side out, { $width }: the back with its overlapping opening, and
    the front. The form inside is { $form } square.
figure-pillow-cover-draw-zip =
    The two back pieces, each { $long }, joined { $hem } from one long edge and seen from
    the wrong side: the seam pressed open, its ends sewn with short stitches, the zip face
    down over the basted middle.
figure-pillow-front = pillow front
figure-place-lined-up = evenly between the ground's creases
figure-place-lined-up-2 = its creases lined up with the ground's creases { $found }
figure-place-place-motif = , and rows of basting along it, inside the edges to be turned
figure-place-place-motif-2 = The motif centred on its ground, { $labels }{ $held }.
figure-place-unfold =
    Two pictures: the cut motif still folded in half, with an arrow that opens it, and the
    motif open, all { $folds } wedges alike, its creases meeting at the centre.
figure-precut-alt =
    Cutting layout of { $name } for the { $title }, from { $used } of { $length } ×
    { $width }: { $parts }.
figure-print-at-100 = Print at 100 %.
figure-print-this-sheet = Print this sheet: { $each }
figure-printed-side = printed side
figure-quick-geese-geese =
    A large square, { $large }, { $width }, with two small squares, { $small },
    { $width-2 }, on opposite corners, right sides together, a line drawn through both
figure-quick-geese-geese-2 = { $base }, and stitching { $seam } from it on both sides of it.
figure-quick-geese-geese-3 =
    A half cut off along the line, its two small triangles pressed out, with one more small
    square, { $small }, on the corner that is left: a line drawn from that corner, and
    stitching { $seam } from it on both sides of it, to be cut on the line.
figure-quick-geese-geese-4 =
    A goose opened, pressed and trimmed to { $wide }; each large square gives
    { $each-batch }.
figure-quick-geese-second = sew on both sides, then cut on the line
figure-quick-hourglasses =
    Two squares of two triangles, right sides together, unlike fabrics facing, with a line
    drawn from corner to corner across the seam and stitching { $seam } from it on both
    sides of it, to be cut on the line.
figure-quick-open-and-trim =
    A half cut off along the line, and the { $called } that it opens to, pressed and trimmed
    to { $wide }; each pair of squares gives { $made }.
figure-quick-patch-corners = The corners pressed out: the unit measures { $wide }.
figure-quick-patch-corners-2 = with a diagonal line drawn across each
figure-quick-patch-corners-3 =
    sewn just outside the diagonal line drawn across each, toward the corner
figure-quick-patch-corners-4 =
    sewn just outside the line, the corner cut away { $seam } outside it
figure-quick-patch-corners-5 =
    { $base }, { $width }, with { $names } laid on its corners, right sides together,
    { $does }.
figure-quick-patch-segments = square off this end first, then cut across
figure-quick-patch-strips = A segment, { $trim }, cut from the strip set.
figure-quick-patch-strips-2 = Strips in the order they are sewn: { $named }.
figure-quick-patch-strips-3 =
    A strip set: strips { $named } joined along their long edges and pressed.
figure-quick-patch-strips-4 =
    A strip set of { $named }, squared off and cut across every { $segment }:
    { $each-batch } segments from each set.
figure-quick-triangles = each, right sides together, with a diagonal line drawn on the upper one
figure-quick-triangles-2 = { $both }, sewn { $seam } from it on both sides and cut apart on it.
figure-quick-triangles-3 = { $both } and stitching { $seam } from it on both sides of it.
figure-raw-edge = raw edge
figure-raw-edges = raw edges
figure-raw-edges-level = raw edges level
figure-right-side = right side
figure-right-side-out = right side out
figure-right-side-up = right side up
figure-right-sides-together = right sides together
figure-row-of = row { $n } of { $parts }
figure-sandwich =
    The layers from above: backing { $width } wrong side up, batting { $width-2 }, top
    { $top } right side up, reaching { $overhang } less than the backing on every side; rows
    of basting both ways, arrows from the centre out.
figure-sashing-of-in = sashing of { $width } in { $name }
figure-scale =
    The scale-check square at full size: a square of { $words } inside a square of 5 cm,
    with { $more } ruler laid along the top edge and its zero on the corner.
figure-seam = { $seam } seam
figure-seam-2 = seam
figure-seam-pressed-open = seam pressed open
figure-seams-pressed = , seams pressed { $press }
figure-second-back = second back
figure-second-side = second side
figure-set-on-point = { " " }set on point
figure-setting-triangles-in = setting triangles in { $name }
figure-sew-all-round = sew all round
figure-sew-both-folds-by-hand = sew both folds by hand
figure-sew-in-the-order = Sew in the order { $first }, { $second }
figure-sew-on-the-line = sew on the line,
figure-sheet = { $name }, sheet { $label }
figure-sheet-of = Sheet { $label } of { $count }
figure-sheets-alt = Finished line solid, cut line dashed
figure-sheets-alt-2 =
    Template sheet{ $number } of { $name } at full size. { $lines }. { $value }{ $joined }
    Check squares of { $labels } and 5 cm show whether it is printed true.
figure-sheets-held = { " " }Printed as its half; the fold of the paper is dash-dot.
figure-sheets-held-2 = Wedge edges dash-dot, along which the paper is turned over.
figure-short-stitches = short stitches
figure-side-by-side = side by side
figure-single-fold = single fold
figure-sizes-alt = The sizes side by side to one scale: { $each }.
figure-sleeve-attach =
    The back of the quilt: the sleeve, { $depth } deep, lies centred just below the binding
    at the top edge, seam side down, its upper and lower folds sewn to the backing by hand;
    a rod runs through it.
figure-sleeve-make =
    The sleeve strip, hemmed at both short ends to { $long }, folded in half along its
    length, wrong sides together. The long edges are sewn with a { $seam } seam, and the
    tube pressed { $depth } deep with its open seam along the middle.
figure-stitch-edge =
    Needle-turn close up. On the left the motif's raw edge still lies { $under } outside the
    finished line; in the middle the needle sweeps this turn-under beneath; on the right the
    folded edge is sewn with small stitches about { $apart } apart.
figure-stitch-tip =
    Turning a point in three pictures: 1 the first side sewn up to the end of the finished
    line, 2 the tip turned under straight across, 3 the second side turned under and sewn.
figure-stitches-about-apart = stitches about { $apart } apart
figure-stitching = stitching, { $seam }
figure-stop = stop { $seam }
figure-straight-grain = straight grain
figure-template = Template { $letter }
figure-template-2 = Template { $letter }{ $half }, { $context }
figure-templates = { $count } templates
figure-the-fabrics = The { $keys } fabrics: { $each }.
figure-the-finished = { $title }: the finished { $what }, { $width }: { $context }{ $bound }.
figure-the-laid-out-in = The { $title } laid out in { $rows }: { $each }.
figure-the-last-fold-opens = the last fold opens
figure-the-paper = the paper
figure-the-pulled-apart = The { $title } pulled apart: { $labels }.
figure-the-pulled-apart-into = The { $title } pulled apart into { $how }: { $rows }{ $more }.
figure-the-quilting-lines-of-the = The quilting lines of the { $title }, { $width }: { $each }.
figure-then = ; then{ " " }
figure-this-square-must = This square must
figure-tip-across = tip across
figure-to = { $number } { $what }, to { $width }
figure-top = Top
figure-triangles = { $words }, { $yields } triangles
figure-trim =
    A block of { $wide } with a trim line all round, centred on the motif: trim to
    { $kept }.
figure-trim-away = trim away
figure-trim-to = trim to { $seam }
figure-trim-to-2 = trim to { $allowance }
figure-turn-and-sew = turn and sew
figure-turn-over-here = turn over here
figure-turn-under = Turn-under { $turn-under }
figure-turned-over = turned over
figure-two-squares-upon = Two squares, { $value } upon { $value-2 }, { $width }{ " " }
figure-units-apart-alt =
    { $parts } laid apart: { $named }. Joined by { $seams } and { $press }, the
    { $name }{ $size }.
figure-upright = upright
figure-usable-width = { $width } usable width
figure-wedge-edge = wedge edge
figure-with = { $name } with { $name-2 }
figure-with-the-template-turned-over = with the template turned over
figure-work-wedge-align =
    The paper template pinned on the folded wedge: its point toward the centre at the bottom
    left, its multiple-folds edge along the multiple folds on the left, its single-fold edge
    along the single fold on the right.
figure-work-wedge-baste = { " " }and a row through the part that is cut away
figure-work-wedge-baste-2 =
    The folded wedge of { $folds } layers, marked and basted: rows of long stitches inside
    the finished line{ $waste }.
figure-work-wedge-cut = The order of the cuts on the wedge: { $order }.
figure-work-wedge-mark =
    The folded wedge with the motif drawn on its top layer: the finished line solid
figure-work-wedge-mark-2 = , the cut line dashed { $under } outside it.
figure-work-wedge-mark-3 = { " " }Nothing is drawn along the folds.
figure-wrong-side = wrong side
figure-wrong-side-2 =
    The { $name } turned over left to right, its wrong side up: { $count } with allowances
    of { $seam }; the last { $unit } { $labels }, seen from the right side.
figure-wrong-side-allowances-wide = wrong side, allowances { $seam } wide
figure-wrong-side-to = wrong side to
figure-layer-wrong-side-up = { $name }, wrong side up
figure-wrong-side-up = wrong side up
figure-zip-face-down = zip, face down

figure-or = { " or " }

# What is counted, in figures.
figure-count-block = { $count } { $count ->
    [one] block
   *[other] blocks
}
figure-count-row = { $count } { $count ->
    [one] row
   *[other] rows
}
figure-count-part = { $count } { $count ->
    [one] part
   *[other] parts
}
figure-count-seam = { $count } { $count ->
    [one] seam
   *[other] seams
}
figure-count-curved-seam = { $count } { $count ->
    [one] curved seam
   *[other] curved seams
}
figure-count-set-in-seam = { $count } { $count ->
    [one] set-in seam
   *[other] set-in seams
}
figure-count-mitred-seam = { $count } { $count ->
    [one] seam with mitred corners
   *[other] seam with mitred corners
}
figure-count-slanting-seam = { $count } { $count ->
    [one] slanting seam
   *[other] slanting seams
}
figure-count-upright-seam = { $count } { $count ->
    [one] upright seam
   *[other] upright seams
}
figure-count-level-seam = { $count } { $count ->
    [one] level seam
   *[other] level seams
}
figure-count-strip = { $count } { $count ->
    [one] strip
   *[other] strips
}
figure-count-square = { $count } { $count ->
    [one] square
   *[other] squares
}
figure-count-fat-quarter = { $count } { $count ->
    [one] fat quarter
   *[other] fat quarters
}
figure-count-fat-eighth = { $count } { $count ->
    [one] fat eighth
   *[other] fat eighths
}
figure-count-motif = { $count } { $count ->
    [one] motif
   *[other] motifs
}
figure-count-back-piece = { $count } { $count ->
    [one] back piece
   *[other] back pieces
}
figure-count-corner-triangle = { $count } { $count ->
    [one] corner triangle
   *[other] corner triangles
}
figure-count-sashing = { $count } { $count ->
    [one] strip of sashing
   *[other] strips of sashing
}
figure-count-cornerstone = { $count } { $count ->
    [one] cornerstone
   *[other] cornerstones
}
figure-count-setting = { $count } { $count ->
    [one] setting triangle
   *[other] setting triangles
}
figure-count-patch = { $count } { $count ->
    [one] patch
   *[other] patches
}
figure-count-section = { $count } { $count ->
    [one] section
   *[other] sections
}
figure-count-side = { $count } { $count ->
    [one] side
   *[other] sides
}
figure-count-point = { $count } { $count ->
    [one] point
   *[other] points
}
figure-count-motif-of-folds = { $count } { $folds }-fold { $count ->
    [one] motif
   *[other] motifs
}

# Cuts on a wedge, in order.
figure-cut-opening = cut out the opening inside the wedge
figure-cut-notch-multiple = cut the opening on the multiple folds
figure-cut-notch-single = cut the opening on the single fold
figure-cut-centre = cut the centre opening last
figure-cut-outer =
    cut the outer edge starting at the multiple folds and ending at the single fold
figure-multiple-fold = multiple folds

# What a swatch's fabric is for.
figure-use-ground = ground
figure-use-blocks = blocks
figure-use-motif = motif
figure-use-borders = borders
figure-use-binding = binding
figure-use-backing = backing
figure-use-pillow-back = pillow back
figure-use-sleeve = sleeve

# The layers of a quilt, each with a line to it.
figure-layer-backing = backing,
figure-layer-batting = batting
figure-layer-top = top,

# Areas of quilting: in the key of the figure, and within a sentence.
figure-key-motif = Motif
figure-key-ground = Ground
figure-key-border = Border
figure-key-patchwork = Patchwork
figure-within-motif = motif
figure-within-ground = ground
figure-within-border = border
figure-within-patchwork = patchwork
figure-style-ditch = in the ditch, beside the edge
figure-style-echo = echo lines
figure-style-parallel = parallel lines
figure-style-grid = a grid
figure-style-as-desired = as you like
figure-style-apart = { $style }, { $spacing } apart

# How seams are pressed.
figure-pressed-open = pressed open
figure-pressed-out = pressed outward
figure-pressed-not = sewn
figure-pressed-first = pressed toward the first part
figure-pressed-last = pressed toward the last part
figure-pressed-sashing = pressed toward the sashing
figure-pressed-left = pressed left
figure-pressed-right = pressed right
figure-pressed-up = pressed up
figure-pressed-down = pressed down

# What a rectangle is cut into.
figure-cut-into-once-cut-triangle = , cut once into { $count } { $count ->
    [one] triangle
   *[other] triangles
}
figure-cut-into-twice-cut-triangle = , cut twice into { $count } { $count ->
    [one] triangle
   *[other] triangles
}
figure-cut-into-equilateral-triangle = , cut into { $count } { $count ->
    [one] triangle
   *[other] triangles
}
figure-cut-into-parallelogram = , cut into { $count } { $count ->
    [one] parallelogram
   *[other] parallelograms
}
figure-cut-into-diamond = , cut into { $count } { $count ->
    [one] diamond
   *[other] diamonds
}
figure-round-the-template = { " " }round the template

# How the threads lie.
figure-grain-straight = straight grain
figure-grain-bias = bias

# Computed pictures, and where they show the quilt.
figure-computed = Computed from the pattern, not photographed.
figure-pictured = { $what }, { $where }. { $computed }
figure-on-a-wall = on a pale wall
figure-lying-flat = lying flat
figure-on-a-bench = on a bench against a wall

# Beside a corner that is sewn on: the stage of the work.
figure-corner-mark = drawn line
figure-corner-sew = sew just outside
figure-corner-cut = cut away

# Further uses of a fabric.
figure-use-sashing = sashing
figure-use-cornerstone = cornerstone
figure-use-side-triangle = side triangle
figure-use-corner-triangle = corner triangle
figure-grain-off-grain = off grain

figure-way-left = left
figure-way-right = right
figure-way-top = top
figure-way-bottom = bottom
figure-way-up = up
figure-way-down = down
figure-way-open = open
figure-way-out = outward
figure-way-sashing = toward the sashing
figure-way-first = toward the first part
figure-way-last = toward the last part
figure-quilt-folded = quilt, folded
figure-binding-tails =
    The last two tails, opened out, cross at a right angle with right sides together, pinned and
    sewn on the diagonal of the square where they cross; the corner beyond is trimmed to { $seam }.
    The quilt is folded so that the tails reach each other.
