// Two copies of a job that come together, for tests of merging.
#pragma once

#include <gtest/gtest.h>

#include <map>
#include <set>

#include "core/workbook/cell_history.h"
#include "core/workbook/workbook.h"
#include "tests/support/two_laptops.h"

namespace ww::workbook {

class Merge : public testing::Test {
  protected:
    MergeReport merge(support::Laptop& into, const std::string& file) {
        auto report = into.job->merge(m_two.fileOf(file));
        EXPECT_TRUE(report.ok()) << base::englishWithSubject(report.ok() ? base::Fault{} : report.fault());
        return report ? std::move(*report) : MergeReport{};
    }
    MergeReport mergeBIntoA() { return merge(a, "b"); }
    /// The chain and every row, as `verify` sees them.
    void expectIntact(const std::string& file) {
        const auto verification = verify(m_two.fileOf(file));
        ASSERT_TRUE(verification.ok());
        for (const base::Fault& finding : verification->findings) {
            ADD_FAILURE() << base::english(finding);
        }
    }
    static const project::MergeConflict* conflictOf(const std::vector<project::MergeConflict>& conflicts,
                                                    const std::string& place) {
        for (const project::MergeConflict& conflict : conflicts) {
            if (conflict.place == place) {
                return &conflict;
            }
        }
        return nullptr;
    }
    using Values = std::set<std::string>;

    /// The dp of every reading of a branch in the last round, struck ones among them.
    static Values valuesOf(const support::Laptop& laptop, const std::string& tag) {
        Values values;
        for (const std::size_t index : laptop.project().readingsOf(laptop.project().lastRound()->id)) {
            const project::Reading& reading = laptop.project().readings()[index];
            if (reading.branch == laptop.branch(tag).id) {
                values.insert(reading.dp->digits.text());
            }
        }
        return values;
    }
    /// That the history of a branch tells of both values who stored them and when, and that one was struck.
    void expectInHistory(const std::string& tag, const std::string& ours, const std::string& theirs,
                         bool isTheirsStruck) {
        const auto history = cellHistory(*a.job, a.branch(tag).id);
        ASSERT_TRUE(history.ok());
        std::map<std::string, const CellValue*> first;
        std::map<std::string, project::ReadingStatus> last;
        for (const CellValue& value : *history) {
            first.emplace(value.reading.dp->digits.text(), &value);
            last[value.reading.dp->digits.text()] = value.reading.status;
        }
        ASSERT_TRUE(first.contains(ours) && first.contains(theirs));
        EXPECT_EQ(first[ours]->person, "A. Fields");
        EXPECT_EQ(first[theirs]->person, "K. Meyer");
        EXPECT_EQ(first[ours]->stored, m_stored[ours]);
        EXPECT_EQ(first[theirs]->stored, m_stored[theirs]);
        EXPECT_EQ(last[ours],
                  isTheirsStruck ? project::ReadingStatus::Standing : project::ReadingStatus::Struck);
        EXPECT_EQ(last[theirs],
                  isTheirsStruck ? project::ReadingStatus::Struck : project::ReadingStatus::Standing);
    }
    void expectNothingToDo(support::Laptop& into, const std::string& file) {
        const std::size_t before = into.job->journal().size();
        EXPECT_EQ(merge(into, file).actions, 0u);
        EXPECT_EQ(into.job->journal().size(), before);
    }

    std::map<std::string, base::Instant> m_stored;  ///< when which dp was stored, by its digits
    support::TwoLaptops m_two;
    support::Laptop& a = m_two.a;
    support::Laptop& b = m_two.b;
};

}  // namespace ww::workbook
