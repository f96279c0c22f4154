// The photos of a branch or of a deficiency as small pictures, with keeping and removing them. Not for making
// a photo small (job/photo.h).
#pragma once

#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "ui/workbook_bridge.h"

namespace ww::ui {

/// What photos belong to. With a deficiency: those of that one alone; else all of the branch.
struct PhotoOwner {
    std::optional<base::Id> branch;
    std::optional<base::Id> deficiency;
};

/// How many photos the workbook keeps for an owner.
int photoCount(const project::Project& project, const PhotoOwner& owner);
/// Whether a file's name is that of a picture that can be kept.
bool isPhotoName(const QString& file);
/// Keeps a photo of a file for its owner as one step for undo.
base::Outcome keepPhoto(WorkbookBridge& bridge, const PhotoOwner& owner, const QString& file);

class PhotoList : public QWidget {
    Q_OBJECT

  public:
    /// `name` says of what, for a screen reader.
    PhotoList(WorkbookBridge& bridge, const QString& name, QWidget* parent = nullptr);

    /// Shows the photos of an owner; nothing: none can be kept.
    void show(const std::optional<PhotoOwner>& owner);
    bool attach(const QString& file);
    QListWidget* list() const { return m_list; }

  private:
    WorkbookBridge& m_bridge;
    std::optional<PhotoOwner> m_owner;
    QListWidget* m_list;
    QPushButton* m_attach;
    QPushButton* m_remove;
};

}  // namespace ww::ui
