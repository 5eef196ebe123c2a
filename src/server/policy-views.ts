import 'server-only'
import { mayEver } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import { inClub } from '#data/in-club'
import { listPolicies, type StoredPolicyVersion } from '#data/policies'
import { listSquads } from '#data/squads'
import { loadClubDay } from '#server/club-day'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { dayIn } from '#server/today'
import { defaultPolicy, type Policy, policyInForce } from '#squad/policy'
import { type PolicyHold, policyHistory } from '#squad/policy-history'

/** The rules of one age band; `ageLimit` null: of the whole club, for every band without rules of its own. */
export type PolicyBand = {
  readonly ageLimit: number | null
  readonly squadNames: readonly string[]
  readonly inForce: Policy
  /** The band has rules of its own that hold today. */
  readonly isOwn: boolean
  readonly history: readonly (PolicyHold<StoredPolicyVersion> & { readonly madeOn: Day })[]
  /** What a change begins from: the newest version made, be it still to come. */
  readonly newest: Policy
}

export type PolicyBook = {
  readonly frame: FrameOfPage
  readonly today: Day
  readonly canChange: boolean
  /** The whole club, then the bands by age. */
  readonly bands: readonly PolicyBand[]
}

/** Everyone who coaches may read all of it: rules that are not known are not kept. @throws AppError `notAllowed`. */
export async function loadPolicy(viewer: Viewer, { now }: { readonly now?: Date } = {}): Promise<PolicyBook> {
  if (!mayEver(viewer, 'seePolicy')) {
    throw new AppError('notAllowed', `${viewer.role} ${viewer.personId} may not see the policy`)
  }
  return inClub(viewer.clubId, async (tx) => {
    const { club, today } = await loadClubDay(tx, now)
    const versions = await listPolicies(tx)
    const squads = await listSquads(tx)
    const ages = [...squads.map(({ ageLimit }) => ageLimit), ...versions.flatMap((v) => v.ageLimit ?? [])]
    const bands = [null, ...[...new Set(ages)].sort((a, b) => a - b)]
    return {
      frame: await loadFrame(tx, viewer, null),
      today,
      canChange: mayEver(viewer, 'changePolicy'),
      bands: bands.map((ageLimit) => ({
        ...bandOf(versions, { ageLimit, today, timeZone: club.timeZone }),
        squadNames: squads.filter((squad) => squad.ageLimit === ageLimit).map(({ name }) => name),
      })),
    }
  })
}

function bandOf(
  versions: readonly StoredPolicyVersion[],
  at: { readonly ageLimit: number | null; readonly today: Day; readonly timeZone: string },
): Omit<PolicyBand, 'squadNames'> {
  const history = policyHistory(versions, at).map((hold) => ({
    ...hold,
    madeOn: dayIn(at.timeZone, hold.version.madeAt),
  }))
  const own = history.find(({ state }) => state === 'inForce')
  const ofClub = policyHistory(versions, { ...at, ageLimit: null }).find(({ state }) => state === 'inForce')
  const inForce =
    at.ageLimit === null
      ? (own?.version.policy ?? defaultPolicy)
      : policyInForce(versions, { ageLimit: at.ageLimit, day: at.today })
  return {
    ageLimit: at.ageLimit,
    inForce,
    isOwn: own !== undefined,
    history,
    newest: history[0]?.version.policy ?? ofClub?.version.policy ?? defaultPolicy,
  }
}
