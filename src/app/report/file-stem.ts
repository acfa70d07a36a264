/** A file name from a question: plain letters and figures with hyphens, at most 60 long, never empty. */
export function fileStem(question: string): string {
  const plain = question
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '')
  return plain === '' ? 'report' : `report-${plain}`
}
