import 'server-only'
import { createHash } from 'node:crypto'
import { RateLimiterPostgres, RateLimiterRes } from 'rate-limiter-flexible'
import { triesPool } from '#data/tries-pool'
import { logSignIn } from '#server/log-sign-in'

/** What is tried, how often, and in how many seconds that is forgotten. */
const limits = {
  /** Passwords for one address. */
  passwordOfAddress: { points: 10, duration: 15 * 60 },
  /** Passwords from one place of the network: a whole club may sit behind one. */
  passwordFrom: { points: 100, duration: 15 * 60 },
  /** In all for one address without a success between (NIST SP 800-63B-4, 3.2.2, allows 100); a mailed link is the way out. */
  passwordInAll: { points: 100, duration: 365 * 24 * 60 * 60 },
  mailToAddress: { points: 5, duration: 60 * 60 },
  mailFrom: { points: 30, duration: 60 * 60 },
  linkFrom: { points: 60, duration: 15 * 60 },
  setUpCode: { points: 20, duration: 15 * 60 },
  /** Calendars asked for from one place: a provider of calendars asks for those of many people. */
  calendarFrom: { points: 600, duration: 15 * 60 },
  /** One person's, by all of its devices. */
  calendarOf: { points: 120, duration: 60 * 60 },
  passkeyFrom: { points: 60, duration: 15 * 60 },
} as const

export type Tried = keyof typeof limits

export type TryAnswer = { readonly ok: true } | { readonly ok: false; readonly seconds: number }

/**
 * Counts a try, in the database and so over every process. `key` is what is tried for: an address, or a place of the
 * network; only its hash is kept.
 */
export async function takeTry({
  what,
  key,
}: {
  readonly what: Tried
  readonly key: string
}): Promise<TryAnswer> {
  try {
    await limiterOf(what).consume(hashed(key))
    return { ok: true }
  } catch (answer) {
    if (!(answer instanceof RateLimiterRes)) throw answer
    logSignIn('tried too often', { what })
    return { ok: false, seconds: Math.ceil(answer.msBeforeNext / 1000) }
  }
}

/** Forgets what was counted, after a success. */
export async function forgetTries({
  what,
  key,
}: {
  readonly what: Tried
  readonly key: string
}): Promise<void> {
  await limiterOf(what).delete(hashed(key))
}

/** What is said of a try too many. */
export function tooManyTries(seconds: number): string {
  const minutes = Math.ceil(seconds / 60)
  return `That was tried too often. Wait ${minutes === 1 ? 'a minute' : `${minutes} minutes`}, then try again.`
}

const made = new Map<Tried, RateLimiterPostgres>()

function limiterOf(what: Tried): RateLimiterPostgres {
  const known = made.get(what)
  if (known) return known
  const limiter = new RateLimiterPostgres({
    storeClient: triesPool(),
    storeType: 'pool',
    tableName: 'RateLimit',
    tableCreated: true,
    clearExpiredByTimeout: false,
    keyPrefix: what,
    ...limits[what],
  })
  made.set(what, limiter)
  return limiter
}

function hashed(key: string): string {
  return createHash('sha256').update(key).digest('base64url')
}
