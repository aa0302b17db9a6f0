# The full-size templates: printing, reading and joining the sheets.

chapter-templates = Templates
    .lead = Full size. Print at 100 % and check the square on every sheet before you cut the paper.
templates-of = Templates: { $size }

print-sheets = Print the { $sheets ->
        [both] template and foundation sheets
        [foundation] foundation sheets
       *[template] template sheets
    }{ $your ->
        [yes] { " " }for your size
       *[no] { "" }
    } single-sided at **100 %**, or *actual size*. Switch off *fit to page*, *shrink* and every other scaling.
    .tip = Print one sheet first and check it before you print the rest.
check-sheets = Measure the check square on every sheet with the ruler that you cut with. One square is
    { SHORT($small) } on each side, the other { $large }.
    .right = Both squares measure true in both directions. If they do not, change the printer's settings and
        print again.
    .caption = The check square, measured both ways.

template-lines = The solid line is the finished edge and the dashed line is the cut edge.
template-raw-edge = A motif with a raw edge has one line only, its edge.
template-pieces = A piece template has its seam allowance: cut it out on the outer line; the inner line is the seam.
    Short lines across an edge are notches, and the arrow is the grain line.
template-mirrored-foundations = A foundation is printed as a mirror image of the finished block: solid lines are sewing
    lines, and the dashed line is the cut line. The head of a sheet says how often it is printed, if that is not
    once; a sheet may hold several copies.
template-sheets-joined = Templates of one size share sheets where they fit; each is named. Where the head of a sheet shows
    a small plan, its sheets are joined: cut a sheet on the line that is marked for cutting, match its numbered
    diamonds with its neighbour's, and tape the two together in the order of the plan.

template-motif = The { $part ->
    [wedge] wedge
   *[whole] whole
} template of the { $motif } for the **{ $size }**: the finished motif is { $span } across.{ $twice ->
    [yes] { " " }Print it twice.
   *[no] { "" }
}
template-piece = Template **{ $letter }** for the **{ $size }**: cut { $count }{ $over ->
    [0] { "" }
   *[other] { " " }and { $over } turned over
} from { $fabric }.{ $half ->
    [yes] { " " }It is printed as its half: fold a sheet of paper, lay the dash-dot line on the fold, trace the
        rest, cut both layers on the cut line and open the paper out.
   *[no] { "" }
}{ $again ->
    [yes] { " " }It is the same as that of the { $first }: use its sheets.
   *[no] { "" }
}
template-foundation = Foundation of section { $letter } of the { $block } for the **{ $size }**: you need
    { $copies }.
template-foundations-again = Foundations for the **{ $size }** are the same as those of the { $first }: you need
    { $each }, from its sheets.
copies-of-sections = { $copies } of { $sections ->
    [1] section
   *[other] sections
} { $letters } of the { $block }
