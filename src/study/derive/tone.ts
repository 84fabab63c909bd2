/** How a state is to be taken: done, waiting, worth a look, wrong, or not there yet. Screens add an icon and colour. */
export type StateTone = "good" | "open" | "warn" | "bad" | "missing";
