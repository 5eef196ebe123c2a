/** AES-GCM (NIST SP 800-38D) by the browser: what is kept cannot be read, nor exchanged, without the key of this phone. */
export type Sealed = { readonly iv: Uint8Array<ArrayBuffer>; readonly data: ArrayBuffer }

/** Random ones of this length are safe for far more than a phone will ever keep: SP 800-38D, section 8.3. */
const ivBytes = 12
const bits = 256

/** What this page sealed or opened already, by its name: nothing is opened twice, and where nothing can be sealed it is all there is. */
const inPage = new Map<string, unknown>()

/** Browsers seal only for an address that is secure: https, or the machine itself. */
export const canSeal = (): boolean => globalThis.crypto?.subtle !== undefined

/** A key that can be used and kept on this phone, and that no script can read. */
export function makeKey(): Promise<CryptoKey> {
  return crypto.subtle.generateKey({ name: 'AES-GCM', length: bits }, false, ['encrypt', 'decrypt'])
}

/** `name` is bound into it: what was sealed under one name opens under no other. Null: there is no key, it stays in the page. */
export async function seal(key: CryptoKey | null, name: string, value: unknown): Promise<Sealed | null> {
  inPage.set(name, value)
  if (!key) return null
  const iv = crypto.getRandomValues(new Uint8Array(ivBytes))
  const bytes = new TextEncoder().encode(JSON.stringify(value))
  return { iv, data: await crypto.subtle.encrypt(setting(iv, name), key, bytes) }
}

/** Null: it cannot be opened, since it is of another key or name, was changed, or was of a page that is closed. */
export async function open<Value>(
  key: CryptoKey | null,
  name: string,
  sealed: Sealed | null,
): Promise<Value | null> {
  if (inPage.has(name)) return inPage.get(name) as Value
  if (!key || !sealed) return null
  try {
    const bytes = await crypto.subtle.decrypt(setting(sealed.iv, name), key, sealed.data)
    const value: Value = JSON.parse(new TextDecoder().decode(bytes))
    inPage.set(name, value)
    return value
  } catch {
    return null
  }
}

export function forgetOpened(): void {
  inPage.clear()
}

function setting(iv: Uint8Array<ArrayBuffer>, name: string): AesGcmParams {
  return { name: 'AES-GCM', iv, additionalData: new TextEncoder().encode(name) }
}
