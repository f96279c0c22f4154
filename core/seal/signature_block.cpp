#include "core/seal/signature_block.h"

namespace ww::seal {
namespace {

constexpr base::MessageForm kWaitingForSignature{"seal_waiting_for_signature", "waiting for signature"};
constexpr base::MessageForm kWaitingForReview{"seal_waiting_for_review", "waiting for review"};
constexpr base::MessageForm kSigner{"seal_signer", "{1}"};
constexpr base::MessageForm kClock{"seal_clock", "{1} (clock of the signing computer)"};
constexpr base::MessageForm kWhereToCheck{"seal_where_to_check",
                                          "Check with your PDF viewer's signature panel."};
constexpr base::MessageForm kReviewOfOwn{"seal_review_of_own", "read or sent these rounds too: {1}"};
constexpr base::MessageForm kSignedReadings{"seal_signed_readings", "signed the readings too"};
constexpr base::MessageForm kSignedReview{"seal_signed_review", "signed the review too"};

}  // namespace

BlockText waitingText(Role role) {
    const base::MessageForm& waiting = role == Role::Technician ? kWaitingForSignature : kWaitingForReview;
    return {{&meaning(role), {}, {}}, {{&waiting, {}, {}}}, true};
}

BlockText signedText(Role role, const std::string& signer, const base::Instant& time,
                     const std::string& ownRounds, bool hasBothRoles) {
    BlockText text{{&meaning(role), {}, {}}, {{&kSigner, {}, {signer}}}, false};
    if (!ownRounds.empty()) {
        text.lines.push_back({&kReviewOfOwn, {}, {ownRounds}});
    }
    if (hasBothRoles) {
        text.lines.push_back({role == Role::Supervisor ? &kSignedReadings : &kSignedReview, {}, {}});
    }
    text.lines.push_back({&kClock, {}, {shownTime(time)}});
    text.lines.push_back({&kWhereToCheck, {}, {}});
    return text;
}

std::string shownTime(const base::Instant& time) {
    constexpr std::size_t kWithoutZone = 19;
    const std::string whole = time.text();
    const std::string zone = whole.substr(kWithoutZone);
    const std::string shown = time.date() + " " + time.timeOfDay();
    return zone.empty() ? shown : shown + " " + (zone == "Z" ? "UTC" : zone);
}

}  // namespace ww::seal
