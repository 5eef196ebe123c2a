import 'server-only'
import { log } from '#server/log'

/** What happens to sign-ins, for whoever looks into a break-in: ASVS 5.0, 16.3.1. */
type SignInEvent =
  | 'signed in'
  | 'signed out'
  | 'password refused'
  | 'password set'
  | 'signed out everywhere'
  | 'tried too often'

/** One line, by ids alone: an address that was typed, or what was tried with it, is not kept. */
export function logSignIn(event: SignInEvent, ids: Readonly<Record<string, string>> = {}): void {
  log[event === 'password refused' || event === 'tried too often' ? 'warn' : 'info'](ids, event)
}
