/** The files that are handed to the browser's own "save" while some work is done, by name, with their text. */
export async function filesSavedBy(work: () => Promise<void>): Promise<Map<string, string>> {
  const plain = HTMLAnchorElement.prototype.click
  const saved: Promise<[string, string]>[] = []
  HTMLAnchorElement.prototype.click = function click() {
    const { download, href } = this
    saved.push(fetch(href).then(async (file) => [download, await file.text()]))
  }
  try {
    await work()
    return new Map(await Promise.all(saved))
  } finally {
    HTMLAnchorElement.prototype.click = plain
  }
}
