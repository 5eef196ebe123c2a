import type { SendForm } from '#ui/entry/send-form'
import { formatTime } from '#ui/format-time'
import { ScanCode } from '#ui/join/scan-code'
import { Button, LinkButton } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'

type Pass = {
  readonly id: string
  readonly link: string
  readonly code: { readonly size: number; readonly path: string }
  readonly madeAt: Date
  readonly expiresAt: Date
  readonly taps: number
}

type HelpersBodyProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly kind: 'practice' | 'match'
  readonly timeZone: string
  /** Why nobody can be let in; null: somebody can. */
  readonly whyNot: string | null
  readonly isOnlyThisMachine: boolean
  readonly passes: readonly Pass[]
  readonly make: SendForm
  readonly takeBack: SendForm
}

/** Codes that let a helper join one practice or match, shown to be scanned. */
export function HelpersBody(props: HelpersBodyProps) {
  const { squadId, sessionId, kind, timeZone, whyNot, passes } = props
  return (
    <>
      <section className="space-y-4">
        <p className="max-w-prose">
          A helper scans the code with a phone and can then tap at this one {kind} until midnight: no account,
          and of the children only first names and initials. Nothing else of the book can be seen or changed
          with it.
        </p>
        {whyNot ? (
          <Notice>{whyNot}</Notice>
        ) : (
          <ReplyForm send={props.make} refusedTitle="No code was made" waiting="Making a code …">
            <input type="hidden" name="squadId" value={squadId} />
            <input type="hidden" name="sessionId" value={sessionId} />
            <Button>{passes.length === 0 ? 'Make a code' : 'Make another code'}</Button>
          </ReplyForm>
        )}
        {props.isOnlyThisMachine && passes.length > 0 ? (
          <Notice>
            This page was opened under an address that only this machine understands. Open it under the
            address that phones reach it by, or the code leads them nowhere.
          </Notice>
        ) : null}
      </section>
      {passes.map((pass, index) => (
        <section key={pass.id}>
          <SectionTitle
            note={`Made at ${formatTime(pass.madeAt, timeZone)}, good until midnight. ${
              pass.taps > 0 ? `${counted(pass.taps, 'tap')} came by it.` : 'Nobody has tapped with it yet.'
            }`}
          >
            {passes.length === 1 ? 'The code' : `Code ${passes.length - index}`}
          </SectionTitle>
          <ScanCode code={pass.code} label={`Code that lets a helper join this ${kind}`} />
          <p className="mt-2 max-w-prose text-sm break-all">
            Or open: <a href={pass.link}>{pass.link}</a>
          </p>
          <ReplyForm
            send={props.takeBack}
            refusedTitle="Not taken back"
            waiting="Taking it back …"
            className="mt-3"
          >
            <input type="hidden" name="squadId" value={squadId} />
            <input type="hidden" name="sessionId" value={sessionId} />
            <input type="hidden" name="passId" value={pass.id} />
            <Button weight="plain">Take this code back</Button>
          </ReplyForm>
        </section>
      ))}
      <p>
        <LinkButton href={paths.session(squadId, { sessionId })}>Back to the {kind}</LinkButton>
      </p>
    </>
  )
}
