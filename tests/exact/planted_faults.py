#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
#
# planted_faults.py SOURCE SCRATCH COMPILER: do the decimal vectors bite? Copies the decimal sources,
# plants one fault at a time, builds the vector runner and insists that it fails; and that it passes
# on the sources as they are. A fault whose place is no longer found is a failure too: plant it anew.

import os
import subprocess
import sys

SOURCES = ["whole.cpp", "whole_big.cpp", "decimal.cpp", "decimal_text.cpp", "problem.cpp"]
RUNNER = ["run_vectors.cpp", "vector_check.cpp", "vector_file.cpp"]

# What is wrong, the file, what stands there, what is planted instead.
FAULTS = [
    ("half-even as half-up", "decimal.cpp",
     "return std::is_gt(half) || (std::is_eq(half) && odd);", "return std::is_gteq(half);"),
    ("half-up as half-even", "decimal.cpp",
     "return std::is_gteq(half);", "return std::is_gt(half) || (std::is_eq(half) && odd);"),
    ("floor as truncation", "decimal.cpp", "return negative;", "return false;"),
    ("a product drops trailing zeros", "decimal.cpp",
     "return {left.m_coefficient * right.m_coefficient, addedScales(left.m_scale, right.m_scale)};",
     "return Decimal(left.m_coefficient * right.m_coefficient,"
     " addedScales(left.m_scale, right.m_scale)).stripped();"),
    ("a difference drops zeros", "decimal.cpp",
     "Decimal operator-(const Decimal &left, const Decimal &right)\n{\n",
     "Decimal operator-(const Decimal &left, const Decimal &right)\n{\n"
     "    return (left + -right).stripped();\n"),
    ("comparison ignores the scale", "decimal.cpp",
     "std::strong_ordering operator<=>(const Decimal &left, const Decimal &right)\n{\n",
     "std::strong_ordering operator<=>(const Decimal &left, const Decimal &right)\n{\n"
     "    return left.m_coefficient <=> right.m_coefficient;\n"),
    ("negatives are rounded the wrong way", "decimal.cpp",
     "std::int64_t{negative ? -1 : 1}", "std::int64_t{1}"),
    (".5 without its leading zero", "decimal_text.cpp",
     "digits.insert(0, scale + 1 - digits.size(), '0');",
     "digits.insert(0, scale - digits.size(), '0');"),
    ("a leading zero means octal", "whole.cpp",
     "digits.data() + digits.size(), number);",
     "digits.data() + digits.size(), number, digits.front() == '0' ? 8 : 10);"),
    ("a leading zero means octal in large numbers", "whole_big.cpp",
     "std::string(digits.substr(start))", "std::string(digits)"),
]


def compiled(compiler, arguments):
    command = [compiler, "-std=c++20", "-O1", *arguments]
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode != 0:
        sys.exit("does not compile: " + " ".join(command) + "\n" + done.stderr)


class Bench:
    def __init__(self, source, scratch, compiler):
        self.source, self.scratch, self.compiler = source, scratch, compiler
        self.folder = os.path.join(source, "model", "exact")
        os.makedirs(scratch, exist_ok=True)

    def object_of(self, path, name, extra=()):
        target = os.path.join(self.scratch, name + ".o")
        compiled(self.compiler, ["-I", self.source, *extra, "-c", path, "-o", target])
        return target

    def passes(self, objects, name):
        program = os.path.join(self.scratch, name)
        compiled(self.compiler, [*objects, "-o", program])
        done = subprocess.run([program], capture_output=True, text=True, timeout=120)
        self.said = done.stdout.strip().splitlines()[-1:] or ["(nothing, it crashed)"]
        return done.returncode == 0

    def planted(self, fault):
        what, file, old, new = fault
        with open(os.path.join(self.folder, file), encoding="utf-8") as stream:
            text = stream.read()
        if text.count(old) != 1:
            sys.exit(f"FAIL: '{what}' cannot be planted: its place in {file} is there "
                     f"{text.count(old)} times")
        path = os.path.join(self.scratch, "planted_" + file)
        with open(path, "w", encoding="utf-8") as stream:
            stream.write(text.replace(old, new))
        return self.object_of(path, "planted")


def main(source, scratch, compiler):
    bench = Bench(source, scratch, compiler)
    vectors = os.path.join(source, "tests", "exact", "vectors")
    runner = [bench.object_of(os.path.join(vectors, each), each) for each in RUNNER]
    good = {each: bench.object_of(os.path.join(bench.folder, each), each) for each in SOURCES}
    if not bench.passes(runner + list(good.values()), "as_it_is"):
        sys.exit(f"FAIL: the sources as they are do not pass: {bench.said[0]}")
    print("as it is:", bench.said[0])
    missed = []
    for fault in FAULTS:
        objects = dict(good)
        objects[fault[1]] = bench.planted(fault)
        if bench.passes(runner + list(objects.values()), "planted"):
            missed.append(fault[0])
        print(f"{fault[0]}:", bench.said[0])
    if missed:
        sys.exit("FAIL: not noticed: " + ", ".join(missed))


if __name__ == "__main__":
    main(*sys.argv[1:])
