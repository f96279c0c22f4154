#include "ui/places/adjust/adjust_place.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QCloseEvent>
#include <QElapsedTimer>
#include <QImage>
#include <algorithm>
#include <cmath>

#include "tests/support/solved_job.h"
#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_rig.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/text/words.h"

// The source of these checks is the interaction design of this project: keys, words and counts are its own
// decisions; where a standard says the same it is named.
namespace ww::ui {
namespace {

using project::ReadingPurpose;
using support::DeskWindow;
using support::SolvedJob;

/// A desk in Adjust on a solved loop, the first terminal in hand, what is to be learned learned.
class AdjustDesk : public ::testing::Test {
  protected:
    AdjustDesk() : m_job(6), m_desk(m_job.content(), false) {
        m_desk.bridge().selectBranch(idOf("T-01"));
        m_desk.window.showPlace(MainWindow::Adjust);
        settle();
    }
    AdjustPlace& place() { return *m_desk.window.adjust(); }
    base::Id idOf(const std::string& tag) { return m_desk.project().branchTagged(tag)->id; }
    /// Lets the learning come to its end.
    void settle() {
        QElapsedTimer time;
        time.start();
        while (m_desk.window.advisor().isComputing() && time.elapsed() < 60'000) {
            QTest::qWait(5);
        }
        ASSERT_FALSE(m_desk.window.advisor().isComputing());
    }
    double setting() { return place().valve().setting().si(); }
    const project::Reading* newest() {
        const auto& indices = m_desk.project().readingsOf(m_desk.project().lastRound()->id);
        return &m_desk.project().readings()[indices.back()];
    }
    /// Whether it lies in a view that scrolls: there it may move, the view itself may not.
    static bool scrolls(const QWidget* widget) {
        for (const QWidget* at = widget->parentWidget(); at != nullptr; at = at->parentWidget()) {
            if (at->inherits("QAbstractScrollArea")) {
                return true;
            }
        }
        return false;
    }
    std::vector<QRect> shapes() {
        std::vector<QRect> all;
        for (const QWidget* widget : place().findChildren<QWidget*>()) {
            if (widget->isVisible() && !scrolls(widget)) {
                all.emplace_back(widget->mapTo(&place(), QPoint(0, 0)), widget->size());
            }
        }
        return all;
    }

    SolvedJob m_job;
    DeskWindow m_desk;
};

TEST_F(AdjustDesk, logsTriesWithDigitsAndEnterAlone) {
    ASSERT_TRUE(place().field()->hasFocus());
    m_desk.enter("30.0");
    EXPECT_EQ(m_desk.project().rounds().size(), 2U);
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Try);
    EXPECT_EQ(newest()->setting->text(), "4.0");
    m_desk.key(Qt::Key_Down);
    m_desk.enter("31,5");
    EXPECT_EQ(newest()->dp->text(), "31.5 kPa");
    EXPECT_LT(newest()->setting->value(), 4.0);
    EXPECT_EQ(place().valve().tries().size(), 2U);
    EXPECT_TRUE(place().field()->hasFocus());
    EXPECT_TRUE(place().field()->text().isEmpty());
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    m_desk.enter("3..1");  // refused in place, nothing is lost
    EXPECT_EQ(place().field()->text(), "3..1");
    EXPECT_EQ(place().field()->selectedText(), "3..1");
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
}

TEST_F(AdjustDesk, closingStoresWhatStandsInTheField) {
    const auto isClosed = [this] {
        QCloseEvent closing;
        QApplication::sendEvent(&m_desk.window, &closing);
        return closing.isAccepted();
    };
    m_desk.type("31.5");
    EXPECT_TRUE(isClosed());
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Try);
    EXPECT_EQ(newest()->dp->text(), "31.5 kPa");
    place().takeFocus();
    m_desk.type("3..1");
    m_desk.window.showPlace(MainWindow::Walk);
    EXPECT_FALSE(isClosed());
    EXPECT_EQ(m_desk.window.place(), MainWindow::Adjust);
    EXPECT_EQ(place().field()->text(), "3..1");
    EXPECT_TRUE(place().field()->hasFocus());
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
}

