# The rounds of a medallion that are made of blocks.

order-rounds = The quilt grows from the centre outwards: { $rounds }. Press and measure after each
    round.
    .caption = { $size }: the rounds pulled apart, numbered from the centre.
nth-round = { ORDINAL($number) } { $what }
round-of-fabric = a border of { $fabric } { $width } wide
round-of-blocks = { $count } of { $side } ({ $blocks })

lay-round = The { ORDINAL($round) } round is made of blocks. Lay them around the top, turned as in the
    picture, and sew them into four strips.{ $alternate ->
        [yes] { " " }Alternate blocks of one kind that are pressed opposite ways.
       *[no] { "" }
    }
    .caption = { $size }: the { ORDINAL($round) } round, strip by strip.
sew-round-strip = **{ $which ->
    [left] Left
    [right] Right
    [sides] Left and right
    [top] Top
    [bottom] Bottom
   *[ends] Top and bottom
}**: { $parts }{ $seams ->
    [0] { "" }
   *[other] , seams pressed { $press }
}.{ $corners ->
    [yes] { " " }Press the seams beside the corner blocks toward the middle of the strip: they lock with
        the seams of the sides.
   *[no] { "" }
}
    .right = { $which ->
        [left] The side strips measure { $strip }.
        [sides] The side strips measure { $strip }.
        [top] Those for top and bottom measure { $strip }.
        [ends] Those for top and bottom measure { $strip }.
       *[other] { "" }
    }
pin-round = { $sides ->
    [sides] Pin the left strip to the left side of the top and the right strip to the right side, ends
        and middles first, then between.
   *[ends] Pin the top and bottom strips in the same way, the seam beside each corner block locked
        against the seam of the side.
}
sew-round = { $sides ->
    [sides] Ease small differences and sew.
   *[ends] Sew.
}
press-round = Press outward.
    .right = { $sides ->
        [sides] { "" }
       *[ends] The top measures { $top }.
    }
