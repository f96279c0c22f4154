// A label that keeps its heights, against the label that does not. Own cases.
#include "ui/widgets/measured_label.h"

#include <gtest/gtest.h>

namespace ww::ui {
namespace {

void expectSameHeights(const QLabel& kept, const QLabel& plain) {
    for (const int width : {60, 120, 400, 60}) {
        EXPECT_EQ(kept.heightForWidth(width), plain.heightForWidth(width)) << width;
    }
}

TEST(MeasuredLabel, isAsHighAsAnyLabelForItsTextAndFont) {
    MeasuredLabel kept;
    QLabel plain;
    for (QLabel* label : {static_cast<QLabel*>(&kept), &plain}) {
        label->setTextFormat(Qt::RichText);
        label->setWordWrap(true);
        label->setText("total <b>23.5 m3/h</b> on share <b>7/12</b>");
    }
    expectSameHeights(kept, plain);
    for (QLabel* label : {static_cast<QLabel*>(&kept), &plain}) {
        label->setText("total <b>23.5 m3/h</b>");
    }
    expectSameHeights(kept, plain);
    for (QLabel* label : {static_cast<QLabel*>(&kept), &plain}) {
        QFont larger = label->font();
        larger.setPointSizeF(larger.pointSizeF() * 2);
        label->setFont(larger);
    }
    expectSameHeights(kept, plain);
}

}  // namespace
}  // namespace ww::ui
