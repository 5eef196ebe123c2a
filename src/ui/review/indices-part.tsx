import { asPlannedShare, type Evenness } from '#fairness/evenness'
import { LorenzCurve } from '#ui/charts/lorenz-curve'
import { Table } from '#ui/page/table'
import { changeSentence } from '#ui/review/evenness-words'
import { words } from '#ui/words'

type IndicesPartProps = {
  readonly squadName: string
  readonly figures: Readonly<Record<'practice' | 'match', Evenness>>
  readonly before: Readonly<Record<'practice' | 'match', Evenness>> | null
  readonly termBeforeName: string | null
}

const labels = { attack: 'attacking', defend: 'defending', played: 'time played' } as const

/** Indices of share ÷ even share after agreements of fewer turns, with what they mean. Nothing where too little is written. */
export function IndicesPart({ squadName, figures, before, termBeforeName }: IndicesPartProps) {
  const kinds = (['practice', 'match'] as const).filter((kind) => figures[kind].said)
  const rows = kinds.flatMap((kind) =>
    (kind === 'practice' ? (['attack', 'defend', 'played'] as const) : (['played'] as const)).map((of) => ({
      key: `${kind} ${of}`,
      label: `${words.kinds[kind]}: ${labels[of]}`,
      indices: figures[kind].said?.indices[of] ?? { jain: null, gini: null },
    })),
  )
  const changes = kinds.flatMap((kind) => {
    const change = changeSentence({ before: before?.[kind] ?? null, now: figures[kind] }, termBeforeName)
    return change ? [`${words.kinds[kind]}. ${change}`] : []
  })
  if (rows.length === 0) return <p>{words.notEnoughWritten}</p>
  return (
    <div className="space-y-4">
      <Table
        caption={`Indices of the ${squadName}`}
        hideCaption
        head={[
          { key: 'of', label: 'Of' },
          { key: 'jain', label: 'Jain', isFigure: true },
          { key: 'gini', label: 'Gini', isFigure: true },
        ]}
      >
        {rows.map(({ key, label, indices }) => (
          <tr key={key}>
            <th scope="row">{label}</th>
            <td className="figure">{indexText(indices.jain)}</td>
            <td className="figure">{indexText(indices.gini)}</td>
          </tr>
        ))}
      </Table>
      {changes.map((change) => (
        <p key={change} className="max-w-prose">
          {change}
        </p>
      ))}
      <Meaning plannedShare={Math.max(...kinds.map((kind) => asPlannedShare(figures[kind].written)))} />
      <p className="max-w-prose text-sm text-soft">
        The curves go from those with least to those with most. The straight line is even; the further a curve
        hangs below it, the less even it was.
      </p>
      <div className="flex flex-wrap gap-8">
        {kinds.map((kind) => (
          <LorenzCurve
            key={kind}
            caption={`${squadName}, ${words.kinds[kind].toLowerCase()}: time played ÷ even share`}
            points={figures[kind].said?.lorenz ?? []}
          />
        ))}
      </div>
    </div>
  )
}

export function indexText(index: number | null): string {
  return index === null ? '–' : index.toFixed(3)
}

/** What the indices say and what they do not. */
export function Meaning({ plannedShare }: { readonly plannedShare: number }) {
  return (
    <div className="max-w-prose space-y-2 text-sm text-soft">
      <p>
        Both are made of what each player had divided by that player’s even share; where fewer turns were
        agreed, by what stayed due. Jain is 1 when all had the same part of it; with k of n players sharing
        alike and the others left out it is k divided by n. Gini is 0 when all had the same part, and nears 1
        the more it lies with a few.
      </p>
      <p>
        Who was due nothing (an even share of zero, or nothing left of it by agreement) is left out: nothing
        was due, so nothing could be fair or unfair. Who was due something and had nothing counts, as zero.
      </p>
      {plannedShare > 0 ? (
        <p>
          Sessions written as planned are even by construction and draw both towards even: up to{' '}
          {Math.round(plannedShare * 100)} % of what is written here.
        </p>
      ) : null}
    </div>
  )
}
