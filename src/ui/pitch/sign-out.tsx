import { Notice } from '#ui/page/notice'
import { paths } from '#ui/paths'
import { counted } from '#ui/plural'

type SignOutProps = {
  /** Taps of practices that are on this phone alone. */
  readonly unsent: number
  readonly onLose: () => void
  readonly onStay: () => void
}

/** The way out; it asks first where signing out would lose what was tapped. */
export function SignOut({ unsent, onLose, onStay }: SignOutProps) {
  const look = 'tap cursor-pointer border border-rule-strong bg-leaf px-3 text-ink'
  return (
    <>
      <button type="submit" className="tap cursor-pointer text-accent underline underline-offset-4">
        Sign out
      </button>
      {unsent > 0 ? (
        <div
          role="alertdialog"
          aria-label="Sign out?"
          className="border-2 border-warn bg-warn-pale p-3 text-ink"
        >
          <p className="font-medium">
            {counted(unsent, 'tap')} of a practice {unsent === 1 ? 'is' : 'are'} on this phone only. Signing
            out takes the practice off this phone, and {unsent === 1 ? 'it is' : 'they are'} lost.
          </p>
          <p className="mt-2 flex flex-wrap gap-2">
            <button type="button" className={look} onClick={onStay}>
              Stay
            </button>
            <a href={paths.pitch()} className={`${look} inline-flex items-center no-underline`}>
              Send them first
            </a>
            <button type="button" className={`${look} border-warn text-warn`} onClick={onLose}>
              Sign out and lose them
            </button>
          </p>
        </div>
      ) : null}
    </>
  )
}

/** Nobody is signed in, and taps of a practice are still here. */
export function UnsentNotice({ unsent }: { readonly unsent: number }) {
  if (unsent === 0) return null
  return (
    <Notice>
      {counted(unsent, 'tap')} of a practice {unsent === 1 ? 'is' : 'are'} on this phone only. Sign in again
      and open “<a href={paths.pitch()}>At the pitch</a>” to send {unsent === 1 ? 'it' : 'them'}.
    </Notice>
  )
}
