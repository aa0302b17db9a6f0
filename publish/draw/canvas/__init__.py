"""What every drawing is made with: primitives, lettering, marks and what lines mean."""
