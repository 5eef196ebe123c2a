import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'

export const encodings = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const
export type Encoding = (typeof encodings)[number]

export type DecodedText = { readonly text: string; readonly encoding: Encoding }

/**
 * The text of a file. A byte order mark decides; without one, bytes that are valid UTF-8 are UTF-8 and all others
 * Windows-1252, in which every byte means something. `asked` overrules the guess, never a mark.
 * Errors: nothing in it, or zero bytes in it (a spreadsheet or a picture, not a text).
 */
export function decodeText(bytes: Uint8Array, asked: Encoding | null): Result<DecodedText, Problem> {
  if (bytes.length === 0) return refuse({ path: 'file', message: emptyFile })
  const encoding = encodingByMark(bytes) ?? asked ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252')
  const text = decodeAs(bytes, encoding)
  if (text.includes('\u0000')) return refuse({ path: 'file', message: notAText })
  if (text.trim() === '') return refuse({ path: 'file', message: emptyFile })
  return accept({ text, encoding })
}

const emptyFile = 'The file is empty. Choose a file with one row for each player or day.'
const notAText =
  'The file is not a text, perhaps a spreadsheet or a picture. In the spreadsheet choose “Save as” and the form CSV, then choose that file.'

function encodingByMark(bytes: Uint8Array): Encoding | null {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return 'utf-8'
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be'
  return null
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return true
  } catch {
    return false
  }
}

function decodeAs(bytes: Uint8Array, encoding: Encoding): string {
  return encoding === 'windows-1252' ? decodeWindows1252(bytes) : new TextDecoder(encoding).decode(bytes)
}

// Bytes 80 to 9F; the rest is as in Latin-1. Source: WHATWG Encoding Standard, index windows-1252.
// TextDecoder is not asked: in some releases of Node 20 it reads these 32 bytes as Latin-1 control characters.
const high = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'

function decodeWindows1252(bytes: Uint8Array): string {
  const parts: string[] = []
  const block = 8192
  for (let start = 0; start < bytes.length; start += block) {
    parts.push(String.fromCharCode(...bytes.subarray(start, start + block)))
  }
  return parts.join('').replace(/[\u0080-\u009f]/g, (c) => high[c.charCodeAt(0) - 0x80] ?? c)
}
