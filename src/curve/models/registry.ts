import { constant } from "./constant.ts";
import { cubicLog } from "./cubic-log.ts";
import { cubic } from "./cubic.ts";
import { gaussianValley } from "./gaussian-valley.ts";
import { linear } from "./linear.ts";
import { logLogistic } from "./log-logistic.ts";
import { logistic } from "./logistic.ts";
import type { CurveModel } from "./model.ts";
import { plateau } from "./plateau.ts";
import { polynomial } from "./polynomial.ts";
import { quadraticLog } from "./quadratic-log.ts";
import { quadratic } from "./quadratic.ts";
import { saturatingExponential } from "./saturating-exponential.ts";

/** Every model by name, simplest first. A new model is one file and one line here, nothing else. */
export const models: Readonly<Record<string, CurveModel>> = Object.fromEntries(
  [
    constant,
    linear,
    quadratic,
    quadraticLog,
    saturatingExponential,
    plateau,
    cubic,
    cubicLog,
    gaussianValley,
    logistic,
    logLogistic,
  ].map((model) => [model.name, model]),
);

export const highestDegree = 10;

/** The model of this name; the plain polynomial is made for its degree (1 to 10). */
export function modelNamed(name: string, degree = 2): CurveModel | null {
  if (name === "polynomial")
    return Number.isInteger(degree) && degree >= 1 && degree <= highestDegree
      ? polynomial("polynomial", degree, false, degree === 2)
      : null;
  return Object.hasOwn(models, name) ? (models[name] ?? null) : null;
}

/** All names that `fit` accepts. */
export const modelNames: string[] = [...Object.keys(models), "polynomial"];
