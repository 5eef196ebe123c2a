import type { DesignChange } from '#practice/adaptation'
import type { DesignSheet } from '#practice/design-sheet'

type Edited = Pick<DesignSheet, 'rounds' | 'adaptations'>

/** A round one place up (−1) or down; adaptations go with the rounds they name. The same where there is no such place. */
export function moveRound<Design extends Edited>(
  design: Design,
  { from, by }: { from: number; by: -1 | 1 },
): Design {
  const to = from + by
  const [own, other] = [design.rounds[from], design.rounds[to]]
  if (!own || !other) return design
  const rounds = design.rounds.with(from, other).with(to, own)
  return withRefs({ ...design, rounds }, (ref) => (ref === from ? to : ref === to ? from : ref))
}

/** Without the round, and without what adaptations did to it alone. */
export function removeRound<Design extends Edited>(design: Design, index: number): Design {
  const rounds = design.rounds.toSpliced(index, 1)
  return withRefs({ ...design, rounds }, (ref) => (ref === index ? 'gone' : ref > index ? ref - 1 : ref))
}

/** The round once more, after itself. */
export function copyRound<Design extends Edited>(design: Design, index: number): Design {
  const own = design.rounds[index]
  if (!own) return design
  const rounds = design.rounds.toSpliced(index + 1, 0, own)
  return withRefs({ ...design, rounds }, (ref) => (ref > index ? ref + 1 : ref))
}

function withRefs<Design extends Edited>(design: Design, refOf: (ref: number) => number | 'gone'): Design {
  return {
    ...design,
    adaptations: design.adaptations.map((adaptation) => ({
      ...adaptation,
      changes: adaptation.changes.flatMap((change): readonly DesignChange[] => {
        if (change.what === 'area' || change.round === null) return [change]
        const round = refOf(change.round)
        return round === 'gone' ? [] : [{ ...change, round }]
      }),
    })),
  }
}
