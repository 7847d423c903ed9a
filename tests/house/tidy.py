#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The house rules, executable.

    tidy.py [ROOT]       checks the tree, prints one line per violation, exit status 1 if any
    tidy.py --self-test  plants one violation of each rule in a small tree and sees it caught

What the rules are and why stands in DEVELOPERS.md, "Habits". A rule that has to bend says so in
tests/house/allowed.txt, one line each with its reason.
"""

import re
import subprocess
import sys
import tempfile
from pathlib import Path

TOP = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE",
       "app", "qml", "model", "tests", "demo-data", "installer"}
LINES = {".cpp": 300, ".h": 200, ".qml": 250}
TEST_LINES = 400
FUNCTION_LINES = 50
SCRIPT_LINES = 15
PARAMETERS = 4
COLUMNS = 100
IDEAS = 12
WORDS = "FI" "XME|TO" "DO|XX" "X|HA" "CK"
BANNED = [
    (re.compile(r"\b(" + WORDS + r")\b"), "left-over mark"),
    (re.compile(r"\b(class|struct|enum class|namespace)\s+\w*(Manager|Helper|Util|Utils|Data|Info|Service)\b"),
     "name without an idea (Manager, Helper, Util, Data, Info, Service)"),
    (re.compile(r"setContextProperty"), "context property: use QML_ELEMENT or QML_SINGLETON"),
    (re.compile(r"/(work|home|root|tmp)/\w+"), "path of a machine"),
]


class Tree:
    """The files that git would commit, or all below a folder that is no checkout."""

    def __init__(self, root):
        self.root = Path(root)
        listed = subprocess.run(
            ["git", "-C", str(root), "ls-files", "-co", "--exclude-standard"],
            capture_output=True, text=True, check=False)
        if listed.returncode == 0:
            names = listed.stdout.split("\n")
        else:
            names = [str(path.relative_to(root)) for path in self.root.rglob("*")]
        self.files = sorted(Path(name) for name in set(names)
                            if name and (self.root / name).is_file())

    def text(self, file):
        return (self.root / file).read_text(encoding="utf-8", errors="replace")


def isCode(file):
    return file.suffix in (".cpp", ".h", ".qml")


def topLevel(tree):
    for name in sorted({file.parts[0] for file in tree.files}):
        if name not in TOP and not name.startswith("."):
            yield name, 0, "does not belong at the top level"


def licence(tree):
    for file in tree.files:
        if file.suffix in (".cpp", ".h", ".qml", ".cmake", ".py", ".sh") or file.name in ("CMakeLists.txt", "run"):
            if "SPDX-License-Identifier: MIT" not in "\n".join(tree.text(file).split("\n")[:2]):
                yield file, 1, "has no SPDX line"


def layers(tree):
    """Which folder may include which: model/layers.txt."""
    allowed = {}
    for line in tree.text(Path("model/layers.txt")).split("\n"):
        if line.strip() and not line.startswith("#"):
            folder, left = line.split(":")
            allowed[folder.strip()] = set(left.split())
    return allowed


def includes(tree):
    allowed = layers(tree)
    for file in tree.files:
        if file.suffix not in (".cpp", ".h") or file.parts[0] not in ("model", "app"):
            continue
        home = file.parts[1] if file.parts[0] == "model" else "app"
        for number, line in enumerate(tree.text(file).split("\n"), 1):
            found = re.match(r'\s*#\s*include\s*["<]([^">]+)', line)
            if not found:
                continue
            target = found.group(1)
            parts = target.split("/")
            if parts[0] == "model" and parts[1] != home and parts[1] not in allowed.get(home, ()):
                yield file, number, f"{home} must not include {parts[1]} (model/layers.txt)"
            if parts[0] == "app" and file.parts[0] == "model":
                yield file, number, "the model must not include the app"
            if file.parts[0] == "model" and home != "storage" and re.match(r"Q[A-Z]|Qt", target):
                yield file, number, "Qt below storage"
            if target.startswith("boost/") and file != Path("model/exact/whole_big.cpp"):
                yield file, number, "Boost outside the one file that may see it"
            if target.startswith("coin/") and file != Path("model/programme/cbc_search.cpp"):
                yield file, number, "CBC outside the one file that may see it"
            if home == "desk" and target.startswith("QtSql"):
                yield file, number, "SQL outside storage"


def lengths(tree):
    for file in tree.files:
        if not isCode(file):
            continue
        limit = TEST_LINES if file.parts[0] == "tests" else LINES[file.suffix]
        lines = tree.text(file).rstrip("\n").split("\n")
        if len(lines) > limit:
            yield file, len(lines), f"has {len(lines)} lines, more than {limit}"
        table = file.parts[0] == "tests" or any("clang-format off" in line for line in lines)
        for number, line in enumerate(lines, 1):
            if len(line) > COLUMNS and not table and not re.search(r"https?://", line):
                yield file, number, f"is wider than {COLUMNS} columns"


def bare(text):
    """The code without comments and strings, of the same length and lines."""
    def blank(found):
        return re.sub(r"[^\n]", " ", found.group(0))
    text = re.sub(r'R"(\w*)\((?:.|\n)*?\)\1"', blank, text)
    return re.sub(r'//[^\n]*|/\*(?:.|\n)*?\*/|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])+\'', blank, text)


CONTAINER = re.compile(r"\b(namespace|class|struct|union|enum)\b[^()]*$|\bextern\b\s*$")


def functions(text):
    """(name, first line, lines, parameters) of each function body, by a brace matcher."""
    code = bare(text)
    code = re.sub(r"^\s*#[^\n]*", lambda m: " " * len(m.group(0)), code, flags=re.M)
    stack, start = [], 0
    for at, char in enumerate(code):
        if char == "{":
            head = code[start:at]
            inside = any(kind == "function" for kind, *_ in stack)
            isContainer = bool(CONTAINER.search(head.strip())) or not head.strip()
            if not inside and not isContainer and "(" in head:
                stack.append(("function", head, at))
            else:
                stack.append(("other", head, at))
            start = at + 1
        elif char == "}" and stack:
            kind, head, opened = stack.pop()
            if kind == "function":
                name = re.search(r"([~\w:]+|operator\S+)\s*\(", head)
                yield (name.group(1) if name else "?", code.count("\n", 0, opened) + 1,
                       code.count("\n", opened, at) + 1, parameters(head))
            start = at + 1
        elif char == ";" and not any(kind == "function" for kind, *_ in stack):
            start = at + 1


def parameters(head):
    opened = head.find("(")
    depth, count, angle = 0, 0, 0
    for char in head[opened:]:
        if char in "([{":
            depth += 1
        elif char in ")]}":
            depth -= 1
            if depth == 0:
                break
        elif char == "<":
            angle += 1
        elif char == ">":
            angle = max(0, angle - 1)
        elif char == "," and depth == 1 and angle == 0:
            count += 1
    return count + 1


def functionSizes(tree):
    for file in tree.files:
        if file.suffix not in (".cpp", ".h"):
            continue
        for name, line, length, count in functions(tree.text(file)):
            if length > FUNCTION_LINES and not name.endswith("_data"):
                yield file, line, f"function {name} has {length} lines, more than {FUNCTION_LINES}"
            if count > PARAMETERS and file.parts[0] != "tests":
                yield file, line, f"function {name} takes {count} parameters, more than {PARAMETERS}"


def scripts(tree):
    for file in tree.files:
        if file.suffix != ".qml" or file.parts[0] == "tests":
            continue
        code = bare(tree.text(file))
        for found in re.finditer(r"(\bfunction\s+\w+[^{\n]*|\bon[A-Z]\w*\s*:[^{\n]*)\{", code):
            depth, at = 1, found.end()
            while depth and at < len(code):
                depth += {"{": 1, "}": -1}.get(code[at], 0)
                at += 1
            length = code.count("\n", found.end(), at) + 1
            if length > SCRIPT_LINES:
                yield (file, code.count("\n", 0, found.start()) + 1,
                       f"script of {length} lines, more than {SCRIPT_LINES}: move it to the view model")


def ideas(tree):
    folders = {}
    for file in tree.files:
        if isCode(file) and file.parts[0] != "tests":
            folders.setdefault(file.parent, set()).add(file.stem)
    for folder, stems in sorted(folders.items()):
        if len(stems) > IDEAS:
            yield folder, 0, f"holds {len(stems)} ideas, more than {IDEAS}: divide it by idea"


def words(tree):
    for file in tree.files:
        if file.parts[0] == ".git" or file.suffix in (".png", ".db", ".csv") or file.name == "tidy.py":
            continue
        for number, line in enumerate(tree.text(file).split("\n"), 1):
            for pattern, wrong in BANNED:
                found = pattern.search(line)
                if found:
                    yield file, number, f"{wrong}: {found.group(0).strip()}"


def gaps(tree):
    """What is filled into one gap may hold a "%2" itself, and the next would land in it."""
    for file in tree.files:
        if file.suffix != ".qml":
            continue
        text = tree.text(file)
        for found in re.finditer(r"\.arg\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)\s*\.arg\(", text):
            yield (file, text.count("\n", 0, found.start()) + 1,
                   "fills its gaps one after the other: write Gaps.fill()")


TYPE = re.compile(r"^(?:template[^\n]*\n)?(struct|class|enum class) (\w+)(?: final)?(?: :[^;{]*)?\s*\{", re.MULTILINE)


def typeNames(tree):
    """Two types of one name make programs that crash where the linker takes the other's functions; and
    of a type and a screen of one name QML takes whichever was imported last."""
    first = {("screens", file.stem): file for file in tree.files if file.suffix == ".qml"}
    for file in tree.files:
        if file.suffix != ".h" or file.parts[0] not in ("model", "app"):
            continue
        text = tree.text(file)
        space = re.search(r"^namespace ([\w:]+)", text, re.MULTILINE)
        for found in TYPE.finditer(text):
            if found.group(0).startswith("template"):
                continue
            name = (space.group(1) if space else "", found.group(2))
            screen = ("screens", name[1]) if "QML_ELEMENT" in text else name
            for other in (first.get(name), first.get(screen) if screen != name else None):
                if other:
                    yield (file, text.count("\n", 0, found.start()) + 1,
                           f"{name[1]} is the name of a type in {other} already")
            first.setdefault(name, file)


RULES = [topLevel, licence, includes, lengths, functionSizes, scripts, ideas, words, gaps, typeNames]


def allowances(root):
    path = Path(root) / "tests/house/allowed.txt"
    if not path.exists():
        return []
    return [line.split("|")[0].strip() for line in path.read_text().split("\n")
            if line.strip() and not line.startswith("#")]


def violations(root, rules=None):
    tree = Tree(root)
    allowed = allowances(root)
    found = []
    for rule in rules or RULES:
        for file, line, wrong in rule(tree):
            said = f"{file}:{line}: {wrong}"
            if not any(said.startswith(name.split(" ")[0]) and name.split(" ", 1)[-1] in said
                       for name in allowed):
                found.append(said)
    return found


PLANTS = {
    "topLevel": ("notes/x.txt", "x"),
    "licence": ("model/exact/a.h", "#pragma once\n"),
    "includes": ("model/exact/a.cpp", '// SPDX-License-Identifier: MIT\n#include "model/parts/part.h"\n'),
    "lengths": ("model/exact/a.cpp", "// SPDX-License-Identifier: MIT\n" + "int a;\n" * 300),
    "functionSizes": ("model/exact/a.cpp", "// SPDX-License-Identifier: MIT\nint f()\n{\n" + "    g();\n" * 50 + "}\n"),
    "scripts": ("qml/A.qml", "// SPDX-License-Identifier: MIT\nItem {\n  onClicked: {\n" + "  a()\n" * 16 + "  }\n}\n"),
    "gaps": ("qml/A.qml", '// SPDX-License-Identifier: MIT\nItem {\n  a: qsTr("%1, %2").arg(b(c))\n    .arg(d)\n}\n'),
    "words": ("model/exact/a.cpp", "// SPDX-License-Identifier: MIT\n// FI" "XME later\n"),
}
FURTHER = [
    ("includes", "model/exact/a.cpp", "// SPDX-License-Identifier: MIT\n#include <QString>\n"),
    ("includes", "model/parts/a.cpp", "// SPDX-License-Identifier: MIT\n#include <boost/any.hpp>\n"),
    ("includes", "model/parts/a.cpp", "// SPDX-License-Identifier: MIT\n#include <coin/Cbc_C_Interface.h>\n"),
    ("includes", "model/parts/a.cpp", '// SPDX-License-Identifier: MIT\n#include "app/workshop/w.h"\n'),
    ("functionSizes", "model/exact/a.cpp",
     "// SPDX-License-Identifier: MIT\nint f(int a, int b, int c, int d, int e)\n{\n}\n"),
    ("lengths", "model/exact/a.cpp", "// SPDX-License-Identifier: MIT\n//" + "x" * 100 + "\n"),
    ("words", "app/a.h", "// SPDX-License-Identifier: MIT\nclass PartManager {\n};\n"),
    ("words", "app/a.h", '// SPDX-License-Identifier: MIT\nauto p = "/ho' 'me/someone";\n'),
]


def selfTest():
    failures = []
    byName = {rule.__name__: rule for rule in RULES}

    def caught(rule, files):
        with tempfile.TemporaryDirectory() as root:
            (Path(root) / "model").mkdir()
            (Path(root) / "model/layers.txt").write_text("exact :\nparts : exact\napp : exact parts\n")
            for name, text in files:
                (Path(root) / name).parent.mkdir(parents=True, exist_ok=True)
                (Path(root) / name).write_text(text)
            return violations(root, [byName[rule]])

    for rule in byName:
        if caught(rule, []):
            failures.append(f"{rule} finds something in an empty tree")
    plants = [(rule, *plant) for rule, plant in PLANTS.items()] + FURTHER
    for rule, name, text in plants:
        if not caught(rule, [(name, text)]):
            failures.append(f"{rule} does not see the violation planted in {name}")
    twice = [(f"model/{folder}/a.h", "namespace flarestock {\nstruct Same {\n};\n}\n") for folder in ("exact", "parts")]
    if not caught("typeNames", twice):
        failures.append("typeNames does not see two types of one name")
    shown = [("app/a.h", "namespace flarestock {\nclass Same : public QObject {\nQML_ELEMENT\n};\n}\n"), ("qml/Same.qml", "")]
    if not caught("typeNames", shown):
        failures.append("typeNames does not see a type and a screen of one name")
    many = [(f"model/exact/f{n}.h", "// SPDX-License-Identifier: MIT\n") for n in range(13)]
    if not caught("ideas", many):
        failures.append("ideas does not see thirteen ideas in a folder")
    if set(PLANTS) | {"ideas", "typeNames"} != set(byName):
        failures.append("a rule has no planted violation")
    for failure in failures:
        print(failure)
    print(f"{len(plants) + 3} violations planted, {len(failures)} missed")
    return 1 if failures else 0


def main(arguments):
    if arguments == ["--self-test"]:
        return selfTest()
    found = violations(arguments[0] if arguments else ".")
    for line in found:
        print(line)
    print(f"{len(found)} violations of the house rules")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
