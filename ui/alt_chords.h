// Keeps chords with Alt that no command has from being typed. Not for the chords that have one (commands.h).
#pragma once

#include <QObject>

namespace ww::ui {

/// An event filter of the whole program: what is pressed with Alt held is no text for a field, a choice or a
/// list. AltGr types as ever, also where a system reports it as Ctrl and Alt.
class AltChords : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ww::ui
