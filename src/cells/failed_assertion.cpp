// SPDX-License-Identifier: MPL-2.0
//
// What libstdc++'s checks call when they fail (_GLIBCXX_ASSERTIONS). Its own is in libstdc++ only
// since GCC 12 (GLIBCXX_3.4.30); with this one in its place the add-in runs with that of GCC 11.
#include <cstdio>
#include <cstdlib>

namespace std {

// As the library declares it, for clang.
__attribute__((__noreturn__)) void __glibcxx_assert_fail(const char* file, int line,
                                                         const char* function,
                                                         const char* condition) noexcept;

void __glibcxx_assert_fail(const char*, int, const char*, const char* condition) noexcept {
  if (condition != nullptr) std::fputs(condition, stderr);
  std::abort();
}

}  // namespace std
