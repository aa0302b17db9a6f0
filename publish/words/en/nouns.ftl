# Joining words one after another.

list-or = or

# Things that are counted: the message noun-NAME says a count of them.

noun-length = { $count ->
    [one] { $count } length
   *[other] { $count } lengths
}
noun-strip = { $count ->
    [one] { $count } strip
   *[other] { $count } strips
}
noun-block = { $count ->
    [one] { $count } block
   *[other] { $count } blocks
}
noun-row = { $count ->
    [one] { $count } row
   *[other] { $count } rows
}
noun-diagonal-row = { $count ->
    [one] { $count } diagonal row
   *[other] { $count } diagonal rows
}
noun-side-triangle = { $count ->
    [one] { $count } side triangle
   *[other] { $count } side triangles
}
noun-corner-triangle = { $count ->
    [one] { $count } corner triangle
   *[other] { $count } corner triangles
}
noun-back-piece = { $count ->
    [one] { $count } back piece
   *[other] { $count } back pieces
}
noun-strip-set = { $count ->
    [one] { $count } strip set
   *[other] { $count } strip sets
}
noun-fat-quarter = { $count ->
    [one] { $count } fat quarter
   *[other] { $count } fat quarters
}
noun-fat-eighth = { $count ->
    [one] { $count } fat eighth
   *[other] { $count } fat eighths
}
noun-square = { $count ->
    [one] { $count } square
   *[other] { $count } squares
}
noun-size = { $count ->
    [one] { $count } size
   *[other] { $count } sizes
}
noun-fabric = { $count ->
    [one] { $count } fabric
   *[other] { $count } fabrics
}
noun-spool = { $count ->
    [one] { $count } spool
   *[other] { $count } spools
}
noun-bobbin = { $count ->
    [one] { $count } bobbin
   *[other] { $count } bobbins
}
noun-packet = { $count ->
    [one] { $count } packet
   *[other] { $count } packets
}
noun-copy = { $count ->
    [one] { $count } copy
   *[other] { $count } copies
}
noun-piece = { $count ->
    [one] { $count } piece
   *[other] { $count } pieces
}
