// The speeds of the running pumps while a round is opened. What stands there from before is shown, and is no
// reading until somebody types it anew or confirms it. Not for storing (OpenRoundPanel).
#pragma once

#include <QLabel>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "core/pump_room/test_entry.h"
#include "ui/widgets/hinted_field.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class SpeedFields : public QWidget {
    Q_OBJECT

  public:
    explicit SpeedFields(const WorkbookBridge& bridge, QWidget* parent = nullptr);
    /// A field for each running pump, with the speed it was read at last, else its rated one.
    /// `isAgain`: what was typed or confirmed in the fields of the same round stays.
    void begin(bool isAgain = false);
    /// The speeds that were typed or confirmed. A text that is none is refused; its field has the keys then.
    base::Result<std::vector<pump_room::ReadSpeed>> read();

  signals:
    /// Enter in the last field.
    void done();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Field {
        base::Id pump;
        QLabel* label;
        HintedField* field;
        QString before;  ///< what stood there when the panel was shown
        bool isConfirmed = false;
    };
    void label(const Field& field) const;

    const WorkbookBridge& m_bridge;
    QVBoxLayout* m_rows;
    QLabel* m_about;
    std::vector<Field> m_fields;
};

}  // namespace ww::ui
