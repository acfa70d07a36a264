/** Short cells of a narrow table stay on one line; what is long may break. */
export function unbroken(text: string): string {
  return text.length > 24 ? text : text.replaceAll(' ', '\u00a0')
}
