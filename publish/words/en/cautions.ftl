# The usual cautions. Nothing here replaces a maker's instructions or a local code.

chapter-cautions = Working safely
    .lead = Please read this page before you cut, and again before you give the piece away.

caution-rotary = Rotary cutter
    .lock = Close and lock the blade every time you put the cutter down. Wear closed shoes.
    .away = Cut away from your body, standing up, with your fingers clear of the edge of the ruler.
    .blades = Wrap old blades before you throw them away, and keep the cutter out of children's reach.
caution-iron = Iron
    .stand = Stand the iron on a steady surface, on its heel or its rest, with the cord out of the way.
    .steam = Steam burns: keep your fingers clear of folds you are pressing.
    .unplug = Unplug the iron when you leave the room.
caution-machine = Sewing machine
    .fingers = Keep your fingers clear of the needle and the presser foot while the machine runs.
    .off = Switch the machine off to change the needle or the foot.
caution-sprays = { $what ->
    [both] Starch, web and adhesives
    [web] Fusible web and adhesives
   *[starch] Starch and adhesives
}
    .fumes = { $what ->
        [both] Starch, fusible web and spray adhesives
        [web] Fusible web and spray adhesives
       *[starch] Starch and spray adhesives
    } give off fumes or mist. Use them in a well-ventilated room and do not breathe them in.
    .flames = Keep sprays away from flames, heaters and a hot iron. Put the can down and let the mist settle
        before you pick up the iron.
caution-glue = Glue
    .text = Keep glue away from eyes and out of children's reach, and follow what its packet says.
caution-pins = Pins, needles and scissors
    .count = Count pins and needles before and after each sitting, and run a magnet over the finished piece
        before it is used.
    .close = Close scissors when they are out of your hand. Take breaks when you cut many layers.
caution-babies = Babies
    .text = Keep quilts, pillows and all other loose or soft bedding out of the place where a baby under one
        year old sleeps. Hang a baby's quilt on the wall until then.
caution-small-parts = Small parts
    .text = This pattern has no buttons or beads. Do not add any to a piece that a child under three may
        handle: small parts can choke.
caution-fire = Fire
    .burns = Cloth and batting burn. Keep the finished piece away from flames, candles and heaters.
    .rules = If you sell what you make, ask which rules on flammability, fibre labels and children's goods
        hold where you live.
caution-makers = Before all of this
    .text = The instructions that come with your tools, machine, fabrics, batting and sprays come first, and
        so do the laws and codes where you live. Where this booklet says something different, follow them.
        If you are unsure of a tool or a cord, ask someone qualified.
