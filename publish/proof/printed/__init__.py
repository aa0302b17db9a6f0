"""Checks of a finished PDF, measured on the file."""
