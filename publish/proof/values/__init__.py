"""Checks of what the stages computed, before a word is looked at."""