TEST_F(AdjustDesk, whatIsTypedStaysWithItsValve) {
    m_desk.type("31.5");
    m_desk.window.commands().places[MainWindow::Walk]->trigger();
    const QString told = m_desk.window.notice();
    EXPECT_TRUE(told.contains("31.5") && told.contains("T-01")) << told.toStdString();
    m_desk.bridge().selectBranch(idOf("T-02"));
    m_desk.window.commands().places[MainWindow::Adjust]->trigger();
    EXPECT_TRUE(place().field()->text().isEmpty());
    m_desk.bridge().selectBranch(idOf("T-01"));
    EXPECT_EQ(place().field()->text(), "31.5");
    // Closing stores it at the valve that it was typed for.
    m_desk.bridge().selectBranch(idOf("T-02"));
    EXPECT_EQ(m_desk.project().rounds().size(), 1U) << "nothing is stored by looking elsewhere";
    EXPECT_TRUE(m_desk.window.storeTyped());
    EXPECT_EQ(newest()->branch, idOf("T-01"));
    EXPECT_EQ(newest()->dp->text(), "31.5 kPa");
}

TEST_F(AdjustDesk, theValveThatWasTurnedIsInHandAfterARestart) {
    const base::Id branch = idOf("T-03");
    place().showBranch(branch);
    place().takeFocus();
    m_desk.enter("30.0");
    const QString file = m_desk.bridge().file();
    m_desk.bridge().close();
    EXPECT_FALSE(m_desk.bridge().selectedBranch().has_value());
    ASSERT_TRUE(m_desk.bridge().open(file).ok());
    EXPECT_EQ(m_desk.bridge().selectedBranch(), branch);
}

TEST_F(AdjustDesk, arrowsStepTheSettingAndEndAtTheStops) {
    EXPECT_DOUBLE_EQ(setting(), 4.0);
    EXPECT_TRUE(place().valve().isAtStop());
    EXPECT_TRUE(place().findChildren<BigFigure*>().front()->accessibleDescription().contains("At stop"));
    m_desk.key(Qt::Key_Up);
    EXPECT_DOUBLE_EQ(setting(), 4.0);
    QElapsedTimer time;
    time.start();
    m_desk.key(Qt::Key_Down);
    place().repaint();
    EXPECT_LT(time.elapsed(), 100);
    EXPECT_NEAR(4.0 - setting(), place().valve().step().si(), 1e-9);
    m_desk.key(Qt::Key_PageDown);
    EXPECT_NEAR(setting(), 3.0 - place().valve().step().si(), 1e-9);
    m_desk.key(Qt::Key_PageUp);
    m_desk.key(Qt::Key_PageUp);
    EXPECT_DOUBLE_EQ(setting(), 4.0);
    // The other stop: no key goes beyond the lowest setting of the valve's table.
    for (int turn = 0; turn < 6; ++turn) {
        m_desk.key(Qt::Key_PageDown);
    }
    const double lowest = setting();
    EXPECT_GE(lowest, 0);
    EXPECT_TRUE(place().valve().isAtStop());
    EXPECT_TRUE(place().findChildren<BigFigure*>().front()->accessibleDescription().contains("At stop"));
    m_desk.key(Qt::Key_Down);
    EXPECT_DOUBLE_EQ(setting(), lowest);
    for (int turn = 0; turn < 6; ++turn) {
        m_desk.key(Qt::Key_PageUp);
    }
    EXPECT_DOUBLE_EQ(setting(), 4.0);
    // A typed setting off the scale is kept as typed and not taken.
    m_desk.key(Qt::Key_Tab);
    m_desk.enter("45");
    EXPECT_DOUBLE_EQ(setting(), 4.0);
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
    EXPECT_EQ(m_desk.project().rounds().size(), 1U);  // nothing was stored by moving
}

TEST_F(AdjustDesk, theWordChangesOnlyWhenAReadingIsStored) {
    auto* sign = place().findChild<WordSign*>();
    // Twice the dp of the survey: far above any aim, and still plausible.
    const double survey_kPa = place().valve().last()->dp.in(quantity::Unit::Kilopascal);
    m_desk.enter(QString::number(2 * survey_kPa, 'f', 1));
    EXPECT_EQ(sign->word(), balancing::AimWord::Close);
    EXPECT_TRUE(sign->accessibleDescription().contains("CLOSE"));
    EXPECT_TRUE(sign->accessibleDescription().contains("T-01"));
    settle();
    m_desk.type("0.2");
    EXPECT_EQ(sign->word(), balancing::AimWord::Close);
    m_desk.key(Qt::Key_Return);
    EXPECT_EQ(sign->word(), balancing::AimWord::ReadAgain);
    m_desk.enter("2.0");
    // Far from what was read here before: a reason lets it stand.
    ASSERT_TRUE(m_desk.bridge().giveReason(newest()->id, "read twice").ok());
    EXPECT_EQ(sign->word(), balancing::AimWord::AtStop);  // fully open, and still too little
}

