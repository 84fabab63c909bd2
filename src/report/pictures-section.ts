import type { SeriesChain } from "../study/derive/jars.ts";
import type { StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import type { PaperWords } from "./words.ts";
import { reportWords } from "../words/report.ts";

/** The pictures of a series' jars, inside the file itself; nothing where none was taken. */
export function picturesSection(state: StudyState, { jars }: SeriesChain, words: PaperWords): Markup | null {
  const shown = jars.flatMap(({ jar }) =>
    Object.values(state.photo)
      .filter(({ jarId }) => jarId === jar.id)
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map((photo) => ({ jar: jar.label, photo })),
  );
  if (shown.length === 0) return null;
  return markup`<h3>${reportWords.pictures}</h3><div class="pictures">${shown.map(({ jar, photo }) => {
    const name = reportWords.pictureOfJar(jar, photo.label);
    return markup`<figure><img src="${photo.image}" alt="${name}" width="${String(photo.widthPx)}" height="${String(photo.heightPx)}"><figcaption>${name}, ${words.moment(photo.takenAt)}${photo.note ? `. ${photo.note}` : ""}</figcaption></figure>`;
  })}</div>`;
}
