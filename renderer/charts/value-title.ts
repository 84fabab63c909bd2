/** what the padding takes of a chart's height around the middle of its value axis, and what the dose axis does, in px */
const paddingPx = 4;
const doseAxisPx = 40;

/**
 * What stands along the value axis: response and unit, or the unit alone where the chart is too low for both, since the
 * response is named above the chart anyway.
 */
export function valueTitle(
  { valueLabel, valueUnit }: { valueLabel: string; valueUnit: string },
  heightPx: number,
  showDoseAxis: boolean,
  widthPxOf: (text: string) => number,
): string {
  return widthPxOf(valueLabel) <= heightPx - (showDoseAxis ? doseAxisPx : paddingPx) ? valueLabel : valueUnit;
}
