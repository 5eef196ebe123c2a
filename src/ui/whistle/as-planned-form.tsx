import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'

type AsPlannedFormProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly version: string
  /** Names of the planned rounds, in order; none of a match, which was as planned or was not. */
  readonly rounds: readonly string[]
  /** `isAbsent`: the register that was taken beforehand has it not. */
  readonly players: readonly { readonly id: string; readonly name: string; readonly isAbsent: boolean }[]
  readonly send: SendForm
}

/** One question for what was played and not tapped: was it as planned, up to which round, and who left? */
export function AsPlannedForm({ rounds, players, send, ...sent }: AsPlannedFormProps) {
  const stops = rounds.slice(0, -1).map((name, round) => ({ value: String(round), label: `after ${name}` }))
  const leaves = rounds.slice(0, -1).map((name, round) => ({ round, label: `left after ${name}` }))
  return (
    <ReplyForm
      send={send}
      refusedTitle="Not written"
      places={{ stoppedAfterRound: 'It stopped', left: 'Who left' }}
      waiting="Writing it into the book …"
      className="max-w-prose space-y-4"
    >
      {Object.entries(sent).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {stops.length > 0 ? (
        <Select
          name="stoppedAfterRound"
          label="Was all of it played?"
          options={[{ value: '', label: 'All rounds, as planned' }, ...stops]}
        />
      ) : null}
      {players.length > 0 ? (
        <Details
          summary="Somebody left early, or did not come"
          isOpen={players.some(({ isAbsent }) => isAbsent)}
        >
          <div className="grid gap-3 sm:grid-cols-2">
            {players.map(({ id, name, isAbsent }) => (
              <Select
                key={id}
                id={`left-${id}`}
                name="left"
                label={name}
                defaultValue={isAbsent ? `${id}:none` : ''}
                options={[
                  { value: '', label: 'there to the end' },
                  { value: `${id}:none`, label: 'did not come' },
                  ...leaves.map(({ round, label }) => ({ value: `${id}:${round}`, label })),
                ]}
              />
            ))}
          </div>
        </Details>
      ) : null}
      <Button className="w-full text-lg sm:w-auto">Write it as planned</Button>
      <p className="text-sm text-soft">
        As planned is even by construction: the book draws it hatched, and says so.
      </p>
    </ReplyForm>
  )
}
