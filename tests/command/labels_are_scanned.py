# SPDX-License-Identifier: MIT
"""Labels as a printer gets them, read by other programs.

    labels_are_scanned.py FLARESTOCK

Poppler makes pictures of them at the resolutions of label printers (203, 300 and 600 dots an inch),
and zbarimg reads the code off each: exactly the text that a hand would type. pdftotext reads the
words, pdfinfo the size. Short codes are bars (Code 128), long ones squares (QR).
"""

import json
import re
import subprocess
import sys
import tempfile
from pathlib import Path

FLARESTOCK = sys.argv[1]
DOTS = (203, 300, 600)
LONG = "HEAT-40417-CERT-2026-11-28-ROLL-12-OF-40-BATCH-7731-B-DRUM-4-OF-9-LENGTH-31"


def flarestock(*words, status=0):
    ran = subprocess.run([FLARESTOCK, *words], capture_output=True, text=True, check=False)
    assert ran.returncode == status, (words, ran.returncode, ran.stdout, ran.stderr)
    return ran.stdout if status == 0 else ran.stderr


def read(program, *words):
    return subprocess.run([program, *words], capture_output=True, text=True, check=True).stdout


def scanned(folder, file, dots):
    """The kind and text of the code of each page."""
    for old in folder.glob("page*.png"):
        old.unlink()
    read("pdftoppm", "-r", str(dots), "-png", str(file), str(folder / "page"))
    codes = []
    for page in sorted(folder.glob("page*.png")):
        said = read("zbarimg", "-q", "-Sdisable", "-Scode128.enable", "-Sqrcode.enable", str(page))
        codes.append(said.rstrip("\n").split(":", 1))
    return codes


def areRead(folder, file, codes, size=(50, 25)):
    for dots in DOTS:
        assert scanned(folder, file, dots) == codes, (dots, scanned(folder, file, dots), codes)
    said = read("pdfinfo", str(file))
    found = re.search(r"Page size: +([0-9.]+) x ([0-9.]+) pts", said)
    for points, side in zip(found.groups(), size):
        assert abs(float(points) - side / 25.4 * 72) < 1, (said, size)


def partsAndPlaces(folder, shop):
    file = folder / "labels.pdf"
    said = json.loads(flarestock("label", "AD-3-3", "EL-6-90", "--count", "2", "--pdf", str(file),
                                 "--shop", shop, "--json"))
    assert [label["code"] for label in said["labels"]] == ["AD-3-3", "EL-6-90"]
    bars = [["CODE-128", "AD-3-3"]] * 2 + [["CODE-128", "EL-6-90"]] * 2
    areRead(folder, file, bars)
    words = read("pdftotext", str(file), "-")
    assert words.count("AD-3-3") >= 2 and said["labels"][0]["lines"][0] == "AD-3-3"
    again = folder / "again.pdf"
    flarestock("label", "AD-3-3", "EL-6-90", "--count", "2", "--pdf", str(again), "--shop", shop)
    assert again.read_bytes() == file.read_bytes(), "the same labels are not the same file"
    flarestock("label", "--place", "C4", "--place", "trailer-2", "--size", "70 x 35 mm", "--pdf",
               str(file), "--shop", shop)
    areRead(folder, file, [["CODE-128", "C4"], ["CODE-128", "trailer-2"]], (70, 35))


def lots(folder, shop):
    file = folder / "labels.pdf"
    flarestock("receive", "AD-3-3", "5", "--from", "supplier-TCF", "--to", "A3", "--cost", "30.00",
               "--lot", LONG, "--use-by", "2027-03-31", "--labels", str(file), "--shop", shop)
    areRead(folder, file, [["QR-Code", f"AD-3-3={LONG}"]])
    assert "use by 2027-03-31" in read("pdftotext", str(file), "-")
    flarestock("receive", "AD-3-3", "5", "--from", "supplier-TCF", "--to", "A3", "--cost", "30.00",
               "--lot", "Überrohr Ø12 µ", "--shop", shop)
    flarestock("label", "AD-3-3", "--lot", "Überrohr Ø12 µ", "--lot", LONG, "--size", "60x20", "--pdf",
               str(file), "--shop", shop)
    areRead(folder, file, [["QR-Code", "AD-3-3=Überrohr Ø12 µ"], ["QR-Code", f"AD-3-3={LONG}"]],
            (60, 20))
    words = read("pdftotext", str(file), "-")
    assert "use by 2027-03-31" in words and "in A3" in words, words


def ofAnOrder(folder, shop):
    file = folder / "labels.pdf"
    number = json.loads(flarestock("order", "new", "--supplier", "TCF", "--line", "AD-3-3 4", "--line",
                                   "AD-8-8 2", "--day", "2026-11-02", "--shop", shop,
                                   "--json"))["number"]
    flarestock("order", "place", number, "--day", "2026-11-02", "--shop", shop)
    assert "nothing yet" in flarestock("label", "--order", number, "--pdf", str(file), "--shop", shop,
                                       status=2)
    flarestock("receive", "--order", number, "--all", "--lot", "AD-3-3=B7", "--to", "A3", "--labels",
               str(file), "--shop", shop)
    codes = scanned(folder, file, 300)
    assert sorted(code for _, code in codes) == ["AD-3-3=B7", "AD-8-8"], codes
    flarestock("label", "--order", number, "--pdf", str(file), "--shop", shop)
    assert scanned(folder, file, 300) == codes


def isWholeOrNot(folder, shop):
    kept = folder / "kept.pdf"
    kept.write_bytes(b"as it was")
    for words, why in ((("AD-3-3", "--lot", LONG, "--size", "10x10"), "does not fit"),
                       (("AD-3-3", "--size", "50"), "no width and height"),
                       (("AD-3-3", "--size", "5x5"), "10 to 300 mm"),
                       (("AD-3-3", "--count", "0"), "is no count"),
                       (("AD-3-3", "--lot", "B8"), "B7"), (("AD-3-33",), "AD-3-3"), ((), "needs"),
                       (("--lot", "B7"), "is of a part"), (("--place", "C44"), "C4"),
                       (("AD-3-3", "AD-8-8", "--lot", "B7"), "of one part"),
                       (("AD-3-3", "--order", "2026-0001"), "which parts")):
        said = flarestock("label", *words, "--pdf", str(kept), "--shop", shop, status=2)
        assert why in said and said.count("\n") == 1, (words, said)
        assert kept.read_bytes() == b"as it was"
    before = flarestock("stock", "--find", "AD-8-8", "--shop", shop)
    flarestock("receive", "AD-8-8", "5", "--from", "supplier-TCF", "--to", "A3", "--cost", "30.00",
               "--labels", str(folder / "no" / "a.pdf"), "--shop", shop, status=2)
    assert flarestock("stock", "--find", "AD-8-8", "--shop", shop) == before, "booked without labels"


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        shop = str(folder / "shop")
        flarestock("demo", "--to", shop)
        partsAndPlaces(folder, shop)
        lots(folder, shop)
        ofAnOrder(folder, shop)
        isWholeOrNot(folder, shop)


main()
