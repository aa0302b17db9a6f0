"""Frozen types that the stages hand along; one file for each stage's output."""
