/** Jars of a step so large that SQLite writes some of it into the file before the step is whole. */
export const importedJars = 2000;
