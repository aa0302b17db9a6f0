# The tools, as a list to tick.

chapter-tools = Tools
    .lead = Lay them out before you begin.
    .piecing = For cutting and piecing
    .motif = For the motif
    .paper = For templates and foundations
    .finishing = For quilting and finishing

tool-cutter = Rotary cutter with a fresh blade, self-healing mat and a long quilter's ruler
tool-square = A large square ruler{ $angled ->
    [yes] { " " }with a line at 45 degrees
   *[no] { "" }
} for trimming
tool-machine = Sewing machine in good order, new needles in size 80/12 for piecing and 90/14 for quilting,
    50 wt cotton thread, and a foot or guide for a { SHORT($seam) } seam
tool-iron = Iron, a firm pressing surface and a thick towel
tool-pins = Straight pins, seam ripper and scissors for thread
tool-marker = A fine pencil or a removable marker for lines on the wrong side
tool-starch = Spray or liquid starch

tool-paper-printer = A printer and plain paper
tool-paper-card = Thin card and a glue stick, or template plastic, and scissors for paper
tool-paper-pins = Many fine pins for curved seams
tool-paper-foundations = Thin paper for foundations that tears easily and may go through the printer
tool-paper-needle = A stout machine needle, such as size 90/14, and tweezers

tool-motif-printer = A printer, plain paper of light weight, and scissors for paper
tool-motif-tape = Clear tape, and a light box or a bright window
tool-motif-scissors = Small scissors that are sharp to the tip, and larger ones for many layers
tool-motif-marker = A fine marker for fabric, such as a chalk or white pencil, that shows on the motif,
    survives the iron and washes out
tool-motif-basting = Hand needle and contrasting thread for basting
tool-motif-needles = Fine appliqué needles, long and thin, such as straw needles in size 10 or 11
tool-motif-freezer = Freezer paper, a stapler, a small brush and a pointed wooden stick
tool-motif-hand-needle = A fine hand needle
tool-motif-pencil = A pencil
tool-motif-cloth = A protective cloth for the pressing surface
tool-motif-pins = Short, fine pins that do not catch the thread

tool-quilting = Walking foot, or a short quilting needle, size 9 or 10, and a thimble for quilting by hand
tool-basting = Safety pins, or thread, for basting the layers, and tape for the backing
tool-free-motion = A free-motion foot for tight curves
tool-lines = Chalk, or a marker that washes out, for the first lines of quilting, and a guide bar for the
    foot or tape for the others
tool-binding = Clips for the binding and a hand needle for finishing it
tool-zipper-foot = A zipper foot
tool-point = A blunt point for turning corners, such as a knitting needle
tool-label = A permanent fabric pen or embroidery thread for the label
