# Washing; the page to colour in; the last page.

care-wash = Wash as the labels of your fabrics and batting say; where they differ, follow the gentler one. A
    cool, gentle wash and drying flat in the shade suit most cotton pieces.
care-colours = Test strong colours before the first wash: press a damp white cloth on each fabric and look for
    dye.
care-wring = Do not wring, and do not iron the quilted surface flat.
care-starch = Remove every mark, then wash the starch out: it yellows, and it draws insects in storage.
care-form = Take the form out of the cover before washing.
care-store = Store it rolled or loosely folded, out of the sun and not in plastic. Refold it now and then.

chapter-colouring-page = Colouring page
    .lead = Copy this page and try your own colours before you buy.
    .caption = The { $size } in outline.

chapter-edition = This edition
    .mistake = Every number in this booklet is computed from one drawing and checked. If you find a mistake all
        the same, please tell us: name the edition, the size and the step.
    .write = Write to { $address }.
    .computed = The pictures { $pictures } are computed, not photographed: the pattern's own shapes, seams and
        lines of quilting, in the colours of its fabrics.
picture-cover = on the front cover
picture-sizes = { $sizes ->
    [1] of the whole
   *[other] of all sizes
}
picture-colours = of other colours

# A booklet without its template sheets.

sheets-apart = The sheets come separately
    .file = The template sheets are at full size and too large for this booklet. They are in the file **{ $file }**,
        for { $paper } paper. Print them from there at 100 %.
    .loose = The template sheets lie loose beside this booklet, printed at full size. Measure the check square
        on each before you cut.
