// What core says and the desktop shows, in every language: labels of the journal, names of fluids, units.
// That a text is translated is checked; the words themselves are common practice of the trade, no source.
#include <gtest/gtest.h>

#include <map>

#include "core/fluid/fluid.h"
#include "core/project/edit_label.h"
#include "core/project/names.h"
#include "core/store/record_fields.h"
#include "core/store/review_fields.h"
#include "core/workbook/merge_settlement.h"
#include "tests/ui/languages/translation_file.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/spoken.h"
#include "ui/places/job/job_edit.h"
#include "ui/places/pump/pump_fields.h"
#include "ui/places/system/valve_fields.h"
#include "ui/text/column_words.h"
#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/text/label.h"
#include "ui/text/parse.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using support::Spoken;

/// The finished translations of a context, by their English.
std::map<std::string, QString> finishedTexts(const QString& code, const QString& context) {
    std::map<std::string, QString> texts;
    for (const TranslatedMessage& message : readTranslations(translationPath(code))) {
        if (message.context == context && !message.isUnfinished && !message.forms.isEmpty()) {
            texts[message.source.toStdString()] = message.forms.front();
        }
    }
    return texts;
}

TEST(JournalLabels, areTranslatedIntoEveryLanguage) {
    for (const QString& code : translatedCodes()) {
        SCOPED_TRACE(code.toStdString());
        const auto texts = finishedTexts(code, QStringLiteral("Message"));
        for (const base::MessageForm* form : project::labelForms()) {
            const auto found = texts.find(std::string(form->text));
            ASSERT_NE(found, texts.end()) << form->text;
            EXPECT_FALSE(found->second.isEmpty()) << form->text;
        }
    }
}

// The fields whose titles stand in labels.
TEST(JournalLabels, nameTheirFieldsInEveryLanguage) {
    std::vector<std::string> titles;
    for (const auto& field : pumpFields()) {
        titles.push_back(field.title.english);
    }
    for (const auto& field : valveFields()) {
        titles.push_back(field.title.english);
    }
    for (int field = 0; field <= static_cast<int>(JobField::CodeException); ++field) {
        titles.emplace_back(jobFieldName(static_cast<JobField>(field)));
    }
    for (const QString& code : translatedCodes()) {
        const auto texts = finishedTexts(code, QStringLiteral("Term"));
        for (const std::string& title : titles) {
            EXPECT_TRUE(texts.contains(title)) << code.toStdString() << ": " << title;
        }
    }
}

TEST(JournalLabels, areShownInTheLanguageOfTheReader) {
    const Spoken spoken(QStringLiteral("de"));
    EXPECT_EQ(text::label("open round 3"), QStringLiteral("Runde 3 öffnen"));
    EXPECT_TRUE(text::label("comment on B-05, DP, round 3").contains(QStringLiteral("Runde 3")));
    const QString field = text::label("rated speed of P-1");
    EXPECT_TRUE(field.contains(QStringLiteral("Nenndrehzahl")) && field.contains(QStringLiteral("P-1")))
        << field.toStdString();
    EXPECT_EQ(text::label("what another program wrote"), QStringLiteral("what another program wrote"));
}

// The record is one for all laptops: stored in English, whatever language the screen speaks.
TEST(JournalLabels, stayEnglishInTheRecord) {
    const Spoken spoken(QStringLiteral("de"));
    DeskWindow desk;
    desk.enter(QStringLiteral("12.5"));
    const std::string stored = desk.bridge().workbook()->undoLabel().value_or("");
    const auto said = project::readLabel(stored);
    ASSERT_TRUE(said.has_value()) << stored;
    EXPECT_TRUE(said->is(project::labels::kDp));
    const QString shown = desk.bridge().undoLabel();
    EXPECT_EQ(shown, text::label(stored));
    EXPECT_TRUE(shown.contains(QStringLiteral("B-01"))) << shown.toStdString();
}

