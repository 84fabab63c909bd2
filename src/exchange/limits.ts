/** What a file may be at most, each said in words where it is refused. */
export const limits = {
  /** bytes of the file as it lies on the disk */
  fileBytes: 20 * 1024 * 1024,
  /** bytes of a workbook once it is unpacked */
  unpackedBytes: 150 * 1024 * 1024,
  /** files inside a workbook */
  parts: 2000,
  rows: 50_000,
  columns: 200,
  /** characters of one cell */
  cell: 10_000,
};
