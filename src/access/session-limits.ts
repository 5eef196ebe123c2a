import { type ViewerRole, viewerRoles } from '#access/viewer'

/** How long a sign-in holds: since it was last used, and in all. Seconds. */
export type SessionLimit = { readonly idleSeconds: number; readonly absoluteSeconds: number }

const hour = 60 * 60
const day = 24 * hour

// A coach stands at a pitch with cold hands and no signal, twice a week: who had to sign in there would write nothing
// down. An administrator reaches every child of the club and every adult's rights, and sits at a desk.
const atTheDesk = { idleSeconds: 2 * hour, absoluteSeconds: 12 * hour }
const atThePitch = { idleSeconds: 7 * day, absoluteSeconds: 30 * day }

export const sessionLimits: Readonly<Record<ViewerRole, SessionLimit>> = {
  administrator: atTheDesk,
  headCoach: atThePitch,
  coach: atThePitch,
  helper: atThePitch,
  // A family looks in every other week; its page holds one child.
  guardian: { idleSeconds: 14 * day, absoluteSeconds: 30 * day },
}

/** The longest that any sign-in holds. */
export const longestSessionSeconds = Math.max(
  ...Object.values(sessionLimits).map(({ absoluteSeconds }) => absoluteSeconds),
)

/** How long ago a sign-in may be for what cannot be undone, or would give the account away. */
export const freshSeconds = 15 * 60

/**
 * Whether a sign-in still holds: for as long as the strictest of all the roles it is known in, whichever it looks at the
 * book as. A clock that was put back ends none.
 */
export function isSessionGood(
  session: { readonly signedInAt: Date; readonly usedAt: Date },
  { roles, now }: { readonly roles: readonly ViewerRole[]; readonly now: Date },
): boolean {
  const limits = (roles.length > 0 ? roles : viewerRoles).map((role) => sessionLimits[role])
  return limits.every(
    ({ idleSeconds, absoluteSeconds }) =>
      secondsSince(session.usedAt, now) < idleSeconds &&
      secondsSince(session.signedInAt, now) < absoluteSeconds,
  )
}

export function isSignInFresh(signedInAt: Date, now: Date): boolean {
  return secondsSince(signedInAt, now) < freshSeconds
}

function secondsSince(then: Date, now: Date): number {
  return (now.getTime() - then.getTime()) / 1000
}
