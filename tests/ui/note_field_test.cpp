// Pasting into a field for notes. Common practice, no source: nothing pasted is nothing changed.
#include "ui/widgets/note_field.h"

#include <gtest/gtest.h>

#include <QMimeData>

namespace ww::ui {
namespace {

class PastedInto : public NoteField {
  public:
    using NoteField::insertFromMimeData;
};

TEST(NoteField, takesNothingOfAnEmptyClipboard) {
    PastedInto field;
    field.setStored(QStringLiteral("stiff"));
    const QMimeData nothing;
    field.insertFromMimeData(&nothing);
    EXPECT_EQ(field.toPlainText(), QStringLiteral("stiff"));
    EXPECT_FALSE(field.isTyped());
}

TEST(NoteField, takesTheTextOfTheClipboard) {
    PastedInto field;
    QMimeData copied;
    copied.setText(QStringLiteral("lagging wet"));
    field.insertFromMimeData(&copied);
    EXPECT_EQ(field.toPlainText(), QStringLiteral("lagging wet"));
    EXPECT_TRUE(field.isTyped());
}

}  // namespace
}  // namespace ww::ui