TEST_F(AdjustDesk, theKeyLineOffersOnlyWhatActs) {
    const auto says = [this](const char* words) { return m_desk.keyLine().contains(words); };
    EXPECT_TRUE(says("logs a try")) << m_desk.keyLine().toStdString();
    EXPECT_FALSE(says("Ctrl+Enter")) << "nothing was tried here: " << m_desk.keyLine().toStdString();
    m_desk.type("30.0");
    EXPECT_TRUE(says("Ctrl+Enter")) << m_desk.keyLine().toStdString();
    m_desk.key(Qt::Key_Return);
    EXPECT_TRUE(says("Ctrl+Enter")) << m_desk.keyLine().toStdString();
    m_desk.key(Qt::Key_Down);
    EXPECT_FALSE(says("Ctrl+Enter")) << "not read here: " << m_desk.keyLine().toStdString();
    while (!m_desk.bridge().undoLabel().isEmpty()) {
        ASSERT_TRUE(m_desk.bridge().undo().ok());
    }
    ASSERT_TRUE(m_desk.bridge().openRound(project::RoundKind::Final).ok());
    EXPECT_FALSE(says("logs a try")) << m_desk.keyLine().toStdString();
    EXPECT_TRUE(says("closes the round first")) << m_desk.keyLine().toStdString();
}

TEST_F(AdjustDesk, aValveThatWasMovedIsToBeReadWhereItStands) {
    auto* sign = place().findChild<WordSign*>();
    const double survey_kPa = place().valve().last()->dp.in(quantity::Unit::Kilopascal);
    m_desk.enter(QString::number(2 * survey_kPa, 'f', 1));
    ASSERT_EQ(sign->word(), balancing::AimWord::Close);
    m_desk.key(Qt::Key_Down);
    EXPECT_EQ(sign->word(), balancing::AimWord::ReadAgain) << "the word of the setting that was left";
    EXPECT_TRUE(wordNote(m_desk.bridge(), place().valve()).contains("not read at"))
        << wordNote(m_desk.bridge(), place().valve()).toStdString();
    m_desk.key(Qt::Key_Up);
    EXPECT_EQ(sign->word(), balancing::AimWord::Close) << "back where it was read";
    m_desk.key(Qt::Key_Down);
    m_desk.enter(QString::number(2 * survey_kPa, 'f', 1));
    EXPECT_EQ(sign->word(), balancing::AimWord::Close);
    // A setting that is stored elsewhere without a reading moves the valve too.
    ASSERT_TRUE(m_desk.bridge().storeSetting(idOf("T-02"), "3.0").ok());
    place().showBranch(idOf("T-02"));
    EXPECT_EQ(sign->word(), balancing::AimWord::ReadAgain);
}

