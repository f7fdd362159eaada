// SPDX-License-Identifier: MPL-2.0
//
// Makes the books that ship: a template for each usual engine, and the demo books, filled, each as
// a book and as a template, so that it is found beside the others. Run by the build, in offices of
// its own with the functions installed.
//
//   make_books cells.oxt entries folder [title]
//
// `entries`: the folder with those of the demo books.
//
// `title`: only books whose title begins so, such as "Valve service, demo".
#include <algorithm>
#include <atomic>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <exception>
#include <filesystem>
#include <fstream>
#include <future>
#include <iostream>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "book/office/views.hpp"
#include "builder/builder.hpp"
#include "core/engine/presets.hpp"
#include "office/office.hpp"

namespace {

namespace book = shimwright::book;
using shimwright::EngineLayout;
using shimwright::Preset;
namespace css = com::sun::star;
using Document = book::Ref<css::sheet::XSpreadsheetDocument>;

struct Valves {
  int exhaust;
  int inlet;
  std::vector<std::string> of;  // names of presets
};

// Which engines are built with so many valves a cylinder is common practice, no source.
std::vector<EngineLayout> shipped_layouts() {
  const std::vector<Valves> usual{
      {2,
       2,
       {"single", "parallel twin", "V-twin", "inline three", "inline four", "inline six",
        "flat four", "V8"}},
      {1, 1, {"single", "parallel twin", "V-twin", "inline four", "inline six", "flat four", "V8"}},
      {2, 3, {"single", "parallel twin", "inline four"}},
  };
  std::vector<EngineLayout> layouts;
  for (const Valves& valves : usual)
    for (const Preset& preset : shimwright::presets()) {
      if (std::ranges::find(valves.of, preset.name) == valves.of.end()) continue;
      EngineLayout layout = preset.layout;
      layout.exhaust_valves = valves.exhaust;
      layout.inlet_valves = valves.inlet;
      layout.name = shimwright::full_name(layout);
      layouts.push_back(std::move(layout));
    }
  return layouts;
}

struct Work {
  std::string title;
  EngineLayout layout;
  std::string entries = {};  // file; a book with them is shipped as a document too
};

// Whose title begins with `only`.
std::vector<Work> work_on(std::string_view only) {
  std::vector<Work> all;
  for (const EngineLayout& layout : shipped_layouts())
    all.push_back({"Valve service, " + layout.name, layout});
  const auto three = std::ranges::find(shimwright::presets(), "inline three", &Preset::name);
  EngineLayout layout = three->layout;
  layout.exhaust_valves = layout.inlet_valves = 2;
  layout.name = shimwright::full_name(layout);
  all.push_back({"Valve service, demo", shimwright::inline_four(), "demo.txt"});
  all.push_back({"Valve service, demo of eight years", layout, "eight_years.txt"});
  std::erase_if(all, [only](const Work& work) { return !work.title.starts_with(only); });
  return all;
}

std::string text_of(const std::filesystem::path& file) {
  std::ifstream text(file);
  if (!text) throw std::runtime_error("cannot read " + file.string());
  return {std::istreambuf_iterator<char>(text), {}};
}

void store(const Document& document, const std::filesystem::path& file, std::string_view filter) {
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how.getArray()[0].Name = "FilterName";
  how.getArray()[0].Value <<= book::to_office(filter);
  book::as<css::frame::XStorable>(document)->storeToURL(
      book::to_office(shimwright::office::url_of(file)), how);
  std::cout << file.filename().string() + '\n';
}

void close(const Document& document) { book::as<css::util::XCloseable>(document)->close(true); }

// What an earlier run made, and the locks of an office that was killed over it: they would keep
// this one from writing.
void remove_books(const std::filesystem::path& folder) {
  for (const auto& made : std::filesystem::directory_iterator(folder))
    if (made.path().extension() == ".ots" || made.path().extension() == ".ods" ||
        made.path().filename().string().starts_with(".~lock."))
      std::filesystem::remove(made.path());
}

void make(const Work& work, const shimwright::builder::Builder& builder,
          const std::filesystem::path& entries, const std::filesystem::path& folder) {
  const std::string filled = work.entries.empty() ? "" : text_of(entries / work.entries);
  const Document document = builder.build(work.layout, work.title, filled);
  book::show(document);
  if (!filled.empty()) store(document, folder / (work.title + ".ods"), "calc8");
  store(document, folder / (work.title + ".ots"), "calc8_template");
  close(document);
}

// In two offices, each of which keeps one core busy.
void make_all(const std::filesystem::path& extension, const std::filesystem::path& entries,
              const std::filesystem::path& folder, std::string_view only) {
  remove_books(folder);
  const std::vector<Work> all = work_on(only);
  std::atomic<std::size_t> next = 0;
  const auto make_some = [&] {
    shimwright::office::Settings settings;
    settings.extension = extension;
    const shimwright::office::Office office(settings);
    const shimwright::builder::Builder builder(office);
    for (std::size_t i = next++; i < all.size(); i = next++) make(all[i], builder, entries, folder);
  };
  std::future<void> beside;
  if (all.size() > 1) beside = std::async(std::launch::async, make_some);
  make_some();
  if (beside.valid()) beside.get();
}

}  // namespace

int main(int count, char** words) {
  if (count != 4 && count != 5) {
    std::cerr << "make_books cells.oxt entries folder [title]\n";
    return 2;
  }
  try {
    make_all(words[1], words[2], words[3], count > 4 ? words[4] : "");
    return 0;
  } catch (const css::uno::Exception& failure) {
    std::cerr << "make_books: " << shimwright::office::from_office(failure.Message) << '\n';
  } catch (const std::exception& failure) {
    std::cerr << "make_books: " << failure.what() << '\n';
  }
  return 1;
}
