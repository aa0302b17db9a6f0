"""What a step may ask only where there is something to do it to: rules of the craft.

Each rule takes a `Case` and yields what is wrong, in words. Trade practice, no source.
"""

import re

from space.told import tables


def _steps(case, start="", size=None):
    lines = case.of_size(size) if size else case.lines
    return [
        x
        for x in lines
        if x.kind == "text" and x.key.startswith(start) and x.text not in case.own_words
    ]


def inner_edges(case):
    """Inner edges and openings are spoken of where a motif has any."""
    holes = any(m["holes"] for size in case.sizes.values() for m in size["motifs"].values())
    if holes:
        return
    for line in case.lines:
        about = line.section.startswith(("applique", "fus", "prepar"))
        if about and re.search(
            r"\binner edge|\bopenings\b|\b(an|every|each|the) opening\b", line.text
        ):
            yield f"{line.where}: {line.text[:90]}"


def one_binding_strip(case):
    """Strips of binding are joined where there are two or more."""
    counts = [s["binding"]["strips"] for s in case.sizes.values() if s["binding"]]
    if (
        counts
        and max(counts) == 1
        and all(s["binding"]["cut"] == "straight" for s in case.sizes.values() if s["binding"])
    ):
        for line in _steps(case, "binding-join"):
            if re.search(r"two strips|Join them all", line.text):
                yield f"{line.where}: {line.text[:120]}"


def crossings(case):
    """Seams cross where rows of two blocks and more meet, or strips, or pieced blocks."""
    if any(not isinstance(b.get("ground"), str) for b in case.pattern["blocks"].values()):
        return
    for key, size in case.sizes.items():
        blocks, setting = size["blocks"], size["setting"]
        if min(blocks["columns"], blocks["rows"]) > 1 or setting["sashing"] or setting["rounds"]:
            continue
        for line in case.of_size(key):
            if line.section.startswith("assembling") and re.search(
                r"\b(every crossing|crosses|crossings)\b", line.text
            ):
                yield f"{key}: {line.where} {line.kind}: {line.text[:100]}"


def tools_are_listed(case):
    """What a step takes in hand stands in the list of tools."""
    listed = " ".join(x.text.lower() for x in case.lines if x.section == "tools")
    asked = {
        r"[Mm]ark (?:the|a|each|both|where)\b": "marker|pencil|chalk",
        r"\b[Dd]raw a (?:diagonal )?line": "marker|pencil|chalk",
        r"guide bar": "guide bar",
        r"freezer paper": "freezer",
        r"\bglue\b": "glue",
        r"starch": "starch",
        r"zip foot": "zip foot",
        r"light box": "light box",
        r"walking foot": "walking foot",
    }
    for line in _steps(case):
        for wanted, tools in asked.items():
            if re.search(wanted, line.text) and not re.search(tools, listed):
                yield f"{line.where}: {re.search(wanted, line.text)[0]}: not among the tools"


def cornerstones(case):
    """Cornerstones are spoken of where some are cut."""
    cut = any("cornerstone" in p["purpose"] for s in case.sizes.values() for p in s["pieces"])
    if not cut:
        for line in _steps(case):
            if "cornerstone" in line.text:
                yield f"{line.where}: {line.text[:120]}"


def basting_of_fused(case):
    """A motif that is fused is not basted."""
    methods = {m.get("method", "needle-turn") for m in case.pattern.get("motifs", {}).values()}
    if methods != {"fusible"}:
        return
    for line in case.lines:
        about_layers = line.section.startswith(
            ("quilting", "glossary", "materials", "tools", "before", "colour", "pillow")
        )
        if not about_layers and re.search(r"\bbast(e|ed|ing)\b", line.text):
            yield f"{line.where} {line.kind}: {line.text[:100]}"


def grounds(case):
    """A ground is what a motif lies on; a pieced block without one is none."""
    on = {b.get("motif") and name for name, b in case.pattern["blocks"].items()}
    if on == {None}:
        words = r"(?i)\bgrounds?\b"
        names = " ".join(f["name"] for f in case.pattern["fabrics"].values())
        if re.search(words, names):
            return
        for line in case.lines:
            if line.section != "glossary" and re.search(words, line.text):
                yield f"{line.where}: {line.text[:90]}"
        return
    grounds_of = {c for name, b in case.pattern["blocks"].items() if name in on for c in _cloths(b)}
    plain = {c for name, b in case.pattern["blocks"].items() if name not in on for c in _cloths(b)}
    for _, table in tables(case.manual, "fabric"):
        for row in table.rows:
            if row.fabric in plain - grounds_of and "ground" in row.cells[0].lower():
                yield f"materials: {row.cells[0]}: no motif lies on it"
    pieced = any(
        isinstance(b.get("ground"), dict) or "traditional" in b
        for n, b in case.pattern["blocks"].items()
        if n in on
    )
    if not pieced:
        for line in case.lines:
            if re.search(r"(?i)piecing the grounds?|grounds? (?:is|are) pieced", line.text):
                yield f"{line.where}: {line.text[:90]}"


