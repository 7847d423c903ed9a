#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The model without storage asks for no Qt symbol: no_qt.py BUILD/model"""

import re
import subprocess
import sys
from pathlib import Path

libraries = [path for path in Path(sys.argv[1]).rglob("libflarestock_*.a") if "storage" not in path.name]
assert len(libraries) >= 8, f"only {len(libraries)} libraries of the model were found"
wrong = 0
for library in libraries:
    symbols = subprocess.run(["nm", "-C", "--undefined-only", str(library)],
                             capture_output=True, text=True, check=True).stdout
    for symbol in sorted(set(re.findall(r"U (Q[A-Z]\w+::\S+|q[A-Z]\w+\(.*)", symbols))):
        print(f"{library.name} needs {symbol}")
        wrong += 1
print(f"{len(libraries)} libraries, {wrong} Qt symbols")
sys.exit(1 if wrong else 0)
