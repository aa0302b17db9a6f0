"""A seeded walk through the space of patterns, and rules that every booklet must keep."""
