/** The text of a table as spreadsheets save it: UTF-8 with or without its mark, or UTF-16 with one. */
export async function tableText(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer())
  const [first, second] = bytes
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  return new TextDecoder('utf-8').decode(bytes)
}
