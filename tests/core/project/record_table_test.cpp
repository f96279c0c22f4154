// A table of records and its copies, which share what neither has changed.
#include "core/project/record_table.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/project/records.h"
#include "tests/support/counting_ids.h"

namespace ww::project {
namespace {

/// People called "0", "1", ... more than one part of the table holds.
struct People {
    support::CountingIds ids;
    RecordTable<Person> table;
    std::vector<base::Id> order;

    explicit People(int count = 300) {
        for (int i = 0; i < count; ++i) {
            Person person;
            person.id = ids.next();
            person.name = std::to_string(i);
            order.push_back(person.id);
            table.put(person);
        }
    }
};

Person renamed(Person person, const std::string& name) {
    person.name = name;
    return person;
}

std::string namesOf(const RecordTable<Person>& table) {
    std::string names;
    for (const Person& person : table) {
        names += person.name + ' ';
    }
    return names;
}

TEST(RecordTable, isWalkedInTheOrderOfEntryAndFoundById) {
    const People people;
    ASSERT_EQ(people.table.size(), 300U);
    for (std::size_t i = 0; i < people.order.size(); ++i) {
        EXPECT_EQ(people.table[i].id, people.order[i]);
        EXPECT_EQ(people.table.indexOf(people.order[i]), i);
        EXPECT_EQ(people.table.at(people.order[i]).name, std::to_string(i));
    }
    EXPECT_EQ(std::distance(people.table.begin(), people.table.end()), 300);
    EXPECT_EQ(std::find_if(people.table.begin(), people.table.end(),
                           [](const Person& person) { return person.name == "77"; }) -
                  people.table.begin(),
              77);
}

TEST(RecordTable, aRecordThatIsPutAgainStaysInItsPlace) {
    People people;
    people.table.put(renamed(people.table[64], "new"));
    EXPECT_EQ(people.table.size(), 300U);
    EXPECT_EQ(people.table[64].name, "new");
}

TEST(RecordTable, whatStandsBehindARecordTakenOutMovesUp) {
    for (const std::size_t gap : {0U, 1U, 63U, 64U, 65U, 127U, 128U, 298U, 299U}) {
        People people;
        people.table.erase(people.order[gap]);
        people.order.erase(people.order.begin() + static_cast<std::ptrdiff_t>(gap));
        ASSERT_EQ(people.table.size(), 299U);
        for (std::size_t i = 0; i < people.order.size(); ++i) {
            EXPECT_EQ(people.table[i].id, people.order[i]) << gap;
            EXPECT_EQ(people.table.indexOf(people.order[i]), i) << gap;
        }
        Person last;
        last.id = people.ids.next();
        people.table.put(last);
        EXPECT_EQ(people.table.indexOf(last.id), 299U);
    }
}

TEST(RecordTable, takenEmptyItTakesRecordsAgain) {
    People people(65);
    for (auto id = people.order.rbegin(); id != people.order.rend(); ++id) {
        people.table.erase(*id);
        EXPECT_FALSE(people.table.contains(*id));
    }
    EXPECT_TRUE(people.table.empty());
    EXPECT_EQ(people.table.begin(), people.table.end());
    Person one;
    one.id = people.ids.next();
    people.table.put(one);
    EXPECT_EQ(people.table.size(), 1U);
}

TEST(RecordTable, aCopyKeepsWhatItWasWhateverBecomesOfTheOther) {
    People people;
    const RecordTable<Person> copy = people.table;
    const std::string before = namesOf(copy);
    people.table.put(renamed(people.table[5], "other"));
    people.table.erase(people.order[100]);
    Person more;
    more.id = people.ids.next();
    people.table.put(more);
    EXPECT_EQ(namesOf(copy), before);
    EXPECT_EQ(copy.indexOf(people.order[299]), 299U);
    EXPECT_FALSE(copy.contains(more.id));
    RecordTable<Person> other = copy;
    other.put(renamed(other[299], "last"));
    EXPECT_EQ(namesOf(copy), before);
    EXPECT_EQ(other[299].name, "last");
}

TEST(RecordTable, aCopySharesWhatNeitherChanges) {
    People people;
    const RecordTable<Person> copy = people.table;
    people.table.put(renamed(people.table[0], "other"));
    EXPECT_NE(&people.table[0], &copy[0]);
    EXPECT_EQ(&people.table[299], &copy[299]) << "a change costs what stands beside it, not the table";
}

}  // namespace
}  // namespace ww::project
