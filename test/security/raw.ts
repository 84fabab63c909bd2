import { connect } from "node:net";

export interface RawAnswer {
  text: string;
  /** the status of each answer, in order */
  statuses: number[];
  closed: boolean;
  afterMs: number;
}

/** Writes bytes to a port as they are and gathers what comes back until the other side closes, or for so long. */
export function talk(
  port: number,
  bytes: string | Buffer | (string | Buffer)[],
  options: { forMs?: number; everyMs?: number; host?: string } = {},
): Promise<RawAnswer> {
  const parts = Array.isArray(bytes) ? [...bytes] : [bytes];
  const started = performance.now();
  return new Promise((resolve) => {
    const socket = connect(port, options.host ?? "127.0.0.1");
    const got: Buffer[] = [];
    const finish = (closed: boolean) => {
      clearInterval(dribble);
      clearTimeout(late);
      socket.destroy();
      const text = Buffer.concat(got).toString("latin1");
      const statuses = [...text.matchAll(/^HTTP\/1\.1 (\d{3}) /gm)].map((match) => Number(match[1]));
      resolve({ text, statuses, closed, afterMs: performance.now() - started });
    };
    const write = () => {
      const part = parts.shift();
      if (part !== undefined && socket.writable) socket.write(part);
    };
    const dribble = setInterval(write, options.everyMs ?? 1);
    const late = setTimeout(() => finish(false), options.forMs ?? 400);
    socket.on("data", (chunk) => got.push(chunk));
    socket.on("error", () => undefined);
    socket.on("close", () => finish(true));
  });
}

/** A request's head and body as they go over the wire; the connection is closed after it unless the headers say otherwise. */
export function head(first: string, headers: Record<string, string>, body = ""): string {
  const lines = Object.entries({ connection: "close", ...headers }).map(
    ([name, value]) => `${name}: ${value}\r\n`,
  );
  return `${first} HTTP/1.1\r\n${lines.join("")}\r\n${body}`;
}
