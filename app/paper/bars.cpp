// SPDX-License-Identifier: MIT

#include "app/paper/bars.h"

#include <memory>
#include <zint.h>

namespace flarestock {

Bars barsOf(const QString &text)
{
    Bars bars;
    const QByteArray ascii = text.toUtf8();
    if (ascii.isEmpty() || ascii.size() != text.size())
        return bars;
    const std::unique_ptr<zint_symbol, decltype(&ZBarcode_Delete)> symbol(ZBarcode_Create(),
                                                                          &ZBarcode_Delete);
    symbol->symbology = BARCODE_CODE128;
    symbol->show_hrt = 0;
    const auto *bytes = reinterpret_cast<const unsigned char *>(ascii.constData());
    if (ZBarcode_Encode(symbol.get(), bytes, static_cast<int>(ascii.size())) >= ZINT_ERROR)
        return bars;
    bars.modules = symbol->width;
    const auto isBlack = [&](int at) { // A bit a module, the first row only.
        return at < symbol->width && ((symbol->encoded_data[0][at / 8] >> (at % 8)) & 1) != 0;
    };
    for (int at = 0; at < symbol->width; ++at) {
        const int begin = at;
        while (isBlack(at))
            ++at;
        if (at > begin)
            bars.black.append(QRectF(begin, 0, at - begin, 1));
    }
    return bars;
}

} // namespace flarestock
