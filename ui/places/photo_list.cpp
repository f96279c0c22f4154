#include "ui/places/photo_list.h"

#include <QFileDialog>
#include <QVBoxLayout>

#include "core/balancing/review_steps.h"
#include "core/project/edit_label.h"
#include "ui/places/job/photo.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {
namespace {

constexpr int kPhotoSide = 72;

bool belongs(const project::Attachment& attachment, const PhotoOwner& owner) {
    return owner.deficiency ? attachment.deficiency == owner.deficiency
                            : owner.branch && attachment.branch == owner.branch;
}

}  // namespace

int photoCount(const project::Project& project, const PhotoOwner& owner) {
    int count = 0;
    for (const project::Attachment& attachment : project.attachments()) {
        count += belongs(attachment, owner) ? 1 : 0;
    }
    return count;
}

bool isPhotoName(const QString& file) {
    for (const char* ending : {".jpg", ".jpeg", ".png"}) {
        if (file.endsWith(QLatin1String(ending), Qt::CaseInsensitive)) {
            return true;
        }
    }
    return false;
}

base::Outcome keepPhoto(WorkbookBridge& bridge, const PhotoOwner& owner, const QString& file) {
    auto photo = readPhoto(file);
    if (!photo) {
        return photo.fault();
    }
    const balancing::ReviewContext context = bridge.reviewContext();
    photo->id = context.ids.next();
    photo->deficiency = owner.deficiency;
    photo->branch = owner.branch;
    photo->person = context.person;
    photo->time = context.now;
    const std::string label = project::label(project::labels::kPhoto, {photo->name});
    return bridge.apply({label, {std::move(*photo)}, {}, true});
}

PhotoList::PhotoList(WorkbookBridge& bridge, const QString& name, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_list(new QListWidget(this)),
      m_attach(new QPushButton(tr("Attach Photo…"), this)),
      m_remove(new QPushButton(tr("Remove Photo"), this)) {
    m_list->setAccessibleName(name);
    m_list->setViewMode(QListView::IconMode);
    m_list->setFlow(QListView::LeftToRight);
    m_list->setWrapping(false);
    m_list->setMovement(QListView::Static);
    m_list->setIconSize({kPhotoSide, kPhotoSide});
    m_list->setFixedHeight(kPhotoSide + 44);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_list);
    column->addWidget(new SideBySide({m_attach, 0, 1, SideBySide::kAsItAsks},
                                     {m_remove, 0, 1, SideBySide::kAsItAsks}, this));
    connect(m_attach, &QPushButton::clicked, this, [this] {
        const QString file = QFileDialog::getOpenFileName(this, tr("Attach a Photo"), QString(),
                                                          tr("Pictures (*.jpg *.jpeg *.png)"));
        if (!file.isEmpty()) {
            attach(file);
        }
    });
    connect(m_remove, &QPushButton::clicked, this, [this] {
        const QListWidgetItem* item = m_list->currentItem();
        const auto id = item == nullptr
                            ? std::nullopt
                            : base::Id::fromText(item->data(Qt::UserRole).toString().toStdString());
        if (id) {
            m_bridge.tellOrClear(m_bridge.apply({project::label(project::labels::kRemovePhoto),
                                                 {},
                                                 {{project::RecordKind::Attachment, *id}},
                                                 true}));
        }
    });
    connect(m_list, &QListWidget::currentItemChanged, this,
            [this] { m_remove->setEnabled(!m_bridge.isReadOnly() && m_list->currentItem() != nullptr); });
}

void PhotoList::show(const std::optional<PhotoOwner>& owner) {
    m_owner = owner;
    m_attach->setEnabled(owner && !m_bridge.isReadOnly());
    m_list->clear();
    for (const project::Attachment& attachment : m_bridge.project().attachments()) {
        if (!owner || !belongs(attachment, *owner)) {
            continue;
        }
        const auto& bytes = attachment.content.bytes();
        const QImage image = QImage::fromData(bytes.data(), static_cast<int>(bytes.size()));
        auto* item = new QListWidgetItem(QString::fromStdString(attachment.name), m_list);
        item->setIcon(QIcon(QPixmap::fromImage(
            image.scaled(kPhotoSide, kPhotoSide, Qt::KeepAspectRatio, Qt::SmoothTransformation))));
        item->setData(Qt::UserRole, QString::fromStdString(attachment.id.text()));
    }
    m_remove->setEnabled(false);
}

bool PhotoList::attach(const QString& file) {
    return m_owner && m_bridge.tellOrClear(keepPhoto(m_bridge, *m_owner, file));
}

}  // namespace ww::ui
