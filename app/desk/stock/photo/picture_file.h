// SPDX-License-Identifier: MIT
//
// Picture file: a photo as a camera wrote it, made small enough to be kept beside its part. What
// else the camera wrote into it (where it was taken …) is left out.

#pragma once

#include "model/exact/problem.h"

#include <QString>

namespace flarestock {

/// The longer side of a kept photo, at most; pixels.
constexpr int PhotoSideMost = 1600;

/// The file as base64 of a JPEG, turned as it was held, at most PhotoSideMost wide and high and
/// PhotoTextMost long. Problem: no picture that can be read.
[[nodiscard]] Result<std::string> pictureIn(const QString &file);

} // namespace flarestock
