// Keeps text of the job from being taken for markup, wherever a label shows it. Not for the few labels that
// ask for rich text themselves and hold no text of the job.
#pragma once

#include <QObject>

namespace ww::ui {

/// An event filter of the whole program: a label that would guess what its text is shows it as it stands,
/// tool tips included, and a tool tip that repeats a label is shown where the label is cut alone.
class PlainLabels : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ww::ui
