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


with tempfile.TemporaryDirectory() as folder:
    copy = pathlib.Path(folder)
    for file in german.glob("*.ts"):
        shutil.copy(file, copy)
    subprocess.run([root / "app/desk/language/update", copy], check=True, stdout=subprocess.DEVNULL)
    now = texts(copy)
before = texts(german)
problems = [(key, "is said nowhere any more; run app/desk/language/update") for key in before if key not in now]
problems += [(key, why) for key, forms in now.items() if (why := wrong(key, forms))]
for (file, context, source), why in problems:
    print(f"{file}, {context}: {source!r}: {why}")
print(f"{len(now)} texts, {len(problems)} problems")
sys.exit(1 if problems or len(now) < 1000 else 0)
