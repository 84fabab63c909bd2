/*
 * Numbers of one column, each rounded by its own spread or kept as it was typed, end unevenly: 5.3 under 5.27. So that
 * they can be read down, each is given hidden places before and behind it, by which all marks stand under each other.
 * The text itself stays as it is: what is copied or read aloud has no place more.
 */

/** A piece of a cell's text; a number with the hidden signs that it lacks beside the others of its column. */
export interface TextPiece {
  text: string;
  /** hidden signs before and behind the text */
  lead: string;
  tail: string;
}

// A bracket or a percent sign stays at its number, so that no gap opens between them.
const oneNumber = /\(?[-+]?\d+(?:[.,]\d+)?(?: %)?\)?/g;
/** a cell with more numbers than this is a sentence and has no column to stand in */
const mostNumbers = 4;

interface PlacedNumber {
  text: string;
  from: number;
  /** signs up to the mark, digits behind it, and the mark */
  whole: number;
  decimals: number;
  mark: string;
  /** the whole text's shape with this number's place in it: numbers of one shape begin under each other */
  shape: string;
  /** what follows, by its shape: numbers with the same behind them end under each other */
  behind: string;
}

function numbersOf(text: string): PlacedNumber[] {
  const found = [...text.matchAll(oneNumber)];
  if (found.length > mostNumbers) return [];
  const shape = text.replace(oneNumber, "#");
  return found.map((match, index) => {
    const digits = match[0].replace(/[ %)]/g, "");
    const [whole = "", decimals = ""] = digits.split(/[.,]/);
    return {
      text: match[0],
      from: match.index,
      whole: whole.length,
      decimals: decimals.length,
      mark: /[.,]/.exec(digits)?.[0] ?? "",
      shape: `${index} ${shape}`,
      behind: text.slice(match.index + match[0].length).replace(oneNumber, "#"),
    };
  });
}

/** A way to take each text of a column apart, so that its numbers line up with those of the others. */
export function lineUp(column: readonly string[]): (text: string) => TextPiece[] {
  const wholes = new Map<string, number>();
  const ends = new Map<string, { decimals: number; mark: string }>();
  for (const { whole, decimals, mark, shape, behind } of column.flatMap(numbersOf)) {
    wholes.set(shape, Math.max(whole, wholes.get(shape) ?? 0));
    const known = ends.get(behind);
    ends.set(behind, { decimals: Math.max(decimals, known?.decimals ?? 0), mark: known?.mark || mark });
  }
  return (text) => {
    const pieces: TextPiece[] = [];
    let at = 0;
    for (const own of numbersOf(text)) {
      const end = ends.get(own.behind) ?? own;
      if (own.from > at) pieces.push({ text: text.slice(at, own.from), lead: "", tail: "" });
      pieces.push({
        text: own.text,
        lead: "0".repeat(Math.max(0, (wholes.get(own.shape) ?? 0) - own.whole)),
        tail:
          (own.mark === "" && end.decimals > 0 ? end.mark : "") +
          "0".repeat(Math.max(0, end.decimals - own.decimals)),
      });
      at = own.from + own.text.length;
    }
    if (at < text.length) pieces.push({ text: text.slice(at), lead: "", tail: "" });
    return pieces;
  };
}
