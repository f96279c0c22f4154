#!/usr/bin/env bash
# The tests of layout and sight of ui_tests once more on a real screen, with the scale of the desktop doing the
# dividing.
#
#   scaled_layout_test.sh PROGRAM SOURCE_FOLDER UI_TESTS SCALE TESTS [SCREEN_SIZE]
source="$2"
ui_tests="$3"
screen_size="${6:-1366x768}"
source "$source/tests/desktop_x/screen.sh" "$1"
start_screen
QT_SCALE_FACTOR="$4" "$ui_tests" --gtest_brief=1 --gtest_filter="Screens/*/$5" || fail "at scale $4"
