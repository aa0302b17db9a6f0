"""Finishing: layers, quilting, binding, sleeve and pillow."""
