// Room for other languages: every word half as long again, and lines that run from right to left. That
// translations grow so much is common practice, no source.
#include <gtest/gtest.h>

#include <QTranslator>

#include "core/exchange/job_folder.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/layout_faults.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

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

class LayoutLanguages : public testing::Test {
  protected:
    ~LayoutLanguages() override { QApplication::setLayoutDirection(Qt::LeftToRight); }

    static QString faultsOf(DeskWindow& desk) {
        QString all;
        support::eachPage(desk.window, [&](const QString& page) {
            for (const QString& fault : support::settledFaults(desk.window)) {
                all += QString("\n%1: %2").arg(page, fault);
            }
        });
        return all;
    }
    exchange::ImportPlan job() {
        return exchange::readJobFolder(WW_SOURCE_DIR "/sample_projects/clinic_cooling", m_ids);
    }
    support::CountingIds m_ids;
};

TEST_F(LayoutLanguages, wordsHalfAsLongAgainHaveRoom) {
    LongerWords longer;
    QCoreApplication::installTranslator(&longer);
    {
        DeskWindow desk(job().edit, false);
        QTest::qWait(30);
        const QString faults = faultsOf(desk);
        EXPECT_TRUE(faults.isEmpty()) << faults.toStdString();
    }
    QCoreApplication::removeTranslator(&longer);
}

TEST_F(LayoutLanguages, fromRightToLeftNothingIsCutAndNumbersStayLeftToRight) {
    QApplication::setLayoutDirection(Qt::RightToLeft);
    DeskWindow desk(job().edit, false);
    QTest::qWait(30);
    const QString faults = faultsOf(desk);
    EXPECT_TRUE(faults.isEmpty()) << faults.toStdString();
    desk.window.showPlace(MainWindow::Walk);
    desk.enter("20.5");
    const QString dp = desk.model().index(0, WalkModel::Dp).data().toString();
    EXPECT_EQ(dp, "20.5");
    for (const QChar c : dp) {
        EXPECT_NE(c.direction(), QChar::DirR);
    }
}

}  // namespace
}  // namespace ww::ui
