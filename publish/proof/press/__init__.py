"""Checks of the print shop's edition."""
