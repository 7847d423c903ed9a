// SPDX-License-Identifier: MIT

#include "app/sheet/workbook.h"

#include <QDateTime>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <array>
#include <charconv>
#include <clocale>
#include <xlsxwriter.h>

namespace flarestock {

namespace {

using CellKind = WorkbookColumn::Kind;

/// The library prints numbers as the locale says, and a file has points.
class PointLocale {
public:
    PointLocale() : m_point(newlocale(LC_NUMERIC_MASK, "C", nullptr)), m_before(uselocale(m_point))
    {
    }
    ~PointLocale()
    {
        uselocale(m_before);
        freelocale(m_point);
    }
    PointLocale(const PointLocale &) = delete;
    PointLocale &operator=(const PointLocale &) = delete;
    PointLocale(PointLocale &&) = delete;
    PointLocale &operator=(PointLocale &&) = delete;

private:
    locale_t m_point;
    locale_t m_before;
};

double numberIn(const std::string &text)
{
    double number = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

int decimalsOf(const std::string &number)
{
    const auto point = number.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(number.size() - point - 1);
}

bool hasText(CellKind kind)
{
    return kind != CellKind::Quantity;
}

bool hasNumber(CellKind kind)
{
    return kind != CellKind::Text;
}

/// One sheet being written into a workbook, which stays open.
class Writing {
public:
    Writing(lxw_workbook &book, const Workbook &sheet)
        : m_book(book), m_sheet(sheet),
          m_page(workbook_add_worksheet(&book, sheet.name.empty() ? nullptr : sheet.name.c_str())),
          m_bold(bold(0))
    {
    }

    /// LXW_NO_ERROR, or the first that went wrong.
    lxw_error write()
    {
        if (!m_page)
            return LXW_ERROR_PARAMETER_VALIDATION;
        writeHead();
        for (std::size_t at = 0; at < m_sheet.rows.size(); ++at)
            writeRow(static_cast<lxw_row_t>(at + 1), m_sheet.rows[at]);
        if (!m_sheet.sums.empty())
            writeSums(static_cast<lxw_row_t>(m_sheet.rows.size() + 1));
        worksheet_freeze_panes(m_page, 1, 0);
        worksheet_set_landscape(m_page);
        worksheet_fit_to_pages(m_page, 1, 0);
        worksheet_repeat_rows(m_page, 0, 0);
        return m_error;
    }

private:
    lxw_format *bold(int align)
    {
        lxw_format *format = workbook_add_format(&m_book);
        format_set_bold(format);
        format_set_align(format, static_cast<std::uint8_t>(align));
        return format;
    }

    /// "#,##0.00" of so many decimals; made once.
    lxw_format *formatOf(int decimals, bool isSum)
    {
        std::vector<lxw_format *> &made = isSum ? m_sums : m_numbers;
        const auto at = static_cast<std::size_t>(decimals);
        made.resize(std::max(made.size(), at + 1));
        if (!made[at]) {
            made[at] = isSum ? bold(0) : workbook_add_format(&m_book);
            const std::string shown = decimals == 0 ? "#,##0" : "#,##0." + std::string(at, '0');
            format_set_num_format(made[at], shown.c_str());
        }
        return made[at];
    }

    lxw_format *right()
    {
        if (!m_right) {
            m_right = workbook_add_format(&m_book);
            format_set_align(m_right, LXW_ALIGN_RIGHT);
        }
        return m_right;
    }

    void keep(lxw_error error)
    {
        if (m_error == LXW_NO_ERROR)
            m_error = error;
    }

    void writeText(lxw_row_t row, lxw_col_t column, const std::string &said, lxw_format *format)
    {
        if (!said.empty())
            keep(worksheet_write_string(m_page, row, column, said.c_str(), format));
    }

    int decimals(CellKind kind, const std::string &number) const
    {
        return kind == CellKind::Quantity ? decimalsOf(number)
               : kind == CellKind::Amount ? m_sheet.minorDigits
                                          : std::max(m_sheet.minorDigits, decimalsOf(number));
    }

    void writeHead()
    {
        lxw_format *ofNumbers = bold(LXW_ALIGN_RIGHT);
        lxw_col_t column = 0;
        for (const WorkbookColumn &one : m_sheet.columns) {
            const bool isBoth = hasText(one.kind) && hasNumber(one.kind);
            if (hasText(one.kind)) {
                worksheet_set_column(m_page, column, column, one.width, nullptr);
                writeText(0, column++, one.title, hasNumber(one.kind) ? ofNumbers : m_bold);
            }
            if (hasNumber(one.kind)) {
                worksheet_set_column(m_page, column, column, one.width + (isBoth ? 7 : 0), nullptr);
                writeText(0, column++, one.title + (isBoth ? " (number)" : ""), ofNumbers);
            }
        }
    }

    void writeRow(lxw_row_t row, const std::vector<std::string> &cells)
    {
        lxw_col_t column = 0;
        for (std::size_t at = 0; at < cells.size(); ++at) {
            const CellKind kind = m_sheet.columns[at].kind;
            if (hasText(kind))
                writeText(row, column++, cells[at], hasNumber(kind) ? right() : nullptr);
            if (hasNumber(kind) && !cells[at].empty())
                keep(worksheet_write_number(m_page, row, column, numberIn(cells[at]),
                                            formatOf(decimals(kind, cells[at]), false)));
            if (hasNumber(kind))
                ++column;
        }
    }

    void writeSums(lxw_row_t row)
    {
        lxw_col_t column = 0;
        lxw_format *ofNumbers = bold(LXW_ALIGN_RIGHT);
        for (std::size_t at = 0; at < m_sheet.sums.size(); ++at) {
            const CellKind kind = m_sheet.columns[at].kind;
            const std::string &sum = m_sheet.sums[at];
            if (hasText(kind))
                writeText(row, column++, sum, hasNumber(kind) ? ofNumbers : m_bold);
            if (kind == CellKind::Amount)
                writeSum(row, column, sum);
            if (hasNumber(kind))
                ++column;
        }
    }

    /// Added up by the program that opens it; until then the number that it will come to. Rounded,
    /// because binary fractions of cents add up to a hair beside it.
    void writeSum(lxw_row_t row, lxw_col_t column, const std::string &sum)
    {
        std::array<char, LXW_MAX_CELL_RANGE_LENGTH> range{};
        lxw_rowcol_to_range(range.data(), 1, column, row - 1, column);
        const std::string formula = "=ROUND(SUM(" + std::string(range.data()) + ")," +
                                    std::to_string(m_sheet.minorDigits) + ")";
        keep(worksheet_write_formula_num(m_page, row, column, formula.c_str(),
                                         formatOf(m_sheet.minorDigits, true), numberIn(sum)));
    }

    lxw_workbook &m_book;
    const Workbook &m_sheet;
    lxw_worksheet *m_page;
    lxw_format *m_bold;
    lxw_format *m_right = nullptr;
    std::vector<lxw_format *> m_numbers; ///< By decimals.
    std::vector<lxw_format *> m_sums;
    lxw_error m_error = LXW_NO_ERROR;
};

tl::unexpected<Problem> notWritten(const std::string &why)
{
    return problem("the sheet", "cannot be written: " + why,
                   "Look whether there is room for temporary files.");
}

} // namespace

Result<std::string> xlsxOf(const Workbook &sheet)
{
    const QTemporaryDir folder;
    if (!folder.isValid())
        return notWritten(folder.errorString().toStdString());
    const PointLocale points;
    QByteArray where = QFile::encodeName(folder.path());
    const QString path = folder.filePath(QStringLiteral("sheet.xlsx"));
    lxw_workbook_options options{};
    options.tmpdir = where.data();
    lxw_workbook *book = workbook_new_opt(QFile::encodeName(path).constData(), &options);
    if (!book)
        return notWritten("no memory");
    lxw_doc_properties properties{};
    const QDate made = QDate::fromString(QString::fromStdString(sheet.made), Qt::ISODate);
    properties.created = std::max<time_t>(1, made.startOfDay(Qt::UTC).toSecsSinceEpoch());
    workbook_set_properties(book, &properties);
    const lxw_error written = Writing(*book, sheet).write();
    const lxw_error closed = workbook_close(book); // Frees it, whatever happened.
    if (written != LXW_NO_ERROR || closed != LXW_NO_ERROR)
        return notWritten(lxw_strerror(written != LXW_NO_ERROR ? written : closed));
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return notWritten(file.errorString().toStdString());
    return file.readAll().toStdString();
}

} // namespace flarestock
