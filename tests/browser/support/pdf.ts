/** Sheets of a PDF as Chromium writes it, each with its size in points. A4 is 595.28 × 841.89 (ISO 216). */
export function sheetsOf(pdf: Buffer): readonly { readonly width: number; readonly height: number }[] {
  const text = pdf.toString('latin1')
  const sheets = [...text.matchAll(/\/Type\s*\/Page\b[\s\S]*?\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/g)]
  return sheets.map(([, width, height]) => ({ width: Number(width), height: Number(height) }))
}