TEST_F(AdjustDesk, whatWasStoredDoesNotComeBackIntoTheField) {
    m_desk.enter("30.0");
    for (int i = 0; i < 3; ++i) {
        m_desk.key(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_TRUE(place().field()->text().isEmpty());
    }
    EXPECT_FALSE(place().field()->isUndoAvailable());
    m_desk.type("abc");
    m_desk.key(Qt::Key_Escape);
    m_desk.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(place().field()->text().isEmpty());
}

TEST_F(AdjustDesk, steppingTheSettingStoresNothing) {
    const auto before = support::recordsOf(m_desk.project());
    m_desk.type("30");
    for (const Qt::Key key : {Qt::Key_Down, Qt::Key_PageDown, Qt::Key_Up, Qt::Key_PageUp}) {
        m_desk.key(key);
        EXPECT_DOUBLE_EQ(setting(), 4.0);  // what is typed was read here
        EXPECT_EQ(place().field()->text(), "30");
    }
    EXPECT_TRUE(m_desk.window.notice().contains("Enter"));
    EXPECT_EQ(support::recordsOf(m_desk.project()), before);
    m_desk.key(Qt::Key_Return);
    EXPECT_EQ(newest()->setting->text(), "4.0");
}

TEST_F(AdjustDesk, whatWasSaidOfARefusedTextGoesWithIt) {
    m_desk.enter("3..1");
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
    m_desk.key(Qt::Key_Escape);
    EXPECT_TRUE(m_desk.window.notice().isEmpty()) << m_desk.window.notice().toStdString();
    m_desk.key(Qt::Key_Tab);
    m_desk.enter("45");
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
    m_desk.enter("3");
    EXPECT_TRUE(m_desk.window.notice().isEmpty()) << m_desk.window.notice().toStdString();
    m_desk.type("30");
    m_desk.key(Qt::Key_Down);
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
    m_desk.key(Qt::Key_Escape);
    EXPECT_TRUE(m_desk.window.notice().isEmpty()) << m_desk.window.notice().toStdString();
}

TEST_F(AdjustDesk, theFirstTrySaysThatItOpenedARound) {
    const double survey_kPa = place().valve().last()->dp.in(quantity::Unit::Kilopascal);
    m_desk.enter(QString::number(survey_kPa, 'f', 1));
    EXPECT_TRUE(m_desk.window.notice().contains("Round 2 opened")) << m_desk.window.notice().toStdString();
    m_desk.enter(QString::number(survey_kPa, 'f', 1));
    EXPECT_FALSE(m_desk.window.notice().contains("opened")) << m_desk.window.notice().toStdString();
}

TEST_F(AdjustDesk, aDoubtfulTryIsReadAgainAndKeptOutOfTheMean) {
    auto* sign = place().findChild<WordSign*>();
    const double survey_kPa = place().valve().last()->dp.in(quantity::Unit::Kilopascal);
    m_desk.enter("900");
    EXPECT_EQ(sign->word(), balancing::AimWord::ReadAgain);
    place().readAgain();
    m_desk.enter(QString::number(survey_kPa, 'f', 1));
    EXPECT_FALSE(newest()->isRepeat);
    EXPECT_NE(sign->word(), balancing::AimWord::ReadAgain);
}

TEST_F(AdjustDesk, aShutValveIsToBeOpened) {
    auto* sign = place().findChild<WordSign*>();
    for (int i = 0; i < 5; ++i) {
        m_desk.key(Qt::Key_PageDown);
    }
    ASSERT_DOUBLE_EQ(setting(), 0.0);
    EXPECT_EQ(sign->word(), balancing::AimWord::Open);
}

TEST_F(AdjustDesk, theOrderStaysWhileTriesAreLogged) {
    KeptOrder kept(m_desk.bridge(), m_desk.window.advisor());
    const auto before = kept.order();
    const base::Id last = m_desk.project().branches()[before.back()].id;
    place().showBranch(last);
    m_desk.enter("30.0");
    settle();
    const auto after = kept.order();
    // The same valves in the same order; other valves only where a reference changed.
    auto sortedBefore = before;
    auto sortedAfter = after;
    std::sort(sortedBefore.begin(), sortedBefore.end());
    std::sort(sortedAfter.begin(), sortedAfter.end());
    EXPECT_TRUE(sortedBefore != sortedAfter || before == after);
}

TEST_F(AdjustDesk, afterARoundTheFirstOfTheOrderIsInHand) {
    m_desk.window.showPlace(MainWindow::Walk);
    ASSERT_TRUE(m_desk.bridge().openRound(project::RoundKind::Adjusting).ok());
    for (int i = 1; i <= 6; ++i) {
        const std::string tag = SolvedJob::tagOf(i);
        ASSERT_TRUE(m_desk.bridge().storeDp(idOf(tag), QString::fromStdString(m_job.readAt({}, tag))).ok());
    }
    m_desk.bridge().selectBranch(idOf("T-06"));
    ASSERT_TRUE(m_desk.bridge().closeRound().ok());
    settle();
    KeptOrder kept(m_desk.bridge(), m_desk.window.advisor());
    const base::Id first = m_desk.project().branches()[kept.order().front()].id;
    m_desk.window.showPlace(MainWindow::Adjust);
    EXPECT_EQ(place().valve().branch(), first);
    // A valve that is chosen afterwards stays.
    m_desk.window.showPlace(MainWindow::Walk);
    m_desk.bridge().selectBranch(idOf("T-06"));
    m_desk.window.showPlace(MainWindow::Adjust);
    EXPECT_EQ(place().valve().branch(), idOf("T-06"));
}

TEST_F(AdjustDesk, nothingMovesBetweenTries) {
    const auto before = shapes();
    for (const char* typed : {"300", "45.6", "0.2", "12"}) {
        m_desk.enter(typed);
        EXPECT_TRUE(shapes() == before) << typed;
        m_desk.key(Qt::Key_Down);
        EXPECT_TRUE(shapes() == before) << typed;
        settle();
        EXPECT_TRUE(shapes() == before) << typed;
    }
}

TEST_F(AdjustDesk, holdsAndGoesToTheNextOfTheWorkingOrder) {
    m_desk.enter("30.0");
    settle();
    place().holdAndNext();
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Hold);
    EXPECT_EQ(m_desk.project().branches().at(newest()->branch).tag, "T-01");
    EXPECT_NE(place().valve().branch(), idOf("T-01"));
    EXPECT_EQ(m_desk.bridge().selectedBranch(), place().valve().branch());
    EXPECT_TRUE(place().field()->hasFocus());
    // Nothing was read at the next valve: it cannot be held.
    const auto second = place().valve().branch();
    place().holdAndNext();
    EXPECT_EQ(place().valve().branch(), second);
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
    // Digits and Ctrl+Enter in one go.
    m_desk.type("28.0");
    place().holdAndNext();
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Hold);
    EXPECT_EQ(newest()->branch, *second);
}

