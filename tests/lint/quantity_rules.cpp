#include "tests/lint/quantity_rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <span>
#include <sstream>
#include <string_view>

#include "tests/lint/code_text.h"

namespace ww::lint {
namespace {

/// One of these among the words of a name says that the number has no unit.
constexpr std::array<std::string_view, 15> kDimensionlessWords{
    "dimensionless", "ratio",  "fraction",    "factor", "share",    "exponent",   "probability", "efficiency",
    "relative",      "weight", "correlation", "score",  "reynolds", "confidence", "percentile"};

constexpr std::array<std::string_view, 35> kUnitEndings{
    "_Pa",  "_kPa", "_bar", "_mbar", "_psi", "_m",  "_mm",   "_ft",  "_in",  "_m2",  "_m3",  "_m3s",
    "_m3h", "_ls",  "_gpm", "_W",    "_kW",  "_hp", "_J",    "_Wh",  "_kWh", "_K",   "_C",   "_F",
    "_kg",  "_s",   "_h",   "_rpm",  "_V",   "_A",  "_kgm3", "_kgs", "_Pas", "_Jkg", "_Jkgs"};

/// "reynoldsNumber" -> reynolds, number.
std::vector<std::string> wordsOf(std::string_view name) {
    std::vector<std::string> words(1);
    for (const char c : name) {
        const auto character = static_cast<unsigned char>(c);
        if ((std::isupper(character) != 0 || c == '_') && !words.back().empty()) {
            words.emplace_back();
        }
        if (c != '_') {
            words.back() += static_cast<char>(std::tolower(character));
        }
    }
    return words;
}

bool saysDimensionless(std::string_view name) {
    const auto words = wordsOf(name);
    return std::find_first_of(words.begin(), words.end(), kDimensionlessWords.begin(),
                              kDimensionlessWords.end()) != words.end();
}

bool hasUnitEnding(std::string_view name) {
    return std::any_of(kUnitEndings.begin(), kUnitEndings.end(),
                       [&](std::string_view ending) { return name.ends_with(ending); });
}

/// What the braces around a token are.
enum class Scope { Open, Public, Private, Body };

/// Follows braces, classes and access labels through a header.
class ScopeTracker {
  public:
    void take(std::span<const Token> all, std::size_t index) {
        const std::string_view text = all[index].text;
        const bool isTemplateWord = index > 0 && (all[index - 1].text == "<" || all[index - 1].text == ",");
        const bool isEnumWord = index > 0 && all[index - 1].text == "enum";
        if ((text == "class" || text == "struct") && !isTemplateWord && !isEnumWord) {
            m_next = text == "class" ? Scope::Private : Scope::Public;
        } else if (text == "namespace") {
            m_next = Scope::Open;
        } else if (text == ";" || text == "(") {
            m_next = Scope::Body;
        } else if (text == "{") {
            m_scopes.push_back(m_next);
            m_next = Scope::Body;
        } else if (text == "}" && !m_scopes.empty()) {
            m_scopes.pop_back();
        } else if (text == ":" && index > 0 && !m_scopes.empty()) {
            const std::string_view label = all[index - 1].text;
            if (label == "public") {
                m_scopes.back() = Scope::Public;
            } else if (label == "private" || label == "protected") {
                m_scopes.back() = Scope::Private;
            }
        }
    }

    /// Whether other folders see what is declared here.
    bool isPublic() const {
        return std::all_of(m_scopes.begin(), m_scopes.end(),
                           [](Scope scope) { return scope == Scope::Open || scope == Scope::Public; });
    }

