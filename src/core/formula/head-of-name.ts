const forWhat = /^(?:for|für|pour|per)\s[^:]*:\s*/iu
const inBrackets = /\([^()]*\)/gu
/** What comes behind these words tells of the ingredient's use or company, not of itself. */
const usedFor =
  /(?:^|[\s(])(?:for|from|in|with|at|made|dissolved|soaked|mixed|to|zum|zur|für|per|pour|avec|con|mit|gelöst)\s/iu

/** The part of a name that says what the ingredient is: "water" of "water, for the yeast". */
export function headOfName(name: string): string {
  return withoutUse(name).replace(inBrackets, ' ').split(/[,;]/u)[0]?.trim() || name
}

/** A name without what it is for, or with what; "strong white, bread flour" stays whole, and what tells only a use too. */
export function withoutUse(name: string): string {
  return name.replace(forWhat, '').split(usedFor)[0]?.trim() || name
}
