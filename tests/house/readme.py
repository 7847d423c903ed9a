#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What README.md says is true: readme.py ROOT BIN

Every `flarestock …` line of its code blocks runs and exits 0 or 1 (stops or shortages), in order, in
an empty folder; every folder in its map exists and every folder of the tree stands in the map; its
pictures and scripts are there.
"""

import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path

root, binaries = Path(sys.argv[1]), sys.argv[2]
text = (root / "README.md").read_text(encoding="utf-8")
wrong = []

commands = [line.strip() for block in re.findall(r"```sh\n(.*?)```", text, flags=re.S)
            for line in block.split("\n") if line.strip()]
programs = [line for line in commands if line.startswith("flarestock ")]
assert len(programs) >= 6, f"README shows only {len(programs)} commands"
with tempfile.TemporaryDirectory() as folder:
    environment = dict(os.environ, PATH=f"{binaries}:{os.environ['PATH']}")
    for line in programs:
        run = subprocess.run(line, shell=True, cwd=folder, env=environment,
                             capture_output=True, text=True, check=False)
        if run.returncode not in (0, 1) or not run.stdout:
            wrong.append(f"`{line}` exits {run.returncode}: {run.stderr.strip()}")
for script in re.findall(r"^(installer/run|tests/run)", "\n".join(commands), flags=re.M):
    if not os.access(root / script, os.X_OK):
        wrong.append(f"{script} cannot be run")
for picture in re.findall(r"!\[[^\]]*\]\(([^)]+)\)", text):
    if not (root / picture).is_file():
        wrong.append(f"picture {picture} is not there")
mapped = set(re.findall(r"^\| `([\w/-]+)/?` \|", text, flags=re.M))
for folder in mapped:
    if not (root / folder).is_dir():
        wrong.append(f"the map names {folder}, which is not there")
real = {f"model/{path.name}" for path in (root / "model").iterdir() if path.is_dir()}
real |= {f"app/{path.name}" for path in (root / "app").iterdir() if path.is_dir()}
real |= {"qml", "tests", "demo-data", "installer"}
for folder in sorted(real - mapped):
    wrong.append(f"the map of folders lacks {folder}")
print("\n".join(wrong) or f"{len(programs)} commands and {len(mapped)} folders are as README says")
sys.exit(1 if wrong else 0)
