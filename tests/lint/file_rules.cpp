#include "tests/lint/file_rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <regex>
#include <string_view>

#include "tests/lint/code_text.h"

namespace ww::lint {
namespace {

constexpr std::size_t kMostLines = 700;
constexpr std::size_t kHeadLines = 12;

constexpr std::array<std::string_view, 6> kUndone{"TODO", "FIXME",           "XXX",
                                                  "HACK", "not implemented", "placeholder"};
constexpr std::array<std::string_view, 7> kElsewhere{
    "/work/", "trade.md", "architecture.md", "interface.md", "numerics.md", "platform.md", "contract.md"};

constexpr std::array<std::string_view, 9> kTopNames{
    "CMakeLists.txt", "DEVELOPERS.md",   "README.md", "app", "core",
    "resources",      "sample_projects", "tests",     "ui"};

bool isSnakeCase(std::string_view name) {
    return !name.empty() && std::all_of(name.begin(), name.end(), [](unsigned char c) {
        return std::islower(c) != 0 || std::isdigit(c) != 0 || c == '_' || c == '.';
    });
}

std::string_view head(std::string_view text) {
    std::size_t end = 0;
    for (std::size_t line = 0; line < kHeadLines && end != std::string_view::npos; ++line) {
        end = text.find('\n', end == 0 ? 0 : end + 1);
    }
    return text.substr(0, end);
}

template <class Words>
void findWords(const SourceFile& file, const Words& words, std::string_view why,
               std::vector<Violation>& found) {
    for (const std::string_view word : words) {
        for (std::size_t at = file.text.find(word); at != std::string::npos;
             at = file.text.find(word, at + 1)) {
            if (isWordAt(file.text, at, word) || !isNameCharacter(word.front())) {
                found.push_back(
                    {file.path, lineOf(file.text, at), "\"" + std::string(word) + "\" " + std::string(why)});
            }
        }
    }
}

/// Whether `named` is a path, one without its ending, or a folder of one, or the last parts of one of these.
bool isIn(const std::set<std::string>& paths, const std::string& named) {
    return std::any_of(paths.begin(), paths.end(), [&](const std::string& path) {
        const std::string whole = '/' + path;
        const std::size_t at = whole.find('/' + named);
        const char behind = at == std::string::npos ? 'x' : (whole + '/')[at + 1 + named.size()];
        return behind == '/' || behind == '.';
    });
}

}  // namespace

std::vector<Violation> headViolations(const SourceFile& file) {
    std::vector<Violation> violations;
    if (file.ending() != ".h") {
        return violations;
    }
    if (!file.text.starts_with("// ")) {
        violations.push_back(
            {file.path, 1, "a header opens with a comment: what it is for, what it is not for"});
    }
    if (withoutComments(file.text).find("#pragma once\n") == std::string::npos) {
        violations.push_back({file.path, 0, "a header has a line #pragma once"});
    }
    return violations;
}

std::vector<Violation> lengthViolations(const SourceFile& file) {
    const auto lines = static_cast<std::size_t>(std::count(file.text.begin(), file.text.end(), '\n'));
    if (!file.isCode() || lines <= kMostLines ||
        head(file.text).find("longer than") != std::string_view::npos) {
        return {};
    }
    return {{file.path, 0,
             "has " + std::to_string(lines) +
                 " lines; divide it, or say in its head why it is longer than others"}};
}

std::vector<Violation> wordViolations(const SourceFile& file) {
    const bool isScript = file.ending() == ".sh" || file.path.ends_with("CMakeLists.txt");
    std::vector<Violation> violations;
    if ((!file.isCode() && !isScript) || file.path.starts_with("tests/lint/")) {
        return violations;
    }
    findWords(file, kUndone, "announces work left undone; do it or leave it out", violations);
    findWords(file, kElsewhere, "is nothing that a reader of this program has; name the source itself",
              violations);
    return violations;
}

std::vector<Violation> nameViolations(const SourceFile& file) {
    if (file.path.starts_with("resources/") || file.path.starts_with("tests/data/") ||
        file.folder().empty()) {
        return {};
    }
    const std::string_view name = std::string_view(file.path).substr(file.path.rfind('/') + 1);
    const std::string underscored = [&] {
        std::string folder(file.folder());
        std::replace(folder.begin(), folder.end(), '/', '_');
        return folder;
    }();
    const bool isFixedName = name == "README.md" || name == "CMakeLists.txt";
    if (isSnakeCase(underscored) && (isFixedName || isSnakeCase(name))) {
        return {};
    }
    return {{file.path, 0, "is not named in snake_case"}};
}

std::vector<Violation> namedPathViolations(const SourceFile& page, const std::set<std::string>& paths) {
    static const std::regex kNamed(
        "`([a-z0-9_./-]*/[a-z0-9_./-]*|[a-z0-9_.-]+\\.(?:cpp|h|md|txt|sh|csv|bash|in))`");
    std::vector<Violation> violations;
    for (std::sregex_iterator at(page.text.begin(), page.text.end(), kNamed), end; at != end; ++at) {
        std::string named = (*at)[1];
        if (named.ends_with('/')) {
            named.pop_back();
        }
        if (!named.starts_with("build") && !isIn(paths, named)) {
            violations.push_back({page.path, lineOf(page.text, static_cast<std::size_t>(at->position())),
                                  "names " + named + ", which is not there"});
        }
    }
    return violations;
}

std::vector<Violation> topViolations(const std::vector<std::string>& namesAtTop) {
    std::vector<Violation> violations;
    for (const std::string& name : namesAtTop) {
        if (std::find(kTopNames.begin(), kTopNames.end(), name) == kTopNames.end()) {
            violations.push_back({name, 0, "does not belong at the top of the source folder"});
        }
    }
    return violations;
}

}  // namespace ww::lint
