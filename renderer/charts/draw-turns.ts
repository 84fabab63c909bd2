import { nextTask } from "../worker/next-task.ts";

const waiting = new Set<() => void>();
let working = false;

/**
 * Draws when it is this drawing's turn: one drawing a task, so that a room with many charts goes on answering while they
 * appear. A drawing that waits already waits once.
 */
export function drawInTurn(draw: () => void): void {
  waiting.add(draw);
  if (!working) void drawAll();
}

/** Takes a drawing out of the row: what it would draw on is gone. */
export function leaveTurn(draw: () => void): void {
  waiting.delete(draw);
}

async function drawAll(): Promise<void> {
  working = true;
  try {
    for (const draw of waiting) {
      await nextTask();
      if (waiting.delete(draw)) draw();
    }
  } finally {
    working = false;
    // One that failed does not keep those behind it waiting.
    if (waiting.size > 0) void drawAll();
  }
}
