import 'server-only'
import { redirect } from 'next/navigation'
import { deviceOf } from '#access/device-of'
import { sayAgo } from '#access/say-ago'
import { listSessionsOf } from '#data/login-sessions'
import { listPasskeysOf } from '#data/passkeys'
import { findLogin } from '#server/sign-in'

/** One's own sign-in, and where it is open. There is no other's to ask for. */
export type AccountView = {
  readonly name: string
  readonly email: string
  readonly isEmailVerified: boolean
  readonly sessions: readonly {
    readonly id: string
    readonly device: string
    readonly since: string
    readonly used: string
    readonly isThis: boolean
  }[]
  readonly passkeys: readonly { readonly id: string; readonly name: string; readonly used: string | null }[]
}

export async function viewAccount(now = new Date()): Promise<AccountView> {
  const login = (await findLogin()) ?? redirect('/sign-in')
  const sessions = await listSessionsOf(login.loginId)
  const passkeys = await listPasskeysOf(login.loginId)
  return {
    name: login.name,
    email: login.email,
    isEmailVerified: login.isEmailVerified,
    sessions: sessions.map(({ id, userAgent, signedInAt, usedAt }) => ({
      id,
      device: deviceOf(userAgent),
      since: sayAgo({ moment: signedInAt, now }),
      used: sayAgo({ moment: usedAt, now }),
      isThis: id === login.sessionId,
    })),
    passkeys: passkeys.map(({ id, name, lastUsedAt }) => ({
      id,
      name,
      used: lastUsedAt && sayAgo({ moment: lastUsedAt, now }),
    })),
  }
}
