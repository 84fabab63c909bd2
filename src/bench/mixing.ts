/** Nominal mixing of a jar: power, velocity gradient and Camp number. Nominal because water's viscosity is used. */
export interface Mixing {
  powerW: number;
  gradientPerS: number;
  camp: number;
}

/** Velocity gradient G = sqrt(P / (mu V)) in 1/s, with viscosity in mPa·s and volume in L. */
export function gradientPerS(powerW: number, viscosityMPaS: number, volumeL: number): number {
  return Math.sqrt(powerW / ((viscosityMPaS / 1000) * (volumeL / 1000)));
}

/** Stirrer power P = Np rho N^3 D^5 (turbulent), with speed in rpm, diameter in mm, density in kg/L. W. */
export function stirrerPowerW(
  powerNumber: number,
  densityKgPerL: number,
  rpm: number,
  diameterMm: number,
): number {
  return powerNumber * densityKgPerL * 1000 * (rpm / 60) ** 3 * (diameterMm / 1000) ** 5;
}

/** Nominal mixing of a stirred jar over a time. */
export function stirredMixing(
  powerW: number,
  viscosityMPaS: number,
  volumeL: number,
  seconds: number,
): Mixing {
  const gradient = gradientPerS(powerW, viscosityMPaS, volumeL);
  return { powerW, gradientPerS: gradient, camp: gradient * seconds };
}

/** Upper bound of the gradient from pouring between beakers: sqrt(n rho g h / (mu t)). Height in m, density in kg/L. */
export function pouringGradientPerS(
  pours: number,
  heightM: number,
  seconds: number,
  viscosityMPaS: number,
  densityKgPerL: number,
): number {
  return Math.sqrt((pours * densityKgPerL * 1000 * 9.80665 * heightM) / ((viscosityMPaS / 1000) * seconds));
}

/** Gradient of an in-line mixer or valve from its pressure drop (kPa) and residence time: sqrt(dP / (mu tau)). */
export function inLineGradientPerS(
  pressureDropKPa: number,
  viscosityMPaS: number,
  residenceS: number,
): number {
  return Math.sqrt((pressureDropKPa * 1000) / ((viscosityMPaS / 1000) * residenceS));
}
