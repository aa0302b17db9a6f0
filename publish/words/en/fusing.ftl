# Fusing a motif, and stitching its raw edge.

chapter-fusing = Fusing and stitching the motif
    .lead = Web and a line of stitching hold the motif; its edge is not turned.

squares-of-web = { $count ->
    [one] one square
   *[other] { $count } squares
} of { $side }
letter-of = { $letter } of { $fabric }

cut-web = From the fusible web cut { $squares }, without bending it sharply.
    .right = Paper and web are still one sheet.
    .tip = Wash the finish out of fabric that is to be fused, and use no softener.
join-web = Where a square is wider than the roll, lay lengths edge to edge without overlapping, and tape
    them on the paper side.
cut-web-length = From the fusible web cut a length of { $length }, without bending it sharply. It holds { $motifs ->
        [one] the motif as the layout shows: mark its centre before you trace.
       *[other] the { $motifs } motifs side by side as the layout shows, at least { $apart } apart: mark the
            centre of each before you trace.
    }
    .right = Paper and web are still one sheet, with room for every motif.
    .tip = Wash the finish out of fabric that is to be fused, and use no softener.
    .caption = { $size }: the paper side of the web.

trace-web-wedges = { -whose }Mark the centre of the paper side of the web, and a pencil line from it to the
    middle of a side. Print the wedge template and cut it out along its line and its two fold
    edges{ $open ->
        [yes] , the opening at the centre left in
       *[no] { "" }
    }. Lay its point on the centre and a straight edge along the pencil line, and draw around its
    outer edge. Flip it about the edge just drawn and draw again, until the { ORDINAL($wedges) } wedge
    closes the circle. Do not mark straight edges.{ $open ->
        [yes] { " " }Last, cut the opening out of the paper and draw its edge in each wedge too.
       *[no] { "" }
    }
    .right = All { $wedges } wedges meet at the centre and join without a step.
    .tip = Or fuse web to the whole square first, then fold, mark and cut; never fuse after folding.
        The motif is its own mirror image, so either side may be traced.
trace-web-whole = { -whose }Print and join the sheets of the whole template. Lay it face down on a bright window
    or a light box, and trace its outline on the paper side of the web.
    .right = The outline is the mirror image of the motif in the pictures: it comes out right once
        the web is on the wrong side of the fabric.
rough-cut = Cut the web out about { $spare } outside the line.
    .tip = For a softer quilt, cut the web away inside the line too: keep a band { $spare } wide along it.

-cool = Let it cool flat.
-hot = Fusing takes more heat than pressing. Work on a protected board in a well-ventilated room and let
    the fabric cool before you touch it.
fuse-fabric = Lay the motif square { $squares } wrong side up, the web on it paper side up, and fuse as the
    package of the web says. { -cool }
    .caution = { -hot }
fuse-stretch = Lay the stretch of fabric { $squares } wrong side up and the web on it, paper side up, as its
    cutting layout shows. Fuse as the package of the web says. { -cool }
    .caution = { -hot }
cut-out = Cut through paper and fabric exactly on the line{ $holes ->
        [yes] , openings first
       *[no] { "" }
    }. Turn the fabric, not your wrist. Score the paper with a pin and peel it away.
    .right = The edge is clean, and the back of the motif has the slight sheen of the web.
fuse-ground = Fuse the motif as the package of the web says, lifting the iron from place to place. Let the
    block cool, then fuse once more from the back.
    .right = No part of the edge lifts under a fingernail.
stitch-raw-edge = Stitch along every edge. Zigzag: { $long } long and { $wide } wide. Blanket stitch, by machine or by
    hand: about { $wide } long. The outer stitch falls in the ground, the inner in the motif. Turn with
    the needle down: outside the motif at points and outward curves, inside it at inside corners
    and inward curves.
    .right = The stitches lie square to the edge and cover it.
    .tip = { $stabilised ->
        [yes] { "" }
       *[no] Put tear-away stabilizer under the ground if the stitches pull it in.
    }
