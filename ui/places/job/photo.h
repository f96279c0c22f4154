// A photo made small enough to be kept in a workbook. Not for other files.
#pragma once

#include <QString>

#include "core/base/result.h"
#include "core/project/review_records.h"

namespace ww::ui {

inline constexpr base::MessageForm kPhotoUnreadable{
    "photo_unreadable", "\"{1}\" cannot be read as a picture; choose a JPEG or PNG file"};

/// Longest side of a kept photo, in pixels.
inline constexpr int kLongestSide = 1600;

/// Reads a picture: a JPEG or PNG that is small enough is kept byte for byte, any other is made a JPEG whose
/// longest side is kLongestSide. Only name, media type and content of the attachment are filled.
base::Result<project::Attachment> readPhoto(const QString& file);

}  // namespace ww::ui
