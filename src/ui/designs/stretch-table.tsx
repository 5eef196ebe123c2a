import type { Cast } from '#practice/cast-faults'
import type { DesignSheet } from '#practice/design-sheet'
import { type ChildrenNeeded, type StretchedRound, stretchDesign } from '#practice/design-stretch'
import { freeGameFor } from '#practice/free-game-for'
import { shapesText } from '#practice/shape-text'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { SectionTitle } from '#ui/page/section-title'
import { Table } from '#ui/page/table'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'

type StretchPartProps = {
  readonly squadId: string
  readonly sheet: DesignSheet
  readonly cast: Cast
  readonly turnout: number
  readonly needed: ChildrenNeeded | null
}

/** Rows of the table beside the one asked for, and the best. */
const fewerShown = 5
const moreShown = 4

/** How the rounds look when fewer come, or more. */
export function StretchPart({ squadId, sheet, cast, turnout, needed }: StretchPartProps) {
  if (!needed) return null
  const from = Math.max(2, Math.min(turnout - fewerShown, needed.best - 2))
  const to = Math.max(turnout + moreShown, needed.best)
  const rows = Array.from({ length: to - from + 1 }, (_, index) => from + index)
  const turnoutOf = (present: number) => ({ present, keepersAble: Math.min(present, cast.mayKeep) })
  const stretched = (present: number) => stretchDesign(sheet, turnoutOf(present))
  const free = sheet.rounds.find(({ isFreeGame }) => isFreeGame)
  const chosen = stretched(turnout).filter(({ sentence }) => sentence !== null)
  return (
    <section>
      <SectionTitle id="children" note={neededText(needed)}>
        Who can play
      </SectionTitle>
      <form
        action={paths.design(squadId, { designId: sheet.id })}
        className="flex flex-wrap items-end gap-3"
        aria-label="For how many"
      >
        <div className="w-32">
          <Field
            name="children"
            label="Children"
            type="number"
            inputMode="numeric"
            min={2}
            max={40}
            defaultValue={turnout}
          />
        </div>
        <Button weight="plain">Reckon for so many</Button>
      </form>
      <div className="my-4 max-w-prose" aria-live="polite">
        {chosen.length === 0 ? (
          <p>With {turnout} every round can be played as it is drawn.</p>
        ) : (
          <>
            <p>With {turnout}:</p>
            <ul className="list-disc pl-6">
              {chosen.map(({ round, sentence }) => (
                <li key={round}>
                  <strong className="font-semibold">{sheet.rounds[round]?.title}:</strong> {sentence}
                </li>
              ))}
            </ul>
          </>
        )}
      </div>
      {free ? (
        <p className="mb-4 max-w-prose">
          The free game can take everybody: with {turnout},{' '}
          {shapesText(freeGameFor(free, turnoutOf(turnout)).stations)}.
        </p>
      ) : null}
      <Table
        caption="Numbers in each round by how many come; in brackets how many wait at a time"
        head={[
          { key: 'children', label: 'Children' },
          ...sheet.rounds.flatMap(({ title, isFreeGame }, index) =>
            isFreeGame ? [] : [{ key: String(index), label: title }],
          ),
        ]}
      >
        {rows.map((present) => (
          <tr key={present} className={present === turnout ? 'bg-accent-pale' : undefined}>
            <th scope="row" className={present === turnout ? 'bg-accent-pale!' : undefined}>
              {present}
              {present === needed.best ? (
                <span className="block text-sm font-normal text-soft">best</span>
              ) : null}
            </th>
            {stretched(present).map((round) => (
              <td key={round.round} className="sm:whitespace-nowrap">
                <StretchCell {...round} />
              </td>
            ))}
          </tr>
        ))}
      </Table>
    </section>
  )
}

function StretchCell({ stations, sentence, waiting, waitsInARow, keepsKind }: StretchedRound) {
  if (stations.length === 0) return <span className="text-soft">cannot be played</span>
  return (
    <>
      <span className={`sm:whitespace-nowrap ${sentence ? 'font-semibold' : ''}`}>
        {shapesText(stations)}
      </span>
      {waiting > 0 ? <span className="text-soft"> ({waiting})</span> : null}
      {keepsKind ? null : <span className="block text-sm text-warn">not as it was meant</span>}
      {(waitsInARow ?? 0) > 1 ? (
        <span className="block text-sm text-warn">waits of {counted(waitsInARow ?? 0, 'turn')}</span>
      ) : null}
    </>
  )
}

function neededText({ fewest, best, most }: ChildrenNeeded): string {
  const fewer =
    fewest < best
      ? `With as few as ${fewest} every area stays and keeps its kind, some of them smaller (bold).`
      : 'With fewer an area is left out, or is not what it was meant to be (bold).'
  return `Best with ${best}: every place is taken. ${fewer} With up to ${most} nobody waits two turns in a row in a round; with more, areas are added or grow.`
}
