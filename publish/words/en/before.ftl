# Before you start: printing, seams, width, pressing, washing, signs.

chapter-before-you-start = Before you start
    .lead = Read the steps{ $your ->
        [yes] { " " }for your size
       *[no] { "" }
    } before you cut.
printing-at-full-size = Printing at full size

note-seams = Seams
    .sew = Seams are { $seam } unless a step says otherwise. Sew with 50 wt cotton, a needle of size 80/12 and
        a stitch about { $stitch } long. Sew a scant seam, a thread or two narrower: the fold takes up the
        rest.
    .test = Test: cut three strips { $wide } wide, sew them side by side and press. The middle strip must
        measure { $middle }.
note-width = Usable width
    .text = The usable width is the width between the selvages. If yours is narrower than the table of
        materials assumes, buy more.
note-pressing = Pressing
    .text = Set the iron down and lift it; do not slide it. Press each seam flat as sewn first, then to the
        side named.
note-washing = Washing first
    .shrinks = The lengths to buy allow for shrinkage in the wash: { $shares }. Wash, dry and press those
        fabrics before you cut.
    .keeps = The lengths to buy allow nothing for shrinkage. If you wash your fabrics first, buy { $more } more
        for every two { $unit ->
            [metres] metres
           *[yards] yards
        } or part of them, and check the usable width again.
    .all = Wash all of the fabrics or none: do not mix washed and unwashed.
    .colours = Test strong colours: rub them with a damp white cloth and look for dye.
shrinks-by = { $share } for { $fabrics }
note-sides = Sides of the cloth
    .text = The **right side** is the side that shows in the finished piece; the **wrong side** is its
        back. *Right sides together* means that two right sides touch.

table-signs = Abbreviations and signs
    .sign = Sign
    .meaning = Meaning
sign-inch = inch
sign-yard = yard, 36 inches
sign-millimetre = millimetre
sign-centimetre = centimetre, 10 millimetres
sign-metre = metre, 100 centimetres
sign-by = by: width, then length
sign-per-cent = per cent
