/** A record by its kind and its name, the kind said once: "jar 4", but not "sample Sample 1". */
export const namedOnce = (kind: string, label: string): string =>
  label.toLowerCase().startsWith(kind.toLowerCase()) ? label : `${kind} ${label}`;
