// SPDX-License-Identifier: MPL-2.0
//
// Makes the books that ship: one template for each layout, and the filled demo book. Run by the
// build, in an office of its own with the functions installed.
//
//   make_books cells.oxt demo.txt folder
#include <com/sun/star/awt/PosSize.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>

#include "book/book.hpp"
#include "book/filling.hpp"
#include "office/office.hpp"

namespace {

namespace book = shimwright::book;
namespace css = com::sun::star;
using Document = book::Ref<css::sheet::XSpreadsheetDocument>;

struct Shipped {
  book::Layout layout;
  const char* title;  // in the list of templates, and the file's name
};

// Of a hidden window neither cursor nor frozen rows are saved. The office is headless anyway.
void show(const Document& document, const book::Layout& layout) {
  const auto window = book::as<css::frame::XModel>(document)
                          ->getCurrentController()
                          ->getFrame()
                          ->getContainerWindow();
  window->setPosSize(0, 0, 1440, 900, css::awt::PosSize::POSSIZE);
  window->setVisible(true);
  book::set_views(document, layout);
}

void store(const Document& document, const std::filesystem::path& file, const char* filter) {
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how.getArray()[0].Name = "FilterName";
  how.getArray()[0].Value <<= book::to_office(filter);
  book::as<css::frame::XStorable>(document)->storeToURL(
      book::to_office(shimwright::office::url_of(file)), how);
  std::cout << file.filename().string() << '\n';
}

void close(const Document& document) { book::as<css::util::XCloseable>(document)->close(true); }

void make(const std::filesystem::path& extension, const std::filesystem::path& entries,
          const std::filesystem::path& folder) {
  const Shipped shipped[] = {{book::inline_four(), "Valve service, inline four, 16 valves"}};
  shimwright::office::Settings settings;
  settings.extension = extension;
  const shimwright::office::Office office(settings);
  for (const auto& [layout, title] : shipped) {
    const Document document = book::build_book(office.context(), layout, title);
    show(document, layout);
    store(document, folder / (std::string(title) + ".ots"), "calc8_template");
    close(document);
  }
  const char* title = "Valve service, demo";
  std::ifstream demo(entries);
  if (!demo) throw std::runtime_error("cannot read " + entries.string());
  const Document document = book::build_book(office.context(), shipped[0].layout, title);
  book::fill(document, shipped[0].layout, demo);
  show(document, shipped[0].layout);
  store(document, folder / (std::string(title) + ".ods"), "calc8");
  close(document);
}

}  // namespace

int main(int count, char** words) {
  if (count != 4) {
    std::cerr << "make_books cells.oxt demo.txt folder\n";
    return 2;
  }
  try {
    make(words[1], words[2], words[3]);
    return 0;
  } catch (const css::uno::Exception& failure) {
    std::cerr << "make_books: " << shimwright::office::from_office(failure.Message) << '\n';
  } catch (const std::exception& failure) {
    std::cerr << "make_books: " << failure.what() << '\n';
  }
  return 1;
}
