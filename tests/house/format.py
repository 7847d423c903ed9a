#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Every C++ file is as .clang-format prints it: format.py ROOT CLANG-FORMAT"""

import subprocess
import sys

root, tool = sys.argv[1:3]
listed = subprocess.run(["git", "-C", root, "ls-files", "-co", "--exclude-standard", "*.cpp", "*.h"],
                        capture_output=True, text=True, check=True).stdout.split()
assert len(listed) > 30, f"only {len(listed)} C++ files were found"
run = subprocess.run([tool, "--dry-run", "--Werror", *listed], cwd=root,
                     capture_output=True, text=True, check=False)
print(run.stderr[:4000] or f"{len(listed)} files are formatted")
sys.exit(run.returncode)
