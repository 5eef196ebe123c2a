/** A name as it is kept: composed, without control and direction-switching characters, single spaces. */
export function tidyName(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g, '')
    .replace(/[\p{Cc}\s\u00a0]+/gu, ' ')
    .trim()
}

/** `Ash, Ann` → `Ann Ash`. A text without just one comma between two names is left as it is. */
export function turnAroundName(text: string): string {
  const parts = text.split(',').map((part) => part.trim())
  return parts.length === 2 && parts[0] && parts[1] ? `${parts[1]} ${parts[0]}` : text
}

/** What makes two names the same name: letters, whatever their case and the kind of apostrophe or hyphen. */
export function nameKey(name: string): string {
  return tidyName(name)
    .toLowerCase()
    .normalize('NFC')
    .replace(/[’‘ʼ`´]/g, "'")
    .replace(/[‐‑–]/g, '-')
}

/** What makes two names look alike: the same but for accents and marks. Only ever a reason to ask. */
export function nearNameKey(name: string): string {
  return nameKey(name)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[łøđħıßæœ]/g, (letter) => plain[letter] ?? letter)
    .replace(/['\-. ]/g, '')
}

const plain: Readonly<Record<string, string>> = {
  ł: 'l',
  ø: 'o',
  đ: 'd',
  ħ: 'h',
  ı: 'i',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
}
