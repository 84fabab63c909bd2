/** Told now and then while a file is made: jars worked out so far, then lines written, each of how many. */
export type ExportTold = (step: "jars" | "lines", done: number, total: number) => void;
