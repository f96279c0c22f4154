// The top row of the keyboard as digits for chords, where the keyboard writes digits with Shift only (French,
// Belgian, Czech). Not for typing numbers into fields.
#pragma once

#include <QObject>

namespace ww::ui {

/// An event filter of the whole program: what no command and no field has made of a chord with Alt or Ctrl on
/// a key of the top row acts as the chord with the digit of that key, in the window that has the keys. Keys
/// are known by their place, the evdev numbers 2 to 11 (Linux input-event-codes.h) and 8 added as X11 and
/// Wayland report them.
class TopRowKeys : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ww::ui
