const yesWords = ['yes', 'y', 'true', '1', 'x', '✓', '✔', 'ja', 'j', 'oui', 'sí', 'si', 'tak', 'gk']
const noWords = ['no', 'n', 'false', '0', '-', '–', '✗', '✘', 'nein', 'non', 'nee', 'nie']

/** Yes, no, nothing said (null), or something that is neither (undefined). */
export function yesOrNo(cell: string): boolean | null | undefined {
  const word = cell.trim().toLowerCase()
  if (word === '') return null
  if (yesWords.includes(word)) return true
  return noWords.includes(word) ? false : undefined
}
