// What the main window says: files and tables that went out or came in, steps undone. Not for refusals, which
// core words (workbook.h).
#pragma once

#include "core/base/fault.h"

namespace ww::ui {

inline constexpr base::MessageForm kCheckpointStored{
    "checkpoint_stored", "the checkpoint \"{1}\" is stored; Ctrl+Shift+H shows the job as it stood there"};
inline constexpr base::MessageForm kGoneElsewhere{
    "gone_elsewhere", "all is stored, with the last reading, in {1}; work goes on there"};
inline constexpr base::MessageForm kOnlyInMemory{
    "only_in_memory",
    "not stored, this is only in memory: {1}; Save a Copy Elsewhere, on the strip above, keeps it"};
inline constexpr base::MessageForm kWorkInCopy{"work_in_copy",
                                               "work goes on in the copy {1}; later open the first file and "
                                               "take this in with Ctrl+Shift+M, Merge Another "
                                               "Laptop"};
inline constexpr base::MessageForm kCopySaved{"copy_saved",
                                              "a whole copy is at {1}; work goes on in the first file"};
inline constexpr base::MessageForm kFileWritten{"file_written",
                                                "what was asked for is in {1}; open it from there"};
inline constexpr base::MessageForm kUndone{"undone", "undone: {1}; Ctrl+Shift+Z does it again"};
inline constexpr base::MessageForm kDoneAgain{"done_again", "done again: {1}; Ctrl+Z takes it back"};
inline constexpr base::MessageForm kOtherEnding{
    "other_ending",
    "{1} was not written: this can be written with the ending {2}; give the file one of these"};
inline constexpr base::MessageForm kLastJob{
    "last_job", "the job open here last is {1}; the menu File, Open Recent opens it"};
inline constexpr base::MessageForm kJobBack{
    "job_back", "the job is back as it was stored last, {1}; go on where the cursor stands"};
inline constexpr base::MessageForm kTypedBack{
    "typed_back",
    "\"{1}\" is typed in Walk and not entered; store it there with Enter, or clear it with Esc"};
inline constexpr base::MessageForm kClockBehind{"clock_behind",
                                                "this clock is {1} h {2} min before the last stored action, "
                                                "so times of readings are uncertain; Ctrl+Alt+O, "
                                                "Set Clock Offset, sets it right"};
inline constexpr base::MessageForm kClockAdded{"clock_added",
                                               "{1} are added to this laptop's clock in this job; once its "
                                               "own clock is right, Ctrl+Alt+O takes that back"};
inline constexpr base::MessageForm kClockOwn{
    "clock_own", "nothing is added to this laptop's clock; times are its own from now on"};
inline constexpr base::MessageForm kImported{"imported", "{1} is in the job; Ctrl+Z takes it back"};

}  // namespace ww::ui
