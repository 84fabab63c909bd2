import type { StudyState } from "../schema/records.ts";

/** What a study is about and how far it has come, in two short lines for a list. */
export interface Glance {
  name: string;
  about: string;
  standing: string;
}

const counted = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

/** A study at a glance: which sludge and products, and what has been done, without working anything out. */
export function glanceAt(state: StudyState): Glance {
  const streams = Object.values(state.stream).map(({ label }) => label);
  const products = Object.values(state.product).map(({ label }) => label);
  const jars = Object.keys(state.jar).length;
  const series = Object.keys(state.series).length;
  const approved = Object.values(state.decision)
    .filter(({ withdrawn }) => withdrawn === null)
    .sort((a, b) => (a.at < b.at ? 1 : -1))[0];
  const done =
    jars > 0
      ? `${counted(jars, "jar", "jars")} in ${counted(series, "series", "series")}`
      : Object.keys(state.sample).length > 0
        ? "sample taken down, no jars yet"
        : "nothing entered yet";
  return {
    name: state.study["study"]?.name ?? "",
    about: [...streams.slice(0, 2), ...products.slice(0, 2)].join(" · ").slice(0, 300),
    standing: approved
      ? `${done}; dose approved by ${approved.byName}`
      : jars > 0
        ? `${done}, no dose approved yet`
        : done,
  };
}
