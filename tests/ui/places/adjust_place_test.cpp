#include "ui/places/adjust/adjust_place.h"

#include <gtest/gtest.h>

#include <QCloseEvent>
#include <QElapsedTimer>

#include "tests/support/whole_job.h"
#include "tests/ui/support/adjust_desk.h"
#include "tests/ui/support/pump_rig.h"
#include "ui/places/adjust/adjust_words.h"

// The source of these checks is the interaction design of this project: keys, words and counts are its own
// decisions; where a standard says the same it is named.
namespace ww::ui {
namespace {

using project::ReadingPurpose;
using support::AdjustDesk;
using support::DeskWindow;

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
    EXPECT_TRUE(place().findChildren<BigFigure*>().front()->accessibleDescription().contains("fully open"));
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
    EXPECT_TRUE(
        place().findChildren<BigFigure*>().front()->accessibleDescription().contains("lowest setting"));
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
    // Fully open, and the least of its group: the others are set to it.
    EXPECT_EQ(sign->word(), balancing::AimWord::Hold);
    EXPECT_TRUE(sign->accessibleDescription().contains("reference"))
        << sign->accessibleDescription().toStdString();
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

TEST_F(AdjustDesk, readingTheReferenceIsUnmistakable) {
    const auto* sign = place().findChild<WordSign*>();
    const auto all = [this] { return support::textsOf(place()).replace(QChar(0xA0), ' '); };
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_NE(picture, nullptr);
    const auto& settings = picture->advice.settings;
    const auto reference =
        std::find_if(settings.begin(), settings.end(), [](const auto& each) { return each.isReference; });
    ASSERT_NE(reference, settings.end());
    const QString tag = QString::fromStdString(m_desk.project().branches()[reference->branch].tag);
    const auto inHand =
        std::find_if(settings.begin(), settings.end(), [](const auto& each) { return !each.isReference; });
    const base::Id branch = m_desk.project().branches()[inHand->branch].id;
    place().showBranch(branch);
    place().readReference();
    EXPECT_TRUE(place().field()->hasFocus());
    EXPECT_TRUE(all().contains("Reference " + tag)) << all().toStdString();
    EXPECT_TRUE(all().contains("comes back")) << all().toStdString();
    EXPECT_TRUE(sign->accessibleDescription().contains("REFERENCE"))
        << sign->accessibleDescription().toStdString();
    EXPECT_TRUE(place().field()->property("inverse").toBool());
    EXPECT_TRUE(place().field()->accessibleName().contains(tag));
    m_desk.key(Qt::Key_Escape);
    EXPECT_FALSE(place().field()->property("inverse").toBool());
    EXPECT_FALSE(all().contains("Reference " + tag)) << all().toStdString();
    EXPECT_FALSE(sign->accessibleDescription().contains("REFERENCE"));
    place().readReference();
    m_desk.enter("30.0");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Reference);
    EXPECT_EQ(newest()->branch, m_desk.project().branches()[reference->branch].id);
    EXPECT_FALSE(place().field()->property("inverse").toBool()) << "back at the valve in hand";
    EXPECT_EQ(place().valve().branch(), branch);
    place().readShutValve();
    EXPECT_TRUE(sign->accessibleDescription().contains("SHUT"));
    EXPECT_TRUE(all().contains("back to")) << all().toStdString();
}

TEST_F(AdjustDesk, aUnitThatWasCorrectedIsNotDoubtedAgain) {
    for (const char* tag : {"T-01", "T-02"}) {
        place().showBranch(idOf(tag));
        m_desk.enter(QString::number(place().valve().last()->dp.in(quantity::Unit::Kilopascal), 'f', 1));
    }
    place().showBranch(idOf("T-03"));
    // The digits of another unit: with the one of the round they are far from what was read before.
    m_desk.enter(QString::number(place().valve().last()->dp.in(quantity::Unit::Psi), 'f', 2));
    ASSERT_TRUE(m_desk.window.notice().contains("Ctrl+U")) << m_desk.window.notice().toStdString();
    place().takeFix();
    ASSERT_EQ(newest()->dp->unit, quantity::Unit::Psi);
    EXPECT_FALSE(m_desk.window.notice().contains("psi")) << m_desk.window.notice().toStdString();
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
