// Exact by definition (source: trade table section 1, international yard-and-pound agreement and the US gallon of 231 in3).
export const kgPerLb = 0.45359237;
export const lPerUsGal = 3.785411784;
/** pound-force per square inch in kPa, from the pound, standard gravity and the inch */
export const kPaPerPsi = (0.45359237 * 9.80665) / 0.0254 ** 2 / 1000;
