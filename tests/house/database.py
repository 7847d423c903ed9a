# SPDX-License-Identifier: MIT
"""database.py BUILD: writes BUILD/each/compile_commands.json, where every source file has its command.

A unity build has commands for its batches only; clang-tidy guesses the command of a file that it does
not find, from a file with a similar name, and finds other headers than the compiler does.
"""
import json
import pathlib
import re
import sys

build = pathlib.Path(sys.argv[1]).resolve()
each = []
for entry in json.loads((build / "compile_commands.json").read_text()):
    path = pathlib.Path(entry["file"])
    if not path.name.startswith("unity_"):
        each.append(entry)
        continue
    for source in re.findall(r'^#include "(.+\.cpp)"', path.read_text(), re.M):
        each.append({**entry, "file": source, "command": entry["command"].replace(str(path), source)})
(build / "each").mkdir(exist_ok=True)
(build / "each" / "compile_commands.json").write_text(json.dumps(each))
