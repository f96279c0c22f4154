// Room for other languages: every word half as long again, and lines that run from right to left. That
// translations grow so much is common practice, no source.
#include <gtest/gtest.h>

#include <QTranslator>
#include <string_view>

#include "tests/ui/support/screens.h"

namespace ww::ui {
namespace {

/// Makes each text of the program half as long again, in words that can be wrapped.
class LongerWords : public QTranslator {
  public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char*, int) const override {
        if (!QByteArray(context).startsWith("ww::") && QByteArray(context) != "Window") {
            return {};
        }
        QString words = QString::fromUtf8(source);
        qsizetype more = words.size() / 2;
        while (more > 0) {
            const qsizetype part = std::min<qsizetype>(more, 6);
            words += (part > 3 ? QStringLiteral(" ") : QString()) + QString(part > 3 ? part - 1 : part, 'o');
            more -= part;
        }
        return words;
    }
};

class LayoutLanguages : public testing::TestWithParam<support::Screen> {
  protected:
    ~LayoutLanguages() override { QApplication::setLayoutDirection(Qt::LeftToRight); }

    /// Looks at every page in every display.
    static void expectNoFaults() {
        support::ScreenWindow shown(GetParam());
        for (const theme::Display display : support::kDisplays) {
            // Dark is laid out as Office is: one size of it stands for all.
            const bool isRepeated =
                display == theme::Display::PlantRoomDark && GetParam().name != std::string_view("laptop");
            if (isRepeated) {
                continue;
            }
            ASSERT_TRUE(shown.show(display)) << "the window does not fit";
            const QString faults = shown.faults();
            EXPECT_TRUE(faults.isEmpty()) << theme::name(display).toStdString() << faults.toStdString();
        }
    }
};

TEST_P(LayoutLanguages, wordsHalfAsLongAgainHaveRoom) {
    LongerWords longer;
    QCoreApplication::installTranslator(&longer);
    expectNoFaults();
    QCoreApplication::removeTranslator(&longer);
}

TEST_P(LayoutLanguages, fromRightToLeftNothingIsCut) {
    QApplication::setLayoutDirection(Qt::RightToLeft);
    expectNoFaults();
}

TEST(NumbersFromRightToLeft, keepTheirDigitsInOrder) {
    QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        support::DeskWindow desk;
        desk.enter("20.5");
        const QString dp = desk.model().index(0, WalkModel::Dp).data().toString();
        EXPECT_EQ(dp, "20.5");
        for (const QChar c : dp) {
            EXPECT_NE(c.direction(), QChar::DirR);
        }
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

INSTANTIATE_TEST_SUITE_P(Screens, LayoutLanguages, testing::ValuesIn(support::kScreens),
                         [](const auto& info) { return std::string(info.param.name); });

}  // namespace
}  // namespace ww::ui
