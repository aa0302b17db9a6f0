"""A second reckoning of patterns from the rules of the trade, with arithmetic of its own.

Nothing here imports the program: a pattern is its `pattern.yaml`, and what is judged is its
`numbers.json`. Only the fixtures in `test_*.py` run the program to get that file.
"""
