#include "ui/places/row_removal.h"

#include <QCoreApplication>

namespace ww::ui {
namespace {

struct RowRemovalText {
    Q_DECLARE_TR_FUNCTIONS(RowRemoval)
};

}  // namespace

void offerRemoval(QPushButton& button, bool isWritable, bool holds) {
    const QString why = !isWritable ? RowRemovalText::tr("This workbook can only be read here.")
                        : !holds    ? RowRemovalText::tr("There is no row here to remove.")
                                    : QString();
    button.setEnabled(why.isEmpty());
    button.setToolTip(why);
    button.setAccessibleDescription(why);
}

}  // namespace ww::ui
