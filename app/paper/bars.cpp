// SPDX-License-Identifier: MIT

#include "app/paper/bars.h"

#include <memory>
#include <zint.h>

namespace flarestock {

namespace {

using Symbol = std::unique_ptr<zint_symbol, decltype(&ZBarcode_Delete)>;

bool isEncoded(zint_symbol &symbol, const QByteArray &text)
{
    symbol.show_hrt = 0;
    const auto *bytes = reinterpret_cast<const unsigned char *>(text.constData());
    return ZBarcode_Encode(&symbol, bytes, static_cast<int>(text.size())) < ZINT_ERROR;
}

/// The runs of black modules of one row, each one module high from `y` on.
QVector<QRectF> runsOf(const zint_symbol &symbol, int row, double y)
{
    QVector<QRectF> runs;
    const auto isBlack = [&](int at) { // A bit a module.
        return at < symbol.width && ((symbol.encoded_data[row][at / 8] >> (at % 8)) & 1) != 0;
    };
    for (int at = 0; at < symbol.width; ++at) {
        const int begin = at;
        while (isBlack(at))
            ++at;
        if (at > begin)
            runs.append(QRectF(begin, y, at - begin, 1));
    }
    return runs;
}

} // namespace

Bars barsOf(const QString &text)
{
    Bars bars;
    const QByteArray ascii = text.toUtf8();
    if (ascii.isEmpty() || ascii.size() != text.size())
        return bars;
    const Symbol symbol(ZBarcode_Create(), &ZBarcode_Delete);
    symbol->symbology = BARCODE_CODE128;
    if (!isEncoded(*symbol, ascii))
        return bars;
    bars.modules = symbol->width;
    bars.black = runsOf(*symbol, 0, 0);
    return bars;
}

Squares squaresOf(const QString &text)
{
    Squares squares;
    const QByteArray bytes = text.toUtf8();
    if (bytes.isEmpty())
        return squares;
    const Symbol symbol(ZBarcode_Create(), &ZBarcode_Delete);
    symbol->symbology = BARCODE_QRCODE;
    symbol->input_mode = UNICODE_MODE;
    symbol->option_1 = 2; // 15 % of it may be dirt.
    if (bytes.size() != text.size())
        symbol->eci = 26; // It is UTF-8: a scanner would guess.
    if (!isEncoded(*symbol, bytes))
        return squares;
    squares.side = symbol->width;
    for (int row = 0; row < symbol->rows; ++row)
        squares.black.append(runsOf(*symbol, row, row));
    return squares;
}

} // namespace flarestock
