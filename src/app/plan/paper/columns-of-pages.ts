/** The places of so many columns, shared out evenly over as few pages as hold at most so many each: 7 by 5 is 4 and 3. */
export function columnsOfPages(count: number, mostOnAPage: number): number[][] {
  const pages = Math.ceil(count / mostOnAPage)
  const each = Math.ceil(count / pages)
  return Array.from({ length: pages }, (_, page) =>
    Array.from({ length: Math.min(each, count - page * each) }, (_column, at) => page * each + at),
  )
}
