# Folding the square of a motif, marking it, cutting it: on the folds, or flat.

the-motif = motif
each-motif = each motif
motif-named = { $name } motif
some-motifs = { $count ->
    [one] one { $motif }
   *[other] { $count } { $motif }s
}
under-of = { $under } for the { $motif }
noun-motif = { $count ->
    [one] { $count } motif
   *[other] { $count } motifs
}
noun-layer = { $count ->
    [one] { $count } layer
   *[other] { $count } layers
}
noun-wedge = { $count ->
    [one] { $count } wedge
   *[other] { $count } wedges
}
# Whose step it is, where the pattern has several motifs.
-whose = { $several ->
    [yes] **{ CAPITAL($motif) }.**{ " " }
   *[no] { "" }
}

chapter-folding = Folding the fabric
    .lead = Fold, cut one wedge, open: as a paper snowflake is cut.

prepare-square = { -whose }Take the motif square { $letter } of { $fabric }: { $square }. Press it with a
    hot, dry iron and lay it wrong side up.
    .right = It is flat, and its threads run parallel to its edges.
    .tip = Starch the length of fabric before you cut: damp and heat skew a cut square, and steam
        takes starch out.
    .caption = The motif square, wrong side up.

fold-half = Fold the square in half, right side out, edges matched. Smooth toward the fold and press.
    .right = You have { $layers }, and the fold follows a thread. From here on folds must match
        exactly.
    .caption = Folded in half: { $layers }.
fold-quarter = Fold in half the other way, matching the first fold to itself, and press. The corner
    without a raw edge is the centre of the motif.
    .right = You have { $layers }. Two edges are folded, two are raw.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Folded into quarters: { $layers }.
    }
fold-diagonal = Fold on the diagonal, from the centre to the opposite corner, matching the folded
    edges, and press.
    .right = You have { $layers } in a triangle.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Folded on the diagonal: { $layers }.
    }
fold-third = Pinch the middle of the fold: the centre of the motif. Lay one paper with its centre on
    it and one fold edge along the fold, and mark a line along its other fold edge with a marker.
    Fold that third up and across on the line, and press.
    .right = The folded third covers the middle third exactly.
    .caption = One third folded across on the line.
fold-last-third = Fold the remaining third across on top in the same way, folded edges together, and
    press.
    .right = You have { $layers } in a wedge. Both edges that reach the centre are folded.
    .caption = { $last ->
        [yes] { -folded-up }
       *[no] Folded into thirds: { $layers }.
    }
fold-again = Fold the wedge in half once more, from the centre, one folded edge on the other: the
    angle there is now { $folds ->
        [12] 30
       *[16] 22.5
    } degrees. Press hard.
    .right = You have { $layers } in a narrow wedge.
    .caption = { -folded-up }
-folded-up = Folded into { $folds }: the single fold, the multiple folds, the open edges and the centre.

mark-centre = Mark the centre with a pencil dot.
    .right = The new edge is the **single fold**. The other folded edge{ $grain ->
            [straight] , on the straight grain,
            [bias] , on the bias,
           *[off-grain] { "" }
        } holds the **multiple folds**. They meet at the **centre**.
    .tip = { $thick ->
        [yes] { CAPITAL($layers) } are as many as scissors cut cleanly: choose a fine, closely
            woven cotton and press every fold hard.
       *[no] { "" }
    }

chapter-marking-and-cutting-the-motif = Marking and cutting the motif
    .lead = { $folded ->
        [yes] Mark and cut accurately: every layer repeats what you draw on the top one.
       *[no] Mark and cut accurately: the edge is turned on the line you draw.
    }

print-templates = { -whose }Print the wedge template{ $kinds ->
        [one] { -your-size }
       *[other] { " " }of each{ -your-size }
    } twice and cut both papers along their fold edges, right to the centre.
