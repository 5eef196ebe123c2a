import { createDecipheriv, createHmac, hkdfSync, scryptSync } from 'node:crypto'

const chunkLength = 64 * 1024 + 16

/**
 * Opens an age file with a passphrase by the format's own description (C2SP, age-encryption.org/v1, from memory), with
 * OpenSSL's primitives alone: no line in common with the library that writes our backups.
 */
export function openAgeBySpec(file: Buffer, passphrase: string): Buffer {
  const macAt = file.indexOf('\n--- ') + 1
  const headerEnd = file.indexOf('\n', macAt)
  const [version, stanza = '', body = ''] = file.toString('latin1', 0, macAt).split('\n')
  if (version !== 'age-encryption.org/v1') throw new Error(`version ${version}`)
  const [arrow, kind, salt = '', logN] = stanza.split(' ')
  if (arrow !== '->' || kind !== 'scrypt') throw new Error(`stanza ${stanza}`)

  const saltBytes = Buffer.concat([Buffer.from('age-encryption.org/v1/scrypt'), Buffer.from(salt, 'base64')])
  const N = 2 ** Number(logN)
  const wrapKey = scryptSync(passphrase, saltBytes, 32, { N, r: 8, p: 1, maxmem: 256 * N * 8 })
  const fileKey = unseal(wrapKey, Buffer.alloc(12), Buffer.from(body, 'base64'))

  const macKey = Buffer.from(hkdfSync('sha256', fileKey, '', 'header', 32))
  const mac = createHmac('sha256', macKey)
    .update(file.subarray(0, macAt + '---'.length))
    .digest('base64')
    .replace(/=+$/, '')
  const said = file.toString('latin1', macAt + '--- '.length, headerEnd)
  if (mac !== said) throw new Error('the header’s code does not fit')

  const nonce = file.subarray(headerEnd + 1, headerEnd + 17)
  const key = Buffer.from(hkdfSync('sha256', fileKey, nonce, 'payload', 32))
  const payload = file.subarray(headerEnd + 17)
  const chunks: Buffer[] = []
  for (let at = 0, count = 0; at < payload.length; at += chunkLength, count += 1) {
    const counter = Buffer.alloc(12)
    counter.writeUInt32BE(count, 7)
    counter[11] = at + chunkLength >= payload.length ? 1 : 0
    chunks.push(unseal(key, counter, payload.subarray(at, at + chunkLength)))
  }
  return Buffer.concat(chunks)
}

function unseal(key: Buffer, nonce: Buffer, sealed: Buffer): Buffer {
  const cipher = createDecipheriv('chacha20-poly1305', key, nonce, { authTagLength: 16 })
  cipher.setAuthTag(sealed.subarray(-16))
  return Buffer.concat([cipher.update(sealed.subarray(0, -16)), cipher.final()])
}
