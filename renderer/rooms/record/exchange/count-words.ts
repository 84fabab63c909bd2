const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

/** "3 jars with 7 readings", or only the readings where no jar is new. */
export function jarsAndReadings(jars: number, readings: number): string {
  const read = count(readings, "reading", "readings");
  return jars === 0 ? read : `${count(jars, "jar", "jars")} with ${read}`;
}
