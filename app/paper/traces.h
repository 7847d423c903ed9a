// SPDX-License-Identifier: MIT
//
// Traces: what a PDF says of the computer that made it, and when.

#pragma once

#include <QByteArray>
#include <QString>

namespace flarestock {

/// The day `made` ("2026-11-28") for that of the computer's clock. As many bytes as before, so that
/// everything stands where the file says.
[[nodiscard]] QByteArray withoutTraces(QByteArray pdf, QString made);

} // namespace flarestock
