"""Several patterns as one book: what they tell alike is told once, and referred to by page.

In: a volume, and each of its patterns as its own booklet would have it. Out: one manual with
one artwork, set as any booklet is; PDFs.
Invariant: nothing is said in a book that a booklet does not say; what is left out in one
place stands word for word in the place that is referred to.
"""
