"""Piecing: units, quick methods, foundations, blocks, rows and borders."""
