# SPDX-License-Identifier: MIT
"""translations.py ROOT: every text of the desk is translated, and no translation is left of a text that is gone.

The texts are read out of the sources anew, into a copy of the .ts files. A translation has the places
(%1, %n) of its text, each as often, and the spaces at its ends.
"""
import collections
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml

root = pathlib.Path(sys.argv[1])
german = root / "app/desk/language/german"


def texts(folder):
    """What has to be said, by file: (context, source) and its translations."""
    found = {}
    for file in sorted(folder.glob("*.ts")):
        for context in xml.parse(file).getroot().iter("context"):
            for message in context.iter("message"):
                said = message.find("translation")
                forms = [form.text or "" for form in said.iter("numerusform")] or [said.text or ""]
                key = file.name, context.find("name").text, message.find("source").text or ""
                found[key] = [] if said.get("type") else forms
    return found


def places(text):
    return collections.Counter(re.findall(r"%L?\d|%n", text))


def wrong(key, forms):
    source = key[2]
    if not forms or not all(forms):
        return "not translated"
    for form in forms:
        lacking = places(source) - places(form)
        if places(form) - places(source) or set(lacking) - ({"%n"} if len(forms) > 1 else set()):
            return f"other places than its text: {form!r}"
        if source[:1].isspace() != form[:1].isspace() or source[-1:].isspace() != form[-1:].isspace():
            return f"other spaces at its ends: {form!r}"
    return None


def refusals():
    """What the desk itself refuses with, in whole literals, and no table has; at its start there is no language."""
    table = {line.split("\t")[0] for file in german.glob("*.tsv") for line in file.read_text().splitlines()}
    literal = r'"((?:[^"\\]|\\.)*)"'
    for file in sorted((root / "app/desk").rglob("*.cpp")):
        if file.parent.name == "launch":
            continue
        for call in re.finditer(r"\bproblem\(", file.read_text()):
            words = file.read_text()[call.end():].split(");")[0]
            words = re.sub(r'"\s*\n\s*"', "", words)
            for text in re.findall(rf"(?:^|,)\s*{literal}\s*(?=,|\)|$)", words)[-2:]:
                if " " in text and text not in table:
                    yield file.name, text


with tempfile.TemporaryDirectory() as folder:
    copy = pathlib.Path(folder)
    for file in german.glob("*.ts"):
        shutil.copy(file, copy)
    subprocess.run([root / "app/desk/language/update", copy], check=True, stdout=subprocess.DEVNULL)
    now = texts(copy)
before = texts(german)
problems = [(key, "is said nowhere any more; run app/desk/language/update") for key in before if key not in now]
problems += [(key, why) for key, forms in now.items() if (why := wrong(key, forms))]
problems += [((file, "problem()", text), "is no line of reasons.tsv") for file, text in refusals()]
for (file, context, source), why in problems:
    print(f"{file}, {context}: {source!r}: {why}")
print(f"{len(now)} texts, {len(problems)} problems")
sys.exit(1 if problems or len(now) < 1000 else 0)
