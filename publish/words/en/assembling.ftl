# Sewing blocks into rows, and rows into the middle of the top.

chapter-assembling = Assembling the top
    .lead = { $trimmed ->
        [yes] Trimmed blocks
       *[no] Blocks
    } of one size fit without easing. Sew them right sides together.

sashing-strips = long sashing strips

lay-out = Lay out the { $lines ->
        [one] block
        [row] { $blocks } in one row
        [column] { $blocks } in one column
       *[both] { $blocks } in { $rows } of { $columns }
    }{ $between }{ $check ->
        [kinds] , each kind where the picture shows it
        [turned] , turned as in the picture
       *[none] { "" }
    }.{ $lying }{ $number ->
        [yes] { " " }Number the rows from the top.
       *[no] { "" }
    }
    .caption = { $size }: the rows, numbered from the top.
-where = { $where ->
    [around] around it
    [both] between and around them
   *[between] between them
}
with-sashing = , with sashing strips of { $fabric } { -where }
with-cornerstones = , with sashing strips of { $fabric } { -where } and cornerstones of { $stones }
    where the strips meet
lying-either-way = { $lying } Where a block looks the same after half a turn, turn it whichever way lets
    its seams lock with those of its neighbours.
lying = { " " }Lay { $which }; the others are pressed the other way.
blocks-lie = the { $name }s pressed { $way } in { $places }
places = { $many ->
    [one] row
   *[other] rows
} { $rows }, { $count ->
    [one] place
   *[other] places
} { $columns }

mark-strips = On each long strip mark where the seams of the row above end, so that the row below
    carries on in line.
pin-seams = { $what ->
    [rows] Pin at every crossing, where the allowances lie opposite ways and lock.
   *[parts] Pin wherever seams meet.
}
sew-parts = For { $what }, sew { $those } together { $way ->
    [down] from the top down
   *[across] side by side
}.
press-seams = Press the { $seams ->
        [one] seam
       *[other] seams
    } { $way }.
    .right = { CAPITAL($measures) } measures { $size }.{ $crossing ->
        [yes] { " " }The seams match.
       *[no] { "" }
    }

# On point.

lay-out-on-point = Lay out the { $blocks ->
        [one] block
       *[other] { $blocks }
    } on point, corners up, { $between ->
        [sashing] with the sashing between them and with
       *[none] with
    } the { $sides ->
        [0] { "" }
       *[other] { $sides } along the edges and the
    } { $corners } at the corners.{ $rows ->
        [one] { "" }
       *[other] { " " }Number the { $rows } from the upper right corner.
    }
    .right = { $sides ->
        [0] The right angle of every triangle points outward.
       *[other] The long side of every side triangle lies on the outer edge: it is on the straight
            grain and keeps the edge from stretching.
    }
    .caption = { $size }: the diagonal rows, pulled apart and numbered.
turn-layout = { $rows ->
        [one] Turn the layout so that the block lies level, and sew the row from left to right.
       *[other] Turn the layout so that the rows lie level, row 1 furthest from you, and sew each row
            from left to right.
    }{ $sides ->
        [some] { " " }A side triangle is sewn on by a short side: match its right angle to the edge of
            the block; its sharp tip extends past the other edge.
       *[none] { "" }
    } A corner triangle is sewn on by its long side, middle to middle. Cut off what extends,
    { $seam } outside the seam.
    .right = { $rows ->
        [one] Block and triangles are level along both long edges.
       *[other] Blocks and triangles are level along the edges where the next row is sewn on.
    }
    .caution = { $sides ->
        [some] The short sides of a side triangle and the long side of a corner triangle are on the
            bias and stretch: handle them
       *[none] The long side of each triangle is on the bias and stretches: handle it
    } gently, and press without moving the iron sideways.
sew-diagonal-row = { "\u000A\u000A" }**{ CAPITAL($row) }**: { $parts }.
press-diagonal-row = { "\u000A\u000A" }Press the seams { $way }.
pin-diagonal-rows = Put the rows right sides together in order, { $strips ->
    [yes] strips between them: { $order }. On each strip mark where the seams of the row before it
        end, pin, and pin the next row so that it carries on in line.
   *[no] { $first } to { $last }. Pin at every crossing, where the allowances lie opposite ways and
        lock.
}
join-diagonal-rows = Sew the rows together.
sew-corners = Add the last { $corners }: fold each in half to find the middle of its long side, pin it
    to the middle of the row, and sew.
press-diagonal-rows = Press these seams { $way }.
    .right = { $rows ->
        [one] The corners of the block point to the edge.
       *[other] The seams match, and the corners of the blocks point to the edge.
    }
square-top = { $sashing ->
        [yes] Straighten each side with a long ruler, level with the long edges of the triangles: take
            off only what sticks out.
       *[no] Lay the ruler with its { $edge } line on the corners of the blocks and straighten each
            side: { $edge } must stay outside the corners, or the next seam cuts them off.
    } Make the corners square.{ $rounded ->
        [yes] { " " }The triangles { $large } were cut a little large: this takes off what is too much.
       *[no] { "" }
    }
    .right = { CAPITAL($measures) } measures { $size }.
