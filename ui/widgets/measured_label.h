// A wrapped label of rich text that is asked for its height often.
#pragma once

#include <QHash>
#include <QLabel>

namespace ww::ui {

/// A QLabel lays its rich text out anew each time a layout asks how high it is; this one does so once for
/// each width, until text or font change.
class MeasuredLabel : public QLabel {
  public:
    using QLabel::QLabel;

    int heightForWidth(int width) const override;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    mutable QHash<int, int> m_heights;  ///< by width
    mutable QString m_measured;         ///< the text they are of
};

}  // namespace ww::ui
