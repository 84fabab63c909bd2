import { benchMethods } from "./bench.ts";
import { choiceMethods } from "./choice.ts";
import { curveMethods } from "./curve.ts";
import type { Method } from "./method.ts";
import { plantMethods } from "./plant.ts";

const all = [...benchMethods, ...curveMethods, ...choiceMethods, ...plantMethods] as const;
type MethodId = (typeof all)[number]["id"];

/** Every formula the product uses, in the order of the job. "From memory" and "no source" are said where they hold. */
export const methods: readonly Method[] = all;

const sources = Object.fromEntries(all.map(({ id, source }) => [id, source])) as Record<MethodId, string>;

/** Where a formula comes from, as the methods page and the report say it. */
export const sourceOf = (id: MethodId): string => sources[id];
