# The hanging sleeve, and the label.

chapter-sleeve = Hanging sleeve
    .lead = Add a sleeve to hang the quilt.

join-sleeve = Join the sleeve's cut lengths { $letter } end to end with a { $seam } seam, { $lengths },
    and press the seams open.
hem-sleeve = Take the sleeve strip { $letter }, { $strip }. Fold each short end under { $seam } and
    { $seam } again, and sew along the inner fold.
    .right = The strip is { $long } long, a little shorter than the quilt is wide.
sew-tube = Fold the strip in half along its length, wrong sides together, and sew the long edges with
    a { $seam } seam. Press the seam open along the middle of the tube, where it will face the
    quilt.
    .right = The flat sleeve is { $depth } deep.
    .caption = Making the sleeve.
sew-sleeve-top = Centre the sleeve on the back, seam side down, its top fold just below the binding.
    Sew the top fold down by hand, through the backing and batting only.
    .right = No stitch shows on the front.
sew-sleeve-bottom = Leave slack in the front layer of the tube so that it has room for a rod, and sew
    the lower fold down in the same way. Sew down the back layer at both ends too, so that the rod
    cannot slip in behind the sleeve.
    .right = With a rod in the sleeve, the quilt hangs flat and the front does not bulge.
    .tip = The rod must be shorter than the quilt is wide.{ $deep ->
        [shallow] { " " }Exhibitions often ask for { $exhibited }: cut the strip for that depth.
       *[deep] { "" }
    }
    .caption = Sewing the sleeve to the back.

chapter-label-and-care = Label and care
    .lead = Sign and date your work.
sew-label = Write or embroider a label with your name, the name of the pattern, the place, the date
    and how to wash the piece. Turn its edges under and sew it to the back by hand, through the
    backing only.
