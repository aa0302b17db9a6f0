"""Checks of what the booklet says and shows."""
