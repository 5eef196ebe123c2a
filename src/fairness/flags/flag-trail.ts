import type { SessionAccount } from '#fairness/account'
import type { Finding, FlagRule } from '#fairness/flags/flag-rule'
import { noise } from '#fairness/noise'

export type Judged = { readonly rule: FlagRule; readonly finding: Finding }
export type Trace = Judged & { readonly since: SessionAccount; readonly isClosing: boolean }

/** A gap is compared with the one so many attended sessions ago. */
const sessionsForTrend = 3

/** What the rules found about one player after each session of one kind, in order of time. */
export class FlagTrail {
  private found = new Map<string, Judged & { readonly since: SessionAccount }>()
  /** Gap by finding, after each session the player was there for. */
  private readonly gapsAfterAttended: ReadonlyMap<string, number>[] = []

  record(
    judged: readonly Judged[],
    at: { readonly account: SessionAccount; readonly wasThere: boolean },
  ): void {
    const before = this.found
    this.found = new Map(
      judged.map((one) => {
        const key = subjectKey(one.rule.name, one.finding)
        return [key, { ...one, since: before.get(key)?.since ?? at.account }]
      }),
    )
    if (!at.wasThere) return
    this.gapsAfterAttended.push(
      new Map(judged.map(({ rule, finding }) => [subjectKey(rule.name, finding), finding.gapSeconds])),
    )
  }

  /** What holds after the last session recorded; a rule that another replaces on the same subject keeps silent. */
  now(): readonly Trace[] {
    const silent = new Set(
      [...this.found.values()].flatMap(({ rule, finding }) =>
        (rule.replaces ?? []).map((name) => subjectKey(name, finding)),
      ),
    )
    const earlier = this.gapsAfterAttended.at(-1 - sessionsForTrend)
    return [...this.found]
      .filter(([, { rule, finding }]) => !silent.has(subjectKey(rule.name, finding)))
      .map(([key, one]) => ({ ...one, isClosing: isSmaller(one.finding.gapSeconds, earlier?.get(key)) }))
  }
}

/** No gap then: it was inside the band, and the band does not shrink, so it was not larger. */
function isSmaller(gapNow: number, gapThen: number | undefined): boolean {
  return gapThen !== undefined && Math.abs(gapNow) < Math.abs(gapThen) - noise
}

// A rule's name has no line break, so the pair cannot be mistaken for another.
function subjectKey(ruleName: string, finding: Pick<Finding, 'subject'>): string {
  return `${ruleName}\n${finding.subject}`
}
