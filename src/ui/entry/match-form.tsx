'use client'

import { useRouter } from 'next/navigation'
import { useActionState, useMemo, useState } from 'react'
import { matchEntrySentence } from '#match/entry-sentence'
import type { Period, Spell } from '#match/match'
import { decideMatch, endOfMatch } from '#match/match-entry'
import { gridOfSpells } from '#match/spells-of-grid'
import type { RegisterLine } from '#squad/register'
import { entriesOfLines } from '#squad/register-segments'
import { type LineBrush, lineBrushChoices } from '#ui/entry/line-brush'
import {
  freshMatchDraft,
  type MatchDraft,
  withMatchGuest,
  withMatchPlayer,
  withMatchSegments,
  withoutMatchNames,
  withPeriods,
} from '#ui/entry/match-draft'
import { MatchGridPart } from '#ui/entry/match-grid-part'
import { MatchPreview } from '#ui/entry/match-preview'
import { PeriodsPart } from '#ui/entry/periods-part'
import type { WritingPlayer } from '#ui/entry/practice-draft'
import { RegisterPart } from '#ui/entry/register-part'
import { SaveBar } from '#ui/entry/save-bar'
import type { SendForm } from '#ui/entry/send-form'
import { TapChoices } from '#ui/entry/tap-choices'
import { useDraft } from '#ui/entry/use-draft'
import { Details } from '#ui/page/details'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'
import { SectionTitle } from '#ui/page/section-title'

type MatchFormProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly version: string
  readonly periods: readonly Period[]
  readonly players: readonly WritingPlayer[]
  readonly register: readonly RegisterLine[]
  readonly spells: readonly Spell[]
  readonly middleAttackShare: number
  readonly send: SendForm
  /** Where to go once it is written. */
  readonly doneHref: string
}

/** A match typed in or corrected. What is typed stays here through every refusal; it is sent whole. */
export function MatchForm(props: MatchFormProps) {
  const { squadId, sessionId, version, players } = props
  const first = useMemo(() => firstDraft(props), [props])
  const place = { key: `match-${sessionId}`, version, forKeeping: withoutMatchNames }
  const { draft, edit, undo, canUndo, wasFound, drop } = useDraft(place, first)
  const [brush, setBrush] = useState<LineBrush>('next')
  const router = useRouter()
  const names = useMemo(
    () => new Map([...players, ...draft.guests].map(({ id, name }) => [id, name])),
    [players, draft.guests],
  )
  const decided = useMemo(() => decideMatch(draft), [draft])
  const nameOf = (id: string) => names.get(id) || 'This guest'
  const sentences = decided.ok
    ? []
    : decided.reasons.map((reason) => matchEntrySentence(reason, { grid: draft.grid, nameOf }))
  const [reply, sendForm, isSaving] = useActionState(
    async (...sent: Parameters<SendForm>) => {
      const answer = await props.send(...sent)
      if (answer.status === 'done') {
        drop()
        router.push(props.doneHref)
      }
      return answer
    },
    { status: 'idle' } as const,
  )
  const { grid, register, guests, takenBack } = draft
  const hereCount = register.filter((entry) => entry.segments.length > 0).length
  return (
    <form action={sendForm} className="space-y-8">
      <input
        type="hidden"
        name="json"
        value={JSON.stringify({ squadId, sessionId, version, register, guests, takenBack, grid })}
      />
      {wasFound ? (
        <Notice>
          What you had typed here before is back.
          {guests.some(({ name }) => name === '') ? ' Names of guests have to be typed again.' : ''}
        </Notice>
      ) : null}
      {props.spells.length > 0 ? (
        <Notice>
          This match is written. What you change is corrected: what stood before stays in the book, struck
          through, with your name.
        </Notice>
      ) : null}
      <Details summary={`Who was there: ${hereCount} of ${register.length}`}>
        <RegisterPart
          register={register}
          players={players}
          guests={guests}
          onSegments={(playerId, segments) => edit((own) => withMatchSegments(own, playerId, segments))}
          onTakeBack={(playerId) => edit((own) => ({ ...own, takenBack: [...own.takenBack, playerId] }))}
          onGuest={(name) =>
            edit((own) => withMatchGuest(own, { id: `guest-${own.guests.length + 1}`, name }))
          }
          onGuestName={(guest) =>
            edit((own) => ({ ...own, guests: own.guests.map((one) => (one.id === guest.id ? guest : one)) }))
          }
          onPlayer={(playerId) => edit((own) => withMatchPlayer(own, playerId))}
        />
      </Details>
      <section className="space-y-4">
        <SectionTitle note="Minutes count from the first kick-off, breaks included.">Periods</SectionTitle>
        <PeriodsPart
          periods={grid.periods}
          onPeriods={(periods) => edit((own) => withPeriods(own, periods))}
        />
      </section>
      <section className="space-y-4">
        <SectionTitle note="K keeper, B back, M middle, F forward, O off; an empty cell is off. With the keyboard: letters, arrows, Enter down.">
          Places
        </SectionTitle>
        <MatchGridPart draft={draft} names={names} brush={brush} onEdit={edit} />
      </section>
      <Details summary="What this comes to">
        <MatchPreview
          draft={draft}
          players={players}
          names={names}
          middleAttackShare={props.middleAttackShare}
        />
      </Details>
      <div aria-live="polite">
        <Problems
          title="To put right before it can be written"
          problems={sentences.map((message) => ({ path: '', message }))}
        />
      </div>
      {reply.status === 'refused' ? (
        <Problems title="Nothing was saved; what you typed is still here" problems={reply.problems} />
      ) : null}
      <SaveBar canUndo={canUndo} isSaving={isSaving} onUndo={undo}>
        <TapChoices choices={lineBrushChoices} brush={brush} onBrush={setBrush} />
      </SaveBar>
    </form>
  )
}

function firstDraft(props: MatchFormProps): MatchDraft {
  const fresh = freshMatchDraft(props.players, props.periods)
  if (props.spells.length === 0 && props.register.length === 0) return fresh
  const expected = props.players.filter((player) => player.isExpected).map((player) => player.id)
  const end = Math.max(endOfMatch({ periods: props.periods }), ...props.register.map((line) => line.to))
  const grid = gridOfSpells({ periods: props.periods, spells: props.spells }, expected)
  return { ...fresh, grid, register: entriesOfLines(props.register, { end, playerIds: expected }) }
}
