"""Motif work: folding, marking, cutting, placing and sewing down."""
