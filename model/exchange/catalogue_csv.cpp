// SPDX-License-Identifier: MIT

#include "model/exchange/catalogue_csv.h"

#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/part_columns.h"
#include "model/exchange/catalogue/sheet_kind.h"
#include "model/exchange/catalogue/trade_rows.h"

#include <deque>

namespace flarestock {

namespace {

constexpr std::size_t ProblemsMax = 100;

/// Everything that the files say, before it becomes a catalogue.
class CatalogueReading {
public:
    CatalogueReading(const TextFiles &files, std::size_t problemsMax);

    /// What is wrong with the files, row by row.
    [[nodiscard]] Problems &problems() noexcept { return m_problems; }
    /// The catalogue; only where there are no problems.
    [[nodiscard]] Result<Catalogue> catalogue()
    {
        return Catalogue::of(std::move(m_parts), std::move(m_suppliers), std::move(m_offers));
    }

private:
    void readParts(const TextFiles &files);
    void readTrade(const TextFiles &files);
    /// nullptr with a problem where the text is no CSV.
    const CsvTable *table(const std::string &name, std::string_view text);

    Problems m_problems;
    std::deque<CsvTable> m_tables;
    std::deque<Sheet> m_sheets;
    PartOrigins m_origins;
    bool m_knowsAllParts = true; ///< Every parts file could be read, so a reference can be blamed.
    bool m_knowsAllSuppliers = true;
    std::vector<Part> m_parts;
    std::vector<Supplier> m_suppliers;
    std::vector<Offer> m_offers;
};

CatalogueReading::CatalogueReading(const TextFiles &files, std::size_t problemsMax)
    : m_problems(problemsMax)
{
    readParts(files);
    readTrade(files);
}

const CsvTable *CatalogueReading::table(const std::string &name, std::string_view text)
{
    auto read = readCsv(text, name);
    if (read)
        return &m_tables.emplace_back(std::move(*read));
    m_problems.add(std::move(read.error()));
    return nullptr;
}

void CatalogueReading::readParts(const TextFiles &files)
{
    PartRows rows(m_problems, m_origins);
    for (const auto &[name, text] : files) {
        if (sheetKind(name) != SheetKind::Parts)
            continue;
        const CsvTable *const read = table(name, text);
        if (!read) {
            m_knowsAllParts = false;
            continue;
        }
        const Sheet &sheet = m_sheets.emplace_back(*read, partHeadings(), m_problems);
        if (sheet.require({column::Part, column::KindWord, column::Description}, m_problems))
            rows.read(sheet, m_parts);
        else
            m_knowsAllParts = false;
    }
    if (!m_knowsAllParts)
        return;
    const KindOfPart kindOf = [this](std::string_view number) -> std::optional<Kind> {
        const auto found = m_origins.find(folded(number));
        return found == m_origins.end() ? std::nullopt : std::optional(found->second.kind);
    };
    for (const Sheet &sheet : m_sheets)
        checkReferences(sheet, kindOf, m_problems);
}

void CatalogueReading::readTrade(const TextFiles &files)
{
    for (const auto &[name, text] : files) {
        if (sheetKind(name) != SheetKind::Suppliers)
            continue;
        const std::size_t before = m_problems.count();
        if (const CsvTable *const read = table(name, text)) {
            auto more = readSuppliers(*read, m_problems);
            m_suppliers.insert(m_suppliers.end(), std::make_move_iterator(more.begin()),
                               std::make_move_iterator(more.end()));
        }
        m_knowsAllSuppliers = m_knowsAllSuppliers && m_problems.count() == before;
    }
    const KnownNames known{m_knowsAllParts ? &m_origins : nullptr,
                           m_knowsAllSuppliers ? &m_suppliers : nullptr};
    for (const auto &[name, text] : files) {
        if (sheetKind(name) != SheetKind::Offers)
            continue;
        if (const CsvTable *const read = table(name, text)) {
            auto more = readOffers(*read, known, m_problems);
            m_offers.insert(m_offers.end(), std::make_move_iterator(more.begin()),
                            std::make_move_iterator(more.end()));
        }
    }
}

} // namespace

Result<Catalogue> readCatalogue(const TextFiles &files)
{
    CatalogueReading reading(files, 1);
    if (!reading.problems().isEmpty())
        return tl::unexpected(std::move(reading.problems().all().front()));
    return reading.catalogue();
}

std::vector<Problem> catalogueProblems(const TextFiles &files)
{
    CatalogueReading reading(files, ProblemsMax);
    if (reading.problems().isEmpty()) {
        // What only shows when all parts stand together.
        if (auto made = reading.catalogue(); !made)
            reading.problems().add(std::move(made.error()));
    }
    return std::move(reading.problems().all());
}

} // namespace flarestock
