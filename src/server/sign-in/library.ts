import 'server-only'
import { type BetterAuthPlugin, betterAuth } from 'better-auth'
import { createAuthEndpoint } from 'better-auth/api'
import { setSessionCookie } from 'better-auth/cookies'
import { z } from 'zod'
import { longestSessionSeconds } from '#access/session-limits'
import { newId } from '#data/ids'
import { signInStore, signInTables } from '#data/sign-in-store'
import { hashPassword, isPassword } from '#server/sign-in/password-hash'
import { sessionCookie } from '#server/sign-in/session-cookie'

/** Opens a session for a sign-in that was proven, in whatever way, before; the library keeps it and makes its cookie. */
const provenSignIn = {
  id: 'proven-sign-in',
  endpoints: {
    openSession: createAuthEndpoint(
      '/proven-sign-in',
      {
        method: 'POST',
        metadata: { SERVER_ONLY: true },
        body: z.object({
          loginId: z.uuid(),
          clubId: z.uuid().nullable(),
          personId: z.uuid().nullable(),
        }),
      },
      async (ctx) => {
        const { loginId, clubId, personId } = ctx.body
        const user = await ctx.context.internalAdapter.findUserById(loginId)
        if (!user) throw ctx.error('NOT_FOUND')
        const session = await ctx.context.internalAdapter.createSession(loginId, false, { clubId, personId })
        await setSessionCookie(ctx, { session, user })
        return ctx.json({ sessionId: session.id })
      },
    ),
  },
} satisfies BetterAuthPlugin

function makeLibrary() {
  return betterAuth({
    appName: 'Turnbook',
    baseURL: process.env.TURNBOOK_URL ?? 'http://localhost',
    secret: process.env.TURNBOOK_SECRET,
    telemetry: { enabled: false },
    // Nothing of it is reached from outside: our own actions call it.
    rateLimit: { enabled: false },
    logger: { disabled: true },
    database: signInStore(),
    user: signInTables.user,
    session: {
      ...signInTables.session,
      expiresIn: longestSessionSeconds,
      // How long a session may lie idle differs by role, and is held by us.
      disableSessionRefresh: true,
      additionalFields: {
        clubId: { type: 'string', required: false, input: false },
        personId: { type: 'string', required: false, input: false },
      },
    },
    account: signInTables.account,
    verification: { ...signInTables.verification, storeIdentifier: 'hashed' },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      password: { hash: hashPassword, verify: isPassword },
    },
    advanced: {
      database: { generateId: () => newId() },
      useSecureCookies: false,
      cookies: { session_token: sessionCookie() },
    },
    plugins: [provenSignIn],
  })
}

type Library = ReturnType<typeof makeLibrary>

const made = globalThis as { turnbookSignIn?: Library }

/** The library behind every sign-in; only files of this folder call it. Made when it is first needed: its secret is not there at build time. */
export function signInLibrary(): Library {
  made.turnbookSignIn ??= makeLibrary()
  return made.turnbookSignIn
}
