#include "ui/places/job/photo.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>

namespace ww::ui {
namespace {

/// A file of this size is kept as it is.
constexpr qint64 kSmallFile = 1024 * 1024;
constexpr qint64 kLargestFile = 64 * 1024 * 1024;
constexpr int kQuality = 85;

base::SharedBytes bytesOf(const QByteArray& data) {
    return base::SharedBytes(std::vector<std::uint8_t>(data.begin(), data.end()));
}

}  // namespace

base::Result<project::Attachment> readPhoto(const QString& fileName) {
    const base::Fault refusal{&kPhotoUnreadable, {}, {QFileInfo(fileName).fileName().toStdString()}};
    QFile file(fileName);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargestFile) {
        return refusal;
    }
    QByteArray data = file.readAll();
    QBuffer buffer(&data);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QByteArray format = reader.format();
    QImage image = reader.read();
    if (image.isNull()) {
        return refusal;
    }
    project::Attachment made;
    const bool isSmall = std::max(image.width(), image.height()) <= kLongestSide && data.size() <= kSmallFile;
    if (isSmall && (format == "jpeg" || format == "png")) {
        made.name = QFileInfo(fileName).fileName().toStdString();
        made.mediaType = "image/" + format.toStdString();
        made.content = bytesOf(data);
        return made;
    }
    if (std::max(image.width(), image.height()) > kLongestSide) {
        image = image.scaled(kLongestSide, kLongestSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    }
    QByteArray out;
    QBuffer written(&out);
    written.open(QIODevice::WriteOnly);
    if (!image.convertToFormat(QImage::Format_RGB888).save(&written, "JPEG", kQuality)) {
        return refusal;
    }
    made.name = QFileInfo(fileName).completeBaseName().toStdString() + ".jpg";
    made.mediaType = "image/jpeg";
    made.content = bytesOf(out);
    return made;
}

}  // namespace ww::ui
