import { createHash, randomBytes } from 'node:crypto'

/** Without I, L, O and U, which are read as others. */
const letters = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
const groups = 7
const lettersInGroup = 4

/**
 * A code that opens the set-up page once: 28 letters of 5 bits each, 140 in all. Only its hash is given on.
 *
 * @returns {{ code: string, hash: string }} the code in groups, as it is read out; the hash of it without the dashes
 */
export function makeSetUpCode() {
  const drawn = [...randomBytes(groups * lettersInGroup)].map((byte) => letters[byte % letters.length])
  const plain = drawn.join('')
  const code = plain.match(new RegExp(`.{${lettersInGroup}}`, 'g'))?.join('-') ?? plain
  return { code, hash: createHash('sha256').update(plain).digest('hex') }
}
