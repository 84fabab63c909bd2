/** Why a jar is left out, numbered as the technician presses them. */
export const leftOutReasons = [
  { value: "spilled", label: "1 spilled" },
  { value: "wrong-dose", label: "2 wrong dose" },
  { value: "mixing-failed", label: "3 mixing failed" },
  { value: "timer-missed", label: "4 timer missed" },
  { value: "reading-failed", label: "5 reading failed" },
  { value: "sample-changed", label: "6 sample changed" },
  { value: "other", label: "7 other" },
];
