// The window in each language: nothing is cut that is whole in English, keys of menus are unique, numbers are
// typed alike, and a layout from right to left stands.
#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QPushButton>
#include <QRegularExpression>
#include <QStandardItemModel>
#include <QTableView>
#include <QTableWidget>
#include <set>

#include "tests/ui/languages/translation_file.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/spoken.h"
#include "ui/delegates/branch_delegate.h"
#include "ui/key_list.h"
#include "ui/models/branch_roles.h"
#include "ui/places/job/job_place.h"
#include "ui/places/pump/pump_place.h"
#include "ui/text/label.h"
#include "ui/text/parse.h"
#include "ui/text/typed_word.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using support::Spoken;

constexpr MainWindow::Place kAllPlaces[] = {MainWindow::Job,    MainWindow::System, MainWindow::Walk,
                                            MainWindow::Adjust, MainWindow::Pump,   MainWindow::Review,
                                            MainWindow::Report};

/// Calls `see` for every place and every page of Pump, shown and laid out.
template <class See>
void eachView(DeskWindow& desk, See see) {
    for (const MainWindow::Place place : kAllPlaces) {
        desk.window.showPlace(place);
        const auto pump =
            place == MainWindow::Pump ? desk.window.findChildren<PumpPlace*>() : QList<PumpPlace*>();
        for (int page = 0; page < (pump.isEmpty() ? 1 : int(PumpPlace::PageCount)); ++page) {
            if (!pump.isEmpty()) {
                pump.front()->showPage(static_cast<PumpPlace::Page>(page));
            }
            QTest::qWait(20);
            see(QStringLiteral("place %1, page %2").arg(place).arg(page));
        }
    }
}

TEST(LanguageWindows, speakTheirLanguage) {
    const Spoken spoken(QStringLiteral("de"));
    DeskWindow desk;
    EXPECT_EQ(desk.window.menuBar()->actions().front()->text(), QStringLiteral("&Datei"));
    EXPECT_EQ(text::word(balancing::State::Drifted), QStringLiteral("Abgedriftet"));
    const base::MessageForm form{"no_such_file", "there is no such file; check its name and folder"};
    EXPECT_EQ(text::sentence({&form, {}, {}}),
              QStringLiteral("Diese Datei gibt es nicht; prüfen Sie Namen und Ordner."));
}

// A word of the program inside a sentence is translated, a name that somebody gave is not.
TEST(LanguageWindows, translateWordsAndLeaveNames) {
    const Spoken spoken(QStringLiteral("de"));
    const base::MessageForm form{"name_taken", "there is a {1w} of this name already; choose another name"};
    EXPECT_TRUE(text::text({&form, "pump", {"pump"}}).startsWith(QStringLiteral("pump: ")));
    EXPECT_TRUE(text::text({&form, "pump", {"pump"}}).contains(QStringLiteral("(Pumpe)")));
    EXPECT_EQ(text::terms(QStringLiteral("measured, round 3")), QStringLiteral("gemessen, Runde 3"));
    EXPECT_EQ(text::terms(QStringLiteral("12 min ago")), QStringLiteral("12 min zuvor"));
    EXPECT_EQ(text::terms(QStringLiteral("4 days")), QStringLiteral("4 Tage"));
    EXPECT_EQ(text::terms(QStringLiteral("3 months ago")), QStringLiteral("3 Monate zuvor"));
    EXPECT_EQ(text::terms(QStringLiteral("T-04")), QStringLiteral("T-04"));
}

// The usual list stands in the record in English and is read in the language of the screen; what is typed
// over a line of it is the words of whoever typed it.
TEST(LanguageWindows, sayTheUsualReadinessInTheirLanguage) {
    const Spoken spoken(QStringLiteral("de"));
    DeskWindow desk({.terminals = 3, .hasSurvey = false}, false);
    desk.window.showPlace(MainWindow::Job);
    ReadinessPage* page = desk.window.job()->readiness();
    for (QPushButton* button : page->findChildren<QPushButton*>()) {
        if (button->text() == ReadinessPage::tr("Take Usual List")) {
            button->click();
        }
    }
    const auto stored = [&](int row) {
        for (const project::ReadinessLine& line : desk.project().readiness()) {
            if (line.position == row + 1) {
                return line.text;
            }
        }
        return std::string();
    };
    const std::string english = "Bypasses are closed";
    const QString german = text::term(english);
    ASSERT_NE(german.toStdString(), english);
    RecordTableModel* model = page->model();
    int row = 0;
    while (row < model->rowCount() && stored(row) != english) {
        ++row;
    }
    const QModelIndex cell = model->index(row, ReadinessPage::Line);
    ASSERT_EQ(cell.data().toString(), german);
    // Entered as it was shown it is what it was.
    ASSERT_TRUE(model->store(cell, german).ok());
    EXPECT_EQ(stored(row), english);
    const base::Outcome refused = desk.bridge().openRound(project::RoundKind::Survey);
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(text::text(refused.fault()).contains(model->index(0, ReadinessPage::Line).data().toString()));
    EXPECT_TRUE(text::label("readiness: " + english).contains(german));
    const QString typed = QStringLiteral("Umgehungen sind zu, Pumpe steht");
    ASSERT_TRUE(model->store(cell, typed).ok());
    EXPECT_EQ(stored(row), typed.toStdString());
    EXPECT_EQ(cell.data().toString(), typed);
}

