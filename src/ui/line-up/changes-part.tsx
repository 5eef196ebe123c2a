import { changesOfLineUp, type LineUpChange } from '#lineup/draft/line-up-changes'
import type { LineUpDraft } from '#lineup/draft/line-up-draft'
import type { LineUp } from '#lineup/line-up'
import { sayClock } from '#lineup/say-clock'
import { lines } from '#match/match'
import type { NameOf } from '#ui/line-up/line-up-types'
import { periodWords } from '#ui/line-up/period-words'
import { listed } from '#ui/plural'
import { words } from '#ui/words'

/** Who begins each period, and every change with its time: what is read out beside the pitch. */
export function ChangesPart({
  draft,
  made,
  nameOf,
}: {
  readonly draft: LineUpDraft
  readonly made: LineUp
  readonly nameOf: NameOf
}) {
  const periods = changesOfLineUp(draft.problem, made.plan)
  return (
    <div className="grid gap-x-10 gap-y-6 sm:grid-cols-2">
      {periods.map(({ period, begins, atBreak, changes }) => (
        <section key={period}>
          <h3 className="font-semibold">{periodWords(draft.request.format, period)}</h3>
          <dl className="mt-1">
            {lines.map((line) => {
              const names = begins.filter((own) => own.line === line).map(({ playerId }) => nameOf(playerId))
              return names.length === 0 ? null : (
                <div key={line} className="flex gap-2">
                  <dt className="w-16 shrink-0 text-soft">{words.line[line]}</dt>
                  <dd>{listed(names)}</dd>
                </div>
              )
            })}
          </dl>
          <ul className="mt-2 border-t border-rule">
            {atBreak && atBreak.on.length + atBreak.off.length > 0 ? (
              <li className="border-b border-rule py-1.5 text-soft">
                Against the end before: <ChangeWords change={atBreak} nameOf={nameOf} />
              </li>
            ) : null}
            {changes.map((change) => (
              <li key={change.at} className="flex gap-3 border-b border-rule py-1.5">
                <strong className="figures w-12 shrink-0">{sayClock(change.at)}</strong>
                <span>
                  <ChangeWords change={change} nameOf={nameOf} />
                </span>
              </li>
            ))}
            {changes.length === 0 ? <li className="py-1.5 text-soft">No change in this period.</li> : null}
          </ul>
        </section>
      ))}
    </div>
  )
}

function ChangeWords({
  change,
  nameOf,
}: {
  readonly change: Omit<LineUpChange, 'at'>
  readonly nameOf: NameOf
}) {
  const { off, on, moves } = change
  const placed = (of: LineUpChange['on']) =>
    listed(of.map(({ playerId, line }) => `${nameOf(playerId)} (${words.line[line]})`))
  return (
    <>
      {off.length > 0 ? (
        <>
          <b>OFF</b> {listed(off.map(nameOf))}
          {on.length > 0 ? ', ' : ''}
        </>
      ) : null}
      {on.length > 0 ? (
        <>
          <b>ON</b> {placed(on)}
        </>
      ) : null}
      {moves.length > 0 ? (
        <span className="text-soft">
          {off.length + on.length > 0 ? '; ' : ''}moves: {placed(moves)}
        </span>
      ) : null}
    </>
  )
}
