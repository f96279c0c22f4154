// Room for other languages: every word half as long again, and lines that run from right to left. That
// translations grow so much is common practice, no source.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabBar>
#include <QTableWidget>
#include <QTranslator>
#include <algorithm>
#include <initializer_list>
#include <string_view>

#include "core/report/report.h"
#include "tests/ui/support/screens.h"
#include "tests/ui/support/written_runs.h"
#include "ui/report/report_pages.h"
#include "ui/widgets/big_figure.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/side_list.h"

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
    static void expectNoFaults(double mostPoints = Preferences::kMostPoints) {
        support::Screen screen = GetParam();
        screen.textPoints = std::min(screen.textPoints, mostPoints);
        support::ScreenWindow shown(screen);
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

// Languages to come; those there are have room in text of any size (layout_test.cpp).
TEST_P(LayoutLanguages, wordsHalfAsLongAgainHaveRoom) {
    constexpr double kMostPoints = 14.0;
    LongerWords longer;
    QCoreApplication::installTranslator(&longer);
    expectNoFaults(kMostPoints);
    QCoreApplication::removeTranslator(&longer);
}

TEST_P(LayoutLanguages, fromRightToLeftNothingIsCut) {
    QApplication::setLayoutDirection(Qt::RightToLeft);
    expectNoFaults();
}

class NumbersFromRightToLeft : public testing::Test {
  protected:
    NumbersFromRightToLeft() { QApplication::setLayoutDirection(Qt::RightToLeft); }
    ~NumbersFromRightToLeft() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

TEST_F(NumbersFromRightToLeft, keepTheirDigitsInOrder) {
    support::DeskWindow desk;
    desk.enter("20.5");
    const QString dp = desk.model().index(0, WalkModel::Dp).data().toString();
    EXPECT_EQ(dp, "20.5");
    for (const QChar c : dp) {
        EXPECT_NE(c.direction(), QChar::DirR);
    }
}

// Unicode Standard Annex #9: in a paragraph from right to left "-15 %" becomes "% 15-" and "2.8 → 2.5"
// becomes "2.5 → 2.8" where nothing says otherwise.
TEST_F(NumbersFromRightToLeft, wouldLoseTheirOrderInAPlainParagraph) {
    for (const QString& words : QStringList{"-15 %", "±5 %", "2.8 → 2.5", "20 … 30 kPa"}) {
        const QStringList runs = support::runsFromRightToLeft(QSize(200, 40), [&](QPainter& painter) {
            painter.drawText(QRect(0, 0, 200, 40), int(Qt::AlignLeft), words);
        });
        EXPECT_FALSE(runs.isEmpty()) << words.toStdString();
    }
}

TEST_F(NumbersFromRightToLeft, keepTheirOrderInEveryKindOfControl) {
    support::DeskWindow desk;  // the program has its style
    const QString words = QStringLiteral("2.8 → 2.5 kPa, -15 %, ±5 %");
    QTableWidget table(1, 1);
    table.setItem(0, 0, new QTableWidgetItem(words));
    table.setHorizontalHeaderLabels({words});
    QListWidget list;
    list.addItem(words);
    QPushButton button(words);
    QCheckBox box(words);
    QLabel label(words);
    QLineEdit field(words);
    HintedField hinted(words, nullptr);
    QComboBox choice;
    choice.addItem(words);
    QTabBar tabs;
    tabs.addTab(words);
    QPlainTextEdit text(words);
    BigFigure figure(words);
    for (QWidget* widget : std::initializer_list<QWidget*>{&table, &list, &button, &box, &label, &field,
                                                           &hinted, &choice, &tabs, &text, &figure}) {
        widget->resize(500, 200);
        widget->show();
        QTest::qWait(0);
        const QStringList runs = support::runsFromRightToLeft(*widget);
        EXPECT_TRUE(runs.isEmpty()) << widget->metaObject()->className() << ": "
                                    << runs.join(" | ").toStdString();
    }
}

TEST_F(NumbersFromRightToLeft, keepTheirOrderOnEveryPage) {
    support::DeskWindow desk;
    desk.enter("20.5");
    desk.enter("99");
    support::eachPage(desk.window, [&](const QString& page) {
        QTest::qWait(150);
        for (QWidget* part :
             desk.window.centralWidget()->findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
            // The list of places says a number and a name, which stand in the order of reading.
            if (!part->isVisible() || qobject_cast<const SideList*>(part) != nullptr) {
                continue;
            }
            const QStringList runs = support::runsFromRightToLeft(*part);
            EXPECT_TRUE(runs.isEmpty()) << page.toStdString() << ": " << runs.join(" | ").toStdString();
        }
    });
}

TEST_F(NumbersFromRightToLeft, keepTheirOrderOnPaper) {
    support::DeskWindow desk;
    desk.enter("20.5");
    const ww::report::Report report = ww::report::build(desk.project(), {});
    const report::ReportPages pages = report::layOut(report, desk.project());
    for (std::size_t page = 0; page < pages.pages.size(); ++page) {
        const QSizeF size = pages.size(page);
        const QStringList runs = support::runsFromRightToLeft(size.toSize(), [&](QPainter& painter) {
            report::renderPage(painter, pages, page, QRectF(QPointF(0, 0), size));
        });
        EXPECT_TRUE(runs.isEmpty()) << "page " << page + 1 << ": " << runs.join(" | ").toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Screens, LayoutLanguages, testing::ValuesIn(support::kScreens),
                         [](const auto& info) { return std::string(info.param.name); });

}  // namespace
}  // namespace ww::ui
