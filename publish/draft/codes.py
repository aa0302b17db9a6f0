"""The codes of this stage's notes.

In: nothing. Out: `CODES`, a title for each code.
Invariant: a code keeps its meaning and is never used again for another.
"""

from __future__ import annotations

CODES: dict[str, str] = {
    "D301": "The drawing cannot be read",
    "D302": "The drawing is larger or more tangled than can be drafted",
    "D303": "The drawing's document type declares entities or attributes",
    "D304": "The drawing refers to something outside itself",
    "D305": "The drawing holds a script",
    "D306": "The named element is not in the drawing",
    "D307": "Part of the drawing is not a shape and is left out",
    "D308": "A repeated element is not in the drawing",
    "D309": "A value in the drawing cannot be understood",
    "D310": "The drawing shows no shape",
    "D311": "An outline crosses itself",
    "D312": "An effect in the drawing is not applied",
    "D313": "A shape is drawn as a thin line",
    "D314": "An outline written in the pattern does not enclose cloth",
    "D320": "The wedge cannot be found in the drawing",
    "D321": "The drawing reaches across a fold",
    "D322": "The whole drawing does not repeat on its folds",
    "D323": "A mark for the wedge cannot be understood",
    "D330": "The motif falls apart when it is opened",
    "D331": "The motif hardly touches a fold",
    "D332": "A neck of cloth is narrower than the method asks for",
    "D333": "A slit is too narrow for its edges to be turned under",
    "D334": "A tip is sharper than the method allows",
    "D335": "An inside corner is sharper than the method allows",
    "D336": "The motif comes too close to the edge of its block",
    "D337": "The motif has fewer pieces than the pattern says",
    "D340": "A patch is closed in on all sides",
    "D341": "The patches of a block do not fill it",
    "D342": "A foundation cannot be sewn in the order that is written",
    "D343": "No patches of a block can share a foundation",
    "D350": "Quilting lines cannot be drawn",
    "D351": "No line of the quilting falls into its area",
    "D370": "A picture to be traced cannot be read",
    "D371": "A picture is too small or too large to trace",
    "D372": "No cut paper is found in the picture",
    "D373": "The paper runs off the picture",
    "D374": "A picture is too blurred to trace",
    "D375": "The paper in the picture does not repeat on folds",
    "D376": "The folds of the paper are others than said, or cannot be told",
    "D377": "Copies of the wedge stray from each other",
    "D378": "Specks in the picture are left out",
    "D379": "An outline meets a fold nearly square",
    "D380": "The proportions of a traced motif are not certain",
    "D360": "A block's motif has no size",
}
