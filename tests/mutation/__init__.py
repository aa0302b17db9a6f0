"""Faults put into the program on purpose, to see whether the tests notice them."""
