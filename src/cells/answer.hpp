// SPDX-License-Identifier: MPL-2.0
//
// The one way out for trouble: whatever a function of the add-in throws leaves as one kind of
// exception, which Calc shows as Err:502, with the sentence of what went wrong.
#pragma once

#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Exception.hpp>
#include <com/sun/star/uno/XInterface.hpp>
#include <exception>
#include <string>

#include "office/text.hpp"

namespace shimwright::cells {

// What the function gives; `source` is named as the object in trouble.
template <class Function>
com::sun::star::uno::Any answer(
    Function function,
    const com::sun::star::uno::Reference<com::sun::star::uno::XInterface>& source) {
  std::string sentence;
  try {
    return function();
  } catch (const com::sun::star::uno::Exception& trouble) {  // no std::exception
    sentence = office::from_office(trouble.Message);
  } catch (const std::exception& trouble) {
    sentence = trouble.what();
  } catch (...) {
  }
  if (sentence.empty()) sentence = "something went wrong that has no name";
  throw com::sun::star::lang::IllegalArgumentException(office::to_office(sentence), source, 0);
}

}  // namespace shimwright::cells
