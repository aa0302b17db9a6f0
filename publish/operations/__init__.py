"""The making as data: operations of the trade, and the table that they are rehearsed on.

In: nothing. Out: the kernel (`table`, `parts`, `operation`, `rehearsal`) and one file of
verbs for each trade.
Invariant: an operation holds what it is given, never what comes of it; a size is read off
the table; nothing here imports a stage, a draft or a planner.
"""
