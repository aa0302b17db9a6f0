"""Cutting plans to scale: strips, pieces and precuts on the cloth."""
