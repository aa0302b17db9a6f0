"""Cloth that is cut and laid together, to see whether the pieces make the top."""
