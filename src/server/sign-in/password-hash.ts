import 'server-only'
import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto'

// One of the settings of equal strength in OWASP's Password Storage Cheat Sheet (scrypt): N=2^15, r=8, p=3, 32 MiB.
// The library's own are weaker.
const cost = { N: 2 ** 15, r: 8, p: 3, maxmem: 64 * 1024 * 1024 } as const
const keyBytes = 64

/** What is kept of a password: the way it was made, its salt, and its scrypt. */
export async function hashPassword(password: string): Promise<string> {
  const salt = randomBytes(16)
  return `${prefix}${salt.toString('hex')}:${(await keyOf(password, salt)).toString('hex')}`
}

/** Whether a password is the one that was kept. */
export async function isPassword(given: {
  readonly hash: string
  readonly password: string
}): Promise<boolean> {
  const [salt, key] = given.hash.startsWith(prefix) ? given.hash.slice(prefix.length).split(':') : []
  if (!salt || key?.length !== keyBytes * 2) return false
  return timingSafeEqual(Buffer.from(key, 'hex'), await keyOf(given.password, Buffer.from(salt, 'hex')))
}

const prefix = `scrypt:${cost.N}:${cost.r}:${cost.p}:`

function keyOf(password: string, salt: Buffer): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(password, salt, keyBytes, cost, (error, key) => (error ? reject(error) : resolve(key)))
  })
}
