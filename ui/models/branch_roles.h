// What a cell tells its painter beyond its text. Not for words or numbers.
#pragma once

#include <Qt>

namespace ww::ui {

enum BranchRole {
    StateRole = Qt::UserRole + 1,  ///< int(balancing::State) of the row; invalid where the row has none
    IsOverRole,                    ///< bool: the row's share is above its target
    IsSoftRole,                    ///< bool: the number rests partly on earlier readings
    IsStateCellRole,               ///< bool: the cell shows the state's shape beside its word
    DepthRole,                     ///< int: indentation of the row in the tree
    IsStrongRole,                  ///< bool: the number that was read by hand
};

}  // namespace ww::ui
