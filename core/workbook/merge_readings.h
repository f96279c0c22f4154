// The part of a settlement that is about readings: their order, places read on both sides, and rounds that
// were sent or accepted on one side. Not for names and numbers (merge_settlement.cpp).
#pragma once

#include "core/workbook/merge_settlement.h"

namespace ww::workbook {

class ReadingSettlement {
  public:
    /// `after` is the merged job; it must outlive this and is changed with what is put.
    ReadingSettlement(const MergeSides& sides, project::Project& after) : m_sides(sides), m_after(after) {}

    void run();
    Settlement take() { return std::move(m_settlement); }

  private:
    template <class R>
    void settleKind();
    template <class R>
    void sealRound(const project::Round& round);
    template <class R>
    void orderRound(const project::Round& round);
    template <class R>
    void comparePlaces(const project::Round& round);
    void put(project::AnyRecord record);

    const MergeSides& m_sides;
    project::Project& m_after;
    Settlement m_settlement;
};

}  // namespace ww::workbook
