#include "core/seal/detail/revision_check.h"

#include <algorithm>
#include <initializer_list>

#include "core/seal/seal_messages.h"

namespace ww::seal::detail {
namespace {

base::Fault beside(const std::string& what) {
    return {&kChangedBeside, {}, {what}};
}

/// Equal but for these names.
bool isEqualBut(const PdfIndirect& before, const PdfIndirect& after,
                std::initializer_list<std::string_view> names) {
    if (before.dictionary() == nullptr || after.dictionary() == nullptr || before.stream != after.stream) {
        return false;
    }
    PdfDictionary left = *before.dictionary();
    PdfDictionary right = *after.dictionary();
    for (const std::string_view name : names) {
        left.erase(name);
        right.erase(name);
    }
    return left == right;
}

/// Numbers that something refers to although there is no such object.
std::set<int> danglingNumbers(const PdfDocument& document) {
    std::vector<PdfReference> references;
    for (const PdfSection& section : document.sections()) {
        collectReferences(PdfObject::Value(section.trailer), references);
    }
    for (const int number : document.numbers()) {
        if (const auto object = document.object(number)) {
            collectReferences(object->value, references);
        }
    }
    std::set<int> dangling;
    for (const PdfReference& reference : references) {
        if (document.entry(reference.number) == nullptr) {
            dangling.insert(reference.number);
        }
    }
    return dangling;
}

bool isTrailerKept(const PdfDictionary& before, const PdfDictionary& after) {
    const auto isSame = [&](std::string_view name) {
        const PdfObject* left = before.find(name);
        const PdfObject* right = after.find(name);
        return (left == nullptr) == (right == nullptr) && (left == nullptr || *left == *right);
    };
    const auto firstId = [](const PdfDictionary& trailer) {
        const PdfObject* ids = trailer.find("ID");
        const PdfArray* array = ids != nullptr ? ids->as<PdfArray>() : nullptr;
        return array != nullptr && !array->empty() ? array->front() : PdfObject();
    };
    constexpr std::string_view kKnown[] = {"Size", "Root", "Info", "ID", "Prev"};
    const bool hasOnlyKnown =
        std::all_of(after.entries().begin(), after.entries().end(), [&](const PdfEntry& entry) {
            return std::find(std::begin(kKnown), std::end(kKnown), entry.name) != std::end(kKnown);
        });
    return hasOnlyKnown && isSame("Root") && isSame("Info") && firstId(before) == firstId(after);
}

std::optional<base::Fault> changeOf(const PdfDocument& before, const PdfDocument& after, int number,
                                    int field) {
    const auto was = before.object(number);
    const auto is = after.object(number);
    if (!was || !is) {
        return beside("object " + std::to_string(number) + " taken out or damaged");
    }
    if (was->value == is->value && was->stream == is->stream) {
        return std::nullopt;
    }
    const auto root = before.trailer().reference("Root");
    if (number == field && isEqualBut(*was, *is, {"V", "AP"})) {
        return std::nullopt;
    }
    if (root && number == root->number && isEqualBut(*was, *is, {"DSS", "Extensions"})) {
        return std::nullopt;
    }
    return beside("object " + std::to_string(number));
}

}  // namespace

std::optional<base::Fault> changesBeside(const PdfDocument& before, const PdfDocument& after, int field) {
    if (!after.isFilledFrom(before.bytes().size())) {
        return beside("bytes that belong to nothing");
    }
    if (after.sections().size() <= before.sections().size()) {
        return beside("chain of revisions");
    }
    const std::size_t added = after.sections().size() - before.sections().size();
    if (after.sections()[added].begin != before.sections().front().begin) {
        return beside("chain of revisions");
    }
    const std::set<int> dangling = danglingNumbers(before);
    const std::set<int> known = before.numbers();
    for (std::size_t i = 0; i < added; ++i) {
        const PdfSection& section = after.sections()[i];
        if (!isTrailerKept(before.trailer(), section.trailer)) {
            return beside("trailer");
        }
        for (const auto& [number, entry] : section.entries) {
            if (number == 0) {
                continue;
            }
            if (!known.contains(number)) {
                if (dangling.contains(number)) {
                    return beside("object " + std::to_string(number) + " put where one was missing");
                }
                continue;
            }
            if (auto fault = changeOf(before, after, number, field)) {
                return fault;
            }
        }
    }
    return std::nullopt;
}

}  // namespace ww::seal::detail
