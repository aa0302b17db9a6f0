# What any chapter says about the sizes that it is for.

part-only = This part is for the { $sizes } only.
