import type { LanguageTable } from "../language.ts";
import { checkChain } from "./check-chain.ts";
import { choiceChain } from "./choice-chain.ts";
import { decisionChain } from "./decision-chain.ts";
import { factorChain } from "./factor-chain.ts";
import { feedChain } from "./feed-chain.ts";
import { jarChain } from "./jar-chain.ts";
import { machineChain } from "./machine-chain.ts";
import { plantChain } from "./plant-chain.ts";
import { plantDose } from "./plant-dose.ts";
import { plantInputs } from "./plant-inputs.ts";
import { pumpChain } from "./pump-chain.ts";
import { qualityFlags } from "./quality-flags.ts";
import { record } from "./record.ts";
import { sampleChain } from "./sample-chain.ts";
import { sampleRoom } from "./sample-room.ts";
import { shell } from "./shell.ts";
import { stockChain } from "./stock-chain.ts";
import { strip } from "./strip.ts";
import { studies } from "./studies.ts";
import { supplyFigures } from "./supply-figures.ts";
import { unitChain } from "./unit-chain.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  checkChain,
  choiceChain,
  decisionChain,
  factorChain,
  feedChain,
  jarChain,
  machineChain,
  plantChain,
  plantDose,
  plantInputs,
  pumpChain,
  qualityFlags,
  record,
  sampleChain,
  sampleRoom,
  shell,
  stockChain,
  strip,
  studies,
  supplyFigures,
  unitChain,
  warnings,
};