TEST_F(AdjustDesk, readsTheReferenceOnceAndReturns) {
    place().readReference();
    m_desk.enter("22.2");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Reference);
    EXPECT_NE(newest()->branch, idOf("T-01"));
    EXPECT_EQ(place().valve().branch(), idOf("T-01"));
    m_desk.enter("30.0");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Try);
    EXPECT_EQ(newest()->branch, idOf("T-01"));
    place().readReference();
    m_desk.key(Qt::Key_Escape);
    m_desk.enter("30.5");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Try);
}

TEST_F(AdjustDesk, aDpAcrossTheShutValveChangesNoSetting) {
    place().readShutValve();
    m_desk.enter("95.0");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::ShutValve);
    EXPECT_DOUBLE_EQ(setting(), 4.0);
    EXPECT_TRUE(place().valve().tries().empty());
    const QString notice = m_desk.window.notice();
    EXPECT_TRUE(notice.contains("95.0 kPa is the head available")) << notice.toStdString();
    EXPECT_TRUE(notice.contains("back to 4.0")) << notice.toStdString();
    EXPECT_TRUE(support::textsOf(place()).replace(QChar(0xA0), ' ').contains("Shut: 95.0 kPa available."));
}

TEST_F(AdjustDesk, triesComeBackByUndoAndRedo) {
    const auto before = support::recordsOf(m_desk.project());
    for (int i = 0; i < 12; ++i) {
        m_desk.enter(QString::number(30 + i));
        EXPECT_TRUE(m_desk.bridge().undoLabel().contains(QString::number(30 + i)));
        EXPECT_TRUE(m_desk.bridge().undoLabel().contains("T-01"));
        m_desk.key(Qt::Key_Down);
    }
    const auto after = support::recordsOf(m_desk.project());
    for (int i = 0; i < 12; ++i) {
        ASSERT_TRUE(m_desk.bridge().undo().ok());
    }
    EXPECT_EQ(support::recordsOf(m_desk.project()), before);
    for (int i = 0; i < 12; ++i) {
        ASSERT_TRUE(m_desk.bridge().redo().ok());
    }
    EXPECT_EQ(support::recordsOf(m_desk.project()), after);
    EXPECT_EQ(m_desk.window.place(), MainWindow::Adjust);
}

