/**
 * The header that gives a download its name: RFC 6266, with the name in UTF-8 by RFC 8187 and a plain one for whoever
 * cannot read that. Nothing of the name can end the header or begin another.
 */
export function contentDisposition(fileName: string): string {
  const plain =
    fileName
      .normalize('NFD')
      .replace(/[^\w .()-]/g, '')
      .trim() || 'file'
  return `attachment; filename="${plain}"; filename*=UTF-8''${encodeName(fileName)}`
}

function encodeName(fileName: string): string {
  // encodeURIComponent throws at half a character, and leaves ' ( ) * that RFC 8187 wants encoded.
  const whole = fileName.replace(/\p{Cs}/gu, '\ufffd')
  return encodeURIComponent(whole).replace(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`)
}
