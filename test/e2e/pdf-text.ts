import { extractText, getDocumentProxy } from "unpdf";

/** The text of each page of a PDF file, gaps as single spaces. */
export async function pdfPages(pdf: Uint8Array): Promise<string[]> {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: false });
  return text.map((page) => page.replace(/\s+/g, " ").trim());
}
