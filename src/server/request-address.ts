import 'server-only'
import { headers } from 'next/headers'

/** The address the browser has this installation under, such as `https://book.example.org`. */
export async function addressOfRequest(): Promise<string> {
  const sent = await headers()
  const host = sent.get('x-forwarded-host') ?? sent.get('host') ?? 'localhost'
  const scheme = sent.get('x-forwarded-proto')?.split(',')[0]?.trim()
  if (scheme === 'http' || scheme === 'https') return `${scheme}://${host}`
  return `${process.env.TURNBOOK_URL?.startsWith('https:') ? 'https' : 'http'}://${host}`
}

/** An address that only the machine itself understands: a phone that is told it looks for the book on itself. */
export function isOnlyThisMachine(address: string): boolean {
  const { hostname } = new URL(address)
  return hostname === 'localhost' || hostname === '[::1]' || hostname.startsWith('127.')
}
