// Draws the invented picture of the demo (a jar with large floc and clear water above it) and writes it as a small JPEG
// into src/study/demo-drawing.ts. Run it only to change the drawing: the demo's file must stay the same from run to run.
// usage: node scripts/demo-drawing.mjs, then npm run format
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright";
import { findBrowser, quietFlags } from "./browser.mjs";

const size = { widthPx: 180, heightPx: 225 };
const browser = await chromium.launch({ executablePath: findBrowser() ?? undefined, args: quietFlags() });
const page = await browser.newPage();
const image = await page.evaluate(({ widthPx, heightPx }) => {
  const canvas = document.createElement("canvas");
  canvas.width = widthPx;
  canvas.height = heightPx;
  const pen = canvas.getContext("2d");
  // drawn on a sheet of 240 by 300
  pen.scale(widthPx / 240, heightPx / 300);
  let seed = 17;
  const chance = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
  pen.fillStyle = "#f4f1ea";
  pen.fillRect(0, 0, 240, 300);
  const jar = new Path2D();
  jar.roundRect(40, 24, 160, 256, 14);
  pen.save();
  pen.clip(jar);
  pen.fillStyle = "#dfe6e0";
  pen.fillRect(40, 60, 160, 220);
  // Large floc lies at the bottom, a few flocs still sink through the water above it.
  for (let floc = 0; floc < 150; floc++) {
    const settled = floc > 12;
    const x = 44 + chance() * 152;
    const y = settled ? 178 + chance() * 100 : 84 + chance() * 90;
    pen.fillStyle = ["#6b5a45", "#7d6a50", "#5b4c3b"][floc % 3];
    pen.beginPath();
    pen.ellipse(x, y, 5 + chance() * 9, 4 + chance() * 6, chance() * 3, 0, 7);
    pen.fill();
  }
  pen.restore();
  pen.strokeStyle = "#4d5a5a";
  pen.lineWidth = 3;
  pen.stroke(jar);
  pen.lineWidth = 1.5;
  for (let mark = 0; mark < 5; mark++) {
    pen.beginPath();
    pen.moveTo(42, 100 + mark * 36);
    pen.lineTo(58, 100 + mark * 36);
    pen.stroke();
  }
  return canvas.toDataURL("image/jpeg", 0.5);
}, size);
await browser.close();
writeFileSync(
  join(import.meta.dirname, "..", "src", "study", "demo-drawing.ts"),
  `/** The demo's one picture: drawn by scripts/demo-drawing.mjs, invented like everything in the demo. */
export const jarDrawing = ${JSON.stringify({ ...size, image })};
`,
);
console.log(`${image.length} characters`);