TEST(LanguageWindows, takeWordsOfTheLanguageAndEnglishOnes) {
    const Spoken spoken(QStringLiteral("fr"));
    project::ReadinessState state = project::ReadinessState::Open;
    EXPECT_TRUE(text::takeWord(state, QStringLiteral("fa")));
    EXPECT_EQ(state, project::ReadinessState::Done);
    EXPECT_TRUE(text::takeWord(state, QStringLiteral("does")));
    EXPECT_EQ(state, project::ReadinessState::DoesNotApply);
    EXPECT_FALSE(text::takeWord(state, QStringLiteral("zzz")));
    EXPECT_EQ(text::takeYesOrNo(QStringLiteral("o")), true);
    EXPECT_EQ(text::takeYesOrNo(QStringLiteral("n")), false);
}

void expectUniqueKeys(const QList<QAction*>& actions, const QString& where) {
    std::set<QChar> keys;
    for (const QAction* action : actions) {
        const qsizetype mark =
            QString(action->text()).replace(QStringLiteral("&&"), QStringLiteral("__")).indexOf('&');
        if (mark >= 0 && action->isVisible()) {
            const QChar key = action->text()[mark + 1].toLower();
            EXPECT_TRUE(keys.insert(key).second)
                << where.toStdString() << ": " << action->text().toStdString() << " shares its key";
        }
        if (action->menu() != nullptr) {
            expectUniqueKeys(action->menu()->actions(), where + " " + action->text());
        }
    }
}

TEST(LanguageWindows, giveEveryMenuKeysOfItsOwn) {
    for (const QString& code : QStringList{QStringLiteral("en")} + translatedCodes()) {
        const Spoken spoken(code);
        DeskWindow desk;
        expectUniqueKeys(desk.window.menuBar()->actions(), code);
    }
}

/// The keys that a text names: "Ctrl+Shift+N", "Alt+2".
QStringList chordsIn(const QString& text) {
    static const QRegularExpression kChord(
        QStringLiteral("(?:(?:Ctrl|Alt|Shift)\\+)+(?:[A-Z][a-z]+|[A-Z0-9])"));
    QStringList chords;
    for (auto match = kChord.globalMatch(text); match.hasNext();) {
        chords << match.next().captured();
    }
    return chords;
}

// What a menu and the list of keys write is what messages tell to press.
TEST(LanguageWindows, writeKeysInMenusAsInMessages) {
    for (const QString& code : translatedCodes()) {
        const Spoken spoken(code);
        std::set<QString> seen;
        for (const TranslatedMessage& message : readTranslations(translationPath(code))) {
            for (const QString& chord : chordsIn(message.source)) {
                const QString shown = QKeySequence(chord).toString(QKeySequence::NativeText);
                seen.insert(shown);
                for (const QString& form : message.forms) {
                    EXPECT_TRUE(form.contains(shown)) << code.toStdString() << ", " << shown.toStdString()
                                                      << " is not in: " << form.toStdString();
                }
            }
        }
        EXPECT_GT(seen.size(), 20U);
    }
}

TEST(LanguageWindows, nameEveryKeyOfACommandOnce) {
    const Spoken spoken(QStringLiteral("fr"));
    DeskWindow desk;
    const KeyList list(desk.window.commands(), nullptr);
    const auto* table = list.findChild<QTableWidget*>();
    bool isFound = false;
    for (int row = 0; row < table->rowCount(); ++row) {
        isFound = isFound || table->item(row, 1)->text() == QStringLiteral("Ctrl+Entrée");
    }
    EXPECT_TRUE(isFound) << "of Return and Enter";
}

// A round is of another gender than a line of the readiness in some languages.
TEST(LanguageWindows, giveARoundWordsOfItsOwnGender) {
    const Spoken spoken(QStringLiteral("es"));
    EXPECT_EQ(text::nameOf(project::RoundState::Closed), QStringLiteral("cerrada"));
    EXPECT_EQ(text::nameOf(project::RoundState::SentBack), QStringLiteral("devuelta"));
    EXPECT_EQ(text::nameOf(project::ReadinessState::Open), QStringLiteral("abierto"));
}

