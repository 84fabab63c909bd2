import type { LanguageTable } from "../../words/language.ts";
import { responseCakeTs } from "./cake-ts.ts";
import { responseCapture } from "./capture.ts";
import { responseCst } from "./cst.ts";
import { responseDrained } from "./drained.ts";
import { responseFiles } from "./file-cells.ts";
import { responseFilterTime } from "./filter-time.ts";
import { responseFiltrateTss } from "./filtrate-tss.ts";
import { responseFlocGrade, responseFlocLooks } from "./floc-grade.ts";
import { responseReShear } from "./re-shear.ts";
import { responseSrf } from "./srf.ts";
import { responseTurbidity } from "./turbidity.ts";
import { responseZeta } from "./zeta.ts";

/** German of what is read of a jar. A response that is not in it speaks English, and the test of the words names it. */
export const responsesInGerman: LanguageTable = {
  responseCakeTs,
  responseCapture,
  responseCst,
  responseDrained,
  responseFiles,
  responseFilterTime,
  responseFiltrateTss,
  responseFlocGrade,
  responseFlocLooks,
  responseReShear,
  responseSrf,
  responseTurbidity,
  responseZeta,
};
