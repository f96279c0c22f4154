// Either a value or the fault that prevented it. For input that may be bad; not for broken contracts.
#pragma once

#include <optional>
#include <utility>

#include "core/base/expects.h"
#include "core/base/fault.h"

namespace ww::base {

/// A value of T, or the Fault that says why there is none. Reading the wrong one is a broken contract.
template <class T>
class [[nodiscard]] Result {
  public:
    Result(T value) : m_value(std::move(value)) {}
    Result(Fault fault) : m_fault(std::move(fault)) {}

    explicit operator bool() const { return m_value.has_value(); }
    /// Whether there is a value.
    bool ok() const { return m_value.has_value(); }

    /// The value; asking a fault for one is a broken contract.
    const T& value() const& {
        EXPECTS(m_value.has_value());
        return *m_value;
    }
    T& value() & {
        EXPECTS(m_value.has_value());
        return *m_value;
    }
    T&& value() && {
        EXPECTS(m_value.has_value());
        return std::move(*m_value);
    }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    /// The fault; asking a value for one is a broken contract.
    const Fault& fault() const {
        EXPECTS(m_fault.has_value());
        return *m_fault;
    }

  private:
    std::optional<T> m_value;
    std::optional<Fault> m_fault;
};

/// Result without a value: done, or the fault.
struct Done {};
using Outcome = Result<Done>;

}  // namespace ww::base
