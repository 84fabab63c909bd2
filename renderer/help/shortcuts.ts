/** Every key that does something, by where it does it: one list, shown on one key. */
export const shortcuts: { where: string; keys: { key: string; does: string }[] }[] = [
  {
    where: "Everywhere",
    keys: [
      { key: "Ctrl 1 to Ctrl 6", does: "go to Sample, Bench, Curves, Dose, Plant, Record" },
      { key: "Ctrl Z, Ctrl Y", does: "take the last step back, do it again" },
      { key: "Enter, Tab", does: "accept a number and leave its cell" },
      { key: "Escape", does: "bring back the accepted number; close what is open" },
      { key: "F1", does: "this list" },
      { key: "F2", does: "go to the entry that the guide asks for next" },
    ],
  },
  {
    where: "The table of jars",
    keys: [
      { key: "arrows, Page up, Page down", does: "move from cell to cell" },
      { key: "Shift and an arrow", does: "choose cells of one column" },
      { key: "Ctrl D", does: "fill the chosen cells down, or take the cell above" },
      { key: "Ctrl C, Ctrl V", does: "copy chosen cells; paste a block from a spreadsheet" },
      { key: "Delete", does: "clear the chosen cells" },
      { key: "> before a number", does: "the reading is over the instrument's range" },
    ],
  },
  {
    where: "Running the jars",
    keys: [
      { key: "digits, point or comma", does: "the number that is asked for" },
      { key: "Enter", does: "accept and go on; start or end a timer" },
      { key: "+", does: "a lap while a jar drains; elsewhere over range" },
      { key: "−", does: "back" },
      { key: "/", does: "read the same jar again" },
      { key: "*", does: "leave the jar out, then the number of the reason" },
      { key: "c, s", does: "the curves so far; sound on or off" },
    ],
  },
  {
    where: "The dose line",
    keys: [
      { key: "arrows", does: "move the dose a little; Page up and down more; Home and End to the ends" },
    ],
  },
];
