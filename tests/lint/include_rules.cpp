#include "tests/lint/include_rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <span>
#include <string_view>

#include "tests/lint/code_text.h"

namespace ww::lint {
namespace {

/// What each folder of core rests on; what those rest on comes with them.
const std::map<std::string, std::vector<std::string>> kCoreTable{
    {"base", {}},
    {"quantity", {"base"}},
    {"fluid", {"quantity"}},
    {"curve", {"quantity"}},
    {"hydraulics", {"curve", "fluid"}},
    {"estimation", {"hydraulics"}},
    {"project", {"curve", "fluid"}},
    {"energy", {"project", "hydraulics"}},
    {"balancing", {"project", "estimation", "energy"}},
    {"store", {"project"}},
    {"seal", {"base"}},
    {"spreadsheet", {"base"}},
    {"exchange", {"project", "spreadsheet"}},
    {"pump_room", {"balancing", "energy"}},
    {"report", {"balancing", "energy", "pump_room", "exchange"}},
    {"workbook", {"store", "project", "seal"}},
    {"practice", {"balancing"}},
};

/// Outside core: files below `from` must not include what begins with `banned`, and why.
struct Ban {
    std::string_view from;
    std::string_view banned;
    std::string_view why;
};
constexpr std::array kBans{
    Ban{"core/", "ui/", "core knows no screen"},
    Ban{"core/", "app/", "core knows no program"},
    Ban{"core/", "tests/", "programs do not include tests"},
    Ban{"ui/", "app/", "the desktop is assembled in app, nothing flows back"},
    Ban{"ui/", "tests/", "programs do not include tests"},
    Ban{"app/", "tests/", "programs do not include tests"},
    Ban{"ui/", "core/store/", "the workbook is the only door through which a job changes"},
    Ban{"ui/widgets/", "core/workbook/", "a widget knows no workbook"},
    Ban{"ui/widgets/", "core/project/", "a widget knows no workbook"},
    Ban{"ui/widgets/", "ui/workbook_bridge", "a widget knows no workbook"},
    Ban{"ui/widgets/", "ui/models/", "a widget knows no workbook"},
    Ban{"ui/widgets/", "ui/places/", "places are made of widgets, not the other way"},
    Ban{"ui/charts/", "ui/places/", "places are made of charts, not the other way"},
    Ban{"ui/models/", "ui/places/", "places show models, not the other way"},
    Ban{"ui/models/", "ui/widgets/", "widgets show models, not the other way"},
    Ban{"ui/places/", "ui/main_window", "the main window is made of places, not the other way"},
};

/// A library, by how its headers begin, and the folders or files whose .cpp files alone may include them.
struct Confined {
    std::string_view header;
    std::vector<std::string_view> places;
    bool headersToo = false;  ///< the places' own headers may include it as well
};
const std::vector<Confined> kConfined{
    {"sqlite3.h", {"core/store/"}},
    {"Eigen/", {"core/hydraulics/", "core/estimation/", "tests/"}},
    {"openssl/", {"core/seal/", "core/base/digest.cpp", "tests/"}},
    {"zlib.h", {"core/seal/", "tests/"}},
    {"nlohmann/", {"core/exchange/", "app/", "tests/"}, true},
    {"xlsxwriter.h", {"core/spreadsheet/", "tests/"}},
    {"zip.h", {"core/spreadsheet/", "tests/"}},
    {"expat.h", {"core/spreadsheet/"}},
    {"CLI/", {"app/", "tests/app/"}, true},
    {"gtest/", {"tests/"}, true},
    {"gmock/", {"tests/"}, true},
    {"benchmark/", {"tests/bench/"}, true},
};
/// Headers of the operating system: files, locks and processes are the business of these.
const std::vector<std::string_view> kSystemPlaces{
    "core/base/account.cpp", "core/store/", "core/exchange/", "core/workbook/", "ui/", "app/", "tests/"};
constexpr std::array<std::string_view, 14> kSystemHeaders{
    "arpa/", "dirent.h", "fcntl.h", "limits.h", "malloc.h", "netdb.h", "poll.h",
    "pwd.h", "signal.h", "spawn.h", "stdlib.h", "sys/",     "time.h",  "unistd.h"};

/// Qt's classes for charts begin or end like this; all other Qt headers are free in ui, app and tests.
constexpr std::array<std::string_view, 5> kChartBeginnings{"QtCharts", "QChart", "QPolarChart", "QLegend",
                                                           "QBarSet"};
constexpr std::array<std::string_view, 2> kChartEndings{"Series", "Axis"};

bool beginsWithOne(std::string_view text, std::span<const std::string_view> beginnings) {
    return std::any_of(beginnings.begin(), beginnings.end(),
                       [&](std::string_view beginning) { return text.starts_with(beginning); });
}

bool isQt(std::string_view header) {
    return header.size() > 1 && header[0] == 'Q' &&
           (header[1] == 't' || std::isupper(static_cast<unsigned char>(header[1])) != 0);
}

bool isQtChart(std::string_view header) {
    return beginsWithOne(header, kChartBeginnings) ||
           std::any_of(kChartEndings.begin(), kChartEndings.end(),
                       [&](std::string_view ending) { return header.ends_with(ending); });
}

/// A header of the C++ standard library: one word of small letters without an ending.
bool isStandard(std::string_view header) {
    return std::all_of(header.begin(), header.end(), [](unsigned char c) {
        return std::islower(c) != 0 || std::isdigit(c) != 0 || c == '_';
    });
}

std::string coreFolderOf(std::string_view path) {
    if (!path.starts_with("core/")) {
        return "";
    }
    const std::size_t end = path.find('/', 5);
    return end == std::string_view::npos ? "" : std::string(path.substr(5, end - 5));
}

/// What is wrong with an include of this program's own file; empty where nothing is.
std::string faultOfOwn(const SourceFile& file, const std::string& included,
                       const std::set<std::string>& paths) {
    if (included.ends_with(".moc") && file.path.starts_with("ui/")) {
        return "";
    }
    if (!paths.contains(included)) {
        return "includes \"" + included + "\", which is no file named from the top of the source folder";
    }
    for (const Ban& ban : kBans) {
        if (file.path.starts_with(ban.from) && included.starts_with(ban.banned)) {
            return std::string(ban.from) + " must not include \"" + included + "\": " + std::string(ban.why);
        }
    }
    const std::string from = coreFolderOf(file.path);
    const std::string to = coreFolderOf(included);
    if (!from.empty() && !to.empty() && !foldersAllowed(from).contains(to)) {
        return "core/" + from + " must not include core/" + to + " (\"" + included + "\")";
    }
    return "";
}

bool isAllowedAt(const SourceFile& file, const Confined& library) {
    return beginsWithOne(file.path, library.places) &&
           (file.ending() == ".cpp" || library.headersToo || file.path.find("/detail/") != std::string::npos);
}

/// The same for a header in angle brackets.
std::string faultOfLibrary(const SourceFile& file, const std::string& header) {
    if (isQt(header)) {
        if (file.path.starts_with("core/")) {
            return "core must not include Qt (<" + header + ">)";
        }
        const bool isChartPlace = file.path.starts_with("ui/charts/") || file.path.starts_with("tests/ui/") ||
                                  file.path.starts_with("tests/bench/");
        return isQtChart(header) && !isChartPlace ? "<" + header + "> of Qt Charts belongs in ui/charts" : "";
    }
    if (isStandard(header)) {
        return "";
    }
    if (beginsWithOne(header, kSystemHeaders)) {
        return beginsWithOne(file.path, kSystemPlaces)
                   ? ""
                   : "<" + header + "> of the operating system is not for here";
    }
    for (const Confined& library : kConfined) {
        if (header.starts_with(library.header)) {
            return isAllowedAt(file, library) ? ""
                                              : "<" + header + "> belongs in the .cpp files of " +
                                                    std::string(library.places.front());
        }
    }
    return "<" + header + "> is of no library that this program rests on; list it in include_rules.cpp";
}

}  // namespace

std::set<std::string> foldersAllowed(const std::string& coreFolder) {
    std::set<std::string> allowed;
    std::vector<std::string> toVisit{coreFolder};
    while (!toVisit.empty()) {
        const std::string folder = toVisit.back();
        toVisit.pop_back();
        const auto row = kCoreTable.find(folder);
        if (row != kCoreTable.end() && allowed.insert(folder).second) {
            toVisit.insert(toVisit.end(), row->second.begin(), row->second.end());
        }
    }
    return allowed;
}

std::vector<Violation> includeViolations(const SourceFile& file, const std::set<std::string>& paths) {
    std::vector<Violation> violations;
    if (file.path.starts_with("core/") && !kCoreTable.contains(coreFolderOf(file.path))) {
        violations.push_back({file.path, 0,
                              "stands in a folder of core that the table of include_rules.cpp does "
                              "not list"});
    }
    const std::string code = withoutComments(file.text);
    constexpr std::string_view kInclude = "#include";
    for (std::size_t at = code.find(kInclude); at != std::string::npos; at = code.find(kInclude, at + 1)) {
        const std::size_t open = code.find_first_not_of(' ', at + kInclude.size());
        const bool isLineStart = at == 0 || code[at - 1] == '\n';
        const bool isOwn = open != std::string::npos && code[open] == '"';
        if (!isLineStart || open == std::string::npos || (!isOwn && code[open] != '<')) {
            continue;
        }
        const std::size_t close = code.find(isOwn ? '"' : '>', open + 1);
        const std::string name = code.substr(open + 1, close - open - 1);
        const std::string fault = isOwn ? faultOfOwn(file, name, paths) : faultOfLibrary(file, name);
        if (!fault.empty()) {
            violations.push_back({file.path, lineOf(code, at), fault});
        }
    }
    return violations;
}

}  // namespace ww::lint
