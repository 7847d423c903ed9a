// SPDX-License-Identifier: MIT

#include "app/buyer/papers/label_file.h"

#include "app/buyer/whole_file.h"
#include "app/stockroom/asked.h"

namespace flarestock {

Result<void> canWriteLabels(const LabelFile &asked)
{
    if (asked.labels.empty())
        return {};
    if (const auto size = labelSizeAsked(asked.size); !size)
        return tl::unexpected(size.error());
    return canWriteWhole(asked.labels);
}

Result<void> writeLabels(const LabelFile &asked, const std::vector<Label> &labels, std::int64_t now)
{
    const auto size = labelSizeAsked(asked.size);
    const auto today = dayAsked({}, now);
    if (!size || !today)
        return tl::unexpected(size ? today.error() : size.error());
    const auto pdf = printed(labelDocument(labels, *size, *today));
    if (!pdf)
        return tl::unexpected(pdf.error());
    return writeWhole(asked.labels, {pdf->constData(), static_cast<std::size_t>(pdf->size())});
}

} // namespace flarestock
