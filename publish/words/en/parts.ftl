# What units, blocks, rows and pieces are called, and where seams are pressed.

nothing = { "" }
figure = { FIGURES($number) }
the = the { $name }
each = each
many = { $name }s

name-block = block
name-block-of = { $block } block
name-sized = { $place ->
    [small] small
    [medium] medium
    [large] large
   *[smallest] { ORDINAL($number) } smallest
} { $name }
name-numbered = { $name } { FIGURES($number) }
name-unit = unit { FIGURES($number) }
name-sections = { $count ->
    [one] section { $letters }
   *[other] sections { $letters }
}
joined = joined sections { $letters }
-row = { $series ->
    [sashing-row] sashing row
   *[row] row
}
name-row = { -row } { FIGURES($number) }
rows-of = { -row }s { $numbers }
rows-to = { -row }s 1 to { FIGURES($count) }
name-part = { $part ->
    [ground] ground
    [block] block
    [half-ground] half ground
    [half-block] half block
    [ground-row] ground row
    [block-row] block row
    [ground-column] ground column
    [block-column] block column
    [unit] unit
    [row] row
    [sashing-row] sashing row
    [centre] centre
   *[top] top
}

some = { $count ->
    [one] { A($name) }
   *[other] { $count } { $name }s
}
some-lettered = { $count ->
    [one] { A($name) }
   *[other] { $count } { $name }s
} { $letter }
some-marked = { $count ->
    [one] { $name }
   *[other] { $count } of { $name }
}
-shape = { $shape ->
    [strip] sashing strip
    [cornerstone] cornerstone
    [side-triangle] side triangle
    [corner-triangle] corner triangle
    [setting-triangle] setting triangle
    [triangle] triangle
    [diamond] diamond
    [hexagon] hexagon
    [parallelogram] parallelogram
   *[piece] piece
}
piece-called = { $fabric } { -shape }
some-pieces = { $count ->
    [one] { A(piece-called) }
   *[other] { $count } { piece-called }s
} { $letter }
by-turns = { $parts }, by turns, { $ends ->
    [both] beginning and ending
   *[first] beginning
} with { $first },

way = { $way ->
    [left] to the left
    [right] to the right
    [up] upwards
    [down] downwards
    [open] open
    [out] outwards, away from the middle
    [sashing] toward the sashing
   *[one-side] to one side
}
toward = toward { $what }
way-in = { $way } in { $which }
way-halves = { $one } in half of them and { $other } in the rest
