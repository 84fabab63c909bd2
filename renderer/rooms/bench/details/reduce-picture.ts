import { bad, good, type Outcome } from "../../../../src/outcome.ts";
import { jarDetailsWords } from "../../../../src/words/jar-details.ts";

const longestSidePx = 1280;
const mostCharacters = 400_000;

/** A picture file as a JPEG small enough to live in the study, or the sentence why it cannot. */
export async function reducePicture(
  file: File,
): Promise<Outcome<{ image: string; widthPx: number; heightPx: number }>> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file);
  } catch {
    return bad(jarDetailsWords.photos.notPicture(file.name));
  }
  const canvas = document.createElement("canvas");
  for (const side of [longestSidePx, 960, 640]) {
    const scale = Math.min(1, side / Math.max(bitmap.width, bitmap.height));
    canvas.width = Math.max(1, Math.round(bitmap.width * scale));
    canvas.height = Math.max(1, Math.round(bitmap.height * scale));
    canvas.getContext("2d")?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    for (const quality of [0.8, 0.6]) {
      const image = canvas.toDataURL("image/jpeg", quality);
      if (image.length <= mostCharacters)
        return good({ image, widthPx: canvas.width, heightPx: canvas.height });
    }
  }
  return bad(jarDetailsWords.photos.tooLarge(file.name));
}
