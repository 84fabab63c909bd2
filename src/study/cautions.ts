import { cautionWords } from "../words/cautions.ts";

/** What is to be minded when a solution is made down, a sentence a line. */
export const makeDownCautions = (): string[] => Object.values(cautionWords.makeDown);

/** What is to be minded before a pump is set, a sentence a line. */
export const plantCautions = (): string[] => Object.values(cautionWords.plant);
