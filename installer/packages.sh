#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
#
# packages.sh LIST…: installs the Debian packages of the lists that are not there yet. Only this needs
# root: it is asked for by sudo where the caller is somebody else, and not at all where nothing lacks.
set -euo pipefail

wanted=$(cat "$@" | grep -v '^#' | sort -u)
lacking=$(for package in $wanted; do
    dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || echo "$package"
done)
if [ -z "$lacking" ]; then
    echo "packages: all $(echo "$wanted" | wc -w) are installed"
    exit 0
fi
echo "packages: installing" $lacking
as_root=""
if [ "$(id -u)" != 0 ]; then
    command -v sudo >/dev/null || { echo "packages: run as root, or install sudo" >&2; exit 2; }
    as_root=sudo
fi
export DEBIAN_FRONTEND=noninteractive
$as_root apt-get update -qq -o DPkg::Lock::Timeout=900
$as_root apt-get install -y -qq --no-install-recommends -o DPkg::Lock::Timeout=900 \
    -o Dpkg::Options::=--force-unsafe-io $lacking >/dev/null
