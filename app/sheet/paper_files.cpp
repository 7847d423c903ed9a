// SPDX-License-Identifier: MIT

#include "app/sheet/paper_files.h"

#include "app/buyer/whole_file.h"
#include "app/sheet/workbook_csv.h"

namespace flarestock {

namespace {

Result<Letterhead> headAsked(const PaperAsked &asked, const ShopFile &file)
{
    if (asked.paper != "A4" && asked.paper != "Letter")
        return problem("the paper " + asked.paper, "is no size", "Say A4 or Letter.");
    return asked.pdf.empty() ? Letterhead() : letterheadOf(file);
}

} // namespace

PaperAsked paperInto(const std::string &file)
{
    PaperAsked asked;
    (file.ends_with(".csv") ? asked.csv : file.ends_with(".xlsx") ? asked.xlsx : asked.pdf) = file;
    return asked;
}

Result<void> canWritePapers(const PaperAsked &asked, const ShopFile &file)
{
    if (const auto head = headAsked(asked, file); !head)
        return tl::unexpected(head.error());
    for (const std::string &path : {asked.pdf, asked.csv, asked.xlsx}) {
        if (path.empty())
            continue;
        if (auto can = canWriteWhole(path); !can)
            return can;
    }
    return {};
}

Result<void> writePapers(const PaperAsked &asked, const ShopFile &file, const PaperMaking &making)
{
    const auto head = headAsked(asked, file);
    if (!head)
        return tl::unexpected(head.error());
    if (!asked.pdf.empty()) {
        const auto pdf =
            printed(paperDocument(making.paper(paperFrom(*head, asked.paper, asked.speech))));
        if (!pdf)
            return tl::unexpected(pdf.error());
        const std::string_view bytes(pdf->constData(), static_cast<std::size_t>(pdf->size()));
        if (auto written = writeWhole(asked.pdf, bytes); !written)
            return written;
    }
    if (!asked.csv.empty()) {
        const std::string text = making.csv ? making.csv() : csvOf(making.sheet());
        if (auto written = writeWhole(asked.csv, text); !written)
            return written;
    }
    if (!asked.xlsx.empty()) {
        const auto bytes = xlsxOf(making.sheet());
        return bytes ? writeWhole(asked.xlsx, *bytes) : tl::unexpected(bytes.error());
    }
    return {};
}

} // namespace flarestock
