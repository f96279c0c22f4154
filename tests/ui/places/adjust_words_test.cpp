// The sentences of the place Adjust say one thing in every state: word, note, line of the share, what the aim
// rests on, what to do next. The rules are this program's own decisions; no outside source.
#include <QRegularExpression>
#include <iostream>

#include "tests/ui/support/adjust_desk.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using balancing::AimWord;
using support::DeskWindow;
using support::SolvedJob;

/// The loop of six terminals, with its pump, from which everything is learned, or without: then the aim rests
/// on the reference or on the others.
project::Edit content(bool hasPump) {
    project::Edit edit = SolvedJob(6).content();
    std::erase_if(edit.put, [&](const project::AnyRecord& record) {
        return !hasPump && std::holds_alternative<project::Pump>(record);
    });
    return edit;
}

class AdjustWords : public ::testing::TestWithParam<bool> {
  protected:
    AdjustWords() : m_desk(content(GetParam()), false) {
        m_desk.window.showPlace(MainWindow::Adjust);
        settle();
    }
    AdjustPlace& place() { return *m_desk.window.adjust(); }
    base::Id idOf(const std::string& tag) { return m_desk.project().branchTagged(tag)->id; }
    double setting() { return place().valve().setting().si(); }
    void settle() {
        QElapsedTimer time;
        time.start();
        while (m_desk.window.advisor().isComputing() && time.elapsed() < 60'000) {
            QTest::qWait(5);
        }
    }
    /// Everything that tells the hand something, as it stands now; adds what contradicts.
    void look(const QString& how) {
        const ValveInHand& valve = place().valve();
        const auto word = valve.word();
        const QString state = stateWords(m_desk.bridge(), valve);
        const QString basis = basisWords(m_desk.bridge(), valve).join(' ');
        const QString note = wordNote(m_desk.bridge(), valve);
        const QString next = proposalWords(m_desk.bridge(), valve, true);
        const QString all =
            QStringLiteral("%1 | %2 | %3 | %4 | %5 | %6")
                .arg(how, word ? text::word(*word) : QStringLiteral("none"), note, next, state, basis);
        m_seen << all;
        const auto has = [](const QString& text, const char* pattern) {
            return QRegularExpression(pattern, QRegularExpression::CaseInsensitiveOption)
                .match(text)
                .hasMatch();
        };
        EXPECT_FALSE(
            has(state + basis, "leave it|turn until|turn by|follow the word|hold here|open it|close it"))
            << "the hand is told by the word alone: " << all.toStdString();
        EXPECT_FALSE(next.isEmpty()) << all.toStdString();
        if (!word) {
            return;
        }
        switch (*word) {
            case AimWord::Hold:
                EXPECT_FALSE(has(next, "^(try|turn|open|close|read)")) << all.toStdString();
                EXPECT_FALSE(has(note, "too (much|little)|not read|turn it")) << all.toStdString();
                break;
            case AimWord::AtStop:
                EXPECT_TRUE(has(next, "^(hold it here|leave it at its stop)")) << all.toStdString();
                break;
            case AimWord::Open:
            case AimWord::Close:
                EXPECT_FALSE(has(next, "^(leave it|read|hold at)")) << all.toStdString();
                EXPECT_FALSE(has(note, "it fits")) << all.toStdString();
                turnsAsTheWordSays(next, *word, all);
                break;
            case AimWord::ReadAgain:
                EXPECT_FALSE(has(next, "^(try|turn|leave it)")) << all.toStdString();
                break;
        }
    }
    /// A setting that is named as the next one lies where the word turns to.
    void turnsAsTheWordSays(const QString& next, AimWord word, const QString& all) {
        const auto named =
            QRegularExpression(QStringLiteral("^(?:Try|Turn it to|Open it to) ([0-9.]+)")).match(next);
        if (named.hasMatch()) {
            const double to = named.captured(1).toDouble();
            EXPECT_EQ(to > setting(), word == AimWord::Open) << all.toStdString();
            EXPECT_NE(to, setting()) << all.toStdString();
        }
    }
    void enterTimes(double factor) {
        const auto& last = place().valve().last();
        const auto& row = place().valve().row();
        if (!last || !row) {
            return;
        }
        m_desk.enter(QString::number(std::max(0.1, factor * row->dp.in(quantity::Unit::Kilopascal)), 'f', 1));
        settle();
    }

    DeskWindow m_desk;
    QStringList m_seen;
};

TEST_P(AdjustWords, agreeInEveryState) {
    for (int valve = 1; valve <= 6; ++valve) {
        place().showBranch(idOf(SolvedJob::tagOf(valve)));
        settle();
        place().takeFocus();
        look("untried");
        m_desk.key(Qt::Key_PageDown);
        look("moved");
        for (const double factor : {0.4, 0.8, 1.0, 1.05, 1.3, 2.2}) {
            enterTimes(factor);
            look(QStringLiteral("read at %1 of the aim").arg(factor));
            m_desk.key(factor < 1 ? Qt::Key_Up : Qt::Key_Down);
            look("moved by a step");
        }
        for (int step = 0; step < 4; ++step) {
            m_desk.key(Qt::Key_PageUp);
        }
        look("moved to the stop");
        enterTimes(0.7);
        look("short at the stop");
        enterTimes(1.0);
        look("right at the stop");
        m_desk.enter("0.2");
        settle();
        look("below what can be read");
        for (int step = 0; step < 5; ++step) {
            m_desk.key(Qt::Key_PageDown);
        }
        look("shut");
        m_desk.key(Qt::Key_Up);
        look("nearly shut");
    }
    if (qEnvironmentVariableIsSet("WW_SHOW_WORDS")) {
        std::cout << m_seen.join('\n').toStdString() << '\n';
    }
}

INSTANTIATE_TEST_SUITE_P(WithAndWithoutAdvice, AdjustWords, ::testing::Bool());

}  // namespace
}  // namespace ww::ui