TEST_F(AdjustDesk, theAimDigitsAreAsTallAsTheyMustBe) {
    // 22 arc minutes at two meters on a 14 inch panel: 57 px, own calculation.
    BigFigure figure("Aim");
    figure.setTokens(theme::tokens(theme::Display::Daylight));
    figure.show("52.3", {}, false);
    figure.resize(figure.sizeHint());
    QImage image(figure.size(), QImage::Format_ARGB32);
    image.fill(Qt::white);
    figure.render(&image);
    int top = image.height();
    int bottom = 0;
    // Below the head line: the digits alone.
    for (int y = QFontMetrics(figure.font()).height() + 1; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (qGray(image.pixel(x, y)) < 96) {
                top = std::min(top, y);
                bottom = std::max(bottom, y);
            }
        }
    }
    EXPECT_GE(bottom - top + 1, 57);
}

TEST_F(AdjustDesk, aimReadingWordAndSettingAreInSightTogether) {
    std::vector<QWidget*> shown;
    for (BigFigure* figure : place().findChildren<BigFigure*>()) {
        shown.push_back(figure);
    }
    ASSERT_EQ(shown.size(), 3U) << "setting, aim and reading";
    shown.push_back(place().findChild<WordSign*>());
    for (const QWidget* widget : shown) {
        EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect())
            << widget->accessibleName().toStdString();
    }
}

TEST_F(AdjustDesk, theFieldsAndHoldingAreInSightInLargeText) {
    m_desk.window.setTextPoints(15.0);  // 150 % on a laptop of 1366 x 768
    QTest::qWait(0);
    std::vector<QWidget*> shown{place().field(), place().findChild<WordSign*>()};
    for (QPushButton* button : place().findChildren<QPushButton*>()) {
        if (button->text().remove('&').startsWith("Hold Here")) {
            shown.push_back(button);
        }
    }
    for (BigFigure* figure : place().findChildren<BigFigure*>()) {
        shown.push_back(figure);
    }
    ASSERT_EQ(shown.size(), 6U) << "field, word, holding, setting, aim and reading";
    for (const QWidget* widget : shown) {
        EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect())
            << widget->accessibleName().toStdString();
    }
}

TEST_F(AdjustDesk, showsFiveNeighborsAndTheAimOfEach) {
    m_desk.key(Qt::Key_PageDown);
    const auto& rows = place().valve().rows();
    ASSERT_EQ(rows.size(), 5U);
    for (std::size_t i = 1; i < rows.size(); ++i) {
        EXPECT_GT(rows[i].setting, rows[i - 1].setting);
        EXPECT_LT(rows[i].dp, rows[i - 1].dp);  // the wider the valve, the less dp for the same flow
    }
    AimStripModel model(m_desk.bridge(), place().valve());
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.currentColumn(), 2);
    const QString spoken = model.index(AimStripModel::AimRow, 2).data(Qt::AccessibleTextRole).toString();
    EXPECT_TRUE(spoken.contains("setting 3") && spoken.contains("aim kPa")) << spoken.toStdString();
    EXPECT_FALSE(basisWords(m_desk.bridge(), place().valve()).front().isEmpty());
}

TEST_F(AdjustDesk, takingAdviceStoresNothing) {
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_NE(picture, nullptr);
    ASSERT_FALSE(picture->advice.settings.empty());
    EXPECT_TRUE(place().advice()->words().contains("unverified")) << place().advice()->words().toStdString();
    AdviceModel& model = *place().advice()->model();
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto before = support::recordsOf(m_desk.project());
    place().goToAdvice();
    ASSERT_TRUE(place().advice()->table()->hasFocus());
    // The valve that is throttled most: fully open it is far from holding.
    int row = 0;
    for (int i = 1; i < model.rowCount(); ++i) {
        row = model.at(i).setting < model.at(row).setting ? i : row;
    }
    place().advice()->table()->selectRow(row);
    m_desk.key(Qt::Key_Return);
    EXPECT_EQ(place().valve().branch(), model.branchAt(row));
    EXPECT_NEAR(setting(), model.at(row).setting.si(), 1e-9);
    EXPECT_EQ(support::recordsOf(m_desk.project()), before);
    EXPECT_TRUE(place().field()->hasFocus());
}

