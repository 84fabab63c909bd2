import { glanceWords } from "../../words/glance.ts";
import type { StudyState } from "../schema/records.ts";

/** How far a study has come, in facts that are kept: their words are made in the language spoken when they are shown. */
export interface Progress {
  jars: number;
  series: number;
  samples: number;
  approvedBy: string | null;
}

/** What a study is about and how far it has come, for a list. */
export interface Glance {
  name: string;
  about: string;
  standing: Progress;
}

/** A study at a glance: which sludge and products, and what has been done, without working anything out. */
export function glanceAt(state: StudyState): Glance {
  const streams = Object.values(state.stream).map(({ label }) => label);
  const products = Object.values(state.product).map(({ label }) => label);
  const approved = Object.values(state.decision)
    .filter(({ withdrawn }) => withdrawn === null)
    .sort((a, b) => (a.at < b.at ? 1 : -1))[0];
  return {
    name: state.study["study"]?.name ?? "",
    about: [...streams.slice(0, 2), ...products.slice(0, 2)].join(" · ").slice(0, 300),
    standing: {
      jars: Object.keys(state.jar).length,
      series: Object.keys(state.series).length,
      samples: Object.keys(state.sample).length,
      approvedBy: approved?.byName ?? null,
    },
  };
}

/** How far a study has come, in one line. */
export function standingWords({ jars, series, samples, approvedBy }: Progress): string {
  const done =
    jars > 0
      ? glanceWords.jarsInSeries(jars, series)
      : samples > 0
        ? glanceWords.sampleOnly
        : glanceWords.nothing;
  if (approvedBy !== null) return glanceWords.approved(done, approvedBy);
  return jars > 0 ? glanceWords.notApproved(done) : done;
}
