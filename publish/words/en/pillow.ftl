# Making up a pillow.

chapter-pillow = Making up the pillow
    .lead = Finish the cover.

trim-front = { $centred ->
    [none] Trim batting and lining level with the top, { $front } or a little less where the quilting
        has drawn it in
    [motif] Trim all layers of the front to { $front }, with the centre of the motif in the middle
   *[all] Trim all layers of the front to { $front }, with the same width of fabric left on every side
}.
    .right = All layers end in one clean edge.
    .caption = Trimming the quilted front.
sew-round-front = Sew round it close to the edge.

hem-backs = Take the { $backs } { $letter }, { $back }. On one long edge of each, fold { $fold } to the
    wrong side, and again, press, and sew along the inner fold.
    .caption = Hemming the back pieces.
finish-backs = Take the { $backs } { $letter }, { $back }. One long edge of each must not fray: use a
    selvage, or finish the cut edge with a zigzag stitch.
-edge = { $edge ->
    [hem] hem
   *[finished] finished edge
}
lay-backs = Lay the front right side up. Lay a back piece on it right side down, raw edges level with
    one side, its { -edge } across the middle. Lay the other on the opposite side, and pin all round.
    .right = The { -edge }s overlap by { $overlap } across the middle.
    .caption = The back pieces on the front, overlapping.
sew-cover = Sew all round with a { $seam } seam. Backstitch where the { -edge }s cross it.
    .caption = Sewing all the way round.

sew-zip-seam = Take the back piece { $letter }, { $back }. Fold it in half so that its two sides of
    { $side } meet, and cut along the fold. Put the halves right sides together and sew the cut edges
    with a { $seam } seam: a short stitch at both ends and, for as long as the zipper, a basting stitch
    about { $stitch } long in between. Press the seam open.
    .caption = The zipper in the back.
sew-zipper = Centre the zipper face down over the basted part. Sew it to the allowances with a zipper
    foot.
open-zip-seam = Remove the basting of the seam and check that the zipper runs.
    .right = The two folded edges meet over the zipper and hide its teeth.
    .caution = Leave the zipper half open before you sew the back to the front.
lay-zipped-back = Lay the back on the front, right sides together, trim it to the size of the front, and
    pin.
sew-zipped-cover = Sew all round with a { $seam } seam.

finish-allowances = Trim the corners across, no closer than { $spare } to the stitching, and finish the
    raw edges with a zigzag stitch.
turn-cover = Turn the cover right side out and push out the corners with a blunt point.
    .right = The cover measures { $cover }.
    .tip = If corners stick out like ears, taper the seam inward by { $in } over the last { $over } to
        each corner.
    .caption = Turning the cover.
fill-cover = Put in the pillow form, { $form }.
