/**
 * What stands beside the views: the guide while it is followed, else the form.
 */
import { FieldsPanel } from "../fields/fields-panel.js";
import { Guide } from "./guide.js";
import { guideStep } from "./start-state.js";

export function SidePanel() {
  const step = guideStep.value;
  return step === undefined ? <FieldsPanel /> : <Guide step={step} />;
}