def _cloths(block):
    if "traditional" in block:
        return set(block["fabrics"].values())
    ground = block.get("ground")
    if isinstance(ground, dict):
        return {c for row in ground["rows"] for c in row}
    return {ground} if ground else {p["fabric"] for p in block["patches"]}


def fabrics_have_their_uses(case):
    """The table of fabrics names borders, sashing, backing and binding with their cloth."""
    if case.manual is None:
        return
    for use, keys in _uses(case.pattern).items():
        for _, table in tables(case.manual, "fabric"):
            for row in table.rows:
                if " alone" in row.cells[0]:
                    continue  # a line of its own for what is in the whole as well
                says = bool(re.search(use, row.cells[0].split("**:")[-1]))
                if says != (row.fabric in keys):
                    yield f"materials: {row.cells[0]}: {use}: {sorted(keys)}"


def _uses(pattern):
    sizes = pattern["sizes"].values()
    borders = {b["fabric"] for s in sizes for b in s.get("borders", ())}
    borders |= {r["border"]["fabric"] for s in sizes for r in s.get("rounds", ()) if "border" in r}
    quilts = [s for s in sizes if s.get("finish") != "pillow"]
    return {
        "border": borders,
        "sashing": {s["sashing"]["fabric"] for s in sizes if "sashing" in s},
        "backing": {pattern["backing"]["fabric"]},
        "binding": {pattern["binding"]["fabric"]} if quilts else set(),
        "pillow back": {s["pillow"]["fabric"] for s in sizes if "pillow" in s},
    }


def motif_side_by_side(case):
    """One motif lies beside no other."""
    for size in case.sizes.values():
        if sum(m["count"] for m in size["motifs"].values()) > 1:
            return
    for line in _steps(case):
        if re.search(r"motifs? side by side|at least 1/2 in apart", line.text):
            yield f"{line.where}: {line.text[:120]}"


def thread_matches(case):
    """One strand of thread matches one cloth."""
    for line in _steps(case):
        found = re.search(r"single strand[^.]* matches (.+? cloth and .+? cloth)", line.text)
        if found:
            yield f"{line.where}: one strand matches {found[1]}"


def panels_on_their_side(case):
    """Seams that lie level have cloth above and below, upright ones at either side."""
    for key, size in case.sizes.items():
        plan = size["backing"]
        for line in _steps(case, f"quilting-backing-{key}"):
            if plan and plan["seams"] == "vertical" and "above and below" in line.text:
                yield f"{line.where}: {line.text[:120]}"
            if "a half above and below of" in line.text:
                yield f"{line.where}: a half above and below of"


def sashing_between(case):
    """Sashing lies between blocks where there are two or more."""
    for key, size in case.sizes.items():
        if size["setting"]["sashing"] and size["blocks"]["count"] == 1:
            for line in case.of_size(key):
                if line.kind == "text" and "between them" in line.text:
                    yield f"{key}: {line.where}: {line.text[:120]}"
        if size["setting"]["sashing"] and size["blocks"]["rows"] == 1:
            for line in case.of_size(key):
                if line.kind == "text" and "of the next row" in line.text:
                    yield f"{key}: {line.where}: {line.text[:120]}"


def names_stand_whole(case):
    """Each fabric's name stands in the materials as the designer wrote it."""
    if case.manual is None:
        return
    told = " ".join(x.text for x in case.lines if x.section == "materials")
    for key, fabric in case.pattern["fabrics"].items():
        if fabric["name"] not in told:
            yield f"{key}: {fabric['name']!r} is not among the materials"


def own_words_stand(case):
    """Every text of the designer's own stands in the booklet as it was written."""
    texts = {line.text for line in case.lines}
    for step in case.pattern.get("steps", ()):
        if step.get("text") and step["text"] not in texts:
            yield f"{step}: its text is not in the booklet"


def blocks_have_one_name(case):
    """A block told in two sizes of the same top is told apart."""
    for line in case.lines:
        found = re.findall(r"(\d+|\w+) (\w+) blocks?, [\d/ ]+ in", line.text)
        if len({name for _, name in found}) < len(found):
            yield f"{line.where}: {line.text[:120]}"


RULES = (
    inner_edges,
    one_binding_strip,
    crossings,
    tools_are_listed,
    cornerstones,
    basting_of_fused,
    grounds,
    fabrics_have_their_uses,
    motif_side_by_side,
    thread_matches,
    panels_on_their_side,
    sashing_between,
    names_stand_whole,
    own_words_stand,
    blocks_have_one_name,
)
