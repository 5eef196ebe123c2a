import 'server-only'
import { headers } from 'next/headers'

/**
 * From where in the network a request comes, as far as it can be known. The front door has taken away what anybody could
 * have written there by hand.
 */
export async function placeOfRequest(): Promise<string> {
  const sent = (await headers()).get('x-forwarded-for')
  return sent?.split(',').at(-1)?.trim() || 'unknown'
}
