"""What no sentence of a booklet may do, whatever the pattern: rules of plain English.

Each rule takes a `Case` and yields what is wrong, in words. Common practice of print, no
source. They know nothing of the program but the texts.
"""

import re

from space.told import LENGTH, WORDS

NOUNS = (
    "strip",
    "block",
    "row",
    "piece",
    "square",
    "triangle",
    "unit",
    "panel",
    "motif",
    "spool",
    "bobbin",
    "border",
    "segment",
    "strip set",
    "cornerstone",
    "fabric",
    "template",
    "sheet",
    "ground",
    "corner",
    "length",
    "column",
    "half",
    "pair",
    "rectangle",
    "section",
    "packet",
    "character",
)
COUNTS = WORDS[2:]


def seen(case, pattern, kinds=None, flags=re.IGNORECASE):
    """Yield each place where a pattern of text stands in what the program wrote."""
    for line in case.lines:
        if line.text in case.own_words or (kinds and line.kind not in kinds):
            continue
        for match in re.finditer(pattern, line.text, flags):
            start = max(0, match.start() - 40)
            yield f"{line.where}: …{line.text[start : match.end() + 40]}…"


def nothing_counted(case):
    """No count is nought: `the no side triangles`, `0 strips`, `0 in`."""
    nouns = "|".join(NOUNS)
    yield from seen(
        case, rf"\b(the|in|from|of|with|cut|make|take) (no|0|zero) (\w+ )?({nouns})s?\b"
    )
    yield from seen(case, r"(?<![\d/.,:×] )(?<![\d/.,])\b0 (in|mm|cm|yd|m)\b")


def doubled_words(case):
    """No word stands twice in a row."""
    yield from seen(
        case,
        r"\b([a-z]+) \1\b(?! ?[-–])",
        ("text", "right", "tip", "caution", "lead", "paragraph", "item", "note", "caption"),
    )


def empty_ranges(case):
    """No range runs from a thing to itself: `row 1 to row 1`, `sections A to A`."""
    yield from seen(
        case, r"\b(rows?|sections?|units?|steps?|pages?) (\w+) to (?:\1 )?\2\b(?![ /]\d| in\b)"
    )


def plural_of_one(case):
    """One thing is not told as many: `one strips`, `1 characters`."""
    nouns = "|".join(NOUNS)
    yield from seen(case, rf"(?<![-\d/.])\b(one|1) (?:[\w-]+ )?({nouns}|halve)s\b(?! of)(?!-)")


def singular_of_many(case):
    """Many things are not told as one: `two strip`."""
    many, nouns = "|".join(COUNTS), "|".join(NOUNS)
    ends = r"(?=[.,;:)]|$| (?:of|and|to|in|with|from|is|are)\b)"
    yield from seen(case, rf"(?<![-\d/])\b({many}) ({nouns}){ends}")


def articles(case):
    """`an` stands before a vowel and `a` before anything else, as they are spoken."""
    as_you = r"(?:[Uu]ni|[Uu]se|[Uu]sa|[Oo]ne\b|[Oo]nce|[Ee]u)"
    yield from seen(case, rf"\ba (?!{as_you})(?:\*\*)?[aeioAEIO][a-z]", None, 0)
    yield from seen(
        case, r"\ban (?:\*\*)?(?![aeiouAEIOUÉ8]|1[18]\b|hour|hon|heir|[FHLMNRSX]\b)", None, 0
    )
    yield from seen(case, r"\ba (8|11|18|8\d)\b(?!/)", None, 0)
    yield from seen(case, r"\ba hst\b")


def leaks(case):
    """Nothing of the machine shows: `None`, `nan`, braces, keys, brackets left empty."""
    yield from seen(
        case, r"\bNone\b|\bnan\b|\binf\b|\{|\}|Fraction\(|\(\)|<\w+>|\bTrue\b|\bFalse\b", None, 0
    )
    yield from seen(case, r"\b\w+_\w+\b")


def punctuation(case):
    """No blank before a comma or stop, none doubled, no stop after a stop."""
    yield from seen(case, r" [,;.](?!\d)|,,|;;|\.\.(?!\.)|,\.|\(\s|\s\)| {2,}")


