"""Foldwork: one YAML file per pattern in, every deliverable of a quilt pattern out."""
