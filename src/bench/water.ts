/**
 * Viscosity of water at 0.1 MPa in mPa·s, -20 to 110 °C. Source: Pátek et al. 2009, J. Phys. Chem. Ref. Data 38:21
 * (coefficients from memory, checked against 1.0016 mPa·s at 20 °C).
 */
export function waterViscosityMPaS(temperatureC: number): number {
  const x = (temperatureC + 273.15) / 300;
  return (280.68 * x ** -1.9 + 511.45 * x ** -7.7 + 61.131 * x ** -19.6 + 0.45903 * x ** -40) / 1000;
}