def sentences(case):
    """Every text that is a sentence begins with a capital or a numeral and ends with a stop."""
    for line in case.lines:
        if not line.is_prose or line.text in case.own_words or line.kind == "item":
            continue
        for part in line.text.split("\n\n"):
            if re.fullmatch(r"\*\*[^*]+\*\*", part.strip()):
                continue  # a heading within a section
            bare = part.strip().replace("*", "").strip()
            if bare and bare[-1] not in ".!?:)…”’\"'":
                yield f"{line.where}: ends without a stop: …{bare[-50:]}"
            first = bare.lstrip("“‘\"'([")[:1]
            if bare and not (first.isupper() or first.isdigit() or not first.isalpha()):
                yield f"{line.where}: begins small: {bare[:50]}…"
        after = re.finditer(r"(?<![\d])(?<!\b[A-Z])\. ([a-z])", line.text.replace("**", ""))
        for match in after:
            near = line.text[max(0, match.start() - 20) : match.end() + 20]
            yield f"{line.where}: small after a stop: {near}"


def fractions(case):
    """Lengths in inches stand in halves down to sixteenths: what a ruler shows."""
    for line in case.lines:
        for whole, below in re.findall(r"(\d+)/(\d+)(?= in\b| in\.| × | yd\b)", line.text):
            if int(below) not in (2, 4, 8, 16) or int(whole) >= int(below):
                yield f"{line.where}: {whole}/{below} is on no ruler: {line.text[:90]}"


def metric(case):
    """What stands in brackets after inches is the same length; about it, to half a sixteenth."""
    one = rf"(about )?({LENGTH}) in \(([\d.]+) (cm|mm|m)\)"
    two = rf"(about )?({LENGTH}) in × ({LENGTH}) in \(([\d.]+) (cm|mm) × ([\d.]+) (cm|mm)\)"
    for line in case.lines:
        for about, size, value, unit in re.findall(one, line.text):
            yield from _unlike(line, about, size, value, unit)
        for about, a, b, va, ua, vb, ub in re.findall(two, line.text):
            yield from _unlike(line, about, a, va, ua)
            yield from _unlike(line, about, b, vb, ub)


def metric_alone(case):
    """A booklet in metric alone tells no inch, no yard and no fraction but sizes of needles."""
    if case.is_metric:
        few = "|".join(WORDS)
        inch = rf"(?<!unit )(?<!\d)\d+ in\b(?! (?:{few}|half|\d))|\d (?:yd|yards?|inch|inches|oz)\b"
        yield from seen(case, rf"{inch}|(?<!\d)\d/\d|[½¼¾⅛⅜⅝⅞]|\binch")


def _unlike(line, about, size, value, unit):
    parts = [part.split("/") for part in size.split()]
    length = sum(int(p[0]) / (int(p[1]) if len(p) > 1 else 1) for p in parts) * 25.4
    shown = float(value) * {"mm": 1, "cm": 10, "m": 1000}[unit]
    near = {"mm": 0.51, "cm": 0.51, "m": 5.1}[unit] + (25.4 / 32 if about else 0)
    if abs(length - shown) > near:
        yield f"{line.where}: {size} in is {length:.1f} mm, not {value} {unit}"


def by_turns(case):
    """Things laid by turns differ: not `two blocks and two blocks, by turns`."""
    count = "|".join(("a", "an", "one", *COUNTS, r"\d+"))
    each = re.compile(rf"\b(?:{count}) ([^,.;]+?) and (?:{count}) ([^,.;]+?), by turns")
    for line in case.lines:
        for first, second in each.findall(line.text):
            if first.rstrip("s") == second.rstrip("s"):
                yield f"{line.where}: {first} and {second}, by turns"


def one_alone(case):
    """What there is one of has no neighbours: `one row of one block ... between them`."""
    yield from seen(case, r"\bthe one block\b[^.]*\b(each|between them|rows? of)\b")
    yield from seen(case, r"\bone row of one\b|\bthe one motif side by side\b")
    yield from seen(case, r"\bNumber the rows\b(?=[\s\S]*\bone row\b)")


def lists(case):
    """Lists read `a, b and c`; no `and and`, no `, and ,`."""
    yield from seen(case, r"\band and\b|\bor or\b|, and,|\bof of\b|\bwith and\b")


RULES = (
    nothing_counted,
    doubled_words,
    empty_ranges,
    plural_of_one,
    singular_of_many,
    articles,
    leaks,
    punctuation,
    sentences,
    fractions,
    metric,
    metric_alone,
    by_turns,
    one_alone,
    lists,
)
