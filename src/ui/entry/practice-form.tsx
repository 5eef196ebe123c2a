'use client'

import { useRouter } from 'next/navigation'
import { useActionState, useMemo, useState } from 'react'
import { wholeTurns } from '#exposure/whole-turns'
import type { PracticeDesign } from '#practice/design'
import { gridOfTurns, type WrittenTurn } from '#practice/grid-of-turns'
import type { RegisterLine } from '#squad/register'
import { entriesOfLines } from '#squad/register-segments'
import { AllRounds } from '#ui/entry/all-rounds'
import { type Brush, brushChoices } from '#ui/entry/brush'
import { MinuteField } from '#ui/entry/minute-field'
import { PassesPart, type StandingPass } from '#ui/entry/passes-part'
import { PlanPart } from '#ui/entry/plan-part'
import {
  freshDraft,
  gridOfDraft,
  type PracticeDraft,
  type WritingMode,
  type WritingPlayer,
  withGuest,
  withoutNames,
  withPlayer,
  withSegments,
} from '#ui/entry/practice-draft'
import { PracticeGridPart } from '#ui/entry/practice-grid-part'
import { PracticePreview } from '#ui/entry/practice-preview'
import { readPractice } from '#ui/entry/practice-reading'
import { RegisterPart } from '#ui/entry/register-part'
import { RoundsPart } from '#ui/entry/rounds-part'
import { SaveBar } from '#ui/entry/save-bar'
import type { SendForm } from '#ui/entry/send-form'
import { TapChoices } from '#ui/entry/tap-choices'
import type { ThemeName } from '#ui/entry/theme-select'
import { Toggle } from '#ui/entry/toggle'
import { useDraft } from '#ui/entry/use-draft'
import { Details } from '#ui/page/details'
import { Notice } from '#ui/page/notice'
import { Problems } from '#ui/page/problems'
import { SectionTitle } from '#ui/page/section-title'
import { counted } from '#ui/plural'

type PracticeFormProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly version: string
  readonly lengthSeconds: number | null
  readonly designId: string | null
  readonly players: readonly WritingPlayer[]
  readonly register: readonly RegisterLine[]
  readonly turns: readonly WrittenTurn[]
  readonly passes: readonly StandingPass[]
  readonly designs: readonly PracticeDesign[]
  readonly themes: readonly ThemeName[]
  /** Only this turn is to be corrected: the others are not shown. */
  readonly onlyTurn: string | null
  readonly send: SendForm
  /** Where to go once it is written. */
  readonly doneHref: string
}

const modes = [
  { value: 'grid', label: 'Quick grid' },
  { value: 'rounds', label: 'Round by round' },
  { value: 'plan', label: 'As planned, except' },
] as const satisfies readonly { value: WritingMode; label: string }[]

const wayOfMode = { grid: 'typedLater', rounds: 'roundByRound', plan: 'asPlanned' } as const

