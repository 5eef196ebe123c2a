import type { Day } from '#common/time'
import type { FamilyChange } from '#family/page-changes'
import type { Waiting } from '#family/what-waits'
import type { SendForm } from '#ui/entry/send-form'
import { changesText, readersText, waitingText } from '#ui/family/coach-words'
import { ComingForm } from '#ui/family/coming-form'
import { ConfirmForm } from '#ui/family/confirm-form'
import { formatDay } from '#ui/format-day'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'

export type FamilyRow = {
  readonly playerId: string
  readonly name: string
  readonly leftOn: Day | null
  readonly mark: string
  readonly changes: readonly FamilyChange[]
  readonly waits: readonly Waiting[]
  readonly confirmedOn: Day | null
  readonly isOnItsWay: boolean
  readonly readers: { readonly recorded: number; readonly claimed: number }
}

type FamiliesBodyProps = {
  readonly squad: { readonly id: string }
  readonly showsComing: boolean
  readonly seenOn: Day
  readonly rows: readonly FamilyRow[]
  readonly confirm: SendForm
  readonly switchComing: SendForm
}

/** What families of a squad read: what is new, what waits, and one button for all that is ready. */
export function FamiliesBody({ squad, showsComing, seenOn, rows, confirm, switchComing }: FamiliesBodyProps) {
  if (rows.length === 0) return <Empty>No child is in this squad this season.</Empty>
  const fresh = rows.filter(({ changes }) => changes.length > 0)
  const ready = fresh.filter(({ waits }) => waits.length === 0)
  return (
    <>
      <section className="space-y-3">
        <p className="max-w-prose">{summaryText({ fresh: fresh.length, ready: ready.length })}</p>
        {ready.length > 0 ? (
          <ConfirmForm
            squadId={squad.id}
            seen={ready.map(({ playerId, mark }) => ({ playerId, mark }))}
            label={`Confirm all that is ready (${ready.length})`}
            send={confirm}
          />
        ) : null}
        {fresh.length > 0 ? (
          <p className="max-w-prose text-soft">
            What you confirm now, families read from {formatDay(seenOn)}, 8:00. Until then they read what was
            confirmed before.
          </p>
        ) : null}
      </section>
      {[
        { title: 'New', of: fresh },
        { title: 'Nothing new', of: rows.filter((row) => !fresh.includes(row)) },
      ]
        .filter(({ of }) => of.length > 0)
        .map(({ title, of }) => (
          <section key={title}>
            <SectionTitle>{title}</SectionTitle>
            <ul className="max-w-4xl">
              {of.map((row) => (
                <FamilyLine key={row.playerId} squadId={squad.id} row={row} confirm={confirm} />
              ))}
            </ul>
          </section>
        ))}
      <section className="no-print">
        <SectionTitle>Time and place of the next practice</SectionTitle>
        <ComingForm squadId={squad.id} showsComing={showsComing} send={switchComing} />
      </section>
    </>
  )
}

function summaryText({ fresh, ready }: { readonly fresh: number; readonly ready: number }): string {
  if (fresh === 0) return 'Nothing is new since you last confirmed.'
  const isNew = fresh === 1 ? 'is new' : 'are new'
  const rest = fresh - ready
  const waits = rest === 0 ? '' : ` ${rest} ${rest === 1 ? 'waits' : 'wait'} for you: see below.`
  const isReady = rest === 0 ? 'All can be confirmed.' : `${ready} can be confirmed.`
  return `${counted(fresh, 'page')} ${isNew}. ${isReady}${waits}`
}

type FamilyLineProps = { readonly squadId: string; readonly row: FamilyRow; readonly confirm: SendForm }

function FamilyLine({ squadId, row, confirm }: FamilyLineProps) {
  const { playerId, name, mark, changes, waits } = row
  const isReady = changes.length > 0 && waits.length === 0
  return (
    <li className="flex flex-wrap items-start justify-between gap-x-6 gap-y-2 border-b border-rule py-3">
      <div className="min-w-0">
        <p className="flex flex-wrap items-baseline gap-x-3">
          <PageLink href={paths.familyPreview(squadId, { playerId })} className="font-semibold">
            {name}
          </PageLink>
          <span className="text-sm text-soft">{standsText(row)}</span>
        </p>
        {changes.length > 0 ? <p>{changesText(changes)}</p> : null}
        {waits.map((waiting) => (
          <p key={waiting.what} className="font-medium">
            {waitingText(waiting, { isOwnPage: false })}
          </p>
        ))}
        <p className="text-sm text-soft">{readersText(row.readers)}</p>
      </div>
      {isReady ? (
        <ConfirmForm
          squadId={squadId}
          seen={[{ playerId, mark }]}
          label="Confirm"
          weight="plain"
          send={confirm}
        />
      ) : null}
    </li>
  )
}

function standsText({ confirmedOn, isOnItsWay, leftOn }: FamilyRow): string {
  const parts = [
    leftOn ? `left the squad on ${formatDay(leftOn, 'short')}` : null,
    confirmedOn ? `confirmed ${formatDay(confirmedOn, 'short')}` : null,
    isOnItsWay ? 'families see it from the next morning' : null,
  ]
  return parts.filter(Boolean).join(' · ')
}
