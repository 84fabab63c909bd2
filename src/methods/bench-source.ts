import { benchMethodWords } from "../words/bench-methods.ts";

/** As `sourceOf`, for what the first room shows: the rest of the list is not loaded before anybody asks for it. */
export const benchSourceOf = (id: keyof typeof benchMethodWords): string => benchMethodWords[id].source;