/** A practice typed in or corrected. What is typed stays here through every refusal; it is sent whole. */
export function PracticeForm(props: PracticeFormProps) {
  const { squadId, sessionId, version, players, designs, themes } = props
  const isCorrection = props.turns.length > 0
  const first = useMemo(() => firstDraft(props), [props])
  const { draft, edit, undo, canUndo, wasFound, drop } = useDraft(
    { key: `practice-${sessionId}`, version, forKeeping: withoutNames },
    first,
  )
  const [brush, setBrush] = useState<Brush>('next')
  const router = useRouter()
  const names = useMemo(
    () => new Map([...players, ...draft.guests].map(({ id, name }) => [id, name])),
    [players, draft.guests],
  )
  const reading = useMemo(() => {
    const grid = gridOfDraft(draft, { players, designs })
    return readPractice(draft, grid, (id) => names.get(id) || 'This guest')
  }, [draft, players, designs, names])
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
  const json = JSON.stringify({
    squadId,
    sessionId,
    version,
    register: draft.register,
    guests: draft.guests,
    takenBack: draft.takenBack,
    way: wayOfMode[draft.mode],
    lengthSeconds: draft.lengthSeconds,
    grid: reading.grid,
    voidPasses: draft.voidPasses,
  })
  const hereCount = draft.register.filter((entry) => entry.segments.length > 0).length
  return (
    <form action={sendForm} className="space-y-8">
      <input type="hidden" name="json" value={json} />
      {wasFound ? (
        <Notice>
          What you had typed here before is back.
          {draft.guests.some(({ name }) => name === '') ? ' Names of guests have to be typed again.' : ''}
        </Notice>
      ) : null}
      {isCorrection ? (
        <Notice>
          This practice is written. What you change is corrected: the old turn stays in the book, struck
          through, with your name.
        </Notice>
      ) : (
        <Toggle
          label="How to write it"
          options={modes}
          value={draft.mode}
          onChange={(mode) => edit((own) => ({ ...own, mode }))}
        />
      )}
      <Details
        summary={`Who was there: ${hereCount} of ${draft.register.length}`}
        isOpen={!isCorrection && hereCount < 2}
      >
        <RegisterPart
          register={draft.register}
          players={players}
          guests={draft.guests}
          onSegments={(playerId, segments) => edit((own) => withSegments(own, playerId, segments))}
          onTakeBack={(playerId) => edit((own) => ({ ...own, takenBack: [...own.takenBack, playerId] }))}
          onGuest={(name) => edit((own) => withGuest(own, { id: `guest-${own.guests.length + 1}`, name }))}
          onGuestName={(guest) =>
            edit((own) => ({ ...own, guests: own.guests.map((one) => (one.id === guest.id ? guest : one)) }))
          }
          onPlayer={(playerId) => edit((own) => withPlayer(own, playerId))}
        />
      </Details>
      <section className="space-y-4">
        <SectionTitle note={<ModeNote mode={draft.mode} />}>Turns</SectionTitle>
        <div className="flex flex-wrap items-end gap-x-8 gap-y-3">
          <MinuteField
            label="Whole practice, minutes"
            seconds={draft.lengthSeconds}
            placeholder="?"
            onChange={(lengthSeconds) => edit((own) => ({ ...own, lengthSeconds }))}
          />
        </div>
        {draft.mode !== 'plan' && !isCorrection ? (
          <AllRounds grid={draft.grid} themes={themes} onEdit={edit} />
        ) : null}
        {draft.mode === 'plan' ? (
          <PlanPart draft={draft} designs={designs} reading={reading} names={names} onEdit={edit} />
        ) : null}
        {draft.mode === 'rounds' ? (
          <RoundsPart reading={reading} names={names} brush={brush} onEdit={edit} />
        ) : draft.mode === 'grid' || draft.designId ? (
          <PracticeGridPart
            reading={reading}
            names={names}
            themes={themes}
            brush={brush}
            isOpen={draft.mode === 'grid'}
            onlyId={draft.grid.columns.some(({ id }) => id === props.onlyTurn) ? props.onlyTurn : null}
            onEdit={edit}
          />
        ) : null}
        <PassesPart passes={props.passes} draft={draft} names={names} onEdit={edit} />
      </section>
      <Details
        summary={`What this comes to: ${counted(
          wholeTurns(reading.outcomes.flatMap((outcome) => outcome.turns)).length,
          'turn',
        )}`}
      >
        <PracticePreview reading={reading} players={players} names={names} />
      </Details>
      <div aria-live="polite">
        <Problems
          title="To put right before it can be written"
          problems={reading.sentences.map((message) => ({ path: '', message }))}
        />
      </div>
      {reply.status === 'refused' ? (
        <Problems title="Nothing was saved; what you typed is still here" problems={reply.problems} />
      ) : null}
      <SaveBar canUndo={canUndo} isSaving={isSaving} onUndo={undo}>
        {draft.mode === 'plan' ? null : (
          <TapChoices choices={brushChoices} brush={brush} onBrush={setBrush} />
        )}
      </SaveBar>
    </form>
  )
}

function ModeNote({ mode }: { readonly mode: WritingMode }) {
  if (mode === 'plan') return 'The design as it was planned, then what was different.'
  if (mode === 'rounds') return 'For each round the balls played, and who was on which side.'
  return (
    <>
      A attacks, D defends, K keeps goal; an empty cell waits. ⇄ takes the round before with sides swapped.
      <span className="hidden sm:inline">
        {' '}
        With the keyboard: letters, arrows, Enter down; S is ⇄, P was offered and passed, a number behind the
        letter is the area. A block of a spreadsheet can be pasted.
      </span>
    </>
  )
}

function firstDraft(props: PracticeFormProps): PracticeDraft {
  const fresh = freshDraft({
    players: props.players,
    design: props.designs.find(({ id }) => id === props.designId) ?? null,
    lengthSeconds: props.lengthSeconds,
  })
  if (props.turns.length === 0 && props.register.length === 0) return fresh
  const expected = props.players.filter((player) => player.isExpected).map((player) => player.id)
  const end = Math.max(props.lengthSeconds ?? 0, ...props.register.map((line) => line.to))
  const register = entriesOfLines(props.register, { end, playerIds: expected })
  const grid = props.turns.length > 0 ? gridOfTurns(props.turns, expected) : fresh.grid
  return { ...fresh, register, grid }
}
