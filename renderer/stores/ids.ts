let lastStamp = 0;
let withinStamp = 0;

/** A short sortable id: milliseconds and a running number in base 36, then chance so that two windows never collide. */
export function newId(): string {
  const stamp = Math.max(Date.now(), lastStamp);
  withinStamp = stamp === lastStamp ? withinStamp + 1 : 0;
  lastStamp = stamp;
  const chance = (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0).toString(36).padStart(7, "0").slice(-5);
  return `${stamp.toString(36)}${withinStamp.toString(36).padStart(3, "0")}-${chance}`;
}
