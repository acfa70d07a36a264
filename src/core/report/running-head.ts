/** Letters of the text that fit between the name and the page's number. */
const mostLetters = 62

/**
 * The head of every printed page: the name, a text and the page's number, as style rules. Browsers without page
 * margins of their own print none. Whatever a person typed is written as escaped signs, so that it stays text.
 */
export function runningHead(title: string): string {
  const letters = [...title.replace(/\s+/g, ' ').trim()]
  const short =
    letters.length <= mostLetters
      ? letters
      : [
          ...letters
            .slice(0, mostLetters - 1)
            .join('')
            .trimEnd(),
          '…',
        ]
  const text = short.map(styleLetter).join('')
  const look = 'font-size:8pt;color:#000;vertical-align:bottom;padding-bottom:2mm'
  return `@page{margin:16mm 14mm 10mm;
@top-left{content:"EVENHAND";font-weight:700;letter-spacing:.13em;${look}}
@top-center{content:"${text}";width:70%;${look}}
@top-right{content:"page " counter(page) " of " counter(pages);${look}}}`
}

/** Plain letters, figures and blanks as they are; anything else by its number, which ends with a blank. */
function styleLetter(letter: string): string {
  return /^[A-Za-z0-9 ]$/.test(letter) ? letter : `\\${(letter.codePointAt(0) ?? 32).toString(16)} `
}
