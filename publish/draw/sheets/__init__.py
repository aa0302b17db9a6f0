"""Template sheets at full size."""