TEST_F(AdjustDesk, theWordAndTheAdviceNeverContradict) {
    // The throttled valve with the highest advised setting: there a step changes least.
    AdviceModel& model = *place().advice()->model();
    int row = -1;
    for (int i = 0; i < model.rowCount(); ++i) {
        const bool isBetter = row < 0 || model.at(i).setting > model.at(row).setting;
        row = !model.at(i).isFullyOpen && isBetter ? i : row;
    }
    ASSERT_GE(row, 0);
    const base::Id branch = model.branchAt(row);
    const balancing::SettingAdvice advised = model.at(row);
    place().showBranch(branch);
    // One step beside the advised setting, on the side where the exact one lies, read as the loop expects.
    const double step = place().valve().step().si();
    place().stepSetting(static_cast<int>(std::lround((advised.setting.si() - setting()) / step)) +
                        (advised.exact > advised.setting ? 1 : -1));
    const auto& rows = place().valve().rows();
    const auto here = std::find_if(rows.begin(), rows.end(), [&](const balancing::AimRow& each) {
        return std::abs((each.setting - place().valve().setting()).si()) < 1e-9;
    });
    ASSERT_NE(here, rows.end());
    const auto expected = place().valve().expected()[static_cast<std::size_t>(here - rows.begin())];
    ASSERT_TRUE(expected.has_value());
    place().takeFocus();
    m_desk.enter(QString::number(expected->in(quantity::Unit::Kilopascal), 'f', 2));
    settle();
    ASSERT_EQ(place().valve().word(), balancing::AimWord::Hold);
    const auto& beside = place().valve().besideAdvice();
    ASSERT_TRUE(beside.has_value());
    const int now = model.rowOf(branch);
    ASSERT_GE(now, 0);
    const bool isElsewhere = std::abs((model.at(now).setting - place().valve().setting()).si()) >
                             model.at(now).step.si() / 2 + 1e-9;
    EXPECT_EQ(beside->reason.has_value(), isElsewhere);
    const QString remark = model.index(now, AdviceModel::Note).data().toString();
    EXPECT_EQ(remark == "leave it" || remark == "hold for now", isElsewhere) << remark.toStdString();
    EXPECT_NE(model.index(now, AdviceModel::SetTo).data(Qt::FontRole).value<QFont>().bold(), isElsewhere);
    // The line of the next setting names no other one without saying why HOLD stands.
    const QString said = proposalWords(m_desk.bridge(), place().valve());
    EXPECT_TRUE(said.startsWith("On share")) << said.toStdString();
    if (isElsewhere) {
        EXPECT_TRUE(place().advice()->words().contains("On share at"))
            << place().advice()->words().toStdString();
    }
    // The advised setting is not taken while the valve holds at another one, and the menu says so.
    const QAction* take = m_desk.window.commands().takeAdvice;
    EXPECT_EQ(take->isEnabled(), !isElsewhere);
    EXPECT_EQ(take->text().contains("on share"), isElsewhere) << take->text().toStdString();
    const double stands = setting();
    place().takeAdvice();
    EXPECT_EQ(m_desk.window.notice().contains("On share at"), isElsewhere)
        << m_desk.window.notice().toStdString();
    EXPECT_NEAR(setting(), isElsewhere ? stands : model.at(now).setting.si(), 1e-9);
    place().stepSetting(static_cast<int>(std::lround((stands - setting()) / step)));
    place().takeFocus();
    // Once held, the row says so when another valve is in hand.
    place().holdAndNext();
    settle();
    ASSERT_NE(place().valve().branch(), branch);
    const int later = model.rowOf(branch);
    EXPECT_EQ(model.index(later, AdviceModel::Note).data().toString(),
              model.at(later).isSet ? "set" : "held");
}

TEST_F(AdjustDesk, theHandThatTypesIsNotDisturbedByWhatIsLearned) {
    m_desk.enter("300");
    m_desk.type("4");
    settle();
    EXPECT_EQ(place().field()->text(), "4");
    m_desk.key(Qt::Key_Escape);
    EXPECT_TRUE(place().field()->text().isEmpty());
    EXPECT_TRUE(m_desk.window.advisor().isCurrent());
}

TEST(AdjustPlace, withoutARoundSaysWhatToReadFirst) {
    support::WalkJobOptions options;
    options.hasSurvey = false;
    DeskWindow desk(options, false);
    desk.window.showPlace(MainWindow::Adjust);
    bool isSaid = false;
    for (const QLabel* label : desk.window.adjust()->findChildren<QLabel*>("empty_state")) {
        isSaid = isSaid || (label->isVisible() && label->text().contains("round first"));
    }
    EXPECT_TRUE(isSaid);
}

}  // namespace
}  // namespace ww::ui
