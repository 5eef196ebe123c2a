import 'server-only'
import { createHash, timingSafeEqual } from 'node:crypto'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { foundClub, lockFounding, removeEveryLogin, whatStandsHere } from '#data/found-club'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { removeLogin } from '#data/logins'
import { forgetTries, takeTry, tooManyTries } from '#server/rate-limit'
import type { SetUpInput } from '#server/set-up-input'
import { makeLogin } from '#server/sign-in'

/** Pages write the month's name in every day, so that no day can be read as another; a club may ask for its own way later. */
const locale = 'en-GB'

/** One for all: whoever tries from many places is held back too. The code is far too long to be guessed all the same. */
const tries = { what: 'setUpCode', key: 'here' } as const

/** Whether a club can be founded here: the start has printed a code, and no club stands yet. */
export async function isSetUpOpen(): Promise<boolean> {
  if (!process.env.TURNBOOK_SET_UP) return false
  const { hasDemo, hasClub } = await whatStandsHere()
  return !hasDemo && !hasClub
}

export type Founded = { readonly clubId: string; readonly personId: string; readonly loginId: string }

/**
 * Makes the club, its first administrator and that person's sign-in: all of it or nothing. Refused without the code;
 * where two do it at once, one of them.
 * @throws AppError `notFound` where a club stands.
 */
export async function setUpClub(input: SetUpInput, now = new Date()): Promise<Result<Founded, Problem>> {
  if (!(await isSetUpOpen())) throw new AppError('notFound', 'a club stands here, or no code was made')
  const may = await takeTry(tries)
  if (!may.ok) return refuse({ path: 'code', message: tooManyTries(may.seconds) })
  if (!isSetUpCode(input.code))
    return refuse({
      path: 'code',
      message:
        'This is not the code that the start printed last. Each start prints another; copy it from there.',
    })
  await forgetTries(tries)
  return found(input, now)
}

async function found(input: SetUpInput, now: Date): Promise<Result<Founded, Problem>> {
  const { clubName, timeZone, name, email, password } = input
  const [clubId, personId] = [newId(), newId()]
  let made: string | null = null
  try {
    return await inClub(clubId, async (tx) => {
      await lockFounding(tx)
      const { hasDemo, hasClub } = await whatStandsHere()
      if (hasDemo || hasClub) throw new AppError('notFound', 'a club was founded meanwhile')
      await removeEveryLogin()
      const login = await makeLogin({ email, name, password, known: [clubName] })
      if (!login.ok) return login
      const { loginId } = login.value
      made = loginId
      await foundClub(tx, { name: clubName, timeZone, locale, personId, personName: name, loginId })
      const by = { personId, at: now }
      await recordAudit(tx, { action: 'foundClub', objectKind: 'club', objectId: clubId, by })
      return accept({ clubId, personId, loginId })
    })
  } catch (error) {
    if (made) await removeLogin(made)
    throw error
  }
}

function isSetUpCode(code: string): boolean {
  const expected = Buffer.from(process.env.TURNBOOK_SET_UP ?? '', 'hex')
  const given = createHash('sha256').update(code).digest()
  return expected.length === given.length && timingSafeEqual(expected, given)
}
