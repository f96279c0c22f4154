// When a round was walked, who took part in it, and what in it waits. Own cases.
#include "core/project/review.h"

#include <gtest/gtest.h>

#include "tests/core/balancing/small_loop.h"

namespace ww::project {
namespace {

using balancing::flatLoop;
using balancing::readAs;
using support::FieldJob;

void setTimes(FieldJob& job, const Id& round, const std::vector<const char*>& times) {
    const std::vector<std::size_t> indices = job.project().readingsOf(round);
    for (std::size_t i = 0; i < indices.size(); ++i) {
        job.change(job.project().readings()[indices[i]],
                   [&](Reading& reading) { reading.time = base::Instant::fromText(times[i]); });
    }
}

TEST(Review, aRoundBeginsWithItsEarliestReadingElseWithItsOpening) {
    FieldJob job = flatLoop(3);
    const Id round = job.round(RoundKind::Survey);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0, "4");
    }
    const auto opened = base::Instant::fromText("2026-03-01T16:30:00");
    job.change(job.project().rounds().at(round), [&](Round& one) { one.opened = opened; });
    setTimes(job, round, {"2026-03-02T09:10:00", "2026-03-02T08:05:00", "2026-03-03T07:00:00"});
    EXPECT_EQ(beginOf(job.project(), round)->text(), "2026-03-02T08:05:00");
    for (const std::size_t index : std::vector<std::size_t>(job.project().readingsOf(round))) {
        job.change(job.project().readings()[index], [](Reading& reading) { reading.time.reset(); });
    }
    EXPECT_EQ(beginOf(job.project(), round), opened);
    job.change(job.project().rounds().at(round), [](Round& one) { one.opened.reset(); });
    EXPECT_FALSE(beginOf(job.project(), round).has_value());
}

TEST(Review, openCommentsOfAllRoundsStandAlongTheRoute) {
    FieldJob job = flatLoop(3);
    const Id first = job.round(RoundKind::Survey);
    const Id second = job.round(RoundKind::Adjusting);
    const auto comment = [&](const char* text, std::optional<Id> round, const char* tag) {
        Comment made;
        made.id = job.ids().next();
        made.text = text;
        made.round = round;
        made.branch = tag != nullptr ? std::optional(job.project().branchTagged(tag)->id) : std::nullopt;
        job.project().put(made);
        return made.id;
    };
    comment("round", second, nullptr);
    comment("c", first, "C");
    comment("a", second, "A");
    const Id done = comment("done", second, "B");
    job.change(job.project().comments().at(done), [](Comment& made) { made.isResolved = true; });
    const auto words = [](const std::vector<const Comment*>& comments) {
        std::vector<std::string> texts;
        for (const Comment* one : comments) {
            texts.push_back(one->text);
        }
        return texts;
    };
    EXPECT_EQ(words(openComments(job.project())), (std::vector<std::string>{"a", "c", "round"}));
    EXPECT_EQ(words(openComments(job.project(), second)), (std::vector<std::string>{"a", "round"}));
}

TEST(Review, whoReadOrSentARoundTookPartInIt) {
    FieldJob job = flatLoop(2);
    const auto person = [&](const char* name, PersonRole role) {
        Person made;
        made.id = job.ids().next();
        made.name = name;
        made.role = role;
        job.project().put(made);
        return made.id;
    };
    const Id boss = person("K. Moor", PersonRole::Supervisor);
    person("S. Olsen", PersonRole::Engineer);
    person("A. Fields", PersonRole::Technician);
    const Id round = job.round(RoundKind::Final, RoundState::Sent);
    readAs(job, "A", 1.0);
    EXPECT_FALSE(lastReader(job.project()).has_value()) << "it names nobody";
    job.change(job.project().readings()[0], [&](Reading& reading) {
        reading.person = boss;
        reading.status = ReadingStatus::Struck;
    });
    EXPECT_EQ(lastReader(job.project()), boss);
    job.change(job.project().rounds().at(round), [](Round& sent) { sent.sentBy = "A. Fields"; });
    const auto takesPart = [&](const char* name) {
        return tookPart(job.project(), job.project().rounds().at(round), name);
    };
    EXPECT_TRUE(takesPart("K. Moor")) << "also where the reading was struck";
    EXPECT_TRUE(takesPart("A. Fields"));
    EXPECT_FALSE(takesPart("S. Olsen"));
    const auto deciders = decidersOf(job.project(), job.project().rounds().at(round));
    ASSERT_EQ(deciders.size(), 1U);
    EXPECT_EQ(deciders.front()->name, "S. Olsen");
    for (const auto& [name, isOwn] : {std::pair{"K. Moor", true}, std::pair{"S. Olsen", false}}) {
        job.change(job.project().rounds().at(round), [decider = name](Round& accepted) {
            accepted.state = RoundState::Accepted;
            accepted.decidedBy = decider;
        });
        EXPECT_EQ(isSelfAccepted(job.project(), job.project().rounds().at(round)), isOwn) << name;
    }
}

/// A round that K. Moor sent back with one comment.
class SentBack : public testing::Test {
  protected:
    SentBack() {
        Round round = m_job.project().rounds().at(m_job.round(RoundKind::Final, RoundState::SentBack));
        round.decidedBy = "K. Moor";
        m_job.project().put(round);
        m_first = say("K. Moor", {});
    }
    Id say(const std::string& person, std::optional<Id> answered) {
        Comment made;
        made.id = m_job.ids().next();
        made.round = m_job.newestRound();
        made.answers = answered;
        made.text = "Meter zeroed?";
        made.person = person;
        m_job.project().put(made);
        return made.id;
    }
    std::size_t waiting() const { return unansweredComments(m_job.project(), m_job.newestRound()).size(); }

    FieldJob m_job = flatLoop(2);
    Id m_first;
};

TEST_F(SentBack, aCommentOfTheReviewerWaitsForTheLastWordOfAnother) {
    EXPECT_EQ(waiting(), 1U);
    say("A. Fields", m_first);
    EXPECT_EQ(waiting(), 0U);
    say("K. Moor", m_first);
    EXPECT_EQ(waiting(), 1U) << "asked again";
    m_job.change(m_job.project().comments().at(m_first), [](Comment& comment) { comment.isResolved = true; });
    EXPECT_EQ(waiting(), 0U);
}

TEST_F(SentBack, whatTheSenderRemarksWaitsForNobody) {
    say("A. Fields", m_first);
    say("A. Fields", {});
    EXPECT_EQ(waiting(), 0U);
}

TEST_F(SentBack, onlyARoundThatWasSentBackWaits) {
    m_job.change(m_job.project().rounds().at(m_job.newestRound()),
                 [](Round& round) { round.state = RoundState::Sent; });
    EXPECT_EQ(waiting(), 0U);
}

}  // namespace
}  // namespace ww::project
