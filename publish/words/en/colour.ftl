# Colour and fabric: swatches, light and dark, other colours.

chapter-colour-and-fabric = Colour and fabric
    .lead = { CAPITAL($fabrics) }.
    .swatches = The fabrics and their places.
    .pairs = Each fabric beside each other fabric. The number is the difference in lightness, with an
        exclamation mark where it is small. A disc estimates what shows through.

light-to-dark = Light to dark: { $fabrics }. If you choose other fabrics, keep this order: take a photo of them
    in black and white.
fabric-directional = { $fabric } has a direction: keep the top of its print to the top of the quilt.
check-every-ground = Check the motif against every fabric of the ground.
pair-same = The motif and its ground are both { $motif }: the quilting alone will draw the outline.
pair-close = { $motif } and { $ground } are close in lightness: the motif will be subtle. Choose a lighter or a
    darker fabric for one if it is to stand out.
pair-lighter = { $motif } is lighter than { $ground } beneath it. Hold one over the other in daylight. If the
    ground shows through, choose a closer weave, line the motif with thin white cotton, or cut the ground away
    behind it { $inside } inside the stitches.
pair-darker = { $motif } is darker than { $ground } beneath it: no show-through.

table-colourways = Other colours
    .instead = Instead of
    .use = Use
    .caption = The { $size } as shown and in other colours.
