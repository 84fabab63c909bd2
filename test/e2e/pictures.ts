import type { Page } from "@playwright/test";

/** A picture made small and blurred: one lightness for each cell, 0 to 255. */
export interface SmallPicture {
  columns: number;
  rows: number;
  cells: number[];
}

/** each cell stands for so many pixels of the screen either way, at least */
const cellPx = 20;

/**
 * The screen as a coarse grid of lightness. Letters blur into their line's grey, so that another version of the
 * browser, which draws edges a little differently, changes a cell by a few steps, and a lost panel by many.
 */
export async function smallPicture(page: Page): Promise<SmallPicture> {
  const shot = (await page.screenshot({ animations: "disabled", caret: "hide" })).toString("base64");
  const tab = await page.context().newPage();
  try {
    return await tab.evaluate(
      async ({ shot, cellPx }) => {
        const image = new Image();
        image.src = `data:image/png;base64,${shot}`;
        await image.decode();
        const canvas = document.createElement("canvas");
        canvas.width = image.width;
        canvas.height = image.height;
        const pen = canvas.getContext("2d")!;
        pen.drawImage(image, 0, 0);
        const { data } = pen.getImageData(0, 0, image.width, image.height);
        const columns = Math.floor(image.width / cellPx);
        const rows = Math.floor(image.height / cellPx);
        const cells: number[] = [];
        for (let row = 0; row < rows; row++)
          for (let column = 0; column < columns; column++) {
            let sum = 0;
            for (let y = row * cellPx; y < (row + 1) * cellPx; y++)
              for (let x = column * cellPx; x < (column + 1) * cellPx; x++) {
                const at = (y * image.width + x) * 4;
                sum += 0.299 * data[at]! + 0.587 * data[at + 1]! + 0.114 * data[at + 2]!;
              }
            cells.push(Math.round(sum / cellPx ** 2));
          }
        return { columns, rows, cells };
      },
      { shot, cellPx },
    );
  } finally {
    await tab.close();
  }
}

/** How far apart two pictures are: the share of cells that differ by more than `step` after a blur over neighbours. */
export function difference(a: SmallPicture, b: SmallPicture, step = 12): number {
  if (a.columns !== b.columns || a.rows !== b.rows) return 1;
  const blurred = ({ columns, rows, cells }: SmallPicture) =>
    cells.map((_, index) => {
      const [x, y] = [index % columns, Math.floor(index / columns)];
      let sum = 0;
      let count = 0;
      for (let row = Math.max(0, y - 1); row <= Math.min(rows - 1, y + 1); row++)
        for (let column = Math.max(0, x - 1); column <= Math.min(columns - 1, x + 1); column++) {
          sum += cells[row * columns + column]!;
          count += 1;
        }
      return sum / count;
    });
  const [left, right] = [blurred(a), blurred(b)];
  return left.filter((value, index) => Math.abs(value - right[index]!) > step).length / left.length;
}
