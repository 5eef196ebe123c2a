import 'server-only'
import { create } from 'qrcode'

/** A code to scan as one path of squares, for a drawing `size` units wide; the light margin of four is in it. */
export type QrCode = { readonly size: number; readonly path: string }

/** The margin that ISO/IEC 18004 asks for around a code, in its squares. */
const margin = 4

/** A text as a code to scan (ISO/IEC 18004); up to a seventh of it may be dirty or torn (level M). */
export function qrCodeOf(text: string): QrCode {
  const { modules } = create(text, { errorCorrectionLevel: 'M' })
  const squares: string[] = []
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      if (modules.get(row, column)) squares.push(`M${column + margin} ${row + margin}h1v1h-1z`)
    }
  }
  return { size: modules.size + 2 * margin, path: squares.join('') }
}
