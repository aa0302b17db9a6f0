# What any chapter says about the sizes that it is for.

part-only = This part is for the { $sizes } only.

# Before a sentence that is not for all sizes of its step.
for-sizes = For the { $sizes }: { "" }

# Before a step that is for some sizes only, in the designer's words or ours.
only-for = { $sizes } only: { "" }
