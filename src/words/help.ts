import { area } from "./language.ts";

/** The list of keys and words, but for the words themselves. */
export const helpWords = area("help", {
  title: "Keys and words",
  close: "Close (Escape)",
  words: "Words",
  guideSays: (title: string) =>
    `The guide under the strip says what comes next on the way to the first pump settings: ${title.toLowerCase()}.`,
  guideDone: "The guide has led to the first pump settings and has nothing left to ask.",
  showGuide: "Show the guide",
  hideGuide: "Hide the guide",
  /** every key that does something, by where it does it */
  shortcuts: {
    everywhere: {
      where: "Everywhere",
      keys: {
        rooms: { key: "Ctrl 1 to Ctrl 6", does: "go to Sample, Bench, Curves, Dose, Plant, Record" },
        undo: { key: "Ctrl Z, Ctrl Y", does: "take the last step back, do it again" },
        accept: { key: "Enter, Tab", does: "accept a number and leave its cell" },
        escape: { key: "Escape", does: "bring back the accepted number; close what is open" },
        help: { key: "F1", does: "this list" },
        guide: { key: "F2", does: "go to the entry that the guide asks for next" },
      },
    },
    table: {
      where: "The table of jars",
      keys: {
        move: { key: "arrows, Page up, Page down", does: "move from cell to cell" },
        choose: { key: "Shift and an arrow", does: "choose cells of one column" },
        fill: { key: "Ctrl D", does: "fill the chosen cells down, or take the cell above" },
        copy: { key: "Ctrl C, Ctrl V", does: "copy chosen cells; paste a block from a spreadsheet" },
        clear: { key: "Delete", does: "clear the chosen cells" },
        over: { key: "> before a number", does: "the reading is over the instrument's range" },
      },
    },
    running: {
      where: "Running the jars",
      keys: {
        digits: { key: "digits, point or comma", does: "the number that is asked for" },
        enter: { key: "Enter", does: "accept and go on; start or end a timer" },
        plus: { key: "+", does: "a lap while a jar drains; elsewhere over range" },
        minus: { key: "−", does: "back" },
        again: { key: "/", does: "read the same jar again" },
        leaveOut: { key: "*", does: "leave the jar out, then the number of the reason" },
        curves: { key: "c, s", does: "the curves so far; sound on or off" },
      },
    },
    doseLine: {
      where: "The dose line",
      keys: {
        move: {
          key: "arrows",
          does: "move the dose a little; Page up and down more; Home and End to the ends",
        },
      },
    },
  },
});
