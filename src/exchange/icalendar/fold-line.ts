/** Without the break (RFC 5545, 3.1). */
const mostOctets = 75

/** A content line in parts of 75 octets at most, each but the first after a space; a character stays whole. */
export function foldLine(line: string): string {
  const parts: string[] = []
  let part = ''
  let octets = 0
  for (const character of line) {
    const own = octetsOf(character)
    if (octets + own > mostOctets) {
      parts.push(part)
      part = ' '
      octets = 1
    }
    part += character
    octets += own
  }
  return [...parts, part].join('\r\n')
}

/** Of one character in UTF-8 (RFC 3629, 3). */
function octetsOf(character: string): number {
  const point = character.codePointAt(0) ?? 0
  if (point < 0x80) return 1
  if (point < 0x800) return 2
  return point < 0x10000 ? 3 : 4
}
