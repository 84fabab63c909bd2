import type { Page } from "@playwright/test";

/** Every name of the open study made long, one of them in a single word, over the host's own calls. */
export async function makeNamesLong(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const call = async (name: string, input: unknown, opening?: string) => {
      const response = await fetch(`/call/${name}`, {
        method: "POST",
        headers: {
          "content-type": "application/json",
          ...(opening ? { "x-flocwright-opening": opening } : {}),
        },
        body: JSON.stringify(input),
      });
      const answer = (await response.json()) as { ok: boolean; message?: string; value: Opened };
      if (!answer.ok) throw new Error(answer.message);
      return answer.value;
    };
    interface Opened {
      opening: string;
      seq: number;
      state: Record<string, Record<string, { id: string; name?: string; label?: string }>>;
    }
    const opened = await call("study.current", {});
    const commands = Object.entries(opened.state).flatMap(([kind, records]) =>
      Object.values(records).flatMap(({ id, name, label }, index) => {
        const word =
          kind === "jar"
            ? "of the second row beside the north window"
            : "Nachklärbeckenüberlaufrinnenschlamm";
        const long = `${label ?? name} ${word} with a long name ${index + 1}`;
        const field = label !== undefined ? { label: long } : name !== undefined ? { name: long } : null;
        return field ? [{ do: "set", kind, id, fields: field }] : [];
      }),
    );
    await call(
      "study.apply",
      { command: { do: "together", label: "long names", commands }, afterSeq: opened.seq, by: "" },
      opened.opening,
    );
  });
  await page.reload();
}
