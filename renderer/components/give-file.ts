/** The browser has taken its copy long before. */
const keptMs = 60_000;

/** Gives a file to whoever sits before the window, as a download under this name. */
export function giveFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), keptMs);
}