cut-templates = { $start ->
    [here] { "" }
   *[before] { -whose }
}Cut one paper along its dashed cut line, the other along its solid line.
-your-size = { $your ->
    [yes] { " " }for your size
   *[no] { "" }
}
align-template = Lay the larger on the wedge, printed side up: { $end ->
        [open] its narrow end at
       *[point] its point on
    } the centre, *single fold* on the single fold, *multiple folds* on the multiple folds. Pin it.
    .right = Its straight edges lie exactly on the folds; fabric shows beyond the open edge.
    .tip = { $turns ->
        [yes] If your folds lie the other way around, turn the fabric over, not the paper.
       *[no] { "" }
    }
    .caption = The template on the wedge, edge to fold.
mark-cut-line = Draw around the paper in light dashes with a fabric marker: the **cut line**. Do not
    mark the folds.
    .right = The dashed line runs from fold to fold, never along one.
    .tip = Use chalk or a white pencil, and test it: it must survive the iron and wash out.
mark-finished-line = Lay the smaller paper in the same place and draw around it in a solid line:
    the **finished line**, on which the edge is folded.
    .right = The lines run { $under } apart: that strip is the turn-under.
    .tip = Keep both papers whole.
    .caption = Finished line solid, cut line dashed.

baste-wedge = Baste through all { $layers } with a contrasting thread, { $inside } inside the
    finished line; where an arm is too narrow for two rows, once along its middle. Baste once
    through the part that is cut away. Leave long ends without knots.
    .right = The layers do not slide when you rub them.
    .tip = Or use the longest machine stitch, from the point outward: a hot iron closes the holes
        later.
    .caption = The marked wedge, basted through every layer.
cut-wedge = Cut the dashed line through all { $layers }: larger sharp scissors for the long
    edges, small scissors for { $fine ->
        [openings] corners and openings
       *[corners] corners
    }. Follow the arrows: { $order ->
        [first-last] openings first, while the layers are held all around, then { -outer }, the
            opening at the centre last
        [first] openings first, while the layers are held all around, then { -outer }
        [last] { -outer }, the opening at the centre last
       *[outer] { -outer }
    }. Turn the fabric, not your wrist.
    .right = Turned over, the wedge looks the same.
    .tip = Cross a fold at the drawn angle: square to it, the edge opens smooth; at any other angle
        it opens to a point.
    .caution = Do not cut along a fold{ $whole ->
        [yes] : the uncut folds hold the motif together.
       *[no] { " " }where the paper touched it.
    }
    .caption = Where to start, and which way to cut.
-outer = the outer edge from the multiple folds to the single fold

open-motif = Remove the basting. Open the motif one fold at a time without pulling, and smooth it
    from the centre.{ $pieces ->
        [one] { "" }
       *[other] { " " }It comes away in { $pieces } pieces: keep them in their places.
    } Do not iron it: you need the creases, and heat can set the marks.
    .right = The motif lies flat, all { $wedges } alike.
    .tip = Save the scraps for tests.
    .caption = Opening the motif.
mark-wedges = Only the top wedge is marked. On the other { $wedges }, turn the same width under all
    along, or draw around the smaller paper on each, printed side down on every second wedge.

make-motifs = { $folded ->
    [yes] Fold, mark, baste and cut
   *[no] Trace and cut
} the rest one at a time, until you have { $motifs }.

join-template = { -whose }Print the sheets of the whole template{ -your-size }, cut them where they are
    marked, and tape them together by their letters and numbered diamonds.
    .right = The lines run across every join without a step.
trace-motif = Press the motif square { $letter } of { $fabric } and crease it in half both ways. Tape the
    template to a bright window or a light box. Lay the square over it right side up, creases on
    its centre lines, and trace the finished line solid and the cut line dashed.
    .right = The lines run { $under } apart.
    .tip = { $turning ->
        [yes] This design has no mirror line, so it cannot be cut folded.
       *[no] { "" }
    }
cut-flat = Cut the dashed line with sharp scissors{ $holes ->
        [yes] , openings first
       *[no] { "" }
    }, and corners with small scissors. Turn the fabric, not your wrist.
    .right = The motif is in { $pieces ->
            [one] one piece
           *[other] { $pieces } pieces
        }, the solid line all around.
