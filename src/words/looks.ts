import { area } from "./language.ts";

/** The looks of the window, as they are chosen. */
export const lookWords = area("looks", {
  look: "Look",
  names: {
    system: "as the system",
    light: "light",
    dark: "dark",
    "contrast-light": "high contrast, light",
    "contrast-dark": "high contrast, dark",
  },
});
