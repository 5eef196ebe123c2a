// Letters that are no letter with a mark to Unicode, though a hurried hand writes them so.
const plainLetters: Readonly<Record<string, string>> = {
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
  ħ: 'h',
}

/** Words as they are compared: small letters without marks, one space between words, nothing else. */
export function foldName(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[øłđðþßæœıħ]/g, (letter) => plainLetters[letter] ?? letter)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}
