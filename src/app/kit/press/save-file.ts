/** Hands a file to the browser's own "save": nothing leaves the device. */
export function saveFile(name: string, content: Blob | string, mediaType = 'text/plain'): void {
  const blob = typeof content === 'string' ? new Blob([content], { type: mediaType }) : content
  const address = URL.createObjectURL(blob)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
