# Sewing on printed foundations.

chapter-foundation = Foundation piecing
    .lead = Sew fabric to printed paper in the order of the numbers.
foundation-of = { $title }: { $sizes }
foundation-mirror = The printed side is a mirror image
    .sides = The lines are printed on the side that you sew on. The fabric lies on the other, blank
        side, so the finished block is the mirror image of the print: what is on the left of the
        paper comes out on the right of the block.
    .numbers = A1 on a foundation is section A, patch 1, which is sewn first. Bold letters in the
        table are pieces that you cut.
foundation-counts = Sew { $counts }.
foundation-count = { $letters ->
    [one] section { $named } { TIMES($count) }
   *[other] sections { $named } { TIMES($count) } each
} for the { $block }{ $count ->
    [one] { "" }
   *[other] s
}{ $whole ->
    [yes] , whole on one foundation
   *[no] { "" }
}
foundation-letters = { $first } to { $last }
foundation-sections = The { $block }: its sections, and how they are joined.
foundation-fabric = Fabric for the { $block }: { $sizes }
    .patch = Patch
    .fabric = Fabric
    .piece = Piece
    .size = Cut size
    .note = Fabric for a foundation is cut larger than its patch and is trimmed as it is sewn.
foundation-section = Section { $letter }: make { $count }

print-foundations = Print the foundations{ $several-sizes ->
        [yes] { " " }for your size
       *[no] { "" }
    } at **100%** on thin paper that tears easily, one for each section that you sew, and measure
    the check square on every sheet. Cut them apart about { $spare } outside the dashed line. If you
    copy a sheet, measure the square on the copy as well.
    .right = Both check squares measure true, and each section has its letter.
shorten-stitch = Set the stitch to about { $stitch }, shorter than for other seams, and put in a new
    needle of a stout size, such as 90/14. Close stitches and a stout needle perforate the paper, so
    that it tears away without pulling the seam.
    .caution = Paper dulls needles and blades: change both before you sew or cut fabric alone.
lay-first-patch = Hold a foundation with the blank side toward you, against the light. Lay the fabric
    of patch 1 on it, wrong side on the paper, so that it covers area 1 and reaches at least
    { $spare } past its lines on every side. Pin it flat.
    .right = Against the light, area 1 lies within its fabric.
    .caption = Section { $section }: the fabric of patch 1 under the paper, seen through it from the
        printed side.
sew-patch = Lay the fabric of patch 2 on patch 1, right sides together, its edge about { $seam } past
    the line between areas 1 and 2. Fold it over along that line as a trial: it must cover area 2
    with an allowance all round. Lay it back, turn everything over, and sew on the printed line, from
    a few stitches before it to a few stitches past it.
    .right = The stitches lie on the line and hold both patches.
    .caption = Section { $section }: sewn on the line, from the printed side.
trim-patch = Crease the paper back along the line over the edge of a card, and trim both allowances
    to { $seam } beyond it, without cutting the paper.
    .caution = Keep your fingers behind the ruler when you trim.
    .caption = Section { $section }: the paper folded back and the allowances trimmed.
open-patch = Unfold the paper, open patch 2 over area 2 and press it flat from the fabric side with a
    dry iron.
    .right = Patch 2 covers area 2, and there is no pleat in the seam.
    .caution = Keep the iron off the print: hot toner or ink can smear.
sew-further-patches = Do the same with each patch in the order of the numbers: lay it over the line
    that it shares with what is sewn, sew, trim, press.
    .right = The blank side of the paper is covered, and fabric reaches past the dashed cut line all
        around.
trim-section = Lay the section printed side up. With ruler and rotary cutter cut through paper and
    fabric on the dashed cut line. It lies { $seam } outside the outer sewing line.{ $edges ->
        [wider] { " " }Along an edge that comes to lie on the outside of the pillow, cut { $wider }
            outside the outer sewing line instead.
       *[alike] { "" }
    }
    .right = The edges are straight and every edge has its allowance.
    .caption = Section { $section }, trimmed and from its right side.

lengthen-stitch = Set the stitch back to { $stitch } before you join { $next ->
        [sections] sections
       *[blocks] blocks
    }.
join-for = For the { $block }, join
join-plainly = Join
sections-named = sections { $letters }
pin-sections = { $opener } { $parts }: lay { $several ->
        [yes] the first two
       *[no] them
    } right sides together. Push a pin straight through both ends of the sewing line and wherever
    seams meet, from paper to paper; when it stands upright the points match. Pin, and take the
    upright pins out.
pin-sections-again = { $opener } { $parts }{ $several ->
        [yes] { " " }in this order
       *[no] { "" }
    }, matching points with pins.
sew-sections = Sew on the printed line.{ $several ->
        [yes] { " " }Sew on the others in the same way, one after another.
       *[no] { "" }
    }{ $done ->
        [yes] { " " }This is { $whole }.
       *[no] { "" }
    }
sew-sections-again = { $done ->
    [yes] This is { $whole }.
   *[no] { "" }
}
tear-allowances = Tear the paper off the allowances of { $several ->
        [yes] these seams
       *[no] this seam
    } only.
press-sections = Press the { $seams ->
        [one] seam
       *[other] seams
    } { $way }.{ $count ->
        [one] { "" }
       *[other] { " " }Make { $count }.
    }
    .right = { $box ->
        [yes] { CAPITAL($the) } measures { $size }.
       *[no] The points meet at the seam.
    }
leave-paper = Leave the rest of the paper of { $papers ->
        [one] the foundation
       *[other] all { $papers } foundations
    } in until all sides of a block are sewn to their neighbours: it keeps edges cut off the straight
    grain from stretching.
