import type { LengthAsked } from '#pitch/length-of-practice'
import type { SendForm } from '#ui/entry/send-form'
import { formatTime } from '#ui/format-time'
import { LinkButton } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'
import { ConfirmForm } from '#ui/whistle/confirm-form'

export type WriteTappedProps = {
  readonly kind: 'practice' | 'match'
  readonly squadId: string
  readonly sessionId: string
  readonly timeZone: string
  readonly version: string
  readonly cursor: number
  readonly tapCount: number
  readonly lastWrite: { readonly at: Date; readonly byName: string | null } | null
  /** Taps that arrived after it was written. */
  readonly tapsSince: number
  readonly typed: { readonly at: Date; readonly byName: string | null } | null
  readonly takenBack: readonly string[]
  /** What has to be answered about how long it was; null: nothing. */
  readonly length: LengthAsked | null
  readonly nameOf: (playerId: string) => string
  readonly confirm: SendForm
}

/** What was tapped is to be looked at, and written with one button; or written again. */
export function WriteTapped(props: WriteTappedProps) {
  const { lastWrite, timeZone } = props
  return (
    <section className="space-y-3">
      {lastWrite ? (
        <Notice>
          {props.tapsSince > 0
            ? `${counted(props.tapsSince, 'tap')} arrived after this was written at ${formatTime(lastWrite.at, timeZone)}: look at what stands below now, and write it again.`
            : `The book says otherwise than what was tapped: somebody corrected it after ${formatTime(lastWrite.at, timeZone)}.`}
        </Notice>
      ) : (
        <p className="max-w-prose">
          Look at what was tapped. Nothing counts before it is written into the book; what is wrong can be
          corrected afterwards{props.kind === 'practice' ? ', turn by turn' : ''}.
        </p>
      )}
      <ConfirmTapped {...props} label={lastWrite ? 'Write it again' : 'Write into the book'} />
    </section>
  )
}

export function ConfirmTapped({ label, ...props }: WriteTappedProps & { readonly label: string }) {
  const { squadId, sessionId, version, cursor, typed, takenBack, nameOf } = props
  return (
    <ConfirmForm
      kind={props.kind}
      squadId={squadId}
      sessionId={sessionId}
      version={version}
      cursor={cursor}
      typed={typed && { byName: typed.byName, time: formatTime(typed.at, props.timeZone) }}
      takenBack={takenBack.map((id) => ({ id, name: nameOf(id) }))}
      length={props.length}
      label={label}
      send={props.confirm}
    />
  )
}

type StandsInBookProps = Pick<WriteTappedProps, 'kind' | 'squadId' | 'sessionId' | 'timeZone' | 'lastWrite'>

/** Nothing is left to be done. */
export function StandsInBook({ kind, squadId, sessionId, timeZone, lastWrite }: StandsInBookProps) {
  return (
    <section className="space-y-3">
      <Notice tone="done">
        {lastWrite
          ? `This stands in the book: written at ${formatTime(lastWrite.at, timeZone)}${lastWrite.byName ? ` by ${lastWrite.byName}` : ''}.`
          : 'This stands in the book.'}
      </Notice>
      <p className="flex flex-wrap gap-3">
        <LinkButton href={paths.writeSession(squadId, { sessionId })}>Correct it by hand</LinkButton>
        <LinkButton href={paths.session(squadId, { sessionId })}>The {kind} in the book</LinkButton>
      </p>
    </section>
  )
}
