import { scryptSync } from 'node:crypto'
import { expect, it } from 'vitest'
import { hashPassword, isPassword } from '#server/sign-in/password-hash'

// OWASP Password Storage Cheat Sheet, scrypt: N=2^15, r=8, p=3 is one of its settings of equal strength (from memory).
it('keeps a password as scrypt of the recommended cost, salted anew each time, and knows it again', async () => {
  const password = 'nine slow barges under rain'
  const [one, two] = [await hashPassword(password), await hashPassword(password)]
  expect(one).not.toBe(two)
  const [, n, r, p, salt = '', key] = one.split(':')
  expect([n, r, p].map(Number)).toEqual([32768, 8, 3])
  const again = scryptSync(password, Buffer.from(salt, 'hex'), 64, { N: 32768, r: 8, p: 3, maxmem: 2 ** 26 })
  expect(key).toBe(again.toString('hex'))
  expect(await isPassword({ hash: one, password })).toBe(true)
  expect(await isPassword({ hash: one, password: `${password} ` })).toBe(false)
  expect(await isPassword({ hash: 'no:hash', password })).toBe(false)
})
