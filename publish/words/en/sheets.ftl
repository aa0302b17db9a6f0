# Template sheets: what stands in the strip at the head of a sheet, along lines, in the key.

sheet-wedge = { $motif } wedge
sheet-whole = { $motif } whole motif
sheet-templates = { $count ->
    [one] template { $letters }
   *[other] templates { $letters }
}
sheet-templates-first = { $count ->
    [one] Template { $letters }
   *[other] Templates { $letters }
}
sheet-foundations = { $count ->
    [one] { $block }, foundation { $letters }
   *[other] { $block }, foundations { $letters }
}
sheet-print = { $count ->
    [1] Print this sheet once
    [2] Print this sheet twice
   *[other] Print this sheet { $count } times
}
sheet-print-of-size = { $count ->
    [1] { $size } once
    [2] { $size } twice
   *[other] { $size } { $count } times
}
sheet-notches = Short lines across the sewing line are notches
# Along the fold edge of a template; the shorter where there is no room for the other.
sheet-half = Lay this line on the fold of a folded paper
sheet-half-short = on the fold of a paper
sheet-place-on-single = Place on the single fold ({ $grain })
sheet-place-on-multiple = Place on the multiple folds ({ $grain })
# For who cannot see the sheet.
sheet-fold-single = single fold ({ $grain })
sheet-fold-multiple = multiple folds ({ $grain })
sheet-folds = Fold edges dash-dot: { $folds }.
sheet-joins-left = left to sheet { $label }
sheet-joins-right = right to sheet { $label }
sheet-joins-above = above to sheet { $label }
sheet-joins-below = below to sheet { $label }
sheet-names-of-piece = Piece { $names }.
sheet-names-of-foundation = Mirrored, with patches { $names }.

# In the key of a sheet.
sheet-fold-of-the-paper = fold of the paper
sheet-sewing-line = sewing line
sheet-trim-line = trim line
# On the line at which sheets are joined; in brief where there is no room.
sheet-cut-here = Cut here and join to sheet { $label }
sheet-cut-here-brief = to sheet { $label }
sheet-join-here = Join to sheet { $label } here
sheet-join-here-brief = to sheet { $label } here
