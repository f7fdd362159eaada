// SPDX-License-Identifier: MPL-2.0
#include "commands/rest.hpp"

namespace shimwright::commands {

using book::as;

bool bring_up_to_date(const Ref<css::uno::XInterface>& document) {
  const auto calculation = as<css::sheet::XCalculatable>(document);
  if (calculation->isAutomaticCalculationEnabled()) return false;
  calculation->calculate();
  return true;
}

Rest::Rest(const Ref<css::uno::XInterface>& document)
    : model_(as<css::frame::XModel>(document)),
      calculation_(as<css::sheet::XCalculatable>(document)),
      was_automatic_(calculation_->isAutomaticCalculationEnabled()) {
  model_->lockControllers();
  calculation_->enableAutomaticCalculation(false);
}

Rest::~Rest() {
  try {
    calculation_->enableAutomaticCalculation(was_automatic_);
    bring_up_to_date(calculation_);
    model_->unlockControllers();
  } catch (const css::uno::Exception&) {
    // The document is gone.
  }
}

}  // namespace shimwright::commands
