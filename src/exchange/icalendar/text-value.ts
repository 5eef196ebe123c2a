const lineEnds = /\r\n|[\n\r\u0085\u2028\u2029]/g
// A tab is the only control character that may stand in a text (RFC 5545, 3.1).
const controls = /[^\P{Cc}\t\n]/gu

/** A text as the value of a property (RFC 5545, 3.3.11). */
export function textValue(text: string): string {
  return text
    .replace(lineEnds, '\n')
    .replace(controls, '')
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replaceAll('\n', '\\n')
}

/** The same for what is one line, such as a title. */
export function lineValue(text: string): string {
  return textValue(text.replace(lineEnds, ' ').replace(/\s+/g, ' ').trim())
}
