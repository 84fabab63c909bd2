import type { lookWords } from "../looks.ts";

export const looks: typeof lookWords = {
  look: "Ansicht",
  names: {
    system: "wie das System",
    light: "hell",
    dark: "dunkel",
    "contrast-light": "hoher Kontrast, hell",
    "contrast-dark": "hoher Kontrast, dunkel",
  },
};
