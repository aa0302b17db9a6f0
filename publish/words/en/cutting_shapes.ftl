# Triangles, shapes and pieces from templates: what the cutting table says, and how they are cut.

noun-triangle = { $count ->
    [one] { FIGURES($count) } triangle
   *[other] { FIGURES($count) } triangles
}
noun-diamond = { $count ->
    [one] { FIGURES($count) } diamond
   *[other] { FIGURES($count) } diamonds
}
noun-hexagon = { $count ->
    [one] { FIGURES($count) } hexagon
   *[other] { FIGURES($count) } hexagons
}
noun-parallelogram = { $count ->
    [one] { FIGURES($count) } parallelogram
   *[other] { FIGURES($count) } parallelograms
}
noun-equilateral-triangle = { $count ->
    [one] { FIGURES($count) } equilateral triangle
   *[other] { FIGURES($count) } equilateral triangles
}
noun-piece-in-figures = { $count ->
    [one] { FIGURES($count) } piece
   *[other] { FIGURES($count) } pieces
}
becomes-once = cut once on the diagonal: { $made }{ -to-spare }
becomes-twice = cut twice on the diagonal, in an X: { $made }{ -to-spare }
-to-spare = { $spare ->
    [0] { "" }
   *[other] , { FIGURES($spare) } to spare
}
becomes-template = cut { $made } with template { $template }{ $over ->
    [0] { "" }
   *[other] , { FIGURES($over) } of them with it turned over
}
becomes-whole = left whole
becomes-strip = { $made }{ $leans ->
    [left] { " " }leaning left
    [right] { " " }leaning right
   *[no] { "" }
}

cut-triangles = Cut a square into two triangles with one cut from corner to corner{ $twice ->
        [yes] ; cut it into four with a second cut across the first, before you move the parts
       *[no] { "" }
    }.
    .right = The cut runs through both corners.
    .tip = The long side of a triangle cut once, and the short sides of one cut twice, are bias edges
        and stretch. Press the square with starch before you cut it, and handle the triangles as
        little as you can.
make-templates = Glue the printed piece templates to thin card or trace them on template plastic, with
    the grain line, the letter and the notches, and cut them out on the outer line.
    .right = Laid on its sheet, each template covers its outer line and no more.
use-templates = Lay a template on the wrong side of the fabric, its grain line along the threads, draw
    around it and cut on the line. Mark every notch in the allowance with a short pencil line.{ $over ->
        [yes] { " " }Where the table says so, turn the template over: those pieces are mirror images.
       *[no] { "" }
    }
    .right = The pieces lie on each other edge to edge.
