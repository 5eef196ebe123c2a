import { beforeEach, describe, expect, it } from 'vitest'
import { canSeal, forgetOpened, makeKey, open, type Sealed, seal } from '#app/pitch/phone-seal'

// The cipher is the platform's own, AES-GCM by Web Cryptography (W3C); what is held here is how it is used.
const value = { names: ['Ada Fenn', 'Bo Larch'], at: 7 }

async function sealedAnew(key: CryptoKey, name = 'event/s/1'): Promise<Sealed> {
  const sealed = await seal(key, name, value)
  forgetOpened()
  if (!sealed) throw new Error('not sealed')
  return sealed
}

beforeEach(forgetOpened)

describe('what is sealed', () => {
  it('opens with its key under its name, and has none of its words in it', async () => {
    const key = await makeKey()
    const sealed = await sealedAnew(key)
    expect(Buffer.from(sealed.data).toString('latin1')).not.toMatch(/Ada|Fenn|names/)
    expect(await open(key, 'event/s/1', sealed)).toEqual(value)
  })

  it('opens under no other name, by no other key and without one', async () => {
    const key = await makeKey()
    const sealed = await sealedAnew(key)
    expect(await open(key, 'event/s/2', sealed)).toBeNull()
    expect(await open(await makeKey(), 'event/s/1', sealed)).toBeNull()
    expect(await open(null, 'event/s/1', sealed)).toBeNull()
  })

  it('does not open when a bit of it was changed', async () => {
    const key = await makeKey()
    const { iv, data } = await sealedAnew(key)
    for (let byte = 0; byte < data.byteLength; byte++) {
      const changed = new Uint8Array(data.slice(0))
      changed[byte] = (changed[byte] ?? 0) ^ 1
      expect(await open(key, 'event/s/1', { iv, data: changed.buffer })).toBeNull()
    }
  })

  it('is never sealed twice with the same number', async () => {
    const key = await makeKey()
    const numbers = new Set<string>()
    for (let round = 0; round < 200; round++) {
      numbers.add(Buffer.from((await sealedAnew(key)).iv).toString('hex'))
    }
    expect(numbers.size).toBe(200)
  })

  it('has a key of 256 bits that no script can take away', async () => {
    const key = await makeKey()
    expect(key.algorithm).toMatchObject({ name: 'AES-GCM', length: 256 })
    expect(key.extractable).toBe(false)
    await expect(crypto.subtle.exportKey('raw', key)).rejects.toThrow()
  })
})

describe('where nothing can be sealed', () => {
  it('it stays in the page, until that forgets', async () => {
    expect(canSeal()).toBe(true)
    expect(await seal(null, 'event/s/1', value)).toBeNull()
    expect(await open(null, 'event/s/1', null)).toEqual(value)
    forgetOpened()
    expect(await open(null, 'event/s/1', null)).toBeNull()
  })
})
