const entities: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** Text made safe inside HTML, SVG and quoted attributes: whatever a person typed stays text. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => entities[sign] ?? sign).replace(unprintable, '')
}

/** Control characters that no XML or HTML document may hold; tab and line ends stay. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are exactly the characters to take out
const unprintable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/g

/**
 * Text made safe inside Markdown, also in a table cell: signs that would format, link or embed are escaped, line ends
 * become blanks, angle brackets and ampersands become entities, and a text is never read as a heading, list or quote.
 */
export function escapeMarkdown(text: string): string {
  const flat = text
    .replace(unprintable, '')
    .replace(/\s*[\r\n]+\s*/g, ' ')
    .trim()
  const escaped = flat
    .replace(/[\\`*_{}[\]|~$^]/g, '\\$&')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/:\/\//g, '\\://')
    .replace(/\b(www)\./gi, '$1\\.')
    .replace(/@/g, '\\@')
  return escaped.replace(/^(\d+)([.)])(?=\s|$)/, '$1\\$2').replace(/^([#+=-])/, '\\$1')
}