  private:
    std::vector<Scope> m_scopes;
    Scope m_next = Scope::Body;
};

/// The name that the type at `index` declares; empty where it declares none (a template's argument, an
/// unnamed parameter).
std::string_view declaredName(std::span<const Token> all, std::size_t index) {
    constexpr std::array<std::string_view, 7> kBetween{">", "&", "*", "const", "constexpr", ",", "..."};
    for (std::size_t i = index + 1; i < all.size(); ++i) {
        const std::string_view text = all[i].text;
        // std::array<double, 3> name: the number of elements is passed over; so is the pair's second type.
        const bool isCount = std::isdigit(static_cast<unsigned char>(text.front())) != 0;
        if (std::find(kBetween.begin(), kBetween.end(), text) == kBetween.end() && !isCount &&
            text != "double") {
            return isNameCharacter(text.front()) ? text : std::string_view();
        }
        if (text == "," && i + 1 < all.size() && isNameCharacter(all[i + 1].text.front()) &&
            std::isdigit(static_cast<unsigned char>(all[i + 1].text.front())) == 0) {
            return {};
        }
    }
    return {};
}

/// "auto name(...) -> double": the name before the brackets.
std::string_view nameBeforeArrow(std::span<const Token> all, std::size_t index) {
    if (index < 3 || all[index - 1].text != ">" || all[index - 2].text != "-") {
        return {};
    }
    int depth = 0;
    for (std::size_t i = index - 2; i-- > 0;) {
        depth += all[i].text == ")" ? 1 : all[i].text == "(" ? -1 : 0;
        if (depth == 0 && all[i].text == "(" && i > 0) {
            return all[i - 1].text;
        }
    }
    return {};
}

std::string faultOfDouble(const std::string& path, std::string_view name,
                          const std::vector<AllowedDouble>& allowed, std::set<std::string>& used) {
    for (const AllowedDouble& entry : allowed) {
        if (entry.path == path && (entry.name == name || entry.name == "*")) {
            used.insert(entry.path + " " + entry.name);
            return "";
        }
    }
    if (hasUnitEnding(name)) {
        return "double " + std::string(name) +
               " carries a unit across a boundary of core; use a type of quantity.h";
    }
    if (name.empty()) {
        return "a double without a name says nothing about its unit; name it, or use a type of quantity.h";
    }
    if (saysDimensionless(name)) {
        return "";
    }
    return "double " + std::string(name) +
           " may carry a unit; use a type of quantity.h, or name it so that it plainly has none (ratio, "
           "fraction, "
           "factor, exponent ...), or give the reason in tests/lint/allowed_doubles.txt";
}

}  // namespace

std::vector<AllowedDouble> readAllowedDoubles(const std::string& text) {
    std::vector<AllowedDouble> entries;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        if (line.empty() || line.front() == '#') {
            continue;
        }
        const std::size_t space = line.find(' ');
        const std::size_t colon = line.find(": ", space == std::string::npos ? 0 : space);
        if (space == std::string::npos || colon == std::string::npos) {
            entries.push_back({line, "", ""});
        } else {
            entries.push_back(
                {line.substr(0, space), line.substr(space + 1, colon - space - 1), line.substr(colon + 2)});
        }
    }
    return entries;
}

std::vector<Violation> doubleViolations(const SourceFile& header, const std::vector<AllowedDouble>& allowed,
                                        std::set<std::string>& used) {
    std::vector<Violation> violations;
    if (!header.path.starts_with("core/") || header.path.starts_with("core/quantity/") ||
        header.ending() != ".h" || header.path.find("/detail/") != std::string::npos) {
        return violations;
    }
    const std::string code = withoutCommentsAndLiterals(header.text);
    const std::vector<Token> all = tokens(code);
    ScopeTracker scope;
    for (std::size_t i = 0; i < all.size(); ++i) {
        scope.take(all, i);
        if (all[i].text != "double" || !scope.isPublic()) {
            continue;
        }
        std::string_view name = nameBeforeArrow(all, i);
        if (name.empty()) {
            name = declaredName(all, i);
        }
        const std::string fault = faultOfDouble(header.path, name, allowed, used);
        if (!fault.empty()) {
            violations.push_back({header.path, lineOf(code, all[i].position), fault});
        }
    }
    return violations;
}

}  // namespace ww::lint