// A comma typed by hand is a decimal comma and a point a decimal point, whatever the language.
TEST(LanguageWindows, takeTheSameNumbers) {
    for (const QString& code : QStringList{QStringLiteral("en")} + translatedCodes()) {
        SCOPED_TRACE(code.toStdString());
        const Spoken spoken(code);
        for (const char* typed : {"12.5", "12,5"}) {
            const auto read = text::parseMeasured<quantity::PressureDifference>(QString::fromLatin1(typed),
                                                                                quantity::Unit::Kilopascal);
            ASSERT_TRUE(read.ok());
            EXPECT_DOUBLE_EQ(read->value.in(quantity::Unit::Kilopascal), 12.5);
        }
        DeskWindow desk;
        desk.enter(QStringLiteral("12,5"));
        desk.enter(QStringLiteral("12.5"));
        EXPECT_EQ(desk.stored("B-01"), desk.stored("B-02"));
        EXPECT_FALSE(desk.stored("B-01").empty());
        EXPECT_EQ(desk.storedCount(), 2);
    }
}

/// A cell as the tables draw it, with a painter of that direction.
QImage drawn(const QString& text, Qt::LayoutDirection direction) {
    QStandardItemModel model(1, 1);
    model.setData(model.index(0, 0), text, Qt::DisplayRole);
    QImage image(160, 30, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setLayoutDirection(direction);
    QStyleOptionViewItem option;
    option.rect = image.rect();
    option.direction = direction;
    const BranchDelegate delegate;
    delegate.paint(&painter, option, model.index(0, 0));
    return image;
}

TEST(LanguageWindows, standFromRightToLeft) {
    QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        DeskWindow desk;
        EXPECT_EQ(desk.window.layoutDirection(), Qt::RightToLeft);
        eachView(desk, [&](const QString& view) {
            EXPECT_FALSE(desk.window.grab().isNull()) << view.toStdString();
            EXPECT_LE(desk.window.minimumSizeHint().width(), 1366) << view.toStdString();
        });
        desk.window.showPlace(MainWindow::Walk);
        desk.enter(QStringLiteral("12.5"));
        EXPECT_NE(desk.stored("B-01"), "");
    }
    EXPECT_EQ(drawn(QStringLiteral("-12.5 kPa"), Qt::RightToLeft),
              drawn(QStringLiteral("-12.5 kPa"), Qt::LeftToRight));
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

QString languageWith(const std::vector<std::pair<const char*, const char*>>& variables) {
    QProcessEnvironment environment;
    for (const auto& [name, value] : variables) {
        environment.insert(QLatin1String(name), QLatin1String(value));
    }
    return languageOf(environment);
}

// The order of the variables is that of gettext (GNU gettext manual, 2.3).
TEST(Languages, followTheSystem) {
    EXPECT_EQ(languageWith({{"LANG", "de_AT.UTF-8"}}), QStringLiteral("de"));
    EXPECT_EQ(languageWith({{"LANG", "fr_CA"}}), QStringLiteral("fr"));
    EXPECT_EQ(languageWith({{"LANG", "es_MX@euro"}}), QStringLiteral("es"));
    EXPECT_EQ(languageWith({{"LANG", "ja_JP.UTF-8"}}), QStringLiteral("en"));
    EXPECT_EQ(languageWith({{"LANG", "ja_JP.UTF-8"}, {"LANGUAGE", "ja:fr"}}), QStringLiteral("fr"));
    EXPECT_EQ(languageWith({{"LANG", "de_DE"}, {"LC_MESSAGES", "es_ES"}}), QStringLiteral("es"));
    EXPECT_EQ(languageWith({{"LANG", "de_DE"}, {"LC_MESSAGES", "es_ES"}, {"LC_ALL", "fr_FR"}}),
              QStringLiteral("fr"));
}

// The locale of POSIX speaks English, whatever else is asked for (gettext, POSIX XBD 8.2).
TEST(Languages, areEnglishUnderCAndPosix) {
    EXPECT_EQ(languageWith({}), QStringLiteral("en"));
    EXPECT_EQ(languageWith({{"LANG", "C"}, {"LANGUAGE", "de"}}), QStringLiteral("en"));
    EXPECT_EQ(languageWith({{"LANG", "C.UTF-8"}}), QStringLiteral("en"));
    EXPECT_EQ(languageWith({{"LANG", "de_DE"}, {"LC_ALL", "POSIX"}}), QStringLiteral("en"));
}

TEST(Languages, areRememberedAndAnUnknownOneIsEnglish) {
    support::TemporaryFolder folder;
    Preferences preferences(QString::fromStdString(folder.file("settings.ini")));
    EXPECT_TRUE(preferences.language().isEmpty());
    preferences.setLanguage(QStringLiteral("fr"));
    EXPECT_EQ(preferences.language(), QStringLiteral("fr"));
    const Spoken spoken(QStringLiteral("xx"));
    EXPECT_EQ(text::word(balancing::State::AtStop), QStringLiteral("At open stop"));
}

}  // namespace
}  // namespace ww::ui