/// Takes the columns of a record.
struct ColumnNames {
    std::vector<std::string> names;

    template <class Record>
    void take(Record record) {
        store::fields(*this, record);
    }
    template <class Value>
    void field(const char* column, const Value&) {
        names.emplace_back(column);
    }
};

// Every column in which two laptops can differ has a title of its own, which begins with a capital.
TEST(ConflictTexts, nameEveryColumn) {
    ColumnNames columns;
    columns.take(project::Job{});
    columns.take(project::ValveModel{});
    columns.take(project::Branch{});
    columns.take(project::Pump{});
    columns.take(project::Instrument{});
    columns.take(project::Person{});
    columns.take(project::Round{});
    columns.take(project::Reading{});
    columns.take(project::PumpReading{});
    columns.take(project::SetPoint{});
    columns.take(project::ReadinessLine{});
    columns.take(project::Deficiency{});
    columns.take(project::Comment{});
    columns.take(project::Attachment{});
    columns.take(project::FindingReason{});
    for (const char* rows : {"valve_rows", "pump_rows", "job_load_rows", "round_sample", "earlier_designs"}) {
        columns.names.emplace_back(rows);
    }
    std::erase(columns.names, "id");
    ASSERT_GT(columns.names.size(), 100u);
    for (const std::string& column : columns.names) {
        EXPECT_TRUE(text::columnWords(column).at(0).isUpper()) << column;
    }
}

TEST(ConflictTexts, areShownInTheLanguageOfTheReader) {
    const Spoken spoken(QStringLiteral("de"));
    project::MergeConflict conflict;
    conflict.recordKind = project::RecordKind::Reading;
    conflict.field = workbook::kTwoReadingsField;
    conflict.place = "B-06, setting, round 2";
    conflict.ours = "30.5 kPa, setting 4";
    conflict.theirs = "cannot be read";
    const text::ConflictText shown = text::conflictText(conflict);
    EXPECT_TRUE(shown.place.startsWith(QStringLiteral("B-06, "))) << shown.place.toStdString();
    EXPECT_TRUE(shown.place.endsWith(QStringLiteral("Runde 2"))) << shown.place.toStdString();
    EXPECT_TRUE(shown.ours.startsWith(QStringLiteral("30.5 kPa, "))) << shown.ours.toStdString();
    for (const QString& text : {shown.place, shown.ours, shown.theirs}) {
        EXPECT_FALSE(text.contains(QStringLiteral("setting"), Qt::CaseInsensitive)) << text.toStdString();
        EXPECT_FALSE(text.contains(QStringLiteral("cannot"))) << text.toStdString();
    }
    const QString choice = text::label("choice of 1.5 m3/h, B-04, design flow");
    EXPECT_FALSE(choice.contains(QStringLiteral("design flow"))) << choice.toStdString();
    EXPECT_TRUE(choice.contains(QStringLiteral("B-04"))) << choice.toStdString();
    const text::ConflictDigits digits = text::conflictDigits(conflict);
    EXPECT_EQ(digits.ours, QStringLiteral("30.5"));
    EXPECT_EQ(digits.theirs, shown.theirs);
}

TEST(ConflictTexts, reasonsThatMergingWroteAreShownInTheLanguageOfTheReader) {
    const Spoken spoken(QStringLiteral("de"));
    const QString chosen = text::reason("not chosen when merging; 47.1 kPa, setting 4 was");
    EXPECT_TRUE(chosen.contains(QStringLiteral("47.1 kPa"))) << chosen.toStdString();
    const QString late = text::reason("not seen when round 3 was accepted on LT-2");
    EXPECT_TRUE(late.contains(QStringLiteral("LT-2"))) << late.toStdString();
    for (const QString& text : {chosen, late, text::reason("readings of the other laptop were taken in"),
                                text::reason("the same revision was signed on two laptops; the other one was "
                                             "chosen")}) {
        for (const char* english : {"setting", "merging", "accepted", "laptop", "chosen"}) {
            EXPECT_FALSE(text.contains(QLatin1String(english))) << text.toStdString();
        }
    }
    EXPECT_EQ(text::reason("strainer blocked"), "strainer blocked") << "what a person wrote stays";
}

