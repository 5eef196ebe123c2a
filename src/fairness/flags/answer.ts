import type { Finding, FlagRule } from '#fairness/flags/flag-rule'

/** What is kept of a flag between two judgements. */
export type StoredFlag = {
  readonly status: 'open' | 'acknowledged' | 'cleared'
  /** The size it had when it was acknowledged; null when it never was. */
  readonly acknowledgedSize: number | null
}

export type Meeting =
  /** Not seen before. */
  | 'raised'
  /** Was cleared and holds again. */
  | 'raisedAgain'
  /** Was acknowledged and has got worse since. */
  | 'cameBack'
  | 'staysOpen'
  | 'staysAcknowledged'
  | 'clearedNow'
  | 'staysCleared'
  | 'nothing'

export type Answer = { readonly status: StoredFlag['status'] | null; readonly meeting: Meeting }

/** An acknowledged flag comes back when it is worse by more than this part of what it was, or by more than the tolerance. */
const worsePart = 0.25

/**
 * How a newly judged flag meets its stored state. `judged` null: the rule no longer finds it.
 * Status null: there is nothing to store.
 */
export function answerFlag(
  stored: StoredFlag | null,
  judged: {
    readonly finding: Pick<Finding, 'size' | 'toleranceSeconds'>
    readonly sizeIn: FlagRule['sizeIn']
  } | null,
): Answer {
  if (judged === null) {
    if (stored === null) return { status: null, meeting: 'nothing' }
    return { status: 'cleared', meeting: stored.status === 'cleared' ? 'staysCleared' : 'clearedNow' }
  }
  if (stored === null) return { status: 'open', meeting: 'raised' }
  if (stored.status === 'cleared') return { status: 'open', meeting: 'raisedAgain' }
  if (stored.status === 'open') return { status: 'open', meeting: 'staysOpen' }
  return isWorse(judged, stored.acknowledgedSize ?? 0)
    ? { status: 'open', meeting: 'cameBack' }
    : { status: 'acknowledged', meeting: 'staysAcknowledged' }
}

/** Where times are counted every further time counts: it was answered for those that were known. */
function isWorse(
  { finding, sizeIn }: { finding: Pick<Finding, 'size' | 'toleranceSeconds'>; sizeIn: FlagRule['sizeIn'] },
  acknowledgedSize: number,
): boolean {
  const growth = finding.size - acknowledgedSize
  if (sizeIn === 'times') return growth > 0
  if (growth <= 0) return false
  return (
    growth > worsePart * acknowledgedSize ||
    (finding.toleranceSeconds > 0 && growth > finding.toleranceSeconds)
  )
}
