import type { lookWords } from "../looks.ts";

export const looks: typeof lookWords = {
  look: "Darstellung",
  names: {
    system: "wie das System",
    light: "hell",
    dark: "dunkel",
    "contrast-light": "hoher Kontrast, hell",
    "contrast-dark": "hoher Kontrast, dunkel",
  },
};
