# What release_notes.md says, for the metainfo, the package's changelog and the manual page. Sets WW_RELEASES (XML),
# WW_CHANGELOG (as dpkg reads it) and WW_RELEASE_DATE (of the newest). Every heading is "## VERSION (YYYY-MM-DD)";
# the points below it begin with "- " and go on in lines that begin with two spaces.
file(READ ${CMAKE_CURRENT_LIST_DIR}/release_notes.md WW_NOTES)
# These mean something to CMake's lists; an at sign stands for a line's end within a point.
if(WW_NOTES MATCHES "[][;@]")
  message(FATAL_ERROR "release_notes.md holds a bracket, a semicolon or an at sign; word the line without it")
endif()
string(REGEX REPLACE "\n  +" "@" WW_NOTES "${WW_NOTES}")
string(REPLACE "\n" ";" WW_NOTES "${WW_NOTES}")

set(WW_RELEASES "")
set(WW_CHANGELOG "")
unset(WW_RELEASE_DATE)
set(MAINTAINER "The Waterwright maintainers <maintainers@waterwright.invalid>")

# Ends the release that is open, if any.
macro(ww_end_release)
  if(VERSION_OPEN)
    string(APPEND WW_RELEASES "        </ul>\n      </description>\n    </release>")
    string(APPEND WW_CHANGELOG "\n -- ${MAINTAINER}  ${MAIL_DATE}\n")
  endif()
endmacro()

set(VERSION_OPEN "")
# The changelog wants each release later than the one below it, even on one day: they are a minute apart.
string(REGEX MATCHALL ";## " HEADINGS "${WW_NOTES}")
list(LENGTH HEADINGS MINUTE)
foreach(LINE IN LISTS WW_NOTES)
  if(LINE MATCHES "^## ([0-9.]+) \\(([0-9-]+)\\)$")
    set(VERSION_FOUND ${CMAKE_MATCH_1})
    set(DATE_FOUND ${CMAKE_MATCH_2})
    ww_end_release()
    if(VERSION_OPEN)
      string(APPEND WW_RELEASES "\n")
      string(APPEND WW_CHANGELOG "\n")
    endif()
    set(VERSION_OPEN ${VERSION_FOUND})
    if(NOT DEFINED WW_RELEASE_DATE)
      set(WW_RELEASE_DATE ${DATE_FOUND})
      if(NOT VERSION_FOUND VERSION_EQUAL PROJECT_VERSION)
        message(FATAL_ERROR "release_notes.md begins with ${VERSION_FOUND} and the project is ${PROJECT_VERSION}; "
                            "write the notes of this version, or set the project's version")
      endif()
    endif()
    math(EXPR MINUTE "${MINUTE} - 1")
    execute_process(COMMAND date --utc "--date=${DATE_FOUND} 00:00 UTC ${MINUTE} minutes" "+%a, %d %b %Y %H:%M:%S +0000"
                    OUTPUT_VARIABLE MAIL_DATE OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
    string(APPEND WW_RELEASES "    <release version=\"${VERSION_FOUND}\" date=\"${DATE_FOUND}\">\n"
                              "      <description>\n        <ul>\n")
    string(APPEND WW_CHANGELOG "waterwright (${VERSION_FOUND}-1) unstable; urgency=medium\n\n")
  elseif(LINE MATCHES "^- (.*)$" AND VERSION_OPEN)
    set(POINT "${CMAKE_MATCH_1}")
    string(REPLACE "@" "\n    " CHANGE "${POINT}")
    string(APPEND WW_CHANGELOG "  * ${CHANGE}\n")
    string(REPLACE "@" " " POINT "${POINT}")
    string(REPLACE "&" "&amp;" POINT "${POINT}")
    string(REPLACE "<" "&lt;" POINT "${POINT}")
    string(APPEND WW_RELEASES "          <li>${POINT}</li>\n")
  endif()
endforeach()
ww_end_release()
