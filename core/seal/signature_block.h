// The visible block of a signature: where it stands on the page, what it says, and how it was drawn. The
// picture proves nothing; the signature does. Not for drawing (done where the report is drawn).
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/base/instant.h"
#include "core/seal/role.h"

namespace ww::seal {

/// Lengths on paper are whole thousandths of a point (1/72000 inch), counted from the lower left corner.
struct PaperPoint {
    int x = 0;
    int y = 0;
};
struct PaperSize {
    int width = 0;
    int height = 0;
};
struct PaperPlace {
    int page = 0;  ///< 0: the first
    PaperPoint lowerLeft;
    PaperSize size;
};

/// One step of an outline; a curve (cubic) uses all three points and ends at the last, the others the first.
struct OutlineStep {
    enum class Kind { Move, Line, Curve };
    Kind kind = Kind::Move;
    std::array<PaperPoint, 3> points{};
};
/// Closed outlines filled with one gray; a point is inside where the outlines wind around it.
struct FilledShape {
    std::vector<OutlineStep> steps;
    int gray = 0;  ///< 0 black to 255 white
};
/// A block as shapes, letters too, so that it needs no font; points count from the block's lower left corner.
struct BlockDrawing {
    std::vector<FilledShape> shapes;
};

/// What a block says, line by line; the heading is the signature's meaning.
struct BlockText {
    base::Fault heading;
    std::vector<base::Fault> lines;
    bool isWaiting = false;
};
/// Before signing: that it waits for a signature or a review.
BlockText waitingText(Role role);
/// Once signed: who, when by the clock of this computer with its zone, and where to check. `ownRounds`: the
/// numbers of the rounds that a reviewer read or sent, with commas between them; empty: none. `hasBothRoles`:
/// the same person signed in the other role too.
BlockText signedText(Role role, const std::string& signer, const base::Instant& time,
                     const std::string& ownRounds = {}, bool hasBothRoles = false);
/// "2026-03-04 14:02:07 UTC" or "... +05:30".
std::string shownTime(const base::Instant& time);

/// Draws a text into a block of this size.
using BlockDrawer = std::function<BlockDrawing(const BlockText&, const PaperSize&)>;

}  // namespace ww::seal
