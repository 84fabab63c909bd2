/**
 * What is wrong with a message that a person will read, or null: it must be short, on one line, end like a sentence,
 * and show nothing of the machine or of the program's inside.
 */
export function sentenceFault(message: unknown, folder: string): string | null {
  if (typeof message !== "string") return `no text: ${typeof message}`;
  if (message.length < 5) return `too short: "${message}"`;
  if (message.length > 700) return `too long: ${message.length} characters: ${message.slice(0, 200)}`;
  if (/[\p{Cc}]/u.test(message)) return `a control character: ${JSON.stringify(message)}`;
  if (!message.isWellFormed()) return `half a character: ${JSON.stringify(message)}`;
  if (!/[.!?]"?$/.test(message)) return `no end: ${message}`;
  if (/\bundefined\b|\bNaN\b|Infinity|\[object |\bnull\b/.test(message))
    return `a value of the program: ${message}`;
  if (/\bat \S+ ?\(|\bat \S+:\d+|node_modules|node:|Error:/.test(message)) return `a stack: ${message}`;
  if (message.includes(folder)) return `a path of the machine: ${message}`;
  return null;
}
