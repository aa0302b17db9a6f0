# Laying a motif on its ground; preparing its edge before that.

chapter-preparing-the-edge = Preparing the edge
    .lead = Turn the edge over a paper shape and press it before sewing.

cut-paper-shape-folded = { -whose }Cut freezer paper as large as the motif square, { $paper }, and fold it
    into { $folds } as you folded the fabric, waxed side in. Staple it near the open edges. Lay the
    smaller wedge template on the folds, draw around it, and cut on that line.
    .right = Opened, the paper is the finished motif without turn-under.
    .tip = The motif is its own mirror image: either side of the paper may face you.
cut-paper-shape-traced = { -whose }Lay the joined template face down on a bright window or a light box and
    the freezer paper over it, dull side up. Trace the solid line and cut on it.
    .right = Seen from its dull side, the paper is the mirror image of the motif: it lies on the
        wrong side of the fabric.
iron-paper = Lay the motif wrong side up and the paper shape on it, waxed side down, centres and creases
    matched. Iron the paper on from the centre outward.
    .right = A strip of fabric { $under } wide shows all around the paper{ $holes ->
        [yes] { " " }and inside every opening
       *[no] { "" }
    }.
clip-edge = Clip inside corners to within a thread of the paper, and inward curves a few times. Leave
    outward curves whole.
press-edge = Brush liquid starch on a short stretch of the turn-under, fold it over the paper with a
    wooden stick, and press it dry with the tip of the iron. Do inside corners first, then curves,
    points last: the tip straight down, then one side, then the other.
    .right = The fold follows the paper, smooth on the curves.
    .caution = The iron and the damp starch are hot: use the stick, not your fingers.
peel-paper = Let the motif cool flat. Lift the turned edges just enough to slip the paper out, and
    press once more from the back.
    .tip = The paper irons on again several times: keep it for the next motif.

chapter-placing = Placing the motif on the ground
    .lead = Match the creases.

block-named = { $name } block
crease-ground = Fold { $ground ->
        [whole] ground { $letter }{ $wholes ->
            [yes] { -of-block }
           *[no] { "" }
        }
       *[pieced] the pieced ground{ $pieceds ->
            [yes] { -of-block }
           *[no] { "" }
        }
    } { $seams ->
        [both] on both diagonals
        [one] in half across the seam and on both diagonals
       *[none] in half both ways and on both diagonals
    }, finger-pressing each fold before you open it.{ $seams ->
        [both] { " " }The seams replace the creases in half.
        [one] { " " }The seam replaces the other crease in half.
       *[none] { "" }
    }
    .right = All lines cross in one point: the centre of the ground.
    .caption = The ground with its guide lines.
-of-block = { " " }of the { $block }
centre-motif = Lay the ground right side up, and the motif right side up on it. Put a pin through both
    centres, and lower the motif.
    .right = The pin stands upright.
align-motif = { -align }
    .right = The ground shows evenly. In the finished block the points lie inside its edge by
        { $clear }.
    .caption = { $then ->
        [fused] The motif centred on its guide lines.
       *[basted] The motif centred and basted.
    }
align-motif-named = { "" }**{ CAPITAL($motif) }.** { -align }
    .right = The ground shows evenly. In the finished block the points lie inside its edge by
        { $clear }.
    .caption = { $then ->
        [fused] The motif centred on its guide lines.
       *[basted] The motif centred and basted.
    }
-align = { $guides ->
        [both] Bring its straight { -creases } onto the creases in half and its diagonal { -creases } onto
            the diagonal creases.
        [half] Bring its straight { -creases } onto the creases in half.
        [diagonal] Bring its { -creases } onto the diagonals.
        [level] { -one-fold } level crease.
        [upright] { -one-fold } upright crease.
        [fused] Turn the motif until it lies evenly between the creases, as in the picture.
       *[none] Turn the motif until its { -creases } lie evenly between the creases, as in the picture.
    } Smooth it outward from the centre and pin each arm along its middle.
-creases = { $creases ->
    [folds] folds
   *[creases] creases
}
-one-fold = Bring the fold that runs straight through its centre onto the
baste-motif = Baste with long stitches in a contrasting thread, from the centre out along every arm,
    { $inside } inside the { $edge ->
        [pressed] pressed edge
       *[raw] raw edge
    }. Remove the pins as you pass them.
    .right = Lift the ground by a corner: the motif does not shift.
baste-arms = Baste narrow arms once, along their middle.
