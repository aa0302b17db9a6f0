# What stands on covers and on the page about the edition.

edition-first = First edition
