// What is said about workbook files: missing, damaged, newer, held by another program.
// Not for edits that a job refuses (workbook/edit_rules.h).
#pragma once

#include "core/base/fault.h"

namespace ww::store {

inline constexpr base::MessageForm kFileMissing{"workbook_missing",
                                                "there is no such file; check its name and folder"};
inline constexpr base::MessageForm kFileExists{"workbook_exists",
                                               "a file of this name is there already; choose another name"};
inline constexpr base::MessageForm kFileUnreadable{
    "workbook_unreadable", "the file cannot be read ({1w}); check its rights and the disk it is on"};
inline constexpr base::MessageForm kFileUnwritable{"workbook_unwritable",
                                                   "the file cannot be written ({1w}); check its rights, its "
                                                   "folder and the free space, nothing was changed"};
inline constexpr base::MessageForm kFileBusy{
    "workbook_busy", "another program keeps the file locked; close that program and try again"};
inline constexpr base::MessageForm kFileEmpty{
    "workbook_empty", "the file is empty, so nothing can be read from it; open a copy of it"};
inline constexpr base::MessageForm kNotAWorkbook{
    "not_a_workbook", "this is not a workbook; choose a file that was made as one"};
inline constexpr base::MessageForm kFileDamaged{
    "workbook_damaged", "the file is damaged ({1w}); keep it as it is and open a copy from before"};
inline constexpr base::MessageForm kSchemaUnexpected{
    "workbook_schema_unexpected",
    "the tables of the file are not those of a workbook ({1}); keep it as it is and open a copy from before"};
inline constexpr base::MessageForm kRowUnreadable{
    "workbook_row_unreadable",
    "in table {1} the value of {2} cannot be read; another program changed it, open a copy from before"};
inline constexpr base::MessageForm kChainBroken{
    "journal_chain_broken",
    "record {1} of the journal does not follow from those before it; the file was changed by another program "
    "or is damaged, open a copy from before"};
inline constexpr base::MessageForm kChangesetUnfit{"journal_changes_unfit",
                                                   "the changes of record {1} of the journal do not fit what "
                                                   "was stored before; the file was changed by another "
                                                   "program, open a copy from before"};
inline constexpr base::MessageForm kNewerSchema{"workbook_newer",
                                                "the file was last changed by a newer program and can only "
                                                "be read; to change it, install version {1} or later"};
inline constexpr base::MessageForm kHeldElsewhere{"workbook_held",
                                                  "open for changes by {1} on {2} since {3} (process {4}), "
                                                  "so it can only be read here; close it there first"};
inline constexpr base::MessageForm kFolderUnwritable{"workbook_folder_unwritable",
                                                     "the folder or the file cannot be written, so the job "
                                                     "can only be read; copy the file to a place of your own "
                                                     "to change it"};
inline constexpr base::MessageForm kRecoveryNeedsWriting{
    "workbook_recovery_needs_writing",
    "a change was interrupted and must be taken back before reading, but the folder cannot be written; copy "
    "the "
    "file and the one ending in -journal to a place of your own and open it there"};
inline constexpr base::MessageForm kRowMissing{
    "row_missing",
    "{1} is in the journal but not in table {2}; another program removed it, open a copy from before"};
inline constexpr base::MessageForm kRowForeign{
    "row_foreign",
    "{1} is in table {2} but not in the journal; another program put it there, do not trust it"};
inline constexpr base::MessageForm kRowChanged{"row_changed",
                                               "{1}: {3} of table {2} is not what the journal says ({4} "
                                               "instead of {5}); another program changed it, do not "
                                               "trust it"};

}  // namespace ww::store
