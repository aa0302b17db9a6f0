"""What cutting can find, by code.

In: nothing. Out: `CODES`, each code's title.
Invariant: a code keeps its meaning for good.
"""

from __future__ import annotations

CODES: dict[str, str] = {
    "C401": "A piece is wider than its fabric",
    "C403": "The fabric at hand is too short",
    "C404": "A piece is larger than what its fabric is sold as",
    "C405": "A curve is tighter than its seam allowance",
    "C406": "A quicker method is asked for and makes nothing",
    "C407": "A print with a direction is turned by a quicker method",
    "C408": "A little less would save a quarter yard",
    "C409": "Nothing is cut from cloth that is there",
    "C410": "What is still to buy beside the cloth that is there",
}
