import type { Made } from "../../src/study/derive/figure.ts";

/** How a number was made, or what tells it once somebody asks: large tables need not work it out for every number. */
export type MadeSource = Made | (() => Made | Promise<Made>);
