#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
#
# clang_tidy.sh BUILD [--all]: clang-tidy over the C++ sources changed since $FLARESTOCK_BASE (default:
# where main was pushed last, else the commit before this one), at most 40 of them, or over all.
# (sed reads to the end; of head git would die where there are many, and take this script along.)
set -euo pipefail
build=$1
base=${FLARESTOCK_BASE:-}
if [ -z "$base" ]; then
    base=$(git merge-base HEAD origin/main 2>/dev/null || true)
    [ -n "$base" ] && [ "$base" != "$(git rev-parse HEAD)" ] || base=$(git rev-parse --verify -q HEAD~1 || true)
fi
if [ "${2:-}" = --all ] || [ -z "$base" ]; then
    files=$(git ls-files 'model/*.cpp' 'app/*.cpp')
else
    files=$(git diff --name-only --diff-filter=d "$base" -- 'model/*.cpp' 'app/*.cpp' | sed -n '1,40p')
fi
[ -n "$files" ] || { echo "no C++ source has changed"; exit 0; }
echo "$(echo "$files" | wc -l) files"
python3 "$(dirname "$0")/database.py" "$build"
status=0
said=$(echo "$files" | xargs -P 2 -n 4 clang-tidy-14 -p "$build/each" --quiet \
    --extra-arg=-Wno-unknown-warning-option 2>&1) || status=1
echo "$said" | grep -vE '^[0-9]+ warnings? (generated|treated)|^Suppressed|^Use -header-filter' || true
exit "$status"
