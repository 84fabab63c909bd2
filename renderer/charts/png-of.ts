/** dots for each unit of the drawing, so that letters stay sharp on paper */
const dots = 2;

/** The picture of a saved chart as a PNG file. */
export async function pngOf(svg: string): Promise<Blob> {
  const picture = new Image();
  picture.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await picture.decode();
  const canvas = document.createElement("canvas");
  canvas.width = picture.naturalWidth * dots;
  canvas.height = picture.naturalHeight * dots;
  canvas.getContext("2d")!.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob((file) => (file ? resolve(file) : reject(new Error("no picture"))), "image/png"),
  );
}
