# Things that are counted: the message noun-NAME says a count of them.

noun-length = { $count ->
    [one] { $count } length
   *[other] { $count } lengths
}
noun-strip = { $count ->
    [one] { $count } strip
   *[other] { $count } strips
}
