import 'server-only'
import type { Author } from '#data/author'
import { dateOf, dayOf } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { Policy, PolicyVersion } from '#squad/policy'

/** Who made a version, and when. */
export type StoredPolicyVersion = PolicyVersion & { readonly madeBy: string | null; readonly madeAt: Date }

const settings = {
  toleranceSeconds: true,
  toleranceShare: true,
  middleAttackShare: true,
  restLimitTurns: true,
  goalShareLimit: true,
  leastMatchShare: true,
  writtenShareNeeded: true,
  sessionsBeforeFlags: true,
  matchesBeforeRoles: true,
} as const satisfies Record<keyof Policy, true>

/** The newest first: of two from one day the later made counts, as `policyInForce` takes the first. */
export async function listPolicies(tx: ClubTx): Promise<readonly StoredPolicyVersion[]> {
  const rows = await tx.db.policyVersion.findMany({
    where: { clubId: tx.clubId },
    select: {
      ...settings,
      id: true,
      ageLimit: true,
      effectiveFrom: true,
      madeAt: true,
      madeBy: { select: { name: true } },
    },
    orderBy: [{ effectiveFrom: 'desc' }, { madeAt: 'desc' }, { id: 'desc' }],
  })
  return rows.map(({ id, ageLimit, effectiveFrom, madeAt, madeBy, ...policy }) => ({
    id,
    ageLimit,
    effectiveFrom: dayOf(effectiveFrom),
    policy,
    madeBy: madeBy?.name ?? null,
    madeAt,
  }))
}

/** Adds a version; earlier ones stay, so that old numbers can be explained. Days already written are to be rebuilt. */
export async function recordPolicy(
  tx: ClubTx,
  { version, by }: { readonly version: PolicyVersion; readonly by: Author },
): Promise<void> {
  const { id, ageLimit, effectiveFrom, policy } = version
  await tx.db.policyVersion.createMany({
    data: [
      {
        clubId: tx.clubId,
        id,
        ageLimit,
        effectiveFrom: dateOf(effectiveFrom),
        toleranceSeconds: policy.toleranceSeconds,
        toleranceShare: policy.toleranceShare,
        middleAttackShare: policy.middleAttackShare,
        restLimitTurns: policy.restLimitTurns,
        goalShareLimit: policy.goalShareLimit,
        leastMatchShare: policy.leastMatchShare,
        writtenShareNeeded: policy.writtenShareNeeded,
        sessionsBeforeFlags: policy.sessionsBeforeFlags,
        matchesBeforeRoles: policy.matchesBeforeRoles,
        madeById: by.personId,
        madeAt: by.at,
      },
    ],
  })
}
