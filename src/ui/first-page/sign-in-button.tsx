import type { ViewerRole } from '#access/viewer'
import { listed } from '#ui/plural'
import { words } from '#ui/words'

export type SignInPerson = {
  readonly clubId: string
  readonly personId: string
  readonly name: string
  readonly role: ViewerRole
  readonly squadNames: readonly string[]
}

type SignInButtonProps = {
  readonly person: SignInPerson
  readonly signIn: (form: FormData) => Promise<void>
  readonly isMain: boolean
}

export function SignInButton({ person, signIn, isMain }: SignInButtonProps) {
  const { clubId, personId, name, role, squadNames } = person
  const look = isMain ? 'border-accent bg-accent text-white hover:opacity-90' : 'border-rule-strong bg-leaf'
  return (
    <form action={signIn}>
      <input type="hidden" name="clubId" value={clubId} />
      <input type="hidden" name="personId" value={personId} />
      <button
        type="submit"
        className={`flex h-full min-h-24 w-full cursor-pointer flex-col justify-center border px-4 py-3 text-left ${look}`}
      >
        <span className="text-lg font-semibold">{roleText(role)}</span>
        <span className="text-sm">{name}</span>
        {squadNames.length > 0 ? <span className="text-sm">{listed(squadNames)}</span> : null}
      </button>
    </form>
  )
}

function roleText(role: ViewerRole): string {
  const text = role === 'guardian' ? 'parent' : words.viewerRole[role]
  return text.charAt(0).toUpperCase() + text.slice(1)
}
