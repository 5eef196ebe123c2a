import { describe, expect, it } from 'vitest'
import { decodeText } from '#exchange/csv/decode-text'

const bytes = (...numbers: number[]) => Uint8Array.from(numbers)
const decoded = (data: Uint8Array, asked: Parameters<typeof decodeText>[1] = null) => {
  const result = decodeText(data, asked)
  return result.ok ? result.value : null
}

describe('the text of a file', () => {
  // Source: WHATWG Encoding Standard, index windows-1252 (the bytes 0x80 to 0x9F), from memory; also the byte table of
  // Microsoft code page 1252.
  it.each([
    [0x80, 0x20ac],
    [0x81, 0x81],
    [0x82, 0x201a],
    [0x83, 0x0192],
    [0x8a, 0x0160],
    [0x8c, 0x0152],
    [0x8e, 0x017d],
    [0x91, 0x2018],
    [0x92, 0x2019],
    [0x93, 0x201c],
    [0x96, 0x2013],
    [0x99, 0x2122],
    [0x9a, 0x0161],
    [0x9e, 0x017e],
    [0x9f, 0x0178],
    [0xa0, 0xa0],
    [0xe9, 0xe9],
    [0xff, 0xff],
  ])('in Windows-1252 has for byte %s the character %s', (byte, point) => {
    expect(decoded(bytes(0x41, byte), 'windows-1252')?.text).toBe(`A${String.fromCharCode(point)}`)
  })

  it('is Windows-1252 when it cannot be UTF-8', () => {
    expect(decoded(bytes(0x4a, 0x6f, 0x73, 0xe9))).toEqual({ text: 'José', encoding: 'windows-1252' })
  })

  it('is UTF-8 when it can be, with a mark or without', () => {
    const plain = new TextEncoder().encode('Łukasz')
    expect(decoded(plain)).toEqual({ text: 'Łukasz', encoding: 'utf-8' })
    expect(decoded(bytes(0xef, 0xbb, 0xbf, ...plain))).toEqual({ text: 'Łukasz', encoding: 'utf-8' })
  })

  it.each([
    ['utf-16le', bytes(0xff, 0xfe, 0x41, 0x01)],
    ['utf-16be', bytes(0xfe, 0xff, 0x01, 0x41)],
  ])('is %s by its mark, whatever was asked', (encoding, data) => {
    expect(decoded(data, 'windows-1252')).toEqual({ text: 'Ł', encoding })
  })

  it('can be read as asked where no mark says otherwise', () => {
    expect(decoded(new TextEncoder().encode('é'), 'windows-1252')?.text).toBe('Ã©')
  })

  it.each([
    ['an empty file', bytes()],
    ['only a mark', bytes(0xef, 0xbb, 0xbf)],
    ['only line breaks', bytes(13, 10, 13, 10)],
    ['a spreadsheet', bytes(0x50, 0x4b, 3, 4, 0, 0)],
  ])('is refused in a sentence: %s', (_what, data) => {
    const result = decodeText(data, null)
    expect(result.ok ? [] : result.reasons.map((reason) => reason.message.length > 20)).toEqual([true])
  })
})
