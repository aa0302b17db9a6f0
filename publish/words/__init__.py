"""Words as messages: what the booklet says, by name, with typed values put in.

In: messages in Fluent's syntax, one folder for each language. Out: `Language`, which says a
message in spans, each with the value it came from.
Invariant: a value stays a value until a language sets it; nothing here knows what is sewn.
"""

from publish.words.language import Language as Language
from publish.words.language import english as english
from publish.words.language import language as language

LANGUAGES = ("en", "en-GB", "de", "fr")
"""Languages that a booklet can be in, by RFC 5646, the default first. `en` is that of North
America."""
