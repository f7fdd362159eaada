// SPDX-License-Identifier: MPL-2.0
#include "bench_list.hpp"

#include <chrono>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/util/URLTransformer.hpp>
#include <stdexcept>
#include <thread>

#include "book/command_urls.hpp"
#include "book/fit_map.hpp"

namespace shimwright::tests {

using book::as;
using book::FitMap;
using book::to_office;

void run_command(const office::Office& office, const OpenBook& book, std::string_view name) {
  css::util::URL url;
  url.Complete = to_office(name);
  css::util::URLTransformer::create(office.context())->parseStrict(url);
  const auto command =
      as<css::frame::XDispatchProvider>(
          as<css::frame::XModel>(book.document())->getCurrentController()->getFrame())
          ->queryDispatch(url, to_office("_self"), 0);
  if (!command.is()) throw std::runtime_error("no command " + std::string(name));
  command->dispatch(url, {});
}

int take_to_bench(const office::Office& office, const OpenBook& book) {
  run_command(office, book, book::command::take_to_bench);
  const auto is_blank = [&book](At at) { return book.formula(book::sheet_name::fit, at).empty(); };
  for (int i = 0; i < 300 && is_blank(FitMap::taken); ++i)
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
  book.recalculate();
  int steps = 0;
  while (!is_blank({FitMap::step, FitMap::first_row + steps})) ++steps;
  return steps;
}

}  // namespace shimwright::tests
