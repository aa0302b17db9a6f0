"""Strips across the fabric and pieces from strips: the shortest plan, and its proof."""
