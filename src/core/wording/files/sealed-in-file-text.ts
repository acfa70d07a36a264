/** What a backup gives away of the trials in it that are sealed, by their number. */
export function sealedInFileText(sealed: number): string {
  const which = sealed === 1 ? '1 trial is sealed' : `${sealed} trials are sealed`
  return `${which}, but the file holds everything: levels, weights, letters and what each code stands for. Keep it from whoever still tastes.`
}