TEST(ConflictTexts, theSubjectOfARefusedChoiceIsShownInTheLanguageOfTheReader) {
    const Spoken spoken(QStringLiteral("de"));
    const QString refused =
        text::text({&workbook::kChoiceSealed, "B-04, design flow, round 3", {"3", "accepted"}});
    EXPECT_TRUE(refused.startsWith(QStringLiteral("B-04, "))) << refused.toStdString();
    EXPECT_TRUE(refused.contains(QStringLiteral(", Runde 3: "))) << refused.toStdString();
    EXPECT_FALSE(refused.contains(QStringLiteral("design flow"))) << refused.toStdString();
}

// Speed as pumps and motors have it on their plates in each language (EN ISO 17769-1 writes the unit as 1/min
// or r/min; the other words are common practice). What is shown can be typed.
TEST(Revolutions, areShownAndTakenInEveryLanguage) {
    const auto taken = [](const char* typed) {
        const auto read = text::parseMeasured<quantity::RotationalSpeed>(QString::fromUtf8(typed),
                                                                         quantity::Unit::RevolutionPerMinute);
        EXPECT_TRUE(read.ok()) << typed;
        return read.ok() ? read->value.in(quantity::Unit::RevolutionPerMinute) : 0.0;
    };
    for (const char* typed : {"1451", "1451 rpm", "1451 1/min", "1451 U/min", "1451 tr/min", "1451/min"}) {
        EXPECT_DOUBLE_EQ(taken(typed), 1451) << typed;
    }
    EXPECT_FALSE(text::parseMeasured<quantity::RotationalSpeed>(QStringLiteral("1451 min"),
                                                                quantity::Unit::RevolutionPerMinute)
                     .ok());
    const std::pair<const char*, const char*> shown[] = {
        {"de", "1450 1/min"}, {"fr", "1450 tr/min"}, {"es", "1450 rpm"}};
    for (const auto& [code, words] : shown) {
        const Spoken spoken(QString::fromLatin1(code));
        EXPECT_EQ(text::withPrettyUnit(QStringLiteral("1450 rpm")), QString::fromLatin1(words));
        EXPECT_TRUE(QString::fromLatin1(words).endsWith(text::symbol(quantity::Unit::RevolutionPerMinute)));
    }
}

// The colon of a French sentence stands behind a space.
TEST(FaultTexts, haveTheColonOfTheLanguageBehindTheirSubject) {
    const base::MessageForm form{"labels_test_form",
                                 "there is a {1w} of this name already; choose another name"};
    const Spoken spoken(QStringLiteral("fr"));
    const QString said = text::text({&form, "P-1", {"pump"}});
    EXPECT_TRUE(said.startsWith(QStringLiteral("P-1\u00a0: "))) << said.toStdString();
}

TEST(FluidNames, areTranslatedInSentences) {
    for (const QString& code : translatedCodes()) {
        const Spoken spoken(code);
        const auto frozen = fluid::Fluid::make(fluid::FluidKind::EthyleneGlycol,
                                               quantity::Ratio::from(30, quantity::Unit::Percent),
                                               quantity::Temperature::from(140, quantity::Unit::Celsius));
        ASSERT_FALSE(frozen.ok());
        const QString said = text::text(frozen.fault());
        EXPECT_FALSE(said.contains(QStringLiteral("ethylene"))) << said.toStdString();
    }
    const Spoken spoken(QStringLiteral("de"));
    EXPECT_EQ(text::term(project::name(fluid::FluidKind::PropyleneGlycol)), QStringLiteral("Propylenglykol"));
}

}  // namespace
}  // namespace ww::ui
