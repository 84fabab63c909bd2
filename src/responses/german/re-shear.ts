import type { ReShearWords } from "../re-shear.ts";

export const responseReShear: ReShearWords = {
  label: "Flockenfestigkeit",
  form: "Flocke zerschert und nachgewachsen",
  standard: "übliche Praxis; Festigkeit d2 / d1, Erholung (d3 - d2) / (d1 - d2), aus dem Gedächtnis",
  first: "zuerst, d1",
  broken: "zerschert, d2",
  regrown: "nachgewachsen, d3",
  head: "Flocke: zuerst, zerschert, nachgewachsen mm",
  onScreen: (first, broken, regrown) =>
    `Flocke ${first} mm, zerschert ${broken} mm${regrown === null ? "" : `, nachgewachsen ${regrown} mm`}`,
  slot: "Flockenfestigkeit",
  group: "eine Flockenfestigkeit",
  fields: {
    re_shear_first_mm: "Flockengröße vor dem Zerscheren, mm",
    re_shear_broken_mm: "Flockengröße zerschert, mm",
    re_shear_regrown_mm: "Flockengröße nachgewachsen, mm",
  },
};
